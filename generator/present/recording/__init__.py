"""What is made for filming a lesson, and what is kept of a film."""
