"""Bytes of a job file → clean text: size, encoding, and characters that nobody can see."""

from __future__ import annotations

import re
import unicodedata

from specwriter.diagnostic import Fault, Place
from specwriter.source.source import LINE_BREAK

LARGEST = 1_000_000
"""Bytes. The longest job file that anybody has a reason to write is a hundredth of this."""

_MOST_REPORTED = 20
_UTF16 = (b"\xff\xfe", b"\xfe\xff")
_PACKED = {b"PK\x03\x04": "a Word document or another packed file", b"%PDF": "a PDF"}
_UNSEEN = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u200b\u2028\u2029\u202a-\u202e\u2060"
    "\u2066-\u2069\ud800-\udfff\ufeff\ufffe\uffff]"
)
_NO_BREAK_SPACE = re.compile(r"(?:^[ \xa0]*|[:\-,] *)(\xa0)", re.MULTILINE)
_NAMES = {
    "\x00": "an empty character",
    "\ufeff": "a byte order mark",
    "\u200b": "a zero-width space",
    "\u2060": "a word joiner",
}


def decode(raw: bytes, file: str) -> str | Fault:
    """The text in ``raw``, without a leading byte order mark, or why it is not readable text."""
    if len(raw) > LARGEST:
        return too_large(file)
    for start, kind in _PACKED.items():
        if raw.startswith(start):
            return _whole(file, f"this is {kind}, not a job file", "give a job file in plain text")
    if raw.startswith(_UTF16) or (len(raw) > 1 and 0 in (raw[0], raw[1])):
        return _whole(file, "this file is written in UTF-16", "save it with the encoding UTF-8")
    try:
        return raw.decode("utf-8").removeprefix("\ufeff")
    except UnicodeDecodeError as error:
        return _foreign_byte(raw, error.start, file)


def too_large(file: str) -> Fault:
    """The fault of a file beyond ``LARGEST``."""
    says = f"this file is larger than {LARGEST // 1000:,} kB, which no job file needs to be"
    return _whole(file, says, "check that it is the right file")


def clean(text: str, file: str) -> tuple[str, list[Fault]]:
    """The text with each unusable character replaced by a space, and a fault for each.

    Replacing one for one keeps every column, so that the rest of the file can be read too.
    """
    found = [(match.start(), _name(match[0])) for match in _UNSEEN.finditer(text)]
    found += [(match.start(1), "a no-break space") for match in _NO_BREAK_SPACE.finditer(text)]
    faults = [_unusable(text, at, name, file) for at, name in sorted(found)[:_MOST_REPORTED]]
    for at, _ in found:
        text = f"{text[:at]} {text[at + 1 :]}" if len(found) <= _MOST_REPORTED else text
    if len(found) > _MOST_REPORTED:
        text = _NO_BREAK_SPACE.sub(lambda m: m[0].replace("\xa0", " "), _UNSEEN.sub(" ", text))
    return text, faults


def _unusable(text: str, at: int, name: str, file: str) -> Fault:
    before = LINE_BREAK.split(text[:at])
    place = Place(file=file, line=len(before), column=len(before[-1]) + 1)
    todo = "type a plain space instead" if "no-break" in name else "delete it, or retype the line"
    return Fault(place=place, says=f"{name} stands here, which cannot be seen", todo=todo)


def _name(character: str) -> str:
    code = f"U+{ord(character):04X}"
    if character in _NAMES:
        return f"{_NAMES[character]} ({code})"
    if unicodedata.bidirectional(character) in ("LRE", "RLE", "LRO", "RLO", "PDF") or (
        "\u2066" <= character <= "\u2069"
    ):
        return f"a character that reverses the direction of writing ({code})"
    return f"a control character ({code})"


def _foreign_byte(raw: bytes, at: int, file: str) -> Fault:
    before = LINE_BREAK.split(raw[:at].decode("utf-8"))
    meant = raw[at : at + 1].decode("cp1252", "replace")
    says = f"this file is not in UTF-8: byte {raw[at]:02X} cannot be read here"
    if meant.isprintable() and meant != "\ufffd":
        says += f" (in the encoding Windows-1252 or Latin-1 it would be '{meant}')"
    place = Place(file=file, line=len(before), column=len(before[-1].removeprefix("\ufeff")) + 1)
    return Fault(place=place, says=says, todo="save the file with the encoding UTF-8")


def _whole(file: str, says: str, todo: str) -> Fault:
    return Fault(place=Place(file=file, line=1, column=1), says=says, todo=todo)
