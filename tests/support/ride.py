"""An independent quarter-car, and random roads for it: numpy and scipy, nothing of ours."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.signal import StateSpace, cont2discrete, lfilter, lsim, ss2tf

Array = NDArray[np.float64]

SPEED = 80 / 3.6
A = np.array(
    [
        [0, 1, 0, 0],
        [-63.3, -6.0, 63.3, 6.0],
        [0, 0, 0, 1],
        [63.3 / 0.15, 6.0 / 0.15, -(653 + 63.3) / 0.15, -6.0 / 0.15],
    ]
)
B = np.array([[0], [0], [0], [653 / 0.15]])


def averaged(elevations: Array, step: float) -> Array:
    points = max(1, round(0.25 / step))
    return np.convolve(elevations, np.full(points, 1 / points), "valid")


def motion(elevations: Array, step: float) -> Array:
    """Absolute suspension slope after each step, by ``lsim`` with the slope held over a step."""
    road = np.diff(averaged(elevations, step)) / step
    entry = road[: max(1, round(11 / step))].mean()
    car = StateSpace(A, B, [[1, 0, -1, 0]], [[0]])
    times = np.arange(len(road) + 1) * step / SPEED
    held = np.append(road, road[-1])
    _, moved, _ = lsim(car, held, times, X0=[entry, 0, entry, 0], interp=False)
    return np.abs(np.ravel(moved))[1:]


def motion_by_filter(elevations: Array, step: float) -> Array:
    """The same for long roads: the discrete transfer function, started from rest."""
    road = np.diff(averaged(elevations, step)) / step
    road -= road[: max(1, round(11 / step))].mean()
    a, b, c, d, _ = cont2discrete((A, B, [[1, 0, -1, 0]], [[0]]), step / SPEED, "zoh")
    above, below = ss2tf(a, b, c, d)
    return np.abs(lfilter(np.append(above[0][1:], 0.0), below, road))


def random_road(spectrum: Callable[[Array], Array], length: float, step: float, seed: int) -> Array:
    """Elevations with normally distributed slopes of a one-sided spectrum, 0.005 to 5/3 c/m."""
    count = round(length / step)
    numbers = np.fft.rfftfreq(count, step)
    band = (numbers >= 0.005) & (numbers <= 5 / 3)
    density = np.zeros_like(numbers)
    density[band] = spectrum(numbers[band])
    generator: Any = np.random.default_rng(seed)
    phases = np.exp(2j * np.pi * generator.random(len(numbers)))
    amplitudes = np.sqrt(2 * density / (count * step))
    heights = np.zeros_like(numbers)
    heights[band] = amplitudes[band] / (2 * np.pi * numbers[band])
    return np.asarray(np.fft.irfft(heights * phases * count / 2, count))
