"""Two jobs in, everything that differs out."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from specwriter.compare.burden import AGENCY_TESTING, TESTING, Matter
from specwriter.compare.change import Change, Comparison
from specwriter.compare.findings import effect
from specwriter.compare.labels import label_of
from specwriter.compare.leaf import Leaf
from specwriter.compare.meaning import lookup
from specwriter.compare.remarks import remarks
from specwriter.compare.sense import judge
from specwriter.compare.summary import side_of
from specwriter.compare.walk import Pair, path_moves, walk
from specwriter.diagnostic import Finding
from specwriter.model import Area, Job
from specwriter.model.results import Test


def compare(
    old: Job,
    new: Job,
    old_findings: Iterable[Finding] = (),
    new_findings: Iterable[Finding] = (),
) -> Comparison:
    """What changed from ``old`` to ``new``, requirement by requirement, and what that does.

    The order of keys, areas and list items does not matter, only what they say.
    """
    before, after = tuple(old_findings), tuple(new_findings)
    pairs = tuple(walk(old, new))
    changes = tuple(change for pair in pairs if (change := _change(pair)))
    moves = path_moves(pairs)
    findings = effect(before, after, moves)
    return Comparison(
        changes=changes,
        appeared=findings.appeared,
        vanished=findings.vanished,
        altered=findings.altered,
        remarks=remarks(old, new, changes, before, moves),
        areas=tuple(_area_names(old, new)),
    )


def _change(pair: Pair) -> Change | None:
    judgement = judge(pair.key, pair.old, pair.new)
    if judgement is None:
        return None
    old, new = side_of(pair.old), side_of(pair.new)
    side, area = new or old, pair.new_area or pair.old_area
    matter = _matter(pair)
    burden = matter.burden(judgement.sense)
    return Change(
        sense=judgement.sense,
        label=label_of(pair.key, side.path if side else ""),
        area=area.id if area else None,
        old=old,
        new=new,
        bears=burden.bears,
        because=burden.because,
        source=matter.source,
        difference=judgement.difference,
        warning=judgement.warning,
    )


def _matter(pair: Pair) -> Matter:
    """What the requirement is about; a test made by the agency is a burden of the agency."""
    matter = lookup(pair.key).matter
    part = pair.new or pair.old
    test = part.owner if isinstance(part, Leaf) else part
    if matter is TESTING and isinstance(test, Test) and test.by == "agency":
        return AGENCY_TESTING
    return matter


def _area_names(old: Job, new: Job) -> Iterator[tuple[str, str]]:
    areas: dict[str, Area] = {**old.areas, **new.areas}
    yield from ((key, area.name or key.replace("_", " ")) for key, area in areas.items())
