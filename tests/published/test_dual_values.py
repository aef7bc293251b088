"""Printed pairs of values in two unit systems: the unequal are found, the equal stay silent.

Outside check: the pairs in ``dual_values.yaml``, each with its document and year.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.rules import run_rules
from tests.support import job

PAIRS: list[dict[str, Any]] = yaml.safe_load(
    Path(__file__).with_name("dual_values.yaml").read_text("utf-8")
)
FOUND = {"dual-values-differ", "stated-twice-with-different-values"}


@pytest.mark.parametrize("pair", PAIRS, ids=lambda pair: pair["source"])
def test_a_printed_pair_is_found_where_it_differs(pair: dict[str, Any]) -> None:
    from specwriter.reconcile import findings_of, reconcile

    area = "runway" if pair["base"] == "runway_grooving" else "mainline"
    noun, _, key = pair["key"].rpartition(".")
    other = {noun: {key: pair["other"]}} if noun else {key: pair["other"]}
    built = job(
        pair["base"],
        {
            f"areas.{area}.{pair['key']}": pair["first"],
            f"areas.{area}.also_stated": [{"in": "the metric column", **other}],
        },
    )

    found = {each.slug for each in (*run_rules(built).findings, *findings_of(reconcile(built)))}
    assert bool(found & FOUND) is pair["differs"]
