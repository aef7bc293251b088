"""A groove deeper on bridges or over loops than elsewhere.

Looks at
    The groove depth on bridges and over loop detectors against the general groove depth, and the
    depth of a bridge deck against that of the roads of the same texture.

Why it matters
    Both depths exist to spare what lies under the surface: steel in a deck, wire in a loop. A
    figure above the general depth turns the exception round, and is most often a slip.

Conflict
    areas.mainline.groove.depth: 1/8 in to 3/16 in
    areas.mainline.groove.depth_on_bridges: 1/8 in to 1/4 in

Settled
    areas.mainline.groove.depth: 1/8 in to 1/4 in
    areas.mainline.groove.depth_on_bridges: 1/8 in to 3/16 in

How to settle it
    Lower the depth on bridges or over loops, or raise the general depth.

Sources
    California DOT Standard Specifications 42-2, 2015: 1/8 to 1/4 in, decks to 3/16, loops to 1/8
    arithmetic: the greatest depths are compared as written
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity, show_like
from specwriter.rules.rule import Rule, evidence, given

_PLACES = (
    ("depth_on_bridges", "groove depth on bridges"),
    ("depth_over_loops", "groove depth over loops"),
)

RULE = Rule(
    title="the groove is deeper where it should be shallower",
    grade=Grade.CAUTION,
    basis="published",
    needs=("groove.depth",),
    base="longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each depth on bridges or over loops above the general depth."""
    for area in job.areas.values():
        groove = given(area.groove)
        general = given(groove.depth)
        for key, label in _PLACES:
            special = getattr(groove, key)
            if special is None or not _above(special, general):
                continue
            says = f"The {label} is {special}, and the groove depth elsewhere {general}."
            at = [evidence(groove, key, label), evidence(groove, "depth", "groove depth")]
            settle = (f"a {label} of no more than {show_like(_top(general), general)}",)
            yield RULE.finding(area, says, at, settle)
    yield from _decks(job)


def _decks(job: Job) -> Iterator[Finding]:
    """One finding for each deck with deeper grooves than a road of the same texture."""
    for deck in job.areas.values():
        for road in job.areas.values():
            same = road.texture == deck.texture and road.place == "roadway"
            if deck.place != "bridge_deck" or not same:
                continue
            grooves, others = given(deck.groove), given(road.groove)
            deep, general = given(grooves.depth), given(others.depth)
            if not _above(deep, general):
                continue
            says = f"On the deck the groove depth is {deep}, and on {road.id} {general}."
            at = [
                evidence(grooves, "depth", "groove depth of the deck"),
                evidence(others, "depth", "groove depth of the road"),
            ]
            settle = (f"a depth of no more than {show_like(_top(general), general)} on the deck",)
            yield RULE.finding(deck, says, at, settle)
            break


def _above(special: Quantity, general: Quantity) -> bool:
    high, low = special.interval.high, general.reading.high
    return high is not None and low is not None and high > low


def _top(value: Quantity) -> Fraction:
    return given(value.interval.high)
