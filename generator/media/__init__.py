"""Pictures and films as the files they are: whether a browser shows them, and what of them goes out."""
