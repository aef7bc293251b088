"""The command line: the only code that reads arguments, prints or exits."""

from specwriter.cli.main import run

__all__ = ["run"]
