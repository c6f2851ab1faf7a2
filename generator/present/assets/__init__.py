"""Styles, scripts and templates of the theme, joined for the browser."""
