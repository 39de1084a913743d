"""Blind words: what a round of scoring by eye says, and whose numbers to trust.

In    the agreement of the eye with the photo's score and with itself
Out   `Sentence`s
Not   the agreement itself (`blind.py`)

Limits of 0.75 for good and 0.5 for poor agreement are rules of thumb of the trade, no standard.
"""

from data.blind import EyeAgreement
from data.sentence import Sentence

__all__ = ["eye_words", "whom_to_trust"]

GOOD, POOR = 0.75, 0.5


def eye_words(found: EyeAgreement) -> tuple[Sentence, ...]:
    """What was found, in numbers, then whose numbers to trust."""
    words = []
    if found.limits is not None and found.with_photo is not None:
        words.append(
            Sentence(
                "On {trays} trays the eye gave {mean:+.1f} points against the photo, in 95 of 100 trays "
                "between {low:+.1f} and {high:+.1f}; agreement {icc:.2f} (ICC(2,1), 1 is perfect).",
                trays=found.trays,
                mean=found.limits.mean + 0.0,
                low=found.limits.low,
                high=found.limits.high,
                icc=found.with_photo.value,
            )
        )
    if found.grades is not None and found.grades.weighted is not None:
        words.append(
            Sentence(
                "In five grades of 20 points eye and photo put {same} of {trays} trays into the same one; "
                "weighted kappa {kappa:.2f} (1 is perfect, 0 is what chance alone would give).",
                same=found.same_grade,
                trays=found.trays,
                kappa=round(found.grades.weighted, 2) + 0.0,
            )
        )
    if found.itself_sd is not None:
        words.append(
            Sentence(
                "Of {again} trays seen twice the eye missed its own number by {sd:.1f} points (standard "
                "deviation of one score).",
                again=found.again,
                sd=found.itself_sd,
            )
        )
    words.append(whom_to_trust(found))
    return tuple(words)


def whom_to_trust(found: EyeAgreement) -> Sentence:
    """Whose numbers to trust, in one sentence that chance alone says in one round of ten at most."""
    alike = found.with_photo
    if alike is None or alike.low is None or alike.high is None:
        return Sentence("Too few trays were scored by eye and by photo to say whose numbers to trust.")
    if alike.value >= GOOD and alike.low >= POOR:
        return Sentence("Eye and photo say much the same: either may be trusted.")
    low, high = (None, None) if found.steady is None else (found.steady.low, found.steady.high)
    if high is not None and high < POOR:
        return Sentence("The eye does not agree with itself from one look to the next: trust the photo.")
    if alike.high >= GOOD:
        return Sentence(
            "Whether eye and photo say much the same cannot be told from so few trays: score more before you "
            "trust either alone."
        )
    if low is None or low < POOR:
        return Sentence(
            "Eye and photo differ, and too few trays were seen twice to say how sure the eye is of itself: "
            "trust neither alone."
        )
    return Sentence(
        "The eye agrees with itself but not with the photo, so the two see different things: look at the "
        "trays on which they differ most before you trust either."
    )
