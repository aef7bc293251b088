"""Findings for which somebody takes responsibility, and entries that no longer hold.

Looks at
    The entries under accepted, the findings they name, and the date of the project.

Why it matters
    An accepted finding is left standing on somebody's word. When the value it was given for
    has changed, its day has passed or the finding is gone, that word no longer covers anything.
    It never covers another finding: what waited behind the accepted one is then told.

How to settle it
    Take the entry out, correct its name or place, or have the finding accepted anew.

Sources
    common practice, no source: a deviation is granted for what was seen, not for what came later
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from difflib import get_close_matches

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import Accepted

SLUG = "acceptance"
TITLE = "an acceptance that no longer holds"


@dataclass(frozen=True, slots=True, kw_only=True)
class AcceptedFinding:
    """A finding and the entry that covers it."""

    finding: Finding
    entry: Accepted


@dataclass(frozen=True, slots=True, kw_only=True)
class Settlement:
    """The findings that entries cover, and the findings about entries that cover nothing."""

    accepted: tuple[AcceptedFinding, ...]
    complaints: tuple[Finding, ...]

    @property
    def covered(self) -> frozenset[Finding]:
        """The accepted findings; they are the cause of no other one."""
        return frozenset(each.finding for each in self.accepted)


def settle(job: Job, findings: Sequence[Finding], known: Collection[str]) -> Settlement:
    """Apply the job's acceptances to everything found, also to what follows from another finding.

    ``known`` are all slugs that a finding can have.
    """
    accepted: list[AcceptedFinding] = []
    complaints: list[Finding] = []
    for entry in job.accepted:
        covered = [each for each in findings if _covers(entry, each)]
        if complaint := _complaint(job, entry, covered, known):
            complaints.append(complaint)
        else:
            accepted += [AcceptedFinding(finding=each, entry=entry) for each in covered]
    once = {each.finding: each for each in accepted}
    return Settlement(accepted=tuple(once.values()), complaints=tuple(complaints))


def _covers(entry: Accepted, finding: Finding) -> bool:
    return finding.slug == entry.finding and any(_touched(entry, finding))


def _touched(entry: Accepted, finding: Finding) -> Iterator[Evidence]:
    """The requirements of the finding that stand at the entry's place or below it."""
    for each in finding.evidence:
        if each.path == entry.at or each.path.startswith(f"{entry.at}."):
            yield each


def _complaint(
    job: Job, entry: Accepted, covered: Sequence[Finding], known: Collection[str]
) -> Finding | None:
    if entry.finding not in known:
        near = get_close_matches(entry.finding, known, 1)
        return _finding(
            entry,
            "finding",
            f"No finding is called {entry.finding}.",
            f"did you mean {near[0]}?" if near else "take the entry out",
        )
    if entry.until and job.project.date and entry.until < job.project.date:
        says = f"It held until {entry.until}, and the provision is of {job.project.date}."
        return _finding(entry, "until", says, "have the finding accepted anew")
    if not covered:
        says = f"There is no finding {entry.finding} at {entry.at} any more."
        return _finding(entry, "at", says, "take the entry out")
    now = {each.written for finding in covered for each in _touched(entry, finding)}
    if entry.wording is not None and entry.wording not in now:
        says = f"It was given for {entry.wording}; the value is now {', '.join(sorted(now))}."
        return _finding(entry, "for", says, "have the finding accepted anew")
    return None


def _finding(entry: Accepted, key: str, says: str, way: str) -> Finding:
    written = entry.wording if key == "for" else getattr(entry, key)
    return Finding(
        slug=SLUG,
        grade=Grade.OPEN,
        basis="practice",
        title=TITLE,
        area=None,
        evidence=(
            Evidence(path=entry.path_to(key), label="accepted finding", written=str(written)),
        ),
        says=says,
        settle=(way,),
        sources=("common practice, no source",),
    )
