"""Style sheet: what Fusion leaves plain, drawn in tokens.

In    `Tokens`, a text size in %
Out   the text of a Qt style sheet for the whole program
Not   the colours themselves (`tokens.py`), widgets that paint themselves (each by `tokens_now`)
"""

from dataclasses import asdict
from pathlib import Path

from gui.style.tokens import DARK, Tokens, mixed

__all__ = ["sheet_values", "style_sheet"]

ICONS = Path(__file__).parents[1] / "icons"
RADIUS = 8  # px, corners


def style_sheet(t: Tokens, text_percent: int = 100) -> str:
    """The style sheet of the program; sizes of letters follow the text size in %."""
    sheet = SHEET
    for name, value in sheet_values(t, text_percent).items():
        sheet = sheet.replace(f"@{name}@", value)
    return sheet


def sheet_values(t: Tokens, text_percent: int = 100) -> dict[str, str]:
    """What the names in the style sheet stand for: the tokens, and shades mixed from them."""
    return asdict(t) | {
        "faint": mixed(t.soft_ink, t.ground, 0.55),
        "edge": mixed(t.soft_ink, t.sheet, 0.85),
        "bar": mixed(t.soft_ink, t.sheet, 0.74),
        "arrow_ground": t.ink if t == DARK else t.sheet,  # Qt draws the calendar's arrows black, always
        "pressed": mixed(t.ink, t.sheet, 0.10),
        "switched": mixed(t.accent, t.sheet, 0.16),
        "accent_hover": mixed(t.accent, t.ink, 0.88),
        "notice_ground": mixed(t.notice, t.sheet, 0.12),
        "alarm_ground": mixed(t.alarm, t.sheet, 0.12),
        "calm_ground": mixed(t.calm, t.sheet, 0.12),
        "title_pt": f"{12 * text_percent / 100:g}",
        "answer_pt": f"{13 * text_percent / 100:g}",
        "big_pt": f"{22 * text_percent / 100:g}",
        "small_pt": f"{9 * text_percent / 100:g}",
        "radius": str(RADIUS),
        "icons": ICONS.as_posix(),
        "scheme": "dark" if t == DARK else "light",
    }


