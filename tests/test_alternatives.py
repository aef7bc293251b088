"""An alternative pattern of grooves is checked as if it were the area's own."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from specwriter.workflow import check
from tests.support import patched, text_of

OTHER = {"width": "1/8 in ± 1/64 in", "depth": "1/8 in to 3/16 in", "spacing": "3/4 in ± 1/16 in"}


def found(tmp_path: Path, *others: dict[str, Any]) -> set[tuple[str, str]]:
    path = tmp_path / "job.yaml"
    patches = {"areas.mainline.alternatives": list(others)}
    path.write_text(patched(text_of("complete/longitudinal_grooving"), patches), "utf-8")
    return {(each.slug, each.grade.value) for each in check(path).findings}


@pytest.mark.parametrize(
    ("land", "slugs"),
    [
        ("5/8 in ± 1/16 in", set()),
        # 1/8 in and 1/2 in repeat every 5/8 in, not every 3/4 in.
        ("1/2 in ± 1/64 in", {("groove-land-spacing", "conflict")}),
    ],
)
def test_its_dimensions_are_held_together(
    land: str, slugs: set[tuple[str, str]], tmp_path: Path
) -> None:
    other = {"name": "wide lands", "groove": OTHER, "land": {"width": land}}

    assert found(tmp_path, other) == slugs


def test_a_finding_of_the_area_is_told_once(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    patches = {
        "areas.mainline.groove.spacing": "2 in",
        "areas.mainline.alternatives": [{"name": "other", "groove": OTHER}],
    }
    path.write_text(patched(text_of("complete/longitudinal_grooving"), patches), "utf-8")
    told = [(each.slug, each.path) for each in check(path).findings]

    assert told
    assert len(told) == len(set(told))
    assert not any("alternatives" in where for _, where in told)
