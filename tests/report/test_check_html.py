"""The check as a web page, read by an independent parser: structure, escaping, the same findings.

The page is held against what the report in JSON says and what the report in text prints, so that
nobody who circulates one form tells another story than who reads the other.
"""

from __future__ import annotations

import json
import re
from itertools import pairwise
from pathlib import Path
from typing import Any
from xml.etree.ElementTree import Element

import html5lib
import pytest

from specwriter.report.check_html import check_html
from specwriter.report.check_json import check_json
from specwriter.report.check_text import check_text
from specwriter.report.result import CheckResult
from specwriter.workflow import check
from tests.support import EXAMPLES, patched, text_of

NAMES = sorted(path.name for path in EXAMPLES.iterdir())
HOSTILE = "<script>alert(1)</script> & \"quotes\" 'too'"


def parsed(page: str) -> Element:
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    root: Element = parser.parse(page)
    assert parser.errors == []
    return root


def words(element: Element | None) -> str:
    assert element is not None
    return squeezed("".join(element.itertext()))


def squeezed(text: str) -> str:
    return " ".join(text.split())


def one(element: Element, path: str) -> Element:
    (found,) = element.findall(path)
    return found


def table_of(table: Element) -> list[tuple[str, ...]]:
    return [tuple(map(words, row)) for row in table.findall("tbody/tr")]


def finding_of(article: Element) -> dict[str, Any]:
    """A finding as the page tells it, under the keys of the JSON report."""
    heading = words(one(article, "h4"))
    basis = [words(each) for each in article.findall("p") if each.get("class") == "basis"]
    says, *_ = [words(each) for each in article.findall("p") if not each.get("class")]
    return {
        "heading": heading,
        "places": [row for each in article.findall("table") for row in table_of(each)],
        "says": says,
        "settle": [words(each) for each in article.findall("ul/li")],
        "basis": basis,
    }


def expected(finding: dict[str, Any], file: str) -> dict[str, Any]:
    """The same of a finding of the JSON report."""
    where = f"in {finding['area']}: " if finding["area"] else ""
    areas = finding["areas"]
    if areas[1:]:
        where = f"in {', '.join(areas[:-1])} and {areas[-1]}: "
    sources = "; ".join(finding["sources"])
    basis = f"Basis: {finding['basis']}. Source: {sources}. " if sources else ""
    return {
        "heading": f"{finding['grade']} {where}{finding['title']}",
        "places": [
            (each["label"], squeezed(each["written"]), f"{file}:{each['line']}:{each['column']}")
            for each in finding["places"]
        ],
        "says": squeezed(finding["says"]),
        "settle": [squeezed(each) for each in finding["settle"]],
        "basis": [squeezed(f"{basis}Check: {finding['slug']}.")],
    }


