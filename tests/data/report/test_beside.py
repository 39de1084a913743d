"""What stands in a report beside the answers."""

from datetime import timedelta
from pathlib import Path

from data.cancel import CancelToken
from data.events import EventKind
from data.report.beside import wrong_blocks
from data.report.content import Paragraph
from tests.data.trialrack import Rack


def test_a_photo_that_does_not_count_is_told_with_the_day_of_its_tray_or_as_older_than_it(
    tmp_path: Path,
) -> None:
    rack = Rack(tmp_path)
    tray = rack.trays[0]
    for day in (0, 5):
        rack.shoot(tray, 10.0, day=day)
    rack.book.edit_tray(tray.id, sown_at=tray.sown_at + timedelta(days=1))
    for one in rack.book.days(tray.id):
        rack.book.leave_out(one.photo_id)

    blocks = wrong_blocks(rack.book, [tray], CancelToken(), short=False)

    told = [str(block.text) for block in blocks if isinstance(block, Paragraph)]
    assert [one.partition(":")[0] for one in told] == [
        f"Tray {tray.code}, before sowing",
        f"Tray {tray.code}, day 4",
    ]
    rack.book.close()


def test_mold_that_was_taken_out_is_named_with_its_day(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    tray = rack.tray("coir")
    at = tray.sown_at + timedelta(days=2)
    rack.book.add_event([tray.id], EventKind.MOLD_OUT, at, "under the stack.")

    blocks = wrong_blocks(rack.book, rack.trays, CancelToken(), short=False)

    words = [str(block.text) for block in blocks if isinstance(block, Paragraph)]
    day = f"{at.day} {at:%B %Y}"
    assert words == [f"Mold was taken out of tray {tray.code} (broccoli, coir) on {day}: under the stack."]
    rack.book.close()
