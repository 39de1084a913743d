"""The assistant for files of loggers and scales, on a real book."""

import time
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtTest import QTest

from data.logs.columns import ColumnAs, Role
from data.readings import ReadingKind
from gui.app import make_window
from gui.frame.bookdialogs import BookDialogs
from gui.logs.assistant import LogAssistant
from gui.window import Window
from tests.data.builders import a_tray

LOGGER = (
    "when,shelf,temp C,rh %\n2026-03-14 07:00,A,20.5,81\n2026-03-14 07:10,A,20.6,82\n"
    "2026-03-15 07:10,A,20.7,83\n"
)
TWO_WAYS = "when,shelf,temp C\n03/04/2026 07:00,A,20.5\n03/04/2026 08:00,A,20.6\n"


@pytest.fixture
def opened(qtbot, dressed, rack_book, work, tmp_path):
    def open_it(text, name="log.csv"):
        path = tmp_path / name
        if text is not None:
            path.write_bytes(text if isinstance(text, bytes) else text.encode())
        dialog = LogAssistant(rack_book, work, path)
        qtbot.addWidget(dialog)
        dialog.show()
        settle(qtbot, dialog)
        return dialog

    return open_it


def settle(qtbot, dialog):
    qtbot.waitUntil(lambda: dialog._job is None, timeout=10_000)


def choose(combo, at):
    combo.setCurrentIndex(at)
    combo.activated.emit(at)


def keep(qtbot, dialog):
    dialog.form.keep.click()
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=10_000)


def logged(book):
    return [one for one in book.readings(shelf="A") if one.source == "logger"]


def test_a_plain_file_is_kept_by_one_key_and_taken_back_in_one_step(qtbot, opened, rack_book):
    dialog = opened(LOGGER)
    assert dialog.form.questions.isHidden()
    assert "6" in dialog.form.count.text()

    QTest.keyClick(dialog, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=10_000)

    assert len(logged(rack_book)) == 6
    assert dialog.told == "6 readings added."
    rack_book.undo()
    assert logged(rack_book) == []


def test_a_date_that_can_be_read_two_ways_is_asked(qtbot, opened, rack_book):
    dialog = opened(TWO_WAYS)
    if not dialog.answers:  # today tells one way
        dialog = opened(TWO_WAYS.replace("03/04", "02/03"))
    assert not dialog.form.keep.isEnabled()
    assert len(dialog.answers) == 2

    dialog.answers[0].click()
    settle(qtbot, dialog)

    assert dialog.answers == []
    assert dialog.form.keep.isEnabled()


def test_a_column_is_changed_by_hand(qtbot, opened, rack_book):
    dialog = opened(LOGGER)
    choice = dialog.form.preview.choices[2]
    medium = ColumnAs(role=Role.READING, kind=ReadingKind.MEDIUM_TEMPERATURE, unit="C")
    choice.activated.emit(next(n for n in range(choice.count()) if choice.itemData(n) == medium))
    settle(qtbot, dialog)
    keep(qtbot, dialog)

    assert {one.kind for one in logged(rack_book)} == {
        ReadingKind.MEDIUM_TEMPERATURE,
        ReadingKind.HUMIDITY,
    }


def test_the_shelf_of_a_file_without_one_is_asked_and_chosen(qtbot, opened, rack_book):
    dialog = opened("when,temp C\n2026-03-14 07:00,20.5\n2026-03-14 07:10,20.6\n")
    assert not dialog.form.keep.isEnabled()

    choose(dialog.place, dialog.place.findText("shelf A"))
    settle(qtbot, dialog)
    keep(qtbot, dialog)

    assert len(logged(rack_book)) == 2


def test_the_preview_says_what_will_be_stored(opened):
    dialog = opened(LOGGER.replace("2026-03-14 07:10", "\n2026-03-14 07:10"))  # an empty line between
    table = dialog.form.preview

    assert table.item(1, 4).text() == "2026-03-14 07:00 · A · 20.5 °C · 81 %"
    assert table.item(2, 4).text() == "2026-03-14 07:10 · A · 20.6 °C · 82 %"


def test_bad_rows_are_named_with_their_reason(qtbot, opened):
    dialog = opened(LOGGER + "2026-03-15 07:20,A,warm,83\n")

    assert dialog.form.fold.text() == "Rows that are not kept: 1"
    assert dialog.bad.isHidden()
    dialog.form.fold.click()
    assert not dialog.bad.isHidden()
    assert "Line 5: “warm” is no number." in dialog.bad.toPlainText()


def test_the_same_file_again_says_so(qtbot, opened, rack_book):
    keep(qtbot, opened(LOGGER))
    again = opened(LOGGER)

    assert "already" in again.form.count.text()
    assert not again.form.keep.isEnabled()

    more = opened(LOGGER + "2026-03-15 07:20,A,20.1,83\n", "longer.csv")
    assert more.form.count.text() == "Readings that will be kept: 2. Known already: 6."


@pytest.mark.parametrize("content", [b"", b"\x00\x01\x02\x03" * 100, None])
def test_a_file_that_cannot_be_read_is_refused_in_place(opened, content):
    dialog = opened(content)

    assert dialog.form.said.text()
    assert dialog.form.preview.isHidden()
    assert not dialog.form.keep.isEnabled()


def test_a_zone_that_is_none_is_said_and_nothing_can_be_kept(qtbot, opened):
    dialog = opened(LOGGER)
    dialog.form.zone.setText("Nowhere/Land")
    dialog.form.zone.editingFinished.emit()
    settle(qtbot, dialog)

    assert "Nowhere/Land" in dialog.form.said.text()
    assert not dialog.form.keep.isEnabled()


