"""Report conditions: under which conditions the treatments of a trial were compared.

In    a book, the trays that are compared, the treatment of each, the newest plan, what its verdicts doubt
Out   blocks of a report: what was alike, what was not, air and water by treatment, what nobody noted
Not   which conditions are alike and which are doubted (`data/verdict/alike.py`, `apart.py`), their words
      (`data/verdict/conditionwords.py`), readings (`given.py`)

What differs between treatments and is not what the plan varies may be where a difference comes from: it is
said, whatever the verdict says.
"""

from collections.abc import Container, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.medium.feeds import is_plain
from data.numbers import TrayId
from data.readings import SAID, ReadingKind
from data.records import Tray
from data.report.content import Block, Grid, Heading, Paragraph
from data.report.given import KINDS, Given, Known, given_to
from data.sentence import Sentence
from data.trial import Plan, setting_of
from data.verdict.alike import Compared, Standing, compare_conditions
from data.verdict.apart import apart_words
from data.verdict.conditionwords import (
    CONDITION_WORDS,
    alike_words,
    all_of,
    each_of,
    had_words,
    level_words,
    row_words,
)

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["condition_blocks", "left_out_words"]

GIVEN_WORDS = {
    ReadingKind.AIR_TEMPERATURE: Sentence("temperature of the air"),
    ReadingKind.HUMIDITY: Sentence("humidity of the air"),
    ReadingKind.MEDIUM_TEMPERATURE: Sentence("temperature of the medium"),
    ReadingKind.WATER: Sentence("water given to a tray"),
    ReadingKind.FEED: Sentence("feed given to a tray"),
}
NOTHING = "–"
ALIKE = Sentence("Alike for all that is compared")
ALIKE_TRAYS = Sentence("What all trays had")  # of one medium: nothing is compared
MOST_CODES = 24
SPARED_FIRST = 8  # of a report for a customer: the rows go, the sentences stay


def condition_blocks(
    book: "Book",
    trays: Sequence[Tray],
    treatments: Mapping[TrayId, str],
    read_on: Mapping[str, int],
    plan: Plan | None,
    doubted: Container[str],
    cancel: CancelToken,
    *,
    short: bool,
) -> Iterator[Block]:
    """Under which conditions the trays were compared.

    Parameters
    ----------
    read_on : crop -> day since sowing that is read.
    doubted : conditions of which any verdict says that they were apart.
    """
    yield Heading(text=Sentence("How the trays were grown"))
    treated = [tray for tray in trays if tray.id in treatments]
    if not treated:
        yield Paragraph(text=Sentence("No tray got a treatment of the plan."))
        return
    columns = _columns(treated, treatments, plan)
    compared = _by_name(compare_conditions(trays, treatments, plan))
    given = given_to(book, trays, treatments, read_on, cancel)
    name = ALIKE if len(columns) > 1 else ALIKE_TRAYS
    yield from (_alike_in_short(compared, name) if short else _alike(compared, name, len(treated)))
    yield from _not_alike(compared, columns, doubted, planned=plan is not None)
    yield from _beside_the_plan(treated, plan)
    yield from _given(given, columns)
    yield from _not_noted(compared, given, treated)


def _columns(treated: Sequence[Tray], treatments: Mapping[TrayId, str], plan: Plan | None) -> tuple[str, ...]:
    """The trusted one first, the others in the order of the plan, or of the trays."""
    here = dict.fromkeys(treatments[tray.id] for tray in treated)
    if plan is None:
        return tuple(here)
    planned = dict.fromkeys((plan.trusted, *(one.name for one in plan.treatments)))
    return tuple(name for name in planned | here if name in here)


def _by_name(compared: Sequence[Compared]) -> dict[str, list[Compared]]:
    found: dict[str, list[Compared]] = {}
    for one in compared:
        found.setdefault(one.name, []).append(one)
    return found


def _stands(of_crops: Sequence[Compared]) -> set[Standing]:
    return {one.standing for one in of_crops}


def _is_even(of_crops: Sequence[Compared]) -> bool:
    """Alike in a crop, and in the others alike or not noted at all: a crop is compared with itself alone."""
    return Standing.ALIKE in (stands := _stands(of_crops)) and stands <= {Standing.ALIKE, Standing.NOT_NOTED}


# --- what was alike, what was not


def _alike(compared: Mapping[str, Sequence[Compared]], name: Sentence, trays: int) -> Iterator[Block]:
    rows = tuple(_alike_rows(compared))
    noted = Sentence("As noted of 1 tray") if trays == 1 else Sentence("As noted of {n} trays", n=trays)
    if rows:
        yield Grid(name=name, head=(name, noted), rows=rows, wide=(0, 1))


def _alike_in_short(compared: Mapping[str, Sequence[Compared]], name: Sentence) -> Iterator[Block]:
    rows = tuple(_alike_rows(compared))
    if rows:
        yield Paragraph(text=Sentence("{what} – {conditions}.", what=name, conditions=each_of(rows)))


def _alike_rows(compared: Mapping[str, Sequence[Compared]]) -> Iterator[tuple[Sentence, str]]:
    for name, found in compared.items():
        if _is_even(found):
            yield CONDITION_WORDS[name], alike_words(found)


