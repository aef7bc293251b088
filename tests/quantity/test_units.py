"""Every unit against pint, a general-purpose unit library: the outside reference."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from specwriter.quantity import UNITS, Unit, parse
from specwriter.quantity.spelling import SPELLINGS, find_unit, suggest_unit

REGISTRY: Any = pint.UnitRegistry()
NAMES = {
    "in": "inch", "ft": "foot", "yd": "yard", "mi": "mile", "mm": "millimeter", "cm": "centimeter",
    "m": "meter", "km": "kilometer", "in/mi": "inch/mile", "m/km": "meter/kilometer",
    "mm/km": "millimeter/kilometer", "mm/m": "millimeter/meter", "SY": "yard**2", "yd2": "yard**2",
    "SF": "foot**2", "ft2": "foot**2", "m2": "meter**2", "gal": "US_liquid_gallon",
    "ft3": "foot**3", "yd3": "yard**3", "CY": "yard**3", "L": "liter", "m3": "meter**3",
    "lb": "pound", "ton": "short_ton", "kg": "kilogram", "t": "metric_ton", "mph": "mile/hour",
    "km/h": "kilometer/hour", "ft/min": "foot/minute", "m/min": "meter/minute", "psi": "psi",
    "kPa": "kilopascal", "MPa": "megapascal", "s": "second", "min": "minute", "h": "hour",
    "days": "day", "weeks": "week", "in/h": "inch/hour", "mm/h": "millimeter/hour",
    "per in": "1/inch", "per ft": "1/foot", "per yd": "1/yard", "per mi": "1/mile",
    "in2": "inch**2", "mm2": "millimeter**2", "cm2": "centimeter**2", "in3": "inch**3",
    "mm3": "millimeter**3", "cm3": "centimeter**3", "mL": "milliliter", "oz": "ounce", "g": "gram",
    "ft/s": "foot/second", "m/s": "meter/second", "ksi": "ksi", "in/ft": "inch/foot",
    "ft/ft": "foot/foot", "m/m": "meter/meter", "per m": "1/meter",
    "per km": "1/kilometer", "percent": "percent",
}  # fmt: skip
BASES = {
    "length": "meter", "roughness": "meter/meter", "area": "meter**2", "volume": "meter**3",
    "mass": "kilogram", "speed": "meter/second", "pressure": "pascal", "time": "second",
    "slope": "dimensionless", "rain": "meter/second", "per_length": "1/meter",
    "percent": "dimensionless",
}  # fmt: skip


@pytest.mark.parametrize("unit", [UNITS[symbol] for symbol in NAMES], ids=lambda unit: unit.symbol)
def test_a_unit_is_worth_what_the_reference_says(unit: Unit) -> None:
    reference = REGISTRY.Quantity(1.0, NAMES[unit.symbol]).to(BASES[unit.dimension]).magnitude

    assert float(unit.factor) == pytest.approx(reference, rel=1e-12)


@pytest.mark.parametrize("degrees", [-40.0, 0.0, 32.0, 40.0, 98.6])
def test_temperatures_have_the_offset_of_the_reference(degrees: float) -> None:
    for symbol, name in (("°F", "degF"), ("°C", "degC")):
        reference = REGISTRY.Quantity(degrees, name).to("kelvin").magnitude
        unit = UNITS[symbol]

        assert degrees * float(unit.factor) + float(unit.offset) == pytest.approx(reference)


def test_no_unit_of_a_measured_dimension_escapes_the_reference() -> None:
    measured = {unit.symbol for unit in UNITS.values() if unit.dimension in BASES}

    assert measured == set(NAMES)


def test_partners_are_of_the_other_system_and_of_the_same_dimension() -> None:
    for unit in UNITS.values():
        if unit.partner:
            partner = UNITS[unit.partner]
            assert partner.dimension == unit.dimension
            assert {unit.system, partner.system} == {"us", "si"}


@given(st.fractions(-1000, 1000), st.data())
def test_a_conversion_is_that_of_the_reference(value: Fraction, data: st.DataObject) -> None:
    one = UNITS[data.draw(st.sampled_from(sorted(NAMES)))]
    alike = sorted(symbol for symbol in NAMES if UNITS[symbol].dimension == one.dimension)
    other = UNITS[data.draw(st.sampled_from(alike))]
    reference = REGISTRY.Quantity(float(value), NAMES[one.symbol]).to(NAMES[other.symbol])

    ours = float(other.from_base(one.to_base(value)))

    assert ours == pytest.approx(reference.magnitude, rel=1e-9, abs=1e-12)


@pytest.mark.parametrize(
    ("price", "size"),
    [(u, u.removeprefix("$/")) for u in UNITS if u.startswith("$/")],
)
def test_a_price_is_worth_the_inverse_of_its_measured_unit(price: str, size: str) -> None:
    assert UNITS[price].factor * UNITS[size].factor == 1


@pytest.mark.parametrize("word", sorted(SPELLINGS))
def test_every_spelling_means_its_unit_in_a_value(word: str) -> None:
    unit = UNITS[SPELLINGS[word]]
    text = f"$1{word.removeprefix('$')}" if word.startswith("$") else f"1 {word}"

    assert find_unit(word) == unit
    assert parse(text).unit == unit


@pytest.mark.parametrize(
    "word", ["T", "M", "S", "H", "inn", "/", "per", "per lot", "in/lb", "$/lot"]
)
def test_what_is_no_unit_stays_unknown(word: str) -> None:
    assert find_unit(word) is None


def test_only_units_of_the_wanted_kind_are_suggested() -> None:
    assert suggest_unit("inn", "length") == "in"
    assert suggest_unit("inn", "mass") is None
    assert suggest_unit("in/mil", "roughness") == "in/mi"
