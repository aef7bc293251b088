"""Ride: what profile, joints and machine make of the roughness index.

Floats in SI units: lengths in metres, wave numbers in cycles per metre, and roughness as the
slope that it is (0.001 is 1 m/km, that is 63.36 in/mi). ``INCH_PER_MILE`` and ``INCH`` turn
the numbers of the trade into these and back.
"""

from __future__ import annotations

INCH = 0.0254
"""Metres in an inch. Source: NIST SP 811, appendix B, 2008: exact."""

FOOT = 12 * INCH
MILE = 5280 * FOOT

INCH_PER_MILE = INCH / MILE
"""The slope of 1 in/mi. Source: the definitions of inch and mile."""
