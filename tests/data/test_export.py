"""A book in open files: described by an open standard, safe in a spreadsheet, enough for every verdict."""

import csv
import json
import shutil
import tempfile
import tracemalloc
from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from scipy import stats

import data.intake
from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.events import EventKind
from data.export import export
from data.intake import make_pictures
from data.look import Urgency
from data.openfiles.cells import plain_text, spreadsheet_safe
from data.openfiles.columns import Kind
from data.openfiles.tables import TABLES
from data.readings import NewReading, ReadingKind
from data.records import PhotoId
from data.report.reading import read_report
from data.travel.imported import MAY_BE_NOTHING, NEVER_NOTHING, is_export, read_export
from data.travel.merging import merge
from data.travel.samenames import Answer, same_names
from data.travelerrors import ExportWouldMix, NotAnExport, NotWritable
from data.watch import read_looks
from tests.data.builders import Patch, a_note, a_tray, score_note
from tests.data.trialrack import Rack
from tests.made.books import an_empty_book
from vision.reason import Reason

CAMERA = "Pinhole Box"
COVERAGE = {"peat mix": 80.0, "coir": 76.0, "fibre mat": 60.0}


@pytest.fixture(scope="module")
def rack(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Rack]:
    """A finished trial of three media in four blocks, with a reading, a suspect and a wicked note."""
    made = Rack(tmp_path_factory.mktemp("rack"))
    cells = tuple((None, *[75.5] * 11) for _ in range(6))  # of the bed; too little of it in the first column
    note = a_note(made.folder, "blurred.jpg", camera=CAMERA, refuse="BLURRED")
    made.book.keep(score_note(note), note)
    made.shoot_all(COVERAGE, suspects=[Patch()], bed_share=81.25, bed_cells=cells)
    first = made.trays[0]
    made.book.add_readings(
        [NewReading(kind=ReadingKind.WEIGHT, value=812.5, taken_at=first.sown_at, tray_id=first.id)]
    )
    made.book.edit_tray(first.id, note='=HYPERLINK("http://example.org")')
    made.today("2026-03-12")
    made.book.answer_look(read_looks(made.book)[0], "seen")
    made.today("2026-04-30")
    yield made
    made.book.close()


@pytest.fixture(scope="module")
def exported(rack: Rack, tmp_path_factory: pytest.TempPathFactory) -> Path:
    return export(rack.book, tmp_path_factory.mktemp("out") / "open", CancelToken())


