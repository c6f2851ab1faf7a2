"""From an educator's files to the model, every mistake with its place."""
