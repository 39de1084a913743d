"""Bench words: what the Bench says of the rack as a whole, and before there is one; no Qt.

In    `BenchState`
Out   sentences
Not   what needs a look (`lookpanel.py`)
"""

from gui.bench.view import BenchState
from gui.language.words import translate

__all__ = ["empty_words", "rack_words"]

MISSING_NAMED = 4  # trays without a photo of today that are named


def rack_words(state: BenchState) -> str:
    """How many trays there are, and how far the photographs of today have come."""
    rack = state.rack
    if rack.filtered:
        words = translate("Bench", "{shown} of {count} trays")
        return words.format(shown=len(rack.standings), count=rack.all_trays)
    one = translate("Bench", "1 tray")
    many = translate("Bench", "{count} trays").format(count=rack.all_trays)
    count = one if rack.all_trays == 1 else many
    if rack.with_photo == 0:
        return translate("Bench", "{trays}, no photo yet").format(trays=count)
    wanted, missing = state.to_photograph, state.missing
    if not wanted:
        return count
    said = translate("Bench", "{trays}, {done} of {wanted} photographed today").format(
        trays=count, done=wanted - len(missing), wanted=wanted
    )
    if not missing or len(missing) == wanted:
        return said
    named = ", ".join(missing[:MISSING_NAMED])
    more = len(missing) - MISSING_NAMED
    if more > 0:
        words = translate("Bench", "{said}; missing: {codes} and {more} more")
        return words.format(said=said, codes=named, more=more)
    return translate("Bench", "{said}; missing: {codes}").format(said=said, codes=named)


def empty_words(*, has_book: bool, to_sow: int = 0, ended: int = 0) -> tuple[str, str]:
    """Title and sentence of a Bench without trays; `to_sow` are planned and drawn, `ended` stood here."""
    if not has_book:
        return (
            translate("Bench", "No book is open"),
            translate(
                "Bench", "A book keeps your trays, their photos and all numbers in one folder of yours."
            ),
        )
    if to_sow:
        return (
            translate("Bench", "{n} trays wait to be sown").format(n=to_sow),
            translate(
                "Bench",
                "Their places are drawn. Once they are sown, say so in Plan on the page Sow: then they stand "
                "here, and photos find them by their tags.",
            ),
        )
    if ended:
        return (
            translate("Bench", "No tray grows now"),
            translate(
                "Bench",
                "Trays that have ended stay in the book with all photos and numbers: {n} of them. The Tray "
                "sheet opens them, what they tell stands in Verdict. Plan the next trial, or add a tray.",
            ).format(n=ended),
        )
    return (
        translate("Bench", "Here your rack will stand, shelf by shelf"),
        translate(
            "Bench",
            "To compare media, plan a trial: it says how many trays that takes, draws their places and "
            "puts them here once they are sown. To watch trays that grow already, add them one by one. Then "
            "photograph each from above, every day, and bring the photos in: the trays that need a look are "
            "named on top. Help (F1) leads through a first trial in five steps.",
        ),
    )
