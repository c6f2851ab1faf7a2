"""From finished pages to files: swapped in whole, never half."""
