"""What is printed has exact lengths, and is read again from a photograph of the paper."""

from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
import pypdfium2
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QRectF
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.growing.conditions import TrayType
from data.plan.drawing import draw_trial
from data.trial import CropPlan
from gui.command import main
from gui.paper.pages import BAR_MM, EDGE_MM, Paper, in_lines, text_width
from gui.paper.pdf import write_pdf
from gui.paper.tagsheet import CODE_MM, TagLabel, code_lines
from gui.sheets import Printed, SheetKind, pages_for, printed_of_book
from gui.trays.tagsdialog import TagsDialog
from gui.work import Work
from tests.data.builders import a_tray
from tests.data.plans import a_plan
from tests.made.books import an_empty_book
from vision.markers import find_marks
from vision.patterns import MODULES, bits

Grey = NDArray[np.uint8]
DPI = 600
PX_PER_MM = DPI / 25.4
LONG = "a code that somebody has written out at full length, 2026-03-02"
CODES = ("A1", "B12", "C10-12", "A3-2/2", "Wwwwwwwwwwwwwwwwww", LONG)
TAGS = tuple(TagLabel(number=10 + 96 * n, code=code) for n, code in enumerate(CODES))
PRINTED = Printed(title="tags", tags=TAGS, tray_types=(TrayType(name="10 x 20 inch"),))


@pytest.fixture(params=list(Paper), ids=str, scope="module")
def pages(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory, qapp: QApplication
) -> list[Grey]:
    """Station cards (2 pages) and tags (1 page), as a printer of 600 dots an inch would have them."""
    path = tmp_path_factory.mktemp("sheets") / "sheets.pdf"
    made = pages_for(PRINTED, {SheetKind.STATION, SheetKind.TAGS}, request.param)
    write_pdf(path, made, request.param, "sheets")
    return rendered(path, DPI)


def rendered(path: Path, dpi: float) -> list[Grey]:
    document = pypdfium2.PdfDocument(path)
    try:
        return [np.asarray(page.render(scale=dpi / 72, grayscale=True).to_pil()) for page in document]
    finally:
        document.close()


def squares(page: Grey) -> list[tuple[float, float, float, float]]:
    """Boxes in mm of the large black pieces: x, y, width, height."""
    _, _, stats, _ = cv2.connectedComponentsWithStats((page < 64).astype(np.uint8), connectivity=8)
    return [
        (x / PX_PER_MM, y / PX_PER_MM, w / PX_PER_MM, h / PX_PER_MM)
        for x, y, w, h, area in stats[1:].tolist()
        if area > (10 * PX_PER_MM) ** 2
    ]


def test_marks_of_cards_are_48_mm_and_those_of_tags_28_mm(pages: list[Grey]) -> None:
    cards = [box for page in pages[:2] for box in squares(page)]
    tags = squares(pages[2])

    assert [round(side, 6) for box in cards for side in box[2:]] == pytest.approx([48.0] * 8, abs=0.1)
    assert [round(side, 6) for box in tags for side in box[2:]] == pytest.approx([28.0] * 12, abs=0.1)


def test_the_bar_is_100_mm(pages: list[Grey]) -> None:
    for page in pages:
        foot = page[-int((EDGE_MM + 3) * PX_PER_MM) : -int((EDGE_MM + 1) * PX_PER_MM)]
        dark = np.flatnonzero((foot[:, : int((EDGE_MM + BAR_MM + 2) * PX_PER_MM)] < 128).any(axis=0))

        assert (dark[-1] - dark[0] + 1) / PX_PER_MM == pytest.approx(BAR_MM, abs=0.35)  # a line is 0.3 wide


def test_every_mark_has_a_white_module_all_round(pages: list[Grey]) -> None:
    for page in pages:
        for x, y, width, height in squares(page):
            rim = width / MODULES - 0.2
            outer = [round(v * PX_PER_MM) for v in (x - rim, y - rim, x + width + rim, y + height + rim)]
            inner = [round(v * PX_PER_MM) for v in (x - 0.1, y - 0.1, x + width + 0.1, y + height + 0.1)]
            around = page[outer[1] : outer[3], outer[0] : outer[2]].copy()
            around[inner[1] - outer[1] : inner[3] - outer[1], inner[0] - outer[0] : inner[2] - outer[0]] = 255

            assert around.min() > 250