def test_readings_of_a_tray_that_has_ended_are_told_apart_from_those_of_the_new_one(qtbot, opened, rack_book):
    old = next(tray for tray in rack_book.trays() if tray.code == "A1")
    rack_book.finish_tray(old.id, datetime(2026, 3, 12, 10))
    rack_book.add_tray(a_tray("A1", sown_at=datetime(2026, 3, 12, 8)))

    dialog = opened("tray,weight g,when\nA1,1400,2026-03-11 07:10\nA1,840,2026-03-13 07:10\n")

    assert "Of trays that have ended: 1 (A1 until 12 March)." in dialog.form.count.text()


def a_long_log(rows=12_000):
    begin = datetime(2026, 3, 1)
    times = (f"{begin + n * timedelta(seconds=30):%Y-%m-%d %H:%M:%S}" for n in range(rows))
    return "when,shelf,temp C\n" + "".join(f"{at},A,20.5\n" for at in times)


def test_a_long_log_shows_how_far_it_is_while_it_is_kept(qtbot, opened, rack_book):
    dialog = opened(a_long_log(4000))
    seen = []
    dialog.form.bar.valueChanged.connect(seen.append)

    keep(qtbot, dialog)

    assert [done for done in seen if done > 0] == [1000, 2000, 3000]
    assert len(logged(rack_book)) == 4000


def test_a_long_log_shows_how_far_it_is_while_it_is_read(qtbot, dressed, rack_book, work, tmp_path):
    path = tmp_path / "long.csv"
    path.write_text(a_long_log(4000))
    dialog = LogAssistant(rack_book, work, path)
    qtbot.addWidget(dialog)
    seen = []
    dialog.form.bar.valueChanged.connect(seen.append)
    dialog.show()
    settle(qtbot, dialog)

    assert [done for done in seen if done > 0] == [1000, 2000, 3000]
    assert dialog.form.keep.isEnabled()


@pytest.mark.parametrize("how", ["button", "Esc"])
def test_cancel_while_readings_are_kept_keeps_nothing_and_the_file_can_be_kept_later(
    qtbot, opened, rack_book, how
):
    dialog = opened(a_long_log())
    dialog.form.keep.click()
    qtbot.waitUntil(lambda: dialog.form.bar.value() > 0, timeout=10_000)
    assert dialog.form.leave.text() == "Cancel"
    assert not dialog.form.choices.isEnabled()
    assert "of 12000" in dialog.form.said.text()

    if how == "Esc":
        QTest.keyClick(dialog, Qt.Key.Key_Escape)
    else:
        dialog.form.leave.click()
    asked = time.monotonic()
    settle(qtbot, dialog)

    assert time.monotonic() - asked < 3  # within a second where nobody else uses the machine
    assert dialog.isVisible()
    assert dialog.form.said.text() == "Stopped; nothing of the file was kept."
    assert dialog.form.leave.text() == "Leave"
    assert dialog.form.choices.isEnabled()
    assert logged(rack_book) == []
    assert rack_book.undo_text() is None
    keep(qtbot, dialog)
    assert len(logged(rack_book)) == 12_000


def test_leave_keeps_nothing(qtbot, opened, rack_book):
    dialog = opened(LOGGER)
    QTest.keyClick(dialog, Qt.Key.Key_Escape)

    assert not dialog.isVisible()
    assert logged(rack_book) == []


def test_leaving_while_a_file_is_read_ends_the_work(qtbot, dressed, rack_book, work, tmp_path):
    path = Path(tmp_path / "long.csv")
    path.write_text(LOGGER)
    dialog = LogAssistant(rack_book, work, path)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.reject()

    assert not dialog.isVisible()
    assert logged(rack_book) == []


def test_a_log_dropped_on_the_window_opens_here_and_a_photo_goes_to_intake(
    qtbot, dressed, memory, tmp_path, monkeypatch
):
    log, photo = tmp_path / "dropped.CSV", tmp_path / "a.jpg"
    dropped = QMimeData()
    dropped.setUrls([QUrl.fromLocalFile(str(log)), QUrl.fromLocalFile(str(photo))])
    event = QDropEvent(
        QPointF(9, 9),
        Qt.DropAction.CopyAction,
        dropped,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    opened, brought = [], []
    monkeypatch.setattr(BookDialogs, "open_log", lambda _self, path: opened.append(path))
    monkeypatch.setattr(Window, "bring_in_files", lambda _self, paths: brought.extend(paths))
    window = make_window(dressed, memory)
    qtbot.addWidget(window)

    window.dropEvent(event)
    qtbot.waitUntil(lambda: bool(opened))

    assert (opened, brought) == ([log], [photo])
    window.close()


def test_a_logger_of_the_room_is_brought_in_for_each_shelf(qtbot, opened, rack_book):
    """One thermometer hangs beside several shelves: the same file again, for the next shelf."""
    rack_book.add_tray(a_tray("Q1", shelf="Q", trial=None, block=None))
    room = LOGGER.replace(",shelf", "").replace(",A,", ",")
    for shelf in ("shelf A", "shelf Q"):
        dialog = opened(room)
        choose(dialog.place, dialog.place.findText(shelf))
        settle(qtbot, dialog)
        assert dialog.form.count.text() == "Readings that will be kept: 6."
        keep(qtbot, dialog)

    assert len(logged(rack_book)) == len(rack_book.readings(shelf="Q")) == 6
