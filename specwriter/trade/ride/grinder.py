"""What the wheelbase of a grinding machine cannot take out.

The machine rides on front wheels before the cut and on rear wheels in it; the head between
them copies long waves and cuts short ones. Idealised: it always cuts, at any depth, so a real
machine leaves more. Lengths in metres, wave numbers in cycles per metre.

Source: geometry of a beam on two supports, project calculation.
"""

from __future__ import annotations

from cmath import exp
from collections.abc import Callable
from math import pi, sqrt

from specwriter.trade.ride import FOOT
from specwriter.trade.ride.gain import averaging_gain, integral
from specwriter.trade.ride.gain import gain as car

WAVES = (8 * FOOT, 200 * FOOT)
"""Wavelengths over which the share that a machine leaves grows steadily. Project calculation."""

WHEELBASES = (8 * FOOT, 40 * FOOT)
"""Wheelbases over which that share falls steadily. Project calculation."""

HEAD = 3 * FOOT
"""Head ahead of the rear wheels. Source: Ohio DOT item 257, manual of procedures, 2009: at
most 3.0 ft ahead of the centre of the rear wheels."""

BOGIE = 4 * FOOT
"""Spread of the front wheels over which the machine averages. Common practice, no source."""


def remaining(
    wave_number: float, wheelbase: float, head: float = HEAD, bogie: float = BOGIE
) -> float:
    """Share of a wave's amplitude that one pass leaves.

    The head stands at ``a`` front + ``(1 - a)`` rear with ``a = head / wheelbase``; the rear
    wheels stand where the head has been: ``a sinc(b nu) / (1 - (1 - a) exp(-2 pi i nu head))``.
    """
    share = head / wheelbase
    turn = exp(-2j * pi * wave_number * head)
    front = share * averaging_gain(wave_number, bogie)
    return front / abs(1 - (1 - share) * turn)


def ideal_ratio(
    wheelbase: float,
    slope_spectrum: Callable[[float], float],
    head: float = HEAD,
    bogie: float = BOGIE,
) -> float:
    """Roughness after over roughness before, on a random surface and for an ideal machine."""

    def seen(wave_number: float) -> float:
        both = car(wave_number) * averaging_gain(wave_number)
        return slope_spectrum(wave_number) * both * both

    def left(wave_number: float) -> float:
        return seen(wave_number) * remaining(wave_number, wheelbase, head, bogie) ** 2

    return sqrt(integral(left, 0.005, 5 / 3) / integral(seen, 0.005, 5 / 3))
