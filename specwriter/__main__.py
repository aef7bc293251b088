"""Entry point: ``specwriter`` and ``python -m specwriter``."""

from __future__ import annotations

import sys


def main() -> None:
    """Run the command line; ``--version`` answers without loading anything else."""
    if sys.argv[1:] == ["--version"]:
        from specwriter import __version__

        print(f"specwriter {__version__}")
        return
    from specwriter.cli import run

    run()


if __name__ == "__main__":
    main()
