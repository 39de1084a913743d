"""Material dialogs: each dialog about a medium, brought in when it is first wanted.

In    the desk with the open book; what was read of it; the screen above which they stand
Out   numbers, feeds, kinds, limits and tests in the book, by the desk
Not   what stands in a dialog (one module each), which cell asks for which (`screen.py`)
"""

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from data.entry.units import UnitSystem
from data.materials.reading import MaterialReading
from data.medium.benchtest import BenchKind, BenchTest
from gui.materials.desk import MaterialDesk

__all__ = ["MaterialDialogs"]


class MaterialDialogs(QObject):
    """One dialog at a time; none without a book."""

    def __init__(self, desk: MaterialDesk, reading: Callable[[], MaterialReading], over: QWidget) -> None:
        super().__init__(over)
        self._desk, self._reading, self._over = desk, reading, over
        self.system = UnitSystem.METRIC  # of weights and temperatures typed in tests

    def test(self, kind: BenchKind, medium: str, goes_on: BenchTest | None = None) -> None:
        """Begin a test, or go on with the one that is under way."""
        from gui.materials.benchassistant import BenchAssistant

        book = self._desk.book
        if book is None:
            return
        due = self._reading().due
        under_way = [one.test for one in due if (one.test.kind, one.test.medium) == (kind, medium)]
        test = goes_on or (under_way[0] if under_way else None)
        if test is not None and test.id not in {one.id for one in book.bench_tests()}:
            self._desk.trouble.emit(self.tr("This test was deleted or taken back meanwhile."))
            self._desk.read()
            return
        BenchAssistant(self._desk, book, kind, medium, test, self.system, self._over).exec()

    def numbers(self, medium: str, name: str = "dry mass") -> None:
        """Type numbers in."""
        from gui.materials.factordialog import FactorDialog

        if self._desk.book is not None:
            FactorDialog(self._desk, self._desk.book, medium, name, self._over).exec()

    def feed(self, medium: str) -> None:
        """Say what it is fed."""
        from gui.materials.feeddialog import FeedDialog

        if self._desk.book is not None:
            FeedDialog(self._desk, self._desk.book, medium, self._over).exec()

    def kind(self, medium: str) -> None:
        """Say which kind it is."""
        from gui.materials.kinddialog import KindDialog

        if self._desk.book is None:
            return
        known = self._desk.book.medium(medium)
        dialog = KindDialog(medium, "" if known is None else known.kind, self._over)
        if dialog.exec():
            self._desk.keep(lambda book: book.set_medium(medium, kind=dialog.kind))

    def limits(self) -> None:
        """Say what a medium must keep."""
        from gui.materials.limitsdialog import LimitsDialog

        if self._desk.book is None:
            return
        dialog = LimitsDialog(self._reading().limits or {}, self._over)
        if dialog.exec():
            self._desk.keep(lambda book: book.set_limits(dialog.limits))
