"""Air: temperature and humidity -> vapour pressure, deficit, dew point, hours of likely leaf wetness.

In    temperatures in C, relative humidity in %, times
Out   pressures in kPa, dew point in C, `WetHours`
Not   reading loggers (`logs/sheet.py`), the medium's warmth

Formulas of FAO-56: Allen, Pereira, Raes & Smith (1998) Crop evapotranspiration, FAO Irrigation and Drainage
Paper 56, chapter 3, equations 11 to 19. Wetness without a sensor: hours with humidity of 90 % and
more (Sentelhas et al. 2008, original not opened) or with air less than 2 K above its dew point. A risk, not a
finding.
"""

import math
from bisect import bisect_left
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from data.growing.samples import hours, spans
from data.sentence import Sentence

__all__ = [
    "AirSample",
    "WetHours",
    "air_samples",
    "deficit",
    "dew_point",
    "likely_wet",
    "saturation",
    "vapour_pressure",
    "wet_hours",
]

WET_PCT = 90.0  # relative humidity from which leaves are likely wet (Sentelhas et al. 2008)
WET_KELVIN = 2.0  # air less than that above its dew point: likely wet (common practice)
WARM_C = 22.0  # from here wet hours count as warm ones; from memory, a starting value


@dataclass(frozen=True, slots=True, kw_only=True)
class AirSample:
    """Air at one moment."""

    at: datetime
    temperature: float  # C
    humidity: float  # %


@dataclass(frozen=True, slots=True, kw_only=True)
class WetHours:
    """Hours of a time in which leaves were likely wet; hours without samples are unknown, not dry.

    `wet`, `warm_and_wet` and `longest` are None where nothing is known, `sentence` then says so.
    """

    wet: float | None
    warm_and_wet: float | None
    longest: float | None  # hours at a stretch, wet
    known: float
    unknown: float
    sentence: Sentence


# --- one moment


def saturation(temperature: float) -> float:
    """Saturation vapour pressure in kPa over water at a temperature in C (equation 11); above -237 C."""
    return 0.6108 * math.exp(17.27 * temperature / (temperature + 237.3))


def vapour_pressure(temperature: float, humidity: float) -> float:
    """Actual vapour pressure in kPa; relative humidity in %, 0-100.

    Raises
    ------
    ValueError
        For a humidity that cannot be.
    """
    if not 0 <= humidity <= 100:
        raise ValueError(f"relative humidity lies between 0 and 100 %; got {humidity}")
    return saturation(temperature) * humidity / 100


def deficit(temperature: float, humidity: float) -> float:
    """Vapour pressure deficit in kPa."""
    return saturation(temperature) - vapour_pressure(temperature, humidity)


def dew_point(temperature: float, humidity: float) -> float | None:
    """Dew point in C; None for perfectly dry air, which has none."""
    pressure = vapour_pressure(temperature, humidity)
    if pressure <= 0:
        return None
    x = math.log(pressure / 0.6108)
    return 237.3 * x / (17.27 - x)


# --- a time


def air_samples(
    temperatures: Iterable[tuple[datetime, float]],
    humidities: Iterable[tuple[datetime, float]],
    within: timedelta = timedelta(minutes=15),
) -> tuple[AirSample, ...]:
    """Each humidity with the temperature nearest in time; without one `within`, it is passed over."""
    warm = sorted(temperatures)
    times = [at for at, _ in warm]
    samples = []
    for at, humidity in sorted(humidities):
        place = bisect_left(times, at)
        near = min(warm[max(0, place - 1) : place + 1], key=lambda one: abs(one[0] - at), default=None)
        if near is not None and abs(near[0] - at) <= within:
            samples.append(AirSample(at=at, temperature=near[1], humidity=humidity))
    return tuple(samples)


def likely_wet(sample: AirSample) -> bool:
    """Whether leaves are likely wet in this air."""
    humidity = min(100.0, sample.humidity)
    dew = dew_point(sample.temperature, humidity)
    return humidity >= WET_PCT or (dew is not None and sample.temperature - dew < WET_KELVIN)


def wet_hours(samples: Sequence[AirSample], begin: datetime, end: datetime, warm: float = WARM_C) -> WetHours:
    """Hours between `begin` and `end` in which leaves were likely wet, and warm as well.

    A sample stands until the next one, at most two hours; a stack's own time is from its stacking to its
    unstacking. A sensor that says a little over 100 % means 100; what cannot be air is passed over.
    """
    usable = sorted((one for one in samples if _can_be(one)), key=lambda one: one.at)
    whole = max(0.0, hours(end - begin))
    wet = hot = known = stretch = longest = 0.0
    last: datetime | None = None
    for number, start, until in spans([one.at for one in usable], begin, end):
        one, span = usable[number], hours(until - start)
        known += span
        if not likely_wet(one):
            stretch = 0.0
        else:
            stretch = span if last != start else stretch + span
            wet += span
            hot += span * (one.temperature >= warm)
        longest = max(longest, stretch)
        last = until
    if known == 0:
        return _nothing_known(whole)
    return WetHours(
        wet=wet,
        warm_and_wet=hot,
        longest=longest,
        known=known,
        unknown=max(0.0, whole - known),
        sentence=_wet_words(wet, hot, known),
    )


def _wet_words(wet: float, hot: float, known: float) -> Sentence:
    if round(hot) == 0:
        return Sentence(
            "Leaves were likely wet for {wet:.0f} of {known:.0f} logged hours.", wet=wet, known=known
        )
    return Sentence(
        "Leaves were likely wet for {wet:.0f} of {known:.0f} logged hours, {hot:.0f} of them warm.",
        wet=wet, known=known, hot=hot,
    )  # fmt: skip


def _nothing_known(whole: float) -> WetHours:
    return WetHours(
        wet=None,
        warm_and_wet=None,
        longest=None,
        known=0.0,
        unknown=whole,
        sentence=Sentence("No temperature and humidity were logged in this time."),
    )


def _can_be(sample: AirSample) -> bool:
    return -30 <= sample.temperature <= 70 and 0 < sample.humidity <= 105
