"""Two versions of a provision, in whatever form they come: job, drafted document, or text."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from specwriter.diagnostic import Fault, Place
from specwriter.reading import ReadingFault, job_inside, read_plain, read_word
from specwriter.report.compared import Compared, Version
from specwriter.source import read_source
from specwriter.workflow import (
    check_inside,
    check_source,
    clauses_inside,
    draft,
    missing_inside,
)

if TYPE_CHECKING:
    from specwriter.assemble import Folder
    from specwriter.compare import Comparison
    from specwriter.compare.material import Addendum
    from specwriter.compare.redline import Author
    from specwriter.report.result import CheckResult

_ZIP = b"PK\x03\x04"
_PLAIN = {".txt": False, ".text": False, ".md": True, ".markdown": True}


class VersionFault(Exception):
    """A version that cannot be read as a document: one located fault."""

    def __init__(self, fault: Fault) -> None:
        super().__init__(f"{fault.place.file}: {fault.says}; {fault.todo}")
        self.fault = fault


def compare(
    old: Path,
    new: Path | None = None,
    clauses: Path | None = None,
    addendum: Addendum | None = None,
    names: tuple[str, str] = ("", ""),
) -> Compared:
    """Compare two versions; with one drafted document alone, its text with what its job gives.

    ``names`` are what the two are called where copies of them are read.
    Raises ``VersionFault`` when a document cannot be read, ``assemble.LibraryError`` when a folder
    of clauses has faults.
    """
    if new is None:
        return _with_its_own_job(old, clauses)
    before, after = read_version(old, clauses, names[0]), read_version(new, clauses, names[1])
    compared = Compared(old=before, new=after)
    if compared.faulty:
        return compared
    return _texts(replace(compared, comparison=_jobs(before, after, addendum)))


def _jobs(old: Version, new: Version, addendum: Addendum | None) -> Comparison | None:
    from specwriter import compare as comparing
    from specwriter.compare.material import Addendum

    was, now = old.checked, new.checked
    if was is None or now is None or was.job is None or now.job is None:
        return None
    return comparing.compare(
        was.job,
        now.job,
        was.findings,
        now.findings,
        verdicts=(was.verdicts, now.verdicts),
        addendum=addendum or Addendum(),
    )


def _texts(compared: Compared) -> Compared:
    from specwriter.compare.text import compare_texts
    from specwriter.compare.text.changes import text_changes
    from specwriter.compare.text.edition import same_edition

    old, new = _alike(compared.old, compared.new)
    if old.text is None or new.text is None:
        return compared
    match = compare_texts(old.text, new.text)
    changes = text_changes(match)
    edition = same_edition(match) if compared.comparison is None and changes else ""
    if edition:
        says = f'it calls itself as the other does ("{edition}"), but their content differs'
        new = replace(new, note="; ".join(filter(None, (new.note, says))))
    return replace(compared, old=old, new=new, match=match, text_changes=changes)


def _alike(old: Version, new: Version) -> tuple[Version, Version]:
    """A Word file beside a plain text is read as plain text too."""
    from specwriter.compare.redline.plain import flat

    if old.is_word == new.is_word or old.text is None or new.text is None:
        return old, new
    return tuple(  # type: ignore[return-value]
        replace(each, text=flat(each.text), word=None, is_word=False)
        for each in (old, new)
        if each.text is not None
    )


def _with_its_own_job(path: Path, clauses: Path | None) -> Compared:
    """What was changed by hand in a drafted document since its job was drafted."""
    version = read_version(path, clauses)
    if not version.is_word or version.checked is None or version.checked.job is None:
        says = "this file holds no job to compare its text with"
        raise _fault(path, says, "give two files, or a Word file that was drafted from a job")
    inside = job_inside(version.word or b"")
    own = clauses_inside(inside, clauses) if inside else clauses
    drafted = _drafted(f"{path} (as drafted)", version.checked, own)
    if drafted.text is None:
        raise _fault(path, drafted.note, "compare it with another document instead")
    compared = _texts(Compared(old=drafted, new=replace(version, by_hand=())))
    if compared.text_changes and not version.by_hand:
        note = "its text is as drafted: what differs comes from another version of the clauses"
        return replace(compared, new=replace(compared.new, note=note))
    return compared


def read_version(path: Path, clauses: Path | None = None, name: str = "") -> Version:
    """A job file, a drafted document, any other Word file, Markdown or plain text."""
    try:
        content = path.read_bytes()
    except OSError:
        return Version(name=str(path), checked=check_source(read_source(path)))
    try:
        if content.startswith(_ZIP) or path.suffix.lower() in (".docx", ".docm", ".doc"):
            return _word(path, content, clauses)
    except ReadingFault as fault:
        raise _fault(path, fault.says, fault.todo) from None
    if path.suffix.lower() in _PLAIN:
        return _plain(path, content)
    return _drafted(name or str(path), check_source(read_source(path, name)), clauses)


def _plain(path: Path, content: bytes) -> Version:
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError:
        says = "this file is not written in UTF-8"
        raise _fault(path, says, "save it with the encoding UTF-8") from None
    markdown = _PLAIN[path.suffix.lower()]
    return Version(name=str(path), text=read_plain(text, markdown=markdown))


def _word(path: Path, content: bytes, clauses: Path | None) -> Version:
    text = read_word(content)
    tracked = "it holds tracked changes of its own, which are read as accepted"
    version = Version(
        name=str(path),
        text=text,
        word=content,
        is_word=True,
        note=tracked if text.tracked else "",
    )
    inside = job_inside(content)
    if inside is None or not inside.text.strip():
        return version
    checked = check_inside(inside, f"{path} (job inside)")
    if checked.job is None or not inside.whole:
        note = "the job inside was changed since it was drafted"
        return version if checked.job is None else replace(version, checked=checked, note=note)
    if missing := missing_inside(inside, checked, clauses):
        return replace(version, checked=checked, note=missing)
    if inside.changed is False:
        return replace(version, checked=checked)
    if inside.changed is None:
        note = "it does not say whether its text is as drafted; other clauses may have been used"
        version = replace(version, note=note)
    drafted = _drafted(str(path), checked, clauses_inside(inside, clauses))
    hand = _texts(Compared(old=drafted, new=version)).text_changes
    return replace(version, checked=checked, by_hand=hand)


def _drafted(name: str, checked: CheckResult, clauses: Path | Folder | None) -> Version:
    """The document that a job gives; a job that cannot be drafted is compared without it."""
    from specwriter.assemble import HouseError, LibraryError

    version = Version(name=name, checked=checked)
    if checked.job is None:
        return version
    try:
        word = draft(checked, ("docx",), clauses).contents["docx"]
    except (HouseError, LibraryError, ValueError) as error:
        if clauses is not None:
            raise
        return replace(version, note=f"no document could be drafted: {error}")
    return replace(version, text=read_word(word), word=word, is_word=True)


def _fault(path: Path, says: str, todo: str) -> VersionFault:
    return VersionFault(Fault(place=Place(file=str(path), line=1, column=1), says=says, todo=todo))


def redline(compared: Compared, author: Author) -> bytes:
    """The redline of two versions that both have a text; ``ValueError`` when one has none."""
    from specwriter.compare.redline import redline as mark
    from specwriter.compare.redline.plain import word_file

    old, new = compared.old, compared.new
    if old.text is None or new.text is None or compared.match is None:
        raise ValueError("there is no text to mark")
    if old.word is not None and new.word is not None:
        return mark(old.word, new.word, author, (old.text, new.text, compared.match))
    frame = _frame()
    return mark(word_file(old.text, frame), word_file(new.text, frame), author)


def memo(compared: Compared, ending: str) -> bytes:
    """The change memo of two versions that both have a text, as ``.docx`` or ``.md``."""
    from specwriter.report.change_memo import memo_markdown, memo_word

    if ending == ".md":
        return memo_markdown(compared).encode("utf-8")
    return memo_word(compared, _frame())


def _frame() -> bytes:
    """An empty document of the house, whose looks a plain text takes on."""
    from specwriter.assemble import Document
    from specwriter.render.docx import render_docx

    return render_docx(
        Document(
            title="",
            subtitle="",
            agency="",
            contract="",
            provision="",
            revision="",
            date="",
            status="",
            lead_in="",
            closing="",
            open_decisions=(),
            parts=(),
        )
    )
