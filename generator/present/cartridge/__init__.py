"""A lesson as a learning platform takes it in: a 1EdTech Common Cartridge."""
