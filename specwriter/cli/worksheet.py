"""``specwriter worksheet``: every figure that can be computed from a job."""

from __future__ import annotations

from pathlib import Path

import click

from specwriter.cli import exit_codes
from specwriter.cli.options import FILE, report_format, unopened
from specwriter.cli.output import emit, say


@click.command()
@click.argument("job", type=FILE)
@report_format("json")
def command(job: Path, form: str) -> int:
    """Work out the figures of a job: value, formula, inputs with their places, source, validity."""
    from specwriter.report.worksheet_json import worksheet_json
    from specwriter.report.worksheet_text import worksheet_text
    from specwriter.workflow import worksheet

    result = worksheet(job)
    if form == "text" and (line := unopened(result.source)):
        say(line)
        return exit_codes.USAGE
    emit(worksheet_json(result) if form == "json" else worksheet_text(result))
    if result.worksheet is None:
        return exit_codes.USAGE if unopened(result.source) else exit_codes.UNREADABLE
    return exit_codes.DEFECT if result.worksheet.broken else exit_codes.OK
