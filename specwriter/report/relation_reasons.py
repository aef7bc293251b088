"""Why a clash of quantities matters on the road: one reason for each relation, by its slug.

The reasons are common practice, no source; what a relation proves stands with the relation.
"""

from __future__ import annotations

_BLADES = (
    "One head cuts with one set of blades and spacers. Where the figures do not belong to one "
    "head, the contractor builds the cheapest one, and every reading against the others fails."
)
_PATTERN = (
    "All these figures describe one pattern of grooves. Where they describe two, the inspector "
    "measures one and the contractor has cut the other, and both have the contract on their side."
)
_LEFT = (
    "What is cut away does not come back. Where the cut that one clause allows goes deeper than "
    "another clause leaves room for, the limit is found broken when nothing can be done about it."
)
_COVERED = (
    "The machine cuts strips, and the strips must make a lane. A strip that no pass reaches stays "
    "bare, or is cut by a pass that nobody has paid for."
)
_FRICTION = (
    "Two limits on one surface are met together or not at all. Where they ask for two surfaces, "
    "the stricter one decides alone, and mostly nobody meant it to."
)
_NOISE = (
    "A lane has one sound, however and whenever it is measured. A limit that the texture cannot "
    "keep fails without any fault of the contractor, and no blade mends it."
)
_TEXTURE = (
    "The grooves and the land between them make the texture depth; nothing else does. Where the "
    "dimensions pass and the texture fails, the contractor has cut what was ordered, and the owner "
    "pays for the second cut."
)
_TWO_RIDES = (
    "Two limits on the ride that ask for two different surfaces send lanes that pass one of them "
    "to the grinder for the other. Whoever priced the looser one claims the difference."
)
_STEPS = (
    "A joint that is within its tolerance is still a bump. Where the bumps that are allowed use up "
    "another limit of the ride, work that passes joint by joint fails as a lane."
)

