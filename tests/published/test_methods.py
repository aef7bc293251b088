"""Outside checks of the rules on test methods: practice of agencies, entered as they print it.

Each row names its document; what a document asks for in one clause must raise nothing, and the
known faults of a print must be found.
"""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.rules import all_rules, run_rules
from tests.support import job

TOPICS = ("smoothness", "texture_depth", "friction", "noise", "method", "pay_schedule")
RULES = [rule for rule in all_rules() if rule.topic in TOPICS]


def slugs(base: str, area: dict[str, Any]) -> list[str]:
    name = "runway" if base == "runway_grooving" else "mainline"
    patches = {f"areas.{name}.{key}": value for key, value in area.items()}
    report = run_rules(job(base, patches), RULES)
    assert report.defects == ()
    return [finding.slug for finding in report.findings]


SOUND: dict[str, tuple[str, dict[str, Any]]] = {
    "Iowa DOT 2317, April 2009: profilograph, and a straightedge on excluded places": (
        "diamond_grinding",
        {
            "smoothness": {
                "index": "PI",
                "blanking_band": "0.2 in",
                "instrument": "profilograph",
                "exclusions": "lengths under 50 ft",
            },
            "straightedge": {
                "length": "10 ft",
                "tolerance": "at most 1/8 in",
                "direction": "longitudinal",
                "kind": "resting",
            },
        },
    ),
    "Iowa DOT 2317, current: MRI by 0.1 mi, localized over 25 ft, partial under 100 ft": (
        "diamond_grinding",
        {
            "smoothness": {
                "index": "MRI",
                "instrument": "inertial_profiler",
                "sensor": "line_laser",
                "wheel_paths": "both",
                "segment": "0.1 mi",
                "partial_segment": "100 ft",
                "localized": {"limit": "at most 160 in/mi", "base": "25 ft"},
                "certification": "AASHTO M 328-14",
            }
        },
    ),
    "Oregon DOT 00745, 2015: localized above 140.0 in/mi over 25.0 ft, 12 ft straightedge": (
        "diamond_grinding",
        {
            "smoothness": {
                "index": "IRI",
                "localized": {"limit": "at most 140.0 in/mi", "base": "25.0 ft"},
                "exclusions": "bridge ends",
            },
            "straightedge": {
                "length": "12 ft",
                "tolerance": "at most 1/4 in",
                "direction": "both",
                "kind": "resting",
            },
        },
    ),
    "FHWA section 401.16, as reproduced: MRI, cross-correlation of 0.90, localized over 25 ft": (
        "diamond_grinding",
        {
            "smoothness": {
                "index": "MRI",
                "instrument": "inertial_profiler",
                "sensor": "line_laser",
                "sensor_width": "4 in",
                "wheel_paths": "both",
                "segment": "0.1 mi",
                "localized": {"limit": "at most 160 in/mi", "base": "25 ft"},
                "certification": "AASHTO R 56-14(2018)",
                "test": {"retest": "both profilers, cross-correlation of 0.90 or more"},
            }
        },
    ),
    "AASHTO R 56, from memory, unverified: cross-correlation of 0.92 and 0.90": (
        "diamond_grinding",
        {
            "smoothness": {
                "index": "IRI",
                "instrument": "inertial_profiler",
                "sensor": "line_laser",
                "sensor_width": "4 in",
                "certification": "AASHTO R 56-14(2018): repeatability 0.92, accuracy 0.90",
            }
        },
    ),
    "Florida DOT 400-15.2.5.5: index of 10 with a 0.2 in band, bumps of 0.3 in in 25 ft": (
        "transverse_grooving",
        {
            "smoothness": {
                "index": "PI",
                "limit": "at most 10 in/mi",
                "blanking_band": "0.2 in",
                "instrument": "profilograph",
                "wheel_paths": "both",
                "localized": {"limit": "at most 0.3 in", "base": "25 ft"},
                "measured": "before_texturing",
                "test": {"method": "ASTM E1274-03"},
            }
        },
    ),
    "UFGS 02753: airfield concrete by profilograph, bumps of 0.4 in": (
        "runway_grooving",
        {
            "smoothness": {
                "index": "PI",
                "blanking_band": "0.2 in",
                "instrument": "profilograph",
                "runs": 3,
                "segment": "0.1 mi",
                "localized": {"limit": "at most 0.4 in", "base": "25 ft"},
            }
        },
    ),
    "Maine DOT 401, third-party compilation: profilers of Class I or II": (
        "transverse_grooving",
        {
            "smoothness": {
                "index": "IRI",
                "instrument": "inertial_profiler",
                "certification": "ASTM E950, Class I or II",
            }
        },
    ),
    "UK SROH table S2.5: concrete 0.6 mm to 1.25 mm by volumetric patch, mean of ten": (
        "diamond_grinding",
        {
            "texture_depth": {
                "measure": "MTD",
                "at_least": "0.6 mm",
                "at_most": "1.25 mm",
                "method": "EN 13036-1",
                "test": {"readings": 10, "statistic": "mean"},
            }
        },
    ),
    "Minnesota DOT research summary: 1.0 mm by ASTM E965": (
        "longitudinal_grooving",
        {
            "texture_depth": {
                "measure": "MTD",
                "at_least": "1.0 mm",
                "method": "ASTM E965",
                "surface": "between_grooves",
            }
        },
    ),
    "FAA AC 150/5320-12C table 3-2, fixed slip: 0.82 at 40 mph": (
        "runway_grooving",
        {
            "friction": {
                "measure": "Mu",
                "at_least": "at least 0.82",
                "speed": "40 mph",
                "test": {"device": "continuous friction measuring equipment, fixed slip"},
            }
        },
    ),
    "FAA AC 150/5320-12C table 3-2, fixed slip: 0.74 at 95 km/h": (
        "runway_grooving",
        {
            "friction": {
                "measure": "friction coefficient",
                "at_least": "at least 0.74",
                "speed": "95 km/h",
                "test": {"device": "continuous friction measuring equipment, fixed slip"},
            }
        },
    ),
    "university textbook, problem 9.4: a skid number of 40 at 40 mph": (
        "transverse_grooving",
        {
            "friction": {
                "measure": "SN40S",
                "at_least": "at least 40",
                "test": {"method": "ASTM E274-97"},
            }
        },
    ),
    "Washington State DOT WA-RD 767.1, 2011: a new lane of 101.6 dB(A)": (
        "next_generation_concrete_surface",
        {
            "noise": {
                "measure": "OBSI",
                "at_most": "101.6 dB(A)",
                "speed": "97 km/h",
                "test": {
                    "method": "AASHTO T 360-16(2020)",
                    "when": "at 60 °F to 80 °F air temperature",
                },
            }
        },
    ),
    "ISO 13473-1:2019: estimated texture depth across the lane": (
        "diamond_grinding",
        {
            "texture_depth": {
                "measure": "ETD",
                "at_least": "0.8 mm",
                "method": "ISO 13473-1",
                "edition": "2019",
                "direction": "across_lane",
            }
        },
    ),
}

