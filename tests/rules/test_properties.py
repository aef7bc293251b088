"""The rules ask tests for the same properties as the document prints."""

from __future__ import annotations

import pytest

from specwriter.assemble.registers.properties import required_properties
from specwriter.assemble.view import area_views
from specwriter.rules.completeness._properties import required
from tests.support import TEXTURES, job

ALSO = {
    "diamond_grinding": {"straightedge": {"tolerance": "1/8 in", "length": "10 ft"}},
    "runway_grooving": {"groove.alignment": "at most 1-1/2 in"},
    "longitudinal_grooving": {"texture_depth": {"measure": "MTD", "at_least": "0.8 mm"}},
}
OF_THE_JOB = ("testing.residue", "testing.damage")
"""Tests that the document prints with an area although they judge no property of its surface."""


@pytest.mark.parametrize("base", [*TEXTURES, *(f"complete/{name}" for name in TEXTURES)])
def test_the_rules_and_the_document_agree_on_what_needs_a_test(base: str) -> None:
    id = "runway" if base.endswith("runway_grooving") else "mainline"
    more = {f"areas.{id}.{key}": value for key, value in ALSO.get(base, {}).items()}
    built = job(base, more)
    (area,) = built.areas.values()

    printed = {
        each.test.path
        for view in area_views(built)
        for each in required_properties(view)
        if not each.test.path.endswith(OF_THE_JOB) and each.test.path != "residue"
    }

    assert {each.test_path for each in required(area)} == printed
