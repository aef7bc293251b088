"""What the places of a job are called: each by one name, and no name for what is not there."""

from __future__ import annotations

from dataclasses import fields

import pytest

from specwriter.model import Job
from specwriter.model.build import key_of
from specwriter.model.labels import _ENTRIES, _NAMES, and_list, joints, label_of
from tests.compare.test_meaning import KEYS, Key

OF_JOB = {key_of(field) for field in fields(Job)}
PARTS = {
    ".".join(key[start : end + 1])
    for key in KEYS
    for end in range(len(key))
    for start in range(end + 1)
}


def path_of(key: Key) -> str:
    """A path with ids and numbers where a job has them."""
    if key[0] not in OF_JOB:
        key = ("areas", "curve", *key)
    with_id = {"pay_items": "grinding", "submittals": "plan", "testing": "groove_depth"}
    return ".".join(part for each in key for part in (each, with_id.get(each, "")) if part)


def test_no_name_is_given_to_what_the_model_has_not() -> None:
    assert set(_NAMES) - PARTS == set()
    assert set(_ENTRIES) - PARTS == set()


def test_no_two_places_share_a_name() -> None:
    named: dict[tuple[str, str], Key] = {}
    for key in KEYS:
        owner = key[0] if key[0] in ("pay_items", "submittals", "project", "settings") else ""
        assert named.setdefault((label_of(path_of(key)), owner), key)[-2:] == key[-2:]


@pytest.mark.parametrize("key", KEYS)
def test_a_name_is_words_without_a_comma(key: Key) -> None:
    name = label_of(path_of(key))

    assert name.strip() == name != ""
    assert not set("_,.[]") & set(name)


@pytest.mark.parametrize(
    ("path", "name"),
    [
        ("smoothness.runs", "number of profiler runs"),
        ("areas.mainline.smoothness.runs", "number of profiler runs"),
        ("areas.mainline", "area"),
        ("areas.mainline.testing.groove_depth.where", "place of the groove depth test"),
        ("areas.mainline.smoothness.test", "smoothness test"),
        (
            "areas.mainline.testing.groove_depth.tiers.1.limit",
            "limit of a tier of the groove depth test",
        ),
        ("areas.mainline.limits.0", "stretch of the area"),
        ("areas.mainline.limits.0.from", "start of the limits"),
        ("areas.mainline.also_stated.0.groove.width", "groove width of another document"),
        ("areas.mainline.alternatives.0.land.width", "land width of an alternative"),
        ("areas.mainline.conditions.existing_mri", "existing MRI"),
        ("pay_items.grinding", "pay item"),
        ("pay_items.grinding.includes.2", "included work"),
        ("sequence.3", "step in the order of work"),
        ("settings.overlap", "house setting overlap"),
    ],
)
def test_a_place_has_the_name_that_a_meeting_gives_it(path: str, name: str) -> None:
    assert label_of(path) == name


def test_a_list_reads_as_people_write_it() -> None:
    lists = [and_list(["a", "b", "c", "d"][:count]) for count in range(1, 5)]

    assert lists == ["a", "a and b", "a, b and c", "a, b, c and d"]
    assert joints(0) == ()
