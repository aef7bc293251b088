"""A noise limit on the wrong scale: a roadside level for OBSI, or the other way round.

Looks at
    The measure of noise and its limit.

Why it matters
    Beside the tyre it is 20 to 30 dB louder than at the roadside. A roadside figure given for
    OBSI cannot be met by any pavement, an OBSI figure for the roadside by none be missed.

Conflict
    areas.mainline.noise: {measure: OBSI, at_most: 75 dB(A), speed: 60 mph}

Settled
    areas.mainline.noise: {measure: OBSI, at_most: 102 dB(A), speed: 60 mph}

How to settle it
    Make the measure that of the figure, or set the figure for the measure.

Sources
    NCHRP Report 630, table 9, undated: roadside is 21.9 dB below OBSI at 25 ft
    project calculation: no texture lies below 92 dB(A) beside the tyre, none above at the roadside
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.noise._noise import noises
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.sound import BETWEEN_SCALES

RULE = Rule(
    title="the noise limit does not fit its measure",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("noise.measure", "noise.at_most"),
    quiet_after=("noise-measure-and-method",),
)

_AT_ROADSIDE = {"25 ft": 21.9, "50 ft": 28.5}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each limit that belongs to the other measure."""
    for area, noise in noises(job):
        limit = given(noise.at_most)
        level = limit.amounts[0].value
        if noise.measure == "OBSI" and level < BETWEEN_SCALES:
            says = f"{limit} beside the tyre is quieter than any pavement; it is a roadside level."
            settle = ("measure: roadside, with its distance", "an OBSI limit near 100 dB(A)")
        elif noise.measure == "roadside" and level > BETWEEN_SCALES:
            lower = " and ".join(
                f"{float(level) - offset:.0f} dB(A) at {place}"
                for place, offset in _AT_ROADSIDE.items()
            )
            says = f"{limit} at the roadside is a level beside the tyre; cars would give {lower}."
            settle = ("measure: OBSI", "a roadside limit for the distance of the microphone")
        else:
            continue
        at = [evidence(noise, "at_most", "noise limit"), evidence(noise, "measure", "measure")]
        yield RULE.finding(area, says, at, settle)
