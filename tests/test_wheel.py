"""The package works when it is built into a wheel and installed somewhere else."""

from __future__ import annotations

import subprocess
import sys
import venv
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent
EXAMPLE = ROOT / "examples" / "rural-grooving" / "job.yaml"


def run(*command: str | Path, cwd: Path) -> str:
    done = subprocess.run(command, cwd=cwd, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An environment that holds the wheel, and sees this environment's libraries only."""
    place = tmp_path_factory.mktemp("elsewhere")
    run(
        sys.executable,
        *("-m", "build", "--wheel", "--no-isolation", "--outdir", place / "dist", ROOT),
        cwd=place,
    )
    (wheel,) = (place / "dist").glob("*.whl")
    venv.create(place / "venv", with_pip=True)
    python = place / "venv" / "bin" / "python"
    run(python, "-m", "pip", "install", "--quiet", "--no-deps", wheel, cwd=place)
    (site,) = (place / "venv" / "lib").glob("python*/site-packages")
    libraries = next(path for path in map(Path, sys.path) if path.name == "site-packages")
    (site / "zz_libraries.pth").write_text(f"{libraries}\n", encoding="utf-8")
    return place


def test_the_wheel_carries_the_clauses_and_drafts_with_them(installed: Path) -> None:
    python = installed / "venv" / "bin" / "python"
    where = run(
        python,
        *("-c", "import specwriter, pathlib; print(pathlib.Path(specwriter.__file__).parent)"),
        cwd=installed,
    )

    run(
        python,
        *("-m", "specwriter", "draft", EXAMPLE, "--to", installed / "out"),
        *("--format", "docx,html,md"),
        cwd=installed,
    )

    package = Path(where.strip())
    assert package.is_relative_to(installed)
    assert (package / "clauses" / "outline.yaml").is_file()
    suffixes = {path.suffix for path in (installed / "out").iterdir()}
    assert suffixes >= {".docx", ".html", ".md"}
