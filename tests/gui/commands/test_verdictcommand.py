"""`verdict` on the command line: the promised keys, the exit codes, a sentence for every bad table."""

import json
from pathlib import Path
from typing import Any

import pytest

from data.readings import NewReading, ReadingKind
from gui.command import main
from tests.data.builders import a_tray
from tests.data.trialrack import TRIAL, WORSE, Rack
from tests.made.books import an_empty_book
from tests.published.trialdata import in_blocks

PROMISED = {"trusted", "margin", "lower_is_better", "df", "mse", "q", "so_far", "media", "missing"}
OF_A_MEDIUM = {
    "medium", "n", "mean", "difference", "se", "low", "high", "outcome", "rank_low", "rank_high",
}  # fmt: skip


def a_file(folder: Path, rows: list[tuple[object, ...]], heading: str = "block,medium,value") -> str:
    file = folder / "trays.csv"
    file.write_text("\n".join([heading, *(",".join(map(str, row)) for row in rows)]), encoding="utf-8")
    return str(file)


def asked(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, Any, str]:
    """Exit code, the JSON list, what stands on stderr."""
    code = main(["verdict", *words, "--json"])
    out, err = capsys.readouterr()
    return code, json.loads(out), err


@pytest.fixture
def immer(tmp_path: Path) -> str:
    return a_file(tmp_path, [tuple(row) for row in in_blocks()])


# `immer` of R's MASS against M, margin 10, one-sided 95 %: P shown, S not shown (R multcomp; q recomputed)
def test_a_table_gives_every_promised_key(immer: str, capsys: pytest.CaptureFixture[str]) -> None:
    code, (verdict,), err = asked(capsys, "--table", immer, "--trusted", "M", "--margin", "10")

    assert (code, err) == (0, "")
    assert verdict.keys() >= PROMISED
    assert all(medium.keys() >= OF_A_MEDIUM for medium in verdict["media"])
    assert (verdict["df"], verdict["so_far"], verdict["lower_is_better"]) == (20, False, False)
    assert verdict["mse"] == pytest.approx(110.825442)
    assert verdict["q"] == pytest.approx(2.304428, abs=1e-5)
    media = {medium["medium"]: medium for medium in verdict["media"]}
    assert media["P"]["low"] == pytest.approx(-5.856, abs=1e-3)
    assert {name: medium["outcome"] for name, medium in media.items()} == {
        "M": None, "S": "not_shown", "V": "as_good", "T": "better", "P": "as_good",
    }  # fmt: skip
    assert (media["T"]["rank_low"], media["T"]["rank_high"]) == (1, 2)
    of_a_difference = ("difference", "se", "q", "df", "low", "high", "outcome")
    assert all(media["M"][key] is None and media["M"]["missing"][key] for key in of_a_difference)


