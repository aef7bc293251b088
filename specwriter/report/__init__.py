"""Findings and comparisons → terminal text and JSON."""
