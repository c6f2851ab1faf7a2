"""What a publication changes, and the record of all of them."""