def test_the_corner_of_the_rim_lies_where_the_station_wants_it(pages: list[Grey]) -> None:
    """Mark centre to the printed corner of card 0: 52.5 mm along the long side, 78 mm towards the tray."""
    x, y, width, height = min(squares(pages[0]))
    corner_x, corner_y = x + width / 2 - 52.5, y + height / 2 + 78.0
    row, column = round(corner_y * PX_PER_MM), round(corner_x * PX_PER_MM)
    along = pages[0][row, column : column + int(20 * PX_PER_MM)]
    beside = pages[0][row - int(1 * PX_PER_MM), column + int(1 * PX_PER_MM) : column + int(20 * PX_PER_MM)]

    assert (along < 128).all()
    assert (beside > 128).all()
    assert (pages[0][row : row + int(5 * PX_PER_MM), column] < 128).all()


def photographed(page: Grey, seed: int) -> Grey:
    """The paper on a brown table, seen askew, a little blurred and noisy."""
    small = cv2.resize(page, None, fx=0.25, fy=0.25, interpolation=cv2.INTER_AREA)
    rows, columns = small.shape
    size = (columns + 400, rows + 400)
    lot = np.random.default_rng(seed)
    corners = np.array([[0, 0], [columns, 0], [columns, rows], [0, rows]], np.float32)
    askew = (corners + 200 + lot.uniform(-120, 120, (4, 2))).astype(np.float32)
    photo = cv2.warpPerspective(
        small, cv2.getPerspectiveTransform(corners, askew), size, flags=cv2.INTER_AREA, borderValue=(110,)
    )
    blurred = cv2.GaussianBlur(photo, (0, 0), 0.8).astype(np.float64) * 0.8 + 20
    return np.clip(blurred + lot.normal(0, 4, blurred.shape), 0, 255).astype(np.uint8)


@pytest.mark.parametrize("seed", range(3))
def test_cards_are_read_from_a_photo_of_the_paper(pages: list[Grey], seed: int) -> None:
    found = {number for page in pages[:2] for number in detected(photographed(page, seed))}

    assert found == {0, 1, 2, 3}


@pytest.mark.parametrize("seed", range(3))
def test_tags_are_read_from_a_photo_of_the_paper(pages: list[Grey], seed: int) -> None:
    assert detected(photographed(pages[2], seed)) == {tag.number for tag in TAGS}


def detected(photo: Grey) -> set[int]:
    """All numbers that OpenCV's own detector reads; a page of tags is no station."""
    detector = cv2.aruco.ArucoDetector(cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_APRILTAG_36h11))
    numbers = detector.detectMarkers(photo)[1]
    return set() if numbers is None else set(numbers.ravel().tolist())


def test_a_station_of_printed_cards_and_a_tag_is_read_as_one(pages: list[Grey]) -> None:
    """Cards and one tag cut from the pages and laid out as a station, seen askew: all five are found."""
    scene = np.full((900 * 2, 1000 * 2), 90, np.uint8)  # 1000 x 900 mm at 2 px/mm, the tray in the middle
    places = {0: (-220, -217), 1: (220, -217), 2: (220, 217), 3: (-220, 217)}
    cut = [*cards_cut(pages[0]), *cards_cut(pages[1])]
    for number, card in zip((0, 1, 3, 2), cut, strict=True):
        lay(scene, card, *places[number])
    x, y, width, height = min(squares(pages[2]), key=lambda box: (round(box[1]), box[0]))
    lay(scene, around(pages[2], x + width / 2, y + height / 2, 38), -24, 139 + 60)

    marks = find_marks(scene)

    assert set(marks.cards) == {0, 1, 2, 3}
    assert marks.tag is not None
    assert marks.tag.number == 10


