"""What was not checked is told in words of the trade, never in keys of the job file."""

from __future__ import annotations

import re

import pytest

from specwriter.diagnostic import NotRun
from specwriter.report.unchecked import reason, unchecked
from specwriter.rules import all_rules, run_rules
from tests.support import job


def lacking(slug: str, key: str, area: str | None = None) -> NotRun:
    return NotRun(slug=slug, title="", area=area, because=f"{key} is not given", lacks=key)


def test_each_lack_stands_once_with_the_checks_that_wait() -> None:
    told = unchecked(
        [
            lacking("index-unit", "smoothness", "loop"),
            lacking("index-unit", "smoothness", "deck"),
            lacking("friction-scale", "friction.at_least", "loop"),
            lacking("sensor-not-stated", "smoothness", "deck"),
            lacking("number-style", "settings"),
        ]
    )

    assert [(each.what, each.areas, each.checks) for each in told] == [
        ("house settings", (), 1),
        ("ride", ("deck", "loop"), 2),
        ("lower limit of friction", ("loop",), 1),
    ]


@pytest.mark.parametrize(
    "name", ["diamond_grinding", "as-received", "five-textures", "complete/runway_grooving"]
)
def test_no_key_is_told_as_typed(name: str) -> None:
    told = [each.what for each in unchecked(run_rules(job(name)).not_run)]

    assert told
    assert [each for each in told if re.search(r"\w[._]\w", each)] == []


def test_every_need_of_a_rule_has_a_name_of_its_own() -> None:
    needs = {need for rule in all_rules() for need in rule.rule.needs}
    names = {reason(lacking("", need)).partition(" (")[0] for need in needs}

    assert len(names) == len(needs)


def test_the_long_list_gives_the_key_to_fill_in() -> None:
    said = reason(lacking("", "smoothness.runs"))

    assert said == "not given: number of profiler runs (smoothness.runs)"
