"""Station distances: the six ways between the cards' marks, as the grower has measured them.

In    a tray type
Out   `kept` with how far each card lies from its drawn place
Not   places from distances (`vision/cardplaces.py`), keeping them (`stationsetup.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QDialog, QPushButton, QWidget

from data.photos.stationwords import card_name
from gui.controls.form import fields, fit, lay_out
from gui.controls.numberfield import NumberField
from gui.controls.telling import tell
from gui.language.spoken import in_figures, spoken
from gui.style.palette import set_role
from gui.style.words import wrapped
from vision.cardplaces import PAIRS, DistancesError, Pair, cards_off, distances
from vision.traytype import TrayType

__all__ = ["StationDistances"]

MOST_MM = 3000.0


class StationDistances(QDialog):
    """Six fields that begin with the distances as the cards are known to lie."""

    kept = Signal(object)  # how far each card is off, mm; empty: as drawn

    def __init__(self, kind: TrayType, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._kind = kind
        self.setWindowTitle(self.tr("Measured distances"))
        how = wrapped(
            self.tr(
                "Measure from the middle of one mark to the middle of the other, to half a millimetre. "
                "Photos that come in from now on are scored with the cards where they lie."
            ),
            self,
        )
        self.trouble = wrapped("", self, "alarm")
        self.trouble.hide()
        self.ways: dict[Pair, NumberField] = {}
        form = fields()
        for pair, mm in distances(kind).items():
            name = self._name(pair)
            field = NumberField(name, self.tr("mm"), least=1.0, most=MOST_MM, step=0.5, parent=self)
            field.set(round(2 * mm) / 2)
            self.ways[pair] = field
            form.addRow(name, field)
        leave = QPushButton(self.tr("Leave"), self)
        leave.clicked.connect(self.reject)
        self.drawn = QPushButton(self.tr("All as drawn"), self)
        self.drawn.setToolTip(self.tr("Forget what was measured: the cards lie as the drawing shows"))
        self.drawn.clicked.connect(self._as_drawn)
        self.keep = QPushButton(self.tr("Keep these distances"), self)
        self.keep.clicked.connect(self._keep)
        self.keep.setDefault(True)
        set_role(self.keep, "main")
        lay_out(self, [how], form, self.trouble, [leave, self.drawn, self.keep], 60)

    def _name(self, pair: Pair) -> str:
        one, two = (spoken(card_name(number)) for number in pair)
        return self.tr("{one} to {two}").format(one=one, two=two)

    @Slot()
    def _as_drawn(self) -> None:
        self.kept.emit(())
        self.accept()

    @Slot()
    def _keep(self) -> None:
        self.keep.setFocus()  # a number that is being typed counts
        try:
            off = cards_off(self._kind, {pair: self.ways[pair].value for pair in PAIRS})
        except DistancesError as error:
            words = self.tr("{way} does not fit the other distances by {mm} mm: measure it again.")
            words = words.format(way=self._name(error.pair), mm=in_figures(error.rest_mm, ".1f"))
            tell(self.trouble, words)
            self.trouble.show()
            fit(self)
            self.ways[error.pair].setFocus()
            return
        self.kept.emit(off)
        self.accept()
