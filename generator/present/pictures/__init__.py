"""Drawings made from numbers: blocks in columns, lines, bars, codes and figures of moves."""
