"""Verdict page: one crop and measure, from the sentence down to how it was worked out.

In    a `VerdictState`
Out   sentences, table, charts, why, how sure; `save_wanted` with a chart
Not   which crop is looked at (`head.py`), the words (`answer/view.py`)
"""

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from data.trial import MeasureKind
from data.verdict.traynumbers import NoNumber
from gui.answer.blocks import BlockChart
from gui.answer.chartpanel import ChartPanel
from gui.answer.drawnchart import DrawnChart
from gui.answer.intervals import IntervalChart
from gui.answer.media import MediaChart
from gui.answer.ranks import RankChart
from gui.answer.view import (
    VerdictState,
    answers_of,
    block_lines,
    head_words,
    intervals_of,
    rank_lines,
    read_day_words,
    series_of,
    table_rows,
)
from gui.answer.why import apart_row, care_words, how_words, part_rows, same_otherwise, sure_words, why_words
from gui.controls.fold import Fold
from gui.controls.rolling import roll_down
from gui.controls.sides import Sides
from gui.language.spoken import spoken
from gui.style.palette import Space, set_role
from gui.style.words import quotable, wrapped
from gui.verdict.answerlist import AnswerList
from gui.verdict.table import VerdictTable

if TYPE_CHECKING:
    from data.verdict.verdicts import CropVerdict

__all__ = ["VerdictPage"]


