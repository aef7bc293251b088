"""The page on a relation between quantities, in the sections of the page on a rule."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from specwriter.reconcile.joint import JOINTS, Joint
from specwriter.reconcile.registry import all_relations, relations_by_topic
from specwriter.reconcile.relation import Relation, basis_of

_CLASH = (
    "Change one of the requirements that the finding names. It says for each of them which value "
    "would fit while the others stay as they are."
)
_SCREEN = (
    "Change one of the limits, or keep them with measurements of your own: this is an expectation, "
    "not a proof. The finding says which value would be expected."
)
_ASSURE = (
    "The finding shows the worst choice that obeys the rest of the job and fails the required "
    "result, and for each dimension the least change that alone would assure the result."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """What a reader needs to know of one check; ``also`` are its other names, with their titles."""

    slug: str
    summary: str
    grade: str
    basis: str
    sections: dict[str, str]
    also: tuple[tuple[str, str], ...] = ()


def pages() -> dict[str, Page]:
    """Slug → page, for every relation, for what it does not assure, and for all together."""
    by_slug: dict[str, list[Relation]] = {}
    for each in all_relations():
        by_slug.setdefault(each.slug, []).append(each)
    found = {slug: _of_clash(some) for slug, some in by_slug.items()}
    for each in all_relations():
        if each.assures is not None:
            found[each.assures.slug] = _of_result(each, by_slug[each.slug])
    return found | {each.slug: _of_joint(each) for each in JOINTS}


def pages_of_topics() -> dict[str, tuple[Page, ...]]:
    """Folder of relations → their pages, each slug once."""
    every = pages()
    return {
        topic: tuple(every[slug] for slug in dict.fromkeys(each.slug for each in some))
        for topic, some in relations_by_topic().items()
    }


def _of_clash(some: Sequence[Relation]) -> Page:
    first = some[0]
    exact = first.kind == "exact"
    assures = {each.assures.slug: each.assures.title for each in some if each.assures}
    return Page(
        slug=first.slug,
        summary=_sentence(first.title),
        grade="conflict" if exact else "caution",
        basis=basis_of(some),
        sections=_sections(some, _CLASH if exact else _SCREEN),
        also=tuple((slug, _sentence(title)) for slug, title in assures.items()),
    )


def _of_result(relation: Relation, some: Sequence[Relation]) -> Page:
    assert relation.assures is not None
    return Page(
        slug=relation.assures.slug,
        summary=_sentence(relation.assures.title),
        grade="caution",
        basis=basis_of(some),
        sections=_sections(some, _ASSURE),
    )


def _of_joint(joint: Joint) -> Page:
    sections = {
        "What holds": joint.statement,
        "Why it matters": joint.why,
        "Where it is valid": _sentence(joint.validity),
        "How to settle it": _CLASH,
        "Sources": joint.source,
    }
    return Page(
        slug=joint.slug,
        summary=_sentence(joint.title),
        grade="conflict",
        basis="arithmetic",
        sections=sections,
    )


def _sections(some: Sequence[Relation], settle: str) -> dict[str, str]:
    return {
        "What holds": _lines(_longest(each.family or each.statement for each in some)),
        "Why it matters": some[0].why,
        "Where it is valid": _lines(part for each in some for part in each.validity.split("; ")),
        "How to settle it": settle,
        "Sources": _lines(one for each in some for one in each.sources),
    }


def _longest(texts: Iterable[str]) -> Iterator[str]:
    """The texts without those that a longer one continues."""
    every = tuple(texts)
    for text in every:
        if not any(other != text and other.startswith(text) for other in every):
            yield text


def _lines(texts: Iterable[str]) -> str:
    """Each text once, on a line of its own."""
    return "\n".join(dict.fromkeys(texts))


def _sentence(title: str) -> str:
    return f"{title[:1].upper()}{title[1:].rstrip('.')}."
