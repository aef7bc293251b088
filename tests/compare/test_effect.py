"""What a change does besides: addendum, quantities, tests, cost, verdicts."""

from __future__ import annotations

from fractions import Fraction

import pytest

from specwriter.compare import Sense, compare
from specwriter.compare.material import Addendum, judge_material
from specwriter.reconcile import reconcile
from tests.compare import edition

RURAL = "rural-grooving"


@pytest.mark.parametrize(
    ("patches", "material"),
    [
        ({"areas.mainline.groove.depth": "1/8 in to 3/16 in"}, True),
        ({"areas.mainline.groove.spacing": "19.05 mm ± 0.79 mm"}, False),
        ({"areas.mainline.name": "Route 9 lanes"}, False),
        ({"pay_items.grooving.unit": "SF"}, True),
        ({"conditions.slab_thickness": "9 in"}, True),
        ({"areas.mainline.testing.groove_depth.where": "places picked by ASTM D3665"}, False),
        ({"areas.mainline.testing.groove_depth.statistic": "mean"}, True),
    ],
)
def test_bids_decide_whether_a_change_is_material(patches: dict[str, str], material: bool) -> None:
    changes = compare(edition(RURAL), edition(RURAL, patches)).changes

    assert [change.material for change in changes] == [material]
    assert all(change.material_because for change in changes)


def test_a_small_move_of_a_pay_quantity_can_be_left_out() -> None:
    old, new = edition(RURAL), edition(RURAL, {"pay_items.grooving.quantity": "14,600 SY"})

    strict = compare(old, new)
    lenient = compare(old, new, addendum=Addendum(minor=Fraction(1, 100)))

    assert [len(each.material) for each in (strict, lenient)] == [1, 0]


def test_under_the_strict_setting_every_change_but_a_restatement_counts() -> None:
    every = Addendum(setting="every")

    assert judge_material(every, Sense.REWORDED, "record", warned=False).material
    assert not judge_material(every, Sense.RESTATED, "contract", warned=False).material


def test_a_unit_that_slipped_is_material_even_as_a_restatement() -> None:
    assert judge_material(Addendum(), Sense.RESTATED, "contract", warned=True).material


def test_quantities_tests_and_cost_are_told_before_and_after() -> None:
    old = edition(RURAL, {"pay_items.grooving.unit_price": "$2.00/SY"})
    new = edition(
        RURAL,
        {
            "pay_items.grooving.unit_price": "$2.50/SY",
            "pay_items.grooving.quantity": "15,000 SY",
            "areas.mainline.limits.0.to": "171+80",
            "areas.mainline.testing.groove_depth.lot": "each 500 ft of lane",
        },
    )

    told = {each.label: each for each in compare(old, new).amounts}

    area = told["plan area of Route 9 travel lanes"]
    assert area.old is not None
    assert area.new is not None
    # 5,280 ft and 5,180 ft by 24 ft, in square yards.
    assert (area.old.text, area.new.text) == ("14,080 SY", "13,813 SY")
    assert area.difference == "−267 SY (−1.9 percent)"
    tests = told["groove depth readings on Route 9 travel lanes"]
    assert tests.old is not None
    assert tests.new is not None
    # 5.28 lots of 1,000 ft and 10.36 of 500 ft, in each of two lanes, ten readings a lot.
    assert (tests.old.text, tests.new.text) == ("120 tests", "220 tests")
    cost = told["cost of Longitudinal Grooving"]
    assert cost.old is not None
    assert cost.new is not None
    assert (cost.old.text, cost.new.text) == ("$29,014.00", "$37,500.00")


def test_a_verdict_that_turns_is_told() -> None:
    old = edition("as-received")
    new = edition("as-received", {"areas.curve.land.width": "7/8 in"})
    verdicts = reconcile(old).verdicts, reconcile(new).verdicts

    told = compare(old, new, verdicts=verdicts).verdicts
    back = compare(new, old, verdicts=verdicts[::-1]).verdicts

    assert ("impossible", "") in [(each.old, each.new) for each in told]
    assert sorted((each.new, each.old) for each in back) == sorted(
        (each.old, each.new) for each in told
    )
    assert compare(old, old, verdicts=(verdicts[0], verdicts[0])).verdicts == ()


def test_a_quantity_in_the_other_unit_is_the_same_quantity() -> None:
    item = "pay_items.grinding.quantity"
    old = edition("urban-grinding", {item: "28,160 SY"})

    same = compare(old, edition("urban-grinding", {item: "23,545 m2"}))
    more = compare(old, edition("urban-grinding", {item: "25,000 m2"}))

    assert same.amounts == ()
    # 28,160 SY × 0.83612736 m2/SY (NIST SP 811, 2008, appendix B) = 23,545.35 m2
    assert [each.difference for each in more.amounts] == ["+1455 m2 (+6.2 percent)"]
