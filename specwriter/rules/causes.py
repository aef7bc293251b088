"""Which findings tell a cause, and which only follow from one that is told already."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from specwriter.diagnostic import Finding, Grade
from specwriter.rules.registry import RegisteredRule
from specwriter.rules.rule import Rule


def causes(
    findings: Sequence[Finding], rules: Iterable[RegisteredRule], beside: Sequence[Finding]
) -> tuple[tuple[Finding, ...], frozenset[str]]:
    """The findings that do not follow from another, and the paths of values that are slips.

    ``beside`` are findings of the reconciliation.
    """
    by_slug = {rule.slug: rule.rule for rule in rules}
    kept = tuple(_told(findings, by_slug, beside))
    slips = frozenset(path for each in kept if by_slug[each.slug].slip for path in _places(each))
    of_slips = {id(each) for each in kept if by_slug[each.slug].slip}
    first = {id(each) for each in first_hand(kept, slips)} | of_slips
    return tuple(each for each in kept if id(each) in first), slips


def first_hand(findings: Iterable[Finding], slips: frozenset[str]) -> Iterator[Finding]:
    """The findings without what is computed from a value that is a slip; conflicts stay."""
    for finding in findings:
        if finding.grade is Grade.CONFLICT or not slips & _places(finding):
            yield finding


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
    return rule.echo and any(
        _places(finding) <= _places(each)
        for each in beside
        if each.grade is Grade.CONFLICT or not rule.slip
    )


def _places(finding: Finding) -> set[str]:
    return {each.path for each in finding.evidence}


def _clauses(finding: Finding) -> set[str]:
    return {_clause(each.path) for each in finding.evidence}


def _clause(path: str) -> str:
    """The requirement that a path belongs to: ``areas.mainline.groove``, ``pay_items.grinding``."""
    return ".".join(path.split(".")[: 3 if path.startswith("areas.") else 2])
