"""What holds for the source as a whole."""