def cards_cut(page: Grey) -> list[Grey]:
    return [around(page, x + w / 2, y + h / 2, 66) for x, y, w, h in sorted(squares(page))]


def around(page: Grey, x: float, y: float, side: float) -> Grey:
    left, top, px = (
        round((x - side / 2) * PX_PER_MM),
        round((y - side / 2) * PX_PER_MM),
        round(side * PX_PER_MM),
    )
    return page[top : top + px, left : left + px]


def lay(scene: Grey, card: Grey, x: float, y: float) -> None:
    side = round(card.shape[0] / PX_PER_MM * 2)
    small = cv2.resize(card, (side, side), interpolation=cv2.INTER_AREA)
    left, top = round((x + 500) * 2 - side / 2), round((y + 450) * 2 - side / 2)
    scene[top : top + side, left : left + side] = small


def test_grey_patch_reflects_a_fifth_and_white_patch_is_bare_paper(pages: list[Grey]) -> None:
    """Grey 0.20 linear is sRGB 124 (IEC 61966-2-1); patches lie 32 mm right of the mark, 9 mm up and down."""
    x, y, width, height = min(squares(pages[2]), key=lambda box: (round(box[1]), box[0]))
    centre = (x + width / 2, y + height / 2)
    white = around(pages[2], centre[0] + 32, centre[1] - 9, 15)
    grey = around(pages[2], centre[0] + 32, centre[1] + 9, 15)

    assert (white == 255).all()
    assert (grey == 124).all()
    assert pytest.approx(0.20, abs=0.005) == ((124 / 255 + 0.055) / 1.055) ** 2.4


@pytest.mark.parametrize("code", CODES)
def test_no_code_is_cut_or_runs_over_its_room(code: str, qapp: QApplication) -> None:
    room = QRectF(CODE_MM)

    lines, size = code_lines(code, room)

    assert "".join("".join(lines).split()) == "".join(code.split())
    assert all(text_width(line, size, bold=True) <= room.width() + 0.01 for line in lines)
    assert len(lines) * size * 1.36 <= room.height() + 0.01


@pytest.mark.parametrize(("long_mm", "cards"), [(176.0, 0), (177.0, 4)])
def test_cards_that_would_lie_on_each_other_are_not_printed(
    tmp_path: Path, qapp: QApplication, long_mm: float, cards: int
) -> None:
    short = TrayType(
        name="punnet",
        outer_long_mm=long_mm,
        outer_short_mm=130.0,
        inner_long_mm=150.0,
        inner_short_mm=110.0,
        rim_height_mm=50.0,
    )
    path = tmp_path / "short.pdf"

    write_pdf(
        path,
        pages_for(Printed(title="t", tags=(), tray_types=(short,)), {SheetKind.STATION}, Paper.A4),
        Paper.A4,
    )

    found = [width for page in rendered(path, DPI) for _, _, width, _ in squares(page)]
    assert len(found) == cards  # 72 mm wide, their middles 52.5 mm from the tray's ends: from 177 mm on


def test_words_longer_than_a_line_are_broken(qapp: QApplication) -> None:
    assert "".join(in_lines("W" * 40, 10.0, 3.0)) == "W" * 40


def test_fonts_are_in_the_file_and_no_pictures(tmp_path: Path, qapp: QApplication) -> None:
    path = tmp_path / "sheets.pdf"

    write_pdf(path, pages_for(PRINTED, set(SheetKind), Paper.A4), Paper.A4, "sheets")

    body = path.read_bytes()
    assert b"/FontFile" in body
    assert b"/Subtype /Image" not in body
    assert len(body) < 300_000


def test_sheets_of_a_trial_say_every_tray(tmp_path: Path, qapp: QApplication) -> None:
    plan = a_plan(blocks=4)
    places = draw_trial(plan, 1).places
    printed = Printed(title="t", tags=(), tray_types=(), plan=plan, places=places)
    path = tmp_path / "trial.pdf"

    write_pdf(path, pages_for(printed, set(SheetKind), Paper.LETTER), Paper.LETTER)

    document = pypdfium2.PdfDocument(path)
    text = "".join(page.get_textpage().get_text_range() for page in document)
    document.close()
    for place in places:
        assert text.count(place.code) >= 3  # sowing sheet, map, readings


