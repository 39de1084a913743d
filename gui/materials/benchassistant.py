"""Bench assistant: leads through a test of a medium, one weighing or temperature after the other.

In    the desk with its book, the kind of test, the medium; or a test that goes on
Out   a test begun, readings kept, each with its step; photographs of the heap beside a break-down test
Not   what a test tells (`data/medium/benchtest.py`), what is said of a step (`benchwords.py`), the table
"""

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.book import Book
from data.breakdown import EYE_MARKS
from data.entry.typed import read_typed
from data.entry.units import UnitSystem
from data.heat import CAUTION
from data.medium.benchtest import (
    BenchKind,
    BenchTest,
    Due,
    Step,
    due_of,
    step_reading,
    steps_of,
    wrong_reading,
)
from data.readings import NewReading, Reading, ReadingKind
from gui.controls.choosing import ask_photos
from gui.controls.form import fields, fit
from gui.controls.rolling import LowRoll
from gui.controls.telling import tell
from gui.home import photos_folder
from gui.language.spoken import in_figures, spoken
from gui.materials.benchconditions import BenchConditions
from gui.materials.benchwords import asked_words, done_words, due_words
from gui.materials.desk import MaterialDesk
from gui.materials.heappictures import HeapPictures
from gui.notes.moments import MomentEdit, moment_in, show_moment
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["BenchAssistant"]


