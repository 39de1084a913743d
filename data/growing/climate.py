"""Climate: the logged air of a tray from sowing on -> what it was like, in sentences.

In    temperatures in C and humidities in %, each with its time; from when to when
Out   `Sentence`s: warmth and degree days, humidity with its deficit, hours of likely wet leaves
Not   formulas (`air.py`, `degreedays.py`), which logger is a tray's (`gui/notes/view.py`)

Degree days make rounds at different warmth comparable. Their base differs by crop, 4 to 10 C (from memory):
one of 5 C is taken for all, and named with the number.
"""

from collections.abc import Sequence
from datetime import datetime

from data.growing.air import AirSample, air_samples, deficit, wet_hours
from data.growing.degreedays import logged_degree_days
from data.growing.samples import hours, spans
from data.sentence import Sentence

__all__ = ["BASE_C", "climate_words"]

BASE_C = 5.0
LEAST_H = 12.0  # logged, before anything is said: a number typed now and then is no climate

Logged = Sequence[tuple[datetime, float]]


def climate_words(
    temperatures: Logged, humidities: Logged, begin: datetime, end: datetime, *, moved: bool = False
) -> tuple[Sentence, ...]:
    """What was logged between two times; empty where that is under twelve hours.

    Parameters
    ----------
    moved : the tray came to its shelf at `begin`, and was sown before.
    """
    warmth = logged_degree_days(temperatures, BASE_C, begin, end)
    if warmth.mean is None or warmth.total is None or warmth.known < LEAST_H:
        return ()
    whole = warmth.known + warmth.unknown
    values = {
        "mean": warmth.mean,
        "total": warmth.total,
        "base": BASE_C,
        "known": warmth.known,
        "whole": whole,
    }
    told = (
        Sentence(
            "Air since it was moved to this shelf: {mean:.1f} °C on average, {total:.0f} degree days above "
            "{base:g} °C; logged for {known:.0f} of {whole:.0f} hours.",
            **values,
        )
        if moved
        else Sentence(
            "Air from sowing on: {mean:.1f} °C on average, {total:.0f} degree days above {base:g} °C; logged "
            "for {known:.0f} of {whole:.0f} hours.",
            **values,
        )
    )
    return (told, *_humidity_words(air_samples(temperatures, humidities), begin, end))


def _humidity_words(samples: Sequence[AirSample], begin: datetime, end: datetime) -> tuple[Sentence, ...]:
    wet = wet_hours(samples, begin, end)
    if wet.known < LEAST_H:
        return ()
    damp = lacking = known = 0.0
    for number, start, stop in spans([one.at for one in samples], begin, end):
        span, humidity = hours(stop - start), min(100.0, samples[number].humidity)
        damp += humidity * span
        lacking += deficit(samples[number].temperature, humidity) * span
        known += span
    told = Sentence(
        "Its humidity: {humidity:.0f} % on average, vapour pressure deficit {deficit:.2f} kPa.",
        humidity=damp / known, deficit=lacking / known,
    )  # fmt: skip
    return told, wet.sentence
