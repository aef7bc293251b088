"""The clauses keep to the rules that the tool holds others to: no flagged word, one duty verb."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from specwriter.assemble import load_library
from specwriter.assemble.library import library_root
from specwriter.rules.polarity import permitted
from specwriter.rules.word_list import flags, uses

CLAUSES = sorted(library_root().glob("*/*.md"))
TAG = re.compile(r"\{%.*?%\}|\{\{.*?\}\}", re.DOTALL)
DEFINED = re.compile(r"\*([A-Z][\w ]+)\* means")
DUTY = re.compile(r"\b(shall|must|should)\b", re.IGNORECASE)
ROLES = re.compile(r"\b[Tt]he (Engineer|Department|Owner|Inspector|Resident)\b")
AND_OR = re.compile(r"\band\s*/\s*or\b", re.IGNORECASE)
BRITISH = re.compile(
    r"\b\w*(?:centre|metre|tyre|kerb|calliper|labour|armour|neighbour|colour|programme)\w*",
    re.IGNORECASE,
)
BLANK = re.compile(r"\b(TBD|TODO|XX+)\b|_{3,}|\?{2,}|\[insert", re.IGNORECASE)


def body_of(path: str) -> str:
    """The text of a clause with its tags blanked, so that lines and columns stay what they are."""
    whole = (library_root() / path).read_text("utf-8")
    head = whole.index("\n---\n", 4) + 5
    blank = re.sub(r"[^\n]", " ", whole[:head]) + whole[head:]
    return TAG.sub(lambda tag: re.sub(r"[^\n]", " ", tag.group()), blank)


def place(path: str, text: str, at: int) -> str:
    line = text.count("\n", 0, at) + 1
    return f"clauses/{path}:{line}:{at - text.rfind(chr(10), 0, at)}"


NAMES = [str(path.relative_to(library_root())) for path in CLAUSES]


@pytest.mark.parametrize("path", NAMES)
def test_a_clause_uses_no_flagged_word(path: str) -> None:
    text = body_of(path)

    assert [
        f"{place(path, text, use.start)} {use.words}: {use.flag.reason}; better: {use.flag.better}"
        for use in uses(text)
    ] == []


@pytest.mark.parametrize("path", NAMES)
@pytest.mark.parametrize(
    ("pattern", "why"),
    [
        pytest.param(DUTY, "duties of the contractor stand in the imperative", id="duty verb"),
        pytest.param(ROLES, "the provision defines the Agency alone", id="undefined role"),
        pytest.param(AND_OR, "and/or has three readings", id="and-or"),
        pytest.param(BRITISH, "the Word file says that it is in US English", id="spelling"),
        pytest.param(BLANK, "a clause is a finished text", id="placeholder"),
    ],
)
def test_a_clause_keeps_the_house_style(path: str, pattern: re.Pattern[str], why: str) -> None:
    text = body_of(path)

    found = [f"{place(path, text, each.start())} {each.group()}" for each in pattern.finditer(text)]
    assert found == [], why


@pytest.mark.parametrize("path", NAMES)
def test_a_clause_has_lost_no_negation(path: str) -> None:
    assert [sentence for _, sentence in permitted(body_of(path))] == []


def test_a_term_is_defined_once_in_the_clauses_of_one_texture() -> None:
    twice = []
    everything = load_library().clauses
    for texture in {each for clause in everything for each in clause.textures}:
        terms = Counter(
            term.lower()
            for clause in everything
            if not clause.textures or texture in clause.textures
            for term in DEFINED.findall(clause.body)
        )
        twice += [f"{texture}: {term}" for term, count in terms.items() if count > 1]

    assert twice == []


def test_a_defined_term_is_used_beyond_its_definition() -> None:
    text = "\n".join(body_of(path) for path in NAMES)
    terms = [term for path in NAMES for term in DEFINED.findall(body_of(path))]

    assert terms
    assert [t for t in terms if len(re.findall(rf"\b{t}s?\b", text, re.IGNORECASE)) < 3] == []


def test_a_lost_negation_is_found() -> None:
    kept = "Unground surface between passes is not permitted."

    assert list(permitted(kept)) == []
    assert list(permitted(kept.replace("not ", "")))


def test_every_flag_has_its_reason_its_better_words_and_is_found() -> None:
    for flag in flags():
        assert flag.reason
        assert flag.better
        for words in flag.words:
            number = words.replace("#", "7")
            (use,) = uses(f"The lot, {number} this text, is so.")
            assert use.flag is flag


def test_no_word_is_flagged_twice() -> None:
    words = Counter(word.lower() for flag in flags() for word in flag.words)

    assert [word for word, count in words.items() if count > 1] == []
