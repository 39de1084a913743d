"""Verdicts of a book: what the plan fixed is what is read, and what is missing is said."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from itertools import cycle
from pathlib import Path

import pytest

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.desirability import USUAL as USUAL_RULE
from data.desirability import MoldRule, PartName, ScoreRule, rule_of, rule_text
from data.errors import LevelIsFixed, ReasonWanted
from data.events import EventKind
from data.logs.oldnotes import read_old_notes
from data.numbers import TrayId
from data.readings import NewReading, ReadingKind
from data.trial import Measure, MeasureKind, Plan
from data.verdict.countedof import CountedOf, counted_words
from data.verdict.measurewords import mover_words
from data.verdict.notes import cautions, how_worked_out
from data.verdict.outcome import Outcome, Why
from data.verdict.sensitivity import What
from data.verdict.surewords import otherwise_words
from data.verdict.together import measures_together
from data.verdict.traynumbers import LostToMold
from data.verdict.traywords import lost_words
from data.verdict.verdicts import CropVerdict, verdicts
from data.verdict.words import sentence, why_words
from tests.data.builders import SOWN, Patch, a_note, a_score, a_tray, score_note
from tests.data.trialrack import EVEN, NOISE, TRIAL, WORSE, Rack
from tests.made.books import an_empty_book

OF_BED = counted_words(CountedOf.BED, {})  # how canopy was counted, said of every canopy score


def outcomes(found: CropVerdict) -> dict[str, Outcome | None]:
    return {line.medium: line.outcome for line in found.verdict.compared}


def test_the_canopy_score_is_read_on_the_day_and_against_the_margin_of_the_plan(rack: Rack) -> None:
    rack.shoot_all(WORSE)

    (found,) = rack.verdicts()

    assert (found.crop, found.kind, found.on_day, found.decides) == ("broccoli", MeasureKind.SCORE, 9, True)
    assert (found.verdict.trusted, found.verdict.margin, found.verdict.so_far) == ("peat mix", 5.0, False)
    assert outcomes(found) == {"coir": Outcome.AS_GOOD, "fibre mat": Outcome.WORSE}
    assert found.notes == (OF_BED,)


def test_another_day_is_never_taken_for_the_planned_one(rack: Rack) -> None:
    left_out = rack.tray("coir").code
    rack.shoot_all(EVEN, leave=[left_out])
    rack.shoot(rack.tray("coir"), 80.0, day=8)

    (found,) = rack.verdicts()

    assert found.verdict.medium("coir").n == 3
    assert found.notes == (OF_BED, f"No usable photo of the day that is read: {left_out}.")


def test_a_day_that_nobody_photographed_gives_a_sentence(rack: Rack) -> None:
    rack.shoot_all(EVEN, day=8)

    (found,) = rack.verdicts()

    assert found.verdict.media == ()
    assert found.verdict.missing["media"] is Why.NO_NUMBERS


def test_before_the_planned_trays_are_in_it_is_so_far(rack: Rack) -> None:
    rack.shoot_all(WORSE, leave=[rack.tray("coir", 3).code])
    rack.today(rack.tray("coir", 3).sown_at.date().isoformat())

    (found,) = rack.verdicts()

    assert found.verdict.so_far
    assert set(outcomes(found).values()) == {Outcome.NOT_SHOWN}


def test_scores_of_two_methods_are_never_mixed(rack: Rack) -> None:
    rack.shoot_all(EVEN, method="learned 1")
    rack.shoot(rack.tray("coir"), 20.0, day=9, method="plain 9", uniformity=10.0)

    (found,) = rack.verdicts()

    assert found.method == "learned 1"
    assert found.verdict.medium("coir").outcome is Outcome.AS_GOOD


def test_a_margin_changed_after_sowing_is_told(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    wider = replace(rack.plan, measures=(Measure(kind=MeasureKind.SCORE, margin=8.0),))
    rack.book.keep_plan(wider, "it looked better", at=datetime(2026, 3, 20))

    (found,) = rack.verdicts()

    assert found.verdict.margin == 8.0
    assert found.notes == (
        "The margin was changed after sowing, on 20 March 2026, from 5 points to 8 points (it looked "
        "better): read this verdict with care.",
        OF_BED,
    )


def test_an_open_suspect_changes_no_score_and_the_verdict_is_asked_without_it(rack: Rack) -> None:
    tray = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[tray.code])
    rack.shoot(tray, 80.0, suspects=[Patch()])

    (found,) = rack.verdicts()

    assert found.verdict.medium("coir").n == 4
    words = otherwise_words(found.otherwise, found.scale)
    assert any("without trays with an open suspect" in line for line in words)


@pytest.mark.parametrize(
    ("rule", "n", "mean"), [(MoldRule.ZERO, 4, 55.0), (MoldRule.APART, 3, 73.3), (MoldRule.BY_AREA, 4, 77.6)]
)
def test_confirmed_mold_does_what_the_plan_says(tmp_path: Path, rule: MoldRule, n: int, mean: float) -> None:
    body = rule_text(ScoreRule(parts=USUAL_RULE.parts, mold=rule))
    rack = Rack(tmp_path, score=body)
    tray = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[tray.code])
    rack.shoot(tray, 80.0, suspects=[Patch()])
    rack.say_mold(tray)

    (found,) = rack.verdicts()

    line = found.verdict.medium("coir")
    assert line.n == n
    assert line.mean == pytest.approx(mean, abs=3.0)
    assert [(one.treatment, one.lost, one.trays) for one in found.lost if one.lost] == [("coir", 1, 4)]
    assert lost_words(found.lost) == (
        "Lost to mold, of the trays sown: coir 1/4, fibre mat 0/4, peat mix 0/4.",
        "Of mold so few trays tell little, whatever the intervals say: where a medium loses one tray in ten "
        "to it, 4 trays show none in 66 of 100 trials.",  # 0.9 to the power of 4
    )
    rack.book.close()


@pytest.mark.parametrize(("trays", "told"), [(2, "in 81 of"), (6, "in 53 of"), (29, ""), (1, "")])
def test_that_few_trays_may_show_no_mold_is_told_before_any_was_lost(trays: int, told: str) -> None:
    """0.9 to the power of the trays, of the medium with fewest; from 29 on it lies under one in twenty."""
    lost = [LostToMold(treatment=name, lost=0, trays=n) for name, n in (("peat", 40), ("mat", trays))]

    assert told in "".join(lost_words(lost))
    assert bool(lost_words(lost)) is bool(told)
    assert lost_words(lost[1:]) == ()  # of one medium nothing is compared


def test_a_tray_thrown_away_for_mold_before_its_day_is_a_result(rack: Rack) -> None:
    tray = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[tray.code])
    rack.shoot(tray, 60.0, day=6, suspects=[Patch()])
    rack.say_mold(tray)
    rack.book.add_event([tray.id], EventKind.THROWN_AWAY, tray.sown_at + timedelta(days=6), "mold")

    (found,) = rack.verdicts()

    (number,) = [one for one in found.numbers if one.tray.code == tray.code]
    assert number.value == 0.0
    assert found.verdict.medium("coir").n == 4


def test_a_tray_thrown_away_for_mold_is_lost_though_nobody_called_a_patch_so(rack: Rack) -> None:
    tray = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[tray.code])
    rack.book.add_event([tray.id], EventKind.THROWN_AWAY, tray.sown_at + timedelta(days=6), "Mold all over")

    (found,) = rack.verdicts()

    assert [(one.treatment, one.lost) for one in found.lost if one.lost] == [("coir", 1)]
    without = {one.medium: one.least for one in found.otherwise if one.what is What.NO_LOST}
    assert found.verdict.medium("coir").difference == pytest.approx(-18.2, abs=1)
    assert without["coir"] == pytest.approx(0.0, abs=1)


def test_mold_that_was_taken_out_under_a_stack_counts_though_no_photo_shows_it(rack: Rack) -> None:
    tray = rack.tray("coir")
    rack.shoot_all(EVEN)
    rack.book.add_event([tray.id], EventKind.MOLD_OUT, tray.sown_at + timedelta(days=2), "under the stack")

    (found,) = rack.verdicts()

    (number,) = [one for one in found.numbers if one.tray.code == tray.code]
    assert number.value == 0.0  # the plan's rule: a tray with confirmed mold scores nothing
    assert [(one.treatment, one.lost, one.trays) for one in found.lost if one.lost] == [("coir", 1, 4)]
    rack.book.undo()
    assert not any(one.lost for one in rack.verdicts()[0].lost)


def test_what_moves_a_score_is_not_said_without_the_mold_that_takes_most_of_it(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    tray = rack.tray("coir")
    rack.book.add_event([tray.id], EventKind.MOLD_OUT, tray.sown_at + timedelta(days=2))

    (found,) = rack.verdicts()

    assert found.moldy == {"coir"}
    coir, mat = sorted(map(str, mover_words(found.movers, found.counted, moldy=found.moldy)))
    assert coir.startswith(
        "Apart from mold, for which trays score nothing here, what moves the score of coir"
    )
    assert mat.startswith("What moves the score of fibre mat most")
    rack.book.undo()
    assert rack.verdicts()[0].moldy == frozenset()
    tray = rack.tray("peat mix")
    rack.book.add_event([tray.id], EventKind.MOLD_OUT, tray.sown_at + timedelta(days=2))
    assert rack.verdicts()[0].moldy >= {"coir", "fibre mat"}  # held against it


def test_a_tray_thrown_away_for_mold_in_german_is_lost_as_one_in_english(rack: Rack) -> None:
    tray = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[tray.code])
    rack.book.add_event([tray.id], EventKind.THROWN_AWAY, tray.sown_at + timedelta(days=6), "Schimmel")

    (found,) = rack.verdicts()

    assert [(one.treatment, one.lost) for one in found.lost if one.lost] == [("coir", 1)]
    assert found.verdict.medium("coir").n == 4


@pytest.mark.parametrize(("day", "said"), [(6, True), (9, True), (12, False)])
def test_a_tray_that_dried_out_and_was_thrown_away_is_no_mere_missing_photo(
    rack: Rack, day: int, said: bool
) -> None:
    tray = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[tray.code])
    rack.book.add_event([tray.id], EventKind.THROWN_AWAY, tray.sown_at + timedelta(days=day), "dried out.")

    (found,) = rack.verdicts()

    away = f"Thrown away before it could be read, and so without a number: {tray.code} (dried out)."
    assert any(note.startswith(away) for note in map(str, found.notes)) is said
    assert any(note.startswith("No usable photo") for note in map(str, found.notes)) is not said


def test_trays_photographed_again_on_the_day_that_is_read_are_named(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    tray = rack.tray("coir")
    again = "Photographed more than once on the day that is read, and the last photo counts: "
    assert not any(str(note).startswith(again) for note in rack.verdicts()[0].notes)

    later = tray.sown_at + timedelta(days=9, hours=1)
    note = a_note(rack.folder, "again.jpg", taken_at=later.isoformat(), tag=tray.tag_number)
    rack.book.keep(replace(score_note(note), score=a_score(90.0, method="learned 1")), note)

    (found,) = rack.verdicts()
    assert f"{again}{tray.code}." in map(str, found.notes)


def test_trays_whose_photo_is_in_doubt_are_named(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    tray = rack.tray("coir")
    assert not any("In doubt is the photo" in str(note) for note in rack.verdicts()[0].notes)

    (photo,) = [day.photo_id for day in rack.book.days(tray.id) if day.score]
    rack.doubt(photo)

    (found,) = rack.verdicts()
    (told,) = [str(note) for note in found.notes if "In doubt is the photo" in note]
    assert told.startswith(f"In doubt is the photo that counts of {tray.code}, for glare")


@pytest.mark.parametrize("doubted", ["first", "last"])
def test_of_two_photos_of_a_day_the_one_that_is_not_in_doubt_counts(rack: Rack, doubted: str) -> None:
    rack.shoot_all(EVEN)
    tray = rack.tray("coir")
    before = value_of(rack, tray.id)
    (first,) = [day.photo_id for day in rack.book.days(tray.id) if day.score]
    later = tray.sown_at + timedelta(days=9, hours=1)
    note = a_note(rack.folder, "again.jpg", taken_at=later.isoformat(), tag=tray.tag_number)
    last = rack.book.keep(replace(score_note(note), score=a_score(11.0, method="learned 1")), note).photo_id
    assert last is not None

    rack.doubt(first if doubted == "first" else last)

    told = set(map(str, rack.verdicts()[0].notes))
    assert (
        "Photographed more than once on the day that is read, and the last photo counts, one in doubt only "
        f"where there is no other: {tray.code}."
    ) in told
    assert not any("In doubt is the photo" in one for one in told)
    assert (value_of(rack, tray.id) == before) is (doubted == "last")


def value_of(rack: Rack, tray: TrayId) -> float | None:
    (value,) = [number.value for number in rack.verdicts()[0].numbers if number.tray.id == tray]
    return value


def test_trays_whose_canopy_was_painted_by_hand_are_named(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    tray = rack.tray("coir")
    (score,) = [day.score.id for day in rack.book.days(tray.id) if day.score]
    with rack.book.writing() as db:
        db.table("score").update(score, {"mended": 1})

    (found,) = rack.verdicts()

    (told,) = [str(note) for note in found.notes if "mended by hand" in note]
    assert told.startswith(
        f"Canopy mended by hand on the photo that counts: {tray.code}. Who knows the medium"
    )


def test_a_medium_that_was_named_otherwise_than_drawn_is_told(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    said = "Something else was drawn for the place of: "
    assert not any(str(note).startswith(said) for note in rack.verdicts()[0].notes)
    tray = rack.tray("coir")

    rack.book.edit_tray(tray.id, medium="fibre mat", code="X9")  # still known by its tag

    (found,) = rack.verdicts()
    (told,) = [str(note) for note in found.notes if str(note).startswith(said)]
    assert told.startswith(f"{said}X9 (broccoli, coir). Sown so by a slip")


def test_of_several_drawings_the_newest_says_what_was_drawn_for_a_place(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    rack.shoot_all(EVEN)
    rack.book.draw_places(rack.kept, seed=2, why="a lamp was changed")  # all stand: they stay as they are

    (found,) = rack.verdicts()

    assert not any(str(note).startswith("Something else was drawn") for note in found.notes)
    rack.book.close()


def test_a_photo_of_the_day_that_a_person_left_out_is_told_and_one_of_another_day_is_not(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    tray, other = rack.tray("fibre mat"), rack.tray("coir")
    rack.shoot(other, 40.0, day=5)
    for one, day in ((tray, 9), (other, 5)):
        for photo in [shown.photo_id for shown in rack.book.days(one.id) if shown.day == day]:
            rack.book.leave_out(photo)
    blurred = rack.tray("peat mix")
    note = a_note(rack.folder, "blurred.jpg", tag=blurred.tag_number, refuse="BLURRED",
                  taken_at=(blurred.sown_at + timedelta(days=9)).isoformat())  # fmt: skip
    rack.book.leave_out(rack.book.keep(score_note(note), note).photo_id)

    (found,) = rack.verdicts()

    said = "A usable photo of the day that is read was left out by hand: "
    assert [str(note) for note in found.notes if str(note).startswith(said)] == [
        f"{said}{tray.code}. The report names the photos."
    ]


@pytest.mark.parametrize(("day", "said"), [(8, "Cut before the day"), (9, "No usable photo")])
def test_a_tray_that_was_cut_before_its_day_is_no_mere_missing_photo(rack: Rack, day: int, said: str) -> None:
    tray = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[tray.code])
    rack.book.add_event([tray.id], EventKind.CUT, tray.sown_at + timedelta(days=day))

    (found,) = rack.verdicts()

    (told,) = [str(note) for note in found.notes if tray.code in str(note)]
    assert told.startswith(said)


def test_yield_comes_from_what_was_weighed_with_a_margin_in_percent(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    rack.book.add_readings(
        [
            NewReading(
                kind=ReadingKind.FRESH_MASS,
                value=300.0 + 5 * NOISE[number % len(NOISE)],
                taken_at=tray.sown_at + timedelta(days=10),
                tray_id=tray.id,
            )
            for number, tray in enumerate(rack.trays)
        ]
    )

    score, mass = rack.verdicts()

    assert (mass.kind, mass.decides, score.decides) == (MeasureKind.YIELD, False, True)
    assert mass.verdict.margin == pytest.approx(0.1 * mass.verdict.medium("peat mix").mean)
    assert "No margin was set before sowing; the usual 10 % was taken." in mass.notes
    assert any(line.startswith("Canopy score and Yield: rank correlation ") for line in score.notes)


def test_measures_that_say_different_things_are_named_and_which_decides(rack: Rack) -> None:
    rack.shoot_all(WORSE)
    rack.book.add_readings(
        [
            NewReading(
                kind=ReadingKind.FRESH_MASS, value=300.0 + noise, taken_at=tray.sown_at, tray_id=tray.id
            )
            for tray, noise in zip(rack.trays, cycle(NOISE), strict=False)
        ]
    )
    found = rack.verdicts()

    words = "Canopy score and Yield say different things of fibre mat: worse and "
    assert any(one.startswith(words) and one.endswith("beforehand decides.") for one in found[0].notes)
    unplanned = measures_together(found, planned=False)
    assert any(one.startswith(words) and "None was named beforehand" in one for one in unplanned)


@pytest.mark.parametrize(
    ("one", "other", "contrary"),
    [
        (Outcome.BETTER, Outcome.AS_GOOD_LOWER, True),
        (Outcome.AS_GOOD_LOWER, Outcome.WORSE, True),
        (Outcome.BETTER, Outcome.AS_GOOD, False),
        (Outcome.AS_GOOD, Outcome.AS_GOOD_LOWER, False),
        (Outcome.WORSE, Outcome.NOT_SHOWN, False),
    ],
)
def test_better_by_one_measure_and_surely_less_good_by_another_is_told(
    rack: Rack, one: Outcome, other: Outcome, contrary: bool
) -> None:
    rack.shoot_all(EVEN)
    (score,) = rack.verdicts()

    def said(outcome: Outcome, kind: MeasureKind) -> CropVerdict:
        lines = (replace(line, outcome=outcome) for line in score.verdict.media)
        return replace(score, kind=kind, verdict=replace(score.verdict, media=tuple(lines)))

    both = said(one, MeasureKind.SCORE), said(other, MeasureKind.YIELD)
    notes = [*measures_together(both, planned=True), *measures_together(both[::-1], planned=True)]
    assert sum("say different things of coir" in note for note in notes) == 2 * contrary


def test_a_score_by_eye_follows_its_photo_to_another_tray_and_goes_with_one_left_out(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    photos = [(one.tray_id, one.photo_id) for one in rack.book.photo_numbers(TRIAL)]
    eye_round = rack.book.begin_eye_round(TRIAL, "R.", photos, seed=4)
    for showing in eye_round.showings:
        rack.book.give_eye_score(eye_round, showing.place, 10.0 + showing.tray_id)

    (one, first), (other, _), (third, out) = photos[:3]
    rack.book.match(first, other)
    rack.book.leave_out(out)

    (eye,) = [found for found in verdicts(rack.book) if found.kind is MeasureKind.EYE]
    values = {number.tray.id: number.value for number in eye.numbers}
    assert (values[one], values[third]) == (None, None)
    assert 10.0 + one < values[other] < 10.0 + other
    assert rack.book.scores_of_round(eye_round)[0].keys() == {tray for tray, _ in photos} - {one, third}


def test_a_round_by_eye_is_drawn_kept_and_read(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    photos = [(tray.id, rack.book.days(tray.id)[0].photo_id) for tray in rack.trays]
    eye_round = rack.book.begin_eye_round(TRIAL, "R.", photos, seed=4)
    for showing in eye_round.showings:
        rack.book.give_eye_score(eye_round, showing.place, 70.0 + showing.place % 5)

    found = {one.kind: one for one in rack.verdicts()}

    assert rack.book.eye_rounds(TRIAL) == (eye_round,)
    assert found[MeasureKind.EYE].verdict.trays == 12
    first, again = rack.book.scores_of_round(eye_round)
    assert (len(first), len(again)) == (12, 3)


def test_scores_by_eye_are_over_without_a_tray_that_was_thrown_away_and_its_medium_is_doubted(
    rack: Rack,
) -> None:
    gone, waiting = rack.tray("coir"), rack.tray("coir", 1)
    rack.shoot_all(EVEN, leave=[gone.code])
    rack.book.add_event([gone.id], EventKind.THROWN_AWAY, gone.sown_at + timedelta(days=4), "all rot")
    photos = [(one.tray_id, one.photo_id) for one in rack.book.photo_numbers(TRIAL)]
    eye_round = rack.book.begin_eye_round(TRIAL, "R.", photos, seed=4)

    def eye() -> CropVerdict:
        (found,) = [found for found in verdicts(rack.book) if found.kind is MeasureKind.EYE]
        return found

    last = next(one.place for one in eye_round.showings if one.tray_id == waiting.id)
    for showing in eye_round.showings:
        if showing.place != last:
            rack.book.give_eye_score(eye_round, showing.place, 70.0 + showing.place % 5)
    assert eye().verdict.so_far
    rack.book.give_eye_score(eye_round, last, 71.0)

    assert not eye().verdict.so_far
    assert eye().verdict.medium("coir").n == 3
    assert any(
        f"without a number: {gone.code} (all rot). Where the medium was the reason" in n for n in eye().notes
    )


def test_a_second_word_replaces_the_first_and_can_be_taken_back(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    photos = [(tray.id, rack.book.days(tray.id)[0].photo_id) for tray in rack.trays]
    eye_round = rack.book.begin_eye_round(TRIAL, "R.", photos, seed=4)

    rack.book.give_eye_score(eye_round, 1, 40.0)
    rack.book.give_eye_score(eye_round, 1, 60.0)

    assert [given.value for given in rack.book.eye_scores(TRIAL)] == [60.0]
    assert rack.book.undo() == f"score by eye 1 of {len(eye_round.showings)}"
    assert [given.value for given in rack.book.eye_scores(TRIAL)] == [40.0]


def test_without_a_plan_what_is_usual_is_taken_and_said(tmp_path: Path) -> None:
    with an_empty_book(tmp_path / "book") as book:
        book.add_trays(
            a_tray(f"{block}{medium[0]}", medium=medium, block=block, tag_number=10 + n)
            for n, (block, medium) in enumerate((b, m) for b in "123" for m in ("peat", "mat"))
        )
        book.set_setting("today", "2026-03-09")
        for n, tray in enumerate(book.trays()):
            note = a_note(tmp_path, f"{tray.code}.jpg", tag=tray.tag_number, coverage=70.0 + NOISE[n])
            book.keep(score_note(note), note)

        (unknown,) = verdicts(book)
        book.set_trusted("peat")
        (found,) = verdicts(book)

    assert unknown.notes[0].startswith("No medium is named as the trusted one: name it on Materials")
    assert found.on_day == 7
    assert found.notes == (
        "No plan was kept before sowing: peat is the one that was named among the media.",
        "No margin was set before sowing; the usual 5 points was taken.",
        "No day was fixed before sowing; day 7 was taken, on which most trays have a photo.",
        OF_BED,
    )


def yields_noted(book: Book, media: Sequence[str]) -> None:
    for n, (block, medium) in enumerate((b, m) for b in "123" for m in media):
        tray = book.add_tray(a_tray(f"{block}{medium[0]}", medium=medium, block=block))
        mass = NewReading(kind=ReadingKind.FRESH_MASS, value=250.0 + NOISE[n], taken_at=SOWN, tray_id=tray)
        book.add_readings([mass])
        book.add_event([tray], EventKind.CUT, SOWN)


@pytest.mark.parametrize(
    ("without", "told"),
    [
        ((), None),
        (("1p", "1m"), "No block is noted of 1p, 1m: they were taken together as a block of their own."),
        (("1p", "1m", "2p", "2m", "3p", "3m"), "No block is noted of these trays, so all were taken as one:"),
    ],
)
def test_trays_without_a_block_are_said_to_be(
    tmp_path: Path, without: tuple[str, ...], told: str | None
) -> None:
    with an_empty_book(tmp_path / "book") as book:
        yields_noted(book, ("peat", "mat"))
        book.set_trusted("peat")
        for tray in book.trays(growing=False):
            if tray.code in without:
                book.edit_tray(tray.id, block=None)

        (mass,) = [one for one in verdicts(book) if one.kind is MeasureKind.YIELD]

    said = [note for note in mass.notes if "No block is noted" in note]
    assert [note[: len(told or "")] for note in said] == ([] if told is None else [told])
    assert any("Without blocks" in line for line in how_worked_out(mass.verdict)) is (len(without) == 6)


def test_scores_by_eye_of_old_notes_are_said_not_to_be_blind(tmp_path: Path) -> None:
    lines = ["tray,trial,block,crop,medium,sown,eye score"]
    for n, (block, medium) in enumerate((b, m) for b in "123" for m in ("peat", "mat")):
        lines.append(f"T{n},old,{block},pea,{medium},2025-03-0{block},{70 + 3 * n}")
    with an_empty_book(tmp_path / "book") as book:
        book.keep_old_notes(read_old_notes("\n".join(lines).encode()), "old.csv")
        book.set_trusted("peat")

        score, eye = verdicts(book)

    assert eye.kind is MeasureKind.EYE
    assert any("were not given blind" in note for note in eye.notes)
    assert not any("were not given blind" in note for note in score.notes)


def test_scores_of_a_blind_round_are_not_doubted(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    photos = [(one.tray_id, one.photo_id) for one in rack.book.photo_numbers(TRIAL)]
    eye_round = rack.book.begin_eye_round(TRIAL, "R.", photos, seed=4)
    for showing in eye_round.showings:
        rack.book.give_eye_score(eye_round, showing.place, 10.0 + showing.tray_id)

    (eye,) = [found for found in rack.verdicts() if found.kind is MeasureKind.EYE]

    assert not any("were not given blind" in note for note in eye.notes)


@pytest.mark.parametrize("trusted", [None, "wood fibre"])
def test_without_a_trusted_number_no_margin_of_it_is_told(tmp_path: Path, trusted: str | None) -> None:
    with an_empty_book(tmp_path / "book") as book:
        yields_noted(book, ("peat", "mat"))
        if trusted is not None:
            book.set_medium(trusted)
            book.set_trusted(trusted)

        (mass,) = [one for one in verdicts(book) if one.kind is MeasureKind.YIELD]

    assert mass.verdict.told_margin is None
    told = " ".join((*mass.notes, *cautions(mass.verdict)))
    assert "of the mean of" not in told
    assert "margin is zero" not in told
    assert "  " not in told
    words = sentence(mass.verdict, mass.verdict.media[0], mass.scale)
    assert words == f"peat: no verdict. {why_words(Why.NO_TRUSTED, trusted=trusted or '')}"


def test_a_book_without_a_trial_has_no_verdict(tmp_path: Path) -> None:
    with an_empty_book(tmp_path / "book") as book:
        assert verdicts(book) == ()


def test_a_plan_with_another_confidence_is_not_kept(rack: Rack) -> None:
    with pytest.raises(LevelIsFixed, match=r"95%.*90\.0%"):
        rack.book.keep_plan(replace(rack.plan, level=0.90), "less sure will do")

    assert len(rack.book.plans(TRIAL)) == 1


def test_whatever_decides_an_answer_and_is_changed_after_sowing_is_said(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    rack.today("2026-03-20")
    plan = rack.plan
    changes = (
        replace(plan, crops=(replace(plan.crops[0], read_on_day=8),)),
        replace(plan, trusted="coir"),
        replace(plan, measures=tuple(reversed(plan_measures(plan)))),
        replace(plan, blocks=plan.blocks[:3]),
    )
    wanted = (
        "The day on which broccoli is read was changed after sowing, on 20 March 2026, from day 9 to day 8",
        "What the others are held against was changed after sowing, on 20 March 2026, from peat mix to coir",
        "The measure that decides was changed after sowing, on 20 March 2026, from Canopy score to Yield",
        "How many trays of each are planned was changed after sowing, on 20 March 2026, from 4 to 3",
    )
    for changed, words in zip(changes, wanted, strict=True):
        rack.book.keep_plan(changed, "it looked better so")

        found = rack.verdicts()[0]

        assert any(note.startswith(f"{words} (it looked better so)") for note in found.notes)
        rack.book.undo()
    assert not any("after sowing" in note for note in rack.verdicts()[0].notes)


def plan_measures(plan: Plan) -> tuple[Measure, ...]:
    return (*plan.measures, Measure(kind=MeasureKind.YIELD, margin=10.0, unit="%"))


def test_other_weights_after_sowing_are_a_new_version_and_are_said(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    (draw,) = rack.book.draws(TRIAL)
    parts = USUAL_RULE.parts | {PartName.COVERAGE: replace(USUAL_RULE.parts[PartName.COVERAGE], weight=5.0)}
    rule = replace(USUAL_RULE, parts=parts)

    rack.book.keep_score_rule(TRIAL, rule_text(rule), "coverage is what I sell")

    (found,) = rack.verdicts()
    assert rule_of(rack.book.plans(TRIAL)[-1].plan.score) == rule
    assert any("Limits and weights" in note and "what I sell" in note for note in found.notes)
    assert rack.book.draws(TRIAL)[-1].draw == draw.draw
    assert rack.book.draws(TRIAL)[-1].plan_id == rack.book.plans(TRIAL)[-1].id
    assert rack.book.undo() == f"limits and weights of {TRIAL}"
    assert (len(rack.book.plans(TRIAL)), len(rack.book.draws(TRIAL))) == (1, 1)


def test_other_weights_need_a_reason(rack: Rack) -> None:
    with pytest.raises(ReasonWanted):
        rack.book.keep_score_rule(TRIAL, rule_text(replace(USUAL_RULE, mold=MoldRule.APART)), " ")


def test_reading_stops_when_it_is_asked_to(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    token = CancelToken()
    token.cancel()

    with pytest.raises(Cancelled):
        verdicts(rack.book, cancel=token)


def test_limits_and_weights_of_a_plan_that_cannot_be_read_are_not_replaced_in_silence(rack: Rack) -> None:
    rack.shoot_all(EVEN)
    usual = [number.value for number in rack.verdicts()[0].numbers]
    odd = {"parts": {"colour": {"bad": 0, "good": 100, "power": -1}}}
    rack.book.keep_plan(replace(rack.plan, score=odd), "from another program", at=datetime(2026, 3, 1))

    (found,) = rack.verdicts()

    assert found.notes[0] == (
        "The limits and weights of the canopy score that this plan keeps cannot be read; the usual ones "
        "were taken. Set them anew beside the verdict."
    )
    assert [number.value for number in found.numbers] == usual
