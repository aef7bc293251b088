"""Options and steps that several commands share."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import click

from specwriter.cli import exit_codes
from specwriter.diagnostic import Grade

if TYPE_CHECKING:
    from specwriter.report.result import CheckResult
    from specwriter.source import Source

FILE = click.Path(path_type=Path)
GRADES = click.Choice([grade.value for grade in Grade])


def report_format(
    *forms: str, about: str = "Form of the report."
) -> Callable[[Callable[..., int]], Callable[..., int]]:
    """The option ``--format`` of a command that reports in text and in ``forms``."""
    return click.option(
        "--format",
        "form",
        type=click.Choice(["text", *forms]),
        default="text",
        show_default=True,
        help=about,
    )


def unopened(source: Source) -> str:
    """The one line on a file that could not even be opened; empty when it was."""
    path = Path(source.file)
    if not source.faults or (path.is_file() and os.access(path, os.R_OK)):
        return ""
    fault = source.faults[0]
    return f"specwriter: {path}: {fault.says}; {fault.todo}"


def code_of(result: CheckResult, fail_on: Grade) -> int:
    """The exit code that a checked job earns."""
    if result.job is None:
        return exit_codes.USAGE if unopened(result.source) else exit_codes.UNREADABLE
    if result.defects:
        return exit_codes.DEFECT
    return exit_codes.FOUND if result.at_least(fail_on) else exit_codes.OK
