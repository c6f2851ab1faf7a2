"""What the templates see: words and numbers ready to print, and nothing to compute.

Every text here is in the page's language and every number already formatted. A template
prints them, decides nothing, and escapes everything but ``Markup``.
"""
