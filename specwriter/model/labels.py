"""What the places of a job are called at a meeting, and how several of them are listed."""

from __future__ import annotations

from collections.abc import Sequence

_NAMES: dict[str, str] = {
    "limits": "limits of the work",
    "limits.from": "start of the limits",
    "limits.to": "end of the limits",
    "limits.width": "width of the limits",
    "limits.lanes": "lanes of the limits",
    "limits.roadway": "roadway of the limits",
    "groove.width_at_bottom": "groove width at the bottom",
    "groove.depth_over_loops": "groove depth over loop detectors",
    "groove.clear_gap": "clear gap between grooves",
    "groove.per_foot": "number of grooves per foot",
    "groove.per_metre": "number of grooves per metre",
    "groove.close_spacing": "spacing that counts as close",
    "groove.close_share": "share of close spacings",
    "groove.width_basis": "what the groove width is measured on",
    "groove.alignment_over": "length over which groove alignment is judged",
    "blade": "blades",
    "blade.segment": "cutting segment of the blade",
    "blade.spacer": "spacer between blades",
    "blade.per_head": "number of blades on a head",
    "blade.failed_allowed": "number of failed blades allowed",
    "flush_grind.segment": "cutting segment of the flush grind",
    "flush_grind.core": "blade core of the flush grind",
    "flush_grind.spacer": "spacer of the flush grind",
    "flush_grind.land": "land of the flush grind",
    "flush_grind.operations": "operations of the flush grind and the grooves",
    "equipment.head_width": "cutting width of the head",
    "equipment.wheelbase": "wheelbase of the machine",
    "equipment.mass": "mass of the machine",
    "equipment.several_machines": "several machines in one lane",
    "removal.depth": "depth of removal",
    "removal.depth_per_pass": "depth of removal in one pass",
    "removal.cover_after": "cover to steel after cutting",
    "removal.thickness_after": "slab thickness after cutting",
    "removal.reservoir_after": "depth of sealant reservoir after cutting",
    "removal.asphalt_after": "asphalt thickness after cutting",
    "removal.overlay_after": "overlay thickness after cutting",
    "removal.section_modulus_after": "share of section modulus after cutting",
    "coverage": "what is textured and what is left",
    "coverage.share": "share of the area textured",
    "coverage.window_width": "width of the coverage window",
    "coverage.window_length": "length of the coverage window",
    "coverage.passes": "number of passes",
    "coverage.overlap": "overlap of passes",
    "coverage.unground_strip": "strip left unground",
    "coverage.edge_offset": "distance left at the edge",
    "coverage.joint_offset": "distance left at joints",
    "coverage.fixture_offset": "distance left at fixtures",
    "coverage.cable_offset": "distance left at an arresting cable",
    "coverage.pattern": "pattern of coverage",
    "cross_slope.tolerance": "deviation across the lane",
    "cross_slope.over": "length over which cross slope is judged",
    "straightedge.tolerance": "gap under the straightedge",
    "smoothness": "ride",
    "smoothness.improvement": "improvement of smoothness",
    "smoothness.whichever": "which smoothness limit governs",
    "smoothness.blanking_band": "blanking band",
    "smoothness.instrument": "instrument for smoothness",
    "smoothness.simulated": "simulated profilograph",
    "smoothness.sensor": "sensor of the profiler",
    "smoothness.sensor_width": "width of the profiler's sensor",
    "smoothness.wheel_paths": "wheel paths profiled",
    "smoothness.runs": "number of profiler runs",
    "smoothness.partial_segment": "partial smoothness segment",
    "smoothness.reported_to": "rounding of the smoothness index",
    "smoothness.measured": "when smoothness is measured",
    "smoothness.exclusions": "places left out of smoothness",
    "smoothness.certification": "certification of the profiler",
    "smoothness.agreement": "agreement of two profilers",
    "smoothness.localized": "localized roughness",
    "smoothness.pay_adjustment": "pay adjustment for ride",
    "localized.limit": "limit on localized roughness",
    "localized.base": "base length of localized roughness",
    "pay_adjustment.schedule": "choice of pay adjustment for ride",
    "pay_adjustment.index": "index of the pay adjustment",
    "pay_adjustment.bands": "rows of the pay table",
    "pay_adjustment.after_correction": "pay of a corrected segment",
    "pay_adjustment.cap": "cap of the pay adjustment",
    "pay_adjustment.applies_to": "what the pay adjustment applies to",
    "bands.index": "index in a row of the pay table",
    "bands.pay": "pay in a row of the pay table",
    "bands.action": "action in a row of the pay table",
    "texture_depth.measure": "measure of texture depth",
    "texture_depth.at_least": "lower limit of texture depth",
    "texture_depth.at_most": "upper limit of texture depth",
    "texture_depth.single_at_least": "lower limit of a single texture depth",
    "texture_depth.end_of_life_at_least": "lower limit of texture depth at the end of life",
    "texture_depth.method": "method of texture depth",
    "texture_depth.edition": "edition of the method of texture depth",
    "texture_depth.surface": "surface on which texture depth is measured",
    "texture_depth.direction": "direction of the texture profile",
    "texture_depth.land_texture": "texture depth of the land",
    "friction.measure": "measure of friction",
    "friction.at_least": "lower limit of friction",
    "friction.speed": "speed of the friction test",
    "friction.tyre": "tyre of the friction test",
    "noise.measure": "measure of noise",
    "noise.at_most": "upper limit of noise",
    "noise.speed": "speed of the noise test",
    "noise.age": "age at which noise is measured",
    "testing": "tests of the dimensions",
    "also_stated": "what another document states",
    "also_stated.in": "name of another document",
    "joint_match": "match at joints",
    "project.date": "date of the provision",
    "project.revision": "revision of the provision",
    "project.base_section": "base section and what is done to it",
    "base_section.action": "what is done to the base section",
    "changes.at": "place of a change to the base section",
    "changes.action": "action of a change to the base section",
    "changes.clauses": "clauses of a change to the base section",
    "conditions": "site conditions",
    "conditions.bridges_within": "whether bridges lie within the limits",
    "conditions.clear_within": "time to clear the pavement",
    "conditions.existing_mri": "existing MRI",
    "conditions.in_pavement_lights": "in-pavement lights",
    "conditions.noise_sensitive_neighbours": "noise-sensitive neighbours",
    "conditions.open_between_shifts": "whether traffic returns between shifts",
    "conditions.pavement": "kind of pavement",
    "conditions.pavement_age": "age of the pavement",
    "conditions.repairs_before": "repairs before the work",
    "conditions.two_wheelers": "two-wheelers",
    "coarse_aggregate.hardness": "hardness of the coarse aggregate",
    "pay_items.measured_as": "how it is measured",
    "pay_items.includes": "included work",
    "pay_items.excludes": "excluded work",
    "submittals.due": "time due",
    "submittals.due_before": "event it is due before",
    "submittals.response": "response time",
    "residue": "handling of the residue",
    "residue.regime": "what becomes of the residue",
    "residue.ph": "pH of the residue",
    "residue.setback": "setback of residue from water",
    "residue.permit_by": "who gets the permit for the residue",
    "residue.disposal_site": "disposal site of the residue",
    "trial_section.required": "whether a trial section is required",
    "trial_section.before": "time between trial section and production",
    "trial_section.tries": "number of tries at the trial section",
    "trial_section.paid": "payment for the trial section",
    "trial_section.shows": "what the trial section must show",
    "trial_section.method": "how the trial section is measured",
    "trial_section.response": "answer to the trial section",
    "trial_section.production": "beginning of production",
    "sequence": "order of work",
    "settings": "house settings",
    "settings.duty_verb": "house style of shall and must",
    "settings.number_style": "house style of numbers",
    "usual.of": "what the house calls a size of usual",
    "usual.range": "range that the house calls usual",
}
"""The last two keys of a place, or a noun by itself, that do not read well as they are."""

