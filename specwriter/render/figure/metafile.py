"""SVG → Enhanced Metafile, the drawing of lines and letters that every office program knows.

A metafile stays as sharp as the printer is, and costs a thousandth of a picture of dots. Only what
``shapes`` draws is read. Records and fields as in [MS-EMF] (memory).
"""

from __future__ import annotations

import struct
from collections.abc import Iterable, Iterator
from itertools import accumulate, cycle, pairwise
from math import dist
from xml.etree import ElementTree

from specwriter.assemble.document import Figure
from specwriter.render.figure.draw import figure_svg
from specwriter.render.figure.letters import FACE, advances
from specwriter.render.figure.shapes import Point

FINE = 20
"""Steps of the metafile in a unit of the drawing: 720 units on 6 inches make 2400 an inch."""

_PER_INCH = 2400
_PAPER = 10
"""Inches of the square sheet that the metafile says it was drawn on."""

_HEADER, _POLYGON, _POLYLINE, _EOF = 1, 3, 4, 14
_WINDOW, _WINDOW_ORIGIN, _VIEWPORT, _VIEWPORT_ORIGIN, _MAP_MODE = 9, 10, 11, 12, 17
_BACK_MODE, _FILL_MODE, _TEXT_ALIGN, _TEXT_COLOUR, _SELECT = 18, 19, 22, 24, 37
_BRUSH, _FONT, _TEXT, _PEN = 39, 82, 84, 95
_NO_BRUSH, _NO_PEN = 0x80000005, 0x80000008
_ANISOTROPIC, _TRANSPARENT, _WINDING, _BASELINE = 8, 1, 2, 24
_FLAT_GEOMETRIC = 0x10000 | 0x200


def figure_emf(figure: Figure) -> bytes:
    """The figure as an Enhanced Metafile."""
    return _Metafile(ElementTree.fromstring(figure_svg(figure))).content()


def extent(emf: bytes) -> tuple[int, int]:
    """Width and height that a metafile states in its header, in hundredths of a millimetre."""
    left, top, right, bottom = struct.unpack("<4i", emf[24:40])
    return right - left, bottom - top


