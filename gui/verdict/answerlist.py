"""Answer list: the one sentence of each new medium, with a mark that says the answer by its shape.

In    `Answer`s
Out   marks and sentences, large and plain
Not   the sentences (`data/verdict/words.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from data.verdict.outcome import Outcome
from gui.answer.view import Answer
from gui.style.palette import Space, tokens_now
from gui.style.words import line_width, quotable

__all__ = ["AnswerList", "AnswerMark"]


class AnswerMark(QWidget):
    """A shape: up, level, a little lower, down, open; dashed while the trial runs."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._answer: Answer | None = None

    def show_answer(self, answer: Answer) -> None:
        """Show the shape of its outcome."""
        self._answer = answer
        self.setFixedSize(self.sizeHint())
        self.update()

    def sizeHint(self) -> QSize:
        """As high as a large line of text."""
        side = round(1.7 * self.fontMetrics().height())
        return QSize(side, side)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Filled where something is shown, hollow where nothing is."""
        if self._answer is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        t, outcome = tokens_now(), self._answer.outcome
        colour = {Outcome.BETTER: t.accent, Outcome.AS_GOOD: t.accent, Outcome.AS_GOOD_LOWER: t.notice}
        shown = outcome is not None and outcome.is_shown and not self._answer.so_far
        ink = colour.get(outcome, t.alarm) if shown and outcome is not None else t.soft_ink
        pen = QPen(QColor(ink), 2.0)
        if self._answer.so_far:
            pen.setStyle(Qt.PenStyle.DotLine)
        painter.setPen(pen)
        if shown:
            painter.setBrush(QColor(ink))
        box = QRectF(self.rect()).adjusted(4, 4, -4, -4)
        self._shape(painter, box, outcome if shown else Outcome.NOT_SHOWN)

    @staticmethod
    def _shape(painter: QPainter, box: QRectF, outcome: Outcome | None) -> None:
        middle, half = box.center(), box.width() / 2
        match outcome:
            case Outcome.BETTER:
                points = [QPointF(0, -half), QPointF(half, 0.8 * half), QPointF(-half, 0.8 * half)]
                painter.drawPolygon(QPolygonF([middle + point for point in points]))
            case Outcome.WORSE:
                points = [QPointF(0, half), QPointF(half, -0.8 * half), QPointF(-half, -0.8 * half)]
                painter.drawPolygon(QPolygonF([middle + point for point in points]))
            case Outcome.AS_GOOD | Outcome.AS_GOOD_LOWER:
                lines = (-0.4, 0.4) if outcome is Outcome.AS_GOOD else (0.4,)
                for share in lines:
                    bar = QRectF(box.left(), middle.y() + share * half - 2.5, box.width(), 5.0)
                    painter.drawRect(bar)
            case _:
                painter.drawEllipse(middle, half, half)


class AnswerList(QWidget):
    """One row a medium."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(Space.M)
        self._rows: list[tuple[QWidget, AnswerMark, QLabel]] = []

    @property
    def texts(self) -> tuple[str, ...]:
        """The sentences that are shown."""
        return tuple(words.text() for row, _, words in self._rows if not row.isHidden())

    @property
    def wanted(self) -> int:
        """Width of a mark and a whole line of a sentence, px; 0 where there is none."""
        if not self._rows:
            return 0
        _, mark, words = self._rows[0]
        return mark.sizeHint().width() + Space.M + line_width(words.fontMetrics())

    def show_answers(self, answers: Sequence[Answer]) -> None:
        """Show these."""
        while len(self._rows) < len(answers):
            self._add_row()
        for number, (row, mark, words) in enumerate(self._rows):
            row.setVisible(number < len(answers))
            if number < len(answers):
                mark.show_answer(answers[number])
                words.setText(answers[number].words)

    def _add_row(self) -> None:
        row = QWidget(self)
        mark, words = AnswerMark(row), quotable(row, "answer")
        across = QHBoxLayout(row)
        across.setContentsMargins(0, 0, 0, 0)
        across.setSpacing(Space.M)
        across.addWidget(mark, 0, Qt.AlignmentFlag.AlignTop)
        across.addWidget(words, 1)
        self._column.addWidget(row)
        self._rows.append((row, mark, words))
