"""Makes the lines of one area, or of the whole job, from inputs and a formula."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job, at_area
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Figure, Line, Waiting
from specwriter.worksheet.inputs import Given, Input, Missing
from specwriter.worksheet.reach import NoValue, reach
from specwriter.worksheet.scale import Scale

NO_VALUE = "an input is zero, or outside what the formula takes"


@dataclass(frozen=True, slots=True)
class Sheet:
    """The job, and the area whose lines are made; none for a line of the whole job."""

    job: Job
    area: Area | None = None

    def figure(
        self,
        title: str,
        formula: Formula,
        scale: Scale,
        needs: Iterable[Input],
        compute: Callable[..., Any],
        *,
        note: str = "",
        as_one: bool = False,
    ) -> Line:
        """The figure over all values of its inputs, or what it waits for.

        ``compute`` takes the inputs in their order, in base units, and is monotone in each.
        ``as_one`` takes a one-sided limit as the value that it names.
        """
        listed = tuple(needs)
        missing = [each.name for each in listed if isinstance(each, Missing)]
        if missing:
            return self.waiting(title, "not given: " + ", ".join(dict.fromkeys(missing)))
        given = [each for each in listed if isinstance(each, Given)]
        try:
            span = reach(compute, [each.as_one() if as_one else each.interval for each in given])
        except NoValue:
            return self.waiting(title, NO_VALUE)
        return self.of_span(title, formula, scale, span, evidence_of(given), note)

    def of_span(
        self,
        title: str,
        formula: Formula,
        scale: Scale,
        span: Interval,
        inputs: Iterable[Evidence],
        note: str = "",
    ) -> Figure:
        """A figure whose span is known already, in base units."""
        unit = scale.governing(self.job)
        return Figure(
            area=self.area.id if self.area else None,
            title=title,
            value=scale.text(span, self.job),
            low=None if span.low is None else span.low / unit.factor,
            high=None if span.high is None else span.high / unit.factor,
            unit=unit.symbol,
            formula=formula.text,
            inputs=tuple(inputs),
            source=formula.source,
            validity=formula.validity,
            note=note,
        )

    def waiting(self, title: str, because: str) -> Waiting:
        """A figure that cannot be computed, and why."""
        return Waiting(area=self.area.id if self.area else None, title=title, because=because)


def areas(job: Job) -> Iterator[tuple[Area, Sheet]]:
    """Every area with its sheet, which sees the job as it stands there."""
    for area in job.areas.values():
        yield area, Sheet(at_area(job, area), area)


def evidence_of(inputs: Iterable[Given]) -> tuple[Evidence, ...]:
    """The places of inputs, each once."""
    return tuple(dict.fromkeys(each for given in inputs for each in given.evidence))
