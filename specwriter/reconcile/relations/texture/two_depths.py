"""A limit of patch depth that asks for more than one of profile depth.

The other way round the patch depth does not assure the profile depth, which is found there.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.texture_depth import PATCH_SCALE, SCALES, scale
from specwriter.reconcile.readers.two_depths import PATCH, PROFILE
from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.requirement import sources
from specwriter.trade.texture_depth import CONVERSION_SOURCES, LINES, Conversion

GRANTED_MM = Fraction(1, 10)
"""Texture depth by which two limits may differ and still ask for the same (project judgement)."""


def _applies(conversion: Conversion) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        depths = [each.texture_depth for each in sources(area) if each.texture_depth is not None]
        kinds = [scale(each) for each in depths]
        return bool({*PATCH_SCALE} & {*kinds}) and SCALES[conversion] in kinds

    return applies


def _relation(conversion: Conversion) -> Relation:
    slope, offset = LINES[conversion]
    span = Interval(None, (offset + GRANTED_MM) / 1000)
    return Relation(
        slug="profile-and-patch-limit",
        title="the limit of patch depth asks for more than that of profile depth",
        statement=(
            f"a surface that just meets the profile depth has a patch depth of {conversion} (mm) "
            f"by the method that is named, {float(GRANTED_MM):g} mm more at most"
        ),
        shape=Linear({PATCH: 1, PROFILE: -slope}, span),
        why=(
            "Two limits on one surface, by two methods, pass for one requirement. Where "
            "the patch asks for more than the profile, the surface that the profile "
            "accepts is refused by the patch."
        ),
        source=CONVERSION_SOURCES[conversion],
        validity="two limits for one surface; on grooves the scales differ by more",
        kind="model",
        applies=_applies(conversion),
        ways=(
            "keep one limit, or set both for the same texture",
            "say in each document which limit governs",
        ),
    )


RELATIONS = [_relation(conversion) for conversion in SCALES]
