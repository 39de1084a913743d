"""The command line as a person uses it: what it prints, what it writes, how it ends."""

import argparse
import dataclasses
import json
import os
import signal
import subprocess
import sys
from pathlib import Path

import cv2
import numpy as np
import pytest

import gui.commands.scoring
import vision.learned
from data.openfiles.tables import TABLES
from gui.command import main
from gui.commands.commandlist import COMMANDS
from gui.commands.scoresheet import NUMBERS
from gui.commands.scoring import jobs_of
from vision.methods import METHODS
from vision.reason import Reason

ROOT = Path(__file__).parents[2]
PROMISED = {
    "photo",
    "refused",
    "tag_number",
    "corners_px",
    "corners_from",
    "frame_confidence",
    "coverage_pct",
    "green_pct",
    "pale_pct",
    "red_pct",
    "cells_pct",
    "uniformity_pct",
    "gap_pct",
    "suspects",
    "quality",
    "method",
    "seconds",
    "missing",
}


def a_crop(path: Path, size: tuple[int, int] = (300, 480)) -> str:
    """A close-up of broad green stripes on brown, five parts in eight green, with some grain, as a file."""
    rng = np.random.default_rng(4)
    picture = np.full((*size, 3), (60, 80, 100), np.uint8)  # blue, green, red: brown
    for column in range(0, size[1], 120):
        picture[:, column : column + 75] = (50, 140, 70)
    grainy = np.clip(picture + rng.normal(0, 6, (*size, 1)), 0, 255).astype(np.uint8)
    cv2.imwrite(str(path), grainy)
    return str(path)


def a_text(path: Path) -> str:
    path.write_text("no picture at all", encoding="utf-8")
    return str(path)


def told(capsys) -> list[dict]:
    return json.loads(capsys.readouterr().out)


def nulls(told: dict) -> set[str]:
    """Keys that are null, those of inner objects with a dot."""
    found = {key for key, value in told.items() if value is None and key != "refused"}
    for outer in ("quality", "colour"):
        inner = told[outer] or {}
        found |= {f"{outer}.{key}" for key, value in inner.items() if value is None}
    for row, cells in enumerate(told["bed_cells_pct"] or ()):
        found |= {f"bed_cells_pct.{row}.{column}" for column, cell in enumerate(cells) if cell is None}
    return found


def test_a_close_up_is_scored_with_every_promised_key_and_no_null_without_a_reason(tmp_path, capsys):
    code = main(["score", "--json", "--whole", a_crop(tmp_path / "a.png")])

    (one,) = told(capsys)
    assert code == 0
    assert set(one) >= PROMISED
    assert one["refused"] is None
    assert one["corners_from"] == "whole"
    assert one["coverage_pct"] == pytest.approx(62.5, abs=4)
    assert [len(row) for row in one["cells_pct"]] == [12] * 6
    assert nulls(one) == set(one["missing"])


def test_without_a_scale_lengths_and_areas_are_null(tmp_path, capsys):
    main(["score", "--json", "--whole", a_crop(tmp_path / "a.png")])

    (one,) = told(capsys)
    for key in ("corners_px", "gap_pct", "gaps", "edge_deficit_points", "gradient_x_points_per_100mm"):
        assert one[key] is None
        assert one["missing"][key] == Reason.NO_SCALE


def test_score_and_export_spell_a_slope_alike():
    exported = {column.heading for table in TABLES for column in table.columns}

    slopes = {key for key in NUMBERS if "gradient" in key}
    assert len(slopes) == 2
    assert slopes <= exported


def test_a_refused_photo_has_all_keys_too_and_is_named_on_stderr(tmp_path, capsys):
    code = main(["score", "--json", a_text(tmp_path / "notes.jpg")])

    out, err = capsys.readouterr()
    (one,) = json.loads(out)
    assert code == 1
    assert set(one) >= PROMISED
    assert one["refused"] == Reason.NO_PICTURE
    assert nulls(one) == set(one["missing"])
    assert err == f"evenstand: {tmp_path / 'notes.jpg'} not used: {Reason.NO_PICTURE}\n"


def test_one_bad_file_does_not_stop_the_batch_and_the_order_is_kept(tmp_path, capsys):
    photos = [
        a_crop(tmp_path / "3.png"),
        a_text(tmp_path / "1.jpg"),
        str(tmp_path / "none.jpg"),
        a_crop(tmp_path / "2.png"),
    ]

    code = main(["score", "--json", "--whole", *photos])

    rows = told(capsys)
    assert code == 1
    assert [row["photo"] for row in rows] == photos
    assert [row["refused"] for row in rows] == [None, Reason.NO_PICTURE, Reason.UNREADABLE, None]