def test_the_sowing_sheet_says_how_each_crop_is_soaked_and_how_long_covered(
    tmp_path: Path, qapp: QApplication
) -> None:
    crops = (
        CropPlan(name="pea", read_on_day=9, soak_hours=8.0, blackout_days=3.0, seed_lot="P 7"),
        CropPlan(name="cress", read_on_day=7, soak_hours=0.0, blackout_days=0.0),
        CropPlan(name="kale", read_on_day=9),
    )
    plan = a_plan(blocks=4, crops=crops)
    printed = Printed(title="t", tags=(), tray_types=(), plan=plan, places=draw_trial(plan, 1).places)
    path = tmp_path / "sowing.pdf"

    write_pdf(path, pages_for(printed, {SheetKind.SOWING}, Paper.A4), Paper.A4)

    document = pypdfium2.PdfDocument(path)
    text = " ".join(document[0].get_textpage().get_text_range().split())
    document.close()
    assert "pea: seed lot P 7; soaked 8 h; days covered after sowing: 3." in text
    assert "cress: sown dry; never covered." in text
    assert "kale:" not in text


@pytest.mark.parametrize("paper", list(Paper))
def test_the_bench_map_tells_trays_of_long_names_apart_and_keeps_within_their_boxes(
    tmp_path: Path, qapp: QApplication, paper: Paper
) -> None:
    plan = a_plan()
    places = [
        replace(
            place,
            code=f"Cellar behind the stairs, top {place.code}",
            crop="broccoli of the sort with the longest name that a breeder ever gave to any plant of his",
            treatment="coir, coarse and fine, with a very long name, from the store at the back, third bag",
        )
        for place in draw_trial(plan, 1).places
    ]
    printed = Printed(title="t", tags=(), tray_types=(), plan=plan, places=places)
    path = tmp_path / "map.pdf"

    write_pdf(path, pages_for(printed, {SheetKind.MAP}, paper), paper)

    document = pypdfium2.PdfDocument(path)
    text = "".join("".join(page.get_textpage().get_text_range() for page in document).split())
    document.close()
    assert all("".join(place.code.split()) in text for place in places)
    bottom = paper.free.top() + 7 + 27  # of the boxes of the first shelf, mm
    below = rendered(path, DPI)[0][round((bottom + 0.3) * PX_PER_MM) : round((bottom + 1) * PX_PER_MM)]
    assert (below[:, round(15 * PX_PER_MM) : round(200 * PX_PER_MM)] > 200).all()


def test_the_reading_sheet_does_not_tell_the_medium(tmp_path: Path, qapp: QApplication) -> None:
    plan = a_plan()
    printed = Printed(title="t", tags=(), tray_types=(), plan=plan, places=draw_trial(plan, 1).places)
    path = tmp_path / "readings.pdf"

    write_pdf(path, pages_for(printed, {SheetKind.READINGS}, Paper.A4), Paper.A4)

    document = pypdfium2.PdfDocument(path)
    text = "".join(page.get_textpage().get_text_range() for page in document)
    document.close()
    assert "A1" in text
    assert all(words in " ".join(text.split()) for words in ("fresh mass (g)", "cut (1-5)", "slid (0/1)"))
    assert not any(treatment.name in text for treatment in plan.treatments)


def test_a_folder_that_is_not_there_is_told_and_leaves_nothing(tmp_path: Path, qapp: QApplication) -> None:
    with pytest.raises(OSError, match="No such file"):
        write_pdf(tmp_path / "nowhere" / "x.pdf", pages_for(PRINTED, {SheetKind.TAGS}, Paper.A4), Paper.A4)


