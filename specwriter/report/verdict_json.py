"""Verdicts as plain JSON values: exact numbers as fractions in base units, words as words."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from enum import Enum
from fractions import Fraction
from typing import Any

from specwriter.quantity import Quantity


def plain(value: Any) -> Any:
    """A result object as mappings, lists, texts and numbers, name by name."""
    if isinstance(value, Quantity):
        return value.text
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, Fraction):
        return str(value)
    if is_dataclass(value):
        return {field.name: plain(getattr(value, field.name)) for field in fields(value)}
    if isinstance(value, Mapping):
        return {str(key): plain(item) for key, item in value.items()}
    if isinstance(value, (tuple, list)):
        return [plain(item) for item in value]
    return value
