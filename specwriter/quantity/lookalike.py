"""Characters that look alike: what office programs put in place of the plain ones."""

from __future__ import annotations

from specwriter.quantity.fault import ValueFault

LONGEST_VALUE = 200

_WIDE = {0xFF01 + i: 0x21 + i for i in range(94)}  # the full-width forms of ASCII
_SPACES = dict.fromkeys([9, 10, 13, 0xA0, *range(0x2000, 0x200B), 0x202F, 0x205F, 0x3000], " ")
_SIGNS = str.maketrans("−‐‑﹣⁄∕″“”′‘’º˚≧≦⩾⩽", "----//\"\"\"'''°°≥≤≥≤")
_PLAIN = _WIDE | _SPACES | _SIGNS


def fold(text: str) -> str:
    """The text with each look-alike replaced by its plain character, so that columns stay.

    A dash (– or —) is no minus sign and stays. Raises ``ValueFault`` for an empty or over-long
    text and for characters that nobody can see.
    """
    if len(text) > LONGEST_VALUE:
        says = f"{len(text)} characters are too long for a value"
        raise ValueFault(says, LONGEST_VALUE, len(text) - LONGEST_VALUE, "write one value alone")
    plain = text.translate(_PLAIN)
    if not plain.isprintable():
        at = next(i for i, character in enumerate(plain) if not character.isprintable())
        says = f"an invisible character (U+{ord(plain[at]):04X}) stands in the value"
        raise ValueFault(says, at, 1, "take it out, or type the value anew")
    if not plain.strip():
        raise ValueFault("there is no value here", 0, todo="write the value, or leave the key out")
    return plain
