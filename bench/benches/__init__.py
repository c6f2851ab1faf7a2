"""Each bench in a file of its own: `rows` measures and yields, and holds each figure to its goal."""
