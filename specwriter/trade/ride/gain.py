"""What the quarter-car makes of a single wave and of a random surface, in closed form.

Source: the transfer function follows from the equations in ``quarter_car``; 2/pi is the mean of
a rectified sine and sqrt(2/pi) that of a rectified normal variable, over its standard deviation.
"""

from __future__ import annotations

from collections.abc import Callable
from math import exp, log, pi, sin, sqrt

from specwriter.trade.ride.quarter_car import DAMPER, SPEED, SPRING, TYRE_SPRING, UNSPRUNG
from specwriter.trade.ride.roughness import AVERAGING

_PANELS = 2000


def gain(wave_number: float) -> float:
    """|H|: amplitude of the suspension's slope over that of the road, at cycles per metre."""
    s = 2j * pi * wave_number * SPEED
    both = 1 + UNSPRUNG
    below = (
        UNSPRUNG * s**4
        + both * DAMPER * s**3
        + (TYRE_SPRING + both * SPRING) * s**2
        + TYRE_SPRING * DAMPER * s
        + TYRE_SPRING * SPRING
    )
    return abs(TYRE_SPRING * s * s / below)


def averaging_gain(wave_number: float, length: float = AVERAGING) -> float:
    """What a moving average of ``length`` metres leaves of a wave."""
    phase = pi * wave_number * length
    return abs(sin(phase) / phase) if phase else 1.0


def roughness_of_sine(amplitude: float, wavelength: float) -> float:
    """Roughness of a regular wave; ``amplitude`` is half its height, both in metres.

    ``4 a / wavelength |H| |sinc|``: 2/pi of the amplitude ``2 pi a / wavelength`` of the slope.
    """
    wave_number = 1 / wavelength
    seen = gain(wave_number) * averaging_gain(wave_number)
    return 4 * amplitude * wave_number * seen


def roughness_of_random(
    slope_spectrum: Callable[[float], float], lowest: float = 0.005, highest: float = 5 / 3
) -> float:
    """Roughness of a random surface with normally distributed heights.

    ``slope_spectrum`` gives the one-sided spectral density of the slope (metres) at a wave
    number; the integral of ``G |H sinc|^2`` runs between ``lowest`` and ``highest`` cycles per
    metre (600 mm to 200 m unless told otherwise).
    """

    def seen(wave_number: float) -> float:
        both = gain(wave_number) * averaging_gain(wave_number)
        return slope_spectrum(wave_number) * both * both

    return sqrt(2 / pi * integral(seen, lowest, highest))


def integral(function: Callable[[float], float], low: float, high: float) -> float:
    """Simpson's rule over equal parts of the logarithm, where the gain is smooth."""
    width = log(high / low) / _PANELS
    total = 0.0
    for index in range(_PANELS + 1):
        at = low * exp(index * width)
        weight = 1 if index in (0, _PANELS) else 4 if index % 2 else 2
        total += weight * function(at) * at
    return total * width / 3
