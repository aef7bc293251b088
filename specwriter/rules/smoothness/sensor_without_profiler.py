"""A laser sensor on an instrument that has none.

Looks at
    The sensor and the instrument.

Why it matters
    A profilograph, a straightedge or a levelling rod carries no laser, and a walking profiler
    normally stands on feet or wheels and reads their inclination. One of the two was left over
    from another contract, and nobody can tell which instrument is to come.

Conflict
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.blanking_band: 0.2 in
    areas.mainline.smoothness.instrument: profilograph
    areas.mainline.smoothness.sensor: line_laser

Settled
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.blanking_band: 0.2 in
    areas.mainline.smoothness.instrument: profilograph

How to settle it
    Take the sensor out, or name the profiler that carries it. Accept the finding for a laser
    that is pushed at walking speed.

Sources
    ASTM E1274-03(2012), scope 1.1: a profilograph is an articulated frame on wheels
    FHWA-HRT-05-054, chapter 6, 2005: the walking device is an inclinometer
    AASHTO R 56-14(2018): line lasers are sensors of inertial profilers
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the instrument has no such sensor",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.instrument", "smoothness.sensor"),
    quiet_after=("index-instrument", "sensor-on-longitudinal-texture"),
)

_WITHOUT = ("profilograph", "straightedge", "rod_and_level", "walking_profiler")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each sensor on an instrument without one."""
    for area, ride in rides(job):
        if ride.instrument not in _WITHOUT:
            continue
        says = f"{words(ride.instrument).capitalize()} and {words(ride.sensor)} do not go together."
        at = [evidence(ride, "sensor", "height sensor"), evidence(ride, "instrument", "instrument")]
        settle = ("take the sensor out", "instrument: inertial_profiler")
        yield RULE.finding(area, says, at, settle)
