"""Title, lead-in, cautions and what travels with the document."""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.assemble import assemble, load_library
from tests.assemble import document
from tests.support import job

BASE = {"number": "420", "title": "Texture", "edition": "2024"}


@pytest.mark.parametrize(
    ("action", "lead_in"),
    [
        (
            "new_section",
            "The following section is added to the 2024 Standard Specifications as "
            "Section 420, Texture.",
        ),
        (
            "add_after",
            "Section 420, Texture, of the 2024 Standard Specifications is supplemented by the "
            "following, which is added after its text. Where the following differs from that text, "
            "the following governs; the rest of the text remains in force.",
        ),
        (
            "replace",
            "Section 420, Texture, of the 2024 Standard Specifications is deleted and replaced "
            "by the following.",
        ),
        (
            "amend",
            "Section 420, Texture, of the 2024 Standard Specifications is amended as follows. "
            "What the following does not change remains in force.",
        ),
    ],
)
def test_the_lead_in_says_what_happens_to_the_base_section(action: str, lead_in: str) -> None:
    made = document(job("diamond_grinding", {"project.base_section": {**BASE, "action": action}}))

    assert made.lead_in == lead_in


@pytest.mark.parametrize(
    ("base", "lead_in", "paths"),
    [
        (
            None,
            "[base section and what is done to it]",
            ["project.base_section"],
        ),
        (
            {"number": "420", "title": "Texture", "action": "replace"},
            "Section 420, Texture, of the [base section edition] Standard Specifications is "
            "deleted and replaced by the following.",
            ["project.base_section.edition"],
        ),
        (
            BASE,
            "Section 420, Texture, of the 2024 Standard Specifications is "
            "[what is done to the base section]:",
            ["project.base_section.action"],
        ),
    ],
)
def test_a_gap_in_the_lead_in_is_open(base: Any, lead_in: str, paths: list[str]) -> None:
    made = document(job("urban-grinding", {"project.base_section": base}))

    assert made.lead_in == lead_in
    assert [d.path for d in made.open_decisions if d.clause == "lead-in"] == paths


def test_a_missing_provision_number_is_open() -> None:
    made = document(job("urban-grinding", {"project.provision": None, "project.date": None}))

    assert made.subtitle == "Special Provision [provision]"
    assert [d.path for d in made.open_decisions] == ["project.provision", "project.date"]


def test_what_the_caller_gives_travels_with_the_document() -> None:
    from specwriter.assemble import assemble
    from tests.assemble import library

    made = assemble(
        job("urban-grinding"), library(), status="DRAFT", job_text="format: 1", job_digest="ab"
    )

    assert (made.status, made.job_text, made.job_digest) == ("DRAFT", "format: 1", "ab")
    assert (made.subtitle, made.contract) == ("Special Provision SP-614", "AC-2027-014")
    assert made.closing == "End of special provision"


@pytest.mark.parametrize(
    "word", ["silica", "alkaline", "licensed engineer", "Local codes", "depth"]
)
def test_every_document_carries_the_usual_cautions(word: str) -> None:
    made = document(job("diamond_grinding", {"conditions": {"live_traffic": False}}))

    assert any(word in caution for caution in made.cautions)


@pytest.mark.parametrize(
    ("name", "patches", "word", "expected"),
    [
        ("diamond_grinding", {"conditions": {"live_traffic": False}}, "traffic control", False),
        ("diamond_grinding", {"conditions": {"live_traffic": True}}, "traffic control", True),
        ("diamond_grinding", {}, "traffic control", True),
        ("runway_grooving", {}, "aircraft", True),
        ("diamond_grinding", {}, "aircraft", False),
        ("diamond_grinding", {"conditions": {"loop_detectors": False}}, "detectors", False),
        ("transverse_grooving", {}, "detectors", True),
    ],
)
def test_cautions_follow_the_job(
    name: str, patches: dict[str, Any], word: str, expected: bool
) -> None:
    cautions = document(job(name, patches)).cautions

    assert any(word in caution.replace("Traffic", "traffic") for caution in cautions) is expected


@pytest.mark.parametrize(
    ("patches", "unasked"),
    [
        (
            {"smoothness.limit": None, "smoothness.improvement": "at least 40 percent"},
            ("smoothness.limit", "smoothness.whichever"),
        ),
        ({"friction": {"measure": "BPN", "at_least": "at least 45"}}, ("friction.speed",)),
        (
            {"texture_depth": {"measure": "MTD", "at_least": "0.8 mm", "test": {"method": "M 1"}}},
            ("texture_depth.method", "texture_depth.edition"),
        ),
        (
            {"noise": {"measure": "roadside", "at_most": "79 dB(A)", "age": "90 days"}},
            ("noise.speed",),
        ),
    ],
)
def test_what_a_job_need_not_say_is_not_asked_for(
    patches: dict[str, Any], unasked: tuple[str, ...]
) -> None:
    area = "areas.mainline"
    changed = {f"{area}.{key}": value for key, value in patches.items()}

    made = assemble(job("complete/diamond_grinding", changed), load_library())

    asked = {each.path for each in made.open_decisions}
    assert asked & {f"{area}.{path}" for path in unasked} == set()


@pytest.mark.parametrize("by", ["agency", "contractor"])
def test_the_profile_is_given_by_whoever_measures_it(by: str) -> None:
    made = assemble(
        job("complete/diamond_grinding", {"areas.mainline.smoothness.test.by": by}), load_library()
    )
    clauses = [clause for part in made.parts for clause in part.clauses]
    (smoothness,) = (each for each in clauses if each.id == "common.smoothness")
    last = "".join(run.text for run in smoothness.blocks[-1].runs)  # type: ignore[union-attr]

    given = "The Agency will give the Contractor each profile" in last
    assert (given, "Submit each profile" in last) == (by == "agency", by == "contractor")


@pytest.mark.parametrize("texture", ["diamond_grinding", "longitudinal_grooving"])
def test_a_job_in_which_no_check_finds_anything_open_is_drafted_without_a_blank(
    texture: str,
) -> None:
    assert assemble(job(f"complete/{texture}"), load_library()).open_decisions == ()
