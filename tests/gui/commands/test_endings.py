"""With which code a command ends: scripts and timers go by it."""

from pathlib import Path

import pytest

from gui.command import main
from tests.data.trialrack import Rack


def test_a_trial_that_has_no_number_yet_is_an_answer(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rack = Rack(tmp_path)
    rack.book.close()

    ended = main(["verdict", "--book", str(rack.book.folder)])

    told = capsys.readouterr()
    assert (ended, told.err) == (0, "")
    assert "There is no number to compare: no tray has one." in told.out


def test_a_trial_that_is_not_there_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    rack = Rack(tmp_path)
    rack.book.close()

    assert main(["verdict", "--book", str(rack.book.folder), "--trial", "July"]) == 1
    assert "no trial called 'July'" in capsys.readouterr().err


def test_the_help_says_what_the_codes_mean(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["--help"])

    assert ended.value.code == 0
    assert "Ends with 0 when it is done; 1 where something could not be done" in " ".join(
        capsys.readouterr().out.split()
    )


def test_old_notes_with_a_line_that_cannot_be_a_tray_end_alike_shown_and_kept(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    rack.book.close()
    notes = tmp_path / "notes.csv"
    notes.write_text("crop,medium,sown\npea,coir,2026-03-02\npea,,2026-03-02\n")
    words = ["import", str(notes), "--book", str(rack.book.folder)]

    assert (main(words), main([*words, "--keep"])) == (1, 1)


@pytest.mark.parametrize(
    "words",
    ["look --book NAME", "pack NAME --book BOOK", "export NAME --book BOOK", "intake NAME --book BOOK",
     "import NAME --book BOOK", "unpack NAME x", "watch NAME --book BOOK", "score NAME"],
)  # fmt: skip
def test_a_name_that_no_disk_has_is_refused_in_a_sentence(
    words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rack = Rack(tmp_path)
    rack.book.close()
    places = {"NAME": "a" * 300, "BOOK": str(rack.book.folder)}

    assert main([places.get(word, word) for word in words.split()]) == 1

    told = capsys.readouterr().err
    assert told.startswith("evenstand: ")
    assert "mistake" not in told
