"""Grooves of a bridge deck deeper than documents cut them.

Looks at
    The groove depth of an area on a bridge deck.

Why it matters
    The grooves take cover from the top steel, and salt water stands in them. What is usual on a
    road is deep on a deck.

Conflict
    areas.mainline.place: bridge_deck
    areas.mainline.groove.depth: 1/2 in

Settled
    areas.mainline.place: bridge_deck
    areas.mainline.groove.depth: 1/8 in to 3/16 in

How to settle it
    Correct the depth, or accept it with the reason.

Sources
    California DOT Standard Specifications 42-2, 2015: 1/8 in to 3/16 in on bridge decks
    common practice, no source: twice that depth is still called usual
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.usual import bounds_of

RULE = Rule(
    title="the grooves are deep for a bridge deck",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("groove.depth",),
    base="longitudinal_grooving",
    quiet_after=("requirement-unusual", "unit-slip"),
    echo=True,
)

_DEEP = max(bounds_of(parse("3/8 in")))


def check(job: Job) -> Iterator[Finding]:
    """One finding for each deck whose grooves are deeper than twice the published depth."""
    for area in job.areas.values():
        groove = given(area.groove)
        depth = given(groove.depth)
        if area.place != "bridge_deck" or max(bounds_of(depth)) <= _DEEP:
            continue
        says = f"The groove depth is {depth} on a bridge deck; published is 1/8 in to 3/16 in."
        at = [evidence(groove, "depth", "groove depth")]
        yield RULE.finding(area, says, at, ("correct the depth", "accept it with the reason"))
