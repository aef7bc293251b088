"""``specwriter compare``: what changed between two versions of a provision."""

from __future__ import annotations

import re
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING

import click

from specwriter.cli import exit_codes
from specwriter.cli.files import write_all
from specwriter.cli.git import show
from specwriter.cli.options import FILE, code_of, report_format
from specwriter.cli.output import emit, report, say
from specwriter.diagnostic import Grade

if TYPE_CHECKING:
    from specwriter.report.compared import Compared


def _date(ctx: click.Context, param: click.Parameter, value: str) -> str:
    if value and not re.fullmatch(r"\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])", value):
        raise click.BadParameter(f"'{value}' is not a date such as 2027-03-15")
    return value


def _share(ctx: click.Context, param: click.Parameter, value: str) -> Fraction:
    found = re.fullmatch(r"\s*(\d+(?:\.\d+)?)\s*(?:%|percent)?\s*", value)
    if not found:
        raise click.BadParameter(f"'{value}' is not a share such as '5 percent'")
    return Fraction(found[1]) / 100


@click.command()
@click.argument("versions", metavar="OLD [NEW]", nargs=-1, required=True, type=FILE)
@report_format(
    "json", "md", "html", about="Form of the report; html lays the two texts side by side."
)
@click.option("--redline", type=FILE, metavar="FILE.docx", help="Write a tracked-change document.")
@click.option(
    "--memo",
    type=FILE,
    metavar="FILE",
    help="Write numbered instructions for an addendum, as .docx or .md.",
)
@click.option("--author", default="specwriter", show_default=True, help="Author of the redline.")
@click.option("--date", default="", callback=_date, help="Date of the redline, as 2027-03-15.")
@click.option("--force", is_flag=True, help="Overwrite files that exist.")
@click.option("--clauses", type=FILE, help="Your own folder of clauses, added to the library.")
@click.option(
    "--addendum",
    type=click.Choice(["bids", "every"]),
    default="bids",
    show_default=True,
    help="What calls for an addendum: what touches bids, or every change of substance.",
)
@click.option(
    "--minor-quantity",
    "minor",
    default="0",
    callback=_share,
    metavar="PERCENT",
    help="A pay quantity that moves by no more than this does not call for an addendum.",
)
@click.option(
    "--fail-on",
    type=click.Choice(["nothing", "difference", "material", "conflict"]),
    default="nothing",
    show_default=True,
    help="What gives exit code 1: any difference, one that calls for an addendum, or a conflict "
    "that the new job brings.",
)
@click.option("--git", is_flag=True, help="Take the arguments of git's diff commands.")
def command(
    versions: tuple[Path, ...],
    form: str,
    redline: Path | None,
    memo: Path | None,
    author: str,
    date: str,
    force: bool,
    clauses: Path | None,
    addendum: str,
    minor: Fraction,
    fail_on: str,
    git: bool,
) -> int:
    """Compare two versions: OLD, then NEW.

    A version is a job file, a drafted document (.docx), or any other .docx, .md or .txt. One
    drafted document alone is compared with what the job inside it gives.
    """
    from specwriter.assemble import LibraryError
    from specwriter.compare.material import Addendum
    from specwriter.versions import VersionFault, compare

    if clauses is not None and not clauses.is_dir():
        raise click.ClickException(f"{clauses} is not a folder of clauses")
    setting = Addendum(setting="every" if addendum == "every" else "bids", minor=minor)
    if git:
        return show(
            versions,
            lambda old, new, names: compare(old, new, clauses, setting, names),
            lambda compared: _report(compared, form),
        )
    if len(versions) > 2:
        raise click.UsageError("give two versions: OLD, then NEW")
    old, new = versions[0], versions[1] if len(versions) == 2 else None
    try:
        compared = compare(old, new, clauses, setting)
    except VersionFault as error:
        say(f"specwriter: {error}")
        return exit_codes.UNREADABLE
    except LibraryError as error:
        say(f"specwriter: {error}")
        return exit_codes.USAGE
    if compared.faulty:
        report(compared.faulty, form="text" if form == "md" else form)
        return exit_codes.worst(code_of(each, Grade.CONFLICT) for each in compared.faulty)
    _write(compared, redline, memo, author, date, force)
    emit(_report(compared, form))
    return _code(compared, fail_on)


def _write(
    compared: Compared,
    redline: Path | None,
    memo: Path | None,
    author: str,
    date: str,
    force: bool,
) -> None:
    from specwriter.compare.redline import Author
    from specwriter.versions import memo as memo_of
    from specwriter.versions import redline as redline_of

    if (redline or memo) and compared.match is None:
        raise click.ClickException(f"no redline or memo: {_why(compared)}")
    if redline and redline.suffix.lower() != ".docx":
        raise click.ClickException(f"{redline} must end in .docx")
    if memo and memo.suffix.lower() not in (".docx", ".md"):
        raise click.ClickException(f"{memo} must end in .docx or .md")
    contents = {}
    if redline:
        contents[redline] = redline_of(compared, Author(name=author, date=date))
    if memo:
        contents[memo] = memo_of(compared, memo.suffix.lower())
    write_all(contents, force=force)
    for path in contents:
        say(f"wrote {path}")


def _why(compared: Compared) -> str:
    return compared.old.note or compared.new.note or "one of the versions has no text"


def _report(compared: Compared, form: str) -> str:
    if form == "json":
        from specwriter.report.versions_json import versions_json

        return versions_json(compared)
    if form == "md":
        from specwriter.report.versions_markdown import versions_markdown

        return versions_markdown(compared)
    if form == "html":
        from specwriter.report.versions_html import versions_html

        return versions_html(compared)
    from specwriter.report.versions_text import versions_text

    return versions_text(compared)


def _code(compared: Compared, fail_on: str) -> int:
    checked = (compared.old.checked, compared.new.checked)
    if any(each.defects for each in checked if each is not None):
        return exit_codes.DEFECT
    return exit_codes.FOUND if _failed(compared, fail_on) else exit_codes.OK


def _failed(compared: Compared, fail_on: str) -> bool:
    if fail_on == "nothing" or compared.is_empty:
        return False
    if fail_on == "difference" or compared.comparison is None:
        # Without jobs nobody can tell what a change of text does: each one counts.
        return True
    if fail_on == "material":
        return bool(compared.comparison.material)
    return any(finding.grade is Grade.CONFLICT for finding in compared.comparison.appeared)
