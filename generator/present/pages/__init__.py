"""The pages of a site, each in a file of its own."""
