"""Sets of what may be said in a lesson, each with whether it is true: plain text that anybody can add to."""
