"""The pictures of the guide: which there are, how each is taken, and the page that shows them."""
