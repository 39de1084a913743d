"""Access: whatever can have the focus says what it is, and Tab leads through each place and comes round."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QLineEdit,
    QRadioButton,
    QScrollArea,
    QWidget,
)
from pytestqt.qtbot import QtBot

from data.book import Book
from data.plan.draft import Step
from gui.app import make_window
from gui.bench.screen import Bench
from gui.charts import LineChart
from gui.frame.keysheet import KeySheet
from gui.home import Memory
from gui.materials.limitsdialog import LimitsDialog
from gui.paper.preview import PagePreview
from gui.style.palette import RACK_TARGET
from gui.traysheet.growthchart import GrowthChart
from gui.traysheet.views import View
from gui.window import Window
from tests.gui.rackbook import a_rack_book, photograph

PLACES = ("bench", "intake", "traysheet", "plan", "verdict", "materials")


@pytest.fixture
def window(qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path) -> Window:
    with a_rack_book(tmp_path / "rack") as book:
        photograph(book, "A1", tmp_path / "photos")
        photograph(book, "A2", tmp_path / "photos", refuse="BLURRED")
    made = make_window(dressed, memory)
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
    made.open_folder(tmp_path / "rack")
    return made  # qtbot closes it, and closing waits for its jobs


def came_to(window: Window, place: str, qtbot: QtBot) -> None:
    if place == "plan":
        qtbot.waitUntil(lambda: window.screens["plan"].desk.book is not None)
        window.screens["plan"].new_trial()
    if place == "traysheet":
        assert isinstance(window.book, Book)
        window.open_tray(window.book.trays()[0].id)
    window.go_to(place)
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)


def can_have_focus(widget: QWidget) -> bool:
    return (
        bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
        and widget.isVisible()
        and widget.isEnabled()
        and widget.focusProxy() is None
        and not _is_another_choice(widget)
    )


def _is_another_choice(widget: QWidget) -> bool:
    """One of a group of choices: Tab stops at the chosen one, arrows lead to the others."""
    return isinstance(widget, QRadioButton) and widget.group() is not None and not widget.isChecked()


def name_of(widget: QWidget) -> str:
    told = QAccessible.queryAccessibleInterface(widget)
    return "" if told is None else told.text(QAccessible.Text.Name)


@pytest.mark.parametrize("place", PLACES)
def test_everything_that_can_have_the_focus_has_a_name(window: Window, qtbot: QtBot, place: str) -> None:
    came_to(window, place, qtbot)
    widgets = [widget for widget in window.findChildren(QWidget) if can_have_focus(widget)]
    assert len(widgets) >= 8
    assert [f"{type(w).__name__} {w.objectName()}" for w in widgets if not name_of(w)] == []


@pytest.mark.parametrize("place", PLACES)
def test_a_list_that_drops_down_says_what_it_is_for(window: Window, qtbot: QtBot, place: str) -> None:
    """By ear it would else be what is chosen alone: "bottom", not "Watering"."""
    came_to(window, place, qtbot)
    if place == "traysheet":
        window.screens.traysheet.show_view(View.GROWTH)
    untold = []
    boxes = [one for one in window.screens[place].findChildren(QComboBox) if one.isVisible()]
    for box in boxes:
        box.setFocus()
        told = QAccessible.queryAccessibleInterface(box)
        labels = [
            label.text(QAccessible.Text.Name) for label, _ in told.relations(QAccessible.RelationFlag.Label)
        ]
        texts = (told.text(QAccessible.Text.Name), told.text(QAccessible.Text.Description), *labels)
        name = box.accessibleName() or (labels[0] if labels else "")
        if not name or not any(name in text for text in texts):
            untold.append(f"{name}: {texts}")
    assert boxes or place not in ("bench", "traysheet", "plan")
    assert untold == []


@pytest.mark.parametrize(("place", "count"), [("traysheet", 2), ("plan", 1)])
def test_tab_stops_at_charts_which_tell_their_content(
    window: Window, qtbot: QtBot, place: str, count: int
) -> None:
    """A screen reader tells the words of a chart only where it can have the focus."""
    came_to(window, place, qtbot)
    if place == "traysheet":
        window.screens.traysheet.show_view(View.GROWTH)
    else:
        window.screens.plan.go_to_step(Step.TRAYS)
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)
    kinds = (GrowthChart, LineChart)
    charts = [one for one in window.screens[place].findChildren(QWidget) if isinstance(one, kinds)]
    charts = [one for one in charts if one.isVisible()]
    assert len(charts) == count
    for chart in charts:
        assert can_have_focus(chart), name_of(chart)
        chart.setFocus()
        assert focus_changes(chart), name_of(chart)


@pytest.mark.parametrize("place", PLACES)
def test_tab_reaches_everything_and_comes_round(window: Window, qtbot: QtBot, place: str) -> None:
    came_to(window, place, qtbot)
    wanted = {widget for widget in window.findChildren(QWidget) if can_have_focus(widget)}
    window.top.places["bench"].setFocus()

    reached = []
    for _ in range(3 * len(wanted)):
        widget = QApplication.focusWidget()
        assert widget is not None
        if widget in reached:
            break
        reached.append(widget)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)

    left_out = [f"{type(w).__name__} {name_of(w)}" for w in wanted - set(reached)]
    assert left_out == []
    assert QApplication.focusWidget() is reached[0]


@pytest.mark.parametrize("place", PLACES)
def test_tab_follows_the_order_of_reading(window: Window, qtbot: QtBot, place: str) -> None:
    """The row on top, then the place itself: never back up to the row before the round is done."""
    came_to(window, place, qtbot)
    window.top.places["bench"].setFocus()
    zones = []
    for _ in range(60):
        widget = QApplication.focusWidget()
        assert widget is not None
        zones.append(0 if window.top.isAncestorOf(widget) else 1)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)
        if QApplication.focusWidget() is window.top.places["bench"]:
            break
    assert zones == sorted(zones)


@pytest.mark.parametrize("place", PLACES)
def test_the_focus_is_seen_wherever_tab_stops(window: Window, qtbot: QtBot, place: str) -> None:
    # WCAG 2.2 (W3C Recommendation 2023), success criterion 2.4.7
    came_to(window, place, qtbot)
    widget: QWidget | None = window.top.places["bench"]
    assert widget is not None
    widget.setFocus(Qt.FocusReason.TabFocusReason)
    reached: list[QWidget] = []
    unseen = []
    while widget is not None and widget not in reached:
        reached.append(widget)
        if not focus_changes(widget):
            unseen.append(f"{type(widget).__name__} {name_of(widget)}")
        qtbot.keyClick(widget, Qt.Key.Key_Tab)
        widget = QApplication.focusWidget()

    assert len(reached) >= 8
    assert unseen == []


def test_the_focus_is_seen_in_pages_that_the_arrows_roll(window: Window, qtbot: QtBot) -> None:
    for top in (KeySheet(window.screens.values()), PagePreview()):
        qtbot.addWidget(top)
        with qtbot.waitActive(top):
            top.show()
        (area,) = [one for one in (top, *top.findChildren(QScrollArea)) if isinstance(one, QScrollArea)]
        area.setFocus(Qt.FocusReason.TabFocusReason)
        qtbot.waitUntil(area.hasFocus)
        assert focus_changes(area), type(top).__name__


def test_tab_goes_straight_to_the_fields_of_limits(qtbot: QtBot, dressed: QApplication) -> None:
    dialog = LimitsDialog({})
    qtbot.addWidget(dialog)
    with qtbot.waitActive(dialog):
        dialog.show()
    nameless = [w for w in dialog.findChildren(QWidget) if can_have_focus(w) and not name_of(w)]
    assert nameless == []


def focus_changes(widget: QWidget) -> bool:
    """Whether it looks otherwise with the focus than without; the focus stays."""
    assert widget.hasFocus()
    with_focus = widget.grab().toImage()
    widget.clearFocus()
    without = widget.grab().toImage()
    widget.setFocus(Qt.FocusReason.OtherFocusReason)
    return with_focus != without


@pytest.mark.parametrize("place", ["bench", "intake"])
def test_what_is_used_at_the_rack_is_large_enough_for_wet_hands(
    window: Window, qtbot: QtBot, place: str
) -> None:
    came_to(window, place, qtbot)
    screen = window.screens[place]
    if isinstance(screen, Bench):
        screen.head.more.setChecked(True)
        qtbot.waitUntil(screen.head.filters.isVisible)
    kinds = (QAbstractButton, QComboBox, QLineEdit)
    targets = [part for part in screen.findChildren(QWidget) if isinstance(part, kinds) and part.isVisible()]

    assert len(targets) >= 4
    assert [(name_of(part), part.height()) for part in targets if part.height() < RACK_TARGET] == []


def test_a_screen_reader_hears_each_tile_in_words(window: Window, qtbot: QtBot) -> None:
    came_to(window, "bench", qtbot)
    (rack,) = [view for view in window.findChildren(QAbstractItemView) if view.accessibleName() == "The rack"]

    words = list(walked(QAccessible.queryAccessibleInterface(rack)))

    assert any(text.startswith("A1, broccoli, coir, day 7, coverage 55 %") for text in words)


def walked(told: QAccessibleInterface | None) -> Iterator[str]:
    if told is None:
        return
    yield told.text(QAccessible.Text.Name)
    for n in range(told.childCount()):
        yield from walked(told.child(n))


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("percent", [100, 150])
def test_every_place_fits_into_the_least_window(
    window: Window, qtbot: QtBot, place: str, percent: int
) -> None:
    window.wardrobe.resize_text(percent)
    came_to(window, place, qtbot)
    window.resize(window.minimumSize())
    screen = window.screens[place]

    least = screen.minimumSizeHint()

    assert least.width() <= 1024, "something is cut off at the side"
    whole = window.centralWidget().minimumSizeHint() if window.centralWidget() else least
    assert whole.height() <= 700, "something is cut off below"
    window.wardrobe.resize_text(100)
