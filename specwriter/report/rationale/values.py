"""Every value of the job with its reason, what is computed from it, and where it stands."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from specwriter.assemble import Document, Library
from specwriter.assemble.closure import expresses
from specwriter.assemble.document import Paragraph
from specwriter.assemble.labels import area_name, label, short_label, words
from specwriter.assemble.view import keys_of
from specwriter.model import Job, Node
from specwriter.model.contract import Reason
from specwriter.model.results import Test
from specwriter.quantity import Quantity
from specwriter.report.rationale.pieces import Section, table, text
from specwriter.report.result import CheckResult
from specwriter.worksheet import Figure

_ROOTS = (
    "conditions",
    "residue",
    "trial_section",
    "sequence",
    "submittals",
    "pay_items",
    "settings",
)
_HEAD = ("Value", "As written", "Reason, and what rests on it", "Clause")
_NONE = "–"


@dataclass(frozen=True, slots=True, kw_only=True)
class Valued:
    """A value of the job, or a whole test: its path and its text."""

    path: str
    text: str


def value_sections(
    checked: CheckResult, library: Library, document: Document, figures: Iterable[Figure]
) -> Iterator[Section]:
    """A table for each area, and one for the rest of the job."""
    job = checked.job
    assert job is not None
    rests = _Rests(checked, library, document, tuple(figures))
    for area in job.areas.values():
        rows = [rests.row(each) for each in _values(area, area.path)]
        yield area_name(job, area.id), [_count(rows), _table("Values of the area", rows)]
    rest = [each for root in _ROOTS for each in _values(getattr(job, root), root)]
    rows = [rests.row(each) for each in rest]
    yield "The rest of the job", [_count(rows), _table("Values of site and contract", rows)]


def _count(rows: list[tuple[str, ...]]) -> Paragraph:
    said = sum(row[2] != _NONE for row in rows)
    return text(
        f"A reason, an acceptance or a calculation stands beside {said} of {len(rows)} values; "
        "a dash stands for none. Reasons are recorded in the job under 'reasons'."
    )


def unmatched(job: Job) -> tuple[Reason, ...]:
    """Recorded reasons that belong to no value of the job."""
    known = [each.path for root in ("areas", *_ROOTS) for each in _values(getattr(job, root), root)]
    return tuple(
        reason for reason in job.reasons if not any(_covers(reason.at, path) for path in known)
    )


def _table(caption: str, rows: Iterable[tuple[str, ...]]) -> Any:
    return table("values", caption, _HEAD, rows)


class _Rests:
    """What rests on each value: reasons, calculations, acceptances, clauses."""

    def __init__(
        self,
        checked: CheckResult,
        library: Library,
        document: Document,
        figures: tuple[Figure, ...],
    ) -> None:
        assert checked.job is not None
        self._job = checked.job
        self._accepted = checked.accepted
        self._numbers = {c.id: c.number for part in document.parts for c in part.clauses}
        self._clauses = [c for c in library.clauses if c.id in self._numbers]
        self._figures: Mapping[str, list[int]] = _used_in(figures)

    def row(self, valued: Valued) -> tuple[str, ...]:
        name = self._name(valued.path)
        return (
            name[:1].upper() + name[1:],
            valued.text,
            self._reason(valued.path),
            self._at(valued.path),
        )

    def _name(self, path: str) -> str:
        """Areas have a table each; what belongs to a pay item or submittal says to which."""
        return short_label(path) if path.startswith("areas.") else label(path, self._job)

    def _reason(self, path: str) -> str:
        said = [_said(each) for each in self._job.reasons if _covers(each.at, path)]
        for each in self._accepted:
            if any(_covers(path, found.path) for found in each.finding.evidence):
                entry = each.entry
                said.append(f"Accepted by the {entry.by}: {each.finding.title}, {entry.because}.")
        used = [n for key, numbers in self._figures.items() if _covers(path, key) for n in numbers]
        if used:
            listed = ", ".join(map(str, sorted(set(used))))
            said.append(f"Calculation{'s' if len(set(used)) > 1 else ''} {listed}.")
        return " ".join(said) or _NONE

    def _at(self, path: str) -> str:
        found = [self._numbers[c.id] for c in self._clauses if expresses(c, path, self._job)]
        return ", ".join(sorted(found, key=_by_number)) or _NONE


def _by_number(number: str) -> list[tuple[int, str]]:
    return [(int(part), "") if part.isdigit() else (0, part) for part in number.split(".")]


def _used_in(figures: tuple[Figure, ...]) -> dict[str, list[int]]:
    """Path of an input → numbers of the calculations that take it."""
    used: dict[str, list[int]] = defaultdict(list)
    for number, figure in enumerate(figures, 1):
        for each in figure.inputs:
            used[each.path].append(number)
    return used


def _said(reason: Reason) -> str:
    because = reason.because.rstrip(".")
    source = f" Source: {reason.source.rstrip('.')}." if reason.source else ""
    return (
        f"{because[:1].upper()}{because[1:]}" + (f" ({reason.by})." if reason.by else ".") + source
    )


def _covers(at: str, path: str) -> bool:
    """True when ``path`` is the value at ``at``, or lies below it."""
    return path == at or path.startswith(f"{at}.")


def _values(value: Any, path: str) -> Iterator[Valued]:
    if value is None or value == () or value == {}:
        return
    if isinstance(value, Test):
        texts = [f"{key.replace('_', ' ')}: {each}" for key, each in _texts(value)]
        yield Valued(path=path, text="; ".join(texts))
    elif isinstance(value, Node):
        for key, (name, _) in _keys(value):
            if key != "id":
                yield from _values(getattr(value, name), f"{path}.{key}")
    elif isinstance(value, tuple):
        for index, item in enumerate(value):
            yield from _values(item, f"{path}.{index}")
    elif isinstance(value, dict):
        for key, item in value.items():
            yield from _values(item, f"{path}.{key}")
    else:
        yield Valued(path=path, text=_text(value))


def _keys(node: Node) -> Iterator[tuple[str, tuple[str, Any]]]:
    kind: Any = type(node)
    yield from keys_of(kind).items()


def _texts(test: Test) -> Iterator[tuple[str, str]]:
    for key, (name, _) in keys_of(Test).items():
        if (found := getattr(test, name)) not in (None, ()):
            yield key, _text(found)


def _text(value: Any) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, tuple):
        return ", ".join(f"{tier.share} of the readings {tier.limit}" for tier in value)
    return value.text.strip() if isinstance(value, Quantity) else words(str(value))
