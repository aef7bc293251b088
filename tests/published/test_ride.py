"""The ride engineering against published constants, arithmetic, and its own second routes.

The tables under ``ride/`` are kept apart by what they are worth as evidence; the first line of
each says so. The quarter-car of ``tests.support.ride`` is the independent implementation.
"""

from __future__ import annotations

from collections.abc import Callable
from math import hypot, isclose, pi
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import yaml

from specwriter.trade.ride import (
    FOOT,
    INCH,
    INCH_PER_MILE,
    MILE,
    bumps,
    curl,
    faulting,
    footprint,
    grinder,
    improvement,
    profilograph,
    quarter_car,
    steps,
    straightedge,
)
from specwriter.trade.ride import gain as waves
from specwriter.trade.ride.quarter_car import transition
from specwriter.trade.ride.roughness import accumulated_travel, roughness
from tests.support.ride_roads import SIMULATIONS
from tests.support.ride_waves import sine

SAMPLE = 0.025
TABLES = Path(__file__).parent / "ride"
ROWS = [
    pytest.param(row, id=f"{table.stem}: {row['what']} {row['inputs']}"[:90])
    for table in sorted(TABLES.glob("*.yaml"))
    for row in yaml.safe_load(table.read_text(encoding="utf-8"))
]
Inputs = dict[str, Any]


def in_mi(slope: float) -> float:
    return slope / INCH_PER_MILE


def transition_of(inputs: Inputs) -> quarter_car.Transition:
    return transition(inputs["dx_mm"] / 1000)


def modes(_: Inputs) -> dict[str, list[float]]:
    roots = np.linalg.eigvals(np.array(quarter_car.DYNAMICS))
    upper = sorted((root for root in roots if root.imag > 0), key=abs)
    return {
        "f_hz": [hypot(root.real, root.imag) / 2 / pi for root in upper],
        "zeta": [-root.real / abs(root) for root in upper],
    }


def crossing(level: float, low: float, high: float) -> float:
    """The wavelength between two at which the gain passes the level."""
    rises = waves.gain(1 / high) > waves.gain(1 / low)
    for _ in range(60):
        middle = (low + high) / 2
        if (waves.gain(1 / middle) > level) == rises:
            high = middle
        else:
            low = middle
    return low


def wavelengths_of_a_gain(_: Inputs) -> dict[str, list[float]]:
    return {
        level: [crossing(float(level), 0.3, 2.29), crossing(float(level), 15.8, 90)]
        for level in ("0.5", "1", "0.1")
    }


def peak_of_the_averaged_gain(_: Inputs) -> dict[str, float]:
    gain, wavelength = max(
        (waves.gain(1 / w) * waves.averaging_gain(1 / w), w) for w in np.arange(2, 3, 0.001)
    )
    return {"gain": gain, "wavelength_m": float(wavelength)}


def shortfall(inputs: Inputs) -> list[float]:
    """Percent below the wave as it is, without any averaging."""
    return [
        100 * (1 - sine(w, 0.25, 500) / (0.004 / w * waves.gain(1 / w)))
        for w in inputs["wavelength_m"]
    ]


SHAPES = {"tri": bumps.triangle, "hav": bumps.haversine, "box": bumps.box}


def bump(inputs: Inputs) -> dict[str, float]:
    name = inputs["feature"]
    if name == "step10":
        travel = 0.010 * steps.travel_of_step()
    else:
        road = bumps.profile(SHAPES[name[:3]], 0.010, float(name[3:]))
        travel = accumulated_travel(road, SAMPLE)
    return {"travel_mm": travel * 1000, "iri_in_mi": in_mi(travel / (0.1 * MILE))}


def linearity(inputs: Inputs) -> float:
    road = bumps.profile(bumps.haversine, 0.01, 3)
    return roughness([inputs["scale"] * z for z in road], SAMPLE) / roughness(road, SAMPLE)


