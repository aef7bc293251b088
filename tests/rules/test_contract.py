"""What every rule owes its reader: prose in order, sources, examples that do what they say."""

from __future__ import annotations

import inspect
import re
from dataclasses import fields
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.model.conditions import PlaceFacts
from specwriter.rules import RegisteredRule, all_rules, run_rules
from specwriter.rules.registry import SECTIONS
from specwriter.source import read_text
from tests.support import TEXTURES, job, patched, text_of

CASES = Path(__file__).parent / "cases"
RULES = {rule.slug: rule for rule in all_rules()}
SOURCE = re.compile(r"\d{4}|\d{2}-\d|arithmetic|practice|calculation|UFGS \d+|memory|undated")


class _Plain(yaml.SafeLoader):
    """Keeps every scalar but null, true and false as it is written."""

    yaml_implicit_resolvers: dict[str, Any] = {}  # noqa: RUF012


for _tag, _pattern in (("null", r"null$"), ("bool", r"(true|false)$")):
    _Plain.add_implicit_resolver(f"tag:yaml.org,2002:{_tag}", re.compile(_pattern), None)


def load(text: str) -> Any:
    return yaml.load(text, Loader=_Plain)


def cases_of(slug: str) -> dict[str, Any]:
    loaded = load((CASES / f"{slug}.yaml").read_text(encoding="utf-8"))
    assert isinstance(loaded, dict)
    return loaded


def fired(rule: RegisteredRule, patches: dict[str, Any]) -> list[str]:
    text = patched(text_of(rule.rule.base), patches)
    assert read_text(text, "job.yaml").faults == ()
    report = run_rules(job(rule.rule.base, patches), beside_gaps(rule))
    assert report.defects == ()
    return [finding.slug for finding in report.findings]


def beside_gaps(rule: RegisteredRule) -> list[RegisteredRule]:
    """All rules; without those that ask for what is missing, where a small job is the base."""
    bare = rule.rule.base in TEXTURES
    return [each for each in RULES.values() if not (bare and each.rule.gap)]


def _below_area(path: str) -> str:
    """The path without the area it stands in."""
    return path.split(".", 2)[-1] if path.startswith("areas.") else path


CASE_LIST = [
    pytest.param(slug, case, id=f"{slug}: {name}")
    for slug in RULES
    if (CASES / f"{slug}.yaml").exists()
    for name, case in cases_of(slug).items()
]


@pytest.mark.parametrize("slug", RULES)
def test_the_docstring_has_its_sections_in_order(slug: str) -> None:
    rule = RULES[slug]

    assert tuple(rule.sections) == SECTIONS
    assert all(rule.sections.values())
    assert rule.summary.endswith(".")


@pytest.mark.parametrize("slug", RULES)
def test_every_source_has_a_year_or_says_what_it_is(slug: str) -> None:
    assert [each for each in RULES[slug].sources if not SOURCE.search(each)] == []


@pytest.mark.parametrize("slug", RULES)
def test_a_conflict_does_not_rest_on_memory_or_on_our_own_figures_alone(slug: str) -> None:
    weak = [each for each in RULES[slug].sources if re.search(r"memory|project calc", each)]

    if RULES[slug].rule.grade.value == "conflict":
        assert len(weak) < len(RULES[slug].sources)


@pytest.mark.parametrize("slug", RULES)
def test_the_clashing_example_raises_this_rule_alone(slug: str) -> None:
    assert fired(RULES[slug], load(RULES[slug].sections["Conflict"])) == [slug]


@pytest.mark.parametrize("slug", RULES)
def test_the_settled_example_raises_nothing(slug: str) -> None:
    assert fired(RULES[slug], load(RULES[slug].sections["Settled"])) == []


@pytest.mark.parametrize("slug", RULES)
def test_the_case_table_is_complete(slug: str) -> None:
    expected = [case["expect"] for case in cases_of(slug).values()]

    assert "clean" in expected
    assert sum(isinstance(each, dict) for each in expected) >= 2
    assert ("skipped" in expected) == bool(RULES[slug].rule.needs)


@pytest.mark.parametrize("slug", RULES)
def test_the_causes_that_silence_a_rule_exist(slug: str) -> None:
    assert set(RULES[slug].rule.quiet_after) <= set(RULES) - {slug}


@pytest.mark.parametrize(("slug", "case"), CASE_LIST)
def test_a_case_is_as_its_table_says(slug: str, case: dict[str, Any]) -> None:
    rule = RULES[slug]
    base, patches = case.get("base", rule.rule.base), case["set"]
    assert read_text(patched(text_of(base), patches), "job.yaml").faults == ()

    report = run_rules(job(base, patches), [rule])

    assert report.defects == ()
    if case["expect"] == "skipped":
        assert [each.slug for each in report.not_run] == [slug]
    elif case["expect"] == "clean":
        assert (report.findings, report.not_run) == ((), ())
    else:
        (finding,) = report.findings
        assert [_below_area(each.path) for each in finding.evidence] == case["expect"]["at"]
        for words in case["expect"].get("says", []):
            assert words in " ".join([finding.says, *finding.settle])
        assert finding.settle
        assert finding.sources == rule.sources


@pytest.mark.parametrize("slug", RULES)
def test_a_rule_that_reads_what_differs_between_areas_looks_at_each_site(slug: str) -> None:
    rule = RULES[slug]
    text = inspect.getsource(inspect.getmodule(rule.check) or pytest)
    keys = "|".join(each.name for each in fields(PlaceFacts) if each.name != "path")
    reads = re.search(
        rf"\bconditions(?:\.|, \")(?:{keys})\b|\bmeasures\(job\.conditions\b",
        text.partition('"""\n\n')[2],
    )
    assert rule.rule.by_site is bool(reads)
