"""The arithmetic of a clash in words: what the other members leave one of them, step by step."""

from __future__ import annotations

from collections.abc import Sequence

from specwriter.model.labels import and_list
from specwriter.quantity import UNITS, Interval, show, show_interval_like
from specwriter.reconcile.chain import Step, chain
from specwriter.reconcile.clash import Clash, Move
from specwriter.reconcile.relation import Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.variables import VARIABLES, label


def general_sentence(clash: Clash) -> str:
    """What the others state, what follows from it one relation after the other, and what that
    leaves the member which the sentence is about."""
    if not clash.moves:
        return f"{and_list([_stated(each) for each in clash.members])} exclude one another."
    move = _told(clash)
    others = [each for each in clash.members if each is not move.member]
    verb = _verb(move.to) if clash.is_proof else "is expected to be"
    room = move.member.shown(move.to)
    end = f"{move.member.label} {verb} {room}, not {move.member.written}"
    if not others:
        return f"The {end}{_because(clash.relations)}."
    lead = f"With {and_list([_stated(each) for each in others])}"
    steps = _way_to(move, others, clash)
    if len(steps) < 2:
        return f"{lead}, the {end}{_because(steps[0].relations if steps else clash.relations)}."
    way = "; ".join(_step(each, clash.members) for each in steps[:-1])
    return f"{lead}: {way}. So the {end}{_because(steps[-1].relations)}."


def _way_to(move: Move, others: Sequence[Requirement], clash: Clash) -> tuple[Step, ...]:
    """The short way, by the relations of the clash; the whole one where more of them bear on where
    the member has to move."""
    short = chain(move.member.variable, others, clash.relations)
    if not short or _leads_to(short[-1].to, move.to):
        return short
    whole = chain(move.member.variable, others, clash.bearing)
    return whole if whole and _leads_to(whole[-1].to, move.to) else short


def _leads_to(found: Interval, to: Interval) -> bool:
    """True where a range has the ends of another, as they are shown."""
    return all(
        not end or (reached is not None and abs(reached - end) <= abs(end) / 1000)
        for reached, end in zip(found, to, strict=True)
    )


def _verb(to: Interval) -> str:
    """How the range of a proof is said; a relation with scatter only says what is expected."""
    if to.high is None:
        return "must be"
    return "can only be" if to.low else "can be"


def _told(clash: Clash) -> Move:
    """The member that the sentence is about: a result where there is one."""
    results = [each for each in clash.moves if each.member.role == "result"]
    return (results or list(clash.moves))[0]


def _step(step: Step, members: Sequence[Requirement]) -> str:
    return f"{label(step.variable)} {_range(step, members)}{_because(step.relations)}"


def _range(step: Step, members: Sequence[Requirement]) -> str:
    """The range in the unit of a member that measures the like, best one of the same noun, else
    in a unit of its own."""
    unit = UNITS[VARIABLES[step.variable].unit]
    alike = [each for each in members if each.quantity.dimension == unit.dimension]
    noun = step.variable.partition(".")[0]
    same = [each for each in alike if each.variable.partition(".")[0] == noun]
    sample = next((each.quantity for each in same + alike), None)
    to = Interval(step.to.low or None, step.to.high)
    if sample is not None:
        return show_interval_like(to, sample)
    ends = [show(end, unit) for end in dict.fromkeys(to) if end is not None]
    word = "at least " if to.high is None else "at most " if to.low is None else ""
    return word + " to ".join(ends)


def _because(relations: Sequence[Relation]) -> str:
    reasons = dict.fromkeys(_reason(each) for each in relations)
    return f" ({'; '.join(reasons)})" if reasons else ""


def _reason(relation: Relation) -> str:
    """The statement; of an implied relation the statements that it follows from, then its own."""
    parts = list(dict.fromkeys(each.statement for each in relation.parts))
    return f"{and_list(parts)}, so {relation.statement}" if parts else relation.statement


def _stated(requirement: Requirement) -> str:
    return f"{requirement.label} {requirement.written}"
