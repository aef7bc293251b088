"""Quantities, numbers of tests and cost of a job, and how another version changes them.

Area = length along the stations × width, each place once; lots = length of lane / lot, rounded up
for each stretch; tests = lots × readings; cost = quantity × unit price. All of it is arithmetic on
the values of the job; what a job does not state is not guessed.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from specwriter.compare.wording import numbers_in
from specwriter.model import Area, Job
from specwriter.model.area import Limits
from specwriter.model.contract import PayItem
from specwriter.quantity import UNITS
from specwriter.quantity.printing import decimal_text
from specwriter.trade.quantities import Stretch, area_once, lots

_LANES = re.compile(r"\d+")
_ROUND = {"SY": Fraction(1), "m2": Fraction(1), "$": Fraction(1, 100), "tests": Fraction(1)}


@dataclass(frozen=True, slots=True, kw_only=True)
class Count:
    """One counted thing of a job: what, how much, in which unit, and from what it follows."""

    key: str
    label: str
    amount: Fraction
    unit: str
    basis: str

    @property
    def text(self) -> str:
        """The amount as printed."""
        return printed(self.amount, self.unit)


@dataclass(frozen=True, slots=True, kw_only=True)
class AmountChange:
    """A quantity, number of tests or cost before and after; a side is ``None`` where absent."""

    label: str
    old: Count | None
    new: Count | None

    @property
    def difference(self) -> str:
        """What it moved by, with its share."""
        if self.old is None or self.new is None or not _alike(self.old, self.new):
            return ""
        was = _converted(self.old, self.new)
        gap = self.new.amount - was
        sign = "+" if gap > 0 else "−"
        text = f"{sign}{printed(abs(gap), self.new.unit)}"
        if not was:
            return text
        share = decimal_text(abs(gap) / was * 100, Fraction(1, 10), trim=True)
        return f"{text} ({sign}{share} percent)"


def printed(amount: Fraction, unit: str) -> str:
    """An amount with its unit."""
    number = decimal_text(amount, _step(unit))
    return f"${number}" if unit == "$" else f"{number} {unit}"


def _step(unit: str) -> Fraction:
    return _ROUND.get(unit, Fraction(1))


def amount_changes(old: Job, new: Job, areas: dict[str, str]) -> tuple[AmountChange, ...]:
    """What differs; ``areas`` gives the new id of an area whose id changed."""
    was = {each.key: each for each in counts(old, areas)}
    now = {each.key: each for each in counts(new, {})}
    keys = [*now, *(key for key in was if key not in now)]
    return tuple(
        AmountChange(label=(now.get(key) or was[key]).label, old=was.get(key), new=now.get(key))
        for key in keys
        if _differs(was.get(key), now.get(key))
    )


def _differs(old: Count | None, new: Count | None) -> bool:
    if old is None or new is None or not _alike(old, new):
        return True
    if old.unit == new.unit:
        return old.text != new.text
    gap = abs(new.amount - _converted(old, new))
    return gap > max(_step(new.unit), _converted(replace(old, amount=_step(old.unit)), new)) / 2


def _alike(old: Count, new: Count) -> bool:
    """True when both count in one unit, or one of them can be converted."""
    if old.unit == new.unit:
        return True
    both = [UNITS.get(each.unit) for each in (old, new)]
    kinds = {unit.dimension if unit else None for unit in both}
    return len(kinds) == 1 and None not in kinds


def _converted(old: Count, new: Count) -> Fraction:
    """The amount of ``old`` in the unit of ``new``."""
    if old.unit == new.unit:
        return old.amount
    return old.amount * UNITS[old.unit].factor / UNITS[new.unit].factor


def counts(job: Job, renamed: dict[str, str]) -> list[Count]:
    """Everything that can be counted, areas first, then pay items, tests and the sum."""
    found = [*_areas(job, renamed), *_items(job), *_tests(job, renamed)]
    costs = [each.amount for each in found if each.unit == "$"]
    if len(costs) > 1:
        basis = "sum of the pay items that state a unit price"
        total = Count(
            key="cost", label="cost", amount=sum(costs, Fraction(0)), unit="$", basis=basis
        )
        found.append(total)
    return found


def _areas(job: Job, renamed: dict[str, str]) -> Iterator[Count]:
    for area in job.areas.values():
        if size := _plan_area(area):
            symbol = _area_unit(job)
            yield Count(
                key=f"area {renamed.get(area.id, area.id)}",
                label=f"plan area of {area.name or area.id.replace('_', ' ')}",
                amount=size / UNITS[symbol].factor,
                unit=symbol,
                basis="length along the stations × width, each place once",
            )


def _area_unit(job: Job) -> str:
    return "SY" if job.project.governing_units == "us" else "m2"


def _plan_area(area: Area) -> Fraction | None:
    stretches = [stretch for limits in area.limits if (stretch := _stretch(limits))]
    return area_once(stretches) if stretches else None


def _stretch(limits: Limits) -> Stretch | None:
    ends = limits.start, limits.end, limits.width
    values = [each.nominal for each in ends if each is not None and each.nominal is not None]
    if len(values) != len(ends):
        return None
    return Stretch(
        roadway=limits.roadway or "",
        start=values[0],
        end=values[1],
        width=values[2],
        lanes=frozenset(_LANES.findall(limits.lanes or "")),
    )


def _items(job: Job) -> Iterator[Count]:
    for item in job.pay_items.values():
        quantity = _quantity(job, item)
        if quantity is None:
            continue
        amount, symbol, basis = quantity
        label = f"quantity of {item.name}"
        yield Count(key=f"item {item.id}", label=label, amount=amount, unit=symbol, basis=basis)
        if price := item.unit_price:
            kind = UNITS[symbol].dimension
            if price.nominal is not None and price.dimension == f"money_per_{kind}":
                yield Count(
                    key=f"cost {item.id}",
                    label=f"cost of {item.name}",
                    amount=amount * UNITS[symbol].factor * price.nominal,
                    unit="$",
                    basis=f"{printed(amount, symbol)} at {price.text}",
                )


def _quantity(job: Job, item: PayItem) -> tuple[Fraction, str, str] | None:
    """The quantity as stated; else the plan area of the areas that are paid under the item."""
    if item.quantity and item.quantity.nominal is not None:
        return item.quantity.amounts[0].value, item.quantity.unit.symbol, "as stated"
    sizes = [_plan_area(area) for area in job.areas.values() if area.pay_item == item.id]
    unit = UNITS.get(item.unit)
    if not sizes or unit is None or unit.dimension != "area":
        return None
    known = [size for size in sizes if size is not None]
    if len(known) < len(sizes):
        return None
    return sum(known, Fraction(0)) / unit.factor, unit.symbol, "plan area of its areas"


def _tests(job: Job, renamed: dict[str, str]) -> Iterator[Count]:
    for area in job.areas.values():
        lengths = _lane_lengths(area.limits)
        for id, test in area.testing.items():
            lot = _lot_length(test.lot)
            readings = test.readings.nominal if test.readings else None
            if not lengths or not lot or readings is None:
                continue
            number = lots(lengths, lot)
            name = area.name or area.id.replace("_", " ")
            yield Count(
                key=f"tests {renamed.get(area.id, area.id)} {id}",
                label=f"{id.replace('_', ' ')} readings on {name}",
                amount=number * readings,
                unit="tests",
                basis=f"{number} lots ({test.lot}) × {test.readings} readings",
            )


def _lane_lengths(limits: Sequence[Limits]) -> list[Fraction]:
    stretches = [stretch for each in limits if (stretch := _stretch(each))]
    return [each.length for each in stretches for _ in range(max(1, len(each.lanes)))]


def _lot_length(lot: str | None) -> Fraction | None:
    """The length of a lot that is written as one length, such as ``each 1,000 ft of lane``."""
    values = numbers_in(lot).values if lot else ()
    if len(values) != 1 or values[0].dimension != "length":
        return None
    return values[0].nominal
