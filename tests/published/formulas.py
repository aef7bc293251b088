"""What each check of the tables in ``values`` computes from the inputs of a row.

A check answers with a number, a list or a mapping in the form of the row's ``expected``.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from typing import Any

from specwriter.quantity import UNITS, Interval, parse
from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.relation import Function
from specwriter.trade import (
    aggregate,
    coverage,
    film,
    friction,
    groove_geometry,
    hydroplaning,
    quantities,
    removal,
    sound,
    texture_depth,
    texture_profile,
    wear,
)
from specwriter.worksheet.reach import reach

F = Fraction
INCH = F("25.4")
KMH = 1.609344


def exact(number: Any) -> Fraction:
    return F(str(number))


def base(written: str) -> Fraction:
    """A single written value in its base unit."""
    return parse(written).amounts[0].base


def in_unit(amount: Fraction, unit: str) -> Fraction:
    return UNITS[unit].from_base(amount)


def millimetres(row: dict[str, Any], key: str) -> Fraction:
    return exact(row[f"{key}_mm"]) if f"{key}_mm" in row else exact(row[f"{key}_in"]) * INCH


def land_of_ranges(row: dict[str, Any]) -> list[Fraction | None]:
    counts, widths = ([exact(each) for each in row[key]] for key in ("per_ft", "w_in"))
    found = reach(
        lambda count, width: groove_geometry.land(12 / count, width),
        (Interval(*counts), Interval(*widths)),
    )
    return [found.low, found.high]


def share(row: dict[str, Any]) -> Fraction:
    w, d, p = (millimetres(row, key) for key in "wdp")
    return texture_depth.groove_share(w, w, d, p)


def metric_over_inch(row: dict[str, Any]) -> Fraction:
    sides = [[exact(each) for each in row[key]] for key in ("metric_mm", "inch_mm")]
    metric, inch = (texture_depth.groove_share(w, w, d, F(25)) for w, d in sides)
    return metric / inch


def with_lands(row: dict[str, Any]) -> dict[str, Fraction]:
    w, d, p = (millimetres(row, key) for key in "wdp")
    both = texture_depth.texture_depth(w, w, d, p, exact(row["land_mm"]))
    return {"grooves_only": share(row), "with_land": both}


def mpd_needed(row: dict[str, Any]) -> Fraction:
    target = exact(row["mtd_mm"])
    forms: dict[Any, texture_depth.Conversion] = {"ctm": "0.069 + 0.947 MPD", 2019: "1.1 MPD"}
    return texture_depth.mpd_of_etd(target, forms.get(row["form"], "0.2 + 0.8 MPD"))


def grooves_per_foot(row: dict[str, Any]) -> Any:
    if isinstance(row.get("w_in"), list):
        pairs = zip(reversed(row["w_in"]), reversed(row["land_in"]), strict=True)
        return [12 / groove_geometry.spacing(exact(w), exact(land)) for w, land in pairs]
    kerf = millimetres(row, "w" if "w_in" in row else "kerf")
    pitch = groove_geometry.spacing(kerf, millimetres(row, "land"))
    return groove_geometry.grooves_per(12 * INCH, pitch)


def segment_and_gap(row: dict[str, Any]) -> list[Fraction]:
    pitch = groove_geometry.spacing(exact(row["w_mm"]), exact(row["gap_mm"]))
    return [pitch, *(groove_geometry.grooves_per(each, pitch) for each in (F(1000), 12 * INCH))]


def removed(row: dict[str, Any]) -> dict[str, Fraction]:
    depth, density = exact(row["depth_in"]), exact(row["density_lb_ft3"])
    cubic_feet = removal.volume(F(9), depth / 12)
    return {
        "L_per_m2": removal.volume(F(1), depth * INCH),
        "ft3_per_yd2": cubic_feet,
        "lb_per_yd2": removal.mass(cubic_feet, density),
    }


def residue(row: dict[str, Any]) -> dict[str, Fraction]:
    volume = removal.volume(exact(row["area_ft2"]), exact(row["depth_in"]) / 12)
    mass = removal.mass(volume, exact(row["density_lb_ft3"]))
    return {"ft3": volume, "yd3": volume / 27, "lb": mass}


def area(row: dict[str, Any]) -> Fraction:
    length, width = base(row["length"]), base(row["width"])
    stretch = quantities.Stretch(roadway="a", start=F(0), end=length, width=width)
    return quantities.area_once([stretch])


def covered(row: dict[str, Any]) -> Fraction:
    width = coverage.width_covered(row["passes"], base(row["head"]), base(row["overlap"]))
    return in_unit(width, row["unit"])


def passes(row: dict[str, Any]) -> int:
    lane, head = exact(row["lane_ft"]) * 12, exact(row["head_ft"]) * 12
    return coverage.passes_needed(lane, head, exact(row["overlap_in"]))


def number_at_60(model: friction.SpeedModel) -> Callable[[dict[str, Any]], float]:
    def check(row: dict[str, Any]) -> float:
        measured = friction.SkidNumber(value=row["sn40"], speed=40 * KMH)
        mtd = float(texture_depth.etd_of_mpd(exact(row["mpd_mm"]), "0.2 + 0.8 MPD"))
        at = friction.skid_number_at(measured, 60 * KMH, model, mpd=row["mpd_mm"], mtd=mtd)
        return at.value

    return check


def textbook_number(row: dict[str, Any]) -> float:
    measured = friction.SkidNumber(value=row["sn40"], speed=40 * KMH)
    speed, mtd = row["at_mph"] * KMH, row["mtd_in"] * 25.4
    at = friction.skid_number_at(measured, speed, "exponential skid number", mpd=1, mtd=mtd)
    return at.value


def tyre_speed(row: dict[str, Any]) -> float:
    film_in, texture_in = row["film_mm"] / 25.4, row["mtd_mm"] / 25.4
    return hydroplaning.speed_1979(film_in, texture_in, 24, 3, 10)


def film_of(row: dict[str, Any]) -> float:
    return film.film_1979(row["mtd_mm"], row["L_m"], row["I_mmph"], row["S"])


def si_coefficient(_: dict[str, Any]) -> float:
    """The coefficient that the inch form has when all but the result is SI: 1 m, 1 mm/h, 1 mm."""
    depth_in = film.film_1979_inch(1 / 25.4, 1 / 0.3048, 1 / 25.4, 1) + 1 / 25.4
    return depth_in * 25.4


def switch_of_texture(row: dict[str, Any]) -> float:
    """The texture in inches from which coarser texture raises the speed, by halving."""
    low, high, film_in = 0.001, 0.1, row["film_mm"] / 25.4
    smooth = hydroplaning.surface_term(film_in, low)
    while high - low > 1e-6:
        middle = (low + high) / 2
        raised = hydroplaning.surface_term(film_in, middle) > smooth
        low, high = (low, middle) if raised else (middle, high)
    return low


def editions_meet(_: dict[str, Any]) -> list[Fraction]:
    mpd = F(2, 3)
    old = texture_depth.etd_of_mpd(mpd, "0.2 + 0.8 MPD")
    new = texture_depth.etd_of_mpd(mpd, "1.1 MPD")
    assert old == new
    return [mpd, old]


def levels_inside(row: dict[str, Any]) -> int:
    band = sound.BANDS[row["texture"]]
    return sum(band.quietest <= level <= band.loudest for level in row["levels"])


def circle(row: dict[str, Any]) -> texture_profile.Circle:
    return texture_profile.on_a_circle(row["w_mm"], row["d_mm"], row["p_mm"])


def loss(row: dict[str, Any]) -> list[Fraction | None]:
    published = wear.LOSS_MM[row["texture"]]
    return [published.low, published.high]


def band_in_mm(row: dict[str, Any]) -> list[Fraction]:
    interval = parse(row["written"]).interval
    assert interval.low is not None
    assert interval.high is not None
    return [interval.low * 1000, interval.high * 1000]


def value_of(slug: str, at: dict[str, Any]) -> Any:
    """What the function of a relation makes of its inputs."""
    shapes = (each.shape for each in all_relations() if each.slug == slug)
    return next(each for each in shapes if isinstance(each, Function)).value(at)


def metric_of_inch() -> Fraction:
    metric, inch = (
        texture_depth.groove_share(base(side), base(side), base(side), base(apart))
        for side, apart in (("6 mm", "38 mm"), ("1/4 in", "1-1/2 in"))
    )
    return metric / inch


CHECKS: dict[str, Callable[[dict[str, Any]], Any]] = {
    "unit": lambda r: in_unit(base(r["written"]), r["unit"]),
    "spacing of a count per foot": lambda r: groove_geometry.grooves_per(F(12), exact(r["per_ft"])),
    "count per metre of a count per foot": lambda r: in_unit(
        base(f"{r['per_ft']} per ft"), "per m"
    ),
    "count per foot of a count per metre": lambda r: in_unit(base(f"{r['per_m']} per m"), "per ft"),
    "grooves per foot": grooves_per_foot,
    "grooves per foot of ranges": grooves_per_foot,
    "count and spacing of segment and gap": segment_and_gap,
    "land": lambda r: groove_geometry.land(exact(r["p_in"]), exact(r["w_in"])),
    "land of ranges": land_of_ranges,
    "groove share": share,
    "texture of a pattern on both sides of 1.0 mm": lambda r: (
        texture_depth.groove_share(base(r["w"]), base(r["w"]), base(r["d"]), base(r["p"])) * 1000
    ),
    "trapezoid share": lambda r: texture_depth.groove_share(
        *(exact(r[key]) for key in ("top_in", "bottom_in", "d_in", "p_in"))
    ),
    "texture depth with lands": with_lands,
    "kerf share": lambda r: 100 * groove_geometry.kerf_share(exact(r["w"]), exact(r["p"])),
    "metric pattern over inch pattern": metric_over_inch,
    "tolerance band in mm": band_in_mm,
    "slope of a rise": lambda r: base(r["rise"]) / base(r["run"]),
    "grooves in a head": lambda r: groove_geometry.grooves_per(
        exact(r["head_in"]), exact(r["p_in"])
    ),
    "removal": removed,
    "residue": residue,
    "solids in ft3": lambda r: in_unit(removal.volume(area(r), base(r["depth"])), "ft3"),
    "section modulus": lambda r: removal.section_modulus_left(exact(r["h_mm"]), exact(r["x_mm"])),
    "area in SY": lambda r: in_unit(area(r), "SY"),
    "area in m2": area,
    "price per SY": lambda r: exact(r["total"]) / in_unit(area(r), "SY"),
    "covered width": covered,
    "passes": passes,
    "grooves forgiven": lambda r: coverage.grooves_forgiven(
        exact(r["share"]), exact(r["window_in"]), exact(r["p_in"])
    ),
    "patch": lambda r: texture_depth.depth_of_patch(r["V_in3"], r["D_in"]),
    "etd of 0.2 + 0.8 MPD": lambda r: texture_depth.etd_of_mpd(exact(r["mpd_mm"]), "0.2 + 0.8 MPD"),
    "etd of 1.1 MPD": lambda r: texture_depth.etd_of_mpd(exact(r["mpd_mm"]), "1.1 MPD"),
    "etd where the editions agree": editions_meet,
    "circular track": lambda r: texture_depth.etd_of_mpd(exact(r["mpd_mm"]), "0.069 + 0.947 MPD"),
    "mpd needed": mpd_needed,
    "reading of a line": lambda r: texture_profile.on_a_line(
        r["w_mm"], r["d_mm"], r["p_mm"], r["angle_deg"]
    ),
    "reading of the circle, mean of eight": lambda r: circle(r).mean_of_eight,
    "reading of the circle, two arcs along": lambda r: circle(r).along_pair,
    "edge rounding": lambda r: texture_depth.edge_rounding(exact(r["r_mm"]), exact(r["p_mm"])),
    "ripple of texture by depth": lambda r: texture_depth.groove_share(
        exact(r["kerf"]), exact(r["kerf"]), exact(r["dd_mm"]), F(1)
    ),
    "texture lost": lambda r: wear.texture_lost(
        exact(r["w_mm"]), exact(r["p_mm"]), exact(r["wear_mm"])
    ),
    "wear implied": lambda r: wear.wear_implied(exact(r["loss_mm"]), exact(r["kerf"])),
    "published loss": loss,
    "residue of a blend": lambda r: aggregate.blend((exact(s), exact(x)) for s, x in r["parts"]),
    "share needed": lambda r: aggregate.share_needed(
        exact(r["target"]), exact(r["poor"]), exact(r["good"])
    ),
    "least residue of sand": lambda _: aggregate.LEAST_RESIDUE,
    "speed number": lambda r: friction.speed_number(r["mpd_mm"]),
    "f60 of dft": lambda r: friction.f60_of_dft(r["dft20"], r["mpd_mm"]),
    "smooth of ribbed": lambda r: friction.number_of_other_tyre(
        r["snr"], 40 * KMH, r["mpd_mm"], "ribbed"
    ),
    "skid number at 60 mph by friction index": number_at_60("friction index"),
    "skid number at 60 mph by exponential form": number_at_60("exponential skid number"),
    "skid number of the textbook": textbook_number,
    "guide minimum": lambda r: friction.guide_minimum(r["mph"]),
    "film 1979": film_of,
    "SI coefficient of the 1979 film": si_coefficient,
    "drainage path": lambda r: [
        film.drainage_path(r["W_m"], r["sx"], r["g"]),
        film.resultant_slope(r["sx"], r["g"]),
    ],
    "rain that fills": lambda r: film.rain_that_fills(
        r["w_mm"], r["d_mm"], r["p_mm"], r["L_m"], r["S"]
    ),
    "speed 1979": tyre_speed,
    "speed 1998": lambda r: hydroplaning.speed_1998(r["film_mm"] / 25.4, r["mtd_mm"] / 25.4),
    "speed 1998 at the branch": lambda r: hydroplaning.speed_1998(r["film_in"], 0.03),
    "texture at which the 1979 speed begins to feel it": switch_of_texture,
    "tyre term of the 1998 speed": lambda _: (
        hydroplaning.speed_1979(0.1, 0.03, 24, 3, 10) / hydroplaning.surface_term(0.1, 0.03)
    ),
    "speed nasa": lambda r: hydroplaning.speed_nasa_mph(r["psi"]),
    "speed nasa in knots": lambda r: hydroplaning.speed_nasa_knots(r["psi"]),
    "speed nasa metric": lambda r: hydroplaning.speed_nasa_kmh(r["kpa"]),
    "roadside": lambda r: sound.roadside(r["obsi"], r["distance_ft"])[0],
    "roadside offset": lambda r: -sound.roadside(0, r["distance_ft"])[0],
    "close proximity offset": lambda r: sound.obsi_of_cpx(r["cpx"])[0],
    "standard speed of OBSI": lambda _: sound.STANDARD_SPEED_MPH,
    "section of OBSI": lambda _: sound.SECTION_FT,
    "levels inside the band": levels_inside,
    "quiet level at a speed": lambda r: sound.at_speed(r["at_60"], r["mph"], -1),
    "loud level at a speed": lambda r: sound.at_speed(r["at_60"], r["mph"], 1),
    "quietest roadside offset": lambda r: sound.quietest_offset(r["distance_ft"]),
    "share with grooves lost": lambda r: (
        100
        * value_of(
            "share-lost-by-failed-blades",
            {
                "blade.failed_allowed": r["missing"],
                "groove.spacing": F(1),
                "coverage.window_width": F(r["grooves"]),
            },
        )
    ),
    "least width of a head": lambda r: value_of(
        "blades-on-the-head",
        {"blade.per_head": r["blades"], "groove.spacing": exact(r["p_in"])},
    ),
    "segments of a length": lambda r: quantities.lots(
        [base(r["length"])], base(r["segment"]), base(r["joined"])
    ),
    "metric pattern of a runway over the inch pattern": lambda _: 100 * (metric_of_inch() - 1),
    "top edge of a trapezoid": lambda r: groove_geometry.edge_angle(
        *(exact(r[key]) for key in ("top_in", "bottom_in", "d_in"))
    ),
    "0.1 km against 0.1 mi": lambda r: 100 * (1 - base(r["metric"]) / base(r["inch"])),
    "level over speed": lambda r: sound.level_change(r["from"], r["to"], 30),
    "temperature correction per degree Celsius": lambda _: sound.CORRECTIONS_PER_C[
        "AASHTO T 360 (memory, unverified)"
    ],
    "tone": lambda r: sound.tone(r["mph"] * KMH / 3.6, r["pitch_mm"] / 1000),
}
