"""Relations at work on small jobs: what is found, how grave, and in which numbers."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.reconcile import findings_of, reconcile
from tests.support import job


class _Plain(yaml.SafeLoader):
    """Keeps every scalar but null, true and false as it is written."""

    yaml_implicit_resolvers: dict[str, Any] = {}  # noqa: RUF012


for _tag, _pattern in (("null", r"null$"), ("bool", r"(true|false)$")):
    _Plain.add_implicit_resolver(f"tag:yaml.org,2002:{_tag}", re.compile(_pattern), None)

CASES = [
    pytest.param(case, id=f"{path.stem}: {name}")
    for path in sorted((Path(__file__).parent / "cases").glob("*.yaml"))
    for name, case in yaml.load(path.read_text(encoding="utf-8"), Loader=_Plain).items()
]


@pytest.mark.parametrize("case", CASES)
def test_the_case_ends_as_its_arithmetic_says(case: dict[str, Any]) -> None:
    found = findings_of(reconcile(job(case["base"], case["set"])))
    expected = {} if case["expect"] == "clean" else case["expect"]

    assert {each.slug: each.grade.value for each in found} == expected, [e.says for e in found]
    told = " ".join(f"{each.says} {' '.join(each.settle)}" for each in found)
    assert [words for words in case.get("says", []) if words not in told] == [], told
    assert [words for words in case.get("says_not", []) if words in told] == [], told
