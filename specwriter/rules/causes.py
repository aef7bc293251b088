"""Which findings tell a cause, and which only follow from one that is told already."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from specwriter.diagnostic import Finding, Grade
from specwriter.rules.registry import RegisteredRule, all_rules
from specwriter.rules.rule import Rule


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """Everything found in a job, or in one of its alternatives: by the relations, by the rules."""

    tied: tuple[Finding, ...]
    ruled: tuple[Finding, ...]
    below: str = ""
    """The path of the alternative; findings that do not touch it are found without it."""

    @property
    def found(self) -> Iterator[Finding]:
        """Every finding, also those that follow from another."""
        return self._touching((*self.tied, *self.ruled))

    def told(self, accepted: Collection[Finding]) -> Iterator[Finding]:
        """What nobody has accepted, without what follows from another finding of that kind."""
        tied = [each for each in self.tied if each not in accepted]
        ruled = [each for each in self.ruled if each not in accepted]
        return self._touching(causes(ruled, all_rules(), tied))

    def _touching(self, findings: Iterable[Finding]) -> Iterator[Finding]:
        for each in findings:
            if not self.below or any(one.path.startswith(self.below) for one in each.evidence):
                yield each


def causes(
    ruled: Sequence[Finding], rules: Iterable[RegisteredRule], beside: Sequence[Finding] = ()
) -> tuple[Finding, ...]:
    """The findings that do not follow from another one.

    ``ruled`` are findings of the ``rules``, ``beside`` those of the reconciliation, which come
    first. What is accepted is in neither: it is the cause of nothing that is still to be told.
    """
    by_slug = {rule.slug: rule.rule for rule in rules}
    found = (*beside, *_told(ruled, by_slug, beside))
    slips = [each for each in found if each.slug in by_slug and by_slug[each.slug].slip]
    paths = {path for each in slips for path in _places(each)}
    behind = [each for each in found if each not in slips and _follows(each, paths)]
    return tuple(
        _with_followers(each, behind) if each in slips else each
        for each in found
        if each not in behind
    )


def _follows(finding: Finding, slips: Collection[str]) -> bool:
    """True for what is computed from a value that is a slip; a conflict stands by itself."""
    return finding.grade is not Grade.CONFLICT and not _places(finding).isdisjoint(slips)


def _with_followers(slip: Finding, behind: Sequence[Finding]) -> Finding:
    """The slip with the names of what is not told beside it, so that nothing is lost unseen."""
    names = dict.fromkeys(each.slug for each in behind if _places(each) & _places(slip))
    if not names:
        return slip
    waits = f"Told when this is settled or accepted: {', '.join(names)}."
    return replace(slip, says=f"{slip.says} {waits}")


def _told(
    findings: Sequence[Finding], by_slug: dict[str, Rule], beside: Sequence[Finding]
) -> Iterator[Finding]:
    reported = {
        (finding.slug, clause) for finding in (*beside, *findings) for clause in _clauses(finding)
    }
    clashing = {
        clause
        for finding in (*beside, *findings)
        if finding.grade is Grade.CONFLICT
        for clause in _clauses(finding)
    }
    for finding in findings:
        rule, clauses = by_slug[finding.slug], _clauses(finding)
        caused = any(
            (cause, clause) in reported for cause in rule.quiet_after for clause in clauses
        )
        void = rule.gap and clauses <= clashing and not _misses_a_whole_matter(finding)
        if not (caused or void or _echoes(rule, finding, beside)):
            yield finding


def _misses_a_whole_matter(finding: Finding) -> bool:
    """True where nothing but the texture or its place stands for what the job does not say.

    The residue has to go somewhere, also where the texture is part of a conflict.
    """
    ends = {path.rpartition(".")[2] for path in _places(finding)}
    return ends <= {"texture", "place"}


def _echoes(rule: Rule, finding: Finding, beside: Sequence[Finding]) -> bool:
    """True where the reconciliation reports every value that the finding names."""
    told = (each for each in beside if each.grade is Grade.CONFLICT or not rule.slip)
    return rule.echo and _places(finding) <= {path for each in told for path in _places(each)}


def _places(finding: Finding) -> set[str]:
    return {each.path for each in finding.evidence}


def _clauses(finding: Finding) -> set[str]:
    return {_clause(each.path) for each in finding.evidence}


def _clause(path: str) -> str:
    """The requirement that a path belongs to: ``areas.mainline.groove``, ``pay_items.grinding``."""
    return ".".join(path.split(".")[: 3 if path.startswith("areas.") else 2])
