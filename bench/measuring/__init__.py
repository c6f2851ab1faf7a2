"""What `bench/measures.py` measures, apart from how it prints it."""
