"""Signs that a Word file takes from a symbol font, as the characters that they show."""

from __future__ import annotations

_SYMBOL = {
    0xB1: "±",
    0xB0: "°",
    0xA3: "≤",
    0xB3: "≥",
    0xB4: "×",
    0x6D: "µ",
    0xB7: "•",
    0xD7: "·",
    0xB9: "≠",
    0xBB: "≈",
    0x44: "Δ",
    0x57: "Ω",
}
"""Places of the font Symbol (memory, unverified)."""


def symbol(font: str | None, char: str | None) -> str:
    """The character behind ``w:sym``; the sign itself when the font is another one."""
    try:
        code = int(char or "", 16)
    except ValueError:
        return "?"
    if font == "Symbol" and (known := _SYMBOL.get(code - 0xF000 if code >= 0xF000 else code)):
        return known
    return chr(code) if 0x20 <= code <= 0x10FFFF and not 0xD800 <= code < 0xE000 else "?"
