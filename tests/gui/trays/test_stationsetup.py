"""Station setup: where cards go for a kind of tray, and a photo that is checked in the background."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

import gui.trays.stationsetup
from data.book import Book
from data.photos.station import Checked, check_station, plan_of_station
from data.photos.stationwords import station_sentences
from gui.app import make_window
from gui.home import Memory
from gui.language.spoken import spoken
from gui.trays.stationdistances import StationDistances
from gui.trays.stationsetup import StationSetup
from gui.work import Work
from vision.photo import PhotoRefused
from vision.reason import Reason
from vision.stationcheck import CardPlace, Found, StationCheck
from vision.traytype import TrayType

STATION = Path(__file__).parents[2] / "photos" / "station.jpg"
MOVED = CardPlace(number=2, right_mm=3.1, far_mm=0.2, spread_mm=0.3, misfit=1.0)


@pytest.fixture
def setup(dressed: QApplication, rack_book: Book, work: Work, qtbot: QtBot) -> StationSetup:
    rack_book.set_tray_type(TrayType(name="Half tray", outer_long_mm=278, inner_long_mm=254))
    made = StationSetup(rack_book, work)
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.fixture
def answered(monkeypatch: pytest.MonkeyPatch) -> Callable[[StationCheck], None]:
    """Photos that say what a test wants."""

    def arrange(check: StationCheck) -> None:
        def look(photo: Path, _kind: TrayType) -> Checked:
            return Checked(photo=photo.name, check=check, sentences=station_sentences(check))

        monkeypatch.setattr(gui.trays.stationsetup, "check_station", look)

    return arrange


def test_the_distances_follow_the_kind_of_tray(setup: StationSetup) -> None:
    assert "440 mm across and 434 mm from far to near" in setup.about.text()
    assert "618 mm" in setup.about.text()

    setup.kind.setCurrentText("Half tray")

    assert "173 mm across and 434 mm" in setup.about.text()


def test_a_moved_card_is_told_and_drawn(
    setup: StationSetup, qtbot: QtBot, answered: Callable[[StationCheck], None]
) -> None:
    answered(StationCheck(found=Found.ONE_CARD, moved=MOVED, places=(MOVED,), tag=12))

    setup.check(Path("bench.jpg"))

    assert not setup.bring.isEnabled()
    qtbot.waitUntil(setup.bring.isEnabled)
    said = "The station is 3 mm out of true at the near right card: move it 3 mm to the left."
    assert setup.said.text() == said
    assert setup.said.property("role") == "alarm"
    assert setup.bar.isHidden()
    setup.grab()


def test_a_card_that_cannot_be_moved_is_kept_where_it_was_found_and_photos_are_scored_so(
    setup: StationSetup, rack_book: Book, qtbot: QtBot, answered: Callable[[StationCheck], None]
) -> None:
    answered(StationCheck(found=Found.ONE_CARD, moved=MOVED, places=(MOVED,), tag=12))
    assert setup.keep.isHidden()
    setup.check(Path("bench.jpg"))
    qtbot.waitUntil(setup.bring.isEnabled)

    setup.keep.click()

    assert "near right card lies 3.1 mm from its drawn place" in setup.kept.text()
    assert setup.keep.isHidden()
    trays = rack_book.trays_by_tag()
    assert trays is not None
    x, y, _ = trays(None, None).card_centres()[2]
    assert (x, y) == pytest.approx((220 + 3.1, -217 + 0.2))


def test_measured_distances_are_kept_and_forgotten_again(setup: StationSetup, rack_book: Book) -> None:
    dialog = StationDistances(setup.chosen, setup)
    dialog.kept.connect(setup.keep_places)
    dialog.ways[1, 2].set(437.5)
    dialog.ways[0, 2].set(620.5)

    dialog.keep.click()

    assert "near right card lies 3.4 mm" in setup.kept.text()
    assert rack_book.tray_type(setup.chosen.name).cards_off_mm[2][1] == pytest.approx(-3.5, abs=0.2)
    assert "440 mm across and 434 mm" in setup.about.text()  # where they should go stays told

    again = StationDistances(setup.chosen, setup)
    assert again.ways[1, 2].value == pytest.approx(437.5, abs=0.51)
    again.kept.connect(setup.keep_places)
    again.drawn.click()

    assert setup.kept.isHidden()
    assert not rack_book.tray_type(setup.chosen.name).cards_off_mm


def test_where_the_cards_lie_can_be_taken_back_from_the_window(
    rack_book: Book,
    dressed: QApplication,
    memory: Memory,
    qtbot: QtBot,
    answer: Callable[[Callable[[QDialog], None]], None],
) -> None:
    rack_book.close()
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    window.show()
    window.open_folder(rack_book.folder)

    def keep(dialog: QDialog) -> None:
        assert isinstance(dialog, StationSetup)
        dialog.keep_places(((3.0, 0.0), (0.0, 0.0), (0.0, 0.0), (0.0, 0.0)))

    answer(keep)
    window.dialogs.check_station()

    book, undo = window.book, window.actions_by_name["undo"]
    assert book is not None
    (kind,) = [one.name for one in book.tray_types() if one.cards_off_mm]
    assert spoken(book.undo_text() or "") == f"station cards of {kind}"
    assert undo.isEnabled()
    undo.trigger()
    assert book.tray_type(kind).cards_off_mm == ()


def test_a_distance_that_cannot_be_is_asked_again(setup: StationSetup, rack_book: Book) -> None:
    dialog = StationDistances(setup.chosen, setup)
    dialog.ways[0, 1].set(455.0)

    dialog.keep.click()

    assert "measure it again" in dialog.trouble.text()
    assert rack_book.tray_type(setup.chosen.name).cards_off_mm == ()


def test_an_answer_for_another_kind_comes_too_late(
    setup: StationSetup, qtbot: QtBot, answered: Callable[[StationCheck], None]
) -> None:
    answered(StationCheck(found=Found.ONE_CARD, moved=MOVED, places=(MOVED,), tag=12))
    setup.check(Path("bench.jpg"))
    setup.kind.setCurrentText("Half tray")
    qtbot.wait(100)

    assert "out of true" not in setup.said.text()
    assert setup.bring.isEnabled()


def test_a_file_that_is_no_photo_is_refused_in_words(
    setup: StationSetup, qtbot: QtBot, tmp_path: Path
) -> None:
    (tmp_path / "list.jpg").write_text("no picture")

    setup.check(tmp_path / "list.jpg")

    qtbot.waitUntil(setup.bring.isEnabled)
    assert setup.said.text() == f"list.jpg is not used: {Reason.NO_PICTURE}."


def test_a_real_photo_is_looked_at_and_its_small_cards_are_told(setup: StationSetup, qtbot: QtBot) -> None:
    setup.check(STATION)

    qtbot.waitUntil(setup.bring.isEnabled, timeout=20000)
    assert "too small in this photo" in setup.said.text()


def test_leaving_waits_for_nothing(
    setup: StationSetup, work: Work, answered: Callable[[StationCheck], None]
) -> None:
    answered(StationCheck(found=Found.NO_MARKS))
    setup.check(Path("bench.jpg"))
    job = setup._job
    setup.reject()

    assert job is not None
    assert job.token.is_set


def test_the_plan_is_that_of_the_printed_cards() -> None:
    plan = plan_of_station(TrayType(name="nominal"))

    assert (plan.across_mm, plan.deep_mm) == (440, 434)
    assert plan.diagonal_mm == pytest.approx(618, abs=0.1)


def test_a_missing_file_is_refused(tmp_path: Path) -> None:
    with pytest.raises(PhotoRefused):
        check_station(tmp_path / "gone.jpg", TrayType(name="nominal"))
