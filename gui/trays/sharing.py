"""Sharing: which conditions other trays can be given, which trays those are, what would change; no Qt.

In    what the fields of a tray say, the trays of its trial and of the rack
Out   `Shareable` conditions with their words, `Group`s of trays, what giving them would replace
Not   the dialog (`sharedialog.py`), keeping it (`data/chapters/traybook.py`)
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import timedelta

from data.growing.conditions import CROPS_OWN, SHARED, as_new, sharing
from data.records import NewTray, Tray
from gui.language.spoken import in_figures, spoken
from gui.language.words import translate

__all__ = ["Group", "Shareable", "effect_words", "groups_of", "planned_words", "shareables"]

DAY = timedelta(days=1)
MOST_NAMED = 3
MOST_VALUES = 5
FACTORS = {"stacked": "stacking", "heat_mat": "heat mat"}  # a plan's names, where they are others
UNITS = {"sowing_rate_g": "g", "soak_hours": "h"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Shareable:
    """One condition: its name in `SHARED`, its words, what the tray has of it."""

    name: str
    words: str
    value: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Group:
    """Trays that belong together, under the words for them."""

    words: str
    trays: tuple[Tray, ...]


def shareables(tray: NewTray) -> tuple[Shareable, ...]:
    """All conditions that can be shared, in the order of the form."""
    return tuple(Shareable(name=name, words=_words_of(name), value=_value(tray, name)) for name in SHARED)


def _words_of(name: str) -> str:
    return {
        "seed_lot": translate("Sharing", "Seed lot"),
        "sowing_rate_g": translate("Sharing", "Sowing rate"),
        "soak_hours": translate("Sharing", "Soaked"),
        "seating": translate("Sharing", "Seating"),
        "blackout": translate("Sharing", "Blackout"),
        "stacked": translate("Sharing", "Stacked"),
        "watering": translate("Sharing", "Watering"),
        "feed": translate("Sharing", "Feed"),
        "heat_mat": translate("Sharing", "Heat mat"),
        "light": translate("Sharing", "Light"),
    }[name]


def _value(tray: NewTray, name: str) -> str:
    if name == "blackout":
        return _dark(tray)
    value = getattr(tray, name)
    if value is None:
        return translate("Sharing", "not noted")
    if isinstance(value, bool):
        return translate("Sharing", "yes") if value else translate("Sharing", "no")
    return f"{in_figures(value)} {UNITS[name]}" if name in UNITS else spoken(value)


def _dark(tray: NewTray) -> str:
    begin, end = tray.blackout_from, tray.blackout_to
    if begin is None or end is None:
        return translate("Sharing", "none noted")
    days, after = round((end - begin) / DAY, 1), round((begin - tray.sown_at) / DAY, 1)
    dark = (
        translate("Sharing", "1 day")
        if days == 1
        else translate("Sharing", "{days} days").format(days=in_figures(days))
    )
    if after <= 0:
        return translate("Sharing", "{dark} from sowing on").format(dark=dark)
    words = translate("Sharing", "{dark}, beginning {hours} h after sowing")
    return words.format(dark=dark, hours=round(24 * after))


# --- which trays


def groups_of(tray: Tray, of_trial: Sequence[Tray], growing: Sequence[Tray]) -> tuple[Group, ...]:
    """Groups that a tray belongs to with others, the largest of its trial first; none twice."""
    found: dict[frozenset[int], Group] = {}
    for words, trays in (*_of_trial(tray, of_trial), *_growing(tray, growing)):
        key = frozenset(one.id for one in trays)
        if len(key) > 1 and tray.id in key:
            told = words.format(crop=tray.crop, medium=tray.medium, shelf=tray.shelf, n=len(trays))
            found.setdefault(key, Group(words=told, trays=tuple(trays)))
    return tuple(found.values())


def _of_trial(tray: Tray, trays: Sequence[Tray]) -> Iterable[tuple[str, list[Tray]]]:
    if tray.trial is None:
        return
    yield translate("Sharing", "all {n} trays of its trial"), list(trays)
    yield translate("Sharing", "the {n} trays of its trial on {medium}"), _alike(trays, tray, "medium")
    yield translate("Sharing", "the {n} trays of its trial with {crop}"), _alike(trays, tray, "crop")
    both = translate("Sharing", "the {n} trays of its trial with {crop} on {medium}")
    yield both, _alike(trays, tray, "crop", "medium")


def _growing(tray: Tray, trays: Sequence[Tray]) -> Iterable[tuple[str, list[Tray]]]:
    yield translate("Sharing", "all {n} growing trays"), list(trays)
    yield translate("Sharing", "the {n} growing trays on {medium}"), _alike(trays, tray, "medium")
    yield translate("Sharing", "the {n} growing trays with {crop}"), _alike(trays, tray, "crop")
    if tray.shelf:
        yield translate("Sharing", "the {n} growing trays on shelf {shelf}"), _alike(trays, tray, "shelf")


def _alike(trays: Sequence[Tray], tray: Tray, *names: str) -> list[Tray]:
    return [one for one in trays if all(getattr(one, name) == getattr(tray, name) for name in names)]


# --- what would happen


def effect_words(model: NewTray, names: Collection[str], trays: Sequence[Tray]) -> tuple[str, ...]:
    """How many trays would change, what is replaced in them, what stays with its crop."""
    if not names:
        return (translate("Sharing", "Tick what the other trays shall have."),)
    said = {tray.id: as_new(tray) for tray in trays}
    changed = [tray for tray in said.values() if sharing(tray, model, names) != tray]
    if not changed:
        return (translate("Sharing", "All of them have that already."),)
    words = translate("Sharing", "{n} of {all} trays change.")
    if len(changed) == 1:
        words = translate("Sharing", "{n} of {all} trays changes.")
    told = [words.format(n=len(changed), all=len(trays))]
    told += [one for name in SHARED if name in names and (one := _replaced_words(name, model, changed))]
    if any(tray.crop != model.crop for tray in trays) and CROPS_OWN & set(names):
        own = translate("Sharing", "{conditions}: only on trays with {crop}.")
        listed = ", ".join(_words_of(name) for name in SHARED if name in CROPS_OWN & set(names))
        told.append(own.format(conditions=listed, crop=model.crop))
    return tuple(told)


def planned_words(
    model: NewTray, names: Collection[str], trays: Sequence[Tray], varied: Mapping[str, Collection[str]]
) -> str:
    """What a plan varies and these trays would then have alike, or nothing; `varied`: trial -> factors."""
    lost = [
        _words_of(name)
        for name in SHARED
        if name in names
        and any(
            FACTORS.get(name, name) in varied.get(tray.trial or "", ())
            and _says_otherwise(as_new(tray), model, name)
            for tray in trays
        )
    ]
    if not lost:
        return ""
    words = translate(
        "Sharing",
        "A plan varies this on purpose: {conditions}. Trays that get it here leave the treatment that they "
        "were planned for.",
    )
    return words.format(conditions=", ".join(lost))


def _replaced_words(name: str, model: NewTray, trays: Sequence[NewTray]) -> str:
    """What else is noted of trays: that is lost, and had better be said."""
    others: dict[str, list[str]] = {}
    for tray in trays:
        if tray.code != model.code and _says_otherwise(tray, model, name):
            others.setdefault(_value(tray, name), []).append(tray.code)
    if not others:
        return ""
    by_trays = sorted(others.items(), key=lambda one: -len(one[1]))
    shown = by_trays if len(by_trays) <= MOST_VALUES + 1 else by_trays[:MOST_VALUES]
    told = ", ".join(f"{value} ({_some(codes)})" for value, codes in shown)
    more = by_trays[len(shown) :]
    if more:
        rest = translate("Sharing", "{values}, {n} other values ({trays} trays)")
        told = rest.format(values=told, n=len(more), trays=sum(len(codes) for _, codes in more))
    words = translate("Sharing", "{condition} is noted otherwise and replaced: {values}.")
    return words.format(condition=_words_of(name), values=told)


def _some(codes: Sequence[str]) -> str:
    """A few trays by name, many by their number."""
    if len(codes) <= MOST_NAMED:
        return ", ".join(codes)
    return translate("Sharing", "{n} trays").format(n=len(codes))


def _says_otherwise(tray: NewTray, model: NewTray, name: str) -> bool:
    new = sharing(tray, model, {name})
    return any(
        getattr(tray, field) is not None and getattr(tray, field) != getattr(new, field)
        for field in SHARED[name]
    )
