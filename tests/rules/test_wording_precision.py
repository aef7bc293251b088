"""Sentences as good writers write them raise nothing: a false alarm costs a reader."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
import yaml

from specwriter.rules import all_rules, run_rules
from specwriter.rules.wording import term_defined_again
from tests.support import job

CLAUSES = Path(__file__).parents[2] / "clauses"
RULES = [rule for rule in all_rules() if rule.topic == "wording"]
SOUND = """\
measured with a steel rule at the same 10 places
the plan area shown on sheet 12, each area once
regrind the lot within the depth limit of 1/2 in, once
saw the grooves again to 3/16 in in the same pass
remove and replace the slab by the partial-depth repair of section 603
10 ft straightedge laid across the joint, gap read with a feeler gauge to 1/64 in
in the shift in which the lane is ground, before it opens to traffic
at most 7 days after the last pass
every 100 ft in each wheel path, beginning 10 ft from the start
bridge decks, approach slabs, and 25 ft on each side of a manhole frame
the lowest third of the lot is paid at 95 percent of the contract unit price
the county landfill at Mill Road, permit 12-345
clean the lane with a vacuum sweeper and test again
the mean of ten readings is not below 0.8 mm and no reading below 0.5 mm
traffic control, lane closure and flaggers
certified under AASHTO R 56-14 (2018) in the 12 months before use
area between the lane lines, with no addition for overlap
the third result governs
cores at random stations drawn with the agency present
replace the blade that failed before the next shift
residue collection, haul and disposal at a permitted site
water, blades, spacers and wear
noise measured by AASHTO T 360-16 at 60 mph
depth gauge with a 1/8 in tip
smooth tyre, ASTM E524-08
two passes at right angles
the slab is cut to full depth and lifted out
grade 60 dowels, epoxy coated
not less than 28 days
hauled in tight tanks to the plant of the contractor
ground area of the lot less castings over 1 SY
all lots of one night
as shown in Table 3
regrind each segment above 75 in/mi once, at most 1/4 in deep
no unground strip wider than 0 in is left between passes
the residue does not flow into a gutter, drain or open lane
a uniform spacing of 3/4 in
the approved equipment list stays on the machine
no more than two failed blades in a head
areas that are ground twice are measured once
in excess of 0.5 in over 25 ft
the owner of the rail crossing is told 14 days before
the Contractor's competent person keeps the log of 29 CFR 1926.1153
no payment is made for area outside of the limits
straightedge of 10 ft, laid parallel to the centerline
sealant by ASTM D5893-16
a loop of 4 turns, AWG 14
cover over the bars is read with a cover meter on a grid of 5 ft
residue is pumped to the tank truck and hauled to the permitted site
a texture within 0.2 mm of the first
the head is set level to 1/8 in over its width
grooves straight within 1/4 in over 50 ft
a blade with a sharp rim and a true diameter of 14 in
even where two machines work in one closure
the same is true of the second head
the smooth wheel path of the loop
"""
FAULTY = """\
grind the high spots as directed by the Engineer
repair spalls to the satisfaction of the owner
regrind transverse and/or longitudinal joints
the lane has a uniform texture
remove the residue in a timely manner
measured per the current AASHTO method
at places chosen by ASTM D3665
depth within ± 1/32
grooves of about 1/8 in
test as often as required
residue is permitted to enter the gutter
holidays between passes may remain
regrind until smooth
remedy: [insert remedy]
to be determined
all applicable requirements of the local authority
such other tests as the plans show
cover meter or approved equal
the Contractor may be required to regrind
at a place to be agreed
minimum disruption to traffic
hauled to an approved site
regrind because traffic complains
regrind each ALR
a lot means 500 ft of lane
by an experienced operator
unless otherwise directed, once
where the Agency deems it necessary
as the case may be
remove any objectionable material
at a later date
with a minimum of disruption
use of other equipment may be permitted as approved by the Engineer
repair all damage without undue delay
the edges are left smooth and true
the edges shall be true
cut to a true grade
the surface must be even and the edges sharp
saw the grooves true to the line
"""


@pytest.mark.parametrize("text", FAULTY.splitlines())
def test_a_faulty_text_raises_something(text: str) -> None:
    patches = {
        "areas.mainline.testing.texture": {"remedy": text},
        "areas.mainline.coverage": {"unground_strip": "at most 0 in"},
    }

    assert run_rules(job("diamond_grinding", patches), RULES).findings


def test_the_terms_of_the_provision_are_those_of_its_clause() -> None:
    clause = (CLAUSES / "common" / "definitions.md").read_text("utf-8")
    defined = {each.lower() for each in re.findall(r"\*([A-Za-z ]+)\* means", clause)}

    assert set(term_defined_again.DEFINED) <= defined


@pytest.mark.parametrize("text", SOUND.splitlines())
@pytest.mark.parametrize("key", ["remedy", "where", "retest"])
def test_a_sound_text_raises_nothing(key: str, text: str) -> None:
    built = job("diamond_grinding", {"areas.mainline.testing.texture": {key: text}})

    assert [f"{each.slug}: {each.says}" for each in run_rules(built, RULES).findings] == []


ROWS = yaml.safe_load((Path(__file__).parent / "flagged_words.yaml").read_text("utf-8"))


def found_in(text: str) -> list[str]:
    built = job("diamond_grinding", {"areas.mainline.testing.texture": {"remedy": text}})
    return [f"{each.slug}: {each.says}" for each in run_rules(built, RULES).findings]


@pytest.mark.parametrize("row", ROWS)
def test_a_word_that_is_taught_is_found_where_it_is_vague_and_only_there(row: str) -> None:
    told = ROWS[row]

    assert "left" in told or (found_in(told["flagged"]) and found_in(told["sound"]) == [])
