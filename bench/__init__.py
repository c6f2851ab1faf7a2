"""What the site costs to build and to read, measured; nothing here is part of the program."""
