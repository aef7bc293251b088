"""Verdicts as findings, with the arithmetic in the job's own numbers."""

from __future__ import annotations

from collections.abc import Iterable

from specwriter.diagnostic import Finding, Grade
from specwriter.model.labels import and_list
from specwriter.quantity import show_like
from specwriter.reconcile.clash import Clash, Move
from specwriter.reconcile.explain_clash import general_sentence
from specwriter.reconcile.explain_result import result_finding
from specwriter.reconcile.joint import STATED_TWICE, TOGETHER
from specwriter.reconcile.relation import Relation, basis_of
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.verdict import Verdict


def findings_from(verdicts: Iterable[Verdict]) -> tuple[Finding, ...]:
    """One finding for each verdict that asks somebody to act, but for limits that cross within
    one noun: a rule reports those."""
    found = []
    for verdict in verdicts:
        if verdict.clash is not None:
            if _crosses_itself(verdict.clash):
                continue
            found.append(_clash_finding(verdict.area, verdict.clash))
        elif verdict.result is not None and verdict.outcome == "not assured":
            found.append(result_finding(verdict.area, verdict.result))
    return tuple(found)


def _crosses_itself(clash: Clash) -> bool:
    """True where the upper and the lower limit of one noun have nothing in common."""
    nouns = {each.path.rpartition(".")[0] for each in clash.members}
    return not clash.relations and len(nouns) == 1


def _clash_finding(area: str, clash: Clash) -> Finding:
    slug, title = _named(clash)
    hard = clash.is_proof and not clash.nominal_only
    return Finding(
        slug=slug,
        grade=Grade.CONFLICT if hard else Grade.CAUTION,
        basis=basis_of(clash.relations),
        title=title,
        area=area,
        evidence=tuple(each.evidence for each in clash.members),
        says=_says(clash),
        settle=_ways(clash),
        sources=tuple(dict.fromkeys(each.source for each in clash.relations))
        or (STATED_TWICE.source,),
    )


def _ways(clash: Clash) -> tuple[str, ...]:
    """The ways of the relation that stands out, else each member moved to where it fits."""
    one = _leading(clash)
    if one is not None and one.ways:
        return one.ways
    moves = [move for move in clash.ways if not _is_cut_to_nothing(move)] or clash.ways
    return tuple(f"{move.member.label} {move.member.moved(move.to)}" for move in moves)


def _is_cut_to_nothing(move: Move) -> bool:
    """A groove, a land, a blade or a cut that would have to have no size: nobody settles it so."""
    noun = move.member.variable.partition(".")[0]
    return (
        noun in ("groove", "land", "blade", "removal")
        and move.to.high is not None
        and move.to.high <= 0
    )


def _named(clash: Clash) -> tuple[str, str]:
    """Slug and title: of the one relation, or of the one that cannot prove."""
    if not clash.relations:
        return STATED_TWICE.slug, f"{clash.members[0].label} is stated twice, with different values"
    one = _leading(clash)
    if one is not None:
        return one.slug, one.title
    return TOGETHER.slug, f"{and_list(_labels(clash))} cannot hold together"


def _leading(clash: Clash) -> Relation | None:
    """The relation after which the finding is named, where one stands out."""
    if len(clash.relations) == 1:
        return clash.relations[0]
    soft = [each for each in clash.relations if each.kind != "exact"]
    asked = {each.variable for each in clash.members if each.role == "result"}
    results = [each for each in clash.relations if each.assures and each.output in asked]
    return next(iter(soft or results), None)


def _says(clash: Clash) -> str:
    sentence = _own_sentence(clash) or general_sentence(clash)
    if not clash.is_smallest:
        sentence += " Whether fewer of these requirements clash already was not decided."
    if clash.nominal_only:
        return f"{sentence} Only the edges of the tolerances meet; the nominal values disagree."
    if not clash.is_proof:
        scatter = "; ".join(each.validity for each in clash.relations if each.kind != "exact")
        return f"{sentence} Not a proof: {scatter}."
    thickness = [one for one in clash.relations if one.slug.endswith("-thickness")]
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
    return clash.relations[0].sentence.format(found=move.member.shown(move.to), **words)


def _nominal_text(requirement: Requirement) -> str:
    quantity = requirement.quantity
    return (
        quantity.text if quantity.form == "value" else show_like(quantity.amounts[0].base, quantity)
    )


def _labels(clash: Clash) -> list[str]:
    return [each.label for each in clash.members]
