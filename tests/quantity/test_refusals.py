"""What is refused: in which words, at exactly which characters, and with which advice."""

from __future__ import annotations

import re

import pytest

from specwriter.quantity import ValueFault, parse

LENGTH = "write a length, such as 3/4 in or 19 mm"
LIMIT = "'{}' is not how a limit is written here"
DASH = "'{}' does not say what the dash means"
ALONE = "a tolerance stands here without the value that it belongs to"
OTHER_SYSTEM = "; the other unit system is printed beside it"

# text, what the column must point at, says, todo
REFUSED = [
    ("0.75", "0.75", "'0.75' has no unit", LENGTH),
    ("at least 3/4", "3/4", "'3/4' has no unit", LENGTH),
    ("1 in, 2 ft, 3", "3", "'3' has no unit", LENGTH),
    ("3/16 inn", "inn", "'inn' is not a unit", "did you mean 'in'?"),
    ("1 in to 2 milimeter", "milimeter", "'milimeter' is not a unit", "did you mean 'mm'?"),
    ("5 T", "T", "'T' is not a unit", LENGTH),
    ("1/8 in deep", "deep", "'deep' is not understood here", "write '1/8 in' alone"),
    ("TBD", "TBD", "'TBD' has no number in it", LENGTH),
    ("in", "in", "'in' has no number in it", LENGTH),
    ("1/8 in to", "", "a number is missing", LENGTH),
    ("1/8 in,", "", "a number is missing", LENGTH),
    ("1/8 in to x5", "x5", "a number is missing before 'x5'", LENGTH),
    ("1/0 in", "1/0", "a fraction cannot have 0 below the line", "write it anew"),
    (
        "9" * 21 + " in",
        "9" * 21,
        f"'{'9' * 21}' is longer than any measured number",
        "write fewer digits",
    ),
    ("5 kg", "5 kg", "'5 kg' is a mass", LENGTH),
    (" 60 in/mi ", "60 in/mi", "'60 in/mi' is a roughness", LENGTH),
    ("120+00", "120+00", "'120+00' is a station", LENGTH),
    ("1/8 in to 5 mph", "5 mph", "'1/8 in to 5 mph' mixes a length and a speed", LENGTH),
    (
        "3 in ± 10 percent",
        "10 percent",
        "'3 in ± 10 percent' mixes a length and a percentage",
        LENGTH,
    ),
    ("-1/8 in", "-1/8 in", "'-1/8 in' is below zero", "write it without the minus sign"),
    ("1 in to −2 in", "−2 in", "'-2 in' is below zero", "write it without the minus sign"),
    (
        "1/8 in ± 1/4 in",
        "1/4 in",
        "a tolerance of 1/4 reaches below zero from 1/8",
        "write a smaller tolerance, or a range that begins at 0",
    ),
    (
        "1/4 in +1/16 in",
        "+1/16 in",
        "the tolerance has an upper part only",
        "write both parts, such as +1/16 in -0 in; a range is written with 'to'",
    ),
    (
        "1/4 in -1/16 in",
        "-1/16 in",
        "the tolerance has a lower part only",
        "write both parts, such as +1/16 in -0 in; a range is written with 'to'",
    ),
    ("± 1/16 in", "±", ALONE, "write 'at most 1/16 in', or the value in front of ±"),
    ("+/-1/16 in", "+/-", ALONE, "write 'at most 1/16 in', or the value in front of +/-"),
    ("+1/16 in -0 in", "+1/16 in -0 in", ALONE, "write the value in front of it"),
    ("+5 mm", "+", "a plus sign in front says nothing", "write '5 mm'"),
    (
        "1/4 in (+1/16 in, -0 in)",
        "(+1/16 in, -0 in)",
        "a tolerance needs no brackets",
        "write '1/4 in +1/16 in, -0 in'",
    ),
    (
        "0,5 mm",
        "0,5",
        "'0,5' has a comma in it",
        "write 0.5, or a space behind the comma of a list",
    ),
    (
        "0,500 in",
        "0,500",
        "'0,500' has a comma in it",
        "write 0.500, or a space behind the comma of a list",
    ),
    (
        "at most 1,20 ft",
        "1,20",
        "'1,20' has a comma in it",
        "write 1.20, or a space behind the comma of a list",
    ),
    (
        "1,2,3 ft",
        "1,2,3",
        "'1,2,3' has a comma in it",
        "write 123, or a space behind the comma of a list",
    ),
    ("12 000 mm", "12 000", "'12 000' has a space in it", "write '12,000 mm'"),
    ("1e3 mm", "1e3", "'1e3' is written with a power of ten", "write '1000 mm'"),
    ("0.090–0.130 in", "–", DASH.format("0.090–0.130 in"), "write '0.090 to 0.130 in'"),
    ("1/8 in - 1/4 in", "-", DASH.format("1/8 in - 1/4 in"), "write '1/8 in to 1/4 in'"),
    ("1-1/2—2 in", "—", DASH.format("1-1/2—2 in"), "write '1-1/2 to 2 in'"),
    ("5-6 in", "-", DASH.format("5-6 in"), "write '5 to 6 in'"),
    ("0-1/2 in", "-", DASH.format("0-1/2 in"), "write '0 to 1/2 in'"),
    ("1/8 in ... 1/4 in", "...", DASH.format("1/8 in ... 1/4 in"), "write '1/8 in to 1/4 in'"),
    ("0.8 mm minimum", "minimum", LIMIT.format("minimum"), "write 'at least 0.8 mm'"),
    ("0.8 mm (min.)", "(min.)", LIMIT.format("(min.)"), "write 'at least 0.8 mm'"),
    ("1/8 in max", "max", LIMIT.format("max"), "write 'at most 1/8 in'"),
    ("max. 1/8 in", "max.", LIMIT.format("max."), "write 'at most 1/8 in'"),
    (
        "not less than 1/8 in",
        "not less than",
        LIMIT.format("not less than"),
        "write 'at least 1/8 in'",
    ),
    ("up to 1/8 in", "up to", LIMIT.format("up to"), "write 'at most 1/8 in'"),
    ("1/8 in or less", "or less", LIMIT.format("or less"), "write 'at most 1/8 in'"),
    (
        "more than 5 mm",
        "more than",
        "'more than' does not say whether the limit itself is allowed",
        "write 'at least 5 mm'",
    ),
    ("< 5 mm", "<", "'<' does not say whether the limit itself is allowed", "write 'at most 5 mm'"),
    (
        "about 1/8 in",
        "about",
        "'about' gives no tolerance",
        "write '1/8 in', or add its tolerance with ±",
    ),
    (
        "5 mm nominal",
        "nominal",
        "'nominal' gives no tolerance",
        "write '5 mm', or add its tolerance with ±",
    ),
    (
        "between 1/8 in and 1/4 in",
        "between",
        "a range is written with 'to'",
        "write '1/8 in to 1/4 in'",
    ),
    ("from 1/8 to 1/4 in", "from", "a range needs no 'from'", "write '1/8 to 1/4 in'"),
    ("1/8 in thru 1/4 in", "thru", "a range is written with 'to'", "write '1/8 in to 1/4 in'"),
    (
        "1/8 in and 1/4 in",
        "and",
        "'and' may mean a list or a range",
        "write '1/8 in, 1/4 in', or join them with 'to'",
    ),
    (
        "1/8 in (3.2 mm)",
        "(3.2 mm)",
        "'(3.2 mm)' stands behind a whole value",
        "write '1/8 in'" + OTHER_SYSTEM,
    ),
    (
        "1/8 in in 10 ft",
        "in 10 ft",
        "'in 10 ft' is a second length",
        "write '1/8 in'; the length that it is measured over has its own key",
    ),
    ("5 ft 6 in", "6 in", "'6 in' is a second unit", "write '66 in'"),
    ("5'-6 1/2\"", '6 1/2"', "'6 1/2\"' is a second unit", "write '66-1/2 in'"),
    (
        "1/8 in × 1/4 in",
        "×",
        "'×' joins two values",
        "write '1/8 in'; the second value has its own key",
    ),
]


