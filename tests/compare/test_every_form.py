"""What a reviewer must never miss, in every form in which two versions come.

Each case is an edit that is easily read over. It is told of two jobs, of the documents drafted
from them, of the same documents without the job inside, and of their text alone; and the redline
reads as either version.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest

from specwriter.cli.main import outcome
from specwriter.reading.package import read_package, write_package
from specwriter.workflow import check, draft
from tests.compare.redline.accepting import accepted, lines, rejected
from tests.support import patched, text_of

MAIN = "areas.mainline"
PROFILE_INDEX = {
    f"{MAIN}.smoothness.index": "PI",
    f"{MAIN}.smoothness.instrument": "profilograph",
    f"{MAIN}.smoothness.limit": "at most 7 in/mi",
}
OWN_ITEM = {"name": "Residue Removal", "number": "614.20", "unit": "lump_sum"}


@dataclass(frozen=True, kw_only=True)
class Case:
    """What changes, what is said of two jobs, and what of two texts."""

    new: Mapping[str, Any]
    said: str
    words: str
    old: Mapping[str, Any] = field(default_factory=dict)


CASES = {
    "a silent change of unit": Case(
        new={f"{MAIN}.smoothness.limit": "at most 75 m/km"},
        said="The number stands but its unit went from in/mi to m/km",
        words="The number stands but its unit went from in/mi to m/km",
    ),
    "another blanking band": Case(
        old=PROFILE_INDEX | {f"{MAIN}.smoothness.blanking_band": "0.2 in"},
        new=PROFILE_INDEX | {f"{MAIN}.smoothness.blanking_band": "0.1 in"},
        said="TIGHTER, the contractor bears it: blanking band",
        words="The blanking band changed",
    ),
    "a limit on the mean that each reading must meet": Case(
        new={f"{MAIN}.testing.texture.statistic": "each"},
        said="TIGHTER, the contractor bears it: statistic of the texture test",
        words="[−mean",
    ),
    "a lost not": Case(
        old={f"{MAIN}.testing.texture.remedy": "do not regrind the panel"},
        new={f"{MAIN}.testing.texture.remedy": "regrind the panel"},
        said='A duty may turn on "not"',
        words='A duty may turn on "not"',
    ),
    "should that became shall": Case(
        old={f"{MAIN}.testing.texture.remedy": "the spacers should be changed"},
        new={f"{MAIN}.testing.texture.remedy": "the spacers shall be changed"},
        said='"should" became "shall"',
        words='"should"',
    ),
    "two steps in the other order": Case(
        new={
            "sequence": [
                "slab repairs",
                "grinding",
                "profile test",
                "profile test",
                "joint sealing",
                "marking",
            ]
        },
        said="MOVED, to be checked",
        words="profile test;",
    ),
    "a pay item that became incidental": Case(
        old={"pay_items.residue": OWN_ITEM, "residue.pay_item": "residue"},
        new={"residue.pay_item": "grinding"},
        said="614.20",
        words="ROW REMOVED",
    ),
    "another edition of a test": Case(
        new={f"{MAIN}.smoothness.test.edition": "2020"},
        said="edition of the smoothness test",
        words="2020",
    ),
    "changed content under the same identifier": Case(
        new={f"{MAIN}.removal.depth": "at most 3/8 in"},
        said="Both files are SP-614",
        words="their content differs",
    ),
}


def without_its_job(content: bytes) -> bytes:
    parts = read_package(content)
    kept = {name: part for name, part in parts.items() if not name.startswith("customXml/item")}
    return write_package(kept)


def versions(case: Case, folder: Path, form: str) -> list[Path]:
    """The two versions as files of one form."""
    found = []
    for name, patches in (("old", case.old), ("new", case.new)):
        job = folder / f"{name}.yaml"
        job.write_text(patched(text_of("complete/diamond_grinding"), patches), encoding="utf-8")
        if form == "yaml":
            found.append(job)
            continue
        kind = "md" if form == "md" else "docx"
        content = draft(check(job), (kind,)).contents[kind]
        document = folder / f"{name}.{kind}"
        document.write_bytes(without_its_job(content) if form == "foreign" else content)
        found.append(document)
    return found


@pytest.mark.parametrize("form", ["yaml", "docx", "foreign", "md"])
@pytest.mark.parametrize("name", CASES)
def test_it_is_told(
    name: str, form: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    case = CASES[name]
    old, new = versions(case, tmp_path, form)
    redline = tmp_path / "redline.docx"
    capsys.readouterr()

    outcome(["compare", str(old), str(new), "--redline", str(redline)])

    out = " ".join(capsys.readouterr().out.split())
    assert (case.words if form in ("foreign", "md") else case.said) in out
    if form in ("docx", "foreign"):
        marked = redline.read_bytes()
        assert lines(accepted(marked)) == lines(new.read_bytes())
        assert lines(rejected(marked)) == lines(old.read_bytes())
