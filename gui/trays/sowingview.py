"""Sowing view: one tray as it was told -> the trays that are added, and what to say of them; no Qt.

In    a `NewTray`, how many of it, codes and tags that growing trays carry
Out   the `NewTray`s, one a code; their codes in a few words; how they grow in a line; what is doubtful
Not   the fields (`newtray.py`), keeping the trays (`data/chapters/traybook.py`)
"""

from collections.abc import Collection, Sequence
from dataclasses import replace
from datetime import date, timedelta

from data.growing.conditions import TrayType, next_code
from data.growing.croptable import doubts_of_tray
from data.records import NewTray
from gui.language.levels import shown_level
from gui.language.spoken import in_figures, spoken
from gui.language.words import translate
from gui.trays.traynames import LAST_TAG

__all__ = ["codes_words", "conditions_words", "doubts", "several"]

DAY = timedelta(days=1)


def several(first: NewTray, count: int, codes: Collection[str], tags: Collection[int]) -> tuple[NewTray, ...]:
    """The tray and those that are sown with it, under the next free codes and the next free tags."""
    made = [first]
    taken, worn = {*codes, first.code}, {*tags, first.tag_number}
    for _ in range(count - 1):
        last = made[-1]
        code = next_code(last.code, taken)
        tag = last.tag_number
        if tag is not None:
            tag = next((n for n in range(tag + 1, LAST_TAG + 1) if n not in worn), None)
        taken.add(code)
        worn.add(tag)
        position = None if last.position is None else last.position + 1
        made.append(replace(last, code=code, tag_number=tag, position=position))
    return tuple(made)


def codes_words(trays: Sequence[NewTray]) -> str:
    """A4; or A4 to A9, with their tags where they wear some."""
    first, last = trays[0], trays[-1]
    words = first.code
    if len(trays) > 1:
        words = translate("Sowing", "{first} to {last}").format(first=first.code, last=last.code)
    tags = [tray.tag_number for tray in trays if tray.tag_number is not None]
    if not tags:
        return words
    if len(tags) == 1:
        return translate("Sowing", "{codes}, tag {tag}").format(codes=words, tag=tags[0])
    return translate("Sowing", "{codes}, tags {first} to {last}").format(
        codes=words, first=tags[0], last=tags[-1]
    )


def conditions_words(tray: NewTray) -> str:
    """What is taken over of how the last one of its kind grew; empty where nothing is."""
    parts = []
    if tray.sowing_rate_g is not None:
        parts.append(translate("Sowing", "{grams} g of seed").format(grams=in_figures(tray.sowing_rate_g)))
    if tray.soak_hours == 0:
        parts.append(translate("Sowing", "sown dry"))
    elif tray.soak_hours is not None:
        parts.append(translate("Sowing", "soaked {hours} h").format(hours=in_figures(tray.soak_hours)))
    if tray.blackout_from is not None and tray.blackout_to is not None:
        days = round((tray.blackout_to - tray.blackout_from) / DAY, 1)
        dark = (
            translate("Sowing", "1 day in the dark")
            if days == 1
            else translate("Sowing", "{days} days in the dark")
        )
        parts.append(dark.format(days=in_figures(days)))
    if tray.stacked:
        parts.append(translate("Sowing", "stacked"))
    if tray.watering:
        parts.append(translate("Sowing", "watered: {how}").format(how=spoken(tray.watering)))
    if tray.feed:
        parts.append(translate("Sowing", "feed: {what}").format(what=shown_level("feed", tray.feed)))
    if tray.light:
        parts.append(translate("Sowing", "light: {what}").format(what=shown_level("light", tray.light)))
    if tray.seed_lot:
        parts.append(translate("Sowing", "seed lot {lot}").format(lot=tray.seed_lot))
    return " · ".join(parts)


def doubts(
    trays: Sequence[NewTray],
    tray_type: TrayType,
    today: date,
    codes: Collection[str],
    tags: Collection[int],
) -> tuple[str, ...]:
    """What is out of the ordinary and had better be looked at; it does not keep anybody from adding them."""
    first = trays[0]
    found = [spoken(one) for one in doubts_of_tray(first, tray_type, today)]
    if first.code in codes:
        words = translate("Sowing", "A growing tray is called {code} already; two are hard to tell apart.")
        found.append(words.format(code=first.code))
    if first.tag_number is not None and first.tag_number in tags:
        words = translate("Sowing", "Tag {tag} is on a tray that still grows: choose another one.")
        found.append(words.format(tag=first.tag_number))
    if first.tag_number is not None and any(tray.tag_number is None for tray in trays):
        found.append(translate("Sowing", "There are not enough tags: the last trays come without one."))
    return tuple(found)
