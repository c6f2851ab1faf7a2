"""Plumline turns lesson definitions into a static site of self-paced home video lessons."""

__version__ = "0.2.0"
