"""The ties between quantities, one file each, found by folder scan."""
