"""Text that remembers how it was built."""

import pickle

from data.sentence import Sentence


def test_a_sentence_is_its_english_text() -> None:
    assert Sentence("{n:.0f} of {total} trays", n=14.2, total=18) == "14 of 18 trays"


def test_a_sentence_remembers_template_and_values() -> None:
    said = Sentence("Coverage {now:.1f} %", now=54.26)

    assert (said.template, said.values) == ("Coverage {now:.1f} %", {"now": 54.26})


def test_a_sentence_goes_from_process_to_process_whole() -> None:
    again = pickle.loads(pickle.dumps(Sentence("{code} lags", code="A1")))

    assert (again, again.template, again.values) == ("A1 lags", "{code} lags", {"code": "A1"})
