"""What is said besides the single changes."""

from __future__ import annotations

import pytest

from specwriter.compare import compare
from specwriter.diagnostic import Evidence, Finding, Grade
from tests.compare import edition

GROOVING = "rural-grooving"
SPACING = "areas.mainline.groove.spacing"
ACCEPTED = {
    "finding": "wide-spacing",
    "at": SPACING,
    "because": "matches the next section",
    "by": "district engineer",
    "on": "2027-02-01",
}
FOUND = Finding(
    slug="wide-spacing",
    grade=Grade.CAUTION,
    basis="practice",
    title="spacing beyond practice",
    area="mainline",
    evidence=(
        Evidence(path=SPACING, label="spacing", written="3/4 in"),
        Evidence(path="areas.mainline.groove.depth", label="depth", written="1/8 in to 1/4 in"),
    ),
    says="",
)


def test_changed_content_under_the_same_identifier_is_pointed_out() -> None:
    patches = {SPACING: "1 in", "project.date": "2027-05-01"}

    assert compare(edition(GROOVING), edition(GROOVING, patches)).remarks == (
        "Both files are SP-420G with revision 0, but their content differs: "
        "give the new text its own revision.",
    )


def test_a_title_is_the_identifier_where_no_number_is_given() -> None:
    old, new = (
        edition("longitudinal_grooving", {"areas.mainline.groove.depth": depth})
        for depth in ("1/8 in", "1/4 in")
    )
    other = edition("longitudinal_grooving", {"project.title": "Grooving of Decks"})

    assert len(compare(old, new).remarks) == 1
    assert compare(old, other).remarks == ()


def test_changed_content_under_the_same_date_is_pointed_out() -> None:
    patches = {SPACING: "1 in", "project.revision": "1"}

    assert compare(edition(GROOVING), edition(GROOVING, patches)).remarks == (
        "Both files bear the date 2027-03-15, but their content differs.",
    )


@pytest.mark.parametrize(
    ("path", "value", "says"),
    [
        (
            "pay_items.grinding.unit",
            "LS",
            "Pay item 614.10 keeps its number, but its unit went from SY to LS: bids on it before "
            "and after cannot be compared.",
        ),
        (
            "project.base_section.title",
            "Smoothness of Bridge Decks",
            'Section 614 keeps its number, but went from "Surface Texturing" to "Smoothness of '
            'Bridge Decks": a reference to it now means something else.',
        ),
    ],
)
def test_a_number_that_stays_over_another_thing_is_pointed_out(
    path: str, value: str, says: str
) -> None:
    renewed = {"project.revision": "3", "project.date": "2027-05-01"}
    old, new = edition("urban-grinding"), edition("urban-grinding", {path: value, **renewed})

    assert compare(old, new).remarks == (says,)


def test_a_new_revision_and_date_need_no_remark() -> None:
    patches = {SPACING: "1 in", "project.revision": "1", "project.date": "2027-05-01"}

    assert compare(edition(GROOVING), edition(GROOVING, patches)).remarks == ()


def test_a_restatement_alone_is_no_new_content() -> None:
    assert (
        compare(edition(GROOVING), edition(GROOVING, {SPACING: "19.1 mm ± 0.8 mm"})).remarks == ()
    )


def test_other_governing_units_are_pointed_out() -> None:
    remarks = compare(
        edition(GROOVING, {"project.governing_units": "us"}),
        edition(GROOVING, {"project.governing_units": "si", "project.revision": "1"}),
    ).remarks

    assert any("from US customary to SI" in remark for remark in remarks)


def test_an_acceptance_dies_with_any_value_it_was_given_for() -> None:
    old = edition(GROOVING, {"accepted": [ACCEPTED]})
    new = edition(
        GROOVING,
        {
            "accepted": [ACCEPTED],
            "areas.mainline.groove.depth": "1/8 in to 3/16 in",
            "project.revision": "1",
            "project.date": "2027-05-01",
        },
    )

    assert compare(old, new, (FOUND,), ()).remarks == (
        "The acceptance of wide-spacing at areas.mainline.groove.spacing by district engineer was "
        "given for other values (1/8 in to 1/4 in → 1/8 in to 3/16 in): it no longer holds and "
        "must be given anew.",
    )


def test_an_acceptance_lives_on_while_its_values_stand() -> None:
    old = edition(GROOVING, {"accepted": [ACCEPTED]})
    changes = {"areas.deck.groove.spacing": "1 in", "project.revision": "1", "project.date": "x"}
    new = edition(GROOVING, {"accepted": [ACCEPTED], **changes})

    assert compare(old, new, (FOUND,), (FOUND,)).remarks == ()


def test_an_acceptance_taken_out_is_a_change_and_no_remark() -> None:
    old = edition(GROOVING, {"accepted": [ACCEPTED]})
    result = compare(old, edition(GROOVING, {"accepted": []}), (FOUND,), ())

    assert [change.label for change in result.changes] == ["acceptance of a finding"]
    assert result.remarks == ()


def test_a_limit_that_stands_while_its_measuring_changed_is_pointed_out() -> None:
    index = {
        "areas.mainline.smoothness.index": "PI",
        "areas.mainline.smoothness.limit": "at most 5 in/mi",
        "areas.mainline.smoothness.blanking_band": "0.2 in",
    }
    band = {"areas.mainline.smoothness.blanking_band": "0 in"}
    limit = {"areas.mainline.smoothness.limit": "at most 25 in/mi"}
    old = edition("urban-grinding", index)

    stands = compare(old, edition("urban-grinding", {**index, **band})).remarks
    moves = compare(old, edition("urban-grinding", {**index, **band, **limit})).remarks

    said = "the limit at most 5 in/mi stands, but it is measured otherwise (blanking band)"
    assert any(said in remark for remark in stands)
    assert not any("measured otherwise" in remark for remark in moves)