def rows(folder: Path, name: str) -> list[dict[str, str]]:
    with (folder / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def write(folder: Path, name: str, rows: list[dict[str, str]]) -> None:
    with (folder / f"{name}.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, list(rows[0]))
        writer.writeheader()
        writer.writerows(rows)


@pytest.mark.filterwarnings("ignore")
def test_the_package_is_valid_for_the_reference_library(exported: Path) -> None:
    """frictionless is the reference implementation of Data Package and Table Schema."""
    from frictionless import validate

    report = validate(str(exported / "datapackage.json"))

    assert report.valid, report.flatten(["name", "rowNumber", "fieldName", "note"])[:5]


def test_every_file_is_described_and_every_description_has_its_file(exported: Path) -> None:
    package = json.loads((exported / "datapackage.json").read_text(encoding="utf-8"))

    assert {resource["path"] for resource in package["resources"]} == {
        path.name for path in exported.glob("*.csv")
    }
    for resource in package["resources"]:
        headings = [field["name"] for field in resource["schema"]["fields"]]
        with (exported / resource["path"]).open(encoding="utf-8", newline="") as file:
            assert next(csv.reader(file)) == headings


def test_numbers_stand_in_the_files_as_in_the_book(rack: Rack, exported: Path) -> None:
    (reading,) = rows(exported, "readings")
    assert (reading["kind"], float(reading["value"]), reading["unit"]) == ("weight", 812.5, "g")
    assert len(rows(exported, "scores")) == len(rack.trays) == 12
    cells = rows(exported, "cells")[0]
    assert len(cells) == 1 + 72


def test_the_share_of_the_bed_stands_beside_that_of_the_inner_area(rack: Rack, exported: Path) -> None:
    assert {(row["bed_share_pct"], row["bed_uniformity_pct"]) for row in rows(exported, "scores")} == {
        ("81.25", "88")
    }
    cells = rows(exported, "bed_cells")
    assert len(cells) == len(rack.trays)
    assert [cells[0][f"row6_column{n:02}_pct"] for n in (1, 2, 12)] == ["", "75.5", "75.5"]
    assert {row["counted_of"] for row in rows(exported, "compared")} == {"growing bed"}


def test_an_export_from_before_the_bed_was_measured_is_read(exported: Path, tmp_path: Path) -> None:
    older = Path(shutil.copytree(exported, tmp_path / "older"))
    (older / "bed_cells.csv").unlink()
    with (older / "scores.csv").open(encoding="utf-8", newline="") as file:
        scores = list(csv.DictReader(file))
    kept = [name for name in scores[0] if not name.startswith("bed_")]
    with (older / "scores.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, kept, extrasaction="ignore")
        writer.writeheader()
        writer.writerows(scores)

    with Book.open(read_export(older, tmp_path / "book", CancelToken())) as book:
        score = book.score(book.photos()[0].id)

    assert score is not None
    assert (score.bed_share, score.bed_cells) == (None, None)
    assert score.reasons["bed_share"] is Reason.BEFORE_BED
    assert score.coverage is not None


def test_an_export_that_called_the_uncertainty_a_share_is_read(exported: Path, tmp_path: Path) -> None:
    older = Path(shutil.copytree(exported, tmp_path / "older"))
    scores = [{**row, "coverage_sd_points": "3.25"} for row in rows(exported, "scores")]
    with (older / "scores.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(name.replace("coverage_sd_points", "coverage_sd_pct") for name in scores[0])
        writer.writerows(row.values() for row in scores)

    with Book.open(read_export(older, tmp_path / "book", CancelToken())) as book:
        score = book.score(book.photos()[0].id)

    assert score is not None
    assert score.coverage_sd == 3.25


def test_text_that_a_spreadsheet_would_run_is_only_text(exported: Path) -> None:
    notes = [row["note"] for row in rows(exported, "trays") if row["note"]]

    assert notes == ['\'=HYPERLINK("http://example.org")']


# OWASP ASVS, 1.2.10 ("=", "+", "-", "@", tab, NUL); line ends and wide signs: common practice, from memory
@pytest.mark.parametrize("sign", [*"=+-@\t\0\r\n", *"\uff1d\uff0b\uff0d\uff20"])
def test_no_sign_that_begins_a_formula_somewhere_stands_first(sign: str) -> None:
    assert spreadsheet_safe(f"{sign}1+1") == f"'{sign}1+1"
    assert plain_text(f"'{sign}1+1") == f"{sign}1+1"


@given(st.text(max_size=40))
def test_safe_text_never_begins_a_formula_and_turns_back(text: str) -> None:
    safe = spreadsheet_safe(text)

    assert not safe.startswith(("=", "+", "-", "@", "\t", "\r"))
    assert plain_text(safe) == text


def test_nothing_tells_where_or_with_what_a_photo_was_taken(exported: Path) -> None:
    assert CAMERA not in "".join(path.read_text(encoding="utf-8") for path in exported.glob("*.*"))
    headings = {heading for path in exported.glob("*.csv") for heading in rows_headings(path)}

    assert not {name for name in headings if "gps" in name.lower() or "camera" in name.lower()}
    assert not (exported / "photos").exists()


def rows_headings(path: Path) -> list[str]:
    with path.open(encoding="utf-8", newline="") as file:
        return next(csv.reader(file))


def test_a_statistician_makes_the_verdict_again_with_other_tools(exported: Path) -> None:
    """Least squares by numpy with blocks as fixed effects, Dunnett's limit by scipy's multivariate t.

    Dunnett (1955), J. Am. Stat. Assoc. 50, 1096-1121: for p new media with equal numbers of trays the
    differences have the correlation 1/2.
    """
    compared = [row for row in rows(exported, "compared") if row["measure"] == "canopy score"]
    values = np.array([float(row["value"]) for row in compared])
    media = sorted({row["medium"] for row in compared} - {"peat mix"})
    blocks = sorted({row["block"] for row in compared})
    design = np.column_stack(
        [[row["block"] == block for row in compared] for block in blocks]
        + [[row["medium"] == medium for row in compared] for medium in media]
    ).astype(float)
    found, _, rank, _ = np.linalg.lstsq(design, values, rcond=None)
    df = len(values) - rank
    mse = float(((values - design @ found) ** 2).sum() / df)
    covariance = mse * np.linalg.inv(design.T @ design)
    shape = np.full((2, 2), 0.5) + 0.5 * np.eye(2)
    q = quantile_of_the_largest(shape, int(df))

    verdict = {row["medium"]: row for row in rows(exported, "verdicts") if row["measure"] == "canopy score"}
    for place, medium in enumerate(media, start=len(blocks)):
        told, se = verdict[medium], float(np.sqrt(covariance[place, place]))
        assert float(told["difference"]) == pytest.approx(found[place], abs=1e-9)
        assert float(told["df"]) == df
        assert float(told["mse"]) == pytest.approx(mse, rel=1e-9)
        assert float(told["q"]) == pytest.approx(q, abs=0.01)
        assert float(told["low"]) == pytest.approx(
            found[place] - float(told["q"]) * float(told["se"]), abs=1e-9
        )
        assert float(told["se"]) >= se - 1e-9  # the camera's part comes on top


def quantile_of_the_largest(shape: np.ndarray, df: int) -> float:
    low, high = 1.0, 6.0
    spread = stats.multivariate_t(shape=shape, df=df, seed=1)
    for _ in range(30):
        middle = (low + high) / 2
        if spread.cdf(np.full(len(shape), middle)) < 0.95:
            low = middle
        else:
            high = middle
    return low


# attributes that the checklist wants once or more, by section (MIAPPE data model, github.com/MIAPPE/MIAPPE)
WANTED = {
    "Investigation": {"Investigation title", "MIAPPE version"},
    "Study": {
        "Study title", "Start date of study", "Contact institution", "Geographic location (country)",
        "Experimental site name", "Description of the experimental design", "Observation unit description",
        "Description of growth facility",
    },
    "Data file": {"Data file link", "Data file description"},
    "Biological material": {"Biological material ID", "Organism"},
    "Environment": {"Environment parameter", "Environment parameter value"},
    "Experimental factor": {"Experimental Factor type", "Experimental Factor values"},
    "Observation unit": {"Observation unit ID", "Observation unit type"},
    "Observed variable": {"Variable ID", "Trait", "Method", "Scale"},
}  # fmt: skip


def test_the_checklist_of_the_trade_is_answered(exported: Path, rack: Rack) -> None:
    told: dict[str, set[str]] = {}
    for row in rows(exported, "miappe"):
        told.setdefault(row["section"], set()).add(row["attribute"])

    for section, attributes in WANTED.items():
        assert attributes <= told[section], section
    units = [row for row in rows(exported, "miappe") if row["attribute"] == "Observation unit ID"]
    assert len(units) == len(rack.trays)


def test_the_checklist_names_columns_and_files_that_are_there(exported: Path) -> None:
    headings = set(rows_headings(exported / "scores.csv"))
    told = rows(exported, "miappe")

    assert all((exported / row["value"]).is_file() for row in told if row["attribute"] == "Data file link")
    of_scores = {row["value"] for row in told if row["attribute"] == "Variable ID" and "_" in row["value"]}
    assert of_scores
    assert of_scores <= headings


def test_files_that_lie_there_are_not_mixed_with(rack: Rack, tmp_path: Path) -> None:
    (tmp_path / "mine.txt").write_text("mine")

    with pytest.raises(ExportWouldMix):
        export(rack.book, tmp_path, CancelToken())

    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]


def test_an_export_goes_into_the_empty_folder_itself_and_not_in_its_place(rack: Rack, tmp_path: Path) -> None:
    stick = tmp_path / "media" / "stick"  # a disk that is plugged in there cannot be taken away and made anew
    stick.mkdir(parents=True)
    stick.chmod(0o770)
    before = stick.stat()

    export(rack.book, stick, CancelToken())

    assert (stick.stat().st_ino, stick.stat().st_mode) == (before.st_ino, before.st_mode)
    assert is_export(stick)
    assert not [path.name for path in stick.iterdir() if path.name.startswith(".")]


def test_an_export_goes_into_the_empty_folder_one_stands_in(
    rack: Rack, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)

    export(rack.book, Path("."), CancelToken())

    assert Path("trays.csv").is_file()


def test_a_file_in_the_place_of_an_export_is_told_and_left_as_it_is(rack: Rack, tmp_path: Path) -> None:
    (tmp_path / "mine.txt").write_text("mine")

    with pytest.raises(NotWritable, match=r"mine\.txt"):
        export(rack.book, tmp_path / "mine.txt", CancelToken())

    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]
    assert (tmp_path / "mine.txt").read_text() == "mine"


def test_an_export_that_is_stopped_leaves_an_empty_folder_empty(rack: Rack, tmp_path: Path) -> None:
    token = CancelToken()

    with pytest.raises(Cancelled):
        export(rack.book, tmp_path, token, lambda *_: token.cancel())

    assert list(tmp_path.iterdir()) == []


def test_an_export_that_is_stopped_leaves_nothing(rack: Rack, tmp_path: Path) -> None:
    token = CancelToken()

    with pytest.raises(Cancelled):
        export(rack.book, tmp_path / "open", token, lambda *_: token.cancel())

    assert list(tmp_path.iterdir()) == []


# --- and in again


def test_an_export_of_an_imported_export_is_the_same(exported: Path, tmp_path: Path) -> None:
    with Book.open(read_export(exported, tmp_path / "book", CancelToken())) as book:
        again = export(book, tmp_path / "again", CancelToken())

    for path in exported.glob("*.csv"):
        assert (again / path.name).read_text("utf-8") == path.read_text("utf-8"), path.name


def test_shelf_life_taste_and_notes_of_words_alone_stand_in_the_files_and_come_back(
    rack: Rack, tmp_path: Path
) -> None:
    tray, at = rack.trays[0].id, rack.trays[0].sown_at + timedelta(days=10)
    rack.book.add_readings(
        [
            NewReading(kind=kind, value=value, taken_at=at, tray_id=tray)
            for kind, value in ((ReadingKind.SHELF_LIFE, 9.0), (ReadingKind.TASTE, 4.0))
        ]
    )
    rack.book.add_event([tray], EventKind.NOTE, at, "thin at the door")

    out = export(rack.book, tmp_path / "open", CancelToken())

    told = {(row["kind"], row["unit"]): float(row["value"]) for row in rows(out, "readings")}
    assert (told["shelf life", "d"], told["taste", "1-5"]) == (9.0, 4.0)
    with Book.open(read_export(out, tmp_path / "book", CancelToken())) as book:
        assert book.readings(tray) == rack.book.readings(tray)
        assert book.events(tray) == rack.book.events(tray)


def test_a_loggers_file_that_came_with_an_export_is_known_again(tmp_path: Path) -> None:
    begin = datetime(2026, 3, 1)
    logged = [
        NewReading(
            kind=ReadingKind.AIR_TEMPERATURE,
            value=20.0,
            taken_at=begin + timedelta(hours=n),
            shelf="A",
            source="logger",
        )
        for n in range(6)
    ]
    with an_empty_book(tmp_path / "book") as book, an_empty_book(tmp_path / "mine") as mine:
        book.keep_log("1" * 64, "march.csv", "{}", logged[:4])
        exported = export(book, tmp_path / "open", CancelToken())
        with Book.open(read_export(exported, tmp_path / "theirs", CancelToken())) as theirs:
            merge(mine, theirs, {}, "theirs", CancelToken())

        assert mine.keep_log("1" * 64, "march.csv", "{}", logged[:4]).same_file
        assert mine.keep_log("2" * 64, "until april.csv", "{}", logged).added == 2
        assert len(mine.readings(shelf="A")) == 6


def test_what_was_answered_to_the_look_list_stands_in_the_files_and_comes_back(
    rack: Rack, exported: Path, tmp_path: Path
) -> None:
    (answer,) = rack.book.look_answers()
    older = Path(shutil.copytree(exported, tmp_path / "older"))
    (older / "look_answers.csv").unlink()

    assert [row["answer"] for row in rows(exported, "look_answers")] == ["seen"]
    with Book.open(read_export(exported, tmp_path / "book", CancelToken())) as book:
        assert book.look_answers() == (answer,)
    with Book.open(read_export(older, tmp_path / "before", CancelToken())) as book:
        assert book.look_answers() == ()


def test_a_book_from_an_export_has_a_report_though_its_photos_did_not_come(
    exported: Path, tmp_path: Path
) -> None:
    with Book.open(read_export(exported, tmp_path / "book", CancelToken())) as book:
        scored = next(photo for photo in book.photos() if photo.coverage is not None)

        assert make_pictures(book, scored.id) == book.pictures(scored.id)
        assert read_report(book).blocks


def test_a_tray_that_stands_on_no_shelf_comes_back(tmp_path: Path) -> None:
    with an_empty_book(tmp_path / "old") as old:
        old.add_tray(a_tray(shelf=""))
        exported = export(old, tmp_path / "export", CancelToken())

        with Book.open(read_export(exported, tmp_path / "new", CancelToken())) as new:
            assert new.trays() == old.trays()


def test_what_may_be_nothing_may_be_so_in_the_book(tmp_path: Path) -> None:
    with an_empty_book(tmp_path / "book") as book, book.writing() as db:
        for table in TABLES:
            never = {column.name for column in db.table(table.table).columns if column.notnull}
            texts = {column.name for column in table.columns if column.kind is Kind.TEXT}
            nothing = {name for name in texts & MAY_BE_NOTHING if (table.table, name) not in NEVER_NOTHING}

            assert nothing == texts - never, table.table


def test_an_export_comes_into_another_book(exported: Path, rack: Rack, tmp_path: Path) -> None:
    with (
        an_empty_book(tmp_path / "mine") as book,
        Book.open(read_export(exported, tmp_path / "theirs", CancelToken())) as theirs,
    ):
        answers = dict.fromkeys(same_names(book, theirs), Answer.SAME)
        merge(book, theirs, answers, "theirs", CancelToken())

        assert [tray.code for tray in book.trial_trays("Mat against peat")] == [
            tray.code for tray in rack.trays
        ]
        assert book.trays(growing=False)[0].note == '=HYPERLINK("http://example.org")'


def test_an_export_of_years_is_never_held_whole(exported: Path, tmp_path: Path) -> None:
    long = tmp_path / "long"
    shutil.copytree(exported, long)
    reasons = json.dumps({"spread": 40_000 * "x"})
    for name, more in (("scores", {"reasons_json": reasons}), ("cells", {}), ("bed_cells", {})):
        first = rows(long, name)[0]
        many = [first | more | {"score_id": str(n)} for n in range(1, 301)]
        if name == "scores":  # one photo by so many versions of the method
            many = [row | {"method": f"learned {row['score_id']}"} for row in many]
        write(long, name, many)

    tracemalloc.start()
    read_export(long, tmp_path / "book", CancelToken())
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()

    assert peak < 0.5 * (long / "scores.csv").stat().st_size


def test_a_folder_of_something_else_is_no_export(tmp_path: Path) -> None:
    assert not is_export(tmp_path)
    with pytest.raises(NotAnExport, match="datapackage"):
        read_export(tmp_path, tmp_path / "book", CancelToken())


@pytest.mark.parametrize(
    ("file", "old", "new", "said"),
    [
        ("trays.csv", "sowing_rate_g", "sowing_rate", "no column sowing_rate_g"),
        ("readings.csv", "812.5", "eight hundred", "readings.csv, line 2, value"),
        ("readings.csv", "812.5", "nan", "is no number"),
        ("photos.csv", ",.jpg,", ",/../x,", "no kind of file"),
        ("scores.csv", ",true,", ",perhaps,", "neither true nor false"),
        ("trays.csv", "\n1,", "\n1,extra,", "too many or too few"),
        (
            "trays.csv",
            "\n1,",
            "\n9223372036854775808,",
            "trays.csv, line 2, tray_id: 9223372036854775808 is no",
        ),
        ("scores.csv", '"[[30.0,', '"' + "[" * 100_000 + "[[30.0,", "lists within lists"),
        ("cells.csv", "score_id", "score", "no column score_id"),
        ("cells.csv", ",60.6,", ",,", "cells.csv, line 3"),
        ("bed_cells.csv", "75.5", "175.5", "bed_cells.csv, line 2: a share is 0 to 100 %"),
        ("plans.csv", "{", "[", "plans.csv, line 2"),
        ("readings.csv", ",weight,", ",weigth,", "readings.csv, reading_id 1: 'weigth' is no kind"),
        ("plans.csv", "as good", "as nice", "plans.csv, plan_id 1"),
        ("draws.csv", "places", "plates", "draws.csv, draw_id 1"),
        ("scores.csv", '"[[30.0,', '"[[', "scores.csv, score_id 1"),
    ],
)
def test_a_cell_that_does_not_fit_is_named(
    exported: Path, tmp_path: Path, file: str, old: str, new: str, said: str
) -> None:
    changed = Path(shutil.copytree(exported, tmp_path / "changed"))
    text = (changed / file).read_text("utf-8")
    assert old in text
    (changed / file).write_text(text.replace(old, new, 1), "utf-8", newline="")

    with pytest.raises(NotAnExport, match=said):
        read_export(changed, tmp_path / "book", CancelToken())


def test_how_urgent_is_told_by_the_numbers_that_stand_there() -> None:
    (table,) = [one for one in TABLES if one.table == "look_entry"]
    (urgency,) = [one for one in table.columns if one.name == "urgency"]

    assert urgency.about == ", ".join(f"{one:d} {one.words}" for one in Urgency)


def test_rows_that_belong_to_nothing_are_refused(exported: Path, tmp_path: Path) -> None:
    changed = Path(shutil.copytree(exported, tmp_path / "changed"))
    lines = (changed / "trays.csv").read_text("utf-8").splitlines(keepends=True)
    (changed / "trays.csv").write_text("".join(lines[:-1]), "utf-8", newline="")

    with pytest.raises(NotAnExport, match="do not belong together"):
        read_export(changed, tmp_path / "book", CancelToken())


@settings(max_examples=30, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(drawn=st.data())
def test_files_changed_at_random_are_taken_or_refused_and_nothing_else(
    drawn: st.DataObject, exported: Path, tmp_path: Path
) -> None:
    changed = Path(tempfile.mkdtemp(dir=tmp_path))
    shutil.copytree(exported, changed / "open")
    path = drawn.draw(st.sampled_from(sorted((changed / "open").glob("*.csv"))))
    whole = path.read_bytes()
    at = drawn.draw(st.integers(0, len(whole)))
    path.write_bytes(
        whole[:at] + drawn.draw(st.binary(max_size=6)) + whole[at + drawn.draw(st.integers(0, 3)) :]
    )

    try:
        with Book.open(read_export(changed / "open", changed / "book", CancelToken())) as book:
            book.tiles()
    except NotAnExport:
        pass


def test_top_views_that_the_cache_has_lost_are_made_again(
    rack: Rack, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shutil.rmtree(rack.book.folder / "cache")

    def make(book: Book, photo: PhotoId) -> None:
        pictures = book.pictures(photo)
        assert pictures is not None
        pictures.top_view.parent.mkdir(parents=True, exist_ok=True)
        pictures.top_view.write_bytes(b"a top view")

    monkeypatch.setattr(data.intake, "make_pictures", make)
    told: list[tuple[int, int]] = []
    export(
        rack.book,
        tmp_path / "open",
        CancelToken(),
        lambda done, all_: told.append((done, all_)),
        top_views=True,
    )

    assert len(list((tmp_path / "open" / "top_views").iterdir())) == len(rack.trays)
    assert told[-1][0] == told[-1][1]


def test_cancel_is_heard_within_a_long_table(rack: Rack, tmp_path: Path) -> None:
    class Patient(CancelToken):
        looks = 0

        def check(self) -> None:
            self.looks += 1
            super().check()

    short, long = Patient(), Patient()
    export(rack.book, tmp_path / "short", short)
    at = rack.trays[0].sown_at
    rack.book.add_readings(
        [
            NewReading(kind=ReadingKind.WEIGHT, value=700.0 + n, taken_at=at, tray_id=rack.trays[0].id)
            for n in range(1000)
        ]
    )
    export(rack.book, tmp_path / "long", long)

    assert long.looks >= short.looks + 4