LEVELS = [("0.50", "40 mph"), ("0.60", "40 mph"), ("0.34", "60 mph"), ("0.47", "60 mph")]
"""FAA AC 150/5320-12C table 3-2, fixed slip, 1997, second-hand: minimum and planning levels."""

FAULTY: dict[str, tuple[str, dict[str, Any], list[str]]] = {
    "Iowa DOT 2317, April 2019: an inertial profiler admitted, a profilogram accepted": (
        "diamond_grinding",
        {
            "smoothness": {
                "index": "PI",
                "blanking_band": "0.2 in",
                "instrument": "inertial_profiler",
                "sensor": "line_laser",
                "segment": "0.1 mi",
                "partial_segment": "250 ft",
            }
        },
        ["index-instrument"],
    ),
    "Kansas DOT project report, trade article: an index of 30 without its band": (
        "diamond_grinding",
        {"smoothness": {"index": "PI", "limit": "at most 30 in/mi"}},
        ["profile-index-without-blanking-band"],
    ),
    "Missouri DOT as reported: 80 inches in each tenth of a mile, read per mile": (
        "diamond_grinding",
        {"smoothness": {"index": "IRI", "limit": "at most 800 in/mi", "segment": "0.1 mi"}},
        ["index-unit"],
    ),
    "BS EN 13036-3, scope: outflow for surfaces below 0.4 mm, on grooves": (
        "longitudinal_grooving",
        {"texture_depth": {"measure": "MPD", "at_least": "0.8 mm", "method": "EN 13036-3"}},
        ["outflow-as-texture-depth"],
    ),
    "ASTM E1960-07(2015), scope: smooth tread only, with a ribbed tyre": (
        "diamond_grinding",
        {
            "friction": {
                "measure": "F60",
                "at_least": "at least 0.3",
                "tyre": "ribbed",
                "test": {"method": "ASTM E1960-07(2015)"},
            },
            "texture_depth": {"measure": "MPD", "direction": "circle"},
        },
        ["friction-index-with-ribbed-tyre"],
    ),
    "NCHRP Report 630, table 9: a roadside level asked of OBSI": (
        "diamond_grinding",
        {"noise": {"measure": "OBSI", "at_most": "78 dB(A)", "speed": "60 mph"}},
        ["noise-scale"],
    ),
}


@pytest.mark.parametrize("name", SOUND)
def test_what_a_document_asks_for_raises_nothing(name: str) -> None:
    base, area = SOUND[name]

    assert slugs(base, area) == []


@pytest.mark.parametrize(("level", "speed"), LEVELS)
def test_a_maintenance_level_is_not_taken_for_that_of_a_new_runway(level: str, speed: str) -> None:
    friction = {
        "measure": "Mu",
        "at_least": f"at least {level}",
        "speed": speed,
        "test": {"device": "continuous friction measuring equipment, fixed slip"},
    }

    assert slugs("runway_grooving", {"friction": friction}) == ["runway-friction-below-new-level"]


@pytest.mark.parametrize("name", FAULTY)
def test_a_known_fault_is_found_and_nothing_else(name: str) -> None:
    base, area, expected = FAULTY[name]

    assert slugs(base, area) == expected
