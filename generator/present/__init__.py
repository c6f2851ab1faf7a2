"""From results to pages: views, words, pictures and templates."""
