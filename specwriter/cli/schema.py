"""``specwriter schema``: the published schema of the job file, for editors."""

from __future__ import annotations

import click

from specwriter.cli import exit_codes
from specwriter.cli.output import emit


@click.command()
@click.option("--path", is_flag=True, help="Print where the schema file lies instead of its text.")
def command(path: bool) -> int:
    """Print the JSON Schema of the job file; editors use it to complete keys."""
    from specwriter.workflow import schema_file

    file = schema_file()
    emit(f"{file}\n" if path else file.read_text("utf-8"))
    return exit_codes.OK
