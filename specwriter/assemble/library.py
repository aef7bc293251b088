"""The clause library: every clause file of the tool, and those that a user adds or replaces."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from specwriter.assemble.clause import LibraryClause, read_clause
from specwriter.assemble.front_matter import fault_at
from specwriter.assemble.outline import NO_FORMATS, Formats, Outline, read_outline
from specwriter.diagnostic import Fault

_OUTLINE = "outline.yaml"


@dataclass(frozen=True, slots=True)
class Folder:
    """A user's folder of clauses as texts: how it is named, and its files by their path in it."""

    name: str
    files: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Library:
    """Clauses in the order of id, the house formats, and what could not be read.

    ``replaced`` names, for each id that a user's folder has taken over, the file that gave way.
    """

    clauses: tuple[LibraryClause, ...]
    formats: Formats
    faults: tuple[Fault, ...] = ()
    replaced: tuple[tuple[str, str], ...] = ()
    strays: tuple[Fault, ...] = ()
    """Files that look like clauses and stand where none is read."""
    shipped: bool = False
    """True for the tool's own library, which the tests have checked, and not every draft."""
    own: Folder | None = None
    """The folder of the user."""

    @property
    def outline(self) -> Outline:
        """The format that is used where the job names none."""
        return self.formats.usual


def library_root() -> Path:
    """The folder of clauses: inside the installed package, else beside it."""
    package = Path(__file__).parent.parent
    inside = package / "clauses"
    return inside if inside.is_dir() else package.parent / "clauses"


def load_library(extra: Path | Folder | None = None) -> Library:
    """The tool's clauses, with those of ``extra`` added or put in place of the same id.

    Never raises on a bad clause file: what is wrong is in ``Library.faults``.
    """
    library = replace(read_folder(library_root(), "clauses"), own=None)
    if extra is None:
        return replace(library, shipped=not library.faults)
    if isinstance(extra, Folder):
        return merged(library, read_texts(extra))
    if not extra.is_dir():
        says = f"there is no folder of clauses '{extra}'"
        fault = fault_at(str(extra), 1, 1, says, "name an existing folder")
        return Library(
            clauses=library.clauses,
            formats=library.formats,
            faults=(*library.faults, fault),
        )
    return merged(library, read_folder(extra, str(extra)))


def merged(base: Library, extra: Library) -> Library:
    """The clauses of both; where both have an id, that of ``extra``."""
    ours = {clause.id: clause for clause in base.clauses}
    by_id = ours | {clause.id: clause for clause in extra.clauses}
    return Library(
        clauses=tuple(by_id[key] for key in sorted(by_id)),
        formats=extra.formats.over(base.formats) if extra.formats.outlines else base.formats,
        faults=(*base.faults, *extra.faults),
        strays=extra.strays,
        replaced=tuple((c.id, ours[c.id].file) for c in extra.clauses if c.id in ours),
        own=extra.own,
    )


def read_folder(root: Path, shown: str) -> Library:
    """The clauses in one folder; ``shown`` is how its files are named in messages."""
    files, faults = [], []
    found = _files(root)
    for path, name in found.items():
        try:
            files.append((name, path.read_text(encoding="utf-8-sig")))
        except (OSError, UnicodeDecodeError):
            says, todo = "this file cannot be read as text", "save it as plain text in UTF-8"
            faults.append(fault_at(f"{shown}/{name}", 1, 1, says, todo))
    made = read_texts(Folder(shown, tuple(files)))
    strays = tuple(_strays(root, shown, found))
    return replace(made, faults=(*faults, *made.faults), strays=strays)


def read_texts(folder: Folder) -> Library:
    """The clauses and house formats of a folder that has been read."""
    formats = NO_FORMATS
    faults: list[Fault] = []
    clauses: list[LibraryClause] = []
    for name, text in folder.files:
        file = f"{folder.name}/{name}"
        if name == _OUTLINE:
            formats, found = read_outline(text, file)
        else:
            id = ".".join(Path(name).with_suffix("").parts)
            clause, found = read_clause(text, file, id)
            clauses += [clause] if clause else []
        faults += found
    return Library(clauses=tuple(clauses), formats=formats, faults=tuple(faults), own=folder)


def _strays(root: Path, shown: str, read: Collection[Path]) -> Iterator[Fault]:
    todo = "a clause is read from FOLDER/NAME.md, house formats from outline.yaml"
    strays = [path for path in sorted(root.rglob("*")) if path not in read and _is_likely(path)]
    for path in strays:
        file = "/".join((shown, *path.relative_to(root).parts))
        yield fault_at(file, 1, 1, "this file is not read", todo)
    if not read and not strays:
        yield fault_at(shown, 1, 1, "this folder holds no clause and no house format", todo)


def _is_likely(path: Path) -> bool:
    """Whether somebody who put a file there may have meant it as a clause or an outline."""
    stem = path.stem.lower()
    return path.is_file() and (
        stem == "outline" or (path.suffix.lower() == ".md" and stem != "readme")
    )


def _files(root: Path) -> dict[Path, str]:
    """The outline, if there is one, and the clause files in the order of their ids.

    Each with its path below the folder.
    """
    outline = root / _OUTLINE
    found = {outline: _OUTLINE} if outline.is_file() else {}
    return found | {path: f"{path.parent.name}/{path.name}" for path in sorted(root.glob("*/*.md"))}
