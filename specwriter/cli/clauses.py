"""``specwriter clauses``: the clause library, and the choice of clauses for a job."""

from __future__ import annotations

from pathlib import Path

import click

from specwriter.cli import exit_codes
from specwriter.cli.library import Refused, telling
from specwriter.cli.options import FILE, code_of, report_format
from specwriter.cli.output import emit, report
from specwriter.diagnostic import Grade


@click.command()
@click.argument("job", type=FILE, required=False)
@click.option("--clauses", type=FILE, help="Your own folder of clauses, put over the library.")
@click.option("--check", "checking", is_flag=True, help="Check that folder, or the library.")
@report_format("json")
def command(job: Path | None, clauses: Path | None, checking: bool, form: str) -> int:
    """List the clause library; with JOB, say why each clause was chosen or not.

    With --check, look for faults in the front matter, names, references, numbers and wording.
    """
    if clauses is not None and not clauses.is_dir():
        raise click.ClickException(f"{clauses} is not a folder of clauses")
    if checking and job is not None:
        raise click.UsageError("--check looks at clauses, not at a job; leave one of them out")
    if checking:
        return _checked(clauses, form)
    try:
        return _listed(clauses, form) if job is None else _chosen(job, clauses, form)
    except Refused as refused:
        return refused.code


def _checked(folder: Path | None, form: str) -> int:
    from specwriter.report.clauses_text import faults_json, faults_text
    from specwriter.workflow import review_clauses

    faults, count = review_clauses(folder)
    emit(faults_json(faults) if form == "json" else faults_text(faults, count))
    return exit_codes.FOUND if faults else exit_codes.OK


def _listed(folder: Path | None, form: str) -> int:
    from specwriter.report.clauses_text import library_json, library_text
    from specwriter.workflow import clause_library

    with telling(own=folder is not None):
        library = clause_library(folder)
    emit(library_json(library) if form == "json" else library_text(library))
    return exit_codes.OK


def _chosen(job: Path, folder: Path | None, form: str) -> int:
    from specwriter.report.clauses_text import choices_json, choices_text
    from specwriter.workflow import check, choices

    result = check(job)
    if result.job is None:
        report([result], form=form)
        return code_of(result, Grade.CONFLICT)
    with telling(own=folder is not None, source=result.source):
        made, library = choices(result.job, folder)
    emit(choices_json(made) if form == "json" else choices_text(made, library))
    return exit_codes.OK
