"""``specwriter compare --git``: as git's command for differences, on one file at a time.

git gives path, old file, its hash and mode, new file, its hash and mode; of a renamed file also the
new path and what it calls the change; of a file that is not merged the path alone. Anything but
exit code 0 makes git stop, so what cannot be compared is told and passed over.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import click

from specwriter.cli import exit_codes
from specwriter.cli.output import emit

if TYPE_CHECKING:
    from specwriter.report.compared import Compared

_ALL = 7
_NOTHING = "/dev/null"
_LINES = "git diff --no-ext-diff shows its lines."


def show(
    arguments: tuple[Path, ...],
    compare: Callable[[Path, Path, tuple[str, str]], Compared],
    report: Callable[[Compared], str],
) -> int:
    """Print what changed in one file, under its name; always 0 for git to go on.

    ``compare`` is given the two files and what they are called.
    """
    if 1 < len(arguments) < _ALL:
        raise click.UsageError("--git is for git, which gives seven arguments")
    path = arguments[0]
    if len(arguments) == 1:
        emit(f"{path} is not merged.\n\n")
        return exit_codes.OK
    old, new = arguments[1], arguments[4]
    if _NOTHING in (str(old), str(new)):
        emit(f"{path} is {'new' if str(old) == _NOTHING else 'gone'}.\n\n")
        return exit_codes.OK
    now = arguments[_ALL] if len(arguments) > _ALL else path
    emit(f"{path} → {now}\n\n" if now != path else f"{path}\n\n")
    emit(_told(lambda: compare(old, new, (f"{path} (old)", str(now))), report) + "\n")
    return exit_codes.OK


def _told(compare: Callable[[], Compared], report: Callable[[Compared], str]) -> str:
    from specwriter.assemble import LibraryError
    from specwriter.report.check_text import check_text
    from specwriter.versions import VersionFault

    try:
        compared = compare()
    except (VersionFault, LibraryError) as error:
        return f"{error}\n{_LINES}\n"
    if compared.faulty:
        return "\n".join((*map(check_text, compared.faulty), f"{_LINES}\n"))
    return report(compared)
