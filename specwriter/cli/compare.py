"""``specwriter compare``: what changed between two versions of a job."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from specwriter.cli import exit_codes
from specwriter.cli.options import FILE, REPORT_FORMAT, code_of
from specwriter.cli.output import emit, report
from specwriter.diagnostic import Grade

if TYPE_CHECKING:
    from specwriter.compare import Comparison


@click.command()
@click.argument("old", type=FILE)
@click.argument("new", type=FILE)
@REPORT_FORMAT
@click.option(
    "--fail-on",
    type=click.Choice(["nothing", "difference", "conflict"]),
    default="nothing",
    show_default=True,
    help="What gives exit code 1: any difference, or a conflict that the new job brings.",
)
def command(old: Path, new: Path, form: str, fail_on: str) -> int:
    """Compare two job files, requirement by requirement: OLD, then NEW."""
    from specwriter.report.comparison_json import comparison_json
    from specwriter.report.comparison_text import comparison_text
    from specwriter.workflow import compare

    compared = compare(old, new)
    both = (compared.old, compared.new)
    if compared.comparison is None:
        unread = [each for each in both if each.job is None]
        report(unread, form=form)
        return exit_codes.worst(code_of(each, Grade.CONFLICT) for each in unread)
    write = comparison_json if form == "json" else comparison_text
    emit(write(compared.comparison, compared.old.source.place, compared.new.source.place))
    if any(each.defects for each in both):
        return exit_codes.DEFECT
    return exit_codes.FOUND if _failed(compared.comparison, fail_on) else exit_codes.OK


def _failed(comparison: Comparison, fail_on: str) -> bool:
    if fail_on == "conflict":
        return any(finding.grade is Grade.CONFLICT for finding in comparison.appeared)
    return fail_on == "difference" and not comparison.is_empty