class _Metafile:
    """Writes one drawing; pens, brushes and the font are made once and selected again."""

    def __init__(self, svg: ElementTree.Element) -> None:
        self._size = _fine(svg.get("width", "")), _fine(svg.get("height", ""))
        self._objects: dict[bytes, int] = {}
        self._records: list[bytes] = []
        for kind, *values in (
            (_MAP_MODE, _ANISOTROPIC),
            (_WINDOW_ORIGIN, 0, 0),
            (_WINDOW, *self._size),
            (_VIEWPORT_ORIGIN, 0, 0),
            (_VIEWPORT, *self._size),
            (_BACK_MODE, _TRANSPARENT),
            (_FILL_MODE, _WINDING),
            (_TEXT_ALIGN, _BASELINE),
        ):
            self._add(kind, struct.pack(f"<{len(values)}i", *values))
        for element in svg:
            self._draw(element)

    def content(self) -> bytes:
        """The whole file."""
        body = b"".join((*self._records, _record(_EOF, struct.pack("<3I", 0, 16, 20))))
        width, height = self._size
        frame = (0, 0, *(side * 2540 // _PER_INCH for side in self._size))
        head = struct.pack("<4i4i", 0, 0, width, height, *frame)
        head += struct.pack("<4sII", b" EMF", 0x10000, 108 + len(body))
        head += struct.pack("<IHH3I", len(self._records) + 2, len(self._objects) + 1, 0, 0, 0, 0)
        head += struct.pack("<4i", *(2 * [_PAPER * _PER_INCH]), *(2 * [round(_PAPER * 25.4)]))
        head += struct.pack("<3I2i", 0, 0, 0, *(2 * [_PAPER * 25400]))
        return _record(_HEADER, head) + body

    def _draw(self, element: ElementTree.Element) -> None:
        match element.tag:
            case "rect":
                self._fill(element, _corners(element))
            case "polygon":
                self._fill(element, _points(element.get("points", "")))
            case "polyline":
                self._stroke(element, _points(element.get("points", "")))
            case "line":
                x1, y1, x2, y2 = (float(element.get(key, "")) for key in ("x1", "y1", "x2", "y2"))
                pattern = element.get("stroke-dasharray", "")
                for piece in _dashes((x1, y1), (x2, y2), pattern):
                    self._stroke(element, piece)
            case "text":
                self._label(element)

    def _fill(self, element: ElementTree.Element, points: Iterable[Point]) -> None:
        self._select_stock(_NO_PEN)
        self._select(_BRUSH, struct.pack("<III", 0, _colour(element.get("fill", "")), 0))
        self._add(_POLYGON, _poly(points))

    def _stroke(self, element: ElementTree.Element, points: Iterable[Point]) -> None:
        self._select_stock(_NO_BRUSH)
        style = (_FLAT_GEOMETRIC, _fine(element.get("stroke-width", "")), 0)
        colour = _colour(element.get("stroke", ""))
        self._select(_PEN, struct.pack("<10I", 0, 0, 0, 0, *style, colour, 0, 0))
        self._add(_POLYLINE, _poly(points))

    def _label(self, element: ElementTree.Element) -> None:
        text, size = element.text or "", _fine(element.get("font-size", ""))
        steps = advances(text, size)
        part = {"start": 0.0, "middle": 0.5, "end": 1.0}[element.get("text-anchor", "start")]
        x = _fine(element.get("x", "")) - round(part * sum(steps))
        self._select(_FONT, _font(size))
        self._add(_TEXT_COLOUR, struct.pack("<I", _colour(element.get("fill", ""))))
        self._add(_TEXT, _text(text, (x, _fine(element.get("y", ""))), steps))

    def _select(self, kind: int, description: bytes) -> None:
        """Select a pen, a brush or the font, which is made when it is wanted first."""
        key = bytes([kind]) + description
        if key not in self._objects:
            self._objects[key] = len(self._objects) + 1
            self._add(kind, struct.pack("<I", self._objects[key]) + description)
        self._select_stock(self._objects[key])

    def _select_stock(self, handle: int) -> None:
        self._add(_SELECT, struct.pack("<I", handle))

    def _add(self, kind: int, content: bytes) -> None:
        self._records.append(_record(kind, content))


def _record(kind: int, content: bytes) -> bytes:
    return struct.pack("<II", kind, 8 + len(content)) + content


def _fine(number: str) -> int:
    return round(float(number) * FINE)


def _colour(name: str) -> int:
    """``#rrggbb`` → the number of red, green and blue, red lowest."""
    return int.from_bytes(bytes.fromhex(name.removeprefix("#")), "little")


def _points(text: str) -> Iterator[Point]:
    for pair in text.split():
        x, _, y = pair.partition(",")
        yield float(x), float(y)


def _corners(element: ElementTree.Element) -> list[Point]:
    x, y, width, height = (float(element.get(key, "0")) for key in ("x", "y", "width", "height"))
    return [(x, y), (x + width, y), (x + width, y + height), (x, y + height)]


def _dashes(start: Point, end: Point, pattern: str) -> Iterator[tuple[Point, Point]]:
    """The strokes of a line; a dashed one is written stroke by stroke."""
    whole = dist(start, end)
    lengths = [float(each) for each in pattern.split()] or [whole]

    def at(way: float) -> Point:
        part = min(way / whole, 1.0)
        return start[0] + part * (end[0] - start[0]), start[1] + part * (end[1] - start[1])

    for place, (begin, stop) in enumerate(pairwise(accumulate(cycle(lengths), initial=0.0))):
        if begin >= whole:
            return
        if place % 2 == 0:
            yield at(begin), at(stop)


def _poly(points: Iterable[Point]) -> bytes:
    steps = [(round(x * FINE), round(y * FINE)) for x, y in points]
    xs, ys = zip(*steps, strict=True)
    head = struct.pack("<4iI", min(xs), min(ys), max(xs), max(ys), len(steps))
    return head + b"".join(struct.pack("<2i", *step) for step in steps)


def _font(size: int) -> bytes:
    """A font of upright letters; what is left at nought is for the program to choose."""
    plain, letters = struct.pack("<5i8B", -size, 0, 0, 0, 400, *(8 * [0])), FACE.encode("utf-16-le")
    return (plain + letters).ljust(320, b"\0")


def _text(text: str, at: tuple[int, int], steps: list[int]) -> bytes:
    letters = text.encode("utf-16-le")
    padded = letters.ljust(-(-len(letters) // 4) * 4, b"\0")
    # A letter outside the basic plane counts as two, the second without width.
    moves = [
        move for letter, step in zip(text, steps, strict=True) for move in _moves(letter, step)
    ]
    scale = 2540 / _PER_INCH
    head = struct.pack("<4iI2f", 0, 0, -1, -1, 1, scale, scale)
    head += struct.pack("<2i3I4iI", *at, len(moves), 76, 0, 0, 0, -1, -1, 76 + len(padded))
    return head + padded + struct.pack(f"<{len(moves)}I", *moves)


def _moves(letter: str, step: int) -> tuple[int, ...]:
    return (step, 0) if ord(letter) > 0xFFFF else (step,)
