"""Clashes and results as findings, with the arithmetic in the job's own numbers."""

from __future__ import annotations

from collections.abc import Iterable

from specwriter.diagnostic import Finding, Grade
from specwriter.quantity import Interval, show_interval_like, show_like
from specwriter.reconcile.clash import Clash
from specwriter.reconcile.joint import TOGETHER
from specwriter.reconcile.requirement import Requirement, and_list
from specwriter.reconcile.results_text import result_finding
from specwriter.reconcile.verdict import Verdict


def findings_from(verdicts: Iterable[Verdict]) -> tuple[Finding, ...]:
    """One finding for each verdict that asks somebody to act."""
    found = []
    for verdict in verdicts:
        if verdict.clash is not None:
            found.append(_clash_finding(verdict.area, verdict.clash))
        elif verdict.result is not None and verdict.outcome in ("impossible", "not assured"):
            found.append(result_finding(verdict.area, verdict.outcome, verdict.result))
    return tuple(found)


def _clash_finding(area: str, clash: Clash) -> Finding:
    one = clash.relations[0] if len(clash.relations) == 1 else None
    return Finding(
        slug=one.slug if one else TOGETHER.slug,
        grade=Grade.CAUTION if clash.nominal_only else Grade.CONFLICT,
        basis="arithmetic",
        title=one.title if one else f"{and_list(_labels(clash))} cannot hold together",
        area=area,
        evidence=tuple(each.evidence for each in clash.members),
        says=_says(clash),
        settle=tuple(
            f"{move.member.label} {show_interval_like(_bounded(move.to), move.member.quantity)}"
            for move in clash.moves
        ),
        sources=tuple(dict.fromkeys(each.source for each in clash.relations)),
    )


def _says(clash: Clash) -> str:
    sentence = _own_sentence(clash) or _general_sentence(clash)
    if clash.nominal_only:
        return f"{sentence} Only the edges of the tolerances meet; the nominal values disagree."
    thickness = [one for one in clash.relations if "thickness" in one.slug]
    if thickness:
        return f"{sentence} The job gives one blade thickness, read as both core and segment."
    return sentence


def _own_sentence(clash: Clash) -> str:
    """The relation's own words; they need one relation, and one value a member."""
    if len(clash.relations) != 1 or not clash.relations[0].sentence:
        return ""
    if any(each.quantity.form != "value" for each in clash.members) and not clash.nominal_only:
        return ""
    first = clash.relations[0].variables[0]
    move = next((each for each in clash.moves if each.member.variable == first), None)
    words = {each.variable.replace(".", "_"): _nominal_text(each) for each in clash.members}
    names = {name.replace(".", "_") for name in clash.relations[0].variables}
    if move is None or set(words) != names:
        return ""
    return clash.relations[0].sentence.format(
        found=show_interval_like(_bounded(move.to), move.member.quantity), **words
    )


def _nominal_text(requirement: Requirement) -> str:
    quantity = requirement.quantity
    return (
        quantity.text if quantity.form == "value" else show_like(quantity.amounts[0].base, quantity)
    )


def _general_sentence(clash: Clash) -> str:
    move = clash.moves[0]
    others = [each for each in clash.members if each is not move.member]
    given = and_list([f"{each.label} {each.quantity.text}" for each in others])
    room = show_interval_like(_bounded(move.to), move.member.quantity)
    because = "; ".join(dict.fromkeys(each.statement for each in clash.relations))
    return (
        f"With {given}, the {move.member.label} can only be {room}, "
        f"not {move.member.quantity.text} ({because})."
    )


def _bounded(interval: Interval) -> Interval:
    """Without the lower end 0, which every dimension has."""
    return Interval(interval.low or None, interval.high)


def _labels(clash: Clash) -> list[str]:
    return [each.label for each in clash.members]
