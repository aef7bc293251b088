"""How many readings of a lot must pass, where a share of them must."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Job
from specwriter.model.results import Test, Tier
from specwriter.quantity import Interval
from specwriter.trade.formula import arithmetic
from specwriter.trade.tiers import failing, passing
from specwriter.worksheet.figure import Line
from specwriter.worksheet.scale import NUMBER
from specwriter.worksheet.sheet import Sheet, areas
from specwriter.worksheet.tested import tests_of

LEAST = arithmetic("readings that must pass = share × readings of a lot, rounded up")
MOST = arithmetic("readings that may lie there = share × readings of a lot, rounded down")


def figures(job: Job) -> Iterator[Line]:
    """One line for the share of a test, and one for each of its tiers."""
    for area, sheet in areas(job):
        for each in tests_of(area):
            if each.test.share is not None:
                title = f"readings that must pass in a lot of the test of {each.name}"
                yield from _line(sheet, title, each.test, each.test)
            for tier in each.test.tiers:
                title = f"readings of {tier.limit} in a lot of the test of {each.name}"
                yield from _line(sheet, title, each.test, tier)


def _line(sheet: Sheet, title: str, test: Test, node: Test | Tier) -> Iterator[Line]:
    share, readings = node.share, test.readings
    if readings is None or readings.nominal is None:
        yield sheet.waiting(title, "not given: readings of a lot")
        return
    assert share is not None
    least, most = share.interval.low, share.interval.high
    at_most = share.form == "at_most" and most is not None
    bound = most if at_most else least
    if bound is None:
        return
    number = Fraction((failing if at_most else passing)(bound, int(readings.nominal)))
    span = Interval(None, number) if at_most else Interval(number, None)
    inputs = (
        Evidence(path=test.path_to("readings"), label="readings", written=str(readings)),
        Evidence(path=node.path_to("share"), label="share of the readings", written=str(share)),
    )
    yield sheet.of_span(title, MOST if at_most else LEAST, NUMBER, span, inputs)
