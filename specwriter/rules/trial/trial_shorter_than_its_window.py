"""A trial section that does not hold half a window in which coverage is judged.

Looks at
    The length of the trial section against the length of the coverage windows.

Why it matters
    The share of the surface that is textured is judged in a window of a stated length. A trial
    section much shorter than that shows little about coverage: one bare strip is a large share of
    it, or happens not to lie in it.

Conflict
    trial_section: {required: true, length: 20 ft}
    areas.mainline.coverage: {share: at least 95 percent, window_width: 3 ft, window_length: 100 ft}

Settled
    trial_section: {required: true, length: 500 ft}
    areas.mainline.coverage: {share: at least 95 percent, window_width: 3 ft, window_length: 100 ft}

How to settle it
    Lengthen the trial section to one window or more.

Sources
    California DOT Standard Specifications, section 42-2, 2015: 95 percent of any 2 ft by 100 ft
    common practice, no source: a trial section holds at least half of a window
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the trial section is short for the window of coverage",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("trial_section.length", "coverage.window_length"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding with every window of which the trial section does not hold half."""
    trial = given(job.trial_section)
    length = given(trial.length)
    windows = [given(area.coverage) for area in job.areas.values()]
    least = 2 * length.amounts[-1].base
    longer = [each for each in windows if given(each.window_length).amounts[-1].base > least]
    if trial.required is False or not longer:
        return
    window = longer[0].window_length
    says = f"Coverage is judged in a window {window} long; the trial section has {length}."
    at = [evidence(trial, "length", "length of the trial section")]
    at += [evidence(each, "window_length", "length of the window") for each in longer]
    yield RULE.finding(None, says, at, (f"a trial section of {window} or more",))
