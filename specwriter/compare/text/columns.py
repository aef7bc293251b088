"""A table with other columns: which came, which went, and what differs in those that stay."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from specwriter.compare.text.sections import words_of
from specwriter.compare.text.similar import overlap
from specwriter.reading import Row, Table

_ALIKE = 0.3
"""Share of common words from which a table is a version of another."""

_MOST = 6
"""Cells that are told one by one."""


def other_columns(old: Table, new: Table) -> str:
    """What became of the columns, in words; nothing where no table became the other."""
    was, now = _heads(old), _heads(new)
    same = [head for head in was if head in now]
    if not same or was == now or overlap(words_of(old.text), words_of(new.text)) < _ALIKE:
        return ""
    gone = [f'"{head}"' for head in was if head not in now]
    come = [f'"{head}"' for head in now if head not in was]
    cells = list(_cells(_by_name(old, same), _by_name(new, same), same))
    more = f"{len(cells) - _MOST} more cells differ" if len(cells) > _MOST else ""
    said = (
        f"without {_columns(gone)}" if gone else "",
        f"with {_columns(come)}" if come else "",
        *cells[:_MOST],
        more,
    )
    return "; ".join(filter(None, said))


def _columns(names: Sequence[str]) -> str:
    return f"the column{'s' if len(names) > 1 else ''} {', '.join(names)}"


def _heads(table: Table) -> list[str]:
    """The heads of the columns; none where two are alike, for then they tell nothing."""
    heads = [_flat(cell.text) for cell in table.rows[0].cells] if table.rows else []
    return heads if len(set(heads)) == len(heads) else []


def _by_name(table: Table, columns: Sequence[str]) -> dict[str, dict[str, str]]:
    """Name of a row → its cells by the heads of their columns."""
    heads = _heads(table)
    found: dict[str, dict[str, str]] = {}
    for row in table.rows[1:]:
        cells = _cells_of(row, heads)
        found.setdefault(cells.get(columns[0], ""), cells)
    return found


def _cells_of(row: Row, heads: Sequence[str]) -> dict[str, str]:
    return dict(zip(heads, (_flat(cell.text) for cell in row.cells), strict=False))


def _cells(
    old: dict[str, dict[str, str]], new: dict[str, dict[str, str]], columns: Sequence[str]
) -> Iterator[str]:
    for name, was in old.items():
        if name not in new:
            yield f'without the row "{name}"'
            continue
        for column in columns:
            before, after = was.get(column, ""), new[name].get(column, "")
            if before != after:
                yield f'row "{name}", column "{column}": "{before}" became "{after}"'
    yield from (f'with the row "{name}"' for name in new if name not in old)


def _flat(text: str) -> str:
    return " ".join(text.split())
