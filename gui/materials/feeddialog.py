"""Feed dialog: what a medium is fed with, how thin, how often, how it smells; with its caution.

In    the desk with its book, the medium
Out   the feed kept, with its factors
Not   feeding a tray (its sheet), comparing with and without (`Plan`)
"""

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QDialog, QFormLayout, QLabel, QLineEdit, QPushButton, QWidget

from data.book import Book
from data.medium.factors import KINDS, Factor, chosen
from data.medium.feeds import ASK_FIRST, COMPARE, feed_caution
from gui.controls.form import fields, fit, lay_out
from gui.controls.telling import tell
from gui.language.levels import NO_FEED, edited_level, shown_level
from gui.language.spoken import in_figures, spoken
from gui.materials.desk import MaterialDesk
from gui.notes.table import number_in
from gui.style.palette import set_role

__all__ = ["FeedDialog"]


class FeedDialog(QDialog):
    """The caution follows what is typed."""

    def __init__(self, desk: MaterialDesk, book: Book, medium: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk, self._medium = desk, medium
        self.setWindowTitle(self.tr("Feed of {medium}").format(medium=medium))
        form = self._form(book)
        self.caution, compare, self.trouble = (QLabel(self) for _ in range(3))
        for label, role in ((self.caution, "notice"), (compare, "soft"), (self.trouble, "alarm")):
            label.setWordWrap(True)
            set_role(label, role)
        compare.setText(f"{spoken(ASK_FIRST)} {spoken(COMPARE)}")
        close, keep = QPushButton(self.tr("Leave"), self), QPushButton(self.tr("Keep"), self)
        close.clicked.connect(self.reject)
        set_role(keep, "main")
        keep.setDefault(True)
        keep.clicked.connect(self._keep)
        lay_out(self, [compare, self.caution], form, self.trouble, [close, keep], 64)
        self.feed.textChanged.connect(self._warn)
        desk.trouble.connect(self._say)  # behind this dialog nobody sees it
        self._warn()

    def _form(self, book: Book) -> QFormLayout:
        """What the book knows of the feed, to be corrected."""
        medium = self._medium
        kept, own = book.medium(medium), book.factors()
        form = fields()
        self._was = None if kept is None else kept.feed
        self.feed = QLineEdit(shown_level("feed", self._was), self)
        self.feed.setPlaceholderText(self.tr("none, or what it is"))
        form.addRow(self.tr("Feed"), self.feed)
        self.feed.setAccessibleName(self.tr("Feed"))
        self.numbers: dict[str, QLineEdit] = {}
        for name in ("feed dilution", "feed every", "feed odour"):
            now = chosen(own, name, medium)
            field = QLineEdit("" if now is None or now.value is None else in_figures(now.value), self)
            words = f"{spoken(KINDS[name].about)}, {spoken(KINDS[name].unit)}"
            field.setAccessibleName(words)
            form.addRow(words, field)
            self.numbers[name] = field
        odour = chosen(own, "feed odour", medium)
        self.note = QLineEdit("" if odour is None else odour.source, self)
        self.note.setAccessibleName(self.tr("Note on the smell"))
        form.addRow(self.tr("Note on the smell"), self.note)
        return form

    @Slot()
    def _warn(self) -> None:
        caution = feed_caution(self.feed.text())
        self.caution.setText("" if caution is None or caution == ASK_FIRST else spoken(caution))
        self.caution.setVisible(bool(self.caution.text()))
        fit(self)

    @Slot(str)
    def _say(self, words: str) -> None:
        tell(self.trouble, words)
        fit(self)

    @Slot()
    def _keep(self) -> None:
        feed = edited_level("feed", self.feed.text(), self._was) or NO_FEED
        factors = []
        for name, field in self.numbers.items():
            if not field.text().strip():
                continue
            value = number_in(field.text())
            if value is None or not 0 <= value <= KINDS[name].most:
                words = self.tr("{what}: type a number, or leave it empty.")
                tell(self.trouble, words.format(what=spoken(KINDS[name].about)))
                return
            source = self.note.text().strip() if name == "feed odour" else ""
            factors.append(
                Factor(
                    name=name, value=value, low=value, high=value, unit=KINDS[name].unit,
                    source=source or self.tr("the grower"), medium=self._medium,
                )
            )  # fmt: skip

        def change(book: Book) -> None:
            book.set_medium(self._medium, feed=feed)
            for factor in factors:
                book.set_factor(factor)

        if self._desk.keep(change):
            self.accept()
