"""What changed in a lesson from one publication to another, found and put into words."""
