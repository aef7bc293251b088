"""What a reviewer should hear besides the single changes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from specwriter.compare.change import Change, Sense
from specwriter.compare.findings import moved
from specwriter.compare.identity import same_date, same_identifier
from specwriter.compare.leaf import leaves
from specwriter.diagnostic import Finding
from specwriter.model import Job
from specwriter.model.contract import Accepted


def remarks(
    old: Job,
    new: Job,
    changes: Sequence[Change],
    old_findings: Iterable[Finding],
    moves: Mapping[str, str],
) -> tuple[str, ...]:
    """Sentences about identifier and date, about units, and about acceptances that died."""
    return (
        *same_identifier(old, new, changes),
        *same_date(old, new, changes),
        *_governing_units(old, new),
        *_measured_otherwise(new, changes),
        *_dead_acceptances(old, new, tuple(old_findings), moves),
    )


_MEASURED_BY: dict[str, tuple[tuple[str, ...], tuple[str, ...]]] = {
    "smoothness": (
        ("limit",),
        ("index", "blanking_band", "instrument", "simulated", "sensor", "wheel_paths", "segment"),
    ),
    "texture_depth": (("at_least", "at_most"), ("measure", "method", "edition", "surface")),
    "friction": (("at_least",), ("measure", "speed", "tyre")),
    "noise": (("at_most",), ("measure", "speed", "age")),
}
"""Noun → its limits, and the keys without which their numbers mean nothing."""


def _measured_otherwise(new: Job, changes: Sequence[Change]) -> Iterator[str]:
    """Limits whose number stands while the way of measuring it changed."""
    changed = {
        change.new.path: change
        for change in changes
        if change.new and change.old and change.sense is not Sense.RESTATED
    }
    for area in new.areas.values():
        for noun, (limits, ways) in _MEASURED_BY.items():
            node = getattr(area, noun)
            if node is None:
                continue
            ways_changed = [changed[p] for key in ways if (p := node.path_to(key)) in changed]
            standing = [
                str(getattr(node, key))
                for key in limits
                if getattr(node, key) is not None and node.path_to(key) not in changed
            ]
            if ways_changed and standing:
                names = ", ".join(each.label for each in ways_changed)
                yield (
                    f"In {area.name or area.id} the limit {', '.join(standing)} stands, but it is "
                    f"measured otherwise ({names}): the same number no longer asks for the same."
                )


def _governing_units(old: Job, new: Job) -> Iterator[str]:
    was, now = old.project.governing_units, new.project.governing_units
    if was != now:
        names = {"us": "US customary", "si": "SI"}
        yield (
            f"The governing units went from {names[was]} to {names[now]}: "
            "a rounded conversion now binds where the exact value did."
        )


def _dead_acceptances(
    old: Job, new: Job, findings: Sequence[Finding], moves: Mapping[str, str]
) -> Iterator[str]:
    """Acceptances that the new job keeps although the values they were given for changed."""
    was = {moved(leaf.path, moves): leaf.written for leaf in leaves(old)}
    now = {leaf.path: leaf.written for leaf in leaves(new)}
    kept = {(entry.finding, entry.at) for entry in new.accepted}
    for entry in old.accepted:
        at = moved(entry.at, moves)
        if not kept & {(entry.finding, entry.at), (entry.finding, at)}:
            continue
        paths = [moved(path, moves) for path in _rests_on(entry, findings)]
        changed = [path for path in paths if was.get(path) != now.get(path)]
        if changed:
            values = ", ".join(
                f"{was.get(path, 'absent')} → {now.get(path, 'absent')}" for path in changed
            )
            yield (
                f"The acceptance of {entry.finding} at {entry.at} by {entry.by} was given for "
                f"other values ({values}): it no longer holds and must be given anew."
            )


def _rests_on(entry: Accepted, findings: Sequence[Finding]) -> list[str]:
    """The paths of the requirements behind an accepted finding; its own path if unknown."""
    paths = [
        evidence.path
        for finding in findings
        if finding.slug == entry.finding
        and any(_at(each.path, entry.at) for each in finding.evidence)
        for evidence in finding.evidence
    ]
    return list(dict.fromkeys(paths)) or [entry.at]


def _at(path: str, at: str) -> bool:
    return path == at or path.startswith(f"{at}.")
