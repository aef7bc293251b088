"""Files that cannot be read as they are: one located fault each, never a traceback."""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.source import read_source, read_text
from specwriter.source.text import LARGEST
from tests.support import text_of

GOOD = text_of("longitudinal_grooving")
DENIED = "1:1: this file may not be read; ask for the right to read it, or copy it"


def said(path: Path) -> list[str]:
    return [
        f"{fault.place.line}:{fault.place.column}: {fault.says}; {fault.todo}"
        for fault in read_source(path).faults
    ]


UNREADABLE: dict[str, tuple[bytes, str]] = {
    "UTF-16, little end first": (
        GOOD.encode("utf-16"),
        "1:1: this file is written in UTF-16; save it with the encoding UTF-8",
    ),
    "UTF-16 without a mark": (
        GOOD.encode("utf-16-be"),
        "1:1: this file is written in UTF-16; save it with the encoding UTF-8",
    ),
    "Latin-1": (
        "format: 1\nproject: {title: x, agency: y}\nareas: {a: {width: 1 ± 2 in}}\n".encode(
            "latin-1"
        ),
        "3:22: this file is not in UTF-8: byte B1 cannot be read here (in the encoding "
        "Windows-1252 or Latin-1 it would be '±'); save the file with the encoding UTF-8",
    ),
    "a byte that is nothing in either": (
        b"a: \x81\n",
        "1:4: this file is not in UTF-8: byte 81 cannot be read here; "
        "save the file with the encoding UTF-8",
    ),
    "a Word document": (
        b"PK\x03\x04rest",
        "1:1: this is a Word document or another packed file, not a job file; "
        "give a job file in plain text",
    ),
    "a PDF": (b"%PDF-1.7", "1:1: this is a PDF, not a job file; give a job file in plain text"),
    "too large": (
        b"# " + b"x" * LARGEST,
        "1:1: this file is larger than 1,000 kB, which no job file needs to be; "
        "check that it is the right file",
    ),
    "empty": (b"", "1:1: this file is empty; start from a file that 'specwriter new' makes"),
}


@pytest.mark.parametrize("name", UNREADABLE)
def test_an_unreadable_file_says_why_and_what_to_do(name: str, tmp_path: Path) -> None:
    raw, line = UNREADABLE[name]
    path = tmp_path / "job.yaml"
    path.write_bytes(raw)

    assert said(path) == [line]
    assert read_source(path).data is None


def test_a_byte_order_mark_at_the_start_is_left_out(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    path.write_bytes(b"\xef\xbb\xbf" + GOOD.encode())

    source = read_source(path)

    assert source.faults == ()
    assert source.text == GOOD


@pytest.mark.parametrize("line_end", ["\r\n", "\r"])
def test_line_ends_of_other_systems_keep_places(line_end: str, tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    path.write_bytes(GOOD.replace("3/4 in", "3/4 inn").replace("\n", line_end).encode())

    source = read_source(path)

    assert len(source.faults) == 1
    number = source.faults[0].place.line
    assert source.line(number) == "      spacing: 3/4 inn"
    assert source.faults[0].place.column == 20


def test_a_missing_file_is_named(tmp_path: Path) -> None:
    source = read_source(tmp_path / "jop.yaml")

    assert [str(fault.place) for fault in source.faults] == [f"{tmp_path / 'jop.yaml'}:1:1"]
    assert source.faults[0].says == "there is no such file"


def test_a_folder_points_to_the_job_in_it(tmp_path: Path) -> None:
    (tmp_path / "job.yaml").write_text(GOOD, encoding="utf-8")

    assert said(tmp_path) == [
        f"1:1: this is a folder, not a job file; give the job file in it: {tmp_path / 'job.yaml'}"
    ]


def test_a_folder_without_a_job_is_a_folder(tmp_path: Path) -> None:
    assert said(tmp_path) == ["1:1: this is a folder, not a job file; give the job file in it"]


def test_a_denied_file_says_so(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def denied(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", denied)

    assert said(tmp_path / "job.yaml") == [DENIED]


@pytest.mark.parametrize("name", ["a\0b", "x" * 300])
def test_a_name_that_no_file_can_have(name: str, tmp_path: Path) -> None:
    (line,) = said(tmp_path / name)

    assert line.startswith("1:1: this file cannot be read: ")


def test_text_beyond_the_limit_is_not_looked_at() -> None:
    source = read_text("a" * (LARGEST + 1), "job.yaml")

    assert [fault.says.split(",")[0] for fault in source.faults] == ["this file is larger than 1"]


def test_too_many_values_stop_the_reading() -> None:
    source = read_text("a: [" + "1," * 60_000 + "1]\n", "job.yaml")

    assert [fault.says for fault in source.faults] == ["this file holds more than 50,000 values"]


def test_very_deep_brackets_are_one_fault() -> None:
    source = read_text("[" * 500 + "]" * 500, "job.yaml")

    assert [fault.says for fault in source.faults] == [
        "blocks and brackets are nested more than 30 deep here"
    ]


def test_unseen_characters_without_number_are_reported_up_to_a_limit() -> None:
    source = read_text("a: \x00\n" * 500, "job.yaml")

    assert len([fault for fault in source.faults if "cannot be seen" in fault.says]) == 20


def test_a_whole_number_without_end_stays_text() -> None:
    source = read_text(f"format: {'9' * 5000}\n", "job.yaml")

    assert source.data == {"format": "9" * 5000}
    assert any(fault.place.column == 9 for fault in source.faults)


def test_brackets_beyond_what_the_parser_takes_are_one_fault() -> None:
    for text in ("[" * 20_000, "[" * 20_000 + "]" * 20_000, "a: {" * 20_000):
        assert len(read_text(text, "job.yaml").faults) == 1
