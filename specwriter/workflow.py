"""The use cases as plain functions: paths in, result objects out. Nothing here prints or writes."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from specwriter.diagnostic import Fault, Finding, Grade, Place
from specwriter.model import Job, build_job
from specwriter.source import Source, read_carried, read_source

if TYPE_CHECKING:
    from specwriter.assemble import Choice, Document, Enclosure, Folder, Library
    from specwriter.assemble.clause import LibraryClause
    from specwriter.reading import JobInside
    from specwriter.reconcile import Reconciliation
    from specwriter.report.carried import Carried
    from specwriter.report.result import CheckResult
    from specwriter.report.worksheet_result import WorksheetResult
    from specwriter.rules import Defect
    from specwriter.rules.causes import Look

FORMATS = ("docx", "html", "md")


@dataclass(frozen=True, slots=True, kw_only=True)
class Loaded:
    """A job file as read; ``job`` is ``None`` when the source has faults."""

    source: Source
    job: Job | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Drafted:
    """A special provision and its files: format → content."""

    document: Document
    contents: dict[str, bytes]


def load(path: Path) -> Loaded:
    """Read a job file. Never raises on bad input: the faults are in the source."""
    return load_source(read_source(path))


def load_source(source: Source) -> Loaded:
    """The job of a source that has been read."""
    readable = source.data is not None and not source.faults
    return Loaded(source=source, job=build_job(source.data or {}) if readable else None)


def check(path: Path, clauses: Path | None = None) -> CheckResult:
    """Read a job file and check it: relations, rules, then what somebody has accepted.

    Of a Word file the job inside is checked, and the text is held against what that job gives
    with the library and the ``clauses`` of the user, or those that the file carries.
    """
    if path.suffix.lower() == ".docx":
        return _check_document(path, clauses)
    return _checked(load(path))


def check_source(source: Source) -> CheckResult:
    """Check the job of a source that has been read."""
    return _checked(load_source(source))


def _check_document(path: Path, clauses: Path | None) -> CheckResult:
    from specwriter.reading import ReadingFault, job_inside
    from specwriter.report.result import CheckResult

    content, inside = b"", None
    try:
        content = path.read_bytes()
        inside = job_inside(content)
        says, todo = "this Word file carries no job", "check the job file that it was drafted from"
    except OSError as error:
        says, todo = (error.strerror or str(error)).lower(), "check the name of the file"
    except ReadingFault as fault:
        says, todo = fault.says, fault.todo
    if inside is None:
        place = Place(file=str(path), line=1, column=1)
        faults = (Fault(place=place, says=says, todo=todo),)
        return CheckResult(source=Source(file=str(path), text="", data=None, faults=faults))
    checked = check_inside(inside, str(path))
    return replace(checked, carried=_carried(path, content, inside, checked, clauses))


def check_inside(inside: JobInside, name: str) -> CheckResult:
    """Check the job that a Word file carries, with the house settings that it carries."""
    return check_source(read_carried(inside.text, name, inside.settings))


def clauses_inside(inside: JobInside, given: Path | None) -> Path | Folder | None:
    """The clauses ``given``, else those that a Word file carries."""
    from specwriter.assemble import Folder

    own = Folder(inside.clauses, inside.clause_files) if inside.clause_files else None
    return given or own


def missing_inside(inside: JobInside, checked: CheckResult, given: Path | None) -> str:
    """What a Word file was drafted with and neither carries nor was given; empty for nothing."""
    house = checked.job and checked.job.settings and checked.job.settings.file
    if house and inside.settings is None:
        return f"it was drafted with the house settings '{house}', and does not carry them"
    if inside.clauses and clauses_inside(inside, given) is None:
        return f"it was drafted with the clauses '{inside.clauses}'; name them with --clauses"
    return ""


def _carried(
    path: Path, content: bytes, inside: JobInside, checked: CheckResult, clauses: Path | None
) -> Carried:
    from specwriter.assemble import HouseError, LibraryError
    from specwriter.reading import provision_lines
    from specwriter.report.carried import Carried, differences

    found = Carried(
        file=str(path), whole=inside.whole, changed=inside.changed, clauses=inside.clauses
    )
    if checked.job is None:
        return replace(found, undrafted="The job inside cannot be read, so nothing is compared.")
    if missing := missing_inside(inside, checked, clauses):
        return replace(found, undrafted=f"{missing[0].upper()}{missing[1:]}.")
    try:
        drafted = draft(checked, ("docx",), clauses_inside(inside, clauses))
        given = provision_lines(drafted.contents["docx"])
    except (LibraryError, HouseError) as error:
        return replace(found, undrafted=f"The job inside cannot be drafted: {error}.")
    return replace(found, differences=differences(provision_lines(content), given))


def _checked(loaded: Loaded) -> CheckResult:
    from specwriter.report.result import CheckResult
    from specwriter.rules import run_rules
    from specwriter.rules.acceptance import settle
    from specwriter.rules.causes import Look

    if loaded.job is None:
        return CheckResult(source=loaded.source)
    solved, tied, broken = _reconciled(loaded.job)
    rules = run_rules(loaded.job)
    looks = (Look(tied=tied, ruled=rules.found), *_of_alternatives(loaded.job))
    found = [each for look in looks for each in look.found]
    settled = settle(loaded.job, found, {*slugs(), *(each.slug for each in found)})
    told = [each for look in looks for each in look.told(settled.covered)]
    order = _by_grade_and_place(loaded.source)
    return CheckResult(
        source=loaded.source,
        job=loaded.job,
        findings=tuple(sorted((*told, *settled.complaints), key=order)),
        accepted=tuple(sorted(settled.accepted, key=lambda each: order(each.finding))),
        not_run=(*(solved.not_run if solved else ()), *rules.not_run),
        areas=solved.areas if solved else (),
        defects=(*broken, *rules.defects),
        ran=(*(solved.ran if solved else ()), *rules.ran),
    )


def _of_alternatives(job: Job) -> Iterator[Look]:
    """Each alternative of an area, looked at as if it were the area's own."""
    from specwriter.model import with_each_alternative
    from specwriter.rules import run_rules
    from specwriter.rules.causes import Look

    for other, alternative in with_each_alternative(job):
        _, tied, _ = _reconciled(other)
        yield Look(tied=tied, ruled=run_rules(other).found, below=alternative.path)


