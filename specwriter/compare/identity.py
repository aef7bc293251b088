"""Names that stayed while what they name did not: provision, date, pay item, section."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from specwriter.compare.change import Change, Sense
from specwriter.model import Job
from specwriter.model.contract import PayItem
from specwriter.model.project import BaseSection

_NOT_CONTENT = ("project.revision", "project.date", "accepted.")


def same_identifier(old: Job, new: Job, changes: Sequence[Change]) -> Iterator[str]:
    """One provision in one revision, one pay item or one section, with another content."""
    was, now = old.project, new.project
    name = now.provision or now.title
    alike = was.provision == now.provision and (now.provision or was.title == now.title)
    if alike and was.revision == now.revision and _has_content(changes):
        revision = f"revision {now.revision}" if now.revision else "no revision"
        yield (
            f"Both files are {name} with {revision}, but their content differs: "
            "give the new text its own revision."
        )
    yield from _pay_items(old, new)
    yield from _section(was.base_section, now.base_section)


def _section(old: BaseSection | None, new: BaseSection | None) -> Iterator[str]:
    if not (old and new and old.number) or old.number != new.number or old.title == new.title:
        return
    yield (
        f'Section {new.number} keeps its number, but went from "{old.title}" to "{new.title}": '
        "a reference to it now means something else."
    )


def same_date(old: Job, new: Job, changes: Sequence[Change]) -> Iterator[str]:
    """One date over two contents."""
    date = new.project.date
    if date and old.project.date == date and _has_content(changes):
        yield f"Both files bear the date {date}, but their content differs."


def _pay_items(old: Job, new: Job) -> Iterator[str]:
    before = {item.number: item for item in old.pay_items.values() if item.number}
    for item in new.pay_items.values():
        earlier = before.get(item.number) if item.number else None
        if earlier and (moved := _moved(earlier, item)):
            yield (
                f"Pay item {item.number} keeps its number, but {moved}: bids on it before and "
                "after cannot be compared."
            )


def _moved(old: PayItem, new: PayItem) -> str:
    """Name and unit of a pay item that changed, in words."""
    words = (("name", old.name, new.name), ("unit", old.unit, new.unit))
    return " and ".join(f"its {key} went from {a} to {b}" for key, a, b in words if a != b)


def _has_content(changes: Sequence[Change]) -> bool:
    return any(map(_is_content, changes))


def _is_content(change: Change) -> bool:
    side = change.new or change.old
    return (
        side is not None
        and change.sense is not Sense.RESTATED
        and not side.path.startswith(_NOT_CONTENT)
    )
