"""``specwriter draft``: the special provision of a job, after its check."""

from __future__ import annotations

import re
from pathlib import Path
from typing import TYPE_CHECKING

import click

from specwriter.cli import exit_codes
from specwriter.cli.files import write_all
from specwriter.cli.library import Refused, telling
from specwriter.cli.options import FILE, code_of
from specwriter.cli.output import report, say
from specwriter.diagnostic import Grade

if TYPE_CHECKING:
    from specwriter.report.result import CheckResult
    from specwriter.workflow import Drafted

_FORMATS = ("docx", "html", "md")


def _formats(ctx: click.Context, param: click.Parameter, value: str) -> tuple[str, ...]:
    chosen = tuple(dict.fromkeys(part.strip() for part in value.split(",") if part.strip()))
    for each in chosen:
        if each not in _FORMATS:
            raise click.BadParameter(f"'{each}' is not one of {', '.join(_FORMATS)}")
    if not chosen:
        raise click.BadParameter(f"give one or more of {', '.join(_FORMATS)}")
    return chosen


@click.command()
@click.argument("job", type=FILE)
@click.option(
    "--to",
    type=FILE,
    required=True,
    metavar="FOLDER|FILE",
    help="Folder to write into, or one file ending in .docx, .html or .md.",
)
@click.option(
    "--format",
    "formats",
    default="docx",
    show_default=True,
    callback=_formats,
    help="docx, html, md, or several with commas between.",
)
@click.option("--clauses", type=FILE, help="Your own folder of clauses, added to the library.")
@click.option(
    "--registers",
    is_flag=True,
    help="Write requirements, submittals, tests, pay items, references, open decisions and "
    "accepted findings as .csv and .json beside it.",
)
@click.option(
    "--memo", is_flag=True, help="Write a memo with the reason and source of every value beside it."
)
@click.option("--with-conflicts", is_flag=True, help="Draft although conflicts are not settled.")
@click.option("--force", is_flag=True, help="Overwrite files that exist.")
def command(
    job: Path,
    to: Path,
    formats: tuple[str, ...],
    clauses: Path | None,
    registers: bool,
    memo: bool,
    with_conflicts: bool,
    force: bool,
) -> int:
    """Check a job, print the report, and write its special provision."""
    from specwriter.workflow import check

    if clauses is not None and not clauses.is_dir():
        raise click.ClickException(f"{clauses} is not a folder of clauses")
    result = check(job)
    report([result])
    code = code_of(result, Grade.CONFLICT)
    if result.job is None:
        return code
    conflicts = len(result.at_least(Grade.CONFLICT))
    if conflicts and not with_conflicts:
        say(f"specwriter: nothing written: {_conflicts(conflicts)}")
        return code
    return _write(result, _targets(result, to, formats), clauses, registers, memo, force)


def _conflicts(count: int) -> str:
    many = "1 conflict is" if count == 1 else f"{count} conflicts are"
    return f"{many} not settled; settle, accept, or give --with-conflicts"


def _targets(result: CheckResult, to: Path, formats: tuple[str, ...]) -> dict[str, Path]:
    """Format → file to write."""
    single = to.suffix.removeprefix(".").lower()
    if single in _FORMATS and not to.is_dir():
        return {single: to}
    if to.is_file():
        raise click.ClickException(f"{to} is a file that is no .docx, .html or .md, nor a folder")
    return {each: to / f"{_stem(result)}.{each}" for each in formats}


def _stem(result: CheckResult) -> str:
    """The number of the provision where it can be a file name, else the name of the job file."""
    number = result.job.project.provision if result.job else None
    if number and re.fullmatch(r"[A-Za-z0-9][\w.-]*", number):
        return number
    return Path(result.source.file).stem


def _write(
    result: CheckResult,
    targets: dict[str, Path],
    clauses: Path | None,
    registers: bool,
    memo: bool,
    force: bool,
) -> int:
    from specwriter.workflow import draft

    try:
        with telling(own=clauses is not None, source=result.source):
            drafted = draft(result, tuple(targets), clauses)
    except Refused as refused:
        return refused.code
    files = {path: drafted.contents[each] for each, path in targets.items()}
    if registers:
        files |= _registers(result, drafted, next(iter(targets.values())))
    if memo:
        files |= _memo(result, drafted, targets, clauses)
    write_all(files, force=force)
    for path in files:
        say(f"wrote {path}")
    say(_open(drafted))
    if absent := len(drafted.document.unexpressed):
        many = "1 requirement" if absent == 1 else f"{absent} requirements"
        say(f"no clause states {many} of the job; the front sheet lists what is missing")
    return exit_codes.DEFECT if result.defects else exit_codes.OK


def _registers(result: CheckResult, drafted: Drafted, beside: Path) -> dict[Path, bytes]:
    from specwriter.workflow import registers

    made = registers(result, drafted.document)
    return {beside.with_name(f"{beside.stem}{end}"): content for end, content in made.items()}


def _memo(
    result: CheckResult, drafted: Drafted, targets: dict[str, Path], clauses: Path | None
) -> dict[Path, bytes]:
    from specwriter.workflow import memo

    made = memo(result, drafted.document, targets, clauses)
    return {
        path.with_name(f"{path.stem}.memo{path.suffix}"): made[each]
        for each, path in targets.items()
    }


def _open(drafted: Drafted) -> str:
    decisions = len(drafted.document.open_decisions)
    if not decisions:
        return "no decision is open in the document"
    many = "1 open decision is" if decisions == 1 else f"{decisions} open decisions are"
    return f"{many} marked in the document and listed on its front sheet"
