"""A job is built from data, and every noun and value knows where it stands."""

from __future__ import annotations

from decimal import Decimal

import pytest

from specwriter.model import Job, build_job
from tests.support import EXAMPLES, TEXTURES, job


@pytest.mark.parametrize("name", [*TEXTURES, *(path.name for path in EXAMPLES.iterdir())])
def test_every_job_at_hand_can_be_built(name: str) -> None:
    assert isinstance(job(name), Job)


def test_nouns_know_their_path() -> None:
    built = job("urban-grinding")

    assert built.areas["mainline"].limits[1].path == "areas.mainline.limits.1"
    assert built.pay_items["grinding"].path_to("unit") == "pay_items.grinding.unit"
    assert built.path_to("project") == "project"


def test_keys_that_are_python_words_have_fields_of_their_own() -> None:
    first = job("urban-grinding").areas["mainline"].limits[0]

    assert (str(first.start), str(first.end)) == ("12+00", "64+80")


def test_a_patch_sets_adds_and_removes() -> None:
    built = job(
        "longitudinal_grooving",
        {
            "areas.mainline.groove.width": "1/8 in",
            "areas.mainline.groove.depth": None,
            "areas.mainline.limits.1": {"from": "70+00", "to": "72+00"},
            "conditions.new_pavement": True,
        },
    )

    area = built.areas["mainline"]
    assert area.groove is not None
    assert (str(area.groove.width), area.groove.depth) == ("1/8 in", None)
    assert [str(limits.start) for limits in area.limits] == ["10+00", "70+00"]
    assert built.conditions.new_pavement is True


def test_a_job_without_conditions_has_empty_ones() -> None:
    assert job("runway_grooving").conditions.path == "conditions"


def test_decimals_keep_their_writing() -> None:
    built = build_job(
        {
            "format": 1,
            "project": {"title": "Grooving", "agency": "Roads"},
            "areas": {},
            "pay_items": {"a": {"number": Decimal("614.10"), "name": "Grooving", "unit": "SY"}},
            "residue": {"ph": Decimal("0.0000001")},
        }
    )

    assert built.pay_items["a"].number == "614.10"
    assert built.residue is not None
    assert str(built.residue.ph) == "0.0000001"
