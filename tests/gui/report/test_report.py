"""A report holds every sentence and number of its verdicts, on paper and in mail, and nothing private."""

import re
import shutil
from collections.abc import Iterator
from dataclasses import replace
from html.parser import HTMLParser
from pathlib import Path
from types import SimpleNamespace

import cv2
import numpy as np
import pypdfium2
import pypdfium2.raw as raw
import pytest
from PySide6.QtCore import QRect
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

import data.intake
from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.materials.table import ROWS
from data.plan.blocks import ShelfPlaces
from data.records import PhotoId
from data.report.content import Grid, Heading, Materials, Paragraph, PictureRow, Report
from data.report.reading import read_report
from data.report.typicaltrays import Stands, chosen_trays
from data.sentence import Sentence
from data.trial import CropPlan
from data.verdict.words import sentence
from gui.answer.view import table_rows
from gui.command import main
from gui.language.spoken import spoken
from gui.paper.pages import Paper
from gui.paper.pdfmarks import add_marks
from gui.report import write_report
from gui.report.dialog import ReportDialog
from gui.report.html import as_html
from gui.report.pages import lay_out
from gui.style.palette import dress, load_fonts
from gui.style.tokens import Scheme
from gui.work import Work
from tests.data.builders import a_tray
from tests.data.plans import MEDIA
from tests.data.trialrack import EVEN, WORSE, Rack
from tests.made.books import an_empty_book

NASTY = '<script>alert(1)</script> & "friends" ' + "W" * 300
CROPS = tuple(
    CropPlan(name=name, read_on_day=9, sowing_rate_g=18.0) for name in ("broccoli", "radish", "mustard")
)


@pytest.fixture(autouse=True)
def fonts(qapp: QApplication) -> None:
    load_fonts()


@pytest.fixture
def rack(tmp_path: Path) -> Iterator[Rack]:
    made = Rack(tmp_path)
    made.shoot_all(WORSE)
    yield made
    made.book.close()


def words_of(path: Path) -> str:
    """All text of a PDF, with single blanks."""
    document = pypdfium2.PdfDocument(path)
    try:
        text = " ".join(page.get_textpage().get_text_bounded() for page in document)
    finally:
        document.close()
    return " ".join(re.sub(r"[\ufffe\u00ad]", "-", text).split())


def squeezed(text: str) -> str:
    return re.sub(r"\s+", "", text)


def sizes_of(path: Path) -> set[tuple[int, int]]:
    """Of the pages, mm."""
    document = pypdfium2.PdfDocument(path)
    try:
        return {
            (round(w * 25.4 / 72), round(h * 25.4 / 72)) for w, h in (page.get_size() for page in document)
        }
    finally:
        document.close()


def pages_of(path: Path) -> int:
    document = pypdfium2.PdfDocument(path)
    try:
        return len(document)
    finally:
        document.close()


def heads_of(report: Report) -> list[str]:
    return [block.head[0] for block in report.blocks if isinstance(block, Grid)]


def a_report(*blocks: object, short: bool = False) -> Report:
    words = Sentence("Report of a trial of growing media, made on {day}.", day="1 May 2026")
    return Report(title="A trial", subtitle=words, trial="A trial", short=short, blocks=blocks)


# --- what stands in it


def test_the_pdf_has_every_sentence_and_every_number_of_the_table(rack: Rack, tmp_path: Path) -> None:
    path = tmp_path / "report.pdf"
    write_report(path, read_report(rack.book), Paper.A4)

    text = squeezed(words_of(path))
    for found in rack.verdicts():
        for line in found.verdict.media:
            assert squeezed(spoken(sentence(found.verdict, line, found.scale))) in text
        for row in table_rows(found):
            for cell in (row.medium, row.trays, row.mean, row.difference, row.interval, row.answer, row.rank):
                assert squeezed(cell) in text


def test_a_plan_that_was_changed_after_sowing_is_told(rack: Rack) -> None:
    wider = replace(rack.plan, measures=(replace(rack.plan.primary, margin=9.0),))
    assert "Fixed beforehand" in heads_of(read_report(rack.book))
    rack.book.keep_plan(wider, why="we thought again")

    report = read_report(rack.book)
    assert any("changed later" in text and "we thought again" in text for text in report.texts())
    assert "Fixed only after sowing" in heads_of(report)
    assert "Fixed beforehand" not in heads_of(report)


