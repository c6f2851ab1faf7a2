"""The files that teachers saved from the page that reads finish codes."""
