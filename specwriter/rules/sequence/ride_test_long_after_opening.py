"""The ride is tested long after the work is done.

Looks at
    How long after the work, or after the opening to traffic, the ride or the straightedge may
    still be tested.

Why it matters
    Traffic, weather and the slab go on changing the profile. After a season nobody can say whether
    the roughness was left by the machine or came later, the contractor has moved away, and
    grinding again needs another lane closure.

Conflict
    areas.mainline.smoothness.test.when: at most 90 days after the lane opens to traffic

Settled
    areas.mainline.smoothness.test.when: at most 14 days after the lane opens to traffic

How to settle it
    Test within 30 days of the work, before the contractor leaves.

Sources
    Oregon DOT U00745-IRI, 2015: the contractor tests within 7 days
    Virginia DOT special provision, June 2001, second-hand: the agency tests within 30 days
    common practice, no source: the longest of these windows is still called usual
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.results import Test
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.times import days_after

_LONGEST = 30

RULE = Rule(
    title="the ride is tested long after the work",
    grade=Grade.CAUTION,
    basis="published",
    base="complete/diamond_grinding",
    quiet_after=("measured-against-time",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each test of the ride more than a month after the work or the opening."""
    for area in job.areas.values():
        for label, test in _tests(area):
            if days_after(test.when or "") <= _LONGEST:
                continue
            says = (
                f"The {label} is tested {test.when}. Published windows for the ride end 7 to 30 "
                "days after the work."
            )
            at = [evidence(test, "when", f"time of the {label} test")]
            yield RULE.finding(area, says, at, ("test within 30 days of the work",))


def _tests(area: Area) -> Iterator[tuple[str, Test]]:
    for label, owner in (("smoothness", area.smoothness), ("straightedge", area.straightedge)):
        if owner is not None and owner.test is not None:
            yield label, owner.test
