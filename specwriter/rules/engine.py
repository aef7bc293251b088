"""Runs the rules over a job: findings, what could not be looked at, and rules that broke."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, fields, replace
from typing import Any

from specwriter.diagnostic import Finding, NotRun
from specwriter.model import Area, Job, sites_of
from specwriter.rules.causes import causes
from specwriter.rules.registry import RegisteredRule, all_rules

_OF_JOB = frozenset(each.name for each in fields(Job))
"""Keys that stand at the top of the job file: a need that begins with one is asked of the job."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Defect:
    """A rule that broke on a job: a fault of this program, not of the job."""

    slug: str
    error: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleReport:
    """What the rules found; ``ran`` holds the slugs that could look at something."""

    found: tuple[Finding, ...] = ()
    """Every finding."""
    findings: tuple[Finding, ...] = ()
    """The findings that follow from no other one of the rules."""
    not_run: tuple[NotRun, ...] = ()
    defects: tuple[Defect, ...] = ()
    ran: tuple[str, ...] = ()


def run_rules(job: Job, rules: Iterable[RegisteredRule] | None = None) -> RuleReport:
    """Every rule on every area that states what the rule needs; a broken rule stops no other."""
    findings: list[Finding] = []
    not_run: list[NotRun] = []
    defects: list[Defect] = []
    ran: list[str] = []
    chosen = tuple(all_rules() if rules is None else rules)
    for rule in chosen:
        ready = []
        for part in sites_of(job) if rule.rule.by_site else (job,):
            able, missing = _ready(rule, part, of_all=len(part.areas) == len(job.areas))
            not_run += missing
            ready += [able] if able.areas else []
        if not ready:
            continue
        ran.append(rule.slug)
        try:
            found = dict.fromkeys(one for each in ready for one in rule.check(each))
            findings += [_signed(rule, each) for each in found]
        except Exception as error:
            defects.append(Defect(slug=rule.slug, error=f"{type(error).__name__}: {error}"))
    return RuleReport(
        found=tuple(findings),
        findings=causes(findings, chosen),
        not_run=tuple(not_run),
        defects=tuple(defects),
        ran=tuple(ran),
    )


def _ready(rule: RegisteredRule, job: Job, *, of_all: bool) -> tuple[Job, list[NotRun]]:
    """The job with only the areas that state what the rule needs, and the others' reasons.

    What the job itself lacks is told ``of_all`` its areas at once, or of each.
    """
    textures = rule.rule.applies_to
    areas = {id: area for id, area in job.areas.items() if not textures or area.texture in textures}
    if areas and (key := _lacking(rule, job, of_job=True)):
        told = [None] if of_all else list(areas)
        return replace(job, areas={}), [_not_run(rule, each, key) for each in told]
    lacking = {id: _lacking(rule, area, of_job=False) for id, area in areas.items()}
    ready = {id: area for id, area in areas.items() if not lacking[id]}
    return replace(job, areas=ready), [
        _not_run(rule, id, key) for id, key in lacking.items() if key
    ]


def _not_run(rule: RegisteredRule, area: str | None, key: str) -> NotRun:
    because = f"{key} is not given"
    return NotRun(slug=rule.slug, title=rule.rule.title, area=area, because=because, lacks=key)


def _lacking(rule: RegisteredRule, owner: Job | Area, *, of_job: bool) -> str:
    """The first thing that the rule needs and the owner lacks: ``smoothness`` before its keys."""
    for need in rule.rule.needs:
        way = need.split(".")
        if (way[0] in _OF_JOB) is not of_job:
            continue
        value: Any = owner
        for depth, key in enumerate(way, start=1):
            value = getattr(value, key)
            if value is None or value in ((), {}):
                return ".".join(way[:depth])
    return ""


def _signed(rule: RegisteredRule, finding: Finding) -> Finding:
    return replace(finding, slug=rule.slug, sources=rule.sources)
