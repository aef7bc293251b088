"""A Word file as its parts: name → bytes, with limits on what is taken in."""

from __future__ import annotations

import io
import zipfile
import zlib

from specwriter.reading.fault import ReadingFault

DOCUMENT = "word/document.xml"
LARGEST = 200_000_000
"""Bytes that all parts together may have: a small file can unpack to more than a computer holds."""

MOST_PARTS = 5_000
_COMPOUND = b"\xd0\xcf\x11\xe0"


def read_package(content: bytes) -> dict[str, bytes]:
    """The parts of a Word file; ``ReadingFault`` when it is none, or is too large or broken."""
    if content.startswith(_COMPOUND):
        raise ReadingFault(
            "this is a Word file of the old kind, or one under a password",
            "open it in the office program and save it as .docx without a password",
        )
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as package:
            _measure(package)
            parts = {info.filename: package.read(info) for info in package.infolist()}
    except (zipfile.BadZipFile, NotImplementedError, RuntimeError, zlib.error, EOFError) as error:
        raise ReadingFault(
            f"this Word file is broken: {error}",
            "open it in the office program, save it again and use that file",
        ) from None
    if DOCUMENT not in parts:
        raise ReadingFault(
            "this file holds no word/document.xml, so it is no Word document",
            "give a .docx, a .md, a .txt or a job file",
        )
    return parts


def _measure(package: zipfile.ZipFile) -> None:
    infos = package.infolist()
    if len(infos) > MOST_PARTS or sum(info.file_size for info in infos) > LARGEST:
        raise ReadingFault(
            f"this Word file unpacks to more than {LARGEST // 1_000_000} MB",
            "take the pictures out or split it, and try again",
        )


def write_package(parts: dict[str, bytes]) -> bytes:
    """The parts as one file, the same bytes every time; the list of content types comes first."""
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_STORED) as package:
        for name in sorted(parts, key=lambda part: (part != "[Content_Types].xml", part)):
            entry = zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0))
            entry.create_system = 0
            package.writestr(entry, parts[name])
    return buffer.getvalue()
