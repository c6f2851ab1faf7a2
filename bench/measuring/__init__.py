"""How things are measured, apart from what is asked of them."""
