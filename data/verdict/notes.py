"""Verdict notes: what stands beside a verdict: cautions, and how it was worked out.

In    a `Verdict`
Out   `Sentence`s
Not   the sentence of a medium (`words.py`)
"""

from collections.abc import Iterable, Sequence

from data.sentence import Sentence
from data.statistics.further import WANTED
from data.verdict import CONFIDENCE, Measured, Verdict
from data.verdict.halfway import renamed_half_way
from data.verdict.outcome import CLEARLY, ErrorFrom, Why
from data.verdict.words import why_words

__all__ = ["cautions", "half_way", "how_worked_out"]


def cautions(verdict: Verdict) -> tuple[Sentence, ...]:
    """What a careful reader has to know; empty where there is nothing."""
    return tuple(_cautions(verdict))


def _cautions(verdict: Verdict) -> Iterable[Sentence]:
    for why in dict.fromkeys(verdict.missing.values()):
        if (
            why is not Why.NO_TRUSTED or verdict.trusted
        ):  # else what to do is said beside it (`beforehand.py`)
            yield why_words(why, trusted=verdict.trusted)
    if verdict.margin == 0 and verdict.has_trusted:
        yield Sentence(
            "The margin is zero: then no medium can be shown to be as good, only better or worse. Set how "
            "much less you would still call as good."
        )
    yield from _own_words(verdict)
    if verdict.error_from is ErrorFrom.SHELVES:
        yield Sentence(
            "A setting belongs to whole shelves, so shelves were compared, not trays: the number of shelves "
            "counts."
        )


def _own_words(verdict: Verdict) -> Iterable[Sentence]:
    """Why differences in blocks rest on two media each; without blocks they always do."""
    told = any(line.q is not None for line in verdict.compared)
    if verdict.error_from is not ErrorFrom.OWN_TRAYS or verdict.blocks == 1 or not told:
        return
    if verdict.unequal_chance is None or verdict.unequal_chance > CLEARLY:
        yield Sentence(
            "Of some media there are twice as many trays as of others, so each difference rests on its own "
            "two media's trays, block by block, not on one common spread."
        )
    else:
        yield Sentence(
            "Spreads differ clearly between media, so each difference rests on its own two media's trays, "
            "block by block, not on one common spread."
        )


def half_way(table: Sequence[Measured], trusted: str) -> tuple[Sentence, ...]:
    """Media that may be one under two names."""
    return tuple(
        _half_way(one, other, trusted)
        for one, other in renamed_half_way((row.block, row.medium) for row in table)
    )


def _half_way(one: str, other: str, trusted: str) -> Sentence:
    if trusted in (one, other):
        return Sentence(
            "The trusted medium may have been renamed half way: {one} and {other} never stand in one block, "
            "and together they stand in every block. They were taken as two.",
            one=one,
            other=other,
        )
    return Sentence(
        "{one} and {other} never stand in one block, and together they stand in every block: is it one "
        "medium under two names? They were taken as two.",
        one=one,
        other=other,
    )


def how_worked_out(verdict: Verdict) -> tuple[Sentence, ...]:
    """Formula and source, for who wants to know."""
    return tuple(_how(verdict))


def _how(verdict: Verdict) -> Iterable[Sentence]:
    yield Sentence(
        "One number a tray; value = block + medium + chance, least squares with fixed blocks (Fisher 1935); "
        "means are adjusted as if each medium stood in every block."
    )
    told = [line.q for line in verdict.compared if line.q is not None]
    if told and verdict.mse is not None and verdict.df is not None and not _own_q(verdict):
        yield _error_words(verdict, verdict.mse, verdict.df)
    if told:
        yield _interval_words(verdict, told[0], len(told))
        yield Sentence(
            "That holds for this crop and measure alone: each further one is a question of its own, with its "
            "own chance to err. Of many answers let those count that were asked for beforehand."
        )
    yield Sentence(
        "Better: the whole interval lies on the good side of zero. As good: it ends on the good side of the "
        "margin. Worse: it lies beyond the margin. Otherwise nothing is shown (Piaggio et al. 2012)."
    )
    if any(line.rank_low is not None for line in verdict.media):
        yield _rank_words(own=_own_q(verdict))
    if told:
        yield from _spread_words(verdict)
    if any(line.enough is not None for line in verdict.compared):
        yield Sentence(
            "How many trays would settle it is reckoned as if difference and spread were really those seen "
            "here, for a chance of {chance:.0f} %, in a trial that is read by itself.",
            chance=100 * WANTED,
        )
    if verdict.camera_sd > 0:
        yield Sentence(
            "Standard errors hold {sd:.2f} for the way the camera sees media differently, on top of the "
            "trays' own spread (added as squares; JCGM 100:2008).",
            sd=verdict.camera_sd,
        )


def _error_words(verdict: Verdict, mse: float, df: int) -> Sentence:
    return Sentence(
        "Error variance {mse:.6g} on {df} degrees of freedom from {trays} trays in {blocks} blocks.",
        mse=mse, df=df, trays=verdict.trays, blocks=verdict.blocks,
    )  # fmt: skip


