"""Who may import whom, who may speak to the outside, and what may not stand in the source."""

from __future__ import annotations

import ast
import re
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "specwriter"
MODULES = sorted(PACKAGE.rglob("*.py"))

LAYERS: dict[str, str] = {
    "quantity": "",
    "diagnostic": "",
    "trade": "quantity",
    "model": "quantity",
    "source": "quantity diagnostic",
    "reconcile": "model quantity trade diagnostic",
    "rules": "model quantity trade diagnostic",
    "worksheet": "model quantity trade diagnostic",
    "assemble": "model quantity diagnostic",
    "render": "assemble.document",
    "reading": "",
    "compare": "model quantity diagnostic trade reconcile reading",
    "report": "quantity diagnostic trade model source reconcile rules worksheet assemble compare "
    "render reading",
    "workflow": "quantity diagnostic trade model source reconcile rules worksheet assemble render "
    "compare reading report",
    "versions": "quantity diagnostic trade model source reconcile rules worksheet assemble render "
    "compare reading report workflow",
    "cli": "quantity diagnostic trade model source reconcile rules worksheet assemble render "
    "compare reading report workflow versions",
    "__main__": "cli",
}
"""Room → the rooms (or the one module of a room) that it may import besides itself."""

LIBRARIES: dict[str, tuple[str, ...]] = {
    "click": ("cli",),
    "docx": ("render.docx",),
    "lxml": ("render.docx",),
    "jinja2": ("assemble",),
    "jsonschema": ("source",),
    "markdown_it": ("assemble",),
    "yaml": ("source", "assemble", "rules.word_list"),
}
"""Library → the only rooms that may import it."""

OURS = ("specwriter", "_typeshed")
"""The package itself, and the names that the type checker alone reads."""

HEAVY = ("docx", "jinja2", "jsonschema", "markdown_it", "yaml")
"""Libraries that must not be loaded before a command needs them."""

OUTSIDE = frozenset({"ftplib", "http", "requests", "smtplib", "socket", "ssl", "time", "urllib"})
CLOCK_CALLS = frozenset({"now", "today", "utcnow"})
LONGEST_MODULE = 400

ADDRESS = re.compile(r"https?:/" r"/|\bwww\.")
NAMESPACE = re.compile(
    r"(?:schemas\.openxmlformats\.org|purl\.oclc\.org|schemas\.microsoft\.com|www\.w3\.org|purl\.org)/"
)
DIALECT = '"$schema"'
"""The line by which a JSON Schema names its own language."""

PROSE = (".css", ".html", ".json", ".md", ".py", ".svg", ".toml", ".txt", ".xml", ".yaml")


def name_of(path: Path) -> str:
    """The dotted name of a module below the package: ``quantity.grammar``."""
    parts = path.relative_to(PACKAGE).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


@cache
def tree_of(path: Path) -> ast.Module:
    return ast.parse(path.read_text("utf-8"))


def imports_of(path: Path) -> Iterator[str]:
    """Every module that a module imports, at its top or inside its functions."""
    for node in ast.walk(tree_of(path)):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{name_of(path)} imports by dots"
            assert node.module is not None
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def lies_in(module: str, room: str) -> bool:
    return module == room or module.startswith(f"{room}.")


def test_every_room_has_its_line_in_the_table() -> None:
    rooms = {name_of(path).split(".")[0] for path in MODULES} - {""}

    assert rooms <= set(LAYERS)


@pytest.mark.parametrize("room", LAYERS)
def test_a_room_imports_only_what_lies_below_it(room: str) -> None:
    allowed = (room, *LAYERS[room].split(), "__version__")
    forbidden = [
        f"{name_of(path)} imports {wanted}"
        for path in MODULES
        if lies_in(name_of(path), room)
        for wanted in imports_of(path)
        if lies_in(wanted, "specwriter")
        and not any(lies_in(wanted.removeprefix("specwriter."), place) for place in allowed)
    ]

    assert forbidden == []


def test_a_library_is_imported_only_in_its_room() -> None:
    forbidden = [
        f"{name_of(path)} imports {wanted}"
        for path in MODULES
        for wanted in {each.split(".")[0] for each in imports_of(path)}
        if wanted not in (*sys.stdlib_module_names, *OURS)
        and not name_of(path).startswith(LIBRARIES.get(wanted, ()))
    ]

    assert forbidden == []


def test_nobody_reads_the_clock_or_the_network() -> None:
    imported = [
        f"{name_of(path)} imports {wanted}"
        for path in MODULES
        for wanted in imports_of(path)
        if wanted.split(".")[0] in OUTSIDE
    ]
    called = [
        f"{name_of(path)}:{node.lineno} asks for {node.func.attr}()"
        for path in MODULES
        for node in ast.walk(tree_of(path))
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Attribute)
        and node.func.attr in CLOCK_CALLS
    ]

    assert imported + called == []


def test_only_the_command_line_prints_reads_arguments_and_exits() -> None:
    found = [
        f"{name_of(path)}:{node.lineno}"
        for path in MODULES
        if not name_of(path).startswith(("cli", "__main__"))
        for node in ast.walk(tree_of(path))
        if (isinstance(node, ast.Name) and node.id in ("print", "input"))
        or (isinstance(node, ast.Attribute) and node.attr in ("argv", "exit", "_exit"))
    ]

    assert found == []


def test_starting_the_command_line_loads_no_heavy_library() -> None:
    script = (
        "import sys, specwriter.cli; print(*(name for name in sys.argv[1:] if name in sys.modules))"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, *HEAVY], capture_output=True, text=True, check=True, cwd=ROOT
    )

    assert done.stdout.split() == []


def test_no_module_is_too_long_to_be_read_at_once() -> None:
    paths = (*MODULES, *(ROOT / "tests").rglob("*.py"))
    long = {
        str(path.relative_to(ROOT)): lines
        for path in paths
        if (lines := path.read_text("utf-8").count("\n")) > LONGEST_MODULE
    }

    assert long == {}


def texts() -> Iterator[Path]:
    """Every text that is delivered: package, clauses, examples and the pages at the top."""
    for folder in (PACKAGE, ROOT / "clauses", ROOT / "examples"):
        yield from (path for path in sorted(folder.rglob("*")) if path.suffix in PROSE)
    yield from (path for path in sorted(ROOT.iterdir()) if path.suffix in PROSE)


def test_no_web_address_stands_in_what_is_delivered() -> None:
    found = [
        f"{path.relative_to(ROOT)}:{number}"
        for path in texts()
        for number, line in enumerate(path.read_text("utf-8").splitlines(), start=1)
        if ADDRESS.search(line) and not is_identifier(path, line)
    ]

    assert found == []


def is_identifier(path: Path, line: str) -> bool:
    """An address that only names an XML namespace or a schema language; nobody opens it."""
    if any(path.is_relative_to(PACKAGE / room) for room in ("render", "reading")):
        return len(ADDRESS.findall(line)) <= 2 * len(NAMESPACE.findall(line))
    return path.suffix == ".json" and DIALECT in line
