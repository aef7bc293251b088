"""The job that a drafted Word file carries inside."""

from __future__ import annotations

import hashlib
import re
from dataclasses import dataclass

from specwriter.reading.package import read_package
from specwriter.reading.xml import parse

_JOB = "{urn:specwriter:job}job"
_ITEM = re.compile(r"customXml/item\d+\.xml")


@dataclass(frozen=True, slots=True)
class JobInside:
    """The text of a job file as it was drafted; ``whole`` is false when its digest disagrees."""

    text: str
    whole: bool


def job_inside(content: bytes) -> JobInside | None:
    """The job in a Word file, or ``None`` when it holds none; ``ReadingFault`` when unreadable."""
    parts = read_package(content)
    for name in sorted(parts):
        if not _ITEM.fullmatch(name) or b"urn:specwriter:job" not in parts[name]:
            continue
        root = parse(parts[name], name)
        if root.tag == _JOB:
            text = root.text or ""
            digest = hashlib.sha256(text.encode("utf-8")).hexdigest()
            return JobInside(text=text, whole=digest == root.get("sha256"))
    return None
