"""A required result that the rest does not assure, as a finding."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model.labels import and_list
from specwriter.quantity import UNITS, Quantity, show, show_interval_like, show_like
from specwriter.reconcile.relation import basis_of
from specwriter.reconcile.variables import VARIABLES, label
from specwriter.reconcile.verdict import ResultCheck


def result_finding(area: str, check: ResultCheck) -> Finding:
    """A caution: the job can be obeyed and the result still fail."""
    named = check.relation.assures
    assert named is not None
    return Finding(
        slug=check.relation.slug if check.is_hopeless else named.slug,
        grade=Grade.CAUTION,
        basis=basis_of([check.relation]),
        title=check.relation.title if check.is_hopeless else named.title,
        area=area,
        evidence=tuple(each.evidence for each in (check.target, *check.members)),
        says=" ".join(_sentences(check)),
        settle=tuple(_ways(check)),
        sources=(check.relation.source,),
    )


def _sentences(check: ResultCheck) -> Iterator[str]:
    target = check.target
    yield (
        f"Everything else in the job allows {_a(target.label)} of "
        f"{show_interval_like(check.allowed, target.quantity)}; it asks for {target.written}."
    )
    yield _witness(check)
    if check.missing and check.missing_needed is not None:
        yield (
            f"The {label(check.missing)}, which the job does not state, would have to be "
            f"{_computed(check.missing, check.missing_needed)} or more."
        )
    if check.is_hopeless:
        room = "rounding the numbers" if check.relation.kind == "exact" else "its scatter"
        yield f"As written no choice reaches the limit; only {room} leaves room."
    yield f"Here {check.relation.statement}."


def _a(label: str) -> str:
    return f"{'an' if label[0] in 'aeio' else 'a'} {label}"


def witness_choice(check: ResultCheck) -> str:
    """The value of each requirement in the choice that fails the result."""
    samples = {each.variable: each for each in check.members}
    return and_list(
        [
            f"{samples[name].label} {show_like(value, samples[name].quantity)}"
            for name, value in check.witness
            if name in samples
        ]
    )


def _witness(check: ResultCheck) -> str:
    found = dict(check.witness)[check.target.variable]
    worst = show_against(found, check.target.quantity)
    return f"This choice obeys the rest: {witness_choice(check)}; it gives {worst}."


def show_against(value: Fraction, limit: Quantity) -> str:
    """A computed value in the words of the limit, fine enough to be told from it."""
    text = show_like(value, limit)
    if any(text == show_like(each.base, limit) and value != each.base for each in limit.amounts):
        return show(value, limit.unit, 5)
    return text


def _computed(name: str, value: Fraction) -> str:
    return show(value, UNITS[VARIABLES[name].unit], 2)


def _ways(check: ResultCheck) -> Iterator[str]:
    for each in check.tightenings:
        yield f"{each.member.label} {each.member.shown(each.to, inward=True)}"
    if check.missing and check.missing_needed is not None:
        needed = _computed(check.missing, check.missing_needed)
        key = check.missing.rpartition(".")[2]
        yield f"state the {label(check.missing)} ({key}), {needed} or more"
    yield _limit_that_holds(check) or f"change the {check.target.label} that is asked for"


def _limit_that_holds(check: ResultCheck) -> str:
    """The limit that every choice keeps; empty where choices are not bounded on its side."""
    goal, allowed, target = check.target.interval, check.allowed, check.target
    if goal.high is None and allowed.low:
        return f"{target.label} at least {show_like(allowed.low, target.quantity, 'down')}"
    if goal.low is None and allowed.high is not None:
        return f"{target.label} at most {show_like(allowed.high, target.quantity, 'up')}"
    return ""
