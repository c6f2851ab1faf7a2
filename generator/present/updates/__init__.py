"""What changed from one publication to another, found, put into words, and shown on a page and in a feed."""
