"""Rules on the dimensions of a cut: sizes that documents use, and limits that run the wrong way."""
