"""The name of a pay item in two spellings.

Looks at
    Names of pay items, and texts of the job that spell them with another dash, space or sign; and
    names with signs that a bid list does not carry.

Why it matters
    Bid systems match items to the character. A long dash, a curly quote or a second space makes
    another item of it, and the price list no longer adds up.

Conflict
    pay_items.grinding.name: Re-Grinding of Concrete Pavement
    pay_items.grinding.includes: [water, tests, "what Regrinding of Concrete Pavement needs"]

Settled
    pay_items.grinding.name: Re-Grinding of Concrete Pavement
    pay_items.grinding.includes: [water, tests, "what Re-Grinding of Concrete Pavement needs"]

How to settle it
    Copy the name from the agency's item list, everywhere.

Sources
    Texas DOT PS&E specification checklist, undated: wrong quotes and dashes break the list
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import PayItem
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texts import Text, texts

RULE = Rule(
    title="the name of a pay item in two spellings",
    grade=Grade.CAUTION,
    basis="published",
    base="complete/diamond_grinding",
)

_SIGNS = re.compile(r"[\u2010-\u2015\u2018\u2019\u201c\u201d\u00a0\t]|  |^ | $")
_LETTERS = re.compile(r"[^\W_]")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each name that is spelt otherwise elsewhere, or holds signs of its own."""
    for item in job.pay_items.values():
        at = [evidence(item, "name", "pay item")]
        if _SIGNS.search(item.name):
            says = f"The name '{item.name}' holds a long dash, a curly quote or a double space."
            yield RULE.finding(None, says, at, ("copy the name from the item list",))
        elif others := list(_others(job, item)):
            says = f"The item is called {item.name}, and elsewhere {others[0].written}."
            yield RULE.finding(None, says, [*at, *others], ("spell the name alike everywhere",))


def _others(job: Job, item: PayItem) -> Iterator[Evidence]:
    """The places that spell the name with other signs between the same letters."""
    letters = _LETTERS.findall(item.name)
    if len(letters) < _SHORTEST:
        return
    name = re.compile(r"[\W_]*".join(letters), re.IGNORECASE)
    own = item.path_to("name")
    for text in texts(job):
        for match in name.finditer(text.words):
            if text.path != own and match[0].lower() != item.name.lower():
                yield _spelt(text, match[0])
                break


_SHORTEST = 6
"""Shorter names are ordinary words that may stand in any text."""


def _spelt(text: Text, spelling: str) -> Evidence:
    return Evidence(path=text.path, label=text.label, written=spelling)
