"""A table to read: columns as wide as their words need, all rows shown, cells by arrow keys."""

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QSizePolicy,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

_AIR = 12
_MOST_LINES = 4


class PlainTable(QTableWidget):
    """Rows of words under a header; nothing can be changed in it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: list[list[str]] = []
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setTabKeyNavigation(False)
        self.setWordWrap(True)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.verticalHeader().hide()
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
        )
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def show_rows(self, rows: Sequence[Sequence[str]]) -> None:
        """Show a header and the rows below it."""
        self._rows = [list(row) for row in rows]
        head, *rest = self._rows
        place = self.currentRow(), self.currentColumn()
        self.setColumnCount(len(head))
        self.setRowCount(len(rest))
        self.setHorizontalHeaderLabels(list(head))
        for row, cells in enumerate(rest):
            for column, said in enumerate(cells):
                self.setItem(row, column, QTableWidgetItem(said))
        if place[0] >= 0 and place[0] < len(rest):
            self.setCurrentCell(*place)
        elif rest:
            self.setCurrentCell(0, 0)
        self._fit()

    def rows(self) -> list[list[str]]:
        """All words, the header first."""
        return self._rows

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fit()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(400, self.height())

    def _fit(self) -> None:
        """Widths by the longest words, what is left over shared; heights by what wraps."""
        columns = self.columnCount()
        if not self._rows or columns != len(self._rows[0]):
            return  # Being filled.
        metrics = QFontMetrics(self.font())
        least, whole = [], []
        for column in range(columns):
            cells = [row[column] for row in self._rows]
            # A header may break between words; the cells below should not.
            words = [word for word in cells[0].split() if word] or [""]
            need = max(metrics.horizontalAdvance(one) for one in (*words, *cells[1:]))
            least.append(need + _AIR)
            whole.append(max(metrics.horizontalAdvance(one) for one in cells) + _AIR)
        room = self.viewport().width()
        if sum(whole) <= room:
            share = min((room - sum(whole)) // columns, 60)
            widths = [one + share for one in whole]
        elif sum(least) <= room:
            spare, wish = room - sum(least), sum(whole) - sum(least)
            widths = [
                a + spare * (b - a) // max(wish, 1) for a, b in zip(least, whole, strict=True)
            ]
        else:
            widths = self._shrunk(least, room)
        for column, width in enumerate(widths):
            self.setColumnWidth(column, width)
        self._heights(metrics, widths)

    @staticmethod
    def _shrunk(least: list[int], room: int) -> list[int]:
        """Too wide even so: the widest give way, and wrap or are scrolled to."""
        widths = list(least)
        floor = 90
        while sum(widths) > room and max(widths) > floor:
            place = widths.index(max(widths))
            widths[place] = max(floor, widths[place] - max(4, (sum(widths) - room) // 4))
        return widths

    def _heights(self, metrics: QFontMetrics, widths: list[int]) -> None:
        def tall(said: str, width: int) -> int:
            box = QRect(0, 0, max(width - _AIR + 2, 10), 9999)
            flags = int(Qt.TextFlag.TextWordWrap)
            return metrics.boundingRect(box, flags, said).height()

        head, *rest = self._rows
        top = max(tall(said, width) for said, width in zip(head, widths, strict=True)) + 8
        self.horizontalHeader().setFixedHeight(min(top, _MOST_LINES * metrics.height() + 8))
        whole = self.horizontalHeader().height()
        for row, cells in enumerate(rest):
            high = max(tall(said, width) for said, width in zip(cells, widths, strict=True)) + 8
            self.setRowHeight(row, high)
            whole += high
        bar = self.horizontalScrollBar()
        if sum(widths) > self.viewport().width():
            whole += bar.sizeHint().height()
        if self.height() != whole + 4:
            self.setFixedHeight(whole + 4)
