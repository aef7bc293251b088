"""Which way each kind of requirement tightens, who pays, and whether it calls for an addendum."""

from __future__ import annotations

from pathlib import Path
from typing import Any, NamedTuple

import pytest
import yaml

from specwriter.compare import Change, compare
from tests.compare import edition


class Case(NamedTuple):
    job: str
    at: str
    old: Any
    new: Any
    forth: list[str]
    back: list[str]
    material: bool


TABLE = yaml.safe_load((Path(__file__).parent / "tightening.yaml").read_text("utf-8"))
CASES = {name: Case(**row) for name, row in TABLE.items()}


def only_change(case: Case) -> tuple[Change, Change]:
    """The one change from old to new, and the one back."""
    old, new = (edition(case.job, {case.at: value}) for value in (case.old, case.new))
    (forth,), (back,) = compare(old, new).changes, compare(new, old).changes
    return forth, back


@pytest.mark.parametrize("case", CASES.values(), ids=list(CASES))
def test_a_change_goes_one_way_forth_and_the_other_back(case: Case) -> None:
    forth, back = only_change(case)

    assert [forth.sense.value, forth.bears] == case.forth
    assert [back.sense.value, back.bears] == case.back
    assert (forth.material, back.material) == (case.material, case.material)
    assert forth.material_because
