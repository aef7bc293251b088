"""A range written from its higher to its lower value.

Looks at
    Every range in the job.

Why it matters
    "0.116 in to 0.080 in" can be read, and is read as its two ends. A reader may still take it
    for a slip of one of the two figures.

Conflict
    areas.mainline.groove.width: 0.130 in to 0.090 in

Settled
    areas.mainline.groove.width: 0.090 in to 0.130 in

How to settle it
    Write the lower value first.

Sources
    common practice, no source: ranges are written from low to high
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from typing import Any

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.build import key_of
from specwriter.quantity import Quantity
from specwriter.rules.rule import Rule

RULE = Rule(
    title="a range is written from high to low",
    grade=Grade.NOTE,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One note for each range of an area that begins with its higher value."""
    for area in job.areas.values():
        for path, value in _quantities(area, area.path):
            first, last = value.amounts[0], value.amounts[-1]
            if value.form != "range" or first.base <= last.base:
                continue
            label = path.removeprefix(f"{area.path}.").replace(".", " ").replace("_", " ")
            low_first = f"{last.text} {last.unit.symbol} to {first.text} {first.unit.symbol}"
            says = f"{value} is read as {low_first}."
            at = [Evidence(path=path, label=label, written=str(value))]
            yield RULE.finding(area, says, at, (f"write {low_first}",))


def _quantities(node: Any, path: str) -> Iterator[tuple[str, Quantity]]:
    """Every value below a noun, with its path."""
    if isinstance(node, Quantity):
        yield path, node
    elif isinstance(node, dict):
        for key, item in node.items():
            yield from _quantities(item, f"{path}.{key}")
    elif isinstance(node, tuple):
        for index, item in enumerate(node):
            yield from _quantities(item, f"{path}.{index}")
    elif is_dataclass(node):
        for field in fields(node):
            yield from _quantities(getattr(node, field.name), f"{path}.{key_of(field)}")
