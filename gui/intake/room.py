"""Intake room: how the height of Intake's page is shared while a question is open above the list.

In    heights in px: of the page, of its parts as they would like to be, of a line of text
Out   `Room`: which parts are shown, how high a row and the question are; no Qt
Not   showing it (`photolist.py`), letting the question roll (`controls/questionband.py`)

The question takes the place of what can be done without for as long as it is open. The list keeps three rows
and the next step: for that the rows become lower, then the heading goes, then the question rolls. Beside the
list the words and buttons of a photo come before its picture; where there is no room for them the picture
stands alone, since the row says the same words, and buttons can wait for the question.
"""

from dataclasses import dataclass, replace

__all__ = ["LARGE_TEXT", "ROWS", "Parts", "Room", "row_height", "share_out"]

ROWS = 3  # of the list, at least
FRAME = 2  # px around the list
LEAST_ROOM = 360  # px for the list and the photo from which the drop area is shown, too
LARGE_TEXT = 22  # px of a line from which a sentence needs three of them in the least window
LEAST_ROW = 56  # px, for the thumbnail
ROW_EDGES = 8  # px above and below the lines of a row


@dataclass(frozen=True, slots=True, kw_only=True)
class Parts:
    """What there is to share, and what each part asks for, px."""

    room: int  # for question, list and foot, without the spaces between them
    line: int  # of text
    question: int  # all of it
    least_question: int  # with little of it seen at once
    heading: int  # of the list
    panel: int  # least height of the photo beside the list, with its words and buttons
    picture: int  # what of that can be given up: the picture
    words: int  # or the words and buttons
    drop: int
    next_step: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """Who gets what."""

    row: int  # height of a row, px
    question: int  # height of the question, px
    heading: bool = True
    panel: bool = True
    picture: bool = True  # in the panel
    words: bool = True  # in the panel, with the buttons
    drop: bool = True
    next_step: bool = True


def row_height(line: int, lines: int | None = None) -> int:
    """px of a row with so many lines of text of `line` px; by default as many as a sentence takes."""
    if lines is None:
        lines = 2 if line < LARGE_TEXT else 3
    return max(LEAST_ROW, lines * line + ROW_EDGES)


def share_out(parts: Parts) -> Room:
    """Share the height while a question is open."""
    rest = parts.room - parts.next_step - parts.question
    drop = rest - max(0, parts.drop - parts.next_step) >= LEAST_ROOM
    full, low = row_height(parts.line), row_height(parts.line, 2)
    for row, heading in ((full, True), (low, True), (low, False)):
        rows = ROWS * row + FRAME + (parts.heading if heading else 0)
        if rest >= rows:
            return _beside(parts, rest, Room(row=row, question=parts.question, heading=heading, drop=drop))
    question = max(parts.least_question, parts.question - (rows - rest))
    seen = parts.room - question
    next_step = seen - parts.next_step >= low
    room = Room(row=low, question=question, heading=False, drop=False, next_step=next_step)
    return _beside(parts, seen - (parts.next_step if next_step else 0), room)


def _beside(parts: Parts, height: int, room: Room) -> Room:
    """What of the photo beside the list has room in this height, px."""
    if height >= parts.panel:
        return room
    if height >= parts.panel - parts.picture:
        return replace(room, picture=False)
    if height >= parts.panel - parts.words:
        return replace(room, words=False)
    return replace(room, panel=False)
