"""Pure arithmetic: no files, no clock, no language."""