def _not_alike(
    compared: Mapping[str, Sequence[Compared]],
    columns: Sequence[str],
    doubted: Container[str],
    *,
    planned: bool,
) -> Iterator[Block]:
    uneven = {
        name: found
        for name, found in compared.items()
        if name in doubted or (not _is_even(found) and _stands(found) != {Standing.NOT_NOTED})
    }
    if not uneven:
        return
    rows = [_row(one, columns, len(found)) for found in uneven.values() for one in found]
    yield Grid(
        name=Sentence("Not alike"),
        head=(Sentence("Not alike (in brackets: how many trays)"), *columns),
        rows=tuple(rows),
        wide=tuple(range(len(columns) + 1)),
        spare=SPARED_FIRST,
    )
    apart = [name for name, found in uneven.items() if Standing.APART in _stands(found)]
    for words in apart_words([name for name in compared if name in doubted], planned=planned):
        yield Paragraph(text=words, role="caution")
    some = [CONDITION_WORDS[name] for name in uneven if name not in apart and name not in doubted]
    if some:
        yield Paragraph(
            text=Sentence(
                "Noted of some trays only: {conditions}. Whether the others were grown so cannot be told.",
                conditions=all_of(some),
            ),
            role="caution",
        )


def _row(one: Compared, columns: Sequence[str], crops: int) -> tuple[str, ...]:
    cells = (had_words(one.name, one.counts[name]) if name in one.counts else NOTHING for name in columns)
    return (row_words(CONDITION_WORDS[one.name], one.crop, crops=crops), *cells)


def _beside_the_plan(treated: Sequence[Tray], plan: Plan | None) -> Iterator[Block]:
    """Trays that got something else than the plan has for all of them."""
    for name, level in ({} if plan is None else plan.same).items():
        others = [tray.code for tray in treated if setting_of(tray, name) not in (None, level)]
        if others:
            yield Paragraph(
                text=Sentence(
                    "Planned for all trays: {setting}. These had something else: {codes}.",
                    setting=level_words(name, level), codes=_some(others),
                ),
                role="caution",
            )  # fmt: skip


def left_out_words(codes: Sequence[str]) -> Paragraph:
    """Trays of which nothing is told here."""
    return Paragraph(
        text=Sentence(
            "Told of the trays that have a number, for only these are compared; without one: {codes}.",
            codes=_some(codes),
        )
    )


def _some(codes: Sequence[str]) -> str:
    """The codes; of very many the first and how many more."""
    named = ", ".join(codes[:MOST_CODES])
    more = len(codes) - MOST_CODES
    return Sentence("{codes} and {n} more", codes=named, n=more) if more > 0 else named


# --- air and water


def _given(given: Sequence[Given], columns: Sequence[str]) -> Iterator[Block]:
    rows = tuple(
        row for kind in KINDS for row in _given_rows([one for one in given if one.kind is kind], columns)
    )
    if rows:
        yield Grid(
            name=Sentence("Air, medium and water"),
            head=(Sentence("Mean until the day that is read (least to most)"), *columns),
            rows=rows,
            wide=tuple(range(len(columns) + 1)),
            spare=SPARED_FIRST + 1,
        )


def _given_rows(of_crops: Sequence[Given], columns: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """One row a crop; one for all where it is the same, as of the air over one rack."""
    rows = {
        one.crop: tuple(_known_words(one.by_treatment.get(name)) for name in columns)
        for one in of_crops
        if any(found.is_known for found in of_crops)
    }
    crops, kind = len(set(rows.values())), of_crops[0].kind
    words = Sentence("{condition}, {unit}", condition=GIVEN_WORDS[kind], unit=SAID.get(kind.unit, kind.unit))
    for crop, cells in rows.items():
        yield (row_words(words, crop, crops=crops), *cells)
        if crops == 1:
            return


def _known_words(known: Known | None) -> str:
    if known is None:
        return Sentence("not noted")
    values = {"mean": _figure(known.mean), "least": _figure(known.least), "most": _figure(known.most)}
    if known.known == known.trays:
        return Sentence("{mean} ({least} to {most})", **values)
    return Sentence(
        "{mean} ({least} to {most}), {known} of {trays} trays",
        known=known.known,
        trays=known.trays,
        **values,
    )


def _figure(value: float) -> str:
    return f"{value:.0f}" if abs(value) >= 100 else f"{value:.1f}".removesuffix(".0")


# --- what nobody noted


def _not_noted(
    compared: Mapping[str, Sequence[Compared]], given: Sequence[Given], treated: Sequence[Tray]
) -> Iterator[Block]:
    known = {one.kind for one in given if one.is_known}
    if all(tray.feed is not None and is_plain(tray.feed) for tray in treated):
        known.add(ReadingKind.FEED)  # nothing to be noted
    words = [
        *(
            CONDITION_WORDS[name]
            for name, found in compared.items()
            if _stands(found) == {Standing.NOT_NOTED}
        ),
        *(said for kind, said in GIVEN_WORDS.items() if kind not in known),
    ]
    if words:
        yield Paragraph(
            text=Sentence(
                "Not noted of any tray: {conditions}. Whether all had the same of it cannot be told from "
                "this report.",
                conditions=all_of(words),
            )
        )