def test_a_mistake_of_ours_in_one_photo_is_reported_and_the_others_go_on(tmp_path, capsys, monkeypatch):
    good = gui.commands.scoring._scored

    def fails_on_b(job, wish, tissue):
        if job.stem == "b":
            raise IndexError("cell 73\nof 72")
        return good(job, wish, tissue)

    monkeypatch.setattr(gui.commands.scoring, "_scored", fails_on_b)

    code = main(
        ["score", "--json", "--whole", *(a_crop(tmp_path / name) for name in ("a.png", "b.png", "c.png"))]
    )

    out, err = capsys.readouterr()
    assert code == 1
    assert [row["refused"] for row in json.loads(out)] == [None, Reason.OUR_MISTAKE, None]
    assert "evenstand: bug: IndexError: cell 73 of 72 (test_command.py, line" in err


def test_the_method_can_be_chosen_and_is_named_with_every_score(tmp_path, capsys):
    photo = a_crop(tmp_path / "a.png")

    main(["score", "--json", "--whole", photo])
    unasked = told(capsys)
    main(["score", "--json", "--whole", "--method", "plain", photo])
    plain = told(capsys)

    assert unasked[0]["method"].startswith("learned 5 / ")
    assert plain[0]["method"].startswith("plain 1 / ")


def test_the_methods_offered_are_those_there_are():
    (score,) = (command for command in COMMANDS if command.name == "score")
    words = argparse.ArgumentParser()
    score.options(words)

    (choices,) = (action.choices for action in words._actions if action.dest == "method")

    assert tuple(choices) == METHODS


def test_a_tray_is_scored_with_how_far_its_coverage_may_be_off(capsys):
    main(["score", "--json", str(ROOT / "tests/photos/station.jpg")])

    (tray,) = told(capsys)

    assert 0 < tray["coverage_sd_points"] < 10
    assert "coverage_sd_points" not in tray["missing"]


def test_that_the_plain_method_stands_in_is_said_once_and_with_every_photo(tmp_path, capsys, monkeypatch):
    monkeypatch.setattr(vision.learned, "MODEL", tmp_path / "gone.onnx")
    photos = [a_crop(tmp_path / f"{name}.png") for name in "ab"]

    code = main(["score", "--json", "--whole", *photos])

    printed = capsys.readouterr()
    assert code == 0
    assert printed.err.count("install the program again") == 1
    assert all(photo["notes"] == [Reason.PLAIN_ONLY] for photo in json.loads(printed.out))


def test_what_is_doubtful_about_a_score_is_said_beside_the_table(tmp_path, capsys):
    picture = cv2.imread(str(ROOT / "tests/photos/top_young.jpg"))
    pale = np.rint(0.2 * picture + 0.8 * picture.mean(axis=2, keepdims=True)).astype(np.uint8)
    cv2.imwrite(str(tmp_path / "pale.png"), pale)

    code = main(
        ["score", "--whole", "--method", "plain", a_crop(tmp_path / "a.png"), str(tmp_path / "pale.png")]
    )

    printed = capsys.readouterr()
    assert code == 0
    assert f"{tmp_path / 'pale.png'}: {Reason.FADED}" in printed.err
    assert f"{tmp_path / 'a.png'}:" not in printed.err


def test_labels_have_the_pictures_own_size_and_its_coverage(tmp_path, capsys):
    main(["score", "--json", "--whole", "--labels", str(tmp_path / "out"), a_crop(tmp_path / "a.png")])

    labels = cv2.imread(str(tmp_path / "out" / "a_labels.png"), cv2.IMREAD_UNCHANGED)
    assert labels.shape == (300, 480)
    share = 100 * np.isin(labels, (4, 5, 6)).mean()
    assert share == pytest.approx(told(capsys)[0]["coverage_pct"], abs=1e-3)


def test_an_overlay_is_a_picture_of_the_top_view(tmp_path, capsys):
    main(["score", "--whole", "--overlay", str(tmp_path / "deep" / "out"), a_crop(tmp_path / "a.png")])

    assert cv2.imread(str(tmp_path / "deep" / "out" / "a_overlay.jpg")).shape == (300, 480, 3)
    assert [entry.name for entry in (tmp_path / "deep" / "out").iterdir()] == ["a_overlay.jpg"]


def test_two_photos_of_one_name_do_not_overwrite_each_others_labels(tmp_path, capsys):
    for folder in ("one", "two"):
        (tmp_path / folder).mkdir()
    photos = [a_crop(tmp_path / "one" / "a.png"), a_crop(tmp_path / "two" / "A.png")]

    main(["score", "--whole", "--labels", str(tmp_path / "out"), *photos])

    assert sorted(entry.name for entry in (tmp_path / "out").iterdir()) == ["A-2_labels.png", "a_labels.png"]
    assert f"{photos[1]}: its pictures are called A-2_..." in capsys.readouterr().err


