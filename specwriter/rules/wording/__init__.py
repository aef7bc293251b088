"""Rules on how a value is written down."""
