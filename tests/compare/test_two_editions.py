"""An example job and its revised edition, from the two texts to the page that is read out."""

from __future__ import annotations

import json
from dataclasses import replace

from specwriter.compare import AlteredFinding, Comparison, compare
from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import build_job
from specwriter.report.comparison_json import comparison_json
from specwriter.report.comparison_text import comparison_text, summary
from specwriter.source import Source, read_text
from tests.support import patched, text_of

MAIN, DECK = "areas.mainline", "areas.deck"
REVISION = {
    f"{MAIN}.groove.depth": "1/8 in to 3/16 in",
    f"{MAIN}.groove.spacing": "19.1 mm ± 0.8 mm",
    f"{MAIN}.testing.groove_spacing.statistic": "each",
    f"{MAIN}.testing.groove_depth.remedy": "saw the same grooves twice more",
    f"{DECK}.coverage.joint_offset": "at most 6 in",
    f"{DECK}.removal.cover_after": "at least 2 in",
    f"{DECK}.testing.coverage": None,
    "conditions.posted_speed": "55 mph",
    "submittals.equipment.response": "7 days",
}
COVER = Finding(
    slug="cover-to-steel",
    grade=Grade.OPEN,
    basis="arithmetic",
    title="cover to steel is not given",
    area="deck",
    evidence=(
        Evidence(path=f"{DECK}.removal.cover_after", label="cover after", written="at least 2 in"),
    ),
    says="Without the present cover nobody can tell whether 2 in will be left.",
)
CHANGES = [
    ("mainline", "groove depth", "tighter", "contractor"),
    ("mainline", "groove spacing", "restated", "both"),
    ("mainline", "remedy of the groove depth test", "reworded", "check"),
    ("mainline", "statistic of the groove spacing test", "tighter", "contractor"),
    ("deck", "cover to steel after cutting", "added", "contractor"),
    ("deck", "distance left at joints", "looser", "agency"),
    ("deck", "coverage test", "removed", "agency"),
    (None, "posted speed", "changed", "check"),
    (None, "submittal equipment, response time", "looser", "contractor"),
]
SMALL = """\
format: 1
project: {title: Grooving, agency: Larch Valley, revision: "1"}
areas:
  curve:
    name: North curve
    texture: longitudinal_grooving
    place: roadway
    groove:
      depth: 1/8 in to 1/4 in
      spacing: 3/4 in
    smoothness:
      limit: at most 60 in/mi
      exclusions: 25 ft at each end
    testing:
      groove_depth: {statistic: mean, remedy: do not saw again, by: contractor}
"""
SMALL_NEW = """\
format: 1
project: {title: Grooving, agency: Larch Valley, revision: "1"}
areas:
  curve:
    name: North curve
    texture: longitudinal_grooving
    place: roadway
    groove:
      depth: 1/8 in to 3/16 in
      spacing: 19 mm
    land: {width: 5/8 in}
    smoothness:
      limit: at most 60 m/km
    testing:
      groove_depth: {statistic: mean, remedy: saw again, by: contractor}
"""
PAGE = """\
North curve

  TIGHTER, the contractor bears it: groove depth
     old.yaml:9:14   1/8 in to 1/4 in
     new.yaml:9:14   1/8 in to 3/16 in
     3/16 in is 1/16 in less than 1/4 in.
     The saw has less room within which the cut is accepted.

  RESTATED: groove spacing
     old.yaml:10:16   3/4 in
     new.yaml:10:16   19 mm
     19 mm is 0.05 mm less than 3/4 in.

  ADDED, the contractor bears it: land width
                      (absent)
     new.yaml:11:19   5/8 in
     The saw has less room within which the cut is accepted.

  LOOSER, the agency bears it: smoothness limit
     old.yaml:12:14   at most 60 in/mi
     new.yaml:13:14   at most 60 m/km
     60 m/km is about 59.053 m/km more than 60 in/mi.
     Take care: The number stands but its unit went from in/mi to m/km: 63.36 times as much.
     The agency accepts a lesser result than before.

  TIGHTER, the contractor bears it: places left out of smoothness
     old.yaml:13:19   25 ft at each end
                      (absent)
     Places that were left out of acceptance now count.

  REWORDED, to be checked: remedy of the groove depth test
     old.yaml:15:47   do not saw again
     new.yaml:15:47   saw again
     "do not" is gone.
     Take care: A duty may turn on "not".
     What follows from a failure is worded anew: compare its harshness.

OPEN DECISION APPEARS in deck: cover to steel is not given (cover-to-steel)
     new.yaml:3:1   cover after   at least 2 in
     Without the present cover nobody can tell whether 2 in will be left.

REMARK: Both files are Grooving with revision 1, but their content differs: give the new text its
  own revision.

Senses are read from the wording of the jobs alone. What a change means for safety and cost is for
local codes and the licensed engineer of record.

2 tighter, 1 looser, 1 added, 1 reworded, 1 restated, 2 to take care of; \
1 open decision appears, none vanishes
"""


