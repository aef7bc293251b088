"""What the wheelbase of the machine leaves of the existing waves."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.trade.ride.grinder import remaining
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, of_area, of_site
from specwriter.worksheet.scale import PERCENT
from specwriter.worksheet.sheet import NO_VALUE, Sheet, areas, evidence_of

TITLE = "share of the existing waves that one pass leaves"
FORMULA = Formula(
    text="share left of a wave = a sinc(b ν) / |1 - (1 - a) exp(-2πi ν h)|, a = h / wheelbase",
    source="geometry of a beam on two supports (project calculation); head 3 ft ahead of the rear "
    "wheels: Ohio DOT item 257, manual of procedures, 2009; bogie 4 ft: common practice, no source",
    validity="an ideal machine that always cuts; a real one leaves more",
)
_PARTS = 40


def figures(job: Job) -> Iterator[Line]:
    """One line for each ground area, where the site names the length of its waves."""
    for area, sheet in areas(job):
        known = sheet.job.conditions.existing_wavelength is not None
        if known and area.texture == "diamond_grinding":
            yield _line(area, sheet)


def _line(area: Area, sheet: Sheet) -> Line:
    needs = (of_site(sheet.job, "existing_wavelength"), of_area(area, "equipment.wheelbase"))
    missing = [each.name for each in needs if isinstance(each, Missing)]
    if missing:
        return sheet.waiting(TITLE, "not given: " + ", ".join(missing))
    given = [each for each in needs if isinstance(each, Given)]
    waves, base = (each.as_one() for each in given)
    if not waves.low or waves.high is None or not base.low:
        return sheet.waiting(TITLE, NO_VALUE)
    # The share rises and falls between the ends of a range of waves.
    steps = [waves.low + (waves.high - waves.low) * part / _PARTS for part in range(_PARTS + 1)]
    left = [Fraction(remaining(1 / float(wave), float(base.low))) for wave in steps]
    span = Interval(min(left), max(left))
    return sheet.of_span(TITLE, FORMULA, PERCENT, span, evidence_of(given))
