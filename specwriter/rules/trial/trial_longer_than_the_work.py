"""A trial section longer than the work it is to try.

Looks at
    The length of the trial section against the length of all stretches of each texture.

Why it matters
    A trial section is cut for each texture, within its limits. One that is longer than the work
    cannot be cut, or leaves no work for which it was a trial.

Conflict
    trial_section: {required: true, length: 6000 ft}

Settled
    trial_section: {required: true, length: 500 ft}

How to settle it
    Shorten the trial section, or correct the limits.

Sources
    arithmetic: the length of the trial section against the sum of the stretches
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import show
from specwriter.rules.places import stretch_length, words
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the trial section is longer than the work",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("trial_section.length", "limits"),
    quiet_after=("quantity-against-limits", "stretch-of-no-length"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each texture with less length than the trial section."""
    trial = given(job.trial_section)
    length = given(trial.length)
    for texture in dict.fromkeys(area.texture for area in job.areas.values()):
        areas = [area for area in job.areas.values() if area.texture == texture]
        stretches = [stretch_length(each) for area in areas for each in area.limits]
        known = [each for each in stretches if each is not None]
        if trial.required is False or len(known) < len(stretches):
            continue
        if (length.interval.low or 0) <= sum(known):
            continue
        says = (
            f"The trial section takes {length}; all of {words(texture)} is "
            f"{show(sum(known, Fraction(0)), length.unit, 0)} long."
        )
        at = [evidence(trial, "length", "length of the trial section")]
        at += [
            evidence(each, "end", "end of the stretch") for area in areas for each in area.limits
        ]
        yield RULE.finding(None, says, at, ("a shorter trial section", "correct the limits"))
