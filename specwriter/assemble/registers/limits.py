"""Where the texture goes: stretches of each area with their plan area."""

from __future__ import annotations

from fractions import Fraction

from specwriter.assemble.document import Table
from specwriter.assemble.page import Page, Phrase, blank, plain
from specwriter.assemble.registers.cells import NONE, Row, key, table, value
from specwriter.assemble.view import Many, Value, View
from specwriter.assemble.wording import in_words
from specwriter.quantity import UNITS, Unit, show

_HEADER = ("Area", "Roadway", "Lanes", "From", "To", "Width")


def limits_table(areas: Many, page: Page) -> tuple[Table, ...]:
    """One row a stretch; the plan area is length times width, for information only."""
    placed = any(_untold(area) for area in areas)
    unit = UNITS["SY" if page.job.project.governing_units == "us" else "m2"]
    rows: list[Row] = []
    total = Fraction(0)
    for area in areas:
        for stretch in area.read("limits") or (None,):
            plan = stretch and plan_area(stretch)
            total += plan or 0
            shown = plain(_whole(plan, unit)) if plan else NONE
            name, *where = _stretch(area, stretch, page)
            place = [in_words(area.read("place"))] * placed
            rows.append([name, *place, *where, shown])
    header = (*_HEADER[:1], *(["Place"] * placed), *_HEADER[1:], "Plan area")
    if total and len(rows) > 1:
        between = [plain("")] * (len(header) - 2)
        rows.append([plain("Total"), *between, plain(_whole(total, unit))])
    return (table(page, "limits_table", "Limits of the work", header, rows),)


def _untold(area: View) -> bool:
    """Whether nothing that the table says of an area tells what kind of surface it is.

    A surface of which nothing else is said lies in a roadway.
    """
    place = in_words(area.read("place")).text
    roadways = [key(stretch, "roadway") for stretch in area.read("limits") or ()]
    told = " ".join(name.text for name in (key(area, "name"), *roadways)).lower()
    return place != "roadway" and place not in told


def _whole(area: Fraction, unit: Unit) -> str:
    """An area in whole units, with the commas of a bid quantity, which stands beside it."""
    number, _, symbol = show(area, unit, 0).partition(" ")
    return f"{int(number.replace(',', '')):,} {symbol}"


def plan_area(stretch: View) -> Fraction | None:
    """Length between the stations times width, in square metres, where the job gives all three."""
    found = [stretch.read(name) for name in ("from", "to", "width")]
    sizes = [item.quantity.nominal for item in found if isinstance(item, Value)]
    if len(sizes) < 3 or None in sizes:
        return None
    start, end, width = (size or Fraction(0) for size in sizes)
    return abs(end - start) * width


def _stretch(area: View, stretch: View | None, page: Page) -> list[Phrase]:
    name = key(area, "name")
    if stretch is None:
        path = f"{area.path}.limits"
        return [name, *(blank(path, head.lower()) for head in _HEADER[1:])]
    texts = [key(stretch, text) for text in ("roadway", "from", "to")]
    texts.insert(1, _lanes(area, stretch))
    return [name, *texts, value(stretch.read("width"), page.job)]


def _lanes(area: View, stretch: View) -> Phrase:
    """The lanes, which only a roadway must name: a runway, a ramp or a deck is one surface."""
    named = stretch.read("lanes") or area.read("place") == "roadway"
    return key(stretch, "lanes") if named else NONE