def step_size(inputs: Inputs) -> list[float]:
    return [
        in_mi(
            accumulated_travel(bumps.profile(bumps.triangle, 0.01, 5, mm / 1000), mm / 1000)
            / (0.1 * MILE)
        )
        for mm in inputs["dx_mm"]
    ]


def equal_steps(inputs: Inputs) -> list[float]:
    height, joints = inputs["F_in"] * INCH, inputs["joint_ft"] * FOOT
    made = (steps.saw_tooth, steps.alternating, steps.random_sign)
    return [
        *(in_mi(height * of(joints)) for of in made),
        in_mi(faulting.modelled(height, joints)),
    ]


def affordable(inputs: Inputs) -> float:
    limit, background = (inputs[key] * INCH_PER_MILE for key in ("mri_limit", "background"))
    return steps.affordable_step(limit, background, 15 * FOOT) / INCH


def under_a_straightedge(inputs: Inputs) -> list[float]:
    found = []
    for edge in inputs["edges"]:
        tolerance, length = edge.removesuffix("ft").split("in/")
        parts = [float(part) for part in tolerance.split("/")]
        gap = parts[0] / parts[1] * INCH
        at = (inputs["wavelength_m"], gap, float(length) * FOOT)
        found.append(in_mi(straightedge.roughness_at(*at, "resting")))
    return found


def left_by_the_grinder(inputs: Inputs) -> float:
    machine = (inputs[key] * FOOT for key in ("wheelbase_ft", "head_ft", "bogie_ft"))
    return grinder.remaining(1 / inputs["wavelength_m"], *machine)


def bump_over_25_feet(inputs: Inputs) -> list[float]:
    return [
        in_mi(inputs["h_in"] * INCH * bumps.localized(bumps.haversine, length))
        for length in (1, 2, 3, 5, 7.62)
    ]


def texas(_: Inputs) -> dict[str, Any]:
    study = improvement.TEXAS
    assert study.drop is not None
    mean, least, most = study.drop
    return {
        "range_percent": [100 * study.least, 100 * study.most],
        "mean_percent": 100 * study.mean,
        "mean_drop_in_mi": mean,
        "range_drop_in_mi": [least, most],
    }


def share_of_long_waves(_: Inputs) -> list[float]:
    def seen(number: float) -> float:
        return (waves.gain(number) * waves.averaging_gain(number)) ** 2

    whole = waves.integral(seen, 0.005, 5 / 3)
    return [
        100 * waves.integral(seen, 0.005, 1 / longest) / whole for longest in (5, 7.62, 10, 15, 20)
    ]


def ideal_ratios(_: Inputs) -> list[list[float]]:
    return [
        [grinder.ideal_ratio(wheelbase * FOOT, lambda n, e=e: n**e) for e in (0.5, -0.5)]
        for wheelbase in (12, 14, 18, 25)
    ]


def read_by_our_sensor(inputs: Inputs) -> list[float]:
    grooves = [inputs[key] * INCH for key in ("w_in", "d_in", "p_in")]
    return [in_mi(footprint.false_roughness(*grooves, each)) for each in inputs["footprint_m"]]


