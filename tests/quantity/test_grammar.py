"""Written values: what is read, what it means, and what is refused at which column."""

from __future__ import annotations

from fractions import Fraction

import pytest

from specwriter.quantity import UNITS, Interval, both_systems, parse, show, show_like

INCH = Fraction("0.0254")
MM = Fraction(1, 1000)

READ = [
    ("1/8 in", "length", Interval(INCH / 8, INCH / 8)),
    ("1-1/2 in", "length", Interval(INCH * 3 / 2, INCH * 3 / 2)),
    ("1 1/2 in", "length", Interval(INCH * 3 / 2, INCH * 3 / 2)),
    ("0.095 in", "length", Interval(INCH * Fraction("0.095"), INCH * Fraction("0.095"))),
    ("0.090 in to 0.130 in", "length", Interval(INCH * Fraction("0.09"), INCH * Fraction("0.13"))),
    ("1/8 to 1/4 in", "length", Interval(INCH / 8, INCH / 4)),
    ("3/16 in ± 1/16 in", "length", Interval(INCH / 8, INCH / 4)),
    ("3/16 in +/- 1/16 in", "length", Interval(INCH / 8, INCH / 4)),
    ("1/4 in +1/16 in -0 in", "length", Interval(INCH / 4, INCH * 5 / 16)),
    ("1-1/2 in +0 in -1/8 in", "length", Interval(INCH * 11 / 8, INCH * 3 / 2)),
    ("at least 0.8 mm", "length", Interval(Fraction("0.8") * MM, None)),
    ("at most 1/16 in", "length", Interval(None, INCH / 16)),
    ("1/8 in, 3/16 in", "length", Interval(INCH / 8, INCH * 3 / 16)),
    ("24 ft", "length", Interval(Fraction("7.3152"), Fraction("7.3152"))),
    ("3 yd", "length", Interval(Fraction("2.7432"), Fraction("2.7432"))),
    ("0.1 mi", "length", Interval(Fraction("160.9344"), Fraction("160.9344"))),
    ("2 cm", "length", Interval(Fraction("0.02"), Fraction("0.02"))),
    ("1.5 km", "length", Interval(Fraction(1500), Fraction(1500))),
    ("1 m/km", "roughness", Interval(MM, MM)),
    ("63.36 in/mi", "roughness", Interval(MM, MM)),
    ("825 mm/km", "roughness", Interval(Fraction("0.000825"), Fraction("0.000825"))),
    ("9 SF", "area", Interval(Fraction("0.83612736"), Fraction("0.83612736"))),
    ("1 SY", "area", Interval(Fraction("0.83612736"), Fraction("0.83612736"))),
    ("1 yd2", "area", Interval(Fraction("0.83612736"), Fraction("0.83612736"))),
    ("10 m2", "area", Interval(Fraction(10), Fraction(10))),
    ("36 km/h", "speed", Interval(Fraction(10), Fraction(10))),
    ("95 percent", "percent", Interval(Fraction("0.95"), Fraction("0.95"))),
    ("95 %", "percent", Interval(Fraction("0.95"), Fraction("0.95"))),
    ("90 degrees", "angle", Interval(Fraction(90), Fraction(90))),
    ("101 dB(A)", "sound", Interval(Fraction(101), Fraction(101))),
    ("1 gal", "volume", Interval(Fraction("0.003785411784"), Fraction("0.003785411784"))),
    ("1 m3", "volume", Interval(Fraction(1), Fraction(1))),
    ("1 lb", "mass", Interval(Fraction("0.45359237"), Fraction("0.45359237"))),
    ("24 MPa", "pressure", Interval(Fraction(24_000_000), Fraction(24_000_000))),
    ("14 days", "time", Interval(Fraction(14 * 86400), Fraction(14 * 86400))),
    ("50 °F", "temperature", Interval(Fraction("283.15"), Fraction("283.15"))),
    ("-4 °C", "temperature", Interval(Fraction("269.15"), Fraction("269.15"))),
    ("36 mm/h", "rain", Interval(Fraction(1, 100000), Fraction(1, 100000))),
    (
        "16 per ft",
        "per_length",
        Interval(Fraction(16) / Fraction("0.3048"), Fraction(16) / Fraction("0.3048")),
    ),
    ("187 per m", "per_length", Interval(Fraction(187), Fraction(187))),
    ("120+00", "station", Interval(Fraction("3657.6"), Fraction("3657.6"))),
    ("1+200", "station", Interval(Fraction(1200), Fraction(1200))),
    ("2 percent", "slope", Interval(Fraction("0.02"), Fraction("0.02"))),
    ("1:48", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("1/4 in per ft", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("1/4 in/ft", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("0.25 in per ft", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("$600", "money", Interval(Fraction(600), Fraction(600))),
    ("$9/m2", "money_per_area", Interval(Fraction(9), Fraction(9))),
    ("10", "number", Interval(Fraction(10), Fraction(10))),
]


@pytest.mark.parametrize(("text", "dimension", "interval"), READ)
def test_a_written_value_allows_exactly_what_it_says(
    text: str, dimension: str, interval: Interval
) -> None:
    quantity = parse(text, dimension)

    assert quantity.interval == interval
    assert str(quantity) == text


SPELLINGS = [
    ('1/8"', "1/8 in"),
    ("1/8-inch", "1/8 in"),
    ("1/8-in.", "1/8 in"),
    ("1/8 inches", "1/8 in"),
    ("1/8IN", "1/8 in"),
    ("½ in", "1/2 in"),
    ("1½ in", "1-1/2 in"),
    ("1 ½ in", "1-1/2 in"),
    ("1-½ in", "1-1/2 in"),
    ("1⁄2 in", "1/2 in"),
    (".095 in", "0.095 in"),
    ("1/8\u00a0in", "1/8 in"),
    ("1/8\u202fin", "1/8 in"),
    ("１／８\u3000ｉｎ", "1/8 in"),
    ("  1/8   in ", "1/8 in"),
    ("1/8 in\n", "1/8 in"),
    ("24'", "24 ft"),
    ("24′", "24 ft"),
    ("24-ft", "24 ft"),
    ("24 LF", "24 ft"),
    ("35000 lbs", "35,000 lb"),
    ("60 inches per mile", "60 in/mi"),
    ("60 in. / mile", "60 in/mi"),
    ("60 in./mi.", "60 in/mi"),
    ("57/ft", "57 per ft"),
    ("57 per foot", "57 per ft"),
    ('1/4" per foot', "1/4 in/ft"),
    ("100 sq. yd.", "100 SY"),
    ("100 yd²", "100 SY"),
    ("100 m^2", "100 m2"),
    ("$4.50 per square yard", "$4.50/SY"),
    ("4.50 USD", "$4.50"),
    ("−5 °C", "-5 °C"),
    ("-5 deg. C", "-5 °C"),
    ("101 dBA", "101 dB(A)"),
    ("45 MPH", "45 mph"),
    ("Sta. 120+00", "120+00"),
    ("≥ 0.8 mm", "at least 0.8 mm"),
    (">= 0.8 mm", "at least 0.8 mm"),
    ("At Least 0.8 mm", "at least 0.8 mm"),
    ("≤60 in/mi", "at most 60 in/mi"),
    ("10- to 12-ft", "10 ft to 12 ft"),
    ("3/16 ± 1/16 in", "3/16 in ± 1/16 in"),
    ("3/16 in +/- 1/16", "3/16 in ± 1/16 in"),
    ("3/16 in plus or minus 1/16 in", "3/16 in ± 1/16 in"),
    ("1/4 +1/16 -0 in", "1/4 in +1/16 in -0 in"),
    ("1/4 in -0 in +1/16 in", "1/4 in +1/16 in -0 in"),
    ("1/4 in, +1/16 in, -0 in", "1/4 in +1/16 in -0 in"),
    ("1/4 in +1/16 in/-0 in", "1/4 in +1/16 in -0 in"),
    ("1/4+1/16-0 in", "1/4 in +1/16 in -0 in"),
]


@pytest.mark.parametrize(("text", "plain"), SPELLINGS)
def test_a_spelling_is_read_as_the_plain_form(text: str, plain: str) -> None:
    one, other = parse(text), parse(plain)

    assert one.text == text
    assert (one.form, one.dimension, one.interval) == (other.form, other.dimension, other.interval)


FORMS = [
    ("1/8 in", "value", ["1/8"]),
    ("1/4 in to 1/8 in", "range", ["1/4", "1/8"]),
    ("3/16 in ± 1/16 in", "tolerance", ["3/16", "1/16", "1/16"]),
    ("1/4 in -0 in +1/16 in", "tolerance", ["1/4", "1/16", "0"]),
    ("at least 1:48", "at_least", ["1:48"]),
    ("at most $600", "at_most", ["$600"]),
    ("1, 2, 3 ft", "list", ["1", "2", "3"]),
    ("1,200, 1,500 ft", "list", ["1,200", "1,500"]),
    ("120+00 to 172+80", "range", ["120+00", "172+80"]),
    ("-5 °C to 5 °C", "range", ["-5", "5"]),
    ("$4.50 to $5.00/SY", "range", ["$4.50", "$5.00"]),
    ("40 °F ± 5 °F", "tolerance", ["40", "5", "5"]),
]


@pytest.mark.parametrize(("text", "form", "numbers"), FORMS)
def test_the_numbers_stand_in_their_order(text: str, form: str, numbers: list[str]) -> None:
    quantity = parse(text)

    assert quantity.form == form
    assert [amount.text for amount in quantity.amounts] == numbers


def test_a_range_with_equal_ends_is_a_point() -> None:
    assert parse("1/8 in to 0.125 in").interval.is_point


PRINTED = [
    ("1/8 in", "1/8 in (3.2 mm)"),
    ("0.095 in ± 0.005 in", "0.095 in ± 0.005 in (2.41 mm ± 0.13 mm)"),
    ("at most 60 in/mi", "at most 60 in/mi (at most 0.95 m/km)"),
    ("24 ft", "24 ft (7.3 m)"),
    ("528 ft", "528 ft (160.9 m)"),
    ("35,000 lb", "35,000 lb (15,900 kg)"),
    ("28,160 SY", "28,160 SY (23,545 m2)"),
    ("0.8 mm", "0.8 mm (0.031 in)"),
    ("19 mm", "19 mm (0.75 in)"),
    ("53 to 57 per ft", "53 to 57 per ft (174 to 187 per m)"),
    ("95 percent", "95 percent"),
    ("$3 per SY", "$3 per SY ($3.59/m2)"),
    ("$4.50 to $5.00/SY", "$4.50 to $5.00/SY ($5.38 to $5.98/m2)"),
    ("$0.40/gal", "$0.40/gal ($0.106/L)"),
    ("-$2/SY", "-$2/SY (-$2.39/m2)"),
    ("3/4 in", "3/4 in (19.1 mm)"),
    ("3/4 in ± 0.01 in", "3/4 in ± 0.01 in (19.05 mm ± 0.25 mm)"),
    ("1/4 in +1/16 in -0 in", "1/4 in +1/16 in -0 in (6.4 mm +1.6 mm -0 mm)"),
    ("160 in/mi", "160 in/mi (2.53 m/km)"),
    ("0.1 mi", "0.1 mi (0.16 km)"),
    ("1,000 ft", "1,000 ft (305 m)"),
    ("300 m", "300 m (984 ft)"),
    ("5 psi", "5 psi (0.034 MPa)"),
    ("3500 psi", "3500 psi (24.1 MPa)"),
    ("40 °F", "40 °F (4.4 °C)"),
    ("32 °F", "32 °F (0 °C)"),
    ("33 °F ± 5 °F", "33 °F ± 5 °F (0.6 °C ± 2.8 °C)"),
    ("1 in, 10 ft", "1 in, 10 ft (25 mm, 3.0 m)"),
    ("1 in to 25 mm", "1 in to 25 mm"),
    ("1:48", "1:48"),
    ("120+00", "120+00"),
]


@pytest.mark.parametrize(("text", "printed"), PRINTED)
def test_a_value_prints_as_written_with_the_other_system_beside_it(text: str, printed: str) -> None:
    assert both_systems(parse(text)) == printed


LIKE = [
    (INCH * 5 / 8, "3/4 in", "5/8 in"),
    (INCH * 3 / 2, "1 in", "1-1/2 in"),
    (INCH * Fraction("0.09"), "0.110 in", "0.090 in"),
    (INCH * Fraction("0.1005"), "0.105 in", "0.1005 in"),
    (Fraction(19) * MM, "20 mm", "19 mm"),
    (Fraction("15.9") * MM, "16 mm", "15.9 mm"),
    (Fraction(187), "57 per ft", "57 per ft"),
    (INCH / 128, "3/4 in", "0.008 in"),
    (Fraction("7.4676"), "24 ft", "24.5 ft"),
    (Fraction(1, 40), "1:48", "1:40"),
    (Fraction(0), "1:48", "0 percent"),
    (Fraction("3657.6"), "12+00", "120+00"),
    (Fraction("3657.9"), "12+00.0", "120+01.0"),
    (Fraction(1234), "1+200", "1+234"),
    (Fraction("4.5"), "$4", "$4.50"),
    (Fraction("10.5"), "10", "10.5"),
]


@pytest.mark.parametrize(("base", "sample", "printed"), LIKE)
def test_a_computed_amount_is_written_the_way_its_sample_is(
    base: Fraction, sample: str, printed: str
) -> None:
    assert show_like(base, parse(sample)) == printed


def test_a_computed_amount_is_shown_without_idle_zeros() -> None:
    assert show(INCH / 8, UNITS["in"]) == "0.125 in"
    assert show(Fraction(12345), UNITS["m"], 1) == "12,345 m"
    assert show(Fraction(9, 2), UNITS["$"], 2) == "$4.50"


READINGS = [
    ("57 per ft", Interval(Fraction("56.5") / (12 * INCH), Fraction("57.5") / (12 * INCH))),
    ("at least 0.8 mm", Interval(Fraction("0.75") * MM, None)),
    ("45 mph", Interval(Fraction("20.1168"), Fraction("20.1168"))),
    ("19 mm", Interval(Fraction("18.75") * MM, Fraction("19.25") * MM)),
    ("15.9 mm", Interval(Fraction("15.85") * MM, Fraction("15.95") * MM)),
    ("3/4 in", Interval(INCH * 3 / 4, INCH * 3 / 4)),
    ("1 in", Interval(INCH, INCH)),
    ("0.655 in", Interval(INCH * Fraction("0.6545"), INCH * Fraction("0.6555"))),
    ("0.1 in", Interval(INCH * Fraction("0.095"), INCH * Fraction("0.105"))),
    ("187 per m", Interval(Fraction("186.5"), Fraction("187.5"))),
    ("7.6 m", Interval(Fraction("7.55"), Fraction("7.65"))),
    ("3.3 ft", Interval(INCH * 12 * Fraction("3.25"), INCH * 12 * Fraction("3.35"))),
    ("12 ft", Interval(INCH * 144, INCH * 144)),
]


@pytest.mark.parametrize(("text", "reading"), READINGS)
def test_the_rounding_of_a_written_number_is_granted_within_bounds(
    text: str, reading: Interval
) -> None:
    assert parse(text).reading == reading
