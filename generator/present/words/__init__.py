"""Numbers, sentences and prose as one language writes them."""
