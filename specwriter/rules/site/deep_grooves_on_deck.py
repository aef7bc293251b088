"""Grooves of a bridge deck deeper than documents cut them.

Looks at
    The groove depth of an area on a bridge deck, and the depth that a road states for its
    bridges.

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
    needs=("groove",),
    base="longitudinal_grooving",
    quiet_after=("requirement-unusual", "unit-slip", "deeper-on-bridges-or-loops"),
    echo=True,
)

_DEEP = max(bounds_of(parse("3/8 in")))


def check(job: Job) -> Iterator[Finding]:
    """One finding for each depth on decks of more than twice the published one."""
    for area in job.areas.values():
        groove = given(area.groove)
        on_deck = area.place == "bridge_deck"
        depths = (
            ("depth", "groove depth", groove.depth if on_deck else None),
            ("depth_on_bridges", "groove depth on bridges", groove.depth_on_bridges),
        )
        for key, label, depth in depths:
            if depth is None or max(bounds_of(depth)) <= _DEEP:
                continue
            where = " on a bridge deck" if key == "depth" else ""
            says = f"The {label} is {depth}{where}; published is 1/8 in to 3/16 in."
            at = [evidence(groove, key, label)]
            yield RULE.finding(area, says, at, ("correct the depth", "accept it with the reason"))
