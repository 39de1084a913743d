"""Again commands: kept photos scored again, and drawn canopies written as training data, on the command line.

In    the folder of a book; an empty folder for training data
Out   one line a photo that changed, a sentence at the end; refusals on stderr; the exit code
Not   scoring (`data/upkeep/rescoring.py`), writing (`data/upkeep/trainingdata.py`)
"""

from pathlib import Path

from data.book import Book
from data.cancel import CancelToken
from data.errors import BookError
from data.photos.farmerrors import FarmLost, FarmMissing
from gui.commands.book import scoring_pool
from gui.commands.saying import DONE, REFUSED, plain, say

__all__ = ["rescore_book", "write_training_of"]


def rescore_book(folder: Path, on: str | None = None, *, growing: bool = False) -> int:
    """Score photos again that the present method has not scored; the old scores stay.

    Ctrl+C ends it between two photos: what is done stays, and the next time goes on from there. Trays are
    compared by the old version until all photos have the new one.
    """
    from data.upkeep.rescoring import learned_method, rescore_all, stale_photos

    try:
        with Book.open(folder) as book:
            method = learned_method()
            if method is None:
                say("the learned model is missing or damaged, so nothing was scored again: install it anew")
                return REFUSED
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
    except (BookError, FarmLost, FarmMissing) as error:
        say(str(error))
        return REFUSED
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
    except BookError as error:
        say(str(error))
        return REFUSED
    except FileExistsError:
        say(f"{target} is not empty, and was left as it is: name an empty folder.")
        return REFUSED
    except OSError as error:
        say(f"{target} cannot be written: {error.strerror}.")
        return REFUSED
    print(f"{sum(told)} of {len(told)} drawn photos written to {target}.")
    return DONE if all(told) else REFUSED
