"""A comparison as text, plain enough to be read aloud at a meeting.

::

    Route 9 travel lanes

      TIGHTER, the contractor bears it: groove depth
         old.yaml:52:14   1/8 in to 1/4 in
         new.yaml:52:14   1/8 in to 3/16 in
         3/16 in is 1/16 in less than 1/4 in.
         The saw has less room within which the cut is accepted.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from itertools import groupby

from specwriter.compare import Bearer, Change, Comparison, Sense, Side, changes_behind, said
from specwriter.diagnostic import Finding, Grade, Place
from specwriter.report.sentences import COMPARED_WIDTH, wrapped

PlaceOf = Callable[[str], Place]
"""Path → where it stands in a job file."""

NOTICE = (
    "Senses are read from the wording of the jobs alone. What a change means for safety and cost "
    "is for local codes and the licensed engineer of record."
)
_INDENT = "     "
_BEARS: dict[Bearer, str] = {
    "contractor": "the contractor bears it",
    "agency": "the agency bears it",
    "both": "both sides",
    "check": "to be checked",
}
_SENSES: dict[Sense, str] = {Sense.UNKNOWN: "UNKNOWN, review"}
_OPENINGS: dict[str, str] = {
    "conditions": "Site conditions",
    "project": "Contract",
    "accepted": "Accepted findings",
}


def comparison_text(comparison: Comparison, old_place: PlaceOf, new_place: PlaceOf) -> str:
    """The changes by area, then the findings and remarks, then one line that counts them."""
    if comparison.is_empty:
        return "Nothing differs.\n"
    blocks = [
        *_changes(comparison, old_place, new_place),
        *_findings(comparison, old_place, new_place),
        *(_wrapped(f"REMARK: {remark}", "", "  ") for remark in comparison.remarks),
        _wrapped(NOTICE, ""),
        summary(comparison),
    ]
    return "\n\n".join(blocks) + "\n"


def summary(comparison: Comparison) -> str:
    """One line: "3 tighter, 1 looser, 2 restated; 1 conflict appears, none vanishes"."""
    senses = [(comparison.count(sense), sense.value) for sense in Sense]
    changes = ", ".join(f"{count} {name}" for count, name in senses if count)
    care = sum(bool(change.warning) for change in comparison.changes)
    cares = f", {care} to take care of" if care else ""
    return f"{changes or 'no requirement changed'}{cares}; {_coming_and_going(comparison)}"


def _coming_and_going(comparison: Comparison) -> str:
    appeared, vanished = _grades(comparison.appeared), _grades(comparison.vanished)
    if not appeared and not vanished:
        return "no finding appears or vanishes"
    comes = f"{appeared or 'none'} {_verb('appear', comparison.appeared)}"
    return f"{comes}, {vanished or 'none'} {_verb('vanish', comparison.vanished)}"


def _verb(verb: str, findings: tuple[Finding, ...]) -> str:
    many = len(findings) > 1
    return verb if many else verb + ("es" if verb.endswith("sh") else "s")


def _grades(findings: Iterable[Finding]) -> str:
    """Findings counted by grade: "1 conflict and 2 cautions"."""
    grades = [finding.grade for finding in findings]
    counted = [
        f"{grades.count(grade)} {_grade_name(grade, grades.count(grade))}"
        for grade in Grade
        if grade in grades
    ]
    return " and ".join(counted)


def _grade_name(grade: Grade, count: int) -> str:
    if grade is Grade.OPEN:
        return "open decision" if count == 1 else "open decisions"
    return grade.value if count == 1 else f"{grade.value}s"


def _changes(comparison: Comparison, old_place: PlaceOf, new_place: PlaceOf) -> Iterator[str]:
    names = dict(comparison.areas)
    for heading, changes in groupby(comparison.changes, key=lambda each: _heading(each, names)):
        yield heading
        for change in changes:
            yield "\n".join(_change(change, old_place, new_place))


def _heading(change: Change, names: dict[str, str]) -> str:
    if change.area is not None:
        return names.get(change.area, change.area)
    side = change.new or change.old
    noun = side.path.split(".")[0] if side else ""
    return _OPENINGS.get(noun, noun.replace("_", " ").capitalize())


def _change(change: Change, old_place: PlaceOf, new_place: PlaceOf) -> Iterator[str]:
    sense = _SENSES.get(change.sense, change.sense.value.upper())
    bears = "" if change.sense is Sense.RESTATED else f", {_BEARS[change.bears]}"
    yield f"  {sense}{bears}: {change.label}"
    places = (_place(change.old, old_place), _place(change.new, new_place))
    room = max(len(place) for place in places)
    for side, place in zip((change.old, change.new), places, strict=True):
        yield _value(side, place.ljust(room))
    if change.difference:
        yield _sentence(change.difference)
    if change.warning:
        yield _wrapped(f"Take care: {change.warning}", _INDENT)
    if change.sense is not Sense.RESTATED:
        yield _wrapped(change.because, _INDENT)


def _place(side: Side | None, place_of: PlaceOf) -> str:
    return str(place_of(side.path)) if side else ""


def _value(side: Side | None, place: str) -> str:
    opening = f"{_INDENT}{place}   "
    return _wrapped(said(side), opening, " " * len(opening))


def _sentence(text: str) -> str:
    return _wrapped(text[0].upper() + text[1:] + ("" if text.endswith(".") else "."), _INDENT)


def _findings(comparison: Comparison, old_place: PlaceOf, new_place: PlaceOf) -> Iterator[str]:
    changes = comparison.changes
    for finding in comparison.appeared:
        yield "\n".join(_finding("APPEARS", finding, new_place, changes))
    for finding in comparison.vanished:
        yield "\n".join(_finding("VANISHES", finding, old_place, changes))
    for altered in comparison.altered:
        yield "\n".join(_finding("STAYS, with other values", altered.new, new_place, changes))


def _finding(
    opening: str, finding: Finding, place_of: PlaceOf, changes: tuple[Change, ...]
) -> Iterator[str]:
    where = f" in {finding.area}" if finding.area else ""
    grade = _grade_name(finding.grade, 1).upper()
    yield _wrapped(f"{grade} {opening}{where}: {finding.title} ({finding.slug})", "", "  ")
    for each in finding.evidence:
        yield f"{_INDENT}{place_of(each.path)}   {each.label}   {each.written}"
    if finding.says:
        yield _wrapped(finding.says, _INDENT)
    if behind := changes_behind(finding, changes):
        labels = dict.fromkeys(f"{each.label} {each.sense.value}" for each in behind)
        yield _wrapped(f"Touched by: {'; '.join(labels)}.", _INDENT)


def _wrapped(text: str, opening: str, following: str | None = None) -> str:
    return wrapped(text, opening, following, width=COMPARED_WIDTH)
