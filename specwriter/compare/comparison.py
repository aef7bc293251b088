"""Two jobs in, everything that differs out."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from fractions import Fraction

from specwriter.compare.amounts import amount_changes
from specwriter.compare.burden import AGENCY_TESTING, TESTING, Matter
from specwriter.compare.change import Change, Comparison
from specwriter.compare.findings import effect
from specwriter.compare.leaf import Leaf
from specwriter.compare.material import Addendum, judge_material
from specwriter.compare.meaning import lookup
from specwriter.compare.remarks import remarks
from specwriter.compare.sense import judge
from specwriter.compare.summary import side_of
from specwriter.compare.verdicts import verdict_changes
from specwriter.compare.walk import Pair, path_moves, walk
from specwriter.diagnostic import Finding
from specwriter.model import Area, Job
from specwriter.model.labels import label_of
from specwriter.model.results import Test
from specwriter.quantity import Quantity
from specwriter.reconcile.verdict import Verdict


def compare(
    old: Job,
    new: Job,
    old_findings: Iterable[Finding] = (),
    new_findings: Iterable[Finding] = (),
    *,
    verdicts: tuple[Iterable[Verdict], Iterable[Verdict]] = ((), ()),
    addendum: Addendum = Addendum(),  # noqa: B008, frozen
) -> Comparison:
    """What changed from ``old`` to ``new``, requirement by requirement, and what that does.

    ``verdicts`` are those of the old and of the new job, ``addendum`` says what is material. The
    order of keys, areas and list items does not matter, only what they say.
    """
    before, after = tuple(old_findings), tuple(new_findings)
    pairs = tuple(walk(old, new))
    changes = tuple(change for pair in pairs if (change := _change(pair, addendum)))
    moves = path_moves(pairs)
    findings = effect(before, after, moves)
    return Comparison(
        changes=changes,
        appeared=findings.appeared,
        vanished=findings.vanished,
        altered=findings.altered,
        verdicts=verdict_changes(*verdicts, moves),
        amounts=amount_changes(old, new, _renamed_areas(moves)),
        remarks=remarks(old, new, changes, before, moves),
        areas=tuple(_area_names(old, new)),
    )


def _change(pair: Pair, addendum: Addendum) -> Change | None:
    judgement = judge(pair.key, pair.old, pair.new)
    if judgement is None:
        return None
    old, new = side_of(pair.old), side_of(pair.new)
    side, area = new or old, pair.new_area or pair.old_area
    matter = _matter(pair)
    burden = judgement.burden or matter.burden(judgement.sense)
    answer = judge_material(
        addendum,
        judgement.sense,
        matter.touches,
        warned=bool(judgement.warning),
        moved_by=_moved_by(pair),
    )
    return Change(
        sense=judgement.sense,
        label=_label(side.path if side else ""),
        area=area.id if area else None,
        old=old,
        new=new,
        bears=burden.bears,
        because=burden.because,
        source=matter.source,
        difference=judgement.difference,
        warning=judgement.warning,
        material=answer.material,
        material_because=answer.because,
    )


def _label(path: str) -> str:
    """What the place is called; of a pay item or a submittal with its id."""
    keys = path.split(".")
    if keys[0] not in ("pay_items", "submittals") or len(keys) < 2:
        return label_of(path)
    entry = f"{label_of('.'.join(keys[:2]))} {keys[1].replace('_', ' ')}"
    return entry if len(keys) == 2 else f"{entry}, {label_of(path)}"


def _moved_by(pair: Pair) -> Fraction | None:
    """The share by which the quantity of a pay item moved; ``None`` for everything else."""
    sides = [part.value for part in (pair.old, pair.new) if isinstance(part, Leaf)]
    values = [each.nominal for each in sides if isinstance(each, Quantity)]
    if pair.key != ("pay_items", "quantity") or len(values) != 2 or not all(values):
        return None
    was, now = (each or Fraction(0) for each in values)
    return abs(now - was) / was


def _matter(pair: Pair) -> Matter:
    """What the requirement is about; a test made by the agency is a burden of the agency."""
    matter = lookup(pair.key).matter
    part = pair.new or pair.old
    test = part.owner if isinstance(part, Leaf) else part
    if matter is TESTING and isinstance(test, Test) and test.by == "agency":
        return AGENCY_TESTING
    return matter


def _renamed_areas(moves: Mapping[str, str]) -> dict[str, str]:
    """Old id → new id of areas that stand under another id."""
    ids = ((old.split("."), new.split(".")) for old, new in moves.items())
    return {old[1]: new[1] for old, new in ids if len(old) == len(new) == 2 and old[0] == "areas"}


def _area_names(old: Job, new: Job) -> Iterator[tuple[str, str]]:
    areas: dict[str, Area] = {**old.areas, **new.areas}
    yield from ((key, area.name or key.replace("_", " ")) for key, area in areas.items())
