"""The numbering of the tree as Word counts it: a text and a form for each level."""

from __future__ import annotations

import re

from specwriter.assemble.document import Document, Numbering
from specwriter.render.docx_xml import xml_text

_FIELD = re.compile(r"\{(part|clause|item)(?::(\w+))?\}")
_FORMS = {
    "": "decimal",
    "02": "decimalZero",
    "a": "lowerLetter",
    "A": "upperLetter",
    "i": "lowerRoman",
    "I": "upperRoman",
}
_LETTER = 135
"""Twips that a letter of a heading's number takes at most on the average; found by trial."""


def number_values(document: Document) -> dict[str, str]:
    """What stands for each number in the template of the numbering part."""
    numbering = document.numbering
    room = max(720, number_width(document))
    return {
        **_level("part", numbering.part, _form_of_part(numbering), {"part": 1}),
        **_level("clause", numbering.clause, "", {"part": 1, "clause": 2}),
        **_level("item", numbering.item, "", {"item": 1}),
        **_level("subitem", numbering.subitem, "", {"item": 2}),
        "number_room": str(room),
    }


def number_width(document: Document) -> int:
    """Twips that the longest number of a part or clause takes, with the gap behind it."""
    numbers = [part.number for part in document.parts]
    numbers += [clause.number for part in document.parts for clause in part.clauses]
    return 180 + _LETTER * max(map(len, numbers), default=0)


def _level(name: str, pattern: str, form: str, levels: dict[str, int]) -> dict[str, str]:
    """Text and form of a level; the last field of its pattern is the one that it counts."""
    fields = list(_FIELD.finditer(pattern))
    counted = form or (fields[-1][2] or "" if fields else "")
    text = _FIELD.sub(lambda found: f"%{levels[found[1]]}", pattern)
    return {f"{name}_number": xml_text(text), f"{name}_form": _FORMS[counted]}


def _form_of_part(numbering: Numbering) -> str:
    """The form of the part, which its own number may lack."""
    fields = (*_FIELD.finditer(numbering.part), *_FIELD.finditer(numbering.clause))
    return next((found[2] or "" for found in fields if found[1] == "part"), "")
