"""An office suite as judge: it opens redlines, accepts or rejects every change, and saves."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Mapping
from pathlib import Path

import pytest

PYTHON = "/usr/bin/python3"
"""The Python of the system, for which the office's own library is packaged."""

SCRIPT = Path(__file__).with_name("settle_in_office.py")


def _missing() -> str:
    if shutil.which("soffice") is None:
        return "soffice is not installed"
    asked = subprocess.run([PYTHON, "-c", "import uno"], capture_output=True, check=False)
    return "python3-uno is not installed" if asked.returncode else ""


def needs_office() -> None:
    """Skips the test where the office cannot be driven."""
    if missing := _missing():
        pytest.skip(missing)


def settled(folder: Path, redlines: Mapping[str, bytes]) -> dict[str, tuple[bytes, bytes]]:
    """Name → the redline with all changes accepted, and with all rejected; in one start."""
    for each in ("accept", "reject"):
        (folder / each).mkdir(parents=True)
    for name, content in redlines.items():
        (folder / f"{name}.docx").write_bytes(content)
    pipe = f"specwriter-{folder.name}"
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    listen = f"--accept=pipe,name={pipe};urp;"
    options = ["--headless", "--norestore", "--nologo", listen]
    with subprocess.Popen(
        ["soffice", profile, *options], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    ) as office:
        try:
            subprocess.run([PYTHON, str(SCRIPT), str(folder), pipe], check=True, timeout=300)
            office.wait(timeout=60)
        finally:
            office.terminate()
    return {
        name: (_read(folder / "accept", name), _read(folder / "reject", name)) for name in redlines
    }


def _read(folder: Path, name: str) -> bytes:
    return (folder / f"{name}.docx").read_bytes()