def test_a_refused_photo_leaves_no_labels(tmp_path, capsys):
    main(["score", "--labels", str(tmp_path / "out"), a_text(tmp_path / "a.jpg")])

    assert list((tmp_path / "out").iterdir()) == []


def test_a_folder_stands_for_its_pictures_by_name_and_not_for_what_we_wrote_ourselves(tmp_path):
    (tmp_path / "sub").mkdir()
    for name in ("b.JPG", "a.heic", "c.txt", ".hidden.jpg", "b_labels.png", "b_overlay.jpg", "sub/b.png"):
        (tmp_path / name).touch()

    jobs = jobs_of([str(tmp_path)])

    assert [Path(job.photo).name for job in jobs] == ["a.heic", "b.JPG", "b.png"]
    assert [job.stem for job in jobs] == ["a", "b", "b-2"]


def test_a_folder_without_pictures_is_refused_by_name(tmp_path, capsys):
    code = main(["score", "--json", str(tmp_path)])

    (one,) = told(capsys)
    assert code == 1
    assert (one["photo"], one["refused"]) == (str(tmp_path), Reason.NO_PICTURES)


def test_labels_that_cannot_be_written_end_with_a_sentence_and_nothing_half_written(tmp_path, capsys):
    (tmp_path / "out" / "a_labels.png").mkdir(parents=True)  # a folder stands where the file should go

    code = main(["score", "--whole", "--labels", str(tmp_path / "out"), a_crop(tmp_path / "a.png")])

    assert code == 1
    assert "a_labels.png cannot be written" in capsys.readouterr().err
    assert [entry.name for entry in (tmp_path / "out").iterdir()] == ["a_labels.png"]


def test_a_file_where_the_folder_should_be_is_refused(tmp_path, capsys):
    code = main(["score", "--labels", a_text(tmp_path / "out"), "a.jpg"])

    assert code == 1
    assert "no folder can be made" in capsys.readouterr().err


def test_the_table_has_units_and_one_aligned_line_a_photo(tmp_path, capsys):
    main(["score", "--whole", a_crop(tmp_path / "a.png"), a_text(tmp_path / "b.jpg")])

    names, units, first, second = capsys.readouterr().out.splitlines()
    assert names.split()[:4] == ["photo", "tag", "coverage", "green"]
    assert set(units.split()) == {"%"}
    end = names.index("coverage") + len("coverage")
    assert float(first[:end].split()[-1]) == pytest.approx(62.5, abs=4)
    assert second[:end].endswith("not used")


def test_corners_that_are_not_sure_are_said_to_be_so_in_the_table(capsys):
    main(
        [
            "score",
            str(ROOT / "tests" / "photos" / "handheld.jpg"),
            str(ROOT / "tests" / "photos" / "station.jpg"),
        ]
    )

    *_, by_hand, at_the_station = capsys.readouterr().out.splitlines()
    unsure = float(by_hand.replace(" unsure", "").split()[-1]) < 0.5
    assert by_hand.endswith("unsure") == unsure
    assert at_the_station.endswith(tuple("0123456789"))


def test_a_name_that_would_steer_the_terminal_is_printed_harmless(tmp_path, capsys):
    main(["score", a_text(tmp_path / "\x1b[2Jgone.jpg")])

    out, err = capsys.readouterr()
    assert "\x1b" not in out + err


def test_ctrl_c_stops_without_a_half_written_list(tmp_path, capsys, monkeypatch):
    def interrupted(*_):
        raise KeyboardInterrupt

    monkeypatch.setattr(gui.commands.scoring, "_tell_refusal", interrupted)

    code = main(["score", "--json", "--whole", a_crop(tmp_path / "a.png")])

    out, err = capsys.readouterr()
    assert (code, out, err) == (130, "", "evenstand: stopped.\n")


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="a disk that is always full")
@pytest.mark.parametrize("buffered", [True, False])
def test_a_list_that_finds_no_room_on_the_disk_ends_with_a_sentence(tmp_path, buffered):
    with Path("/dev/full").open("w") as full:
        ended = verdict_printed_to(full, tmp_path, buffered=buffered)

    assert ended.returncode == 1
    assert ended.stderr.startswith("evenstand: what was printed could not be written: No space left")
    assert ended.stderr.count("\n") == 1


@pytest.mark.parametrize("buffered", [True, False])
def test_a_reader_that_has_gone_away_is_no_matter_for_words(tmp_path, buffered):
    reading, writing = os.pipe()
    os.close(reading)
    with os.fdopen(writing, "w") as pipe:
        ended = verdict_printed_to(pipe, tmp_path, buffered=buffered)

    assert (ended.returncode, ended.stderr) == (1, "")


