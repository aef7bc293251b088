"""The smallest pieces of WordprocessingML, as text: runs, paragraphs, fields, bookmarks."""

from __future__ import annotations

import hashlib
import re
from xml.sax.saxutils import escape, unescape

_FORBIDDEN = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_TEXT = re.compile("<w:t[^>]*>([^<]*)</w:t>")
_ENTITIES = {'"': "&quot;", "\r": "&#13;"}
_MINUS = re.compile(r"(?<!\w)-(?=[\d.$])")
_IN_NUMBER = re.compile(r"(?<=\d)-(?=\d)")
_HYPHEN, _MINUS_SIGN = "\u2011", "\u2212"


def xml_text(text: str) -> str:
    """Text for an XML element or attribute.

    Raises ``ValueError`` for a character that XML cannot hold: ``escape`` lets it pass, and Word
    would refuse the whole file.
    """
    if found := _FORBIDDEN.search(text):
        raise ValueError(
            f"the text holds the control character U+{ord(found[0]):04X}, which a Word file "
            f"cannot hold, in {text[max(0, found.start() - 20) : found.start()]!r}: remove it"
        )
    return escape(text, _ENTITIES)


def unbroken(text: str) -> str:
    """The text of a narrow cell, so that no line ends within a number such as 1-1/2 or 08-26.

    A character, not the element that Word has for it: many readers of Word files leave the
    element out, and 11/2 in is another value. It stands in cells alone, since whoever searches
    for 1-1/2 does not find it.
    """
    return _IN_NUMBER.sub(_HYPHEN, text) if "-" in text else text


def text_digest(content: str) -> str:
    """SHA-256 of the text in some WordprocessingML, without its spaces.

    Whoever reads the file can tell by it whether the text was changed: an office program may
    cut runs anew, but it keeps the characters; a minus and a hyphen without break count as plain.
    """
    texts = unescape("".join(_TEXT.findall(content)), {"&quot;": '"', "&#13;": "\r"})
    plain = "".join(texts.split()).replace(_HYPHEN, "-").replace(_MINUS_SIGN, "-")
    return hashlib.sha256(plain.encode("utf-8")).hexdigest()


def run(text: str, style: str = "") -> str:
    """A run of text; a tab becomes a tab stop and a line break a space.

    The minus before a number becomes the sign behind which no line ends: "+0 in -" would stand
    over "1/8 in".
    """
    if "-" in text:
        text = _MINUS.sub(_MINUS_SIGN, text)
    pieces = text.replace("\r", "").replace("\n", " ").split("\t")
    inner = "<w:tab/>".join(
        f'<w:t xml:space="preserve">{xml_text(piece)}</w:t>' if piece else "" for piece in pieces
    )
    properties = f'<w:rPr><w:rStyle w:val="{style}"/></w:rPr>' if style else ""
    return f"<w:r>{properties}{inner}</w:r>"


def field(instruction: str, cached: str) -> str:
    """A field with the result that a reader shows until it counts for itself."""
    code = f'<w:instrText xml:space="preserve"> {xml_text(instruction)} </w:instrText>'
    return f"{_mark('begin')}<w:r>{code}</w:r>{_mark('separate')}{run(cached)}{_mark('end')}"


def _mark(kind: str) -> str:
    return f'<w:r><w:fldChar w:fldCharType="{kind}"/></w:r>'


def paragraph(content: str, style: str, properties: str = "") -> str:
    """A paragraph; ``properties`` are further ``w:pPr`` children in the order of the schema."""
    return f'<w:p><w:pPr><w:pStyle w:val="{style}"/>{properties}</w:pPr>{content}</w:p>'


def bookmarked(content: str, name: str, number: int) -> str:
    """Content that REF fields can point to; ``number`` is unique in the document."""
    return (
        f'<w:bookmarkStart w:id="{number}" w:name="{name}"/>{content}'
        f'<w:bookmarkEnd w:id="{number}"/>'
    )