def test_the_table_of_media_has_no_other_trials_media_and_no_empty_rows(rack: Rack) -> None:
    rack.book.add_tray(a_tray("Z1", medium="paper pad", trial=None))
    rack.book.set_medium("paper pad", kind="mat")
    rack.book.set_medium("coir", kind="loose")

    report = read_report(rack.book)
    (table,) = [block.table for block in report.blocks if isinstance(block, Materials)]

    assert set(table.media) == set(MEDIA.levels)
    shown = {row.key for row in table.rows}
    assert "kind" in shown
    assert "price" not in shown  # of none of them
    left_out = len(ROWS) - len(shown)
    assert any(f"are left out here: {left_out}." in text for text in report.texts())


def test_the_rule_by_which_pictures_were_chosen_is_said_and_kept(rack: Rack) -> None:
    report = read_report(rack.book)
    assert any("median score" in text for text in report.texts())
    numbers = [n for n in rack.verdicts()[0].numbers if n.tray.medium == "coir"]
    ordered = sorted(numbers, key=lambda one: one.value or 0.0)
    chosen = {one.stands: one.number.tray.code for one in chosen_trays(numbers)}
    assert chosen == {
        Stands.TYPICAL: ordered[1].tray.code,
        Stands.BEST: ordered[3].tray.code,
        Stands.WORST: ordered[0].tray.code,
    }
    assert sum(isinstance(block, PictureRow) for block in report.blocks) == len(MEDIA.levels)


@pytest.mark.parametrize("doubted", [False, True])
def test_a_picture_is_of_the_photo_whose_score_stands_below_it(rack: Rack, doubted: bool) -> None:
    counted = {day.pictures.top_view for tray in rack.trays for day in rack.book.days(tray.id)}
    for tray in rack.trays:
        before = {day.photo_id for day in rack.book.days(tray.id)}
        rack.shoot(tray, 20.0, method="learned 1")
        (later,) = {day.photo_id for day in rack.book.days(tray.id)} - before
        if doubted:
            rack.doubt(later)
        else:
            rack.book.leave_out(later)

    report = read_report(rack.book)

    paths = {one.path for block in report.blocks if isinstance(block, PictureRow) for one in block.pictures}
    assert paths
    assert paths <= counted


def test_what_went_wrong_is_told(rack: Rack) -> None:
    from data.events import EventKind

    tray = rack.tray("coir")
    rack.book.add_event([tray.id], EventKind.THROWN_AWAY, rack.book.now(), note="mold")
    assert any(
        f"Tray {tray.code}" in text and "thrown away" in text for text in read_report(rack.book).texts()
    )


@pytest.mark.parametrize("short", [False, True])
def test_an_empty_trial_and_an_empty_book_give_sentences(tmp_path: Path, short: bool) -> None:
    with Rack(tmp_path).book as sown, an_empty_book(tmp_path / "other") as empty:
        for book, words in ((sown, "no scored photo"), (empty, "no trial")):
            path = tmp_path / "empty.pdf"
            write_report(path, read_report(book, short=short), Paper.A4)
            assert words in words_of(path)


# --- paper


@pytest.mark.parametrize(("paper", "size"), [(Paper.A4, (210, 297)), (Paper.LETTER, (216, 279))])
def test_pages_have_the_size_of_the_paper_and_the_customers_are_two(
    rack: Rack, tmp_path: Path, paper: Paper, size: tuple[int, int]
) -> None:
    path = tmp_path / "short.pdf"
    write_report(path, read_report(rack.book, short=True), paper)
    assert (sizes_of(path), pages_of(path)) == ({size}, 2)  # ISO 216; ANSI/ASME Y14.1


def test_a_short_report_with_far_too_much_still_has_two_pages(tmp_path: Path) -> None:
    blocks = [Paragraph(text=f"{n} " + "many words " * 40) for n in range(60)]
    assert len(lay_out(a_report(*blocks, short=True), Paper.A4).pages) == 2


