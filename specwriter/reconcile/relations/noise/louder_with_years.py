"""A surface that just meets the limit when it is new, some years later."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.readers.noise import AGED, SOURCE
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.noise import WHY
from specwriter.trade.sound import AGED_YEARS, AGEING, AGEING_DB

_FACTORS = {AGED: 1, SOURCE: -1}
_RISE = Fraction(AGEING_DB)

RELATION = Relation(
    slug="noise-louder-with-years",
    title="the limit for the aged surface leaves no room for ageing",
    statement=(
        f"after {AGED_YEARS} years a surface is louder by {AGEING_DB} dB(A) or more than when "
        "new, from memory, unverified"
    ),
    shape=Linear(_FACTORS, Interval(_RISE, None)),
    nominal=Linear(_FACTORS, Interval(_RISE, _RISE)),
    why=WHY,
    source=AGEING.source,
    validity=AGEING.validity,
    kind="model",
    about=(AGED,),
    assures=Unassured(
        slug="aged-noise-not-assured",
        title="a surface that just meets the new limit fails the aged one",
    ),
)
