"""Two documents by their text: clauses aligned, moved ones recognised, words compared."""

from specwriter.compare.text.match import compare_texts
from specwriter.compare.text.pairs import (
    Added,
    Clause,
    Match,
    MatchedRow,
    MatchedTable,
    Part,
    Removed,
    Rewritten,
    TextMatch,
)
from specwriter.compare.text.words import Span

__all__ = [
    "Added",
    "Clause",
    "Match",
    "MatchedRow",
    "MatchedTable",
    "Part",
    "Removed",
    "Rewritten",
    "Span",
    "TextMatch",
    "compare_texts",
]
