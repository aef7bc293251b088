"""A sensor whose width is that of another kind.

Looks at
    The kind of height sensor and the width of its footprint.

Why it matters
    A point laser covers a few hundredths of an inch, a line laser about 4 in. The width decides
    whether grooves are read as bumps, so a wrong kind beside it leaves both in doubt.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.measured: before_texturing
    areas.mainline.smoothness.sensor: point_laser
    areas.mainline.smoothness.sensor_width: 4 in

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.measured: before_texturing
    areas.mainline.smoothness.sensor: line_laser
    areas.mainline.smoothness.sensor_width: 4 in

How to settle it
    Correct the kind of the sensor or its width.

Sources
    AASHTO R 56-14(2018): a line laser is read across the travel direction, about 4 in long
    common practice, no source: the spot of a point laser is below 1/4 in, a wide spot about 3/4 in
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Interval, parse
from specwriter.rules.places import rides, words
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the width is not that of this sensor",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.sensor", "smoothness.sensor_width"),
    quiet_after=(
        "index-instrument",
        "sensor-on-longitudinal-texture",
        "sensor-without-profiler",
    ),
)

_WIDTHS: dict[str, Interval] = {
    "point_laser": parse("at most 1/2 in").interval,
    "wide_spot_laser": parse("1/4 in to 3 in").interval,
    "line_laser": parse("at least 3/4 in").interval,
}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each sensor whose width belongs to another kind."""
    for area, ride in rides(job):
        sensor, width = given(ride.sensor), given(ride.sensor_width)
        if not width.interval.meet(_WIDTHS[sensor]).is_empty:
            continue
        says = f"A {words(sensor)} is not {width} wide."
        kinds = [kind for kind, each in _WIDTHS.items() if not width.interval.meet(each).is_empty]
        at = [
            evidence(ride, "sensor", "height sensor"),
            evidence(ride, "sensor_width", "sensor width"),
        ]
        settle = (*(f"sensor: {kind}" for kind in kinds), f"the width of a {words(sensor)}")
        yield RULE.finding(area, says, at, settle)
