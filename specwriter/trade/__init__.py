"""Engineering as pure functions of numbers, each formula beside its source."""