REASONS: dict[str, str] = {
    "blades-on-the-head": _BLADES,
    "core-spacer-spacing": _BLADES,
    "flush-grind": _BLADES,
    "land-of-the-blades": _BLADES,
    "one-blade-thickness": (
        "A blade has two thicknesses: the core that the spacer touches, and the wider rim that "
        "cuts. Where only one is given, the other is taken to be equal; if the figures then clash, "
        "mostly core and rim were mixed up."
    ),
    "one-flush-grind-thickness": (
        "A blade has two thicknesses: the core that the spacer touches, and the wider rim that "
        "cuts. Where only one is given, the other is taken to be equal; if the figures then clash, "
        "mostly core and rim were mixed up."
    ),
    "segment-in-groove": (
        "A saw cannot cut a slot that is narrower than its own rim. Where the groove is narrower "
        "than the blade, no such groove can be cut with it."
    ),
    "segment-land-spacing": _BLADES,
    "cut-wider-than-the-segment": (
        "A blade wobbles and cuts a little wider than its rim, but not twice as wide. A groove far "
        "wider than the blade is cut by another blade than the one that was ordered."
    ),
    "share-lost-by-failed-blades": (
        "Each failed blade leaves one groove out along the whole window. A rule that lets blades "
        "fail and a share that must be textured can only both stand if the first does not use up "
        "the second."
    ),
    "passes-reach-the-edges": _COVERED,
    "width-of-passes": _COVERED,
    "friction-at-two-speeds": _FRICTION,
    "ribbed-and-smooth-friction": _FRICTION,
    "smooth-above-ribbed": (
        "A ribbed tyre carries its own channels for the water, a smooth one needs those of the "
        "surface, so it shows less. A limit the other way round is mostly two figures interchanged."
    ),
    "clear-gap-land": _PATTERN,
    "clear-gap-spacing": (
        "Spacing runs from centre to centre, the clear gap from edge to edge. Mixed up, the "
        "grooves come closer or farther apart by a whole groove width, over the whole job."
    ),
    "close-spacing-in-the-pattern": (
        "A share of a random pattern is to be closely spaced, so that it makes no tone. Where no "
        "spacing of the pattern counts as close, that share cannot be had."
    ),
    "foot-and-metre": _PATTERN,
    "groove-land-spacing": _PATTERN,
    "grooves-per-foot": _PATTERN,
    "grooves-per-metre": _PATTERN,
    "ridge-height": (
        "On a ground surface the ridge stands as high as the groove beside it is deep: it is one "
        "height, measured from two ends. Two figures for it fail each other."
    ),
    "trapezoid": (
        "A saw-cut groove that is wider at the bottom than at the top cannot be cut, and its edges "
        "would break off under the first wheel. Mostly top and bottom were interchanged."
    ),
    "noise-louder-with-years": _NOISE,
    "noise-below-the-quiet-end": _NOISE,
    "noise-at-the-roadside": _NOISE,
    "asphalt-after-out-of-reach": _LEFT,
    "cover-after-out-of-reach": (
        "Cover keeps water and salt from the steel. Where the cuts that are allowed take more of "
        "it than may go, the bars rust and burst the surface years after the work was accepted."
    ),
    "pass-and-whole": (
        "One pass is a part of the whole. Where a single pass may take more than all of them "
        "together, one of the two limits is never applied."
    ),
    "reservoir-after-out-of-reach": (
        "The sealant needs its depth to hold. Where grinding takes more of the joint than may go, "
        "the new seal is too shallow, lets go in the first winter, and the joint takes in water."
    ),
    "removal-within-the-slab": (
        "A machine cannot remove more than is there. A figure of this size is mostly a slip of the "
        "unit or of the decimal point."
    ),
    "section-modulus-out-of-reach": (
        "The bending strength of a slab falls with the square of its thickness, so a tenth less "
        "thickness is nearly a fifth less strength. A cap on removal that allows it shortens the "
        "life of the pavement without anybody having decided so."
    ),
    "step-after-removal": (
        "A step at a joint is ground away by lowering its high side. Where less may be removed "
        "than the step is high, the rest of it stays, and the joint fails at each test."
    ),
    "thickness-after-out-of-reach": _LEFT,
    "bump-of-a-step": _STEPS,
    "bump-and-localized-roughness": _TWO_RIDES,
    "half-car-at-most-mean": (
        "The half-car index is never above the mean of the two wheel paths. A limit that has it "
        "above can never decide, so it says nothing."
    ),
    "half-car-and-mean": _TWO_RIDES,
    "improvement-of-the-existing": (
        "The existing roughness, the improvement and the limit are one sum. Where they do not add "
        "up, the contractor meets one of them and fails the other on the same lane."
    ),
    "localized-of-a-step": _STEPS,
    "localized-of-the-segment": (
        "Every segment has a worst place. Where the localized limit lies near the limit of the "
        "segment, half of the segments that just pass still go back to the grinder."
    ),
    "profile-index-and-roughness": _TWO_RIDES,
    "improvement-beyond-what-is-published": (
        "Grinding takes off what stands up; it does not fill what lies low. A reduction that no "
        "project has reported is promised by the contract and delivered by nobody."
    ),
    "improvement-at-the-edge-of-what-is-published": (
        "Few projects have reached such a reduction. Bidders who know that add money, the others "
        "add claims."
    ),
    "roughness-of-the-parts": (
        "Each step, each curled slab and each long wave that is allowed takes its part of the "
        "ride. Where together they take all of it, a lane can pass each test and fail the index."
    ),
    "straightedge-across-a-joint": _STEPS,
    "straightedge-on-the-surface": _TWO_RIDES,
    "wave-left-by-the-wheelbase": (
        "A grinding machine rides on the surface that it cuts. It goes up and down with waves "
        "longer than itself and leaves them in the road, however often it comes back."
    ),
    "land-texture-out-of-reach": (
        "Between the grooves there is only the land, with the texture that it was given when it "
        "was cast or ground. No groove beside it makes it rougher."
    ),
    "texture-depth-at-end-of-life": (
        "Traffic wears the lands down. Where the texture at the start is hardly more than that at "
        "the end of life, the surface is worn out years before it should be."
    ),
    "profile-and-patch-limit": (
        "Two limits on one surface, by two methods, pass for one requirement. Where the patch asks "
        "for more than the profile, the surface that the profile accepts is refused by the patch."
    ),
    "profile-depth-by-circular-track": _TEXTURE,
    "profile-depth-by-older-edition": _TEXTURE,
    "profile-depth-by-edition-of-2019": _TEXTURE,
    "texture-depth-out-of-reach": _TEXTURE,
    "single-texture-depth-out-of-reach": _TEXTURE,
    "posted-speed-above-onset-speed": (
        "On a film of water a tyre can lose the road. The relations say from which speed it may, "
        "for one tyre and steady rain; a posted speed above that asks for a second look at slope, "
        "texture and drainage."
    ),
    "dimensions-cannot-hold-together": (
        "Each two of these requirements can be built, all of them together cannot. Nobody sees it "
        "by reading, and the contractor finds it out with the machine on the road."
    ),
    "stated-twice-with-different-values": (
        "Two values for one thing are two contracts. Each side works by the one that suits it, and "
        "the difference is settled when the work is done."
    ),
}
