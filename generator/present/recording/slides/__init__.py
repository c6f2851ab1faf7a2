"""The slides of a lesson: what the video shows while the script is spoken."""
