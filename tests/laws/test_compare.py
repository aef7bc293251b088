"""Laws of comparison, on editions made by changing many values of a job at once."""

from __future__ import annotations

import random
from collections import Counter
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from specwriter.compare import Change, Sense, compare
from specwriter.compare.leaf import Leaf, leaves
from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job, build_job
from specwriter.quantity import UNITS, Interval, Quantity, other_system, parse
from tests.compare import data_of, patch
from tests.support import EXAMPLES, TEXTURES

WHOLE = (
    *sorted(path.parent.name for path in EXAMPLES.glob("*/job.yaml")),
    *(f"complete/{texture}" for texture in TEXTURES),
)
"""Every example, and a complete job of each texture."""

NAMES = ("as-received", "rural-grooving", "urban-grinding", *TEXTURES)
FACTORS = ("0.5", "0.9", "1.1", "2")
"""Stretch factors for changed values."""

JOBS = {name: build_job(data_of(name)) for name in {*NAMES, *WHOLE}}


@st.composite
def editions(draw: st.DrawFn, name: str) -> Job:
    """A job with up to eight values changed, taken out or rewritten, and perhaps all area ids."""
    data = data_of(name)
    found = [leaf for leaf in leaves(JOBS[name]) if leaf.path.startswith(("areas", "conditions"))]
    chosen = draw(st.lists(st.sampled_from(found), max_size=8, unique_by=lambda leaf: leaf.path))
    # Items are taken from the end, so that the paths of the others stay true.
    for leaf in sorted(chosen, key=lambda leaf: leaf.path, reverse=True):
        patch(data, leaf.path, draw(values(leaf)))
    if draw(st.booleans()):
        data["areas"] = {f"other_{key}": area for key, area in data["areas"].items()}
    return build_job(data)


def values(leaf: Leaf) -> st.SearchStrategy[Any]:
    """Other values for a leaf; a key that a job cannot do without keeps its own."""
    if leaf.path.rpartition(".")[2] in ("texture", "place"):
        return st.just(leaf.value)
    if not isinstance(leaf.value, Quantity):
        return st.sampled_from(("each", "not each", "a test of 5 ft", None))
    other = other_system(leaf.value)
    texts = [stretched(leaf.value, factor) for factor in FACTORS]
    return st.sampled_from((*texts, None, *([other] if other else [])))


def stretched(quantity: Quantity, factor: str) -> str:
    """A value of the same form and unit, each number multiplied."""
    if not quantity.unit.partner:
        return quantity.text
    numbers = [
        f"{float(amount.value) * float(factor):.4f} {amount.unit.symbol}"
        for amount in quantity.amounts
    ]
    match quantity.form:
        case "at_least" | "at_most":
            return f"{quantity.form.replace('_', ' ')} {numbers[0]}"
        case "range":
            return " to ".join(numbers)
        case "tolerance":
            return f"{numbers[0]} +{numbers[1]} -{numbers[2]}"
        case _:
            return ", ".join(numbers)


@st.composite
def pairs(draw: st.DrawFn) -> tuple[Job, Job]:
    name = draw(st.sampled_from(NAMES))
    return draw(editions(name)), draw(editions(name))


def findings_on(job: Job) -> tuple[Finding, ...]:
    """One finding on every groove of a job, saying its width."""
    return tuple(
        Finding(
            slug="groove-width",
            grade=Grade.NOTE,
            basis="practice",
            title="a groove",
            area=area.id,
            evidence=(
                Evidence(
                    path=area.groove.path_to("width"),
                    label="groove width",
                    written=str(area.groove.width),
                ),
            ),
            says="",
        )
        for area in job.areas.values()
        if area.groove and area.groove.width
    )


def told(change: Change) -> tuple[Any, ...]:
    return change.sense, change.label, change.old, change.new


def mirrored(change: Change) -> tuple[Any, ...]:
    return change.sense.mirrored, change.label, change.new, change.old


def shuffled(data: Any, seed: random.Random) -> Any:
    """The same data with the keys of every mapping in another order."""
    if isinstance(data, dict):
        keys = list(data)
        seed.shuffle(keys)
        return {key: shuffled(data[key], seed) for key in keys}
    if isinstance(data, list):
        return [shuffled(item, seed) for item in data]
    return data


