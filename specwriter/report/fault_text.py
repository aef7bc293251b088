"""Faults as text: where, what, the line itself with a marker, and what to do."""

from __future__ import annotations

import re

from specwriter.diagnostic import Fault
from specwriter.source import Source


def fault_text(source: Source) -> str:
    """Every fault of a source, one block each, and how many there are."""
    blocks = [_block(source, fault) for fault in source.faults]
    count = len(source.faults)
    last = "1 fault" if count == 1 else f"{count} faults"
    return "\n\n".join([*blocks, f"{last}; the job was not checked."]) + "\n"


def _block(source: Source, fault: Fault) -> str:
    place = fault.place
    lines = [f"{place}: {fault.says}"]
    text = source.line(place.line)
    if text.strip():
        # Tabs stay tabs so that the marker stands under its character in any terminal.
        before = re.sub(r"[^\t]", " ", text[: place.column - 1])
        width = max(1, min(fault.width, len(text) - place.column + 1))
        lines += [f"   {_printable(text)}", f"   {before}{'^' * width}"]
    if fault.todo:
        lines.append(f"   {fault.todo}")
    return "\n".join(lines)


def _printable(text: str) -> str:
    """The line with control characters shown as a box, one for one."""
    return "".join(
        each if each == "\t" or each.isprintable() else "\N{REPLACEMENT CHARACTER}" for each in text
    )