CALCULATIONS: dict[str, Callable[[Inputs], Any]] = {
    "state transition": lambda inputs: transition_of(inputs).state,
    "input of the transition": lambda inputs: transition_of(inputs).drive,
    "first entry of the input": lambda inputs: [
        transition(mm / 1000).drive[0] for mm in inputs["dx_mm"]
    ],
    "constants": lambda _: [
        quarter_car.TYRE_SPRING,
        quarter_car.SPRING,
        quarter_car.DAMPER,
        quarter_car.UNSPRUNG,
        quarter_car.SPEED,
    ],
    "modes": modes,
    "slope gain": lambda inputs: waves.gain(1 / inputs["wavelength_m"]),
    "wavelengths of a gain": wavelengths_of_a_gain,
    "peak of the averaged gain": peak_of_the_averaged_gain,
    "shortfall at 250 mm": shortfall,
    "bump": bump,
    "grade": lambda inputs: (
        1000 * roughness([inputs["grade"] * i * SAMPLE for i in range(4000)], SAMPLE)
    ),
    "linearity": linearity,
    "one step over 0.1 mi": lambda inputs: in_mi(
        inputs["F_in"] * INCH * steps.isolated(0.1 * MILE)
    ),
    "one step over 25 ft": lambda inputs: in_mi(inputs["F_in"] * INCH * steps.localized()),
    "step size": step_size,
    "random surface": lambda inputs: (
        1000 * waves.roughness_of_random(lambda _: inputs["one_sided_slope_psd"])
    ),
    "roughness per faulting": lambda _: [
        steps.saw_tooth(joints * FOOT) * joints * FOOT for joints in (12, 15, 16, 20)
    ],
    "equal steps": equal_steps,
    "total faulting": lambda inputs: [
        in_mi(faulting.total_faulting(height * INCH, 15 * FOOT)) for height in inputs["F_in"]
    ],
    "modelled faulting": lambda inputs: in_mi(faulting.modelled(inputs["F_in"] * INCH, 15 * FOOT)),
    "saw-tooth": lambda inputs: in_mi(INCH * steps.saw_tooth(inputs["joint_ft"] * FOOT)),
    "affordable step": affordable,
    "wave under a straightedge": under_a_straightedge,
    "profilograph gain": lambda _: [
        profilograph.gain(1 / wavelength) for wavelength in (7.6, 10, 15.2, 20, 30)
    ],
    "left by the grinder": left_by_the_grinder,
    "curl": lambda inputs: in_mi(inputs["h_in"] * INCH * curl.curl(inputs["joint_ft"] * FOOT)),
    "bump over 25 ft": bump_over_25_feet,
    "after": lambda inputs: improvement.after(inputs["before"], inputs["P"]),
    "crossover": lambda inputs: improvement.crossover(inputs["M"], inputs["P"]),
    "Texas study": texas,
    "combination": lambda inputs: steps.combined(inputs["b"], inputs["f"]),
    "variance of long waves": share_of_long_waves,
    "ideal grinder": ideal_ratios,
    "read by a sensor": read_by_our_sensor,
    "bump template": lambda _: [offset / INCH for offset in bumps.TEMPLATE.values()],
    **SIMULATIONS,
}
"""What a row asks → how it is computed."""


def agree(found: Any, expected: Any, tolerance: dict[str, float]) -> bool:
    if isinstance(expected, dict):
        return all(agree(found[key], expected[key], tolerance) for key in expected)
    if isinstance(expected, list):
        return all(agree(a, b, tolerance) for a, b in zip(found, expected, strict=True))
    return isclose(
        found,
        expected,
        rel_tol=tolerance.get("rel", 0.0),
        abs_tol=tolerance.get("abs", 0.0) + 1e-12,
    )


@pytest.mark.parametrize("row", ROWS)
def test_the_calculation_gives_the_value_of_the_table(row: dict[str, Any]) -> None:
    found = CALCULATIONS[row["what"]](row["inputs"])

    assert agree(found, row["expected"], row["tolerance"]), (found, row["expected"], row["source"])


def test_a_wrong_digit_in_one_printed_constant_is_told_from_the_right_one() -> None:
    own = transition(0.25).state[3][3]

    assert agree(own, 0.4347564, {"rel": 2e-6})
    assert not agree(own, 0.4347664, {"rel": 2e-6})


@pytest.mark.parametrize("step", [0.005, 0.025, 0.1, 0.25, 1.0, 7.0])
def test_a_steady_slope_stays_a_steady_slope(step: float) -> None:
    car = transition(step)
    sums = [row[0] + row[2] + own for row, own in zip(car.state, car.drive, strict=True)]

    assert sums == pytest.approx([1, 0, 1, 0], abs=1e-9)


def test_a_step_that_leads_nowhere_is_refused() -> None:
    with pytest.raises(ValueError, match="leads nowhere"):
        transition(0.0)
