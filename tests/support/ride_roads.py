"""What the tables hold about random roads, simulated again on the independent quarter-car."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import Any

import numpy as np

from specwriter.trade.ride import steps
from tests.support.ride import Array, random_road
from tests.support.ride import motion_by_filter as motion

FOOT = 0.3048
INCH = 0.0254
MILE = 5280 * FOOT
IN_MI = INCH / MILE
STEP = FOOT / 6
"""Two inches: a whole number in every length of the trade."""

SPECTRA = (-0.5, 0.0, 0.5)
"""Exponents of the wave number in the slope spectrum."""

Inputs = dict[str, Any]


@cache
def road(exponent: float, miles: float, seed: int) -> tuple[Array, Array]:
    """Elevations and motion of a random road, both scaled to a roughness of 1 in/mi."""
    heights = random_road(lambda n: n**exponent, miles * MILE, STEP, seed)
    moved = motion(heights, STEP)
    factor = IN_MI / float(moved.mean())
    return heights * factor, moved * factor


def over(moved: Array, length: float) -> Array:
    """The index over consecutive stretches of a length."""
    points = round(length / STEP)
    return moved[: len(moved) // points * points].reshape(-1, points).mean(axis=1)


def hri_over_mri(_: Inputs) -> float:
    (left, one), (right, other) = road(0.0, 4, 1), road(0.0, 4, 2)
    return float(motion((left + right) / 2, STEP).mean() / (one.mean() + other.mean()) * 2)


def variation_over_length(_: Inputs) -> list[float]:
    spreads = []
    for feet in (25, 50, 100, 250, 528):
        found = [over(road(each, 30, 5)[1], feet * FOOT) for each in SPECTRA]
        spreads.append(float(np.mean([part.std() / part.mean() for part in found])))
    return spreads


def worst_over_base(inputs: Inputs) -> list[float]:
    """Median over segments of 0.1 mi: the worst stretch of each base over the segment."""
    found = []
    for feet in inputs["base_ft"]:
        ratios: list[float] = []
        kernel = np.full(round(feet * FOOT / STEP), 1 / round(feet * FOOT / STEP))
        for exponent in SPECTRA:
            moved = road(exponent, 30, 5)[1]
            ratios += [
                np.convolve(segment, kernel, "valid").max() / segment.mean()
                for segment in moved[: len(moved) // 3168 * 3168].reshape(-1, 3168)
            ]
        found.append(float(np.median(ratios)))
    return found


@cache
def gaps(exponent: float) -> Array:
    """Gap in inches under a resting 10 ft edge at each placement, for a road of 1 in/mi."""
    heights = road(exponent, 3000 / MILE, 11)[0][::2] / INCH
    windows = np.lib.stride_tricks.sliding_window_view(heights, 31)[::3].T
    largest = np.zeros(windows.shape[1])
    for left in range(31):
        for right in range(left + 2, 31):
            at = np.arange(left + 1, right)[:, None]
            share = (at - left) / (right - left)
            chord = windows[left] * (1 - share) + windows[right] * share
            np.maximum(largest, (chord - windows[left + 1 : right]).max(axis=0), out=largest)
    return largest


def spread(of: Callable[[Array], float]) -> list[float]:
    values = [of(gaps(exponent)) for exponent in SPECTRA]
    return [min(values), max(values)]


def straightedge_on_a_random_surface(inputs: Inputs) -> dict[str, list[float]]:
    mri = inputs["mri"]
    return {
        "p95": spread(lambda gap: mri * float(np.quantile(gap, 0.95))),
        "p99": spread(lambda gap: mri * float(np.quantile(gap, 0.99))),
    }


def share_over_an_eighth(inputs: Inputs) -> list[float]:
    return spread(lambda gap: 100 * float((inputs["mri"] * gap > 1 / 8).mean()))


def straightedge_on_random_surfaces(_: Inputs) -> list[list[float]]:
    return [
        spread(lambda gap, share=share: 0.125 / float(np.quantile(gap, share)))
        for share in (0.95, 0.99)
    ]


@cache
def combination() -> dict[str, float]:
    """Root mean square and largest relative error of the rule of combination."""
    errors = []
    for feet in (12, 15, 16, 20):
        per_inch = steps.saw_tooth(feet * FOOT) * INCH / IN_MI
        for background in (30, 40, 60, 80):
            for height in (1 / 32, 1 / 16, 1 / 8, 1 / 4):
                found = np.mean([faulted(seed, feet, background, height) for seed in (1, 2)])
                errors.append(steps.combined(background, height * per_inch) / float(found) - 1)
    return {"rms": float(np.sqrt(np.mean(np.square(errors)))), "largest": max(map(abs, errors))}


def faulted(seed: int, joints: int, background: float, step: float) -> float:
    """Index in in/mi of a random road with a step (inches) at every joint (feet apart)."""
    heights, _ = road(0.0, 4, seed)
    slab = round(joints * FOOT / STEP)
    at = np.arange(len(heights))
    tilted = step * INCH * (at // slab - at / slab)
    return float(motion(background * heights + tilted, STEP).mean()) / IN_MI


def chord_of_faulting(inputs: Inputs) -> list[float]:
    background = inputs["background"]
    seeds = (1, 2, 3, 4)
    return [
        (float(np.mean([faulted(seed, 15, background, step) for seed in seeds])) - background)
        / (step * 5280 / 15)
        for step in (1 / 32, 1 / 16, 1 / 8, 1 / 4)
    ]


@cache
def traces() -> tuple[tuple[float, Array], ...]:
    """Index and profilograph trace (inches) of each 0.1-mi segment, scaled to 1 in/mi."""
    points = 3168
    found = []
    for exponent in (-0.5, -0.25, 0.0, 0.25, 0.5):
        heights, moved = road(exponent, 6, 21)
        wheels = [
            round((side * 12.5 + spot) * FOOT / STEP)
            for side in (-1, 1)
            for spot in (-2.5, -1.5, -0.5, 0.5, 1.5, 2.5)
        ]
        reach = max(wheels)
        middle = heights[reach:-reach]
        rest = sum(heights[reach + each : len(heights) - reach + each] for each in wheels)
        trace = np.convolve(middle - rest / len(wheels), np.full(12, 1 / 12), "same") / INCH
        for first in range(0, len(trace) - points, points):
            index = float(moved[first + reach : first + reach + points].mean()) / IN_MI
            found.append(
                (index, trace[first : first + points] - trace[first : first + points].mean())
            )
    return tuple(found)


def profile_index(trace: Array, band: float) -> float:
    """Excursions beyond the band, 0.03 in high and 2 ft long at least, in in/mi."""
    total = 0.0
    for side in (trace, -trace):
        out = np.concatenate([[0], (side > band / 2).astype(int), [0]])
        edges = np.flatnonzero(np.diff(out))
        for first, last in edges.reshape(-1, 2):
            height = float(side[first:last].max()) - band / 2
            if height >= 0.03 and last - first >= 12:
                total += round(height / 0.05) * 0.05
    return total * 10


def mean_profile_index(inputs: Inputs) -> list[float]:
    iri = inputs["iri"]
    return [
        float(np.mean([profile_index(iri * trace / index, band) for index, trace in traces()[::2]]))
        for band in (0.0, 0.1, 0.2)
    ]


def line_of_the_profile_index(inputs: Inputs) -> list[float]:
    """Slope, offset and standard error of IRI on PI; with 0.2 in a PI of 0 stands outside."""
    band = float(inputs["band_in"])
    pairs = [
        (profile_index(iri * trace / index, band), iri)
        for iri in (40, 60, 80, 100, 130, 160)
        for index, trace in traces()[::2]
    ]
    pi, iri = np.array([pair for pair in pairs if pair[0] > 0 or band < 0.2]).T
    slope, offset = np.polyfit(pi, iri, 1)
    return [float(slope), float(offset), float((iri - slope * pi - offset).std())]


def read_by_a_sensor(inputs: Inputs) -> list[float]:
    """False roughness in in/mi of a wandering sensor, on an independent road and quarter-car."""
    width, deep, apart = (inputs[key] * INCH for key in ("w_in", "d_in", "p_in"))
    found = []
    for feet in inputs["footprint_m"]:
        read = []
        for wander in (0.05, 0.10, 0.20):
            at = np.arange(round(252 / 0.005)) * 0.005
            across = 100 + wander * np.sin(2 * np.pi * at / 42)
            points = 400 if feet else 1
            under = ((np.arange(points) + 0.5) / points - 0.5) * feet
            cut = sum(((across + each) % apart < width).astype(float) for each in under) / points
            heights = (-deep * cut).reshape(-1, 5).mean(axis=1)
            read.append(float(motion(heights, 0.025)[2000:].mean()) / IN_MI)
        found.append(float(np.mean(read)))
    return found


SIMULATIONS: dict[str, Callable[[Inputs], Any]] = {
    "HRI over MRI": hri_over_mri,
    "variation over length": variation_over_length,
    "worst place over a base": worst_over_base,
    "straightedge on a random surface": straightedge_on_a_random_surface,
    "straightedge on random surfaces": straightedge_on_random_surfaces,
    "share over 1/8 in": share_over_an_eighth,
    "error of the combination": lambda _: combination(),
    "chord of faulting": chord_of_faulting,
    "mean profile index": mean_profile_index,
    "line of the profile index": line_of_the_profile_index,
}
