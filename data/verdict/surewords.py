"""Sure words: how sure a book's verdict is, one line for each doubt.

In    what was read otherwise; what the camera's own error adds
Out   `Sentence`s
Not   asking (`rechecks.py`), the sentence of a medium (`words.py`)
"""

from collections.abc import Iterable, Mapping

from data.sentence import Sentence
from data.verdict import Verdict
from data.verdict.sensitivity import Otherwise, What
from data.verdict.words import Scale, outcome_words

__all__ = ["camera_words", "otherwise_words"]

Values = Mapping[str, object]

NO_BLOCK = "–"  # of trays of which none is noted
CAMERA_MATTERS = 0.2  # of the standard error, from which its share is worth a word


def otherwise_words(otherwise: Iterable[Otherwise], scale: Scale) -> tuple[Sentence, ...]:
    """One line for each question and medium."""
    return tuple(_otherwise(one, scale) for one in otherwise)


def _otherwise(one: Otherwise, scale: Scale) -> Sentence:
    if one.least is None or one.most is None:
        return _nothing_left(one)
    under, answer = one.changes[0] if one.changes else ("", one.usual)
    values = {
        "medium": one.medium,
        "least": scale.number(one.least, sign=True),
        "most": scale.number(one.most, sign=True),
        "answer": Sentence("no verdict") if answer is None else outcome_words(answer),
        "under": under or NO_BLOCK,
    }
    return WORDS[one.what](values, stays=not one.changes)


def _nothing_left(one: Otherwise) -> Sentence:
    if one.what is What.NO_LOST:
        return Sentence("{medium}: without trays lost to mold nothing is left to compare.", medium=one.medium)
    return Sentence(
        "{medium}: without trays with an open suspect nothing is left to compare: say what they are.",
        medium=one.medium,
    )


def _any_block(values: Values, *, stays: bool) -> Sentence:
    if stays:
        return Sentence(
            "{medium}: with any one block left out the difference lies between {least} and {most}, and the "
            "answer stays.", **values,
        )  # fmt: skip
    return Sentence(
        "{medium}: with any one block left out the difference lies between {least} and {most}; without block "
        "{under} the answer would be: {answer}.", **values,
    )  # fmt: skip


def _own_trays(values: Values, *, stays: bool) -> Sentence:
    if stays:
        return Sentence(
            "{medium}: with the spread of its own and the trusted trays alone the answer stays.", **values
        )
    return Sentence(
        "{medium}: with the spread of its own and the trusted trays alone the answer would be: {answer}.",
        **values,
    )


def _heights(values: Values, *, stays: bool) -> Sentence:
    if stays:
        return Sentence(
            "{medium}: media at different heights in the tray look denser or thinner to the camera; by that "
            "the difference may lie between {least} and {most}, and the answer stays.", **values,
        )  # fmt: skip
    return Sentence(
        "{medium}: media at different heights in the tray look denser or thinner to the camera; by that "
        "the difference may lie between {least} and {most}, and then the answer could be: {answer}.",
        **values,
    )


def _other_area(values: Values, *, stays: bool) -> Sentence:
    if stays:
        return Sentence(
            "{medium}: counted as a share of the inner area, which favours media that lie high in the tray, "
            "the difference is {least}, and the answer stays.", **values,
        )  # fmt: skip
    return Sentence(
        "{medium}: counted as a share of the inner area, which favours media that lie high in the tray, "
        "the difference is {least}, and the answer would be: {answer}.", **values,
    )  # fmt: skip


def _no_suspects(values: Values, *, stays: bool) -> Sentence:
    if stays:
        return Sentence(
            "{medium}: without trays with an open suspect the difference is {least}, and the answer stays.",
            **values,
        )
    return Sentence(
        "{medium}: without trays with an open suspect the difference is {least}, and the answer would be: "
        "{answer}.", **values,
    )  # fmt: skip


def _no_lost(values: Values, *, stays: bool) -> Sentence:
    if stays:
        return Sentence(
            "{medium}: without trays lost to mold the difference is {least}, and the answer stays.", **values
        )
    return Sentence(
        "{medium}: without trays lost to mold the difference is {least}, and the answer would be: {answer}.",
        **values,
    )


def _other_method(values: Values, *, stays: bool) -> Sentence:
    if stays:
        return Sentence(
            "{medium}: by the scores of the other version of the method the difference is {least}, and the "
            "answer stays.", **values,
        )  # fmt: skip
    return Sentence(
        "{medium}: by the scores of the other version of the method the difference is {least}, and the "
        "answer would be: {answer}.", **values,
    )  # fmt: skip


WORDS = {
    What.ANY_BLOCK: _any_block,
    What.OWN_TRAYS: _own_trays,
    What.HEIGHTS: _heights,
    What.OTHER_AREA: _other_area,
    What.NO_SUSPECTS: _no_suspects,
    What.NO_LOST: _no_lost,
    What.OTHER_METHOD: _other_method,
}


def camera_words(verdict: Verdict, scale: Scale) -> tuple[Sentence, ...]:
    """What the camera's own error does to the comparison; empty where it does not matter."""
    errors = [line.se for line in verdict.media if line.se]
    if not verdict.camera_sd or not errors:
        return ()
    sd = scale.amount(verdict.camera_sd)
    if verdict.camera_sd**2 < CAMERA_MATTERS**2 * min(errors) ** 2:
        return (
            Sentence(
                "The camera sees media differently by about {sd} (standard deviation); beside the trays' own "
                "spread that is little.",
                sd=sd,
            ),
        )
    return (
        Sentence(
            "The camera sees media differently by about {sd} (standard deviation), which no number of trays "
            "averages out; the intervals are widened by it.",
            sd=sd,
        ),
    )
