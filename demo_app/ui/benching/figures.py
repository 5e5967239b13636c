"""Figures on the screen: the first one large, all with the range in which nine of ten lie."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from demo_app.content.bench.answer import Figure
from demo_app.ui import words
from demo_app.ui.benching.said import number


def in_words(percent: float) -> str:
    """A probability as people say it.

    Examples
    --------
    >>> [in_words(p) for p in (0.4, 31, 81, 99.5)]
    ['hardly ever', 'about 3 in 10', 'about 8 in 10', 'nearly always']
    """
    if percent < 3:
        return words.text("bench.hardly")
    if percent > 97:
        return words.text("bench.nearly")
    if percent < 8 or percent > 92:
        return words.text("bench.in_twenty", count=round(percent / 5))
    return words.text("bench.in_ten", count=round(percent / 10))


def middle(figure: Figure) -> str:
    """A figure's likeliest value with its unit."""
    return _with_unit(number(figure, figure.middle), figure, figure.middle)


def span(figure: Figure) -> str:
    """A figure's range: "from 6 to 8 s"."""
    low, high = (number(figure, one) for one in (figure.low, figure.high))
    if low == high == number(figure, figure.middle):
        return words.text("bench.no_range")
    return words.text("bench.range", low=low, high=_with_unit(high, figure, figure.high))


def _with_unit(said: str, figure: Figure, value: float | None) -> str:
    unit = words.unit(figure.unit)
    return f"{said}\u00a0{unit}" if unit and value is not None else said


class BigFigure(QWidget):
    """Label, value, range, and a probability in words."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.label, self.value, self.range, self.odds = (plain(self) for _ in range(4))
        self.label.setObjectName("title")
        self.value.setObjectName("main")
        self.range.setObjectName("range")
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(2)
        for label in (self.label, self.value, self.range, self.odds):
            box.addWidget(label)
        box.addStretch(1)

    def show_figure(self, figure: Figure, texts: Mapping[str, str]) -> None:
        """Show a figure."""
        self.label.setText(texts[figure.id])
        self.value.setText(middle(figure))
        self.range.setText(span(figure))
        said = ""
        if figure.unit == "%" and figure.middle is not None:
            said = in_words(figure.middle)
        self.odds.setText(said)
        self.odds.setVisible(bool(said))
        told = ", ".join(
            one for one in (texts[figure.id], middle(figure), span(figure), said) if one
        )
        self.setAccessibleName(told)


class FigureList(QWidget):
    """The further figures: name, value and range in columns."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setColumnStretch(0, 3)
        self._grid.setColumnStretch(1, 2)
        self._grid.setColumnStretch(2, 3)
        self._rows: list[tuple[QLabel, QLabel, QLabel]] = []

    def show_figures(self, figures: Sequence[Figure], texts: Mapping[str, str]) -> None:
        """Show figures, one a row."""
        while len(self._rows) < len(figures):
            made = plain(self), plain(self), plain(self)
            made[0].setObjectName("quiet")
            made[1].setObjectName("value")
            for column, label in enumerate(made):
                self._grid.addWidget(label, len(self._rows), column)
            self._rows.append(made)
        for row, labels in enumerate(self._rows):
            for label in labels:
                label.setVisible(row < len(figures))
            if row < len(figures):
                one = figures[row]
                for label, said in zip(
                    labels, (texts[one.id], middle(one), span(one)), strict=True
                ):
                    label.setText(said)


def breakable(said: str) -> str:
    """Words that may also be broken within the path of a file."""
    return said.replace("/", "/\u200b").replace("\\", "\\\u200b").replace("_", "_\u200b")


def plain(parent: QWidget) -> QLabel:
    """A label that wraps, and shows signs as they are."""
    made = QLabel(parent)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setWordWrap(True)
    made.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
    made.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
    return made
