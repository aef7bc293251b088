"""A submittal without its dates.

Looks at
    Every submittal: when it is due and before what, whether it is reviewed, and in which time the
    agency answers. Also whether there are submittals at all.

Why it matters
    A plan that is due "before grinding" arrives the evening before. Without a time for the answer
    the contractor waits at the agency's risk, or starts without one.

Conflict
    submittals.residue_plan.response: null

Settled
    submittals.residue_plan.action: information
    submittals.residue_plan.response: null

How to settle it
    Give the days before which event it is due, whether it is reviewed or for information, and
    the days in which the agency answers a review.

Sources
    FHWA HIAM-20, attachment 3, 2010: submittals are described and realistic
    common practice, no source: a submittal has a due time, an action and a time to answer
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import Submittal
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="submittals that are missing, or without their times",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)

_NEEDED = {"due": "when", "due_before": "before what", "action": "for review or information"}


def check(job: Job) -> Iterator[Finding]:
    """One finding for all submittals that do not say enough, or for a job without any."""
    if not job.submittals:
        area = next(iter(job.areas.values()))
        says = "The job asks for no submittals: no equipment list, residue plan or quality plan."
        at = [evidence(area, "texture", "texture")]
        yield RULE.finding(None, says, at, ("state the submittals", "say in each where it is due"))
        return
    lacking = {each.id: _missing(each) for each in job.submittals.values()}
    lacking = {id: missing for id, missing in lacking.items() if missing}
    if not lacking:
        return
    names = {id: job.submittals[id].title or id.replace("_", " ") for id in lacking}
    parts = [f"{names[id]} ({', '.join(missing)})" for id, missing in lacking.items()]
    says = f"What the job does not say of its submittals: {listed(parts)}."
    at = [
        Evidence(path=job.submittals[id].path, label="submittal", written=name)
        for id, name in names.items()
    ]
    yield RULE.finding(None, says, at, ("state due, due_before, action and response of each",))


def _missing(submittal: Submittal) -> list[str]:
    missing = [name for key, name in _NEEDED.items() if getattr(submittal, key) is None]
    if submittal.action == "review" and submittal.response is None:
        missing.append("answered within")
    return missing