def _reconciled(
    job: Job,
) -> tuple[Reconciliation | None, tuple[Finding, ...], tuple[Defect, ...]]:
    """The reconciliation and its findings; when it breaks, the rules still run."""
    from specwriter.reconcile import findings_of, reconcile
    from specwriter.rules import Defect

    try:
        solved = reconcile(job)
        return solved, tuple(findings_of(solved)), ()
    except Exception as error:
        return None, (), (Defect(slug="reconcile", error=f"{type(error).__name__}: {error}"),)


def _by_grade_and_place(source: Source) -> Callable[[Finding], tuple[int, int, int, str]]:
    def order(finding: Finding) -> tuple[int, int, int, str]:
        place = source.place(finding.path)
        return finding.grade.rank, place.line, place.column, finding.slug

    return order


def slugs() -> tuple[str, ...]:
    """Every name that a check can have, in alphabetical order."""
    return tuple(explanations())


def draft(
    checked: CheckResult,
    formats: Iterable[str] = ("docx",),
    clauses: Path | Folder | None = None,
) -> Drafted:
    """The special provision of a checked job, in the formats asked for.

    Raises ``assemble.LibraryError`` when the clause library has faults, ``ValueError`` when the
    job could not be read.
    """
    from specwriter.assemble import assemble, load_library

    if checked.job is None:
        raise ValueError("a job with faults cannot be drafted")
    text = checked.source.text
    document = assemble(
        checked.job,
        load_library(clauses),
        status=_status(checked),
        job_text=text,
        job_digest=hashlib.sha256(text.encode("utf-8")).hexdigest(),
        settings=_house_file(checked.source),
    )
    return Drafted(document=document, contents={each: _render(document, each) for each in formats})


def _house_file(source: Source) -> tuple[Enclosure, ...]:
    from specwriter.assemble import Enclosure

    house = source.house
    return (Enclosure("settings", Path(house.file).name, house.text),) if house else ()


def registers(checked: CheckResult, document: Document) -> dict[str, bytes]:
    """The registers of a drafted job as files: what follows the stem → content."""
    from specwriter.report.registers import registers_csv, registers_json, registers_of
    from specwriter.worksheet import work_out

    if checked.job is None:
        raise ValueError("a job with faults has no registers")
    made = registers_of(checked, document, work_out(checked.job))
    files = {f".{each.name}.csv": registers_csv(each) for each in made}
    return {".registers.json": registers_json(made), **files}


