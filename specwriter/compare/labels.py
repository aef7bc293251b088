"""Plain words for a place in a job: what a reader at a meeting would call it."""

from __future__ import annotations

from specwriter.compare.meaning import entry_of

Key = tuple[str, ...]

_NAMES: dict[str, str] = {
    "groove.width": "groove width",
    "groove.width_at_bottom": "groove width at the bottom",
    "groove.depth_on_bridges": "groove depth on bridges",
    "groove.depth_over_loops": "groove depth over loop detectors",
    "groove.spacing": "groove spacing, centre to centre",
    "groove.clear_gap": "clear gap between grooves",
    "groove.per_foot": "grooves per foot",
    "groove.per_metre": "grooves per metre",
    "groove.close_spacing": "spacing that counts as close",
    "groove.close_share": "share of close spacings",
    "groove.width_basis": "what the groove width is measured on",
    "groove.alignment": "groove alignment",
    "groove.alignment_over": "length over which groove alignment is judged",
    "blade.segment": "cutting segment of the blade",
    "blade.core": "blade core",
    "blade.spacer": "spacer between blades",
    "blade.per_head": "blades on a head",
    "blade.failed_allowed": "failed blades allowed",
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
    "coverage.share": "share of the area textured",
    "coverage.window_width": "width of the coverage window",
    "coverage.window_length": "length of the coverage window",
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
    "smoothness.index": "smoothness index",
    "smoothness.limit": "smoothness limit",
    "smoothness.improvement": "improvement of smoothness",
    "smoothness.whichever": "which smoothness limit governs",
    "smoothness.blanking_band": "blanking band",
    "smoothness.instrument": "instrument for smoothness",
    "smoothness.simulated": "simulated profilograph",
    "smoothness.sensor": "sensor of the profiler",
    "smoothness.sensor_width": "width of the profiler's sensor",
    "smoothness.wheel_paths": "wheel paths profiled",
    "smoothness.runs": "profiler runs",
    "smoothness.segment": "smoothness segment",
    "smoothness.partial_segment": "partial smoothness segment",
    "smoothness.reported_to": "rounding of the smoothness index",
    "smoothness.measured": "when smoothness is measured",
    "smoothness.exclusions": "places left out of smoothness",
    "smoothness.certification": "certification of the profiler",
    "smoothness.agreement": "agreement of two profilers",
    "localized.limit": "limit on localized roughness",
    "localized.base": "base length of localized roughness",
    "pay_adjustment.schedule": "pay adjustment for smoothness",
    "pay_adjustment.index": "index of the pay adjustment",
    "pay_adjustment.after_correction": "pay of a corrected segment",
    "pay_adjustment.cap": "cap of the pay adjustment",
    "pay_adjustment.applies_to": "what the pay adjustment applies to",
    "texture_depth.measure": "measure of texture depth",
    "texture_depth.at_least": "texture depth, lower limit",
    "texture_depth.at_most": "texture depth, upper limit",
    "texture_depth.single_at_least": "texture depth of a single reading, lower limit",
    "texture_depth.surface": "surface on which texture depth is measured",
    "texture_depth.direction": "direction of the texture profile",
    "texture_depth.land_texture": "texture depth of the land",
    "friction.at_least": "friction, lower limit",
    "noise.at_most": "noise, upper limit",
    "noise.age": "age at which noise is measured",
    "residue.regime": "what becomes of the residue",
    "residue.ph": "pH of the residue",
    "residue.setback": "setback of residue from water",
    "residue.permit_by": "who gets the permit for the residue",
    "trial_section.required": "trial section required",
    "trial_section.before": "time between trial section and production",
    "trial_section.tries": "tries at the trial section",
    "trial_section.paid": "payment for the trial section",
    "trial_section.shows": "what the trial section must show",
    "trial_section.method": "how the trial section is measured",
    "trial_section.response": "answer to the trial section",
    "trial_section.production": "beginning of production",
    "sequence.order": "order of work",
    "joint_match": "match at joints",
    "pay_items.measured_as": "how it is measured",
    "pay_items.includes": "included work",
    "pay_items.excludes": "excluded work",
    "limits.from": "start of the limits",
    "limits.to": "end of the limits",
    "limits.width": "width of the limits",
    "limits.lanes": "lanes of the limits",
    "limits.roadway": "roadway of the limits",
    "project.date": "date of the provision",
    "project.revision": "revision of the provision",
}

_TEST_WORDS: dict[str, str] = {
    "by": "who tests",
    "where": "where",
    "when": "when",
    "readings": "number of readings",
    "statistic": "statistic judged",
    "pay_effect": "effect on pay",
}
_ENTRY_NOUNS: dict[str, str] = {
    "pay_items": "pay item",
    "submittals": "submittal",
    "limits": "stretch of the area",
    "bands": "pay band",
    "work_windows": "work window",
    "accepted": "acceptance of a finding",
    "reasons": "reason of a value",
    "sequence": "step in the order of work",
    "area": "area",
}


def label_of(key: Key, path: str) -> str:
    """What the place is called; ``path`` supplies the ids of tests, pay items and submittals."""
    if key[0] == "also_stated" and len(key) > 1:
        return f"{label_of(key[1:], path)} of another document"
    if key[0] == "alternatives" and len(key) > 1:
        return f"{label_of(key[1:], path)} of an alternative"
    parts, last = path.split("."), key[-1]
    if "tiers" in key:
        of = f"{_test(parts[: parts.index('tiers')])}, tier"
        return of if last == "tiers" else f"{of}, {_words(last)}"
    if len(key) >= 2 and key[-2] in ("testing", "test"):
        return f"{_test(parts[:-1])}, {_TEST_WORDS.get(last, _words(last))}"
    if last in ("testing", "test"):
        return _test(parts)
    if key[0] in ("pay_items", "submittals"):
        return _entry(key, parts)
    if name := _NAMES.get(last) or entry_of(_NAMES, key):
        return name
    if last in _ENTRY_NOUNS:
        return _ENTRY_NOUNS[last]
    owner = key[-2] if len(key) > 1 else ""
    if owner in ("", "conditions", "project"):
        return _words(last)
    if owner in _ENTRY_NOUNS:
        return f"{_ENTRY_NOUNS[owner]}, {_words(last)}"
    return f"{_words(owner)} {_words(last)}"


def _test(parts: list[str]) -> str:
    """The name of a test from its path: its id under ``testing``, or the noun that owns it."""
    return f"{_words(parts[-1] if parts[-1] != 'test' else parts[-2])} test"


def _entry(key: Key, parts: list[str]) -> str:
    entry = f"{_ENTRY_NOUNS[key[0]]} {_words(parts[1])}"
    if len(key) == 1:
        return entry
    return f"{entry}, {entry_of(_NAMES, key) or _words(key[-1])}"


def _words(key: str) -> str:
    return key.replace("_", " ")
