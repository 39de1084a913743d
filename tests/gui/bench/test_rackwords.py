"""How many trays stand there, and how far the photographs of today have come, in words."""

from types import SimpleNamespace
from typing import Any

import pytest

from gui.bench.words import rack_words


def the_words(trays: int, missing: int = 0, **special: Any) -> str:
    """Of so many trays, all to be photographed and photographed before, so many have no photo of today."""
    ordinary = {"with_photo": trays, "to_photograph": trays, "filtered": False, "shown": trays}
    given = SimpleNamespace(**(ordinary | special))
    rack = SimpleNamespace(
        filtered=given.filtered, standings=[0] * given.shown, all_trays=trays, with_photo=given.with_photo
    )
    codes = [f"A{n}" for n in range(1, missing + 1)]
    return rack_words(SimpleNamespace(rack=rack, to_photograph=given.to_photograph, missing=codes))


@pytest.mark.parametrize(
    ("rack", "told"),
    [
        ({"trays": 1, "with_photo": 0}, "1 tray, no photo yet"),
        ({"trays": 3, "to_photograph": 0}, "3 trays"),
        ({"trays": 3}, "3 trays, 3 of 3 photographed today"),
        ({"trays": 3, "missing": 3}, "3 trays, 0 of 3 photographed today"),
        ({"trays": 5, "missing": 4}, "5 trays, 1 of 5 photographed today; missing: A1, A2, A3, A4"),
        (
            {"trays": 6, "missing": 5},
            "6 trays, 1 of 6 photographed today; missing: A1, A2, A3, A4 and 1 more",
        ),
        ({"trays": 6, "filtered": True, "shown": 2}, "2 of 6 trays"),
    ],
)
def test_the_rack_is_told_in_a_line(rack: dict[str, Any], told: str) -> None:
    assert the_words(**rack) == told
