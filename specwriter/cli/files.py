"""Writing files: beside the target first, then renamed into place; nothing is half-written."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Mapping
from pathlib import Path

import click


def write_all(contents: Mapping[Path, bytes], *, force: bool) -> None:
    """Write every file, or none when one of them is in the way or cannot be written."""
    for path in contents:
        _refuse(path, force)
    waiting: dict[Path, Path] = {}
    try:
        for path, content in contents.items():
            waiting[path] = _beside(path, content)
        for path, beside in waiting.items():
            beside.replace(path)
    except OSError as error:
        reason = (error.strerror or str(error)).lower()
        raise click.ClickException(f"{path} cannot be written: {reason}") from error
    finally:
        for beside in waiting.values():
            beside.unlink(missing_ok=True)


def _refuse(path: Path, force: bool) -> None:
    if path.is_dir():
        raise click.ClickException(f"{path} is a folder, not a file")
    if path.exists() and not force:
        raise click.ClickException(f"{path} exists; give --force to overwrite it")


def _beside(path: Path, content: bytes) -> Path:
    """The content in a file of its own in the same folder, with the rights of a new file."""
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(prefix=f".{path.name}.", dir=path.parent)
    with os.fdopen(handle, "wb") as stream:
        stream.write(content)
    mask = os.umask(0)
    os.umask(mask)
    beside = Path(name)
    beside.chmod(0o666 & ~mask)
    return beside
