"""The report on finish codes: as a page, as paper and as a table, all of one view."""
