"""How wide the letters of a label are, so that its pen can be set without a font at hand."""

from __future__ import annotations

FACE = "Arial"
"""The face of the labels; Liberation Sans, Helvetica and Arimo have letters of the same widths."""

_WIDTHS = {
    191: "'",
    222: "ijl’",
    260: "|",
    278: " !,./:;I[\\]ft",
    333: "()-`r·²³“”",
    334: "{}",
    355: '"',
    389: "*",
    400: "°",
    469: "^",
    500: "Jcksvxyz",
    549: "±≤≥",
    584: "+<=>~×",
    611: "FTZ",
    667: "&ABEKPSVXY",
    722: "CDHNRUw",
    778: "GOQ",
    833: "Mm",
    834: "¼½¾",
    889: "%",
    944: "W",
    1000: "—",
    1015: "@",
}
"""Thousandths of the size → letters, read from the widths in Liberation Sans 2.1."""

_OTHER = 556
"""The digits, most small letters, and every letter that is not named."""

_BY_LETTER = {letter: width for width, letters in _WIDTHS.items() for letter in letters}


def advances(text: str, size: float) -> list[int]:
    """How far the pen moves at each letter, in whole units of ``size``."""
    return [round(_BY_LETTER.get(letter, _OTHER) * size / 1000) for letter in text]