def test_a_short_report_keeps_no_heading_of_what_it_left_out() -> None:
    rows = tuple((str(n), "words " * 12) for n in range(60))
    tables: list[object] = [
        Heading(text=f"Table {n}", level=2) if part == 0 else Grid(name="t", head=("n", "Words"), rows=rows)
        for n in range(3)
        for part in range(2)
    ]
    told = (Heading(text="Answers"), *tables, Heading(text="Cautions"), Paragraph(text="Look at it."))

    sheets = lay_out(a_report(*told, short=True), Paper.A4)

    kept = list(sheets.report.blocks)
    headings = [number for number, block in enumerate(kept) if isinstance(block, Heading)]
    assert len(kept) < len(told)  # something was left out
    assert not any(isinstance(kept[n + 1], Heading) and kept[n + 1].level <= kept[n].level for n in headings)
    assert [kept[n].text for n in headings if kept[n].level == 1][-1] == "Cautions"


def test_fonts_are_embedded_and_the_title_is_set(rack: Rack, tmp_path: Path) -> None:
    path = tmp_path / "report.pdf"
    write_report(path, read_report(rack.book), Paper.A4)

    document = pypdfium2.PdfDocument(path)
    try:
        assert document.get_metadata_dict()["Title"] == rack.plan.trial
        fonts = [
            raw.FPDFTextObj_GetFont(o.raw)
            for p in document
            for o in p.get_objects()
            if o.type == raw.FPDF_PAGEOBJ_TEXT
        ]
        assert fonts
        assert all(raw.FPDFFont_GetIsEmbedded(font) == 1 for font in fonts)
        marks = [mark.get_title() for mark in document.get_toc()]
    finally:
        document.close()
    assert {"What was asked", "Answers", "Cautions"} <= set(marks)


def test_no_heading_ends_a_page_and_the_head_of_a_table_comes_again() -> None:
    rows = tuple((str(n), "words " * 12) for n in range(120))
    blocks: list[object] = []
    for number in range(30):
        blocks += [Heading(text=f"Heading {number}"), Paragraph(text="words " * (30 + 17 * number))]
    sheets = lay_out(
        a_report(*blocks, Grid(name="t", head=("Tray", "Words"), rows=rows, wide=(1,))), Paper.A4
    )

    assert len(sheets.pages) > 4
    assert not any(page[-1].piece.mark for page in sheets.pages)
    heads = [placed.piece.head for page in sheets.pages for placed in page if placed.piece.head is not None]
    on = [page for page in sheets.pages if any(p.piece.head is not None for p in page)]
    assert len(on) >= 2
    assert all(any(placed.piece is heads[0] for placed in page) for page in on[1:])


def test_long_names_stay_within_the_paper(tmp_path: Path) -> None:
    grid = Grid(name="t", head=("Medium", "n", "Answer"), rows=((NASTY, "1", NASTY), ("coir", "W" * 80, "x")))
    path = tmp_path / "long.pdf"
    write_report(path, a_report(Heading(text=NASTY), Paragraph(text=NASTY), grid), Paper.A4)

    document = pypdfium2.PdfDocument(path)
    try:
        page = np.asarray(document[0].render(scale=1, grayscale=True).to_pil())
    finally:
        document.close()
    assert (page[:, : round(14 / 25.4 * 72)] > 250).all()
    assert (page[:, -round(14 / 25.4 * 72) :] > 250).all()


def test_bytes_that_are_built_otherwise_get_no_bookmarks() -> None:
    assert add_marks(b"%PDF-1.7 nothing like it", [("Heading", 0)]) == b"%PDF-1.7 nothing like it"


# --- mail


