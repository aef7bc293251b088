"""A ride measured after work that this job does not have.

Looks at
    The stage at which smoothness is measured, against the textures and the sequence.

Why it matters
    A profile that waits for grooves never comes due in a job that only grinds. The segment is
    then accepted at no time, or at one that somebody picks.

Conflict
    areas.mainline.smoothness.measured: after_grooving

Settled
    areas.mainline.smoothness.measured: after_grinding

How to settle it
    Name a stage of this job, or name the missing work in the sequence.

Sources
    common practice, no source: a test is tied to an event of the contract
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides, words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.steps import done

RULE = Rule(
    title="the ride is measured after work that is not done",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("smoothness.measured",),
)

_WORK = {"after_grinding": "grinding", "after_grooving": "grooving"}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ride measured after a cut that the job does not have."""
    present = done(job)
    for area, ride in rides(job):
        work = _WORK.get(given(ride.measured))
        if work is None or work in present:
            continue
        says = f"The ride is to be measured {words(ride.measured)}, and the job has no {work}."
        at = [
            evidence(ride, "measured", "stage of the work"),
            evidence(area, "texture", "texture"),
        ]
        settle = ("name a stage of this job", f"name the {work} in the sequence")
        yield RULE.finding(area, says, at, settle)
