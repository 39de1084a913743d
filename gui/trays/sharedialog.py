"""Share dialog: conditions of one tray for many, chosen once.

In    what the fields of the tray say, which of them were changed, the groups that it belongs to, what the
      plans of their trials vary
Out   `names` and `trays` as they were chosen, once accepted
Not   what would change (`sharing.py`), keeping it (`moretrays.py`)
"""

from collections.abc import Collection, Mapping, Sequence

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QCheckBox, QComboBox, QDialog, QGridLayout, QPushButton, QWidget

from data.records import NewTray, Tray
from gui.controls.form import fields, fit, lay_out
from gui.language.plainbutton import plain_button
from gui.plan.cautions import grown_cautions
from gui.style.palette import Space, set_role
from gui.style.words import heading, soft, wrapped
from gui.trays.sharing import Group, effect_words, planned_words, shareables

__all__ = ["ShareDialog"]


class ShareDialog(QDialog):
    """Ticks for the conditions, a list of groups, and what it would do."""

    def __init__(
        self,
        model: NewTray,
        changed: Collection[str],
        groups: Sequence[Group],
        varied: Mapping[str, Collection[str]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._model, self._varied = model, varied
        self.setWindowTitle(self.tr("For more trays"))
        title = heading(self.tr("Which conditions of {code}, for which trays?").format(code=model.code), self)
        about = soft(
            self.tr("Blackout counts from the sowing of each tray. All of it is one step of Undo."), self
        )
        self.ticks: dict[str, QCheckBox] = {}
        form = fields()
        form.addRow(self._make_ticks(changed))
        self.group = self._make_group(groups)
        form.addRow(self.tr("&For"), self.group)
        self.effect, self.caution = soft("", self), wrapped("", self, "notice")
        form.addRow(self.effect)
        leave = QPushButton(self.tr("Leave"), self)
        leave.clicked.connect(self.reject)
        self.keep = QPushButton(self)
        self.keep.setDefault(True)
        set_role(self.keep, "main")
        self.keep.clicked.connect(self.accept)
        lay_out(self, [title, about], form, self.caution, [leave, self.keep], 76, rolls=True)
        self._tell()

    def _make_ticks(self, changed: Collection[str]) -> QWidget:
        """Two columns; what was changed last is ticked."""
        part = QWidget(self)
        grid = QGridLayout(part)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(Space.L)
        grid.setVerticalSpacing(Space.XS)
        for number, one in enumerate(shareables(self._model)):
            tick = QCheckBox(plain_button(f"{one.words}: {one.value}"), part)
            tick.setAccessibleName(f"{one.words}: {one.value}")
            tick.setChecked(one.name in changed)
            tick.toggled.connect(self._tell)
            self.ticks[one.name] = tick
            grid.addWidget(tick, number // 2, number % 2)
        return part

    def _make_group(self, groups: Sequence[Group]) -> QComboBox:
        box = QComboBox(self)
        for group in groups:
            box.addItem(group.words, group)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(30)
        box.currentIndexChanged.connect(self._tell)
        return box

    @property
    def names(self) -> frozenset[str]:
        """The conditions that are ticked."""
        return frozenset(name for name, tick in self.ticks.items() if tick.isChecked())

    @property
    def trays(self) -> tuple[Tray, ...]:
        """The trays of the chosen group."""
        group = self.group.currentData()
        return group.trays if isinstance(group, Group) else ()

    @Slot()
    def _tell(self) -> None:
        names, trays = self.names, self.trays
        self.effect.setText("\n".join(effect_words(self._model, names, trays)))
        feeds = [self._model.feed] if "feed" in names else []
        heated = "heat_mat" in names and bool(self._model.heat_mat)
        planned = planned_words(self._model, names, trays, self._varied)
        self.caution.setText("\n".join(filter(None, (planned, grown_cautions(feeds, heated=heated)))))
        self.caution.setVisible(bool(self.caution.text()))
        self.keep.setText(self.tr("Keep for {n} trays").format(n=len(trays)))
        self.keep.setEnabled(bool(names))
        fit(self)