def memo(
    checked: CheckResult, document: Document, formats: Iterable[str], clauses: Path | None = None
) -> dict[str, bytes]:
    """The rationale memo of a drafted job: format → content."""
    from specwriter.assemble import load_library
    from specwriter.report.rationale import memo_of
    from specwriter.worksheet import work_out

    if checked.job is None:
        raise ValueError("a job with faults has no memo")
    made = memo_of(checked, document, load_library(clauses), work_out(checked.job))
    return {each: _render(made, each) for each in formats}


def clause_library(folder: Path | None = None) -> Library:
    """The clause library, with a user's own folder put over it; raises ``LibraryError``."""
    from specwriter.assemble import LibraryError, check_library, load_library

    library = load_library(folder)
    if faults := check_library(library):
        raise LibraryError(faults)
    return library


def choices(job: Job, folder: Path | None = None) -> tuple[tuple[Choice, ...], Library]:
    """Why each clause of the library is in the provision of a job or not, in its order.

    Raises ``LibraryError`` and ``HouseError``.
    """
    from specwriter.assemble import select
    from specwriter.assemble.house import house_format

    library = clause_library(folder)
    return select(job, library, house_format(job, library)), library


def review_clauses(folder: Path | None = None) -> tuple[tuple[Fault, ...], int]:
    """Every fault of a user's folder of clauses, or of the library, and how many it looked at."""
    from specwriter.assemble import check_library, load_library
    from specwriter.assemble.review import review

    library = load_library(folder)
    own = f"{folder}/" if folder else ""
    clauses = [each for each in library.clauses if each.file.startswith(own)]
    worded = (fault for clause in clauses for fault in _wording_of(clause))
    faults = (*check_library(library), *library.strays, *review(clauses), *worded)
    ordered = sorted(faults, key=lambda each: (each.place.file, each.place.line))
    return tuple(ordered), len(clauses)


def _wording_of(clause: LibraryClause) -> Iterator[Fault]:
    """What the rules on wording say about the words of a clause, each at its place."""
    from specwriter.assemble.review import prose
    from specwriter.rules.clause_wording import remarks

    text = prose(clause.body)
    for remark in remarks(text):
        line = clause.body_line + text.count("\n", 0, remark.start)
        column = remark.start - text.rfind("\n", 0, remark.start)
        place = Place(file=clause.file, line=line, column=column)
        yield Fault(place=place, says=remark.says, todo=remark.todo)


def _status(checked: CheckResult) -> str:
    count = len(checked.at_least(Grade.CONFLICT))
    if not count:
        return ""
    conflicts = "1 UNSETTLED CONFLICT" if count == 1 else f"{count} UNSETTLED CONFLICTS"
    return f"DRAFT WITH {conflicts} - NOT FOR A CONTRACT"


def _render(document: Document, format: str) -> bytes:
    if format == "docx":
        from specwriter.render.docx import render_docx

        return render_docx(document)
    if format == "html":
        from specwriter.render.html import render_html

        return render_html(document).encode("utf-8")
    from specwriter.render.markdown import render_markdown

    return render_markdown(document).encode("utf-8")


def worksheet(path: Path) -> WorksheetResult:
    """Every figure that can be computed from a job file, and what the others wait for."""
    from specwriter.report.worksheet_result import WorksheetResult
    from specwriter.worksheet import work_out

    loaded = load(path)
    figures = None if loaded.job is None else work_out(loaded.job)
    return WorksheetResult(source=loaded.source, worksheet=figures)


def new_job(texture: str) -> str:
    """The commented job file that a job of this texture starts from; ``KeyError`` if unknown."""
    from specwriter.source import starter

    return starter(texture)


def explain(slug: str) -> str:
    """The page on one check; ``KeyError`` when there is none of that name."""
    pages = explanations()
    return pages[slug]()


def explanations() -> dict[str, Callable[[], str]]:
    """Slug → the page on it, for every rule, relation and the acceptance of findings."""
    from functools import partial

    from specwriter.report import explain_text as page
    from specwriter.report.relation_page import pages as relation_pages
    from specwriter.rules import all_rules
    from specwriter.rules.acceptance import SLUG

    pages: dict[str, Callable[[], str]] = {SLUG: page.acceptance_text}
    pages |= {slug: partial(page.relation_text, each) for slug, each in relation_pages().items()}
    pages |= {each.slug: partial(page.rule_text, each) for each in all_rules()}
    return dict(sorted(pages.items()))


def reference() -> str:
    """Every check by topic, as one chapter of Markdown."""
    from specwriter.report.reference import reference_markdown

    return reference_markdown()


def schema_file() -> Path:
    """Where the JSON Schema of the job file lies."""
    from specwriter import source

    return Path(source.__file__).with_name("schema.json")
