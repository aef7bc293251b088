"""Paper and margins of the Word file, in twips: twentieths of a point."""

from __future__ import annotations

from specwriter.assemble.document import Document

PAPERS = {"letter": (12240, 15840), "a4": (11906, 16838)}
"""Width and height of each paper."""

_MARGINS = 2880
"""Left and right margin together; the template sets one inch each."""

INDENT = 720
"""From the margin, as far as the text of a clause."""


def text_width(document: Document) -> int:
    """Between the margins."""
    return PAPERS[document.page][0] - _MARGINS
