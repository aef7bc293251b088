"""A trial section measured by another method than production.

Looks at
    The way the trial section is measured, where it names a standard or an instrument, against the
    standards and instruments that the areas name for the same property.

Why it matters
    Two methods give two numbers on one surface. A head that is accepted by one and judged by the
    other may fail on the first day of production without any change.

Conflict
    trial_section: {required: true, method: ride by profilograph}
    areas.mainline.smoothness: {index: MRI, instrument: inertial_profiler, sensor: line_laser}

Settled
    trial_section: {required: true, method: ride by inertial profiler}
    areas.mainline.smoothness: {index: MRI, instrument: inertial_profiler, sensor: line_laser}

How to settle it
    Measure the trial section by the tests of production.

Sources
    common practice, no source: a trial section is measured as production is
    ASTM E965-15, scope: results are not expected to match those of other methods
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import get_args

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.results import Instrument, Smoothness
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.standards import named_in, standards_in

RULE = Rule(
    title="the trial section is measured by another method",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("trial_section.method",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose own method the trial section does not use."""
    trial = given(job.trial_section)
    method = given(trial.method)
    for area in job.areas.values():
        other = [*_other_standards(area, method), *_other_instrument(area, method)]
        if trial.required is False or not other:
            continue
        names = " and ".join(each.written for each in other)
        says = f"The trial section is measured by {method}, production by {words(names)}."
        at = [evidence(trial, "method", "how the trial section is measured"), *other]
        yield RULE.finding(area, says, at, ("measure both in one way",))


def _other_standards(area: Area, method: str) -> Iterator[Evidence]:
    """What the area names for a property that the trial measures by another standard."""
    for standard in standards_in(method):
        named = list(named_in(getattr(area, standard.of)))
        if named and standard not in [each for each, _ in named]:
            yield named[0][1]


def _other_instrument(area: Area, method: str) -> Iterator[Evidence]:
    ride: Smoothness | None = area.smoothness
    found = [each for each in get_args(Instrument) if words(each) in method.lower()]
    if ride is not None and ride.instrument and found and ride.instrument not in found:
        yield evidence(ride, "instrument", "instrument")
