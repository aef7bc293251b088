"""Which entry of one job is compared with which entry of the other."""

from __future__ import annotations

from specwriter.compare import Change, Sense, compare
from specwriter.model import build_job
from tests.compare import data_of, edition

GRINDING, GROOVING = "urban-grinding", "rural-grooving"


def told(change: Change) -> tuple[str, str, str | None, str | None]:
    old, new = (side and side.written for side in (change.old, change.new))
    return change.sense.value, change.label, old, new


def test_stretches_are_paired_by_what_they_say() -> None:
    data = data_of(GRINDING)
    limits = data["areas"]["mainline"]["limits"]
    limits.reverse()
    limits[0]["to"] = "70+00"

    (change,) = compare(edition(GRINDING), build_job(data)).changes

    assert told(change) == ("changed", "end of the limits", "64+80", "70+00")
    assert change.old is not None
    assert change.new is not None
    assert change.old.path == "areas.mainline.limits.1.to"
    assert change.new.path == "areas.mainline.limits.0.to"


def test_a_stretch_put_first_is_the_only_addition() -> None:
    data = data_of(GRINDING)
    extra = {"roadway": "Mill Lane", "from": "1+00", "to": "5+00", "width": "12 ft"}
    data["areas"]["mainline"]["limits"].insert(0, extra)

    (change,) = compare(edition(GRINDING), build_job(data)).changes

    written = "roadway Mill Lane; from 1+00; to 5+00; width 12 ft"
    assert told(change) == ("added", "stretch of the area", None, written)


def test_the_only_stretch_is_compared_however_much_it_changed() -> None:
    limits = {"roadway": "Mill Lane", "from": "1+00", "to": "5+00", "width": "12 ft"}
    old = edition("longitudinal_grooving", {"areas.mainline.limits": [{"lanes": "1"}]})
    new = edition("longitudinal_grooving", {"areas.mainline.limits": [limits]})

    labels = [change.label for change in compare(old, new).changes]

    assert labels == [
        "roadway of the limits",
        "start of the limits",
        "end of the limits",
        "width of the limits",
        "lanes of the limits",
    ]


def test_an_area_under_another_id_is_followed() -> None:
    data = data_of(GROOVING)
    data["areas"]["harrow_deck"] = data["areas"].pop("deck")
    data["areas"]["harrow_deck"]["groove"]["spacing"] = "1 in ± 1/32 in"

    moved, spacing = compare(edition(GROOVING), build_job(data)).changes

    assert moved.sense is Sense.MOVED
    assert told(spacing) == (
        "shifted",
        "groove spacing",
        "3/4 in ± 1/32 in",
        "1 in ± 1/32 in",
    )
    assert spacing.area == "harrow_deck"


def test_an_unlike_area_is_removed_and_another_added() -> None:
    data = data_of(GROOVING)
    del data["areas"]["deck"]
    data["areas"]["ramp"] = {"texture": "diamond_grinding", "place": "ramp"}

    found = {told(change)[:2] for change in compare(edition(GROOVING), build_job(data)).changes}

    assert found == {("added", "area"), ("removed", "area")}


def test_an_added_area_is_one_change() -> None:
    data = data_of(GROOVING)
    del data["areas"]["deck"]

    (change,) = compare(build_job(data), edition(GROOVING)).changes

    written = "deck: longitudinal grooving, bridge deck, 66 values"
    assert told(change) == ("added", "area", None, written)


def test_an_added_test_is_one_change() -> None:
    old = edition(GROOVING, {"areas.deck.testing.groove_depth": None})

    (change,) = compare(old, edition(GROOVING)).changes

    assert told(change)[:3] == ("added", "groove depth test", None)
    assert change.new is not None
    assert change.new.written.startswith("method depth gauge read to 1/64 in; where")
    assert change.bears == "contractor"


def test_an_added_noun_is_told_value_by_value() -> None:
    new = edition(GROOVING, {"areas.deck.removal": {"depth": "1/4 in", "cover_after": "2 in"}})

    found = [told(change) for change in compare(edition(GROOVING), new).changes]

    assert found == [
        ("added", "depth of removal", None, "1/4 in"),
        ("added", "cover to steel after cutting", None, "2 in"),
    ]


def test_another_order_of_work_is_one_change() -> None:
    steps = ["slab repairs", "profile test", "grinding", "joint sealing", "marking"]

    (change,) = compare(edition(GRINDING), edition(GRINDING, {"sequence": steps})).changes

    assert (change.sense, change.label) == (Sense.MOVED, "order of work")


def test_a_step_put_between_leaves_the_order_alone() -> None:
    steps = ["slab repairs", "grinding", "sweeping", "profile test", "joint sealing", "marking"]

    (change,) = compare(edition(GRINDING), edition(GRINDING, {"sequence": steps})).changes

    assert told(change) == ("added", "step in the order of work", None, "sweeping")


def test_work_moved_into_a_price_burdens_the_contractor() -> None:
    included = edition(GROOVING, {"pay_items.grooving.includes.4": "sweeping"})

    (change,) = compare(edition(GROOVING), included).changes

    assert told(change) == ("tighter", "pay item grooving, included work", None, "sweeping")
    assert change.bears == "contractor"


def test_an_acceptance_is_known_by_its_finding_and_place() -> None:
    entry = {"finding": "some-rule", "because": "tried", "by": "designer", "on": "2027-01-01"}
    old = edition(GROOVING, {"accepted": [{**entry, "at": "areas.deck.groove.depth"}]})
    new = edition(GROOVING, {"accepted": [{**entry, "at": "areas.mainline.groove.depth"}]})

    found = sorted(change.sense.value for change in compare(old, new).changes)

    assert found == ["added", "removed"]