class _Seen(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.links: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.links += [value or "" for name, value in attrs if name in ("src", "href")]


def test_html_is_escaped_and_needs_no_other_file(rack: Rack) -> None:
    report = read_report(rack.book)
    grid = Grid(name=NASTY, head=(NASTY,), rows=((NASTY,),))
    blocks = (*report.blocks, Heading(text=NASTY), Paragraph(text=NASTY), grid)
    page = as_html(replace(report, title=NASTY, blocks=blocks))
    seen = _Seen()
    seen.feed(page)

    assert "script" not in seen.tags
    assert seen.links
    assert all(link.startswith("data:image/") for link in seen.links)
    assert "&lt;script&gt;" in page


# --- nothing private


def test_no_place_and_no_camera_comes_along(rack: Rack, tmp_path: Path) -> None:
    from PIL import Image

    exif = Image.Exif()
    exif[0x010F], exif[0xA431], exif[0x927C] = "SecretMaker", "SERIAL-4711", "note 4711"
    exif.get_ifd(0x8825)[1] = "N"
    for number in rack.verdicts()[0].numbers:
        pictures = rack.book.days(number.tray.id)[-1].pictures
        assert pictures is not None
        pictures.top_view.parent.mkdir(parents=True, exist_ok=True)
        Image.new("RGB", (1016, 508), (40, 120, 40)).save(
            pictures.top_view, exif=exif, comment=b"SERIAL-4711"
        )
    for name in ("report.pdf", "report.html"):
        path = tmp_path / name
        write_report(path, read_report(rack.book), Paper.A4)
        content = path.read_bytes()
        if name.endswith("html"):
            from base64 import b64decode

            found = re.findall(rb'base64,([^"]+)"', content)
            assert len(found) > 3
            content += b"".join(map(b64decode, found))
        assert not any(word in content for word in (b"SERIAL", b"SecretMaker", b"Exif", b"GPS"))


# --- pictures that the cache has lost


def lose_cache(rack: Rack) -> None:
    shutil.rmtree(rack.book.folder / "cache")


def test_top_views_that_the_cache_has_lost_are_made_again_for_those_that_are_shown(
    rack: Rack, monkeypatch: pytest.MonkeyPatch
) -> None:
    lose_cache(rack)
    again: list[PhotoId] = []

    def make(book: Book, photo: PhotoId) -> None:
        pictures = book.pictures(photo)
        assert pictures is not None
        pictures.top_view.parent.mkdir(parents=True, exist_ok=True)
        pictures.top_view.write_bytes(b"a top view")
        again.append(photo)

    monkeypatch.setattr(data.intake, "make_pictures", make)
    told: list[tuple[int, int]] = []
    report = read_report(rack.book, progress=lambda done, whole: told.append((done, whole)))

    shown = [one.path for block in report.blocks if isinstance(block, PictureRow) for one in block.pictures]
    assert len(shown) == len(again) == 9  # of 12 photos: typical, best and worst of three media
    assert all(path.read_bytes() == b"a top view" for path in shown)
    assert told[-1] == (5 + 9, 5 + 9)
    assert [done for done, _ in told] == sorted(done for done, _ in told)
    read_report(rack.book)
    assert len(again) == 9, "what is there is not made again"


def test_cancel_is_heard_while_pictures_are_made_again(rack: Rack, monkeypatch: pytest.MonkeyPatch) -> None:
    lose_cache(rack)
    stop, made = CancelToken(), []

    def make(_book: Book, photo: PhotoId) -> None:
        made.append(photo)
        stop.cancel()

    monkeypatch.setattr(data.intake, "make_pictures", make)
    with pytest.raises(Cancelled):
        read_report(rack.book, cancel=stop)
    assert len(made) == 1


def test_a_picture_that_cannot_be_made_again_is_told_in_its_place(rack: Rack, tmp_path: Path) -> None:
    lose_cache(rack)
    for tray in rack.trays:
        rack.book.days(tray.id)[-1].photo.unlink()
    report = read_report(rack.book)

    write_report(tmp_path / "gone.pdf", report, Paper.A4)

    assert words_of(tmp_path / "gone.pdf").count("The picture is gone.") == 9
    assert as_html(report).count("The picture is gone.") == 9


# --- stopping


@pytest.mark.parametrize("name", ["report.pdf", "report.html"])
def test_a_report_that_was_stopped_leaves_no_file(rack: Rack, tmp_path: Path, name: str) -> None:
    folder = tmp_path / "out"
    folder.mkdir()
    report, stop = read_report(rack.book), CancelToken()
    stop.cancel()
    with pytest.raises(Cancelled):
        write_report(folder / name, report, Paper.A4, cancel=stop)
    assert list(folder.iterdir()) == []


# --- window and command line


def test_the_dialog_shows_pages_and_saves(rack: Rack, work: Work, tmp_path: Path, qtbot: QtBot) -> None:
    dialog = ReportDialog(rack.book, work)
    qtbot.addWidget(dialog)
    with qtbot.waitSignal(dialog.desk.looked, timeout=20_000) as looked:
        dialog.version.setCurrentIndex(1)
    assert len(looked.args[0].pages) == 2
    with qtbot.waitSignal(dialog.desk.saved, timeout=20_000):
        dialog.save_to(tmp_path / "out.pdf")
    assert pages_of(tmp_path / "out.pdf") == 2


@pytest.mark.parametrize(("wide", "high"), [(1366, 768), (1024, 700)])
def test_the_name_of_the_trial_is_read_whole_in_large_letters(
    rack: Rack,
    work: Work,
    qtbot: QtBot,
    qapp: QApplication,
    monkeypatch: pytest.MonkeyPatch,
    wide: int,
    high: int,
) -> None:
    room = SimpleNamespace(availableGeometry=lambda: QRect(0, 0, wide, high))
    monkeypatch.setattr(ReportDialog, "screen", lambda _: room)
    dress(qapp, Scheme.LIGHT, 150)
    rack.book.keep_plan(replace(rack.plan, trial="Fibre mat and coir against peat, spring"))
    dialog = ReportDialog(rack.book, work)
    qtbot.addWidget(dialog)
    dialog.show()
    with qtbot.waitSignal(dialog.desk.looked, timeout=20_000):
        dialog.look()
    letters = dialog.trial.fontMetrics().horizontalAdvance
    names = [dialog.trial.itemText(at) for at in range(dialog.trial.count())]
    assert max(map(letters, names)) < dialog.trial.width() - 40  # its edges and its arrow
    assert dialog.width() <= wide
    assert dialog.trial.toolTip() == dialog.trial.currentText()
    dress(qapp, Scheme.LIGHT)


def test_a_folder_that_is_not_there_is_told(rack: Rack, work: Work, tmp_path: Path, qtbot: QtBot) -> None:
    dialog = ReportDialog(rack.book, work)
    qtbot.addWidget(dialog)
    with qtbot.waitSignal(dialog.desk.trouble, timeout=20_000):
        dialog.save_to(tmp_path / "nowhere" / "out.pdf")
    assert not dialog.trouble.isHidden()


def test_the_command_writes_both_kinds_and_refuses_others(
    rack: Rack, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    book = str(rack.book.folder)
    for name in ("a.pdf", "a.html"):
        assert main(["report", "--book", book, "--short", str(tmp_path / name)]) == 0
        assert (tmp_path / name).stat().st_size > 1000
    assert main(["report", "--book", book, str(tmp_path / "a.doc")]) == 1
    assert main(["report", "--book", book, "--trial", "none such", str(tmp_path / "b.pdf")]) == 1
    assert rack.plan.trial in capsys.readouterr().err


# --- speed and size


def test_a_trial_of_36_trays_takes_under_8_s_and_6_mb(tmp_path: Path) -> None:
    from time import perf_counter

    rack = Rack(tmp_path, crops=CROPS, shelves=tuple(ShelfPlaces(name=name, places=9) for name in "ABCD"))
    rack.shoot_all(EVEN)
    noise = np.random.default_rng(1).integers(0, 255, (508, 1016, 3), np.uint8)
    picture = cv2.imencode(".jpg", cv2.GaussianBlur(noise, (5, 5), 0))[1].tobytes()
    for tray in rack.trays:
        pictures = rack.book.days(tray.id)[-1].pictures
        assert pictures is not None
        pictures.top_view.parent.mkdir(parents=True, exist_ok=True)
        pictures.top_view.write_bytes(picture)
    assert len(rack.trays) == 36
    for name in ("report.pdf", "report.html"):
        begun = perf_counter()
        write_report(tmp_path / name, read_report(rack.book), Paper.A4)
        took, size = perf_counter() - begun, (tmp_path / name).stat().st_size
        print(f"{name}: {took:.2f} s, {size / 1e6:.2f} MB")
        assert took < 8
        assert size < 6e6
    rack.book.close()
