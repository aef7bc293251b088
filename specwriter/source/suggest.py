"""What somebody probably meant by a key or a word that a job file does not know."""

from __future__ import annotations

import re
from collections.abc import Sequence
from difflib import get_close_matches

from specwriter.source.schema import Route, homes

_LISTED = 16
"""So many known keys or words are listed in a message, not more."""

_KEYS = {
    "pitch": "spacing",
    "c_c": "spacing",
    "cc": "spacing",
    "center_to_center": "spacing",
    "centre_to_centre": "spacing",
    "on_center": "spacing",
    "groove_spacing": "spacing",
    "kerf": "width",
    "kerf_width": "width",
    "groove_width": "width",
    "groove_depth": "depth",
    "land_width": "width",
    "land_area": "land",
    "fin": "ridge",
    "fins": "ridge",
    "grooves_per_foot": "per_foot",
    "blades_per_foot": "per_foot",
    "grooves_per_metre": "per_metre",
    "grooves_per_meter": "per_metre",
    "blade_width": "segment",
    "cutting_segment": "segment",
    "cutting_width": "head_width",
    "feather": "feathering",
    "tire": "tyre",
    "type": "texture",
    "texture_type": "texture",
    "surface_type": "place",
    "mtd": "texture_depth",
    "mpd": "texture_depth",
    "macrotexture": "texture_depth",
    "iri": "smoothness",
    "mri": "smoothness",
    "ride": "smoothness",
    "roughness": "smoothness",
    "profiler": "instrument",
    "device_type": "instrument",
    "laser": "sensor",
    "slurry": "residue",
    "bid_item": "pay_item",
    "bid_items": "pay_items",
    "payment": "pay_items",
    "test_section": "trial_section",
    "test_strip": "trial_section",
    "control_strip": "trial_section",
    "adt": "daily_traffic",
    "aadt": "daily_traffic",
    "speed_limit": "posted_speed",
    "aggregate": "coarse_aggregate",
    "faulting": "existing_faulting",
    "thickness": "slab_thickness",
    "cover": "cover_to_steel",
    "owner": "agency",
    "client": "agency",
    "department": "agency",
    "units": "governing_units",
    "skid": "friction",
    "weight": "mass",
    "footprint": "sensor_width",
    "site": "conditions",
    "zones": "areas",
    "sections": "areas",
    "waivers": "accepted",
    "reason": "because",
}
_WORDS = {
    "grinding": "diamond_grinding",
    "cdg": "diamond_grinding",
    "ngcs": "next_generation_concrete_surface",
    "tining": "transverse_grooving",
    "jpcp": "jointed_plain_concrete",
    "jrcp": "jointed_reinforced_concrete",
    "crcp": "continuously_reinforced_concrete",
    "metric": "si",
    "imperial": "us",
    "english": "us",
    "us_customary": "us",
    "highway": "roadway",
    "road": "roadway",
    "mainline": "roadway",
    "bridge": "bridge_deck",
    "deck": "bridge_deck",
    "profiler": "inertial_profiler",
    "average": "mean",
    "max": "maximum",
    "min": "minimum",
    "owner": "agency",
    "engineer": "agency",
    "department": "agency",
    "sand_patch": "MTD",
    "no": "none",
    "false": "none",
    "concrete": "jointed_plain_concrete",
}


def plain(word: str) -> str:
    """A word in small letters with ``_`` for every run of spaces, hyphens and the like."""
    return re.sub(r"[^a-z0-9]+", "_", word.lower()).strip("_")


def similar(word: str, known: Sequence[str], cutoff: float = 0.6) -> str | None:
    """The known word most like this one, whatever its case, spaces and hyphens."""
    by_plain = {plain(candidate): candidate for candidate in known}
    near = get_close_matches(plain(word), by_plain, n=1, cutoff=cutoff)
    return by_plain[near[0]] if near else None


def meant_key(key: str, allowed: Sequence[str]) -> str | None:
    """The key of this block that was probably meant."""
    return _same_meaning(key, allowed) or similar(key, allowed, 0.7)


def _same_meaning(key: str, allowed: Sequence[str]) -> str | None:
    other = _KEYS.get(plain(key))
    return other if other in allowed else None


def about_key(key: str, route: Route, allowed: Sequence[str]) -> str:
    """What to do about a key that the block at ``route`` does not know."""
    if limit := _limit_key(key, allowed):
        return limit
    if plain(key) in ("tolerance", "plus_minus") and "width" in allowed:
        return "write the tolerance with its value, such as 3/16 in ± 1/16 in"
    if plain(key) in ("unit", "units", "value") and route and "unit" not in allowed:
        return "write number and unit together, such as 3/4 in"
    if route[-1:] == ("testing",) and (*route[:-1], key) in homes().get("test", ()):
        return f"the test of '{key}' stands under '{key}', in its key 'test'"
    if meant := meant_key(key, allowed):
        return f"did you mean '{meant}'?"
    other = key if key in homes() else _KEYS.get(plain(key)) or similar(key, list(homes()), 0.85)
    if other and (where := _where(other, route)):
        if other == key:
            return f"'{key}' belongs {where}"
        return f"did you mean '{other}'? It belongs {where}"
    if meant := similar(key, allowed):
        return f"did you mean '{meant}'?"
    return known("keys", allowed)


def _limit_key(key: str, allowed: Sequence[str]) -> str | None:
    match = re.fullmatch(r"(?:(max|min)(?:imum)?_(\w+)|(\w+?)_(max|min)(?:imum)?)", plain(key))
    base = (match[2] or match[3]) if match else None
    if match is None or base not in allowed:
        return None
    words = "at most" if (match[1] or match[4]) == "max" else "at least"
    return f"write the limit with its value: '{base}: {words} ...'"


def _where(key: str, route: Route) -> str | None:
    """In words, the block nearest to ``route`` that knows the key."""
    ranked = sorted({(_distance(home, route), home) for home in homes()[key]})
    best = [home for distance, home in ranked if distance == ranked[0][0]]
    return " or ".join(dict.fromkeys(_block(home, route) for home in best[:3])) or None


def _distance(home: Route, route: Route) -> int:
    shared = 0
    while shared < min(len(home), len(route)) and home[shared] == route[shared]:
        shared += 1
    # A test of something is named like the thing; the thing itself is meant more often.
    far = 4 if "testing" in home and "testing" not in route else 0
    return len(home) + len(route) - 2 * shared + far


def _block(home: Route, route: Route) -> str:
    if not home:
        return "at the left margin"
    owners = {"areas": "an area", "pay_items": "a pay item", "submittals": "a submittal"}
    if home[-1] == "*" and home[0] in owners and len(home) == 2:
        below = route[:2] == home
        return "directly under the name of the area" if below else f"in {owners[home[0]]}"
    names = [name for name in home if name != "*"]
    return f"under '{names[-1]}'"


def meant_words(word: str, allowed: Sequence[str]) -> list[str]:
    """The allowed words that were probably meant; several when a part fits several."""
    given = plain(word)
    other = _WORDS.get(given)
    if other is not None and other in allowed:
        return [other]
    exact = [candidate for candidate in allowed if plain(candidate) == given]
    parts = [c for c in allowed if len(given) > 3 and (given in plain(c) or plain(c) in given)]
    near = similar(word, allowed)
    return exact or parts or ([near] if near else [])


def known(kind: str, words: Sequence[str]) -> str:
    """The words that are known, as far as they are few enough to read."""
    listed = ", ".join(words[:_LISTED])
    return f"{kind} known here: {listed}" + (", ..." if len(words) > _LISTED else "")
