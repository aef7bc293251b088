"""Jobs that give every key of the schema, each number in them a number that no other key has."""

from __future__ import annotations

import itertools
import json
import re
from functools import cache, reduce
from pathlib import Path
from typing import Any

import specwriter.source
from specwriter.model import Job, build_job

_NUMBER = re.compile(r"(?<![A-Za-z\d.,/-])\d[\d,]*(?:\.\d+)?(?:-\d+/\d+|/\d+)?")
_WHOLE = re.compile(r"\d+\+\d+|\d\d:\d\d|\d{4}-\d\d-\d\d")
_EITHER = re.compile(f"{_WHOLE.pattern}|{_NUMBER.pattern}")
_COUNTS = ("readings", "tries", "runs", "passes", "per_head", "failed_allowed")
_WORDS = {"pavement": "jointed_plain_concrete", "hardness": "soft", "schedule": "table"}
_YES = ("curbs", "in_pavement_lights", "arresting_gear", "bridges_within", "loop_detectors")


@cache
def schema() -> dict[str, Any]:
    """The published schema of the job file."""
    path = Path(specwriter.source.__file__).parent / "schema.json"
    found: dict[str, Any] = json.loads(path.read_text("utf-8"))
    return found


Told = list[tuple[str, str]]
"""(path, what stands there)."""


def numbered(texture: str, place: str, *, own_facts: bool = False) -> tuple[Job, Told]:
    """A job with one area that gives each key the schema allows it, and the numbers in it.

    The facts of the place stand under the area (``own_facts``) or under the contract.
    """
    job, numbers, _ = written(texture, place, own_facts=own_facts)
    return job, numbers


def written(
    texture: str, place: str, *, own_facts: bool = False, house_format: str = "five_part"
) -> tuple[Job, Told, Told]:
    """The same in a house format, with the texts without a number beside the numbers."""
    maker = _Maker(texture, place, own_facts=own_facts)
    data = maker.made(schema(), ())
    data["settings"] |= {"house_format": house_format, "numbering": "plain"}
    data["project"]["base_section"]["changes"][0]["clauses"] = ["common.residue"]
    return build_job(data), maker.numbers, maker.texts


class _Maker:
    """Follows the schema; a counter gives each number its last digits."""

    def __init__(self, texture: str, place: str, *, own_facts: bool) -> None:
        self.own_facts = own_facts
        self.fixed = {"texture": texture, "place": place, "format": 1}
        self.count = itertools.count(111)
        self.numbers: Told = []
        self.texts: Told = []

    def made(self, part: dict[str, Any], path: tuple[str, ...]) -> Any:
        if "$ref" in part:
            way = part["$ref"].removeprefix("#/").split("/")
            return self.made(reduce(lambda here, key: here[key], way, schema()), path)
        if "properties" in part:
            keys = part["properties"].items()
            return {
                key: self.made(each, (*path, key)) for key, each in keys if self.fits(key, path)
            }
        if isinstance(part.get("additionalProperties"), dict):
            return {"first": self.made(part["additionalProperties"], (*path, "first"))}
        if part.get("type") == "array":
            return [self.made(part["items"], (*path, "0"))]
        return self.leaf(part, path)

    def fits(self, key: str, path: tuple[str, ...]) -> bool:
        if key == "conditions" and path:
            return self.own_facts
        if path == ("conditions",) and key in schema()["$defs"]["place_facts"]["properties"]:
            return not self.own_facts
        texture = self.fixed["texture"]
        if key == "flush_grind":
            return texture == "next_generation_concrete_surface"
        if key == "alternatives":
            return str(texture).endswith("_grooving")
        return key not in ("also_stated", "file")

    def leaf(self, part: dict[str, Any], path: tuple[str, ...]) -> Any:
        key = path[-1]
        if key in self.fixed:
            return self.fixed[key]
        if part.get("type") == "boolean":
            return part["examples"][0] or key in _YES
        if "enum" in part:
            return _WORDS.get(key, part["examples"][0] if "examples" in part else part["enum"][0])
        if key == "pay_item":
            return "first"
        if key in _COUNTS:
            text = str(next(self.count))
        else:
            text = self.renumbered(str(part.get("examples", ["step 1"])[0]))
        found = [each[0] for each in _EITHER.finditer(text)]
        self.numbers += [(".".join(path), number) for number in found]
        if not found:
            text += f" of case {next(self.count)}"
            self.texts.append((".".join(path), text))
        return text

    def renumbered(self, text: str) -> str:
        """The example with each number in it made one that stands nowhere else."""
        if _WHOLE.search(text):
            return _WHOLE.sub(self.whole, text)
        return _NUMBER.sub(lambda found: self.decimal(found, text), text)

    def decimal(self, found: re.Match[str], text: str) -> str:
        """Less than one behind a sign, and rising from the first end of a range to the second."""
        before = text[: found.start()].rstrip()
        lead = 0 if before.endswith(("±", "+", "-")) else 8 + bool(before.endswith(" to"))
        return f"{lead}.{next(self.count)}"

    def whole(self, found: re.Match[str]) -> str:
        number = next(self.count)
        if "+" in found[0]:
            return f"{number}+00"
        if ":" in found[0]:
            return f"{number % 20:02}:{number % 60:02}"
        return f"{number + 1900}-02-01"
