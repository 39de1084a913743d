"""Tab stops: Tab comes by in reading order, though some rows were made later than what stands below them.

In    the layout of a page
Out   the order of Tab among the widgets in it
Not   which of them can have the focus (each widget)
"""

from collections.abc import Iterator
from itertools import pairwise
from operator import itemgetter

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLayout, QScrollArea, QWidget

__all__ = ["order_stops", "stops_of"]

DIRECT = Qt.FindChildOption.FindDirectChildrenOnly


def order_stops(layout: QLayout) -> None:
    """Lead Tab from one widget of a layout to the next, as they were put in; the first one stays."""
    for stop, following in pairwise(_stops(layout)):
        QWidget.setTabOrder(stop, following)


def _stops(layout: QLayout) -> Iterator[QWidget]:
    for part in _parts(layout):
        yield from _stops(part) if isinstance(part, QLayout) else stops_of(part)


def _parts(layout: QLayout) -> list[QWidget | QLayout]:
    """Its widgets and the layouts within, in their order.

    Not by `itemAt`: what that gives outlives its widget in Python, and whatever Qt makes next in the same
    place of the memory is then taken for it (seen: a window that was a `QWidgetItem`).
    """
    around = layout.parentWidget()
    widgets = () if around is None else around.findChildren(QWidget, options=DIRECT)
    placed: list[tuple[int, QWidget | QLayout]] = [(layout.indexOf(one), one) for one in widgets]
    placed += [(layout.indexOf(one), one) for one in layout.children() if isinstance(one, QLayout)]
    return [part for number, part in sorted(placed, key=itemgetter(0)) if number >= 0]


def stops_of(widget: QWidget) -> Iterator[QWidget]:
    """Where Tab can stop in a widget, itself first, in the order that its layouts have."""
    # a field with buttons of its own goes as a whole: left behind, it would lead into the field once more
    stops = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
    if stops:
        yield widget
    if isinstance(widget, QScrollArea):
        inner = widget.widget()
        if inner is not None:
            yield from stops_of(inner)
    elif not stops and (within := widget.layout()) is not None:
        yield from _stops(within)