class BenchAssistant(QDialog):
    """One step at a time; what is due later is remembered in the book."""

    def __init__(
        self,
        desk: MaterialDesk,
        book: Book,
        kind: BenchKind,
        medium: str,
        test: BenchTest | None = None,
        system: UnitSystem = UnitSystem.METRIC,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._desk, self._book, self._kind, self._medium = desk, book, kind, medium
        self.test = test
        self._system = system
        self._doubted: float | None = None
        titles = {
            BenchKind.WETTING: self.tr("Wetting test: {medium}"),
            BenchKind.COOLING: self.tr("Cooling test: {medium}"),
            BenchKind.BREAKDOWN: self.tr("Break-down: {medium}"),
        }
        self.setWindowTitle(titles[kind].format(medium=medium))
        self._build()
        desk.kept.connect(self._show)
        desk.trouble.connect(self._say)  # behind this dialog nobody sees it
        self.setMinimumWidth(64 * self.fontMetrics().averageCharWidth())
        self._show()

    # --- making

    def _build(self) -> None:
        self.done_list = self._label("soft")
        self.words = self._label("title")
        self.when = self._label("")
        self.caution = self._label("notice")
        self.caution.setText(spoken(CAUTION))
        self.caution.setVisible(self._kind is BenchKind.COOLING)
        self.trouble = self._label("alarm")
        self.conditions = BenchConditions(
            self._kind, self._book.tray_types(), self._book.medium(self._medium), self
        )
        form = self._make_form()
        self.pictures = HeapPictures(self._desk.pictures, self)
        asked = QWidget(self)
        rows = QVBoxLayout(asked)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.setSpacing(Space.M)
        for part in (self.conditions, self.done_list, self.words, self.when):
            rows.addWidget(part)
        rows.addLayout(form)
        rows.addWidget(self.pictures)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        column.setSpacing(Space.M)
        column.addWidget(LowRoll(asked, self), 1)
        for part in (self.trouble, self.caution):
            column.addWidget(part)
        column.addStretch(0)
        column.addLayout(self._make_buttons())

    def _make_form(self) -> QFormLayout:
        """What is read now, and when."""
        self.value = QLineEdit(self)
        self.value.setAccessibleName(self.tr("What was read"))
        self.mark = QComboBox(self)
        self.mark.setAccessibleName(self.tr("How it looks"))
        self.mark.addItem(self.tr("not looked at"), None)
        for mark, words in EYE_MARKS.items():
            self.mark.addItem(f"{mark}  {spoken(words)}", float(mark))
        self.at = MomentEdit(self)
        self.at.setAccessibleName(self.tr("When it was"))
        form = fields()
        self.value_name = QLabel(self)
        form.addRow(self.value_name, self.value)
        self.mark_name = QLabel(self.tr("By eye"), self)
        form.addRow(self.mark_name, self.mark)
        form.addRow(self.tr("When"), self.at)
        return form

    def _make_buttons(self) -> QHBoxLayout:
        self.photo = QPushButton(self.tr("Photos of the heap..."), self)
        self.photo.clicked.connect(self._choose_photos)
        self.instead = QPushButton(self)
        self.instead.clicked.connect(self._take_instead)
        self.instead.hide()
        self.delete = QPushButton(self.tr("Delete this test"), self)
        self.delete.clicked.connect(self._delete)
        close = QPushButton(self.tr("Close"), self)
        close.clicked.connect(self.reject)
        self.keep = QPushButton(self.tr("Keep"), self)
        set_role(self.keep, "main")
        self.keep.setDefault(True)
        self.keep.clicked.connect(self._keep)
        row = QHBoxLayout()
        row.setSpacing(Space.S)
        row.addWidget(self.delete)
        row.addWidget(self.photo)
        row.addStretch(1)
        row.addWidget(self.instead)
        row.addWidget(close)
        row.addWidget(self.keep)
        return row

    def _label(self, role: str) -> QLabel:
        return wrapped("", self, role)

    # --- showing

    @property
    def readings(self) -> tuple[Reading, ...]:
        """What was read so far."""
        return () if self.test is None else self._book.readings(bench_test=self.test.id)

    @property
    def due(self) -> Due | None:
        """What comes next."""
        now = self._book.now()
        if self.test is None:
            return Due(step=steps_of(self._kind)[0], at=now, is_now=True)
        return due_of(self.test, self.readings, now)

    @Slot()
    def _show(self) -> None:
        due, readings, now = self.due, self.readings, self._book.now()
        self.conditions.setVisible(self.test is None)
        self.delete.setVisible(self.test is not None)
        self.photo.setVisible(self.test is not None and self._kind is BenchKind.BREAKDOWN)
        self.done_list.setText("\n".join(done_words(step, readings) for step in steps_of(self._kind)))
        asked = due is not None
        for part in (self.value, self.at, self.value_name, self.keep):
            part.setVisible(asked)
        looks = asked and self._kind is BenchKind.BREAKDOWN and self.test is not None
        self.mark.setVisible(looks)
        self.mark_name.setVisible(looks)
        if due is None:
            self.words.setText(self.tr("This test is complete."))
            self.when.setText(self.tr("The table has its numbers."))
        else:
            self.words.setText(spoken(due.step.words))
            self.when.setText(due_words(due, now))
            self.value_name.setText(asked_words(due.step.kind, self._system))
        show_moment(self.at, now)
        self._show_pictures()
        fit(self)

    def _show_pictures(self) -> None:
        shown = self.test is not None and self._kind is BenchKind.BREAKDOWN
        photos = self._book.heap_photos(self.test.id) if self.test is not None and shown else ()
        self.pictures.show_photos([(photo, self._book.heap_photo_path(photo)) for photo in photos])

    # --- keeping

    @Slot()
    def _keep(self) -> None:
        due = self.due
        if due is None:
            return
        earlier = [one.value for one in self.readings if one.kind is due.step.kind]
        typed = read_typed(self.value.text(), due.step.kind, earlier, self._system)
        if typed.doubt is not None and (self._doubted is None or self._doubted != typed.value):
            self._ask(typed.doubt.sentence, typed.doubt.instead, typed.value)
            return
        if typed.value is None:
            self._say(spoken(typed.reason) if typed.reason else self.tr("Type a number such as 812 g."))
            return
        self._keep_value(due.step, typed.value)

    def _ask(self, sentence: object, instead: float, value: float | None) -> None:
        self._doubted = value
        self._instead_value = instead
        self._say(spoken(sentence))
        self.instead.setText(self.tr("It was {value}").format(value=in_figures(instead, ".4g")))
        self.instead.show()
        fit(self)

    @Slot()
    def _take_instead(self) -> None:
        due = self.due
        if due is not None:
            self._keep_value(due.step, self._instead_value)

    def _keep_value(self, step: Step, value: float) -> None:
        at = moment_in(self.at)
        wrong = wrong_reading(self.readings, step, value, at)
        if wrong is not None:
            self._say(spoken(wrong))
            return
        mark = self.mark.currentData() if self.mark.isVisible() else None

        before = self.test

        def change(book: Book) -> None:
            test = before
            if test is None:
                test = book.bench_test(book.begin_test(self.conditions.new_test(self._medium, at)))
            readings = [step_reading(test, step, value, at)]
            if mark is not None:
                kind = ReadingKind.BREAKDOWN_EYE
                readings.append(
                    NewReading(kind=kind, value=mark, taken_at=at, bench_test=test.id, note=step.name)
                )
            book.add_readings(readings)
            self.test = test

        if self._desk.keep(change):
            self._doubted = None
            self.value.clear()
            self.mark.setCurrentIndex(0)
            self._say("")
            self.value.setFocus()

    @Slot(str)
    def _say(self, words: str) -> None:
        tell(self.trouble, words)
        self.instead.hide()
        fit(self)

    @Slot()
    def _delete(self) -> None:
        test = self.test
        if test is not None and self._desk.keep(lambda book: book.delete_test(test.id)):
            self.accept()

    @Slot()
    def _choose_photos(self) -> None:
        photos = ask_photos(self, self.tr("Photos of the heap"), photos_folder())
        if self.test is not None:
            self._desk.keep_photos(self.test.id, photos)
