"""Test standards by number: which property each one measures, and what it gives."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.diagnostic import Evidence
from specwriter.model.results import Friction, Noise, Smoothness, Test, TextureDepth
from specwriter.rules.rule import evidence


@dataclass(frozen=True, slots=True, kw_only=True)
class Standard:
    """One document; ``gives`` are the measures that it yields, in the words of a job."""

    name: str
    title: str
    of: str
    """The property: a key of an area, or ``certification`` of the device."""
    gives: tuple[str, ...]
    pattern: str


# What each document measures is in its scope; editions change numbers, not the property.
STANDARDS: tuple[Standard, ...] = (
    Standard(
        name="ASTM E965",
        title="the sand patch",
        of="texture_depth",
        gives=("MTD",),
        pattern=r"E ?-?965\b",
    ),
    Standard(
        name="EN 13036-1",
        title="the volumetric patch",
        of="texture_depth",
        gives=("MTD",),
        pattern=r"EN 13036-1\b",
    ),
    Standard(
        name="ASTM E1845",
        title="mean profile depth from a profile",
        of="texture_depth",
        gives=("MPD", "ETD"),
        pattern=r"E ?-?1845\b",
    ),
    Standard(
        name="ISO 13473-1",
        title="mean profile depth from a profile",
        of="texture_depth",
        gives=("MPD", "ETD"),
        pattern=r"ISO 13473-1\b",
    ),
    Standard(
        name="ASTM E2157",
        title="the circular track meter",
        of="texture_depth",
        gives=("MPD", "MTD"),
        pattern=r"E ?-?2157\b",
    ),
    Standard(
        name="ASTM E2380",
        title="the outflow meter",
        of="texture_depth",
        gives=("an outflow time",),
        pattern=r"E ?-?2380\b",
    ),
    Standard(
        name="EN 13036-3",
        title="horizontal drainage (outflow)",
        of="texture_depth",
        gives=("an outflow time",),
        pattern=r"EN 13036-3\b",
    ),
    Standard(
        name="ASTM E274",
        title="the locked wheel",
        of="friction",
        gives=("skid number",),
        pattern=r"E ?-?274\b",
    ),
    Standard(
        name="ASTM E303",
        title="the pendulum",
        of="friction",
        gives=("pendulum number",),
        pattern=r"E ?-?303\b",
    ),
    Standard(
        name="ASTM E1911",
        title="the dynamic friction tester",
        of="friction",
        gives=("dynamic friction",),
        pattern=r"E ?-?1911\b",
    ),
    Standard(
        name="ASTM E1960",
        title="the international friction index",
        of="friction",
        gives=("friction index",),
        pattern=r"E ?-?1960\b",
    ),
    Standard(
        name="AASHTO T 360",
        title="on-board sound intensity",
        of="noise",
        gives=("OBSI",),
        pattern=r"\bT ?-?360\b",
    ),
    Standard(
        name="AASHTO TP 76",
        title="on-board sound intensity",
        of="noise",
        gives=("OBSI",),
        pattern=r"\bTP ?-?76\b",
    ),
    Standard(
        name="AASHTO TP 98",
        title="statistical pass-by at the roadside",
        of="noise",
        gives=("roadside",),
        pattern=r"\bTP ?-?98\b",
    ),
    Standard(
        name="AASHTO TP 99",
        title="continuous flow at the roadside",
        of="noise",
        gives=("roadside",),
        pattern=r"\bTP ?-?99\b",
    ),
    Standard(
        name="ISO 11819-1",
        title="statistical pass-by at the roadside",
        of="noise",
        gives=("roadside",),
        pattern=r"ISO 11819-1\b",
    ),
    Standard(
        name="ISO 11819-2",
        title="close proximity",
        of="noise",
        gives=("close proximity",),
        pattern=r"ISO 11819-2\b",
    ),
    Standard(
        name="AASHTO R 56",
        title="the certification of profilers",
        of="certification",
        gives=(),
        pattern=r"\bR ?-?56\b",
    ),
    Standard(
        name="AASHTO M 328",
        title="the equipment of profilers",
        of="certification",
        gives=(),
        pattern=r"\bM ?-?328\b",
    ),
    Standard(
        name="AASHTO R 54",
        title="ride quality with inertial profilers",
        of="smoothness",
        gives=("IRI", "MRI", "HRI"),
        pattern=r"\bR ?-?54\b",
    ),
    Standard(
        name="AASHTO R 57",
        title="operating inertial profilers",
        of="smoothness",
        gives=("IRI", "MRI", "HRI"),
        pattern=r"\bR ?-?57\b",
    ),
    Standard(
        name="ASTM E1926",
        title="computing IRI from a profile",
        of="smoothness",
        gives=("IRI", "MRI", "HRI"),
        pattern=r"E ?-?1926\b",
    ),
    Standard(
        name="ASTM E1274",
        title="the profilograph",
        of="smoothness",
        gives=("PI",),
        pattern=r"E ?-?1274\b",
    ),
    Standard(
        name="ASTM E2955",
        title="a simulated profilograph",
        of="smoothness",
        gives=("PI",),
        pattern=r"E ?-?2955\b",
    ),
)


def standards_in(text: str | None) -> list[Standard]:
    """The standards that a text names, in the order of the table."""
    return [each for each in STANDARDS if re.search(each.pattern, text or "", re.IGNORECASE)]


def named_in(
    result: TextureDepth | Friction | Noise | Smoothness | None,
) -> Iterator[tuple[Standard, Evidence]]:
    """The standards under ``method`` of a result and of its test, each with its place."""
    if isinstance(result, TextureDepth):
        yield from _named(result)
    if result is not None and result.test is not None:
        yield from _named(result.test)


def _named(node: TextureDepth | Test) -> Iterator[tuple[Standard, Evidence]]:
    for standard in standards_in(node.method):
        yield standard, evidence(node, "method", "test method")
