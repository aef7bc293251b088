"""The command line: the only code that reads arguments, prints or exits."""


def run() -> None:
    """Run the command line."""