# Roles, given by `set_role`:
#   QLabel       title, answer, big, soft, small, notice, alarm, calm
#   QToolButton  place (in the row of places), quiet
#   QPushButton  main (the one accent button of a screen), quiet (no outline); 44 px: rack, rack-main,
#                rack-quiet, switch
#   fields       rack (44 px; a minimum height set on the widget gives way to the sheet's)
#   QScrollArea  read (Tab stops at it, arrows roll it)
#   QFrame       sheet (a panel), band-calm, band-notice, band-alarm, line (a hairline), top, foot;
#                ask-calm, ask-notice (a question above a list)
SHEET = """
QToolTip { background: @raised@; color: @ink@; border: 1px solid @edge@; padding: 6px 8px; }
QLabel[role="title"] { font-size: @title_pt@pt; font-weight: bold; }
QLabel[role="answer"] { font-size: @answer_pt@pt; }
QLabel[role="big"] { font-size: @big_pt@pt; }
QLabel[role="soft"] { color: @soft_ink@; }
QLabel[role="small"] { color: @soft_ink@; font-size: @small_pt@pt; }
QLabel[role="notice"] { color: @notice@; }
QLabel[role="alarm"] { color: @alarm@; }
QLabel[role="calm"] { color: @calm@; }

QFrame[role="sheet"] { background: @sheet@; border: 1px solid @line@; border-radius: @radius@px; }
QFrame[role="band-calm"] { background: @calm_ground@; border: none; border-bottom: 1px solid @line@; }
QFrame[role="band-notice"] { background: @notice_ground@; border: none; border-bottom: 1px solid @line@; }
QFrame[role="band-alarm"] { background: @alarm_ground@; border: none; border-bottom: 1px solid @line@; }
QFrame[role="ask-calm"], QFrame[role="ask-notice"] { border: 1px solid @line@; border-radius: @radius@px; }
QFrame[role="ask-calm"] { background: @calm_ground@; }
QFrame[role="ask-notice"] { background: @notice_ground@; }
QFrame[role="line"] { background: @line@; border: none; max-height: 1px; min-height: 1px; }

QPushButton, QToolButton {
  background: @sheet@; color: @ink@; border: 1px solid @edge@; border-radius: @radius@px;
  padding: 5px 14px; min-height: 20px;
}
QToolButton { padding: 5px 10px; }
QPushButton:hover, QToolButton:hover { background: @raised@; border-color: @soft_ink@; }
QPushButton:pressed, QToolButton:pressed { background: @pressed@; }
QPushButton:checked, QToolButton:checked { background: @accent@; color: @on_accent@; border-color: @accent@; }
QPushButton:focus, QToolButton:focus { border: 2px solid @accent@; padding: 4px 13px; }
QToolButton:focus { padding: 4px 9px; }
QPushButton:checked:focus, QToolButton:checked:focus { border: 2px solid @ink@; }
QPushButton:disabled, QToolButton:disabled { color: @faint@; border-color: @line@; background: @ground@; }
QToolButton::menu-indicator { image: none; }
QDialogButtonBox { dialogbuttonbox-buttons-have-icons: 0; }

QPushButton[role="main"], QPushButton[role="rack-main"] {
  background: @accent@; color: @on_accent@; border-color: @accent@; font-weight: bold;
}
QPushButton[role="main"]:hover, QPushButton[role="rack-main"]:hover { background: @accent_hover@; }
QPushButton[role="main"]:focus, QPushButton[role="rack-main"]:focus { border: 2px solid @ink@; }
QPushButton[role="main"]:disabled, QPushButton[role="rack-main"]:disabled {
  background: @ground@; color: @faint@; border-color: @line@;
}
QPushButton[role="rack"], QPushButton[role="rack-main"], QToolButton[role="rack"] { min-height: 32px; }
QPushButton[role="switch"] { min-height: 32px; padding: 5px 9px; }
QPushButton[role="switch"]:checked {
  background: @switched@; color: @ink@; border: 2px solid @accent@; padding: 4px 8px;
}
QPushButton[role="switch"]:focus, QPushButton[role="switch"]:checked:focus {
  border: 2px solid @ink@; padding: 4px 8px;
}
QPushButton[role="switch"]:disabled, QPushButton[role="switch"]:checked:disabled {
  background: @ground@; color: @faint@; border: 1px solid @line@; padding: 5px 9px;
}
QPushButton[role="quiet"], QPushButton[role="rack-quiet"], QToolButton[role="quiet"] {
  background: transparent; border-color: transparent;
}
QPushButton[role="rack-quiet"] { min-height: 32px; }
QToolButton[role="quiet"] { padding: 5px 7px; }
QToolButton[role="quiet"]:focus { padding: 4px 6px; }
QPushButton[role="quiet"]:hover, QPushButton[role="rack-quiet"]:hover, QToolButton[role="quiet"]:hover {
  background: @pressed@;
}
QPushButton[role="quiet"]:focus, QPushButton[role="rack-quiet"]:focus, QToolButton[role="quiet"]:focus {
  border: 2px solid @accent@;
}
QPushButton[role="quiet"]:checked, QToolButton[role="quiet"]:checked { background: @accent@; }

QFrame[role="top"] { background: @sheet@; border: none; border-bottom: 1px solid @line@; }
QFrame[role="foot"] { background: @ground@; border: none; border-top: 1px solid @line@; }
QToolButton[role="place"] {
  background: transparent; color: @soft_ink@; border: 2px solid transparent; border-radius: 0;
  border-bottom: 3px solid transparent; padding: 8px 10px 7px 8px; min-height: 28px;
}
QToolButton[role="place"]:hover { color: @ink@; background: @raised@; }
QToolButton[role="place"]:checked { color: @ink@; border-bottom-color: @accent@; background: transparent; }
QToolButton[role="place"]:focus {
  border: 2px solid @accent@; border-bottom-width: 3px; padding: 8px 10px 7px 8px;
}

QLineEdit, QComboBox, QDateTimeEdit, QPlainTextEdit, QTextEdit {
  background: @sheet@; color: @ink@; border: 1px solid @edge@; border-radius: @radius@px;
  padding: 5px 8px; selection-background-color: @accent@; selection-color: @on_accent@;
}
QLineEdit { placeholder-text-color: @soft_ink@; }
QLineEdit, QComboBox, QDateTimeEdit { min-height: 1.1em; }
QLineEdit[role="rack"], QComboBox[role="rack"], QDateTimeEdit[role="rack"] { min-height: 32px; }
QCheckBox[role="rack"] { min-height: 44px; }
QLineEdit:focus, QComboBox:focus, QDateTimeEdit:focus, QPlainTextEdit:focus, QTextEdit:focus {
  border: 2px solid @accent@; padding: 4px 7px;
}
QLineEdit:disabled, QComboBox:disabled, QDateTimeEdit:disabled {
  color: @faint@; border-color: @line@; background: @ground@;
}
QComboBox, QDateTimeEdit { padding-right: 28px; }
QComboBox::drop-down, QDateTimeEdit::drop-down { border: none; width: 28px; }
QComboBox::down-arrow, QDateTimeEdit::down-arrow {
  image: url("@icons@/chevron-@scheme@.svg"); width: 14px; height: 14px;
}
QPushButton::menu-indicator {
  image: url("@icons@/chevron-@scheme@.svg"); width: 14px; height: 14px;
  subcontrol-origin: padding; subcontrol-position: right center; right: 8px;
}
QPushButton[has-menu="true"] { padding-right: 28px; }
QComboBox { combobox-popup: 0; }
QComboBox QAbstractItemView {
  background: @raised@; border: 1px solid @edge@; border-radius: 0; padding: 4px;
}
QComboBox QAbstractItemView::item { min-height: 32px; padding: 0 5px; }

QCalendarWidget QToolButton#qt_calendar_prevmonth, QCalendarWidget QToolButton#qt_calendar_nextmonth {
  background: @arrow_ground@;
}

QCheckBox, QRadioButton { spacing: 8px; min-height: 32px; }
QCheckBox::indicator, QRadioButton::indicator { width: 16px; height: 16px; border: 1px solid @soft_ink@; }
QCheckBox::indicator { border-radius: 4px; background: @sheet@; }
QRadioButton::indicator { border-radius: 9px; background: @sheet@; }
QCheckBox::indicator:checked {
  background: @accent@; border-color: @accent@; image: url("@icons@/tick-@scheme@.svg");
}
QRadioButton::indicator:checked { border: 5px solid @accent@; width: 8px; height: 8px; }
QCheckBox::indicator:focus { border: 2px solid @accent@; }
QCheckBox::indicator:checked:focus { border: 2px solid @ink@; }
QRadioButton::indicator:focus { border: 2px solid @accent@; width: 14px; height: 14px; }
QRadioButton::indicator:checked:focus { border: 5px solid @ink@; width: 8px; height: 8px; }
QCheckBox:focus, QRadioButton:focus { color: @accent@; }

QAbstractItemView { background: @sheet@; border: 1px solid @line@; border-radius: @radius@px; outline: none; }
QAbstractItemView[role="plain"] { background: transparent; border: none; border-radius: 0; }
QAbstractItemView[role="rows"] { padding: 3px; }
QAbstractItemView[role="choices"] { padding: 2px 7px; }
QListWidget { padding: 3px; }
QListWidget::item { padding: 0px 7px; border-radius: 6px; }
QListWidget::item:selected { background: @accent@; color: @on_accent@; }
QAbstractItemView:focus { border-color: @accent@; }
QTableView[role="plain"] { border: 1px solid transparent; border-radius: 4px; }
QTableView[role="plain"]:focus { border-color: @accent@; }
QHeaderView { background: transparent; border: none; }
QHeaderView::section {
  background: transparent; color: @soft_ink@; border: none; border-bottom: 1px solid @line@; padding: 6px 8px;
}
QTableView::item { padding: 0px 5px; }  /* and 3 px of Qt's own: below their heading */
QTableView { gridline-color: @line@; selection-background-color: @accent@; selection-color: @on_accent@; }

QMenu { background: @raised@; color: @ink@; border: 1px solid @edge@; padding: 6px; }
QMenu::item { padding: 7px 28px 7px 28px; border-radius: 6px; }
QMenu::item:selected { background: @accent@; color: @on_accent@; }
QMenu::item:disabled { color: @faint@; background: transparent; }
QMenu::separator { height: 1px; background: @line@; margin: 6px 8px; }
QMenu::indicator { width: 14px; height: 14px; left: 8px; }
QMenu::indicator:checked { image: url("@icons@/dot-@scheme@.svg"); }

QProgressBar { background: @line@; border: none; border-radius: 3px; max-height: 6px; min-height: 6px; }
QProgressBar::chunk { background: @accent@; border-radius: 3px; }

QScrollArea { background: transparent; border: none; }
QScrollArea[role="read"] { border: 1px solid transparent; border-radius: @radius@px; }
QScrollArea[role="read"]:focus { border-color: @accent@; }
QScrollBar { background: transparent; border: none; margin: 0; }
QScrollBar:vertical { width: 14px; }
QScrollBar:horizontal { height: 14px; }
QScrollBar::handle { background: @bar@; border: 3px solid transparent; border-radius: 7px; }
QScrollBar::handle:vertical { min-height: 44px; }
QScrollBar::handle:horizontal { min-width: 44px; }
QScrollBar::handle:hover { background: @soft_ink@; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QSplitter::handle { background: transparent; }
QSplitter::handle:hover { background: @line@; }
"""
