"""Each kind of stop as its template sees it."""
