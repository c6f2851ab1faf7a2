"""The report on finish codes: as a page, as paper and as a table, all made of what may be said."""
