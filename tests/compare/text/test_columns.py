"""A table that gained or lost a column is told by its columns and the cells that differ."""

from __future__ import annotations

import pytest

from specwriter.compare.text import compare_texts
from specwriter.compare.text.changes import text_changes
from specwriter.reading import read_plain

OLD = """
| Test | Lot | Limit |
|---|---|---|
| Depth | 1,000 ft | 1/8 in |
| Width | 1,000 ft | 1/8 in |
| Ride | each lane | 60 in/mi |
"""
NEW = """
| Test | Limit | Remedy | Payment |
|---|---|---|---|
| Depth | 3/16 in | cut again | none |
| Width | 1/8 in | cut again | none |
| Ride | 60 in/mi | grind again | none |
"""
OTHER = """
| Item | Unit |
|---|---|
| 614.10 | square yard |
"""


def added(old: str, new: str) -> str:
    """The place of the table that comes."""
    texts = (read_plain(each, markdown=True) for each in (old, new))
    return next(each.place for each in text_changes(compare_texts(*texts)) if each.kind == "added")


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        (
            OLD,
            NEW,
            'without the column "Lot"; with the columns "Remedy", "Payment"; '
            'row "Depth", column "Limit": "1/8 in" became "3/16 in"',
        ),
        (
            NEW,
            OLD,
            'without the columns "Remedy", "Payment"; with the column "Lot"; '
            'row "Depth", column "Limit": "3/16 in" became "1/8 in"',
        ),
        (OLD, NEW + "| Noise | 99 dBA | cut again | none |\n", 'with the row "Noise"'),
    ],
)
def test_columns_and_cells_are_told(old: str, new: str, said: str) -> None:
    assert said in added(old, new)


def test_another_table_is_not_told_by_columns() -> None:
    assert "column" not in added(OLD, OTHER)
