"""Help window: the pages of help beside the work, with a search over all of them.

In    the name of a page, usually that of the place the grower is at
Out   a window that stays open while the work goes on
Not   the pages (`gui/help`), searching them (`helpbook.py`), the keys (`keysheet.py`)
"""

from PySide6.QtCore import QEvent, QLocale, Qt, QUrl, Slot
from PySide6.QtGui import QDesktopServices, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QSplitter,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from gui.controls.form import open_within_screen
from gui.controls.rows import give_rows
from gui.frame.helpbook import ORDER, Page, found, pages
from gui.style.palette import Space
from gui.style.words import wrapped

__all__ = ["HelpWindow"]

NAME = Qt.ItemDataRole.UserRole
WORDS = NAME + 1


class HelpWindow(QDialog):
    """All pages: a list, a search, the page."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Help"))
        self.setModal(False)
        self._pages = {page.name: page for page in pages(QLocale().name()[:2])}
        self._search = self._make_search()
        self._list = self._make_list()
        self._text = self._make_text()
        self._lay_out()
        self._list_pages()
        self.show_page(ORDER[0])

    def _make_search(self) -> QLineEdit:
        field = QLineEdit(self)
        field.setPlaceholderText(self.tr("Search the help"))
        field.setAccessibleName(self.tr("Search the help"))
        field.setClearButtonEnabled(True)
        field.textChanged.connect(self._look_for)
        QShortcut(QKeySequence(QKeySequence.StandardKey.Find), self, field.setFocus)
        return field

    def _make_list(self) -> QListWidget:
        made = QListWidget(self)
        made.setAccessibleName(self.tr("Pages"))
        made.setWordWrap(True)
        give_rows(made)
        made.currentItemChanged.connect(self._chosen)
        return made

    def _make_text(self) -> QTextBrowser:
        made = QTextBrowser(self)
        made.setAccessibleName(self.tr("Page"))
        made.setOpenLinks(False)
        made.setFrameShape(QFrame.Shape.NoFrame)
        made.anchorClicked.connect(self._follow)
        made.document().setDocumentMargin(Space.L)
        return made

    def _lay_out(self) -> None:
        left = QWidget(self)
        column = QVBoxLayout(left)
        column.setContentsMargins(Space.L, Space.L, Space.S, Space.L)
        column.setSpacing(Space.S)
        column.addWidget(self._search)
        self._none = wrapped(self.tr("Nothing is said about that."), left, "soft")
        self._none.hide()
        column.addWidget(self._none)
        column.addWidget(self._list, 1)
        halves = QSplitter(self)
        right = QWidget(self)
        beside = QVBoxLayout(right)
        beside.setContentsMargins(0, Space.L, Space.L, Space.L)
        beside.addWidget(self._text)
        halves.addWidget(left)
        halves.addWidget(right)
        halves.setStretchFactor(1, 1)
        halves.setChildrenCollapsible(False)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(halves)
        width = self.fontMetrics().averageCharWidth()
        halves.setSizes([width * 32, width * 84])
        open_within_screen(self, width * 116, self.fontMetrics().height() * 34)

    # --- what is shown

    def show_page(self, name: str) -> None:
        """Show a page by its name; one that there is not leaves what is shown."""
        if name not in self._pages:
            return
        self._search.clear()
        for row in range(self._list.count()):
            if self._list.item(row).data(NAME) == name:
                self._list.setCurrentRow(row)

    @property
    def page(self) -> Page:
        """The page that is shown."""
        item = self._list.currentItem()
        return self._pages[ORDER[0] if item is None else item.data(NAME)]

    def _list_pages(self) -> None:
        self._list.clear()
        for page in self._pages.values():
            self._add(page.title, page.name, "")

    def _add(self, words: str, name: str, looked_for: str) -> None:
        item = QListWidgetItem(words)
        item.setData(NAME, name)
        item.setData(WORDS, looked_for)
        self._list.addItem(item)

    @Slot(str)
    def _look_for(self, text: str) -> None:
        if not text.strip():
            now = self.page.name
            self._list_pages()
            self._none.hide()
            self._list.setCurrentRow(ORDER.index(now))
            return
        hits = found(text, tuple(self._pages.values()))
        self._list.clear()
        for hit in hits:
            self._add(f"{hit.title}\n{hit.line}", hit.page, text.split()[0])
        self._none.setVisible(not hits)
        if hits:
            self._list.setCurrentRow(0)

    def changeEvent(self, event: QEvent) -> None:
        """Words of a page keep the colours that they were laid out in: a link would be dark on dark."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange and hasattr(self, "_text"):
            rolled = self._text.verticalScrollBar().value()
            self._chosen(self._list.currentItem())
            self._text.verticalScrollBar().setValue(rolled)

    @Slot(QListWidgetItem)
    def _chosen(self, item: QListWidgetItem | None) -> None:
        if item is None:
            return
        self._text.setMarkdown(self._pages[item.data(NAME)].text)
        looked_for = item.data(WORDS)
        if looked_for:
            self._mark(looked_for, self._nth_of_its_page(item))

    def _nth_of_its_page(self, item: QListWidgetItem) -> int:
        rows = range(self._list.row(item))
        return sum(self._list.item(row).data(NAME) == item.data(NAME) for row in rows)

    def _mark(self, word: str, nth: int) -> None:
        """Select the word in the n-th paragraph that has it."""
        paragraphs: list[int] = []
        while self._text.find(word):
            block = self._text.textCursor().blockNumber()
            if block not in paragraphs:
                paragraphs.append(block)
            if len(paragraphs) > nth:
                return

    @Slot(QUrl)
    def _follow(self, link: QUrl) -> None:
        name = link.toString().removesuffix(".md")
        if name in self._pages:
            self.show_page(name)
        elif link.scheme() in ("https", "http"):
            QDesktopServices.openUrl(link)
