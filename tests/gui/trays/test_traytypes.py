"""Tray types: measured, doubted, refused, kept, taken back, and offered where trays are noted."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QRect
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from data.book import Book
from data.growing.conditions import TrayType
from gui.bench.screen import Bench
from gui.home import Memory
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.style.wardrobe import Wardrobe
from gui.trays.newtray import NewTrayDialog
from gui.trays.traytypes import TrayTypes
from gui.window import Window
from gui.work import Work
from tests.gui.rackbook import NotingPlaces


@pytest.fixture
def dialog(dressed: QApplication, rack_book: Book, qtbot: object) -> TrayTypes:
    made = TrayTypes(rack_book)
    qtbot.addWidget(made)
    made.show()
    return made


def typed(dialog: TrayTypes, **sizes: float) -> None:
    for name, size in sizes.items():
        field = dialog.measures[name]
        field.field.setText(f"{size:g}")
        field.field.editingFinished.emit()


def kept_names(book: Book) -> list[str]:
    return [kind.name for kind in book.tray_types()]


def test_a_new_kind_is_kept_and_can_be_taken_back(dialog: TrayTypes, rack_book: Book) -> None:
    dialog.new.click()
    dialog.name.setText("Half tray")
    typed(
        dialog, outer_long_mm=278, outer_short_mm=150, inner_long_mm=254, inner_short_mm=127, rim_height_mm=50
    )

    dialog.keep.click()

    kind = rack_book.tray_type("Half tray")
    assert (kind.outer_long_mm, kind.inner_short_mm, kind.rim_height_mm) == (278, 127, 50)
    assert dialog.kinds.currentItem().text() == "Half tray"
    assert "Half tray is kept" in dialog.said.text()
    rack_book.undo()
    assert "Half tray" not in kept_names(rack_book)


def test_the_drawing_of_a_tray_is_no_stamp_with_large_letters(
    dressed: QApplication, rack_book: Book, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Wide:
        def availableGeometry(self) -> QRect:
            return QRect(0, 0, 1366, 728)

    monkeypatch.setattr(TrayTypes, "screen", lambda _dialog: Wide())
    dress(dressed, Scheme.LIGHT, 150)
    made = TrayTypes(rack_book)
    qtbot.addWidget(made)
    made.show()

    assert made.width() < 1366
    assert made.drawing.width() > 400
    dress(dressed, Scheme.LIGHT)


def test_the_measures_of_a_known_kind_are_changed(dialog: TrayTypes, rack_book: Book) -> None:
    name = dialog.name.text()
    assert dialog.name.isReadOnly()
    typed(dialog, rim_height_mm=70)

    dialog.keep.click()

    assert rack_book.tray_type(name).rim_height_mm == 70
    rack_book.undo()
    assert rack_book.tray_type(name).rim_height_mm == 61


def test_an_odd_shape_is_told_and_kept_all_the_same(dialog: TrayTypes, rack_book: Book) -> None:
    dialog.new.click()
    dialog.name.setText("Square tray")
    assert not dialog.doubt.isVisible()
    typed(dialog, outer_long_mm=300, outer_short_mm=300, inner_long_mm=254, inner_short_mm=254)

    assert "1.00 times as long as wide" in dialog.doubt.text()
    dialog.keep.click()
    assert "Square tray" in kept_names(rack_book)


@pytest.mark.parametrize(
    ("sizes", "sentence"),
    [
        ({"inner_long_mm": 600}, "The inner length cannot be more than the outer length."),
        ({"inner_short_mm": 300}, "The inner width cannot be more than the outer width."),
        ({"rim_height_mm": 0}, "Height of the rim must be more than 0 mm."),
        ({"outer_long_mm": -5}, "Outer length must be more than 0 mm."),
    ],
)
def test_impossible_measures_are_refused(
    dialog: TrayTypes, rack_book: Book, sizes: dict[str, float], sentence: str
) -> None:
    before = rack_book.tray_types()
    typed(dialog, **sizes)

    dialog.keep.click()

    assert dialog.said.text() == sentence
    assert rack_book.tray_types() == before


def test_a_kind_needs_a_name_of_its_own(dialog: TrayTypes, rack_book: Book) -> None:
    known = dialog.name.text()
    dialog.new.click()
    dialog.keep.click()
    assert dialog.said.text() == "Give the tray type a name."

    dialog.name.setText(known.upper())
    dialog.keep.click()
    assert "There is a tray type of that name" in dialog.said.text()
    assert kept_names(rack_book) == [known]


def test_a_new_kind_is_offered_where_trays_are_added(
    dressed: QApplication, rack_book: Book, qtbot: object
) -> None:
    one = NewTrayDialog(rack_book)
    qtbot.addWidget(one)
    one.show()
    assert not one.kind.isVisible()
    rack_book.set_tray_type(TrayType(name="Half tray", outer_long_mm=278, inner_long_mm=254))
    two = NewTrayDialog(rack_book)
    qtbot.addWidget(two)
    two.show()
    two.crop.setCurrentText("pea")
    two.medium.setCurrentText("coir")
    two.kind.setCurrentText("Half tray")

    two.add.click()

    assert "Half tray" in {tray.tray_type for tray in rack_book.trays()}


def test_the_way_there_is_in_the_book_menu(
    dressed: QApplication,
    memory: Memory,
    rack_book: Book,
    qtbot: object,
    answer: Callable[[Callable[[QDialog], None]], None],
) -> None:
    work = Work(scorers=1)
    screens = NotingPlaces(work, Bench)
    window = Window(work, memory, Wardrobe(dressed, memory), screens)
    qtbot.addWidget(window)
    window.show()
    window.open_folder(rack_book.folder)
    seen: list[QDialog] = []
    answer(seen.append)

    window.actions_by_name["tray_types"].trigger()

    assert isinstance(seen[0], TrayTypes)
    assert window.actions_by_name["tray_types"] in window.top.book.menu().actions()
    window.close()
