"""What changed between two jobs, in which direction, who bears it, and what it does."""

from specwriter.compare.change import AlteredFinding, Bearer, Change, Comparison, Sense, Side
from specwriter.compare.comparison import compare

__all__ = ["AlteredFinding", "Bearer", "Change", "Comparison", "Sense", "Side", "compare"]
