"""A regular wave, stepped along by our own quarter-car."""

from __future__ import annotations

from math import pi, sin

from specwriter.trade.ride.roughness import motion


def sine(wavelength: float, step: float, waves_seen: int = 20) -> float:
    """Roughness of a wave of amplitude 1 mm by stepping, after the start has faded."""
    faded, seen = round(100 / step), round(waves_seen * wavelength / step)
    heights = [
        0.001 * sin(2 * pi * i * step / wavelength) for i in range(faded + seen + round(1 / step))
    ]
    return sum(motion(heights, step)[faded : faded + seen]) / seen
