"""The tests mirror the package, one folder a room."""
