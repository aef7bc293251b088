"""Every item of a senior reviewer's list is answered by rules and relations, or by a person.

``reviewer_items.yaml`` holds the items; an item that a person keeps says why.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.reconcile.registry import all_relations
from specwriter.rules import all_rules

LISTS: dict[str, dict[str, Any]] = yaml.load(
    Path(__file__).with_name("reviewer_items.yaml").read_text("utf-8"), yaml.BaseLoader
)
SLUGS = {rule.slug for rule in all_rules()} | {each.slug for each in all_relations()}
ITEMS = [pytest.param(answer, id=item) for some in LISTS.values() for item, answer in some.items()]


@pytest.mark.parametrize("answer", ITEMS)
def test_an_item_names_the_checks_that_answer_it_or_says_why_a_person_does(answer: Any) -> None:
    if isinstance(answer, list):
        assert answer
        assert [slug for slug in answer if slug not in SLUGS] == []
    else:
        assert list(answer) == ["person"]
        assert len(answer["person"].split()) >= 8


@pytest.mark.parametrize(
    ("name", "pattern", "last"),
    [
        ("ride", "S{:02}", 55),
        ("texture", "{:02}", 66),
        ("payment", "P{:02}", 20),
        ("conflicts", "{}", 25),
        ("language", "L{:02}", 23),
    ],
)
def test_no_number_of_a_list_is_left_out(name: str, pattern: str, last: int) -> None:
    numbers = [item.split()[0] for item in LISTS[name]]

    assert numbers == [pattern.format(number) for number in range(1, last + 1)]


def test_a_person_keeps_few_items() -> None:
    kept = [item for some in LISTS.values() for item, each in some.items() if "person" in each]

    assert len(kept) <= 30