def test_tags_of_a_book_are_those_that_grow_and_those_that_are_drawn(tmp_path: Path) -> None:
    with an_empty_book(tmp_path / "book") as book:
        plan_id = book.keep_plan(a_plan(blocks=4))
        draw = book.draw_places(plan_id, seed=1)
        book.sow_trial(draw.id)

        printed = printed_of_book(book)

    assert len(printed.tags) == 24
    assert {tag.number for tag in printed.tags} == {place.tag_number for place in draw.draw.places}
    assert [tray.name for tray in printed.tray_types] == ["10 x 20 inch"]


def test_a_mark_has_the_bits_of_its_number(pages: list[Grey]) -> None:
    x, y, width, height = min(squares(pages[2]), key=lambda box: (round(box[1]), box[0]))
    mark = around(pages[2], x + width / 2, y + height / 2, 28)
    modules = cv2.resize(mark, (MODULES, MODULES), interpolation=cv2.INTER_AREA) < 128

    assert (modules == bits(10)).all()


def test_the_command_writes_tags_and_cards(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with an_empty_book(tmp_path / "book") as book:
        book.sow_trial(book.draw_places(book.keep_plan(a_plan()), seed=1).id)
    target = tmp_path / "tags.pdf"

    assert main(["tags", "--book", str(tmp_path / "book"), "--paper", "Letter", str(target)]) == 0

    document = pypdfium2.PdfDocument(target)
    assert len(document) == 2 + 3
    assert [round(side * 25.4 / 72, 1) for side in document[0].get_size()] == [215.9, 279.4]
    document.close()
    assert "18 tags" in capsys.readouterr().out


def test_the_command_says_which_trials_have_places(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    an_empty_book(tmp_path / "book").close()

    assert main(["tags", "--book", str(tmp_path / "book"), "--trial", "x", str(tmp_path / "t.pdf")]) == 1

    assert "trials with places: none" in capsys.readouterr().err
    assert not (tmp_path / "t.pdf").exists()


def test_the_command_says_why_a_file_was_not_written(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    an_empty_book(tmp_path / "book").close()

    assert main(["tags", "--book", str(tmp_path / "book"), str(tmp_path / "no" / "t.pdf")]) == 1

    assert "Choose another folder" in capsys.readouterr().err


def test_tags_are_written_over_nothing_but_a_pdf(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    notes = tmp_path / "notes.csv"
    notes.write_text("tray;grams")
    assert main(["tags", "--book", str(tmp_path / "book"), str(notes)]) == 1
    assert "OUT.pdf" in capsys.readouterr().err
    assert notes.read_text() == "tray;grams"


def test_tags_and_cards_are_printed_without_a_trial(
    tmp_path: Path, qtbot: QtBot, dressed: QApplication, work: Work
) -> None:
    with an_empty_book(tmp_path / "book") as book:
        book.add_tray(a_tray("A1", tag_number=10))
        dialog = TagsDialog(book, work)
    qtbot.addWidget(dialog)

    dialog.save_to(tmp_path / "nowhere" / "tags.pdf")
    assert not dialog.save.isEnabled()
    assert "being written" in dialog.trouble.text()
    qtbot.waitUntil(lambda: "Choose another folder" in dialog.trouble.text(), timeout=10_000)
    with qtbot.waitSignal(dialog.accepted, timeout=10_000):
        dialog.save_to(tmp_path / "tags.pdf")

    document = pypdfium2.PdfDocument(tmp_path / "tags.pdf")
    assert len(document) == 3
    document.close()
    assert dialog.told.startswith("Saved")


def test_where_nothing_is_chosen_no_file_is_asked_for(
    tmp_path: Path, qtbot: QtBot, dressed: QApplication, work: Work, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[object] = []
    monkeypatch.setattr("gui.trays.tagsdialog.ask_new_file", lambda *_: asked.append(1))
    with an_empty_book(tmp_path / "book") as book:
        dialog = TagsDialog(book, work)
    qtbot.addWidget(dialog)
    for box in dialog.page.kinds.values():
        box.setChecked(False)

    dialog.save.click()

    assert asked == []
    assert dialog.trouble.text() == "Choose something to print first."