def editions() -> tuple[Source, Source]:
    text = text_of("rural-grooving")
    return read_text(text, "old.yaml"), read_text(patched(text, REVISION), "new.yaml")


def compared(old: Source, new: Source) -> Comparison:
    assert old.data is not None
    assert new.data is not None
    return compare(build_job(old.data), build_job(new.data), (), (COVER,))


def test_every_revised_requirement_is_told_and_nothing_else() -> None:
    changes = compared(*editions()).changes

    found = [(each.area, each.label, each.sense.value, each.bears) for each in changes]
    assert found == CHANGES


def test_the_page_that_is_read_out() -> None:
    old, new = read_text(SMALL, "old.yaml"), read_text(SMALL_NEW, "new.yaml")

    assert comparison_text(compared(old, new), old.place, new.place) == PAGE


def test_a_pipeline_finds_every_value_with_its_place() -> None:
    old, new = editions()

    answer = json.loads(comparison_json(compared(old, new), old.place, new.place))

    depth = answer["changes"][0]
    assert list(answer) == ["counts", "changes", "findings", "remarks", "summary", "notice"]
    assert depth["new"]["path"] == f"{MAIN}.groove.depth"
    for side, source in (("old", old), ("new", new)):
        line = source.line(depth[side]["line"])
        assert line[depth[side]["column"] - 1 :] == depth[side]["written"]
    assert answer["counts"]["tighter"] == 2
    appeared = answer["findings"]["appeared"][0]
    assert appeared["slug"] == "cover-to-steel"
    behind = [answer["changes"][index]["label"] for index in appeared["touched_by"]]
    assert behind == ["cover to steel after cutting"]


def test_a_finding_is_told_with_the_change_behind_it() -> None:
    old, new = editions()

    text = comparison_text(compared(old, new), old.place, new.place)

    assert "     Touched by: cover to steel after cutting added.\n" in text


def test_findings_are_counted_by_grade() -> None:
    conflict = replace(COVER, grade=Grade.CONFLICT)
    changed = AlteredFinding(old=COVER, new=replace(COVER, says="Now 1 in is asked for."))
    comparison = Comparison(
        appeared=(COVER, COVER, conflict, conflict), vanished=(conflict,), altered=(changed,)
    )
    old, new = editions()

    text = comparison_text(comparison, old.place, new.place)

    assert text.endswith(
        "no requirement changed; 2 conflicts and 2 open decisions appear, 1 conflict vanishes\n"
    )
    assert "OPEN DECISION STAYS, with other values in deck: cover to steel is not given" in text
    assert "CONFLICT VANISHES in deck" in text


def test_a_change_without_findings_says_so() -> None:
    old, new = editions()
    assert old.data is not None
    assert new.data is not None

    comparison = compare(build_job(old.data), build_job(new.data))

    assert summary(comparison).endswith("; no finding appears or vanishes")


def test_two_equal_jobs_are_said_to_be_equal() -> None:
    old, _ = editions()

    assert comparison_text(Comparison(), old.place, old.place) == "Nothing differs.\n"
