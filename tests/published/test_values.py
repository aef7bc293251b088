"""The formulas of the trade against the tables in ``values``, by how far each can be trusted.

``outside.yaml`` holds numbers read in published documents; ``by_hand.yaml`` arithmetic and
published formulas worked with a pencil; ``second_route.yaml`` our own second way;
``recalled.yaml`` numbers from memory; ``regression.yaml`` what our formulas gave, which proves
nothing.

Three published numbers have no row, because the product computes nothing of the kind:

- the cost premium of trapezoidal over square grooves, 1.75 / 1.25 = 40 percent where the text says
  15 to 25 (DOT/FAA/TC-TN12/7, page 43, 2012): no price is compared with another;
- 0.8 mm of texture depth from drag at construction (NCHRP Report 634, 2009): no texture is dragged;
- the exposure limit of respirable silica, 50 and 25 µg/m³ over eight hours (29 CFR 1926.1153,
  second-hand): a duty of the employer; no concentration is computed, and no limit is repeated.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import yaml

from tests.published.formulas import CHECKS

VALUES = Path(__file__).parent / "values"


def rows() -> Iterator[Any]:
    for path in sorted(VALUES.glob("*.yaml")):
        for group in yaml.safe_load(path.read_text("utf-8")):
            for row in group["rows"]:
                shown = ", ".join(str(value) for key, value in row.items() if key != "within")
                yield pytest.param(
                    group["check"], row, id=f"{path.stem}: {group['check']}: {shown}"
                )


@pytest.mark.parametrize(("check", "row"), tuple(rows()))
def test_a_formula_gives_the_value_of_its_table(check: str, row: dict[str, Any]) -> None:
    found, expected, within = CHECKS[check](row), row["expected"], row.get("within", 0)

    if isinstance(expected, dict):
        tolerance = within if isinstance(within, dict) else dict.fromkeys(expected, within)
        assert {key: float(value) for key, value in found.items()} == {
            key: pytest.approx(value, abs=tolerance[key]) for key, value in expected.items()
        }
    elif isinstance(expected, list):
        assert [float(each) for each in found] == pytest.approx(expected, abs=within)
    else:
        share = row.get("within_share")
        assert float(found) == pytest.approx(expected, abs=within, rel=share)


def test_every_check_is_used_and_every_group_names_its_source() -> None:
    groups = [
        group for path in VALUES.glob("*.yaml") for group in yaml.safe_load(path.read_text("utf-8"))
    ]

    assert {group["check"] for group in groups} == set(CHECKS)
    assert all(group["source"] for group in groups)
