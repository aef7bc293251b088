"""Bridges inside the limits, and no word on how their decks are cut.

Looks at
    Whether bridges lie within the limits, whether an area or a depth for decks is given, and
    whether the job names bridges among the things it leaves out.

Why it matters
    The steel of a deck lies closer to the surface than that of a pavement. A machine that runs on
    at the depth of the roadway takes cover that nobody meant to give away; a machine that stops
    leaves a deck without texture that somebody meant to have.

Conflict
    conditions.bridges_within: true

Settled
    conditions.bridges_within: true
    areas.mainline.groove.depth_on_bridges: 1/8 in to 3/16 in

How to settle it
    Give the decks an area of their own, or a depth on bridges.
    Or name the bridges among the work that is left out.

Sources
    California DOT Standard Specifications 42-2, 2015: shallower on decks than beside them
    Iowa DOT Standard Specifications 2532, 2008: a deck is ground only where designated, then whole
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texts import texts

_BRIDGE = re.compile(r"\b(bridge|deck|structure)s?\b", re.IGNORECASE)

RULE = Rule(
    title="bridges lie within the limits, and nothing is said about their decks",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.bridges_within",),
    base="longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job with bridges that neither textures nor excludes their decks."""
    conditions = job.conditions
    roads = [area for area in job.areas.values() if area.place == "roadway"]
    if not conditions.bridges_within or not roads or _decided(job):
        return
    says = (
        "Bridges lie within the limits. No area is a bridge deck, no depth is given for decks, "
        "and the job does not name bridges among what it leaves out."
    )
    at = [
        evidence(conditions, "bridges_within", "bridges within the limits"),
        *(evidence(area, "texture", "texture") for area in roads),
    ]
    settle = (
        "an area with place bridge_deck",
        "a groove depth on bridges",
        "name the bridges among the work that is left out",
    )
    yield RULE.finding(None, says, at, settle)


def _decided(job: Job) -> bool:
    if any(area.place == "bridge_deck" for area in job.areas.values()):
        return True
    if any(area.groove and area.groove.depth_on_bridges for area in job.areas.values()):
        return True
    return any(_BRIDGE.search(text.words) for text in texts(job))
