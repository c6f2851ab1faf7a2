"""Each kind of stop that has numbers, worked out."""
