"""What a print stamp tells of the sheet that bears it: which sheet it is, and whether it still holds."""