@pytest.fixture(params=NAMES)
def example(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> CheckResult:
    monkeypatch.chdir(EXAMPLES / request.param)
    return check(Path("job.yaml"))


def test_text_json_and_page_tell_the_same_findings(example: CheckResult) -> None:
    root = parsed(check_html([example]))
    (job,) = json.loads(check_json([example]))["jobs"]
    text = squeezed(check_text(example))

    found = [finding_of(each) for each in root.iter("article")]

    assert found == [expected(each, job["file"]) for each in job["findings"]]
    assert len(re.findall(r"\b(?:CONFLICT|OPEN|CAUTION|NOTE)(?: in [^:]+)?: ", text)) == len(found)
    for each in job["findings"]:
        told = [each["title"], each["slug"], squeezed(each["says"]), *each["sources"]]
        told += [way.rstrip(".") for way in each["settle"]]
        assert [part for part in told if squeezed(part) not in text] == []


def test_text_json_and_page_tell_the_same_verdicts(example: CheckResult) -> None:
    root = parsed(check_html([example]))
    (job,) = json.loads(check_json([example]))["jobs"]
    text = squeezed(check_text(example))

    tables = [each for each in root.iter("table") if "areas" in str(each.get("class")).split()]
    found = {words(one(each, "caption")): table_of(each) for each in tables}

    judged = {name: {row["label"]: row for row in rows} for name, rows in job["tables"].items()}
    assert set(found) <= set(judged)
    for area, rows in judged.items():
        left_out = rows.keys() - {row[0] for row in found.get(area, [])}
        assert {rows[label]["verdict"] for label in left_out} <= {"holds"}
        for label, required, allowed, outcome, behind in found.get(area, []):
            row = rows[label]
            assert required == squeezed(row["written"])
            assert row["verdict"].startswith(outcome)
            assert behind.startswith(row["verdict"].removeprefix(outcome).lstrip(":, "))
            clashes = [each["clash"] for each in job["verdicts"] if each["area"] == area]
            members = [m for each in clashes if each for m in each["requirements"]]
            known = {f"{m['label']} {m['written']}" for m in members} - {f"{label} {required}"}
            others = re.split(", | and ", behind.removeprefix("against "))
            assert outcome != "impossible" or set(others) <= known
            assert allowed in text


def test_text_json_and_page_tell_the_same_of_what_was_not_checked(example: CheckResult) -> None:
    every = parsed(check_html([example], every_check=True))
    short = parsed(check_html([example]))
    (job,) = json.loads(check_json([example]))["jobs"]

    *_, listed = every.iter("table")
    *_, reasons = short.iter("table")

    assert table_of(listed) == [
        (each["slug"], each["area"] or "", squeezed(each["because"])) for each in job["not_run"]
    ]
    text = squeezed(check_text(example))
    for what, areas, checks in table_of(reasons):
        told = f"{areas or 'whole contract'}: "
        assert told in text
        assert f"{what} {checks}" in text if checks != "1" else what in text


def test_the_page_is_built_to_be_read_without_seeing_it(example: CheckResult) -> None:
    root = parsed(check_html([example, example]))
    levels = [int(each.tag[1]) for each in root.iter() if re.fullmatch(r"h[1-6]", str(each.tag))]
    anchors = [str(each.get("id")) for each in root.iter() if each.get("id")]

    assert root.get("lang") == "en"
    assert words(one(root, "head/title")) == words(one(root, "body/main/h1"))
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(below - above <= 1 for above, below in pairwise(levels))
    for table in root.iter("table"):
        assert words(one(table, "caption"))
        assert {each.get("scope") for each in table.findall("thead/tr/th")} == {"col"}
        assert all(row[0].get("scope") == "row" for row in table.findall("tbody/tr"))
    assert len(set(anchors)) == len(anchors)
    assert {str(each.get("href")) for each in root.iter("a")} <= {f"#{each}" for each in anchors}
    assert "licensed engineer of record govern" in words(root)


def checked(path: Path, base: str, changes: dict[str, Any]) -> CheckResult:
    path.write_text(patched(text_of(base), changes), encoding="utf-8")
    return check(path)


def test_what_the_job_says_is_never_taken_for_markup(tmp_path: Path) -> None:
    entry = {
        "finding": "index-instrument",
        "at": "areas.mainline.smoothness.instrument",
        "because": HOSTILE,
        "by": HOSTILE,
        "on": "2027-02-01",
    }
    changes = {
        "project.title": HOSTILE,
        "areas.mainline.smoothness.instrument": "profilograph",
        "areas.mainline.smoothness.sensor": None,
        "areas.mainline.smoothness.sensor_width": None,
        "accepted": [entry],
    }
    result = checked(tmp_path / "<b>job & co.yaml", "complete/diamond_grinding", changes)

    root = parsed(check_html([result]))

    assert not list(root.iter("script"))
    assert not list(root.iter("b"))
    assert HOSTILE in [words(each) for each in root.iter("h2")]
    (article,) = [each for each in root.iter("article") if "accepted" in str(each.get("class"))]
    assert words(one(article, "h4")).startswith("accepted conflict in mainline: ")
    assert f"Accepted by {HOSTILE} on 2027-02-01: {HOSTILE}" in words(article)
    assert words(one(root, "head/title")).endswith("<b>job & co.yaml")


def test_a_witness_stands_beside_the_result_that_it_fails(tmp_path: Path) -> None:
    depth = {"measure": "MTD", "at_least": "0.8 mm", "method": "ASTM E965"}
    changes = {
        "areas.mainline.groove": {
            "width": "1/8 in ± 1/64 in",
            "depth": "1/8 in to 3/16 in",
            "spacing": "3/4 in",
        },
        "areas.mainline.texture_depth": depth,
    }
    result = checked(tmp_path / "job.yaml", "complete/longitudinal_grooving", changes)

    rows = [row for each in parsed(check_html([result])).iter("table") for row in table_of(each)]

    # 7/64 in by 1/8 in every 3/4 in: 7/64 x 1/8 / (3/4) x 25.4 = 0.46 mm
    (row,) = [row for row in rows if row[0] == "texture depth" and row[3:]]
    assert row[3] == "not assured"
    assert row[4].startswith("0.46 mm with ")
    assert "groove width 7/64 in" in row[4]
    assert "groove depth 1/8 in" in row[4]


def test_a_value_stated_twice_clashes_with_its_other_place(tmp_path: Path) -> None:
    again = [{"in": "Drawing 14, note 3", "groove": {"width": "1/4 in"}}]
    changes = {"areas.mainline.groove.width": "1/8 in", "areas.mainline.also_stated": again}
    result = checked(tmp_path / "job.yaml", "complete/longitudinal_grooving", changes)

    rows = [row for each in parsed(check_html([result])).iter("table") for row in table_of(each)]

    found = {row[0]: row[4] for row in rows if "impossible" in row}
    assert found == {
        "groove width": "against groove width (Drawing 14, note 3) 1/4 in",
        "groove width (Drawing 14, note 3)": "against groove width 1/8 in",
    }


def test_a_file_that_cannot_be_read_shows_its_faults(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    path.write_text("format: 1\nproject:\n  titel: <i>Ramp</i>\n", encoding="utf-8")
    result = check(path)

    root = parsed(check_html([result]))

    assert not list(root.iter("i"))
    articles = list(root.iter("article"))
    assert len(articles) == len(result.source.faults) >= 1
    assert words(articles[0]).startswith(str(result.source.faults[0].place))
    assert "titel" in [words(each) for each in root.iter("mark")]
    assert "the job was not checked" in words(root)