_ENTRIES = {
    "pay_items": "pay item",
    "submittals": "submittal",
    "limits": "stretch of the area",
    "bands": "row of the pay table",
    "work_windows": "work window",
    "accepted": "acceptance of a finding",
    "reasons": "reason of a value",
    "sequence": "step in the order of work",
    "alternatives": "alternative",
    "revisions": "revision of the provision",
    "approvals": "line of the approval block",
    "changes": "change to the base section",
    "usual": "size that the house calls usual",
}
"""One entry of a list or of a mapping."""

_OF_TESTS = {
    "by": "who makes",
    "where": "place of",
    "when": "time of",
    "readings": "number of readings of",
    "share": "share of readings in",
    "pay_effect": "effect on pay of",
    "tiers": "tiers of",
}
_OF_OTHERS = {"also_stated": "of another document", "alternatives": "of an alternative"}
_OWNERS = {
    **{noun: f"{entry}: " for noun, entry in _ENTRIES.items()},
    **dict.fromkeys(("conditions", "project", "pay_items", "submittals"), ""),
    "settings": "house setting ",
}
"""What is said before a key of these nouns; all others are named as they are."""


def and_list(words: Sequence[str]) -> str:
    """``a``, ``a and b``, ``a, b and c``."""
    return "".join(f"{joint}{word}" for joint, word in zip(joints(len(words)), words, strict=True))


def joints(count: int) -> tuple[str, ...]:
    """What stands before each of so many members of a list."""
    return ("", *[", "] * (count - 2), *[" and "] * (count > 1))[:count]


def label_of(path: str) -> str:
    """What a place is called, without its area, pay item or submittal."""
    keys = path.split(".")
    if keys[0] == "areas":
        keys = keys[2:] or ["area"]
    elif keys[0] in ("pay_items", "submittals") and len(keys) > 1:
        keys = [keys[0], *(keys[2:] or ["0"])]
    return _label(keys)


def _label(keys: Sequence[str]) -> str:
    names = [key for key in keys if not key.isdigit()]
    owner = names[0]
    if owner in _OF_OTHERS and len(names) > 1 and ".".join(names) not in _NAMES:
        rest = keys[2:] if keys[1].isdigit() else keys[1:]
        return f"{_label(rest)} {_OF_OTHERS[owner]}"
    if keys[-1].isdigit() and names[-1] in _ENTRIES:
        return _ENTRIES[names[-1]]
    if "test" in names or (owner == "testing" and len(names) > 1):
        return _of_test(names)
    if name := _NAMES.get(".".join(names[-2:])):
        return name
    return _plainly(names[-2:])


def _of_test(names: Sequence[str]) -> str:
    """``testing.groove_depth.where``: place of the groove depth test."""
    at = names.index("test") if "test" in names else 1
    test = f"{_words(names[at - 1] if names[at] == 'test' else names[at])} test"
    below = names[at + 1 :]
    if not below:
        return test
    what = _OF_TESTS.get(below[-1], f"{_words(below[-1])} of")
    return f"{what} {'a tier of ' if len(below) > 1 else ''}the {test}"


def _plainly(names: Sequence[str]) -> str:
    *owners, last = names
    before = _OWNERS.get(owners[0], f"{_words(owners[0])} ") if owners else ""
    return f"{before}{_words(last)}"


def _words(key: str) -> str:
    return key.replace("_", " ")