def test_a_share_of_a_mean_that_nobody_weighed_is_no_margin(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rack = Rack(tmp_path)
    tray = rack.tray("coir")
    weighed = NewReading(kind=ReadingKind.FRESH_MASS, value=90.0, taken_at=tray.sown_at, tray_id=tray.id)
    rack.book.add_readings([weighed])
    rack.book.close()

    assert main(["verdict", "--book", str(rack.book.folder)]) == 0

    out = capsys.readouterr().out
    assert ", yield: against peat mix\n" in out
    assert "margin 0.0" not in out


def test_sentences_stand_below_the_table(immer: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["verdict", "--table", immer, "--trusted", "m", "--margin", "10"]) == 0

    out = capsys.readouterr().out
    assert "T is better than M: the difference is +23.8 (interval +9.8 to +37.8)." in out
    assert " p " not in out


def test_lower_is_better_turns_the_outcome_alone(immer: str, capsys: pytest.CaptureFixture[str]) -> None:
    usual = asked(capsys, "--table", immer, "--trusted", "M", "--margin", "10")[1][0]
    turned = asked(capsys, "--table", immer, "--trusted", "M", "--margin", "10", "--lower-is-better")[1][0]

    numbers = [[m[key] for key in ("mean", "difference", "low", "high")] for m in usual["media"]]
    assert numbers == [[m[key] for key in ("mean", "difference", "low", "high")] for m in turned["media"]]
    assert [m["outcome"] for m in turned["media"]][3] == "not_shown"


# --- bad tables


def trial(*blocks: tuple[object, object]) -> list[tuple[object, ...]]:
    return [
        (number, medium, value)
        for number, values in enumerate(blocks, 1)
        for medium, value in zip(("peat", "mat"), values, strict=True)
    ]


FAIR = trial((80, 78), (90, 85), (85, 84))
BAD: dict[str, tuple[list[tuple[object, ...]], int, str]] = {
    "one tray a medium": (trial((80, 78)), 0, "numbers, no verdict"),
    "all trays lost": (trial(("", ""), ("", "")), 1, "no tray has one"),
    "trusted medium missing": ([row for row in FAIR if row[1] != "peat"], 1, "No tray of the trusted medium"),
    "trusted trays all lost": (trial(("", 78), ("", 85)), 1, "No tray of the trusted medium"),
    "only the trusted medium": ([row for row in FAIR if row[1] == "peat"], 1, "Only the trusted medium"),
    "text in a value": ([*FAIR, (4, "mat", "good")], 1, '"good" is no number'),
    "media in different blocks": ([(1, "peat", 80), (1, "peat", 82), (2, "mat", 70)], 1, "share no block"),
    "numbers without spread": (trial((80, 78), (90, 88), (85, 83)), 0, "do not differ at all"),
    "a medium renamed half way": (
        [*FAIR[:4], (3, "peat", 85), (3, "hemp mat", 84), (4, "peat", 81), (4, "hemp mat", 80)],
        0,
        "is it one medium under two names?",
    ),
}


@pytest.mark.parametrize("name", BAD)
def test_a_bad_table_gets_a_sentence_and_no_wrong_number(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rows, expected, sentence = BAD[name]
    words = ["--table", a_file(tmp_path, rows), "--trusted", "peat", "--margin", "5"]

    code, listed, err = asked(capsys, *words)
    main(["verdict", *words])

    shown = capsys.readouterr()
    assert code == expected
    assert sentence in shown.out + shown.err
    assert bool(err) == (code != 0)
    for verdict in listed:
        assert not {"NaN", "Infinity"} & set(json.dumps(verdict).split())
        for key in ("df", "mse", "q"):
            assert (verdict[key] is None) == (key in verdict["missing"])
        for medium in verdict["media"]:
            for key in ("mean", "difference", "se", "low", "high", "outcome", "rank_low", "rank_high"):
                assert (medium[key] is None) == (key in medium["missing"])


def test_a_margin_of_zero_is_allowed_and_named(immer: str, capsys: pytest.CaptureFixture[str]) -> None:
    code, (verdict,), _ = asked(capsys, "--table", immer, "--trusted", "M", "--margin", "0")

    assert code == 0
    assert any("The margin is zero" in note for note in verdict["notes"])
    assert "as_good" not in {medium["outcome"] for medium in verdict["media"]}


@pytest.mark.parametrize(
    "words",
    [
        (),
        ("--trusted", "M"),
        ("--margin", "5"),
        ("--trusted", "M", "--margin", "-1"),
        ("--trusted", "M", "--margin", "nan"),
        ("--trusted", "M", "--margin", "much"),
        ("--trusted", "M", "--margin", "1,500"),  # one and a half, or fifteen hundred?
        ("--trusted", "M", "--margin", "1_0"),
        ("--trusted", "M", "--margin", "5", "--book", "there"),
    ],
)
def test_wrong_use_ends_with_2(
    immer: str, words: tuple[str, ...], capsys: pytest.CaptureFixture[str]
) -> None:
    try:
        code = main(["verdict", "--table", immer, *words])
    except SystemExit as ended:
        code = int(ended.code or 0)

    assert code == 2
    assert capsys.readouterr().err


def test_a_folder_in_the_place_of_a_table_is_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)

    code, listed, err = asked(capsys, "--table", ".", "--trusted", "peat", "--margin", "0,5")

    assert (code, listed) == (1, [])
    assert err.startswith("evenstand: . cannot be read")


def test_a_file_that_is_no_table_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, listed, err = asked(
        capsys, "--table", str(tmp_path / "none.csv"), "--trusted", "peat", "--margin", "5"
    )

    assert (code, listed) == (1, [])
    assert "cannot be read" in err


def test_a_folder_that_is_no_book_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, listed, err = asked(capsys, "--book", str(tmp_path))

    assert (code, listed) == (1, [])
    assert err.startswith("evenstand: ")


def test_a_book_gives_the_same_keys_for_each_crop_and_measure(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rack = Rack(tmp_path)
    rack.shoot_all(WORSE, leave=[rack.tray("coir").code])
    rack.book.close()

    code, (verdict,), err = asked(capsys, "--book", str(rack.book.folder))

    assert (code, err) == (0, "")
    assert verdict.keys() >= PROMISED | {"crop", "measure"}
    assert (verdict["crop"], verdict["measure"], verdict["margin"]) == ("broccoli", "canopy score", 5.0)
    assert all(medium.keys() >= OF_A_MEDIUM for medium in verdict["media"])
    assert [number["value"] is None for number in verdict["numbers"]].count(True) == 1
    assert main(["verdict", "--book", str(rack.book.folder)]) == 0
    assert "fibre mat is worse than peat mix by more than the margin" in capsys.readouterr().out


def test_what_else_tells_media_apart_is_told_once_a_trial_and_as_json(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rack = Rack(tmp_path)
    rack.shoot_all(WORSE)
    rack.note_slid({"peat mix": 0, "fibre mat": 3})
    rack.book.close()

    _, (verdict,), _ = asked(capsys, "--book", str(rack.book.folder))

    told = next(words for words in verdict["noted"] if words.startswith("Slid"))
    assert "Slid at the cut: fibre mat +75.0 points against peat mix" in told
    main(["verdict", "--book", str(rack.book.folder)])
    out = capsys.readouterr().out
    assert out.count(told) == 1
    assert "\nMat against peat, what else tells the media apart" in out


def test_what_differed_unplanned_is_told_in_words_and_by_name(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rack = Rack(tmp_path)
    rack.shoot_all(WORSE)
    for tray in rack.trays:
        if tray.medium == "coir":
            rack.book.edit_tray(tray.id, watering="top", light="lamp")
        else:
            rack.book.edit_tray(tray.id, light="window")
    rack.book.close()

    _, (verdict,), _ = asked(capsys, "--book", str(rack.book.folder))

    assert verdict["not_alike"] == ["watering", "light"]
    assert any("does not vary it: watering, light." in note for note in verdict["notes"])
    main(["verdict", "--book", str(rack.book.folder)])
    assert "does not vary it: watering, light." in capsys.readouterr().out


@pytest.fixture
def two_trials(tmp_path: Path) -> str:
    rack = Rack(tmp_path)
    rack.shoot_all(WORSE)
    rack.book.add_tray(a_tray("Z1", trial="Sunflower in June", crop="sunflower"))
    rack.book.close()
    return str(rack.book.folder)


def test_each_verdict_of_a_book_names_its_trial(two_trials: str, capsys: pytest.CaptureFixture[str]) -> None:
    main(["verdict", "--book", two_trials])

    titles = [line for line in capsys.readouterr().out.splitlines() if ", canopy score: " in line]
    assert len(titles) == 2
    assert titles[0].startswith("Mat against peat, broccoli, canopy score: against peat mix")
    assert titles[1].startswith("Sunflower in June, sunflower, canopy score: ")


def test_one_trial_of_several_is_asked_for_by_its_name(
    two_trials: str, capsys: pytest.CaptureFixture[str]
) -> None:
    code, found, _ = asked(capsys, "--book", two_trials, "--trial", "Mat against peat")
    assert (code, [one["trial"] for one in found]) == (0, ["Mat against peat"])

    code, found, err = asked(capsys, "--book", two_trials, "--trial", "July")
    assert (code, found) == (1, [])
    assert "no trial called 'July'; trials: " in err
    assert "Sunflower in June" in err


def test_a_table_has_no_trial_to_be_named(immer: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["verdict", "--table", immer, "--trusted", "M", "--margin", "5", "--trial", "x"]) == 2
    assert "--trial goes with --book" in capsys.readouterr().err


def test_a_book_without_a_trial_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    an_empty_book(tmp_path / "book").close()

    code, listed, err = asked(capsys, "--book", str(tmp_path / "book"))

    assert (code, listed) == (1, [])
    assert "no trial" in err


def test_a_trial_of_old_notes_is_held_against_the_medium_that_is_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    table = tmp_path / "Last year.csv"
    rows = [f"{n},pea,{m},2025-04-0{d},{v}" for n, (m, d, v) in enumerate(
        [("Mix", 3, 300), ("mat", 3, 290), ("Mix", 4, 310), ("mat", 4, 305), ("Mix", 5, 320), ("mat", 5, 308)]
    )]  # fmt: skip
    table.write_text("\n".join(["tray,crop,medium,sown,yield", *rows]), encoding="utf-8")
    an_empty_book(tmp_path / "book").close()
    book = str(tmp_path / "book")
    assert main(["import", str(table), "--book", book, "--keep"]) == 0
    capsys.readouterr()

    _, verdicts, _ = asked(capsys, "--book", book, "--trusted", "MIX")

    (of_yield,) = [one for one in verdicts if one["measure"] == "yield"]
    assert (of_yield["trial"], of_yield["trusted"], of_yield["blocks"]) == ("Last year", "mix", 3)
    mat = next(one for one in of_yield["media"] if one["medium"] == "mat")
    assert mat["difference"] == pytest.approx(-9.0)
    code, found, err = asked(capsys, "--book", book, "--trusted", "wool")
    assert (code, found) == (1, [])
    assert "no medium called 'wool'; media: mat, mix." in err
    of_nobody = asked(capsys, "--book", book)[1][0]  # it was named for that answer alone
    assert of_nobody["trusted"] is None


def test_a_plan_is_not_talked_over(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    rack = Rack(tmp_path)
    rack.book.close()

    code, _, err = asked(capsys, "--book", str(rack.book.folder), "--trial", TRIAL, "--trusted", "coir")

    assert code == 1
    assert "says which medium is trusted" in err