def refusal(text: str, dimension: str | None) -> ValueFault:
    with pytest.raises(ValueFault) as caught:
        parse(text, dimension)
    return caught.value


@pytest.mark.parametrize(("text", "mark", "says", "todo"), REFUSED, ids=lambda word: word[:30])
def test_a_length_is_refused_at_its_characters(text: str, mark: str, says: str, todo: str) -> None:
    fault = refusal(text, "length")

    assert (fault.says, fault.todo) == (says, todo)
    assert text[fault.column : fault.column + fault.width] == mark
    assert fault.width == max(len(mark), 1)


OTHER_KINDS = [
    (
        "57",
        "per_length",
        "'57' has no unit",
        "write a number per length, such as 57 per ft or 187 per m",
    ),
    (
        "57 grooves per ft",
        "per_length",
        "'grooves' is not part of a number per length",
        "write '57 per ft'",
    ),
    ("4:1", "slope", "a slope is written rise to run", "write '1:4'"),
    ("1 in 48", "slope", "a slope is written with a colon", "write '1:48'"),
    ("1:0", "slope", "a slope of 1:0 is not a slope", "write a slope, such as 2 percent or 1:48"),
    ("$40/lot", "money_per_area", "'/lot' is not a pay unit", "write $/SY, $/m2 or $/ft"),
    ("10 mm", "number", "'10 mm' is a length", "write a plain number, such as 10"),
    ("101 dB", "sound", "'dB' is not a unit", "did you mean 'dB(A)'?"),
    ("x", None, "'x' has no number in it", "write a number and its unit, such as 3/4 in"),
]


@pytest.mark.parametrize(("text", "dimension", "says", "todo"), OTHER_KINDS)
def test_other_kinds_are_refused_in_their_own_words(
    text: str, dimension: str | None, says: str, todo: str
) -> None:
    fault = refusal(text, dimension)

    assert (fault.says, fault.todo) == (says, todo)


UNREADABLE = [
    ("", 0, 1, "there is no value here"),
    (" \t ", 0, 1, "there is no value here"),
    ("1/8\u200b in", 3, 1, "an invisible character (U+200B) stands in the value"),
    ("1/8 in\x00", 6, 1, "an invisible character (U+0000) stands in the value"),
    ("\ud800 in", 0, 1, "an invisible character (U+D800) stands in the value"),
    ("1/8 in" + " " * 200, 200, 6, "206 characters are too long for a value"),
]


@pytest.mark.parametrize(("text", "column", "width", "says"), UNREADABLE)
def test_text_that_is_no_value_is_refused(text: str, column: int, width: int, says: str) -> None:
    fault = refusal(text, "length")

    assert (fault.says, fault.column, fault.width) == (says, column, width)
    assert fault.todo


@pytest.mark.parametrize("todo", [row[3] for row in REFUSED], ids=lambda todo: todo[:30])
def test_a_better_writing_that_is_quoted_can_be_read(todo: str) -> None:
    for better in re.findall(r"write '([^']+)'(?!\w)", todo):
        parse(better, "length")


@pytest.mark.parametrize("text", ["-5 °C", "-2 percent", "-$600", "-5 degrees", "-3"])
def test_what_may_be_below_zero_is_read(text: str) -> None:
    assert parse(text).amounts[0].value < 0
