"""Two versions compared, as text: requirements first, then effects, then words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from specwriter.compare import Comparison
from specwriter.compare.text.changes import TextChange
from specwriter.compare.text.judgement import judge_text
from specwriter.report.compared import Compared, Version
from specwriter.report.comparison_text import PlaceOf, comparison_text
from specwriter.report.sentences import COMPARED_WIDTH, wrapped
from specwriter.report.text_changes import clause_name, text_changes_text

NOTHING = "Nothing differs.\n"
TEXT_NOTICE = (
    "Senses of text are read from its values and words of duty alone. What a change means for "
    "safety and cost is for local codes and the licensed engineer of record."
)


def versions_text(compared: Compared) -> str:
    """The whole comparison, ending in a line break."""
    notes = [_wrapped(note) for note in notes_of(compared)]
    if compared.is_empty:
        return "\n\n".join((*notes, NOTHING))
    blocks = [*notes, *_hand(compared)]
    if compared.comparison is None:
        blocks += [text_changes_text(compared.text_changes), _wrapped(TEXT_NOTICE)]
        blocks.append(text_summary(compared.text_changes))
        return "\n\n".join(filter(None, blocks)) + "\n"
    old, new = places(compared)
    blocks += _effects(compared.comparison, compared.text_changes)
    told = comparison_text(compared.comparison, old, new)
    if compared.comparison.is_empty:
        told = "No requirement of the jobs differs.\n"
    return "\n\n".join((*blocks, told)) if blocks else told


def places(compared: Compared) -> tuple[PlaceOf, PlaceOf]:
    """Where paths stand in the old and in the new job; both versions must hold a job."""
    assert compared.old.checked
    assert compared.new.checked
    return compared.old.checked.source.place, compared.new.checked.source.place


def notes_of(compared: Compared) -> Iterator[str]:
    """What a reader must know of a version before anything else."""
    for version in (compared.old, compared.new):
        if version.note:
            yield f"{version.name}: {version.note}."


def _hand(compared: Compared) -> Iterator[str]:
    for version in (compared.old, compared.new):
        if version.by_hand:
            yield _wrapped(by_hand_line(version))
            yield text_changes_text(version.by_hand)


def by_hand_line(version: Version) -> str:
    """That a document was edited by hand since it was drafted, and what that means."""
    count = len(version.by_hand)
    many = "1 place" if count == 1 else f"{count} places"
    return (
        f"{version.name} was edited by hand in {many} since it was drafted; its job does not "
        "know of that, and the requirements below are those of the job:"
    )


def _effects(comparison: Comparison, changes: tuple[TextChange, ...]) -> Iterator[str]:
    if comparison.material:
        yield "\n".join(_addendum(comparison))
    elif comparison.changes:
        yield _wrapped("No change calls for an addendum under the setting used.")
    if comparison.verdicts:
        yield "\n".join(("Verdicts", *_verdicts(comparison)))
    if comparison.amounts:
        yield "\n".join(("Quantities, tests and cost", *_amounts(comparison)))
    if changes:
        yield "\n".join(("Clauses affected", *_clauses(changes)))


def _addendum(comparison: Comparison) -> Iterator[str]:
    count = len(comparison.material)
    calls = "1 change calls" if count == 1 else f"{count} changes call"
    yield f"{calls} for an addendum (the agency's own rule governs)"
    reasons = Counter(change.material_because for change in comparison.material)
    for reason, times in reasons.items():
        yield f"  {times} because {reason}"


def _verdicts(comparison: Comparison) -> Iterator[str]:
    names = dict(comparison.areas)
    for each in comparison.verdicts:
        turned = f"{each.old or 'nothing said'} → {each.new or 'nothing said'}"
        yield _wrapped(f"  {names.get(each.area, each.area)}, {each.about}: {turned}", "    ")


def _amounts(comparison: Comparison) -> Iterator[str]:
    for each in comparison.amounts:
        old = each.old.text if each.old else "(absent)"
        new = each.new.text if each.new else "(absent)"
        by = f", {each.difference}" if each.difference else ""
        yield _wrapped(f"  {each.label}: {old} → {new}{by}", "    ")


def _clauses(changes: tuple[TextChange, ...]) -> Iterator[str]:
    counted = Counter(clause_name(each) for each in changes if not each.follows)
    for clause, count in counted.items():
        yield _wrapped(f"  {clause}: {'1 change' if count == 1 else f'{count} changes'}", "    ")
    if follow := sum(change.follows for change in changes):
        yield f"  cross references that follow a new number: {follow}"


def text_summary(changes: tuple[TextChange, ...]) -> str:
    """One line that counts the changes of text by their sense."""
    if not changes:
        return "no word differs"
    judged = [judge_text(change) for change in changes]
    counted = Counter(each.sense.value for each in judged)
    care = sum(bool(each.warning) for each in judged)
    cares = f", {care} to take care of" if care else ""
    return ", ".join(f"{count} {sense}" for sense, count in counted.items()) + cares


def _wrapped(text: str, following: str = "") -> str:
    return wrapped(text, "", following, width=COMPARED_WIDTH)
