"""From a finished site to the people: what changed, git, reports."""
