"""Sentences as good writers write them raise nothing: a false alarm costs a reader."""

from __future__ import annotations

import pytest

from specwriter.rules import all_rules, run_rules
from tests.support import job

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
"""


@pytest.mark.parametrize("text", SOUND.splitlines())
@pytest.mark.parametrize("key", ["remedy", "where", "retest"])
def test_a_sound_text_raises_nothing(key: str, text: str) -> None:
    built = job("diamond_grinding", {"areas.mainline.testing.texture": {key: text}})

    assert [f"{each.slug}: {each.says}" for each in run_rules(built, RULES).findings] == []
