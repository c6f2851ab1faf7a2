"""The steps of a build, each in a file: lessons worked and kept, pages by hand, the folder filled."""
