"""Makes lessons once: what a lesson depends on, where its pages are kept, many side by side."""
