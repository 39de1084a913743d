"""Palette: readable in light and dark, the same letters everywhere."""

import itertools
from dataclasses import asdict

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtGui import QColor, QFontDatabase, QFontInfo, QFontMetrics, QPalette
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QFrame,
    QLabel,
    QRadioButton,
    QTableWidget,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot

from gui.style.icon import icon
from gui.style.palette import TARGET, dress, qt_palette, tokens_now
from gui.style.stylesheet import sheet_values, style_sheet
from gui.style.tokens import DARK, LIGHT, TOKENS, Scheme, Tokens, contrast, mixed
from gui.traysheet.growthchart import own_colour

BOTH = pytest.mark.parametrize("t", [LIGHT, DARK], ids=["light", "dark"])
TEXTS = ("ink", "soft_ink", "accent", "notice", "alarm", "calm")
GROUNDS = ("ground", "sheet", "raised")

# WCAG 2.2 (W3C Recommendation 2023), success criteria 1.4.3 and 1.4.11
FOR_TEXT, FOR_MARKS = 4.5, 3.0


def test_contrast_is_that_of_the_web_guidelines() -> None:
    # WCAG 2.2, definition of contrast ratio: from 1 to 21
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#808080", "#808080") == 1.0


def test_contrast_of_pure_red_follows_from_its_weight_in_luminance() -> None:
    # WCAG 2.2, definition of relative luminance: red weighs 0.2126
    assert contrast("#FF0000", "#000000") == pytest.approx((0.2126 + 0.05) / 0.05)


@BOTH
@pytest.mark.parametrize(("text", "ground"), list(itertools.product(TEXTS, GROUNDS)))
def test_every_text_can_be_read_on_every_ground(t: Tokens, text: str, ground: str) -> None:
    tokens = asdict(t)
    assert contrast(tokens[text], tokens[ground]) >= FOR_TEXT


@BOTH
def test_text_on_the_main_button_can_be_read(t: Tokens) -> None:
    assert contrast(t.on_accent, t.accent) >= FOR_TEXT


@BOTH
@pytest.mark.parametrize("band", ["notice", "alarm", "calm"])
def test_bands_carry_ink_and_their_own_colour(t: Tokens, band: str) -> None:
    ground = sheet_values(t)[f"{band}_ground"]
    assert contrast(t.ink, ground) >= FOR_TEXT
    assert contrast(asdict(t)[band], ground) >= FOR_TEXT


@BOTH
@pytest.mark.parametrize("mark", ["edge", "bar"])
def test_outlines_of_what_can_be_used_stand_out(t: Tokens, mark: str) -> None:
    values = sheet_values(t)
    assert contrast(values[mark], t.sheet) >= FOR_MARKS
    assert contrast(values[mark], t.ground) >= FOR_MARKS


@BOTH
def test_ink_that_outlines_data_colours_stands_out_from_the_sheet(t: Tokens) -> None:
    assert contrast(t.ink, t.sheet) >= FOR_MARKS


@BOTH
def test_the_line_of_growth_has_no_outline_and_stands_out_by_itself(t: Tokens) -> None:
    assert contrast(own_colour(t).name(), t.sheet) >= FOR_MARKS


@pytest.mark.parametrize("scheme", Scheme)
def test_every_pair_of_text_and_ground_in_qts_palette_can_be_read(scheme: Scheme) -> None:
    palette, role = qt_palette(scheme), QPalette.ColorRole
    pairs = (
        (role.WindowText, role.Window),
        (role.Text, role.Base),
        (role.Text, role.AlternateBase),
        (role.ButtonText, role.Button),
        (role.ToolTipText, role.ToolTipBase),
        (role.HighlightedText, role.Highlight),
        (role.PlaceholderText, role.Base),
        (role.Link, role.Base),
        (role.LinkVisited, role.Base),
    )
    for text, ground in pairs:
        colours = palette.color(text).name(), palette.color(ground).name()
        assert contrast(*colours) >= FOR_TEXT, f"{text} on {ground}"


@pytest.mark.parametrize("scheme", Scheme)
def test_no_role_is_left_to_the_system(qapp: QApplication, scheme: Scheme) -> None:
    palette = qt_palette(scheme)
    for role in QPalette.ColorRole:
        if role not in (QPalette.ColorRole.NoRole, QPalette.ColorRole.NColorRoles):
            assert palette.isBrushSet(QPalette.ColorGroup.Active, role), role


