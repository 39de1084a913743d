"""Time left: how long background work will still take, from how fast it went so far.

In    how much is done, of how much, after how many seconds
Out   seconds, rounded as a person would say them; None while nobody can know
Not   the words (`progress.py`)
"""

__all__ = ["seconds_left"]

FIRST_GUESS_AFTER_S = 2.0  # earlier a guess would only jump about
LEAST_DONE = 2


def seconds_left(done: int, total: int, seconds: float) -> int | None:
    """Seconds to go, to 5 s below a minute, to half minutes above; None before a guess is fair.

    Examples
    --------
    >>> seconds_left(30, 144, 30.0)
    120
    >>> seconds_left(1, 144, 30.0) is None
    True
    """
    if done < LEAST_DONE or total <= 0 or seconds < FIRST_GUESS_AFTER_S:
        return None
    left = max(0, total - done) * seconds / done
    step = 5 if left < 60 else 30
    return step * max(1, round(left / step))
