"""Every setting of a house acts on a check, and the finding says which setting it used."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields
from typing import Any

import pytest

from specwriter.model.settings import Settings
from specwriter.rules import all_rules, run_rules
from tests.rules.test_contract import cases_of
from tests.support import job

OF_THE_DOCUMENT = ("file", "house_format", "numbering", "page", "precedence")
"""Settings that shape the drafted document; no check has anything to say on them."""

SETTINGS = [each.name for each in fields(Settings) if each.name not in (*OF_THE_DOCUMENT, "path")]


def patches_with(name: str) -> Iterator[tuple[Any, str, dict[str, Any]]]:
    """Each case of a rule that sets the setting and expects a finding."""
    for rule in all_rules():
        for case in cases_of(rule.slug).values():
            given = {**case["set"].get("settings", {}), **case["set"]}
            if isinstance(case["expect"], dict) and {name, f"settings.{name}"} & given.keys():
                yield rule, case.get("base", rule.rule.base), case["set"]


@pytest.mark.parametrize("name", SETTINGS)
def test_a_finding_names_the_setting_that_it_used(name: str) -> None:
    told = []
    for rule, base, patches in patches_with(name):
        (finding,) = run_rules(job(base, patches), [rule]).findings
        words = " ".join([finding.says, *(each.path for each in finding.evidence)])
        told.append(name in words)

    assert any(told)
