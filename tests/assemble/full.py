"""The clean examples with every result that a contract can ask for added to them."""

from __future__ import annotations

from typing import Any

from specwriter.model import Job
from tests.support import job

_TEST = {
    "device": "named in the quality control plan",
    "where": "places drawn by random numbers",
    "when": "at most 7 days after the lane is cut",
    "by": "contractor",
    "lot": "each 1,000 ft of lane",
    "readings": "5",
    "statistic": "mean",
    "remedy": "cut the lot once more within the depth limit",
    "retest": "5 new readings",
    "pay_effect": "none",
}
RESULTS: dict[str, Any] = {
    "texture_depth": {
        "measure": "MTD",
        "at_least": "at least 0.5 mm",
        "single_at_least": "at least 0.4 mm",
        "method": "ASTM E965",
        "edition": "2015",
        "land_texture": "0.2 mm to 0.3 mm",
        "test": _TEST,
    },
    "friction": {
        "measure": "skid number",
        "at_least": "at least 37",
        "speed": "40 mph",
        "tyre": "smooth",
        "test": {"method": "ASTM E274", "edition": "2015", **_TEST},
    },
    "noise": {
        "measure": "OBSI",
        "at_most": "at most 102 dB(A)",
        "speed": "60 mph",
        "age": "30 days to 90 days after opening",
        "test": {"method": "AASHTO T 360", "edition": "2016", **_TEST},
    },
}
_BANDS = {
    "schedule": "table",
    "cap": "at most 3 percent",
    "applies_to": "the pay item of the texture",
    "bands": [
        {"index": "at most 50 in/mi", "pay": "103 percent", "action": "none"},
        {"index": "50.1 in/mi to 75.0 in/mi", "pay": "100 percent", "action": "none"},
        {"index": "75.1 in/mi to 90.0 in/mi", "pay": "95 percent", "action": "regrind once"},
    ],
}
_RIDE = {
    "index": "MRI",
    "limit": "at most 75 in/mi",
    "instrument": "inertial_profiler",
    "sensor": "line_laser",
    "sensor_width": "4 in",
    "wheel_paths": "both",
    "segment": "0.1 mi",
    "measured": "before_texturing",
    "pay_adjustment": _BANDS,
    "test": {"method": "AASHTO R 54", "edition": "2014 (2018)", **_TEST},
}


_TRAPEZOID = {
    "name": "trapezoid",
    "groove": {
        "width": "1/2 in ± 1/16 in",
        "width_at_bottom": "1/4 in ± 1/16 in",
        "depth": "1/4 in ± 1/16 in",
        "spacing": "2-1/4 in +0 in -1/8 in",
        "alignment": "at most 1-1/2 in",
        "alignment_over": "75 ft",
    },
}


def full(name: str) -> Job:
    """The example of that name, its first area with all results, pay bands and limits of cover."""
    area = f"areas.{next(iter(job(name).areas))}"
    patches: dict[str, Any] = {f"{area}.{key}": value for key, value in RESULTS.items()} | {
        f"{area}.removal": {"depth": "at most 1/2 in", "cover_after": "at least 2 in"},
        "settings.precedence": ["special provisions", "plans", "standard specifications"],
    }
    if name == "urban-grinding":
        patches |= {
            f"{area}.smoothness.improvement": "at least 40 percent",
            f"{area}.smoothness.whichever": "less_strict",
            f"{area}.smoothness.pay_adjustment": _BANDS,
            f"{area}.straightedge": {
                "length": "10 ft",
                "tolerance": "at most 3/16 in",
                "direction": "longitudinal",
                "kind": "resting",
                "test": {"method": "straightedge", **_TEST},
            },
        }
    else:
        patches |= {f"{area}.smoothness": _RIDE}
    if name == "runway":
        patches |= {f"{area}.alternatives": [_TRAPEZOID]}
    return job(name, patches)
