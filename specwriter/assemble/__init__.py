"""Job and clause library → document tree."""
