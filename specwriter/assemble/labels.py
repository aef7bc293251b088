"""Plain words for paths and for the fixed words of the job file."""

from __future__ import annotations

from specwriter.model import Job
from specwriter.model.labels import label_of

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
_AMERICAN = {"metre": "meter", "tyre": "tire", "kerb": "curb", "neighbours": "neighbors"}
"""Words of the job file as documents spell them."""


def words(text: str) -> str:
    """A fixed word of the job file, such as ``line_laser``, in plain words."""
    return _WORDS.get(text, text.replace("_", " "))


def short_label(path: str) -> str:
    """What a path stands for, without saying where; a later entry of a list with its number."""
    number = next((int(key) for key in reversed(path.split(".")) if key.isdigit()), 0)
    text = f"{label_of(path)}, no. {number + 1}" if number else label_of(path)
    for word, american in _AMERICAN.items():
        text = text.replace(word, american)
    return text


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
