"""A lesson's gaps as plums on threads: one drawing for covers, worksheets, shared links and endings."""
