"""The index after grinding, the one before, and the improvement between them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.cutting import GROUND
from specwriter.reconcile.readers.ride import IMPROVEMENT, ROUGHNESS
from specwriter.reconcile.relation import Function, Relation

_EXISTING = "conditions.existing_mri"


def _value(at: Mapping[str, Any]) -> Any:
    return at[_EXISTING] * (1 - at[IMPROVEMENT])


def _signs(at: Mapping[str, Interval]) -> dict[str, int]:
    share = at[IMPROVEMENT].high
    return {_EXISTING: 1 if share is not None and share <= 1 else 0, IMPROVEMENT: -1}


def _existing(roughness: Any, at: Mapping[str, Any]) -> Any:
    return roughness / (1 - at[IMPROVEMENT])


def _improvement(roughness: Any, at: Mapping[str, Any]) -> Any:
    return 1 - roughness / at[_EXISTING]


def _is_ground(job: Job, area: Area) -> bool:
    return area.texture in GROUND


RELATION = Relation(
    slug="improvement-of-the-existing",
    title="limit, improvement and existing MRI do not go together",
    statement="roughness index = existing MRI x (1 - improvement)",
    shape=Function(
        output=ROUGHNESS,
        inputs=(_EXISTING, IMPROVEMENT),
        value=_value,
        signs=_signs,
        inverses={_EXISTING: _existing, IMPROVEMENT: _improvement},
    ),
    why=(
        "The existing roughness, the improvement and the limit are one sum. Where they "
        "do not add up, the contractor meets one of them and fails the other on the "
        "same lane."
    ),
    source="arithmetic: the definition of an improvement in percent",
    validity="textures that are ground; the improvement counted from the existing MRI",
    applies=_is_ground,
)
