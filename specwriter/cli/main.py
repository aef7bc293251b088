"""The command ``specwriter`` itself: finds its commands, and turns every ending into a code."""

from __future__ import annotations

import importlib
import sys
from collections.abc import Sequence
from difflib import get_close_matches

import click

from specwriter import __version__
from specwriter.cli import exit_codes
from specwriter.cli.output import say

COMMANDS = ("new", "check", "worksheet", "draft", "clauses", "compare", "explain", "schema")


class LazyGroup(click.Group):
    """A group whose commands are modules, loaded when they are called or listed."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """The commands in the order in which a job meets them."""
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """The command of that name, from its own module."""
        if cmd_name not in COMMANDS:
            return None
        command = importlib.import_module(f"specwriter.cli.{cmd_name}").command
        assert isinstance(command, click.Command)
        return command

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        """As click does, with a suggestion for a misspelt name."""
        if args and args[0] not in COMMANDS and not args[0].startswith("-"):
            near = get_close_matches(args[0], COMMANDS, 1)
            hint = f"did you mean {near[0]}?" if near else f"there are: {', '.join(COMMANDS)}"
            raise click.UsageError(f"there is no command '{args[0]}'; {hint}", ctx)
        return super().resolve_command(ctx, args)


@click.group(cls=LazyGroup, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(__version__, prog_name="specwriter", message="%(prog)s %(version)s")
def main() -> None:
    """Write, check and compare special provisions for saw-cut pavement textures.

    Exit codes: 0 nothing at or above the grade asked for; 1 findings, or differences when asked;
    2 command line or file; 3 the input could not be read as a job; 70 a defect of this program.
    """


def run(arguments: Sequence[str] | None = None) -> None:
    """Run the command line and leave with its exit code."""
    for stream in (sys.stdout, sys.stderr):
        # A terminal that cannot show ± gets a question mark, not a traceback.
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")
    sys.exit(outcome(list(sys.argv[1:] if arguments is None else arguments)))


def outcome(arguments: list[str]) -> int:
    """The exit code of a call; every failure has become one line on stderr."""
    try:
        code = main.main(arguments, prog_name="specwriter", standalone_mode=False)
        return code if isinstance(code, int) else exit_codes.OK
    except click.exceptions.NoArgsIsHelpError as error:
        say(error.format_message())
        return exit_codes.USAGE
    except click.ClickException as error:
        say(f"specwriter: {' '.join(error.format_message().split())}")
        return exit_codes.USAGE
    except (click.Abort, KeyboardInterrupt):
        say("specwriter: stopped")
        return exit_codes.USAGE
    except OSError as error:
        say(f"specwriter: {_reason(error)}")
        return exit_codes.USAGE
    except Exception as error:
        say(
            "specwriter: this is a defect of the program, not of your job: "
            f"{type(error).__name__}: {error}"
        )
        return exit_codes.DEFECT


def _reason(error: OSError) -> str:
    name = f"{error.filename}: " if error.filename else ""
    return f"{name}{(error.strerror or str(error)).lower()}"
