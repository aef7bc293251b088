"""Exact values, the grammar they are written in, their units and their printing."""

from specwriter.quantity.fault import ValueFault
from specwriter.quantity.grammar import parse
from specwriter.quantity.interval import Interval
from specwriter.quantity.printing import (
    both_systems,
    other_system,
    show,
    show_interval_like,
    show_like,
)
from specwriter.quantity.quantity import Amount, Quantity
from specwriter.quantity.unit import DIMENSIONS, UNITS, Unit

__all__ = [
    "DIMENSIONS",
    "UNITS",
    "Amount",
    "Interval",
    "Quantity",
    "Unit",
    "ValueFault",
    "both_systems",
    "other_system",
    "parse",
    "show",
    "show_interval_like",
    "show_like",
]
