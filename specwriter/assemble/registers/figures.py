"""Drawings of the texture from the job's own numbers: cross-section and, where it helps, a plan."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from specwriter.assemble.document import Block, Dimension, Figure, Paragraph, Plan, Run, Section
from specwriter.assemble.labels import short_label
from specwriter.assemble.page import ABOVE, Page
from specwriter.assemble.view import Many, Value, View, area_views
from specwriter.assemble.wording import both_text, joined, written
from specwriter.model.alternative import with_each_alternative
from specwriter.quantity import Quantity

_SECTION_KEYS = (
    "groove.width",
    "groove.width_at_bottom",
    "groove.depth",
    "groove.depth_on_bridges",
    "groove.depth_over_loops",
    "land.width",
    "groove.clear_gap",
    "groove.spacing",
    "ridge.height",
)
_COUNTS = ("groove.per_foot", "groove.per_metre")
_FLUSH = ("flush_grind.segment", "flush_grind.core", "flush_grind.spacer", "flush_grind.land")
_PLAN_KEYS = ("groove.skew", "coverage.edge_offset", "coverage.joint_offset")
_NAMES = {
    "groove.skew": "skew",
    "coverage.edge_offset": "uncut strip at an edge",
    "coverage.joint_offset": "uncut strip at a joint",
    "flush_grind.segment": "blade segment",
    "flush_grind.core": "core",
    "flush_grind.spacer": "spacer",
    "flush_grind.land": "land",
}
_IN_PLAN = ("transverse_grooving", "runway_grooving")
_BARS = {
    "us": ((Fraction(1), "1 in"), (Fraction(1, 2), "1/2 in"), (Fraction(1, 4), "1/4 in")),
    "si": ((Fraction(20), "20 mm"), (Fraction(10), "10 mm"), (Fraction(5), "5 mm")),
}
_TABLE_GOVERNS = (
    Run(text=" the dimensions; Table "),
    Run(text="", kind="reference", target=ABOVE),
    Run(text=" governs."),
)
_LIST_GOVERNS = (Run(text=" what may be chosen; the dimensions listed above govern."),)
_MILLIMETRES = 1000
_INCH = Fraction("25.4")


@dataclass(slots=True)
class _Drawing:
    """A figure and the areas that it holds for."""

    drawing: Section | Plan
    dimensions: tuple[Dimension, ...]
    notes: tuple[str, ...]
    areas: list[View]
    alternative: str = ""
    """The name of the pattern where it is not that of the area."""


def texture_figure(areas: Many, page: Page) -> tuple[Block, ...]:
    """A cross-section for each set of dimensions, with a plan for transverse grooves.

    There is none for an area whose groove width, depth and spacing cannot be drawn, because a
    value is absent or the values leave no land.
    """
    made: list[_Drawing] = []
    for area in areas:
        for found in _drawings(area):
            same = [each for each in made if _alike(each, found)]
            same[0].areas.append(area) if same else made.append(found)
    figures = [_figure(each, place, len(areas), page) for place, each in enumerate(made, 1)]
    return (_lead(figures, _TABLE_GOVERNS), *figures) if figures else ()


def alternative_figure(areas: Many, page: Page) -> tuple[Block, ...]:
    """A cross-section of each alternative pattern of grooves that can be drawn."""
    ours = {area.path for area in areas}
    found = [
        replace(each, alternative=other.name)
        for laid, other in with_each_alternative(page.job)
        for area in area_views(laid)
        if area.path in ours
        for each in _drawings(area)
        if isinstance(each.drawing, Section)
    ]
    figures = [_figure(each, place, len(areas), page) for place, each in enumerate(found, 1)]
    return (_lead(figures, _LIST_GOVERNS), *figures) if figures else ()


def _alike(one: _Drawing, other: _Drawing) -> bool:
    return (one.drawing, one.dimensions) == (other.drawing, other.dimensions)


def _drawings(area: View) -> Iterator[_Drawing]:
    section = _section(area)
    if section is None:
        return
    shown = tuple(_dimensions(area, _SECTION_KEYS))
    yield _Drawing(section, shown, tuple(_section_notes(area)), [area])
    if area.read("texture") in _IN_PLAN:
        shown = tuple(_dimensions(area, _PLAN_KEYS))
        note = "Diagram without scale; fewer grooves are drawn than are cut."
        yield _Drawing(_plan(area), shown, (note,), [area])


def _section(area: View) -> Section | None:
    width = _size(_read(area, "groove.width"))
    depth = _size(_read(area, "groove.depth"))
    lands = _lands(area, width) if width else ()
    if not width or not depth or not lands or min(lands) <= 0:
        return None
    bottom = _size(_read(area, "groove.width_at_bottom")) or width
    pitches = [_size(_read(area, f"flush_grind.{key}")) for key in ("core", "spacer")]
    ripple = sum(pitches) if all(pitches) else 0.0  # type: ignore[arg-type]
    system = area.job.project.governing_units
    return Section(
        width=width,
        bottom=min(bottom, width),
        depth=depth,
        lands=lands,
        ripple=ripple,
        bar=_bar(width + lands[0], system),
    )


def _lands(area: View, width: float) -> tuple[float, ...]:
    """The lands that are drawn, in millimetres; an uneven pattern shows its whole range."""
    land = _read(area, "land.width") or _read(area, "groove.clear_gap")
    spacing = _read(area, "groove.spacing")
    if area.read("groove").read("pattern") == "random" and (found := land or spacing):
        given = found.quantity.interval
        off = 0.0 if land else width
        ends = [float(end) * _MILLIMETRES - off for end in (given.low, given.high) if end]
        return (sum(ends) / len(ends), min(ends), max(ends), sum(ends) / len(ends) * 0.8)
    even = (_size(spacing) or 0) - width if spacing else _size(land) or _pitch(area) - width
    return (even,) * (4 if even < 2 * width else 2)


def _pitch(area: View) -> float:
    """Millimetres from groove to groove, from the number of grooves in a length."""
    counted = [_size(found) for key in _COUNTS if (found := _read(area, key))]
    # A number per length is held per metre.
    return _MILLIMETRES**2 / counted[0] if counted and counted[0] else 0.0


def _read(area: View, keys: str) -> Value | None:
    noun, key = keys.split(".")
    found = area.read(noun).read(key)
    return found if isinstance(found, Value) else None


def _size(found: Value | None) -> float | None:
    """The middle of what a value allows, or its limit, in thousandths of the base unit."""
    if found is None:
        return None
    quantity: Quantity = found.quantity
    given = quantity.interval
    ends = [end for end in (given.low, given.high) if end is not None]
    size = quantity.nominal or sum(ends, Fraction(0)) / len(ends)
    return float(size) * _MILLIMETRES


def _bar(pitch: float, system: str) -> tuple[float, str]:
    unit = float(_INCH) if system == "us" else 1.0
    fitting = [(float(size) * unit, text) for size, text in _BARS[system]]
    return next((bar for bar in fitting if bar[0] <= pitch * 2), fitting[-1])


def _dimensions(area: View, keys: Sequence[str]) -> Iterator[Dimension]:
    for key in keys:
        if found := _read(area, key):
            yield Dimension(
                at=key,
                name=_NAMES.get(key) or short_label(f"areas.any.{key}"),
                label=found.quantity.text.strip(),
                text=both_text(found.quantity, area.job.project),
            )


def _section_notes(area: View) -> Iterator[str]:
    for each in _dimensions(area, _COUNTS):
        yield f"{each.name}: {each.label}"
    if area.read("groove").read("pattern") == "random":
        yield "Random pattern: the lands drawn are examples from the range."
    flush = [f"{each.name} {each.label}" for each in _dimensions(area, _FLUSH)]
    if flush:
        yield f"Lands ground flush (their notches are not drawn to scale): {', '.join(flush)}."
    yield (
        "Drawn to one scale; each size at its stated value, at its limit, "
        "or in the middle of its range."
    )


def _plan(area: View) -> Plan:
    return Plan(
        skew=_degrees(area),
        joint=_read(area, "coverage.joint_offset") is not None,
        edge=_read(area, "coverage.edge_offset") is not None,
        random=area.read("groove").read("pattern") == "random",
    )


def _degrees(area: View) -> float:
    if (skew := _read(area, "groove.skew")) is None:
        return 0.0
    return float(skew.quantity.unit.from_base(skew.quantity.interval.high or Fraction(0)))


def _figure(made: _Drawing, place: int, areas: int, page: Page) -> Figure:
    names = joined([written(area.read("name")) for area in made.areas])
    page.note(names)
    is_section = isinstance(made.drawing, Section)
    kind = "Cross-section of the texture" if is_section else "Plan of the grooves"
    where = f"{names.text}, alternative {made.alternative}" if made.alternative else names.text
    named = made.alternative or len(made.areas) < areas or areas > 1
    id = "alternative" if made.alternative else made.areas[0].read("texture")
    shown = [f"{each.name} {each.text}" for each in made.dimensions]
    shown += [note.rstrip(".") for note in made.notes]
    return Figure(
        id=f"figure_{id}_{place}",
        number=0,
        caption=f"{kind}, {where}" if named else kind,
        drawing=made.drawing,
        dimensions=made.dimensions,
        notes=made.notes,
        description=f"{kind}, {where}: {'; '.join(shown)}.",
    )


def _lead(figures: Sequence[Figure], governs: tuple[Run, ...]) -> Paragraph:
    """Names every figure of the clause, and says what governs."""
    runs = [Run(text="Figure " if len(figures) == 1 else "Figures ")]
    for place, figure in enumerate(figures):
        if place:
            runs.append(Run(text=" and " if place == len(figures) - 1 else ", "))
        runs.append(Run(text="", kind="reference", target=figure.id))
    verb = " illustrates" if len(figures) == 1 else " illustrate"
    return Paragraph(runs=(*runs, Run(text=verb), *governs))
