"""Farm errors: what goes wrong with a farm of workers, told to the grower.

In    the farm's address; a worker
Out   an error whose text says what is wrong, what was kept and what to do
Not   what happens to a book (`data/errors.py`), the farm itself (`farm.py`)
"""

from typing import Self

__all__ = ["FarmLost", "FarmMissing", "KilledByPhoto"]


class FarmMissing(Exception):
    """No farm of workers can be used; nothing was begun. `str()` is for the grower."""

    @classmethod
    def without_extra(cls) -> Self:
        """`distributed` is not installed."""
        return cls("scoring on a farm needs one more library: install Evenstand with its extra 'farm'")

    @classmethod
    def nobody(cls, address: str) -> Self:
        """No scheduler answers."""
        return cls(
            f"nobody answers at {address}: look whether the farm's scheduler runs there, and whether this "
            "machine reaches it"
        )

    @classmethod
    def no_workers(cls, address: str) -> Self:
        """A scheduler without workers."""
        return cls(f"the farm at {address} has no workers: start some there, then try again")

    @classmethod
    def other_version(cls, worker: str, theirs: object) -> Self:
        """Scores of two versions would be mixed."""
        if isinstance(theirs, BaseException):
            return cls(f"the worker {worker} has no Evenstand, or an older one: install this version there")
        return cls(
            f"the worker {worker} scores by another version ({theirs}), and scores would be mixed: "
            "bring that machine or this one up to date"
        )


class FarmLost(Exception):
    """The farm went away in the middle; what came back before is kept."""

    def __init__(self, address: str) -> None:
        self.address = address
        super().__init__(
            f"the farm at {address} does not answer any more; all photos stored so far are safe: "
            "run the same again when it is back, and it goes on from there"
        )

    def __reduce__(self) -> tuple[object, ...]:
        """Keep the words when the error travels between processes."""
        return (type(self), (self.address,))


class KilledByPhoto(Exception):
    """One photo took worker after worker with it."""
