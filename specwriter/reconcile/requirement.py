"""What a contract asks of one area, as exact intervals on named variables."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job, Node
from specwriter.model.area import Statement
from specwriter.quantity import Interval, Quantity, show_interval_like, show_like
from specwriter.reconcile.variables import ORDER, VARIABLES, Bare, Role


@dataclass(frozen=True, slots=True, kw_only=True)
class Requirement:
    """One written requirement: ``interval`` as written, ``reading`` with its rounding granted."""

    variable: str
    path: str
    label: str
    quantity: Quantity
    role: Role
    interval: Interval
    reading: Interval

    @property
    def written(self) -> str:
        """What is written, with the limit word that its key stands for."""
        low, high = self.interval
        if self.quantity.form != "value" or (low is not None and high is not None):
            return self.quantity.text
        return f"{'at most' if low is None else 'at least'} {self.quantity.text}"

    @property
    def system(self) -> str:
        """The unit system in which it is written."""
        return self.quantity.unit.system

    @property
    def is_restated(self) -> bool:
        """True for what another document of the contract says."""
        return ".also_stated." in self.path

    @property
    def evidence(self) -> Evidence:
        """The requirement as a finding shows it."""
        return Evidence(path=self.path, label=self.label, written=self.written)

    def shown(self, interval: Interval, *, inward: bool = False) -> str:
        """A computed range written the way the requirement is, without the lower end 0 that
        every dimension has; ``inward`` for a range to which it is to be moved."""
        computed = Interval(interval.low or None, interval.high)
        return show_interval_like(computed, self.quantity, inward=inward)

    def moved(self, to: Interval) -> str:
        """A range to which it is to be moved; a limit on a result stays a limit, at the end of
        the range that it reaches first."""
        low, high = self.interval
        if self.role == "result" and high is None and to.high is not None:
            return f"at least {show_like(to.high, self.quantity, 'down')}"
        if self.role == "result" and low is None and to.low is not None:
            return f"at most {show_like(to.low, self.quantity, 'up')}"
        return self.shown(to, inward=True)

    def narrowed(self, interval: Interval) -> Requirement:
        """The same requirement held to another interval."""
        return replace(self, interval=interval, reading=interval)

    def at_nominal(self, *, exact: bool = False) -> Requirement:
        """The same requirement without its tolerance; others stay as they are.

        The rounding of the nominal value is its reading, unless it is to be ``exact``.
        """
        if self.quantity.form != "tolerance":
            return self
        nominal, slack = self.quantity.amounts[0].base, self.quantity.amounts[0].slack
        point = Interval(nominal, nominal)
        return replace(self, interval=point, reading=point.widen(Fraction(0) if exact else slack))


def stated(
    variable: str,
    node: Node,
    key: str,
    source: Area | Statement | None = None,
    *,
    bare: Bare | None = None,
) -> Iterator[Requirement]:
    """The requirement on ``variable`` that stands under a key of a noun, if any.

    ``source`` is the area or the other document that the noun belongs to; ``bare`` says how a
    number without a limit word is meant under this key, if otherwise than for the variable.
    """
    value = getattr(node, key)
    if not isinstance(value, Quantity):
        return
    entry = VARIABLES[variable]
    interval = _meant(value, bare or entry.bare)
    where = f" ({source.document})" if isinstance(source, Statement) else ""
    slack = max(amount.slack for amount in value.amounts)
    yield Requirement(
        variable=variable,
        path=node.path_to(key),
        label=entry.label + where,
        quantity=value,
        role=entry.role,
        interval=interval,
        reading=interval.widen(slack),
    )


def _meant(quantity: Quantity, bare: Bare) -> Interval:
    """The values that are allowed; a bare number may be meant as a limit."""
    only = quantity.interval
    if quantity.form != "value" or bare == "as_written":
        return only
    return Interval(None, only.high) if bare == "at_most" else Interval(only.low, None)


def sources(area: Area) -> tuple[Area | Statement, ...]:
    """The area itself, then what other documents state of it."""
    return (area, *area.also_stated)


def read(job: Job, area: Area) -> tuple[Requirement, ...]:
    """Everything that the job states on the variables of one area, in the order of the table."""
    from specwriter.reconcile.registry import all_readers

    found = [one for source in sources(area) for one in _of_keys(source)]
    found += _of_site(job)
    for reader in all_readers():
        found += reader(job, area)
    return tuple(sorted(_converted(found), key=lambda each: ORDER[each.variable]))


_HARD = Fraction("0.016")
"""Share that 25 mm lack of an inch, and 0.3 m of a foot."""


def _converted(found: Sequence[Requirement]) -> Iterator[Requirement]:
    """The requirements; what another document says in the other unit system is no second value
    where it is the first one in round numbers. Source of such pairs: Iowa DOT Standard
    Specifications 2532, 2008, and Ohio CMS 257, 2010: 3.6 m beside 12 ft. Whichever of the two
    stands in the other document, as much is granted.
    """
    own = {each.variable: each for each in found if not each.is_restated}
    for each in found:
        first = own.get(each.variable, each)
        if each.is_restated and first.system != each.system:
            slack = max(amount.slack for amount in each.quantity.amounts)
            room = min(_size(first), _size(each)) * _HARD - slack
            yield replace(each, reading=each.reading.widen(max(room, Fraction(0))))
        else:
            yield each


def _size(requirement: Requirement) -> Fraction:
    return max((abs(end) for end in requirement.interval if end is not None), default=Fraction(0))


def _of_keys(source: Area | Statement) -> Iterator[Requirement]:
    for variable in VARIABLES:
        noun, _, key = variable.partition(".")
        if noun == "conditions" or not hasattr(source, noun):
            continue
        node = getattr(source, noun) if key else source
        if not isinstance(node, Node) or not hasattr(node, key or noun):
            continue
        if variable == "groove.spacing" and is_random(source):
            continue
        of_blade = variable == "groove.width" and _width_is_of_blade(source)
        for each in stated(variable, node, key or noun, source):
            yield replace(each, variable="blade.segment") if of_blade else each


def _of_site(job: Job) -> Iterator[Requirement]:
    for variable in VARIABLES:
        noun, _, key = variable.partition(".")
        if noun == "conditions":
            yield from stated(variable, job.conditions, key)


def is_random(source: Area | Statement) -> bool:
    """True where the spacing is a range of which a share must be close: no single spacing."""
    groove = source.groove
    return (
        groove is not None
        and groove.spacing is not None
        and groove.spacing.form == "range"
        and groove.close_spacing is not None
        and groove.close_share is not None
    )


def _width_is_of_blade(source: Area | Statement) -> bool:
    """True where the width is set on the blade: the cut may come out a little wider."""
    return source.groove is not None and source.groove.width_basis == "blade"


def cut_is_stated(area: Area) -> bool:
    """True where some document gives the width of the groove itself, not that of the blade."""
    return any(
        each.groove is not None and each.groove.width is not None and not _width_is_of_blade(each)
        for each in sources(area)
    )