def _own_q(verdict: Verdict) -> bool:
    """Whether each difference has an error and degrees of freedom of its own."""
    apart = any(line.q not in (None, verdict.q) for line in verdict.compared)
    return apart or verdict.error_from is ErrorFrom.OWN_TRAYS


def _interval_words(verdict: Verdict, q: float, media: int) -> Sentence:
    """`media`: how many have an interval."""
    if media == 1 and verdict.blocks == 1:
        return Sentence(
            "Interval = difference -+ q x standard error with q = {q:.4f}, Student's t, one-sided 95 %: the "
            "lower limit holds with about 95 %, and so does the upper one; both at once hold with about 90 "
            "%.",
            q=q,
        )
    if media == 1:
        return Sentence(
            "Interval = difference -+ q x standard error with q = {q:.4f}, Student's t, one-sided 95 %: the "
            "lower limit holds with 95 %, and so does the upper one; both at once hold with 90 %.",
            q=q,
        )
    if _own_q(verdict):
        return _own_interval_words(media, exact=verdict.blocks > 1)
    return Sentence(
        "Interval = difference -+ q x standard error with q = {q:.4f}, one-sided 95 % for all {media} "
        "media together (Dunnett 1955): all lower limits hold with 95 %, and so do all upper ones; both "
        "sides at once hold with at least 90 %.",
        q=q,
        media=media,
    )


def _own_interval_words(media: int, *, exact: bool) -> Sentence:
    """`exact`: block by block, whatever the spreads are."""
    level = 100 * CONFIDENCE ** (1 / media)
    if exact:
        return Sentence(
            "Interval = difference -+ q x standard error, each difference with an error and degrees of "
            "freedom of its own; q is Student's t, one-sided at {level:.2f} %, so that for all {media} media "
            "together the lower limits hold with at least 95 %, and so do the upper ones (Sidak 1967).",
            level=level,
            media=media,
        )
    return Sentence(
        "Interval = difference -+ q x standard error, each difference with an error and degrees of freedom "
        "of its own; q is Student's t, one-sided at {level:.2f} %, so that for all {media} media together "
        "the lower limits hold with about 95 %, and so do the upper ones (Sidak 1967).",
        level=level,
        media=media,
    )


def _rank_words(*, own: bool) -> Sentence:
    """`own`: each pair of media has an error of its own."""
    if own:
        return Sentence(
            "Ranks: those that 95 % intervals of all pairs leave open, each pair with an error of its own "
            "(Sidak 1967; Mogstad et al. 2024)."
        )
    return Sentence(
        "Ranks: those that Tukey's 95 % intervals of all pairs leave open (Tukey 1953, Kramer 1956; Mogstad "
        "et al. 2024)."
    )


def _spread_words(verdict: Verdict) -> Iterable[Sentence]:
    """What is done about spreads that differ, and what that leaves."""
    own_trays = verdict.error_from is ErrorFrom.OWN_TRAYS
    if own_trays and verdict.blocks == 1:
        yield _without_blocks_words()
    elif not _own_q(verdict) or (own_trays and verdict.unequal_chance is not None):
        yield _chance_words(verdict.unequal_chance)
    if _one_spread_of_many(verdict):
        yield _unseen_words()


def _without_blocks_words() -> Sentence:
    """Drawn trials of 2 to 8 media, 2 to 16 trays of each, spreads up to five to one."""
    return Sentence(
        "Without blocks each difference rests on its own two media's trays, not on one common spread (Welch "
        "1938, Satterthwaite 1946; of two or three trays beside more, Mickey and Brown 1966). Where spreads "
        "differ up to five to one, a lower limit fails in up to 6 of 100 drawn trials of two media, in up to "
        "9 of eight."
    )


def _chance_words(chance: float | None) -> Sentence:
    """`chance` of spreads so unequal, 0-1."""
    if chance is None:
        return Sentence(
            "Too few trays to tell whether some media scatter more than others; one spread was used."
        )
    return Sentence(
        "Spreads so unequal come up by chance in {chance:.1f} % of trials with one spread (Levene 1960); "
        "up to {limit:.0f} % each medium's own trays are used, block by block.",
        chance=100 * chance,
        limit=100 * CLEARLY,
    )


def _one_spread_of_many(verdict: Verdict) -> bool:
    """Whether one spread stands for several media, or for two of which blocks hold unlike many trays.

    Two media with a tray of each in a block need none: their differences by block are all there is.
    """
    told = sum(line.q is not None for line in verdict.compared)
    trays = [line.n for line in verdict.media]
    unlike = bool(trays) and min(trays) < max(trays) > verdict.blocks
    return verdict.error_from is ErrorFrom.ALL_MEDIA and (told > 1 or (told == 1 and unlike))


def _unseen_words() -> Sentence:
    """What one spread does where there are several; drawn trials, 3 to 14 blocks of 2 to 8 media."""
    return Sentence(
        "Should the trusted medium, or one with fewer trays, scatter two or three times as much as the "
        "others and this not show, a lower limit fails in up to 11 of 100 trials instead of 5, with eight "
        "media in up to 15, and in up to 20 where trays of the trusted medium are missing: see what the own "
        "trays alone say."
    )
