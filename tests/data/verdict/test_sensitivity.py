"""A verdict asked again: what stays, what would be another answer, and where there would be none at all."""

import pytest

from data.verdict import Measured, verdict_of
from data.verdict.outcome import ErrorFrom, Outcome
from data.verdict.rechecks import rechecks
from data.verdict.sensitivity import Otherwise, What, reader_of
from data.verdict.surewords import otherwise_words
from data.verdict.words import Scale, Unit

POINTS = Scale(unit=Unit.POINTS, digits=1)
CHANCE = (0.3, -0.5, 0.4, -0.1, -0.4, 0.2, 0.5, -0.2, 0.1, -0.3, 0.0, 0.6)  # of a tray, in points


def trays(suspect: str = "", **blocks: str) -> list[Measured]:
    """All media alike but for chance; `coir="12"` stands in two blocks, `suspect="coir1"`: on that tray."""
    places = [(medium, block) for medium, there in blocks.items() for block in there]
    return [
        Measured(
            block=block,
            medium=medium,
            value=80.0 + CHANCE[n % len(CHANCE)],
            tray=f"{medium}{block}",
            suspect=f"{medium}{block}" in suspect.split(),
        )
        for n, (medium, block) in enumerate(places)
    ]


def asked(table: list[Measured], **more: object) -> dict[tuple[What, str], Otherwise]:
    verdict = verdict_of(table, "peat", 5.0)
    assert {line.outcome for line in verdict.compared} == {Outcome.AS_GOOD}
    return {(one.what, one.medium): one for one in rechecks(verdict, table, **more)}


def words(one: Otherwise) -> str:
    (line,) = otherwise_words([one], POINTS)
    return str(line)


def test_where_a_block_less_leaves_one_tray_the_answer_is_not_said_to_stay() -> None:
    found = asked(trays(peat="1234", mat="1234", coir="12"))

    assert found[What.ANY_BLOCK, "coir"].changes == (("1", None), ("2", None))
    assert words(found[What.ANY_BLOCK, "coir"]).endswith("without block 1 the answer would be: no verdict.")
    assert found[What.ANY_BLOCK, "mat"].changes == ()
    assert words(found[What.ANY_BLOCK, "mat"]).endswith("and the answer stays.")


def test_media_that_share_one_block_have_no_answer_from_their_own_trays() -> None:
    found = asked(trays(peat="123", mat="2345", coir="3456"))

    assert words(found[What.OWN_TRAYS, "coir"]) == (
        "coir: with the spread of its own and the trusted trays alone the answer would be: no verdict."
    )
    assert words(found[What.OWN_TRAYS, "mat"]).endswith("the answer stays.")


def test_where_own_trays_give_the_error_they_do_so_in_each_question_and_are_none_themselves() -> None:
    """Peat scatters some thirty times as much: asked again with a block less that is not asked anew."""
    rows = [
        Measured(block=str(n), medium=medium, value=80.0 + times * CHANCE[(n + shift) % len(CHANCE)])
        for n in range(9)
        for medium, times, shift in (("peat", 10.0, 0), ("mat", 0.3, 3), ("coir", 0.3, 7))
    ]
    verdict = verdict_of(rows, "peat", 5.0)
    assert verdict.error_from is ErrorFrom.OWN_TRAYS

    again = reader_of(verdict)(rows)

    assert again.error_from is ErrorFrom.OWN_TRAYS
    assert again.medium("mat").low == pytest.approx(verdict.medium("mat").low)
    assert {one.what for one in rechecks(verdict, rows)} == {What.ANY_BLOCK}


@pytest.mark.parametrize(
    ("suspect", "said"),
    [
        ("coir1", "the answer stays."),
        ("coir1 coir2 coir3", "the answer would be: no verdict."),
        ("coir1 coir2 coir3 coir4", "nothing is left to compare: say what they are."),
        ("peat1 peat2 peat3 peat4", "nothing is left to compare: say what they are."),
    ],
)
def test_an_answer_that_rests_on_trays_with_a_suspect_says_so(suspect: str, said: str) -> None:
    found = asked(trays(suspect, peat="1234", mat="1234", coir="1234"))

    assert words(found[What.NO_SUSPECTS, "coir"]).endswith(said)


def test_where_every_tray_has_a_suspect_each_medium_says_that_nothing_is_left() -> None:
    table = trays("peat1 peat2 peat3 mat1 mat2 mat3", peat="123", mat="123")

    assert "nothing is left" in words(asked(table)[What.NO_SUSPECTS, "mat"])


def test_a_medium_all_of_whose_trays_were_lost_says_that_nothing_is_left_without_them() -> None:
    found = asked(trays(peat="123", mat="123", coir="123"), moldy=("coir1", "coir2", "coir3"))

    assert words(found[What.NO_LOST, "coir"]) == (
        "coir: without trays lost to mold nothing is left to compare."
    )


def test_what_is_not_shown_is_no_other_answer_where_there_is_none() -> None:
    table = trays("coir1 coir2 coir3", peat="1234", mat="1234", coir="1234")
    verdict = verdict_of(table, "peat", 0.01)
    assert verdict.medium("coir").outcome is Outcome.NOT_SHOWN

    found = {(one.what, one.medium): one for one in rechecks(verdict, table)}

    assert found[What.NO_SUSPECTS, "coir"].changes == ()
