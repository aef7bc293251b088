"""Document tree → Markdown, HTML, Word. Each format is loaded only when it is asked for."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from specwriter.assemble.document import Document


def render_markdown(document: Document) -> str:
    """The provision as CommonMark with pipe tables."""
    from specwriter.render import markdown as made

    return made.render_markdown(document)


def render_html(document: Document) -> str:
    """The provision as one self-contained HTML page."""
    from specwriter.render import html as made

    return made.render_html(document)


def render_docx(document: Document) -> bytes:
    """The provision as a Word file; ``ValueError`` when the text holds a control character."""
    from specwriter.render import docx as made

    return made.render_docx(document)
