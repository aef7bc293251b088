"""Checks that are not arithmetic between values, one file each, found by folder scan."""
