"""``specwriter check``: what in a job cannot stand, is open, or asks for care."""

from __future__ import annotations

from pathlib import Path

import click

from specwriter.cli import exit_codes
from specwriter.cli.options import FILE, GRADES, code_of, report_format
from specwriter.cli.output import report
from specwriter.diagnostic import Grade


@click.command()
@click.argument("jobs", metavar="JOB...", nargs=-1, required=True, type=FILE)
@report_format("json", "html", about="Form of the report; html is a page to circulate or print.")
@click.option(
    "--fail-on",
    type=GRADES,
    default="conflict",
    show_default=True,
    help="The mildest grade that gives exit code 1.",
)
@click.option("--clauses", type=FILE, help="Your own clauses, to hold a Word file against its job.")
@click.option("--not-run", is_flag=True, help="List every check that could not look, and why.")
def command(
    jobs: tuple[Path, ...], form: str, fail_on: str, clauses: Path | None, not_run: bool
) -> int:
    """Check job files: conflicts, open decisions, cautions and notes, each with its place.

    Of a Word file (.docx) that was drafted here the job inside is checked, and the report says
    whether the text was changed by hand since.
    """
    from specwriter.workflow import check

    results = [check(path, clauses) for path in jobs]
    report(results, form=form, every_check=not_run)
    return exit_codes.worst(code_of(each, Grade(fail_on)) for each in results)
