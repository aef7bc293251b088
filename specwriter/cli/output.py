"""The two ways out: results to stdout, progress and failures to stderr."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence
from typing import TYPE_CHECKING

import click

from specwriter.cli.options import unopened

if TYPE_CHECKING:
    from specwriter.report.result import CheckResult


def emit(text: str) -> None:
    """Write a result. A reader who closes the pipe early wants no more, and that is no failure."""
    try:
        click.echo(text, nl=False)
        sys.stdout.flush()
    except BrokenPipeError:
        # Python flushes stdout once more at exit; without this that prints a traceback.
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, sys.stdout.fileno())
        os.close(nowhere)


def say(text: str) -> None:
    """Write a line of progress, or the one line that says why nothing was done."""
    click.echo(text, err=True)


def colour_wanted() -> bool:
    """Colour only on a terminal, and not when NO_COLOR is set to anything."""
    return sys.stdout.isatty() and not os.environ.get("NO_COLOR")


def report(
    results: Sequence[CheckResult], *, form: str = "text", every_check: bool = False
) -> None:
    """The reports of checked jobs.

    A file that cannot be opened is one line of failure; only a program finds it in its JSON.
    """
    if form == "json":
        from specwriter.report.check_json import check_json

        emit(check_json(results))
        return
    for result in results:
        if line := unopened(result.source):
            say(line)
    if opened := [each for each in results if not unopened(each.source)]:
        emit(_page(opened, every_check) if form == "html" else _texts(opened, every_check))


def _page(results: Sequence[CheckResult], every_check: bool) -> str:
    from specwriter.report.check_html import check_html

    return check_html(results, every_check=every_check)


def _texts(results: Sequence[CheckResult], every_check: bool) -> str:
    from specwriter.report.check_text import check_text

    colour = colour_wanted()
    return "\n".join(check_text(each, colour=colour, every_check=every_check) for each in results)
