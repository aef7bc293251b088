"""Plain words for paths and for the fixed words of the job file."""

from __future__ import annotations

from specwriter.model import Job

_WORDS = {
    "at_contract_price": "at the contract unit price",
    "included": "within the contract unit price of the texturing",
    "haul_and_spread": "haul and spread",
    "mean_and_each": "mean, and each reading",
    "share": "share of the readings",
    "each": "each reading",
    "both": "both",
    "centred_in_lane": "centered in the lane",
    "edge_to_edge": "from edge to edge",
    "full_lane": "the full lane",
    "rod_and_level": "rod and level",
    "wide_spot_laser": "wide-spot laser",
    "point_laser": "point laser",
    "line_laser": "line laser",
    "less_strict": "the less strict",
    "stricter": "the stricter",
    "one": "one",
}
_KEYS = {
    "ph": "pH",
    "existing_mri": "existing MRI",
    "from": "start",
    "to": "end",
    "per_foot": "number per foot",
    "per_metre": "number per meter",
    "at_least": "least value",
    "at_most": "greatest value",
    "single_at_least": "least single value",
    "by": "who tests",
    "when": "time",
    "where": "place",
    "lot": "lot",
    "due_before": "event it is due before",
    "due": "time due",
    "response": "response time",
    "readings": "number of readings",
    "pay_effect": "effect on pay",
    "disposal_site": "disposal site",
    "permit_by": "holder of the permit",
    "tyre": "tire",
}
_PHRASES = {
    "groove.per_foot": "grooves per foot",
    "groove.per_metre": "grooves per meter",
    "groove.close_spacing": "spacing that counts as close",
    "groove.close_share": "share of the spacings that are close",
    "flush_grind.operations": "operations of flush grind and grooves",
    "flush_grind.segment": "flush grind blade segment",
    "flush_grind.core": "flush grind blade core",
    "blade.failed_allowed": "failed blades allowed",
    "blade.per_head": "blades per head",
    "smoothness.index": "smoothness index",
    "base_section.action": "what is done to the base section",
    "base_section": "base section, and what is done to it",
}


def words(text: str) -> str:
    """A fixed word of the job file, such as ``line_laser``, in plain words."""
    return _WORDS.get(text, text.replace("_", " "))


def short_label(path: str) -> str:
    """What a path stands for, without saying where: ``groove width``."""
    keys = path.split(".")
    if keys[0] in ("areas", "pay_items", "submittals") and len(keys) > 1:
        keys = keys[2:] if len(keys) > 2 else [keys[0].removesuffix("s")]
    if keys[0] in ("project", "conditions") and len(keys) > 1:
        keys = keys[1:]
    if phrase := _PHRASES.get(".".join(keys)):
        return phrase
    if keys[0] == "testing" and len(keys) > 1:
        keys = [keys[1], "test", *keys[2:]]
    return " ".join(_key_words(key) for key in keys)


def label(path: str, job: Job) -> str:
    """What a path stands for and where: ``groove width, Route 9 travel lanes``."""
    keys = path.split(".")
    owner = _owner(keys, job) if len(keys) > 2 else ""
    return f"{short_label(path)}, {owner}" if owner else short_label(path)


def area_name(job: Job, key: str) -> str:
    """The name of an area, or its key in plain words when it has none."""
    area = job.areas.get(key)
    return area.name if area and area.name else key.replace("_", " ")


def _owner(keys: list[str], job: Job) -> str:
    match keys[0]:
        case "areas":
            return area_name(job, keys[1])
        case "pay_items":
            item = job.pay_items.get(keys[1])
            return f"pay item {item.name if item else words(keys[1])}"
        case "submittals":
            submittal = job.submittals.get(keys[1])
            return submittal.title if submittal and submittal.title else words(keys[1])
        case _:
            return ""


def _key_words(key: str) -> str:
    if key.isdigit():
        return str(int(key) + 1)
    return _KEYS.get(key, key.replace("_", " "))
