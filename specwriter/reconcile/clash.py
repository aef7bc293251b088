"""Requirements that cannot all hold: the smallest sets, and where each member would have to go."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation, as_judged
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.room import room
from specwriter.reconcile.solve import Trial, is_refuted, solve, tried


@dataclass(frozen=True, slots=True, kw_only=True)
class Move:
    """The values to which one member alone would have to move to end the clash."""

    member: Requirement
    to: Interval


@dataclass(frozen=True, slots=True, kw_only=True)
class Clash:
    """A smallest set of requirements and relations that no choice satisfies.

    Taking any one member out leaves a set that is not refuted. ``nominal_only`` is true when
    the tolerances still meet and only the nominal values disagree; ``is_smallest`` is false when
    for some member it was not decided whether the others hold together. Without relations the
    members state the same variable. ``judged_moves`` go as far as the relations ask by which
    choices are judged; without them the ``moves`` do. ``bearing`` are the relations that the moves
    obey.
    """

    members: tuple[Requirement, ...]
    relations: tuple[Relation, ...]
    moves: tuple[Move, ...]
    judged_moves: tuple[Move, ...] = ()
    bearing: tuple[Relation, ...] = ()
    nominal_only: bool = False
    is_smallest: bool = True

    @property
    def ways(self) -> tuple[Move, ...]:
        """The moves after which nothing more is found, where there are such."""
        return self.judged_moves or self.moves

    @property
    def is_proof(self) -> bool:
        """True when every relation in it is exact."""
        return all(each.kind == "exact" for each in self.relations)


def find_clashes(
    requirements: Sequence[Requirement], relations: Sequence[Relation]
) -> tuple[Clash, ...]:
    """Every clash that is not explained by one found before."""
    return search(requirements, relations).clashes


@dataclass(frozen=True, slots=True, kw_only=True)
class Findings:
    """The clashes, the requirements that are left when each has lost a member, and whether it
    was decided that those hold together."""

    clashes: tuple[Clash, ...]
    left: tuple[Requirement, ...]
    decided: bool


def search(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> Findings:
    """Every clash that is not explained by one found before, and what is left."""
    found: list[Clash] = []
    left = list(requirements)
    now = tried(left, relations)
    while now.outcome == "refuted":
        members, used, is_smallest = _smallest(left, relations, now)
        found.append(_clash(members, _fewest(members, used), relations, is_smallest))
        left, now = _without_one(left, members, relations)
    decided = now.outcome == "met" or _can_be_met(left, relations)
    return Findings(clashes=tuple(found), left=tuple(left), decided=decided)


def _smallest(
    requirements: Sequence[Requirement], relations: Sequence[Relation], now: Trial
) -> tuple[list[Requirement], Sequence[Relation], bool]:
    """Drop one requirement after the other while the rest stays refuted.

    The requirements, the relations by which they are refuted, and whether a choice is found
    without each of those that stay: it meets more than the rest of the smallest set.
    """
    refuted = now
    kept, undecided = _needed(requirements, now), list[Requirement]()
    for each in requirements:
        fewer = _without(kept, each)
        if len(fewer) == len(kept):
            continue
        now = tried(fewer, relations)
        if now.outcome == "refuted":
            kept, refuted = _needed(fewer, now), now
        elif now.outcome == "open":
            undecided.append(each)
    used = [
        each for each in relations if refuted.because is None or each in refuted.because.relations
    ]
    return kept, used, all(_can_be_met(_without(kept, each), relations) for each in undecided)


def _needed(requirements: Sequence[Requirement], refuted: Trial) -> list[Requirement]:
    """The requirements on which a proof rests; all of them where it is a long one."""
    because = refuted.because
    return [each for each in requirements if because is None or each.variable in because.variables]


def _without_one(
    left: Sequence[Requirement], members: Sequence[Requirement], relations: Sequence[Relation]
) -> tuple[list[Requirement], Trial]:
    """Take out the member whose absence settles most; one that settles all is preferred."""
    first: tuple[list[Requirement], Trial] | None = None
    for each in members:
        rest = _without(left, each)
        now = tried(rest, relations)
        if now.outcome != "refuted":
            return rest, now
        first = first or (rest, now)
    assert first is not None
    return first


def _clash(
    members: list[Requirement],
    used: Sequence[Relation],
    relations: Sequence[Relation],
    is_smallest: bool,
) -> Clash:
    granted = _bearing_on(used, relations)
    judged = [as_judged(each) if each.kind == "model" else each for each in granted]
    return Clash(
        members=tuple(members),
        relations=tuple(used),
        moves=tuple(_moves(members, granted)),
        bearing=tuple(granted),
        judged_moves=tuple(_moves(members, judged)) if judged != granted else (),
        is_smallest=is_smallest,
    )


def _moves(members: list[Requirement], relations: Sequence[Relation]) -> list[Move]:
    """Where each member alone would have to move; those that others leave room for only with
    their rounding granted, where there is no other."""
    rooms = [(each, room(each, _without(members, each), relations)) for each in members]
    open_ = [(each, to) for each, to in rooms if to and not each.reading.within(to.to)]
    exact = any(to.exact for _, to in open_)
    return [Move(member=each, to=to.to) for each, to in open_ if to.exact or not exact]


def _bearing_on(used: Sequence[Relation], relations: Sequence[Relation]) -> list[Relation]:
    """The relations, other forms of the curved ones in the same variables (each sees a range that
    another leaves too wide), and all exact ones: a move must not end in another clash."""
    curved = {each.slug for each in used if not isinstance(each.shape, Linear)}
    names = {name for each in used for name in each.variables}
    return [
        each
        for each in relations
        if each.kind == "exact"
        or each in used
        or (each.slug in curved and names.issuperset(each.variables))
    ]


def _without(members: Sequence[Requirement], member: Requirement) -> list[Requirement]:
    return [each for each in members if each is not member]


def _can_be_met(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> bool:
    """True when a choice that meets them all is found by exact arithmetic."""
    return solve(requirements, relations).solution is not None


def _fewest(members: Sequence[Requirement], relations: Sequence[Relation]) -> list[Relation]:
    """One relation that refutes the members by itself, else a set that has none to spare.

    Curved ones go first, because two forms of one are told apart by what ties their variables;
    then those that speak most of other variables: what stays is the short way.
    """
    own = {each.variable for each in members}
    for each in relations:
        if own.issubset(each.variables) and is_refuted(members, [each]):
            return [each]

    def detour(relation: Relation) -> tuple[bool, int]:
        return not isinstance(relation.shape, Linear), len(set(relation.variables) - own)

    used = list(relations)
    for each in sorted(relations, key=detour, reverse=True):
        fewer = [one for one in used if one is not each]
        if is_refuted(members, fewer):
            used = fewer
    return used
