"""What changed between two jobs, in which direction, who bears it, and what it does."""

from specwriter.compare.change import (
    AlteredFinding,
    Bearer,
    Change,
    Comparison,
    Sense,
    Side,
    said,
)
from specwriter.compare.comparison import compare
from specwriter.compare.findings import changes_behind

__all__ = [
    "AlteredFinding",
    "Bearer",
    "Change",
    "Comparison",
    "Sense",
    "Side",
    "changes_behind",
    "compare",
    "said",
]
