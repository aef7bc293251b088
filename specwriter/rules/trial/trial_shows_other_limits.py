"""A trial section that is to show another value than production must have.

Looks at
    The results that the trial section must show, where they name a property and a value, against
    the limits of the areas.

Why it matters
    The trial proves that the head gives what production is judged by. Where the two limits have
    nothing in common, whoever passes the trial fails the work.

Conflict
    trial_section: {required: true, shows: [groove depth 3/16 in to 1/4 in]}

Settled
    trial_section: {required: true, shows: [groove depth 1/16 in]}

How to settle it
    Ask the trial section for the limits of production.

Sources
    arithmetic: the two ranges have no value in common
    common practice, no source: a trial section is judged by the limits of production
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import suppress

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.quantity import Quantity, ValueFault, parse
from specwriter.rules.measures import Measure, measures
from specwriter.rules.rule import Rule, given

RULE = Rule(
    title="the trial section is to show another value than production",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("trial_section.shows",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each result that no surface within the limits of an area can show."""
    trial = given(job.trial_section)
    for index, result in enumerate(trial.shows):
        for area, measure in _named(job, result):
            shown = _value(result, measure)
            if shown is None or not shown.reading.meet(measure.value.reading).is_empty:
                continue
            says = f"The trial section shows {result}; production has {measure.value}."
            path = f"trial_section.shows.{index}"
            at = [
                Evidence(path=path, label="result of the trial section", written=result),
                measure.evidence,
            ]
            settle = (f"{measure.label} {measure.value} in the trial section",)
            yield RULE.finding(area, says, at, settle)


def _named(job: Job, result: str) -> Iterator[tuple[Area, Measure]]:
    """The longest name of a measure that a result begins with, in each area that has it."""
    for area in job.areas.values():
        found = [each for each in measures(area) if result.lower().startswith(each.label)]
        if found:
            yield area, max(found, key=lambda each: len(each.label))


def _value(result: str, measure: Measure) -> Quantity | None:
    """The value behind the name; ``None`` for words that are no value of that kind."""
    words = result[len(measure.label) :].strip(" :,")
    words = re.sub(r"^(?:of|is|from)\s+", "", words)
    with suppress(ValueFault):
        value = parse(words)
        return value if value.dimension == measure.value.dimension else None
    return None
