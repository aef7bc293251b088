"""An OBSI limit on a bridge deck or ramp.

Looks at
    OBSI limits and the place of the area.

Why it matters
    Joints and gratings add noise that is not of the texture, and a ramp seldom has the speed and
    the straight line that the test needs. The result then judges the place, not the work.

Conflict
    areas.mainline.place: bridge_deck
    areas.mainline.noise: {measure: OBSI, at_most: 102 dB(A), speed: 60 mph}

Settled
    areas.mainline.place: roadway
    areas.mainline.noise: {measure: OBSI, at_most: 102 dB(A), speed: 60 mph}

How to settle it
    Test on the roadway of the same texture, or leave the noise limit out here.

Sources
    NCHRP Report 634, page 93, 2009: the level rises with the number of joints
    AASHTO T 360-16(2020), scope: dry, clean and straight sections without reflecting objects
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.noise._noise import NOT_COMPARABLE, noises
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the place is not fit for an OBSI test",
    grade=Grade.CAUTION,
    basis="published",
    needs=("noise.measure",),
    quiet_after=NOT_COMPARABLE,
)

_WHY = {
    "bridge_deck": "joints and parapets add to the level",
    "ramp": "a ramp is curved and slower than the test",
}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each OBSI limit on a deck or ramp."""
    for area, noise in noises(job):
        if noise.measure != "OBSI" or area.place not in _WHY:
            continue
        says = f"On a {words(area.place)} the test judges the place: {_WHY[area.place]}."
        at = [evidence(noise, "measure", "measure of noise"), evidence(area, "place", "place")]
        settle = ("test on a roadway with the same texture", "leave the noise limit out here")
        yield RULE.finding(area, says, at, settle)
