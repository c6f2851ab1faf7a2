"""The papers of a lesson as files: tagged PDFs, made by typst from the views that the pages have."""
