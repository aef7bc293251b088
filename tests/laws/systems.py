"""Generated contracts: values scattered around a pattern that can be cut."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from hypothesis import strategies as st

INCH_64 = Fraction(1, 64)


def written(low: int, high: int) -> str:
    """One number or a range of sixty-fourths of an inch."""
    return f"{low}/64 in" if low == high else f"{low}/64 in to {high}/64 in"


@st.composite
def near(draw: st.DrawFn, value: int) -> str:
    """A range, a limit or a number at or a little off a value in sixty-fourths."""
    low = max(1, value + draw(st.integers(-3, 2)))
    high = low + draw(st.integers(0, 5))
    form = draw(st.sampled_from(("range", "range", "range", "at most", "at least")))
    if form == "range":
        return written(low, high)
    return f"{form} {high if form == 'at most' else low}/64 in"


@st.composite
def contracts(draw: st.DrawFn) -> dict[str, Any]:
    """Keys of an area of grooves; most of them absent, the rest near one pattern."""
    width, land = draw(st.integers(5, 12)), draw(st.integers(16, 44))
    depth, spacer = draw(st.integers(6, 18)), draw(st.integers(10, 44))
    pitch = width + land
    keys = {
        "groove.width": near(width),
        "groove.depth": near(depth),
        "groove.spacing": near(pitch),
        "land.width": near(land),
        "groove.clear_gap": near(land),
        "groove.per_foot": st.integers(-1, 1).map(lambda off: f"{768 // pitch + off} per ft"),
        "blade.segment": near(width),
        "blade.core": near(max(1, pitch - spacer)),
        "blade.spacer": near(spacer),
    }
    chosen = draw(st.lists(st.sampled_from(sorted(keys)), min_size=2, max_size=6, unique=True))
    found = {key: draw(keys[key]) for key in chosen}
    if draw(st.booleans()):
        found |= draw(depths(width, depth, pitch))
    return found


@st.composite
def depths(draw: st.DrawFn, width: int, depth: int, pitch: int) -> dict[str, Any]:
    """A texture depth near what the pattern gives, with or without a texture of the land."""
    share = width * depth / pitch / 64 * 25.4
    asked = max(0.1, share + draw(st.integers(-3, 3)) / 10)
    found: dict[str, Any] = {
        "texture_depth": {
            "measure": "MTD",
            "at_least": f"{asked:.2f} mm",
            "method": "ASTM E965",
            "edition": "2015",
            "surface": "over_grooves",
        }
    }
    if draw(st.booleans()):
        found["texture_depth"]["land_texture"] = draw(
            st.sampled_from(("0 mm", "0.2 mm", "0.1 mm to 0.3 mm", "at most 0.4 mm"))
        )
    return found


def patches(keys: dict[str, Any]) -> dict[str, Any]:
    """The keys as changes to the smallest job of grooves."""
    bare: dict[str, Any] = {"areas.mainline.groove": {}, "areas.mainline.land": {}}
    return bare | {f"areas.mainline.{key}": value for key, value in keys.items()}


def tenths(low: int, high: int, unit: str) -> st.SearchStrategy[str]:
    """A number with one decimal."""
    return st.integers(low, high).map(lambda number: f"{number / 10:.1f} {unit}")


@st.composite
def machines(draw: st.DrawFn) -> dict[str, Any]:
    """Heads, passes, blades that fail, and what is to be left under the cut: changes to a job."""
    keys = {
        "areas.mainline.equipment.head_width": tenths(30, 50, "ft"),
        "areas.mainline.coverage.passes": st.integers(1, 5).map(str),
        "areas.mainline.coverage.overlap": st.integers(0, 6).map(lambda n: f"at most {n} in"),
        "areas.mainline.coverage.unground_strip": st.integers(0, 3).map(
            lambda n: f"at most {n} in"
        ),
        "areas.mainline.coverage.share": st.integers(88, 99).map(lambda n: f"at least {n} percent"),
        "areas.mainline.coverage.window_width": tenths(10, 40, "ft"),
        "areas.mainline.blade.failed_allowed": st.integers(0, 4).map(str),
        "areas.mainline.blade.per_head": st.integers(40, 110).map(str),
        "areas.mainline.removal.depth": st.integers(4, 32).map(lambda n: f"at most {n}/64 in"),
        "areas.mainline.removal.cover_after": tenths(10, 30, "in"),
        "areas.mainline.removal.thickness_after": tenths(70, 100, "in"),
        "areas.mainline.joint_match": st.integers(2, 10).map(lambda n: f"{n}/64 in"),
        "conditions.lane_width": tenths(100, 130, "ft"),
        "conditions.cover_to_steel": tenths(10, 30, "in"),
        "conditions.slab_thickness": tenths(80, 100, "in"),
        "conditions.existing_faulting": st.integers(4, 40).map(lambda n: f"{n}/64 in"),
    }
    chosen = draw(st.lists(st.sampled_from(sorted(keys)), min_size=4, max_size=12, unique=True))
    return {key: draw(keys[key]) for key in chosen}


STEP = Fraction(254, 640000)
"""A sixty-fourth of an inch in metres."""

TEXTURES_ON_THE_MAINLINE = (
    "longitudinal_grooving",
    "diamond_grinding",
    "next_generation_concrete_surface",
    "transverse_grooving",
)


@st.composite
def around(draw: st.DrawFn, value: int) -> str:
    """A requirement in any form and either unit, at or a little off a value in sixty-fourths."""
    middle = max(1, value + draw(st.sampled_from((0, 0, 0, 0, -1, 1, -2, 2))))
    reach = draw(st.integers(0, 3))
    low, high = max(0, middle - reach), middle + reach
    in_inches = draw(st.booleans())

    def text(number: int) -> str:
        return f"{number}/64" if in_inches else f"{float(number * STEP * 1000):.6f}"

    unit = "in" if in_inches else "mm"
    return draw(
        st.sampled_from(
            (
                f"{text(middle)} {unit}",
                f"{text(middle)} {unit}",
                f"{text(low)} {unit} to {text(high)} {unit}",
                f"{text(low)} {unit} to {text(high)} {unit}",
                f"{text(middle)} {unit} ± {text(min(reach, middle))} {unit}",
                f"at most {text(high)} {unit}",
                f"at least {text(low)} {unit}",
            )
        )
    )


@st.composite
def areas(draw: st.DrawFn) -> tuple[str, dict[str, Any]]:
    """A texture, and keys of its area around one pattern that can be cut, some stated twice."""
    texture = draw(st.sampled_from(TEXTURES_ON_THE_MAINLINE))
    width, land, overhang = draw(
        st.tuples(st.integers(6, 12), st.integers(8, 40), st.integers(0, 2))
    )
    depth, removal, pitch = draw(st.integers(4, 16)), draw(st.integers(8, 30)), width + land
    count, cover = round(768 / pitch), 96
    per_metre = round(1 / (pitch * STEP))
    keys = {
        "areas.mainline.groove.width": around(width),
        "areas.mainline.groove.width_at_bottom": around(width - 2),
        "areas.mainline.groove.depth": around(depth),
        "areas.mainline.groove.spacing": around(pitch),
        "areas.mainline.groove.clear_gap": around(land),
        "areas.mainline.groove.per_foot": st.integers(-1, 1).map(
            lambda off: f"{count - 1 + off} to {count + 1 + off} per ft"
        ),
        "areas.mainline.groove.per_metre": st.integers(-3, 3).map(
            lambda off: f"{per_metre - 2 + off} to {per_metre + 2 + off} per m"
        ),
        "areas.mainline.land.width": around(land),
        "areas.mainline.blade.segment": around(width),
        "areas.mainline.blade.core": around(width - overhang),
        "areas.mainline.blade.spacer": around(land + overhang),
        "areas.mainline.removal.depth": around(removal),
        "areas.mainline.removal.cover_after": around(cover - removal - depth),
        "conditions.cover_to_steel": around(cover),
    }
    if texture == "diamond_grinding":
        keys["areas.mainline.ridge.height"] = around(depth)
    if texture == "next_generation_concrete_surface":
        keys |= {
            "areas.mainline.flush_grind.core": around(width - overhang),
            "areas.mainline.flush_grind.segment": around(width),
            "areas.mainline.flush_grind.spacer": around(2 + overhang),
            "areas.mainline.flush_grind.land": around(2),
        }
    chosen = draw(st.lists(st.sampled_from(sorted(keys)), min_size=4, max_size=10, unique=True))
    found: dict[str, Any] = {"areas.mainline.groove": {}, "areas.mainline.land": {}}
    found |= {key: draw(keys[key]) for key in chosen}
    if draw(st.booleans()):
        depths_ = draw(depths(width, depth, pitch))
        found |= {f"areas.mainline.{key}": value for key, value in depths_.items()}
    twice = [key for key in chosen if key.startswith("areas.mainline.")]
    if twice and draw(st.integers(0, 3)) == 0:
        key = draw(st.sampled_from(twice))
        noun, name = key.removeprefix("areas.mainline.").split(".")
        found["areas.mainline.also_stated"] = [{"in": "sheet 3", noun: {name: draw(keys[key])}}]
    return texture, found
