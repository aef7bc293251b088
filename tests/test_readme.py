"""What the README tells people to paste does what it says."""

from __future__ import annotations

import re
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from specwriter.assemble import assemble, load_library
from specwriter.cli import exit_codes
from specwriter.report.reference import topics_table
from specwriter.workflow import review_clauses
from tests.conftest import Golden
from tests.support import job

ROOT = Path(__file__).parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")
BLOCKS = re.findall(r"```sh\n(.*?)```", README, flags=re.DOTALL)
CALL = ".venv/bin/specwriter "


def commands() -> list[str]:
    """Every call of the program, from the lines that set an environment up as well."""
    lines = [line for block in BLOCKS for line in block.splitlines()]
    parts = [part.strip() for line in lines for part in line.split("&&")]
    return [part.removeprefix(CALL) for part in parts if part.startswith(CALL)]


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("readme")
    shutil.copytree(ROOT / "examples", folder / "examples")
    return folder


def test_every_call_in_the_readme_runs_in_order(copy: Path) -> None:
    calls = commands()
    assert len(calls) >= 6

    for call in calls:
        done = subprocess.run(
            [sys.executable, "-m", "specwriter", *shlex.split(call)],
            cwd=copy,
            capture_output=True,
            text=True,
            check=False,
        )
        clash = "as-received/job.yaml" in call and call.startswith("check")
        expected = exit_codes.FOUND if clash else exit_codes.OK
        assert done.returncode == expected, f"{call}\n{done.stdout}{done.stderr}"


def test_the_first_command_leaves_a_word_file_and_a_report(copy: Path) -> None:
    first = commands()[0]

    done = subprocess.run(
        [sys.executable, "-m", "specwriter", *shlex.split(first)],
        cwd=copy,
        capture_output=True,
        text=True,
        check=True,
    )

    assert "nothing found" in done.stdout
    assert list((copy / "out").glob("*.docx"))


def test_the_report_shown_in_the_readme_is_the_report_that_is_made() -> None:
    shown = re.findall(r"```\n(CONFLICT.*?)```", README, flags=re.DOTALL)
    report = (ROOT / "examples" / "as-received" / "check.txt").read_text(encoding="utf-8")

    assert shown
    for block in shown:
        assert block.replace("examples/as-received/", "").strip() in report


def test_the_exit_codes_of_the_readme_are_those_of_the_program() -> None:
    table = {int(code) for code in re.findall(r"^\| (\d+) \|", README, flags=re.MULTILINE)}
    names = [name for name in dir(exit_codes) if name.isupper() and name[0] != "_"]

    assert table == {getattr(exit_codes, name) for name in names}


def test_the_continuous_check_runs_the_test_command_of_the_readme() -> None:
    assert "<!-- the test command -->" in README
    assert "<!-- the test command -->" in (ROOT / ".ci" / "run").read_text(encoding="utf-8")


def test_the_table_of_checks_is_the_one_that_the_program_makes(golden: Golden) -> None:
    before, start, rest = README.partition("<!-- the table of checks -->\n")
    _, end, after = rest.partition("<!-- end of the table -->")
    assert start
    assert end

    golden(ROOT / "README.md", f"{before}{start}{topics_table()}{end}{after}")


def test_the_clause_and_the_house_format_of_the_readme_are_sound(tmp_path: Path) -> None:
    (clause,) = re.findall(r"```markdown\n(.*?)```", README, flags=re.DOTALL)
    (outline,) = re.findall(r"```yaml\n(default: .*?)```", README, flags=re.DOTALL)
    (tmp_path / "house").mkdir()
    (tmp_path / "house" / "lamps.md").write_text(clause, "utf-8")
    (tmp_path / "outline.yaml").write_text(outline, "utf-8")

    assert review_clauses(tmp_path) == ((), 1)
    library = load_library(tmp_path)
    made = assemble(job("deck-transverse", {"conditions.night_work": True}), library)
    assert [part.title for part in made.parts] == [
        "Scope",
        "Materials",
        "Work",
        "Measurement and Payment",
    ]
    (lamps,) = (each for part in made.parts for each in part.clauses if each.id == "house.lamps")
    assert lamps.number.startswith("C")