@given(pairs())
@settings(max_examples=40, deadline=None)
def test_a_job_does_not_differ_from_itself(pair: tuple[Job, Job]) -> None:
    job = pair[0]

    assert compare(job, job, findings_on(job), findings_on(job)).is_empty


@given(pairs())
@settings(max_examples=60, deadline=None)
def test_the_way_back_mirrors_the_way_there(pair: tuple[Job, Job]) -> None:
    old, new = pair
    there = compare(old, new, findings_on(old), findings_on(new))
    back = compare(new, old, findings_on(new), findings_on(old))

    assert Counter(map(told, there.changes)) == Counter(map(mirrored, back.changes))
    assert Counter(there.appeared) == Counter(back.vanished)
    assert Counter(there.vanished) == Counter(back.appeared)
    assert Counter((each.old, each.new) for each in there.altered) == Counter(
        (each.new, each.old) for each in back.altered
    )


@given(st.sampled_from(NAMES), st.data(), st.randoms(use_true_random=False))
@settings(max_examples=40, deadline=None)
def test_the_order_of_keys_areas_and_stretches_does_not_matter(
    name: str, data: st.DataObject, seed: random.Random
) -> None:
    new = data.draw(editions(name))
    again = shuffled(data_of(name), seed)
    for area in again["areas"].values():
        seed.shuffle(area.get("limits", []))
    reordered = build_job(again)

    assert compare(JOBS[name], reordered).is_empty
    before = Counter((told(c)[0], told(c)[1], c.new) for c in compare(JOBS[name], new).changes)
    after = Counter((told(c)[0], told(c)[1], c.new) for c in compare(reordered, new).changes)
    assert before == after


@pytest.mark.parametrize("name", [*WHOLE, *TEXTURES])
def test_the_other_unit_system_only_restates(name: str) -> None:
    data, rewritten = data_of(name), 0
    for leaf in leaves(JOBS[name]):
        if isinstance(leaf.value, Quantity) and (other := other_system(leaf.value)):
            patch(data, leaf.path, other)
            rewritten += 1

    changes = compare(JOBS[name], build_job(data)).changes

    assert {change.sense for change in changes} == {Sense.RESTATED}
    assert len(changes) == rewritten > 0


UNITS_WITH_PARTNER = [
    unit.symbol for unit in UNITS.values() if unit.partner and not unit.symbol.startswith("$")
]
NUMBERS = st.one_of(
    st.decimals(min_value=0, max_value=20000, places=3).map(lambda number: f"{number:f}"),
    st.decimals(min_value=0, max_value=200, places=1).map(lambda number: f"{number:f}"),
    st.integers(min_value=0, max_value=90000).map(str),
    st.tuples(st.integers(1, 30), st.integers(1, 63)).map(lambda n: f"{n[0]}-{n[1]}/64"),
)


@st.composite
def written_values(draw: st.DrawFn) -> str:
    """A value in any form, in any unit that has a partner in the other system."""
    unit = draw(st.sampled_from(UNITS_WITH_PARTNER))
    one, other = (f"{draw(NUMBERS)} {unit}" for _ in range(2))
    forms = [one, f"at most {one}", f"at least {one}", f"{one} to {other}", f"{one}, {other}"]
    forms.append(f"{one} +{other} -{one}")
    if parse(one).interval.within(Interval(parse(other).interval.low)):
        forms.append(f"{one} ± {other}")  # a tolerance may not reach below zero
    return draw(st.sampled_from(forms))


@given(written_values())
@settings(max_examples=500, deadline=None)
def test_a_value_printed_in_the_other_system_is_a_restatement(text: str) -> None:
    other = other_system(parse(text))
    assert other is not None
    old, new = ({"slab_thickness": value} for value in (text, other))

    changes = compare(job_with(old), job_with(new)).changes

    assert [change.sense for change in changes] == [Sense.RESTATED]


def job_with(conditions: dict[str, str]) -> Job:
    return build_job(
        {
            "format": 1,
            "project": {"title": "Grooving", "agency": "Larch Valley"},
            "conditions": conditions,
            "areas": {},
        }
    )
