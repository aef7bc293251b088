"""Golden files: readable outputs that stand in the repository and are compared letter by letter."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest

Golden = Callable[[Path, str], None]


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--update-golden", action="store_true", help="write the golden files anew; read the diff"
    )


def pytest_configure(config: pytest.Config) -> None:
    if config.getoption("--update-golden") and os.environ.get("CI"):
        raise pytest.UsageError("golden files are not rewritten where CI is set")


@pytest.fixture
def golden(request: pytest.FixtureRequest) -> Golden:
    """``golden(path, text)``: the text is what the file holds; ``--update-golden`` writes it."""

    def compare(path: Path, text: str) -> None:
        if request.config.getoption("--update-golden"):
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8", newline="\n")
        assert path.is_file(), f"{path} is missing; run pytest --update-golden and read it"
        assert text == path.read_text(encoding="utf-8")

    return compare