def verdict_printed_to(out, folder, *, buffered):
    """The verdict on a small table, printed by a process of its own."""
    table = folder / "t.csv"
    table.write_text("block,medium,value\n1,peat,80\n1,coir,78\n2,peat,82\n2,coir,79\n")
    words = ["verdict", "--table", str(table), "--trusted", "peat", "--margin", "5"]
    surroundings = {name: value for name, value in os.environ.items() if name != "PYTHONUNBUFFERED"}
    return subprocess.run(
        [sys.executable, *([] if buffered else ["-u"]), "-m", "gui", *words],
        cwd=ROOT, env=surroundings, stdout=out, stderr=subprocess.PIPE, text=True, check=False,
    )  # fmt: skip


@pytest.mark.parametrize(
    "words",
    [["score"], ["score", "a.jpg", "--colour"], ["weigh"]],
    ids=["no photo", "no option", "no command"],
)
def test_wrong_use_ends_with_two(words, capsys):
    with pytest.raises(SystemExit) as ended:
        main(words)

    assert ended.value.code == 2
    assert "usage: evenstand" in capsys.readouterr().err


def test_every_command_is_in_the_help_with_one_line(capsys):
    with pytest.raises(SystemExit):
        main(["--help"])

    out = capsys.readouterr().out
    assert all(command.name in out for command in COMMANDS)
    assert all(command.about.endswith(".") for command in COMMANDS)


def loaded_after(code: str) -> set[str]:
    """Top-level modules that a fresh Python has loaded after `code`."""
    told = subprocess.run(
        [sys.executable, "-c", f"{code}\nimport sys\nprint(*sorted(sys.modules))"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    return {name.partition(".")[0] for name in told.stdout.split()}


def test_the_help_loads_nothing_heavy():
    assert not loaded_after("from gui.command import parser; parser().format_help()") & {
        "PySide6",
        "cv2",
        "numpy",
        "PIL",
        "sqlite_utils",
    }


def test_scoring_loads_no_window_and_no_slow_library(tmp_path):
    photo = a_crop(tmp_path / "a.png")
    code = (
        f"from gui.command import main; main(['score', '--whole', '--overlay', {str(tmp_path)!r}, {photo!r}])"
    )

    assert not loaded_after(code) & {"PySide6", "scipy", "skimage", "pyqtgraph", "sqlite_utils", "pandas"}


def test_a_foreign_package_in_place_of_ours_is_told_and_nothing_is_run(tmp_path):
    (tmp_path / "data").mkdir()
    (tmp_path / "data" / "__init__.py").write_text("raise SystemExit('the stranger was loaded')", "utf-8")
    first = f"import sys; sys.path.insert(0, {str(tmp_path)!r})"
    code = f"{first}; from gui.command import main; sys.exit(main(['score', 'a']))"

    ended = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True)

    assert ended.returncode == 2
    assert "the folder 'data' beside this program is hidden" in ended.stderr


@pytest.mark.parametrize(
    "words", [["intake", "", "--book", "b"], ["look", "--book", ""], ["export", " ", "--book", "b"]]
)
def test_an_empty_name_is_not_the_folder_one_stands_in(
    words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as ended:
        main(words)
    assert ended.value.code == 2
    assert "this name is empty" in capsys.readouterr().err


@pytest.mark.skipif(os.name == "nt", reason="signals of POSIX")
def test_ctrl_c_while_modules_come_in_ends_without_a_list_of_them():
    code = """if True:
        import os, runpy, signal, sys
        class Finder:
            def find_spec(self, name, path=None, target=None):
                if name == "gui.commands.commandlist":
                    os.kill(os.getpid(), signal.SIGINT)
        sys.meta_path.insert(0, Finder())
        sys.argv = ["evenstand", "--help"]
        runpy.run_module("gui", run_name="__main__")
    """
    ended = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, timeout=20, check=False
    )

    assert (ended.returncode, ended.stderr) == (-signal.SIGINT, "")


def test_ctrl_c_in_the_middle_of_making_a_class_is_told_as_stopped(monkeypatch, capsys):
    class Late:
        def __set_name__(self, owner, name):
            raise KeyboardInterrupt

    def run(_asked):
        type("Made", (), {"field": Late()})

    look = next(command for command in COMMANDS if command.name == "look")
    monkeypatch.setattr("gui.command.COMMANDS", [dataclasses.replace(look, run=run)])

    assert main(["look", "--book", "any"]) == 130
    assert capsys.readouterr().err == "evenstand: stopped.\n"


def test_of_a_book_in_a_folder_its_original_photos_alone_are_scored(tmp_path):
    for name in ("book/book.sqlite", "book/photos/ab/cd.jpg", "book/cache/ab/cd-top.jpg"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_bytes(b"")

    assert [Path(job.photo).name for job in jobs_of([str(tmp_path)])] == ["cd.jpg"]
