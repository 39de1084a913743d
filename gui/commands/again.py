"""Again commands: kept photos scored again, and drawn canopies written as training data, on the command line.

In    the folder of a book; an empty folder for training data
Out   one line a photo that changed, a sentence at the end; refusals on stderr; the exit code
Not   scoring (`data/upkeep/rescoring.py`), writing (`data/upkeep/trainingdata.py`)
"""

from pathlib import Path

from data.book import Book
from data.cancel import CancelToken
from gui.commands.book import scoring_pool
from gui.commands.saying import DONE, REFUSED, plain, refuse, say

__all__ = ["rescore_book", "write_training_of"]


def rescore_book(folder: Path, on: str | None = None, *, growing: bool = False) -> int:
    """Score photos again that the present method has not scored; the old scores stay.

    Ctrl+C ends it between two photos: what is done stays, and the next time goes on from there. Trays are
    compared by the old version until all photos have the new one.
    """
    from data.upkeep.rescoring import learned_method, rescore_all, stale_photos

    with Book.open(folder) as book:
        method = learned_method()
        if method is None:
            return refuse(
                "the learned model is missing or damaged, so nothing was scored again: install it anew"
            )
        photos = stale_photos(book, method, growing=growing)
        done = 0
        with scoring_pool(on) as (pool, workers):
            for photo, again in rescore_all(book, photos, pool, CancelToken(), workers=workers):
                done += again
                _tell(book, photo, again=again)
        print(f"{done} of {len(photos)} photos scored again by {method}.")
        sentence = book.comparable().sentence
        if sentence is not None:
            print(plain(sentence))
    return DONE if done == len(photos) else REFUSED


def _tell(book: Book, photo_id: int, *, again: bool) -> None:
    from data.records import PhotoId

    row = book.photo(PhotoId(photo_id))
    if again:
        print(plain(f"{row.name}: {row.sentence}"), flush=True)
    else:
        say(f"{row.name} could not be scored again; it keeps the score that it has.")


def write_training_of(folder: Path, target: Path) -> int:
    """Write every canopy that a person has drawn in a book as pictures to learn from."""
    from data.upkeep.trainingdata import write_training

    try:
        with Book.open(folder) as book:
            told = [written for _, written in write_training(book, target, CancelToken())]
    except FileExistsError:
        return refuse(f"{target} is not empty, and was left as it is: name an empty folder.")
    except OSError as error:
        return refuse(f"{target} cannot be written: {error.strerror}.")
    print(f"{sum(told)} of {len(told)} drawn photos written to {target}.")
    return DONE if all(told) else REFUSED
