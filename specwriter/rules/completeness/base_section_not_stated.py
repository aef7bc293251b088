"""A provision that does not say what it changes.

Looks at
    The section of the standard specifications that the provision belongs to, its edition, and
    what the provision does to it.

Why it matters
    A provision that is added to a section leaves its limits standing beside the new ones; one
    that replaces it takes requirements out that nobody meant to lose. Courts read both together.

Conflict
    project.base_section.action: null

Settled
    project.base_section.action: replace

How to settle it
    State number and edition of the section, and the action: new section, added after, replaced
    or amended.

Sources
    Texas DOT PS&E manual, section 4.3, undated: only the sentences that must go are deleted
    Connecticut DOT style guide, sections 3.02.01 and 3.02.02, 2014: an adjustment or a full rewrite
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule

RULE = Rule(
    title="it is not stated which section the provision changes, and how",
    grade=Grade.OPEN,
    basis="published",
    gap=True,
    base="complete/diamond_grinding",
)

_NEEDED = {"number": "its number", "edition": "its edition", "action": "what is done to it"}


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that does not say what it changes in the standard specifications."""
    section = job.project.base_section
    if section is None:
        missing = list(_NEEDED)
    else:
        missing = [key for key in _NEEDED if getattr(section, key) is None]
    if not missing:
        return
    names = listed([_NEEDED[key] for key in missing])
    says = f"The provision belongs to a section of the standard specifications; missing: {names}."
    title = job.project.title
    at = [Evidence(path="project.title", label="title of the provision", written=title)]
    settle = (f"state under project.base_section: {', '.join(missing)}",)
    yield RULE.finding(None, says, at, settle)
