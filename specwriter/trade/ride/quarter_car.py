"""The quarter-car behind the roughness index, stepped exactly along a profile of slopes.

A sprung mass on spring and damper rides on an unsprung mass on the spring of the tyre:
``zs'' + c (zs' - zu') + k2 (zs - zu) = 0`` and
``mu zu'' - c (zs' - zu') - k2 (zs - zu) + k1 (zu - y) = 0``, normalised by the sprung mass.
The state is ``(zs', zs'', zu', zu'')`` with the slope of the road as input, and the index is the
mean of ``|zs' - zu'|``, a slope.

Source: AASHTO R 43-13(2017), section 3.1.3 (the accumulated motion at 80 km/h over length);
the constants are those of the reference algorithm of ASTM E1926, as reproduced in several
independent published implementations (second-hand).
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from specwriter.trade.ride.matrix import Matrix, Vector, add, exponential, identity, solve

SPEED = 80 / 3.6
"""Speed of the simulation in m/s: 80 km/h."""

TYRE_SPRING = 653.0
"""k1, spring rate of the tyre over the sprung mass, 1/s2."""

SPRING = 63.3
"""k2, spring rate of the suspension over the sprung mass, 1/s2."""

DAMPER = 6.0
"""c, damping rate over the sprung mass, 1/s."""

UNSPRUNG = 0.15
"""mu, unsprung over sprung mass."""

_K1, _K2, _C, _MU = TYRE_SPRING, SPRING, DAMPER, UNSPRUNG

DYNAMICS: Matrix = (
    (0.0, 1.0, 0.0, 0.0),
    (-_K2, -_C, _K2, _C),
    (0.0, 0.0, 0.0, 1.0),
    (_K2 / _MU, _C / _MU, -(_K1 + _K2) / _MU, -_C / _MU),
)
"""A of ``x' = A x + B slope`` over time."""

INPUT: Vector = (0.0, 0.0, 0.0, _K1 / _MU)
"""B of ``x' = A x + B slope`` over time."""

AT_REST: Vector = (0.0, 0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Transition:
    """One step along the road: ``x <- state x + slope * drive`` over ``step`` metres."""

    step: float
    state: Matrix
    drive: Vector

    def run(self, slopes: Iterable[float], start: Vector) -> tuple[list[float], Vector]:
        """``zs' - zu'`` after each step, and the state after the last."""
        # Written out in floats: this loop is what the time of every simulation goes into.
        (a, b, c, d), (e, f, g, h), (i, j, k, l), (m, n, o, p) = self.state  # noqa: E741
        q, r, s, t = self.drive
        w, x, y, z = start
        moved: list[float] = []
        for slope in slopes:
            w, x, y, z = (
                a * w + b * x + c * y + d * z + q * slope,
                e * w + f * x + g * y + h * z + r * slope,
                i * w + j * x + k * y + l * z + s * slope,
                m * w + n * x + o * y + p * z + t * slope,
            )
            moved.append(w - y)
        return moved, (w, x, y, z)


@lru_cache(maxsize=256)
def transition(step: float) -> Transition:
    """The exact transition for a step of ``step`` metres over which the slope is constant.

    ``state = exp(A t)``, ``drive = A^-1 (state - 1) B``, with ``t`` the time of the step.
    Raises ``ValueError`` unless the step is positive.
    """
    if not step > 0:
        raise ValueError(f"a step of {step} m leads nowhere")
    time = step / SPEED
    state = exponential(tuple(tuple(value * time for value in row) for row in DYNAMICS))
    grown = add(state, identity(4), -1.0)
    driven = tuple(sum(a * b for a, b in zip(row, INPUT, strict=True)) for row in grown)
    return Transition(step=step, state=state, drive=solve(DYNAMICS, driven))


def steady(slope: float) -> Vector:
    """The state of a car that has come to rest on a road of constant slope."""
    return (slope, 0.0, slope, 0.0)
