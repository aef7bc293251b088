"""What a command says when the clauses, or a setting that names one, cannot be followed."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from specwriter.cli import exit_codes
from specwriter.cli.output import say

if TYPE_CHECKING:
    from specwriter.source import Source


class Refused(Exception):
    """The command cannot go on; the reason has been said. ``code`` is its exit code."""

    def __init__(self, code: int) -> None:
        super().__init__(code)
        self.code = code


@contextmanager
def telling(*, own: bool, source: Source | None = None) -> Iterator[None]:
    """Turn faults of the library into lines on stderr and ``Refused``.

    ``own`` says that the user gave a folder: then the faults are not a defect of the tool.
    """
    from specwriter.assemble import HouseError, LibraryError

    try:
        yield
    except LibraryError as error:
        for fault in error.faults:
            say(f"{fault.place}: {fault.says}" + (f"; {fault.todo}" if fault.todo else ""))
        raise Refused(exit_codes.USAGE if own else exit_codes.DEFECT) from None
    except HouseError as error:
        place = f"{source.place(error.path)}: " if source else ""
        say(f"{place}{error.says}; {error.todo}")
        raise Refused(exit_codes.USAGE) from None