class VerdictPage(QScrollArea):
    """Scrolls; everything in it can be read and copied."""

    save_wanted = Signal(object)  # DrawnChart

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        roll_down(self)
        self.body = QWidget(self)
        self.column = QVBoxLayout(self.body)
        self.column.setContentsMargins(0, 0, Space.S, 0)
        self.column.setSpacing(Space.M)
        self._make_answer()
        self._make_charts()
        self._make_reasons()
        self.column.addStretch(1)
        self.setWidget(self.body)

    # --- making

    def _make_answer(self) -> None:
        panel, column = self._panel()
        self.head = wrapped("", panel, "soft")
        self.answers = AnswerList(panel)
        self.care, self.nothing = self._words(panel), self._words(panel)
        set_role(self.care, "notice")
        for part in (self.head, self.answers, self.care, self.nothing):
            column.addWidget(part)
        column.addStretch(1)
        self.answer_panel = panel

    def _make_charts(self) -> None:
        """The chart of intervals beside the sentences where these keep their whole lines, then the table."""
        self.intervals, self.ranks = IntervalChart(), RankChart()
        self.blocks, self.growth = BlockChart(), MediaChart()
        self.panels = {chart: ChartPanel(chart, self.body) for chart in self.charts}
        for chart_panel in self.panels.values():
            chart_panel.save_wanted.connect(self.save_wanted)
        self._make_table()
        first, ranks, *below = (self.panels[chart] for chart in self.charts)
        self.column.addWidget(Sides((self.answer_panel, first), (1, 1), self.body))
        self.column.addWidget(Sides((self.table_panel, ranks), (6, 5), self.body))
        self.column.addWidget(Sides(below, (1, 1), self.body))

    def _make_table(self) -> None:
        panel, column = self._panel()
        self.table = VerdictTable(
            self.tr("Media"),
            (
                self.tr("Medium"),
                self.tr("Trays"),
                self.tr("Mean"),
                self.tr("Difference"),
                self.tr("Interval"),
                self.tr("Answer"),
                self.tr("Rank"),
            ),
            texts=(0, 5),
            parent=panel,
        )
        self.table_title = QLabel(panel)
        set_role(self.table_title, "title")
        column.addWidget(self.table_title)
        column.addWidget(self.table)
        column.addStretch(1)
        self.table_panel = panel

    def _make_reasons(self) -> None:
        self.why_panel, column = self._panel(self.tr("What moves it"))
        self.why = self._words(self.why_panel)
        self.parts = VerdictTable(
            self.tr("Parts of the score"),
            (
                self.tr("Medium"),
                self.tr("Part"),
                self.tr("Its mean"),
                self.tr("Trusted"),
                self.tr("Worth, points"),
            ),
            texts=(0, 1),
            parent=self.why_panel,
        )
        column.addWidget(self.why)
        column.addWidget(self.parts)
        column.addStretch(1)
        self.sure_panel, column = self._panel(self.tr("How sure it is"))
        self.sure = self._words(self.sure_panel)
        self.same = Fold(self.tr("Read otherwise, the answer stays"), self.sure_panel)
        column.addWidget(self.sure)
        column.addWidget(self.same)
        column.addStretch(1)
        self.column.addWidget(Sides((self.why_panel, self.sure_panel), (1, 1), self.body))
        self.noted_panel, column = self._panel(self.tr("What else tells them apart"))
        self.apart = VerdictTable(
            self.tr("What else tells them apart"),
            (
                self.tr("Medium"),
                self.tr("What"),
                self.tr("Difference"),
                self.tr("Interval"),
                self.tr("What tells it"),
            ),
            texts=(0, 1, 4),
            parent=self.noted_panel,
        )
        self.noted = self._words(self.noted_panel)
        column.addWidget(self.apart)
        column.addWidget(self.noted)
        self.column.addWidget(self.noted_panel)
        panel, column = self._panel()
        self.how = Fold(self.tr("How this was worked out"), panel)
        column.addWidget(self.how)
        self.how_panel = panel
        self.column.addWidget(panel)

    def _panel(self, title: str = "") -> tuple[QFrame, QVBoxLayout]:
        panel = QFrame(self.body)
        set_role(panel, "sheet")
        column = QVBoxLayout(panel)
        column.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        column.setSpacing(Space.S)
        if title:
            label = QLabel(title, panel)
            set_role(label, "title")
            column.addWidget(label)
        return panel, column

    @staticmethod
    def _words(parent: QWidget) -> QLabel:
        return quotable(parent)

    @property
    def charts(self) -> tuple[DrawnChart, ...]:
        """All charts, in reading order."""
        return (self.intervals, self.ranks, self.blocks, self.growth)

    # --- showing

    def show_state(self, state: VerdictState) -> None:
        """Show the verdict that is looked at."""
        found = state.found
        if found is None:
            return
        self._show_answer(found)
        self._show_charts(found, state)
        self._show_reasons(found, state)

    def _show_answer(self, found: "CropVerdict") -> None:
        self.head.setText(head_words(found))
        self.answers.show_answers(answers_of(found))
        self._keep_lines()
        care = care_words(found)
        self.care.setText(care)
        self.care.setVisible(bool(care))
        nothing = "" if found.verdict.media else self._nothing_words(found)
        self.nothing.setText(nothing)
        self.nothing.setVisible(bool(nothing))
        set_role(self.nothing, "answer")

    def _nothing_words(self, found: "CropVerdict") -> str:
        if found.on_day is None:
            return self.tr(
                "There is nothing to compare yet: no tray has a photo that can be used. Bring photos in at "
                "Intake."
            )
        reasons = {number.why_none for number in found.numbers}
        if NoNumber.OTHER_METHOD in reasons:
            words = self.tr(
                "There is nothing to compare yet: the photos of day {day} were scored by different versions "
                "of the method, and these are never mixed. Let Intake score the photos again."
            )
        elif reasons == {NoNumber.NO_PHOTO}:
            words = self.tr(
                "There is nothing to compare: day {day} has passed without a photo that can be used. If "
                "there are photos of another day, name that day in the plan; the verdict says then that it "
                "was changed."
            )
        else:
            words = self.tr(
                "There is nothing to compare yet: no tray has a photo of day {day} that can be used. "
                "Photograph all trays on that day after sowing, and bring the photos in at Intake."
            )
        return words.format(day=read_day_words(found))

    def _show_charts(self, found: "CropVerdict", state: VerdictState) -> None:
        verdict, unit = found.verdict, spoken(found.scale.unit)
        rows = table_rows(found)
        self.table_panel.setVisible(bool(rows))
        title = self.tr("Means of {trays} trays in {blocks} blocks, {unit}")
        if verdict.blocks == 1:
            title = self.tr("Means of {trays} trays in one block, {unit}")
        if verdict.trays == 1:
            title = self.tr("One tray, {unit}")
        self.table_title.setText(title.format(trays=verdict.trays, blocks=verdict.blocks, unit=unit))
        self.table.show_rows(
            [(r.medium, r.trays, r.mean, r.difference, r.interval, r.answer, r.rank) for r in rows]
        )
        self.table_panel.setProperty("wanted", self.table.wanted + 2 * Space.M)
        intervals, ranks, blocks = intervals_of(found), rank_lines(found), block_lines(found)
        self.intervals.show_intervals(intervals)
        self.ranks.show_lines(ranks)
        means = {line.medium: line.mean for line in verdict.media if line.mean is not None}
        media = {line.medium: series_of(found, line.medium) for line in verdict.media}
        self.blocks.show_blocks(media, blocks, means, unit)
        growth = state.reading.growth.get(found.crop, ())
        series = {line.treatment: series_of(found, line.treatment) for line in growth}
        grown = growth if found.kind is MeasureKind.SCORE else ()
        self.growth.show_growth(grown, series, found.on_day)
        shown: Sequence[object] = (intervals.lines, ranks, blocks, [line for line in grown if line.points])
        caption = f"{found.trial}, {found.crop}. {head_words(found)}"
        for chart, lines in zip(self.charts, shown, strict=True):
            chart.caption = caption
            self.panels[chart].setVisible(bool(lines))

    def _show_reasons(self, found: "CropVerdict", state: VerdictState) -> None:
        why = why_words(found)
        self.why.setText("\n\n".join(why))
        self.why.setVisible(bool(why))
        parts = part_rows(found)
        self.parts.setVisible(bool(parts))
        self.parts.show_rows([(p.medium, p.part, p.value, p.trusted, p.points) for p in parts])
        self.why_panel.setProperty("wanted", self.parts.wanted + 2 * Space.M)
        self.why_panel.setVisible(bool(why or parts))
        sure = list(sure_words(found))
        last = state.reading.last_round(found.crop)
        if last is not None and last.given:
            sure += [*(spoken(words) for words in last.words), spoken(last.trust)]
        same = same_otherwise(found)
        self.sure.setText("\n\n".join(sure))
        self.same.say(same)
        self.sure_panel.setVisible(bool(sure or same))
        self._show_noted(state)
        self.how.say(how_words(found) if found.verdict.media else ())
        self.how_panel.setVisible(bool(found.verdict.media))

    def fit(self) -> None:
        """Letters have another size."""
        for table in (self.table, self.parts, self.apart):
            table.fit()
        self._keep_lines()

    def _keep_lines(self) -> None:
        """No chart beside the sentences where it would break their lines sooner than reading asks for."""
        self.answer_panel.setProperty("wanted", self.answers.wanted + 2 * Space.M)

    def _show_noted(self, state: VerdictState) -> None:
        noted = state.reading.noted
        said = [spoken(words) for words in noted.climate]
        if noted.words:
            said.append(
                self.tr(
                    "Differences are from the trusted medium, over all crops of the trial. None of this "
                    "moves the answer above. What is known of the media besides stands in Materials."
                )
            )
        self.apart.show_rows([apart_row(one) for one in noted.apart])
        self.apart.setVisible(bool(noted.apart))
        self.noted.setText("\n\n".join(said))
        self.noted_panel.setVisible(bool(said))
