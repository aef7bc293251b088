"""Faults as text: where, what, the line itself with a marker, and what to do."""

from __future__ import annotations

import re

from specwriter.diagnostic import Fault
from specwriter.report.sentences import counted
from specwriter.source import Source


def fault_text(source: Source) -> str:
    """Every fault of a source, one block each, and how many there are."""
    blocks = [_block(source, fault) for fault in source.faults]
    return "\n\n".join([*blocks, count_of_faults(source)]) + "\n"


def count_of_faults(source: Source) -> str:
    """How many faults a source has, and what they mean for the check."""
    return f"{counted(len(source.faults), 'fault', 'faults')}; the job was not checked."


def _block(source: Source, fault: Fault) -> str:
    lines = [f"{fault.place}: {fault.says}"]
    before, marked, after = marked_line(source, fault)
    if (before + marked + after).strip():
        # Tabs stay tabs so that the marker stands under its character in any terminal.
        space = re.sub(r"[^\t]", " ", before)
        lines += [f"   {before}{marked}{after}", f"   {space}{'^' * max(1, len(marked))}"]
    if fault.todo:
        lines.append(f"   {fault.todo}")
    return "\n".join(lines)


def marked_line(source: Source, fault: Fault) -> tuple[str, str, str]:
    """The line of a fault: what stands before the fault, the fault itself, what stands after."""
    text = _printable(source.line(fault.place.line))
    start = fault.place.column - 1
    end = start + max(1, fault.width)
    return text[:start], text[start:end], text[end:]


def _printable(text: str) -> str:
    """The line with control characters shown as a box, one for one."""
    return "".join(
        each if each == "\t" or each.isprintable() else "\N{REPLACEMENT CHARACTER}" for each in text
    )
