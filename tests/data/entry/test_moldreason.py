"""Whether a reason, typed in the grower's own words, says that mold took a tray."""

import pytest

from data.entry.moldreason import says_mold


@pytest.mark.parametrize(
    "why",
    [
        "Mold all over", "mouldy", "Mould at the edge", "Schimmel", "verschimmelt", "Schimmelbefall am Rand",
        "grauschimmel", "schimmlig", "dried out; MOLD", "no light, mold at the edge",
        "no germination and mold", "nicht gekeimt wegen Schimmel", "not eaten because of mold",
        "not only mold", "nicht nur Schimmel", "without doubt mold", "ohne Zweifel Schimmel",
    ],
)  # fmt: skip
def test_mold_is_known_in_either_spelling_and_in_german(why: str) -> None:
    assert says_mold(why)


@pytest.mark.parametrize(
    "why",
    [
        "", "too long", "vertrocknet", "no mold", "not mold, dried out", "not because of mold",
        "no sign of mold", "kein Schimmel", "keinen sichtbaren Schimmel", "ohne Schimmel", "schimmelfrei",
        "keine Spur von Schimmel", "nicht wegen Schimmel", "frei von Schimmel", "mold-free", "schimmerte rot",
        "mold free", "schimmel frei", "free of any mold", "wasn't mold",
    ],
)  # fmt: skip
def test_that_there_was_none_is_not_taken_for_mold(why: str) -> None:
    assert not says_mold(why)
