"""Where the text of a provision comes from, when it is not the library of the tool."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.assemble.document import Part
from specwriter.assemble.library import Library
from specwriter.assemble.outline import Outline


def provenance(library: Library, outline: Outline, parts: tuple[Part, ...]) -> tuple[str, ...]:
    """A line for the format and for each clause that comes from the folder of the user."""
    own = library.own
    return tuple(_lines(library, f"{own.name}/", outline, parts)) if own else ()


def _lines(library: Library, own: str, outline: Outline, parts: tuple[Part, ...]) -> Iterator[str]:
    if outline.file.startswith(own):
        yield f"House format {outline.name}: {outline.file}."
    files = {clause.id: clause.file for clause in library.clauses}
    replaced = dict(library.replaced)
    for clause in (clause for part in parts for clause in part.clauses):
        file = files.get(clause.id, "")
        if file.startswith(own):
            before = f", in place of {replaced[clause.id]}" if clause.id in replaced else ""
            yield f"{clause.number} {clause.title}: {file}{before}."
