"""Two jobs → what changed, in which sense, with what effect."""