@pytest.mark.parametrize("scheme", Scheme)
def test_what_cannot_be_used_looks_so(scheme: Scheme) -> None:
    palette = qt_palette(scheme)
    for role in (QPalette.ColorRole.WindowText, QPalette.ColorRole.Text, QPalette.ColorRole.ButtonText):
        off, on = (
            palette.color(group, role) for group in (QPalette.ColorGroup.Disabled, QPalette.ColorGroup.Active)
        )
        assert off != on


def test_the_program_wears_the_scheme_it_was_given(qapp: QApplication) -> None:
    dress(qapp, Scheme.DARK)
    dark = tokens_now()
    dress(qapp, Scheme.LIGHT)

    assert (dark, tokens_now()) == (DARK, LIGHT)


def test_letters_are_the_bundled_ones_in_both_weights(dressed: QApplication) -> None:
    assert QFontInfo(dressed.font()).family() == "Noto Sans"
    assert {"Regular", "Bold"} <= set(QFontDatabase.styles("Noto Sans"))


def test_larger_text_makes_titles_larger_too(qapp: QApplication, qtbot: object) -> None:
    heights = []
    for percent in (100, 150):
        dress(qapp, Scheme.LIGHT, percent)
        title = QLabel("Tray")
        title.setProperty("role", "title")
        title.ensurePolished()
        heights.append((QFontMetrics(qapp.font()).height(), title.sizeHint().height()))
    dress(qapp, Scheme.LIGHT)

    assert heights[1][0] > 1.3 * heights[0][0]
    assert heights[1][1] > 1.3 * heights[0][1]


@BOTH
def test_the_style_sheet_has_a_value_for_every_name(t: Tokens) -> None:
    assert "@" not in style_sheet(t)


def test_pictures_of_the_style_sheet_are_there() -> None:
    for scheme, t in TOKENS.items():
        names = [part.split('"')[0] for part in style_sheet(t).split('url("')[1:]]
        assert names
        assert all(name.endswith(f"-{scheme}.svg") for name in names)
        assert not [name for name in names if not __import__("pathlib").Path(name).is_file()]


def test_an_icon_is_drawn_in_the_colour_that_was_asked_for(dressed: QApplication) -> None:
    image = icon("bench", "#FF0000").pixmap(48, 48).toImage()
    drawn = {
        QColor(image.pixelColor(x, y)).name()
        for x in range(48)
        for y in range(48)
        if image.pixelColor(x, y).alpha() == 255
    }
    assert drawn == {"#ff0000"}


def test_a_mix_lies_between_its_colours() -> None:
    assert mixed("#FF0000", "#0000FF", 0.2) == "#3300CC"


class Counted(QLabel):
    """Counts how often it is told that its style has changed."""

    dressings = 0

    def event(self, event: QEvent) -> bool:
        self.dressings += event.type() == QEvent.Type.StyleChange
        return super().event(event)


def lying_in(widget: QWidget, depth: int) -> QWidget:
    """A widget that many others lie around."""
    for _ in range(depth):
        around = QFrame()
        QVBoxLayout(around).addWidget(widget)
        widget = around
    return widget


def test_a_change_of_scheme_dresses_what_lies_deep_as_often_as_what_lies_on_top(
    dressed: QApplication, qtbot: QtBot
) -> None:
    # else a window of 1,300 parts stands still for more than half a second: Qt 6.11, seen here
    label = Counted("deep")
    top = lying_in(label, 10)
    qtbot.addWidget(top)
    top.show()
    before = label.dressings

    dress(dressed, Scheme.DARK)

    assert 1 <= label.dressings - before <= 3
    assert label.palette().color(QPalette.ColorRole.WindowText) == QColor(DARK.ink)


@pytest.mark.parametrize("kind", [QCheckBox, QRadioButton])
def test_what_is_ticked_is_as_high_as_a_button(
    qtbot: QtBot, dressed: QApplication, kind: type[QCheckBox] | type[QRadioButton]
) -> None:
    box = kind("Yield: fresh mass of each tray")
    qtbot.addWidget(box)
    box.show()

    assert box.sizeHint().height() >= TARGET


def test_a_table_s_heading_leaves_the_rounded_corner_of_its_frame(
    qtbot: QtBot, dressed: QApplication
) -> None:
    table = QTableWidget(2, 2)
    qtbot.addWidget(table)
    table.verticalHeader().hide()
    table.resize(300, 200)
    with qtbot.waitExposed(table):
        table.show()

    picture = table.grab().toImage()

    sheet = QColor(LIGHT.sheet)
    assert picture.pixelColor(30, 0) != sheet  # the frame
    # the curve passes here; a square heading painted it over
    assert any(picture.pixelColor(1 + n, 1 + n) != sheet for n in range(4))
