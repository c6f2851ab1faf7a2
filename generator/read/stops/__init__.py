"""What reading looks up for each kind of stop, and which names in it must differ: a file for each kind that has any."""
