"""The job that a drafted Word file carries inside."""

from __future__ import annotations

import hashlib
import re
from dataclasses import dataclass
from xml.etree.ElementTree import Element

from specwriter.reading.block import OBJECT, paragraphs
from specwriter.reading.package import read_package
from specwriter.reading.word import read_word
from specwriter.reading.xml import parse

_SPACE = "{urn:specwriter:job}"
_JOB = f"{_SPACE}job"
_ITEM = re.compile(r"customXml/item\d+\.xml")


@dataclass(frozen=True, slots=True)
class JobInside:
    """The text of a job file as it was drafted; ``whole`` is false when a digest disagrees.

    ``clauses`` names the folder of the user's own clauses that it was drafted with, and
    ``clause_files`` are its files, name and text; ``settings`` is the text of the file of house
    settings that the job names, ``None`` when the document carries none. ``changed`` tells
    whether the provision was changed since; ``None`` when it does not say.
    """

    text: str
    whole: bool
    clauses: str = ""
    clause_files: tuple[tuple[str, str], ...] = ()
    settings: str | None = None
    changed: bool | None = None


def job_inside(content: bytes) -> JobInside | None:
    """The job in a Word file, or ``None`` when it holds none; ``ReadingFault`` when unreadable."""
    parts = read_package(content)
    for name in sorted(parts):
        if not _ITEM.fullmatch(name) or b"urn:specwriter:job" not in parts[name]:
            continue
        root = parse(parts[name], name)
        if root.tag == _JOB:
            drafted = root.get("text")
            return JobInside(
                text=root.text or "",
                whole=all(map(_is_whole, root.iter())),
                clauses=root.get("clauses", ""),
                clause_files=tuple(
                    (each.get("name", ""), each.text or "")
                    for each in root.iter(f"{_SPACE}clauses")
                ),
                settings=next((each.text or "" for each in root.iter(f"{_SPACE}settings")), None),
                changed=drafted != _digest(content) if drafted else None,
            )
    return None


def _is_whole(file: Element) -> bool:
    text = file.text or ""
    return hashlib.sha256(text.encode("utf-8")).hexdigest() == file.get("sha256")


def provision_lines(content: bytes) -> tuple[str, ...]:
    """The text of a provision, a paragraph or cell a line, without its front sheet.

    A front sheet that was taken out before the issue is no change of the text.
    """
    read = read_word(content)
    lines = (
        " ".join(each.text.replace(OBJECT, "").split())
        for each in paragraphs(read.blocks)
        if not each.style.startswith("Front")
    )
    return tuple(line for line in lines if line)


def _digest(content: bytes) -> str:
    text = "".join("".join(line.split()) for line in provision_lines(content))
    return hashlib.sha256(text.encode("utf-8")).hexdigest()
