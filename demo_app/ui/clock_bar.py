"""Clock, time left in this step and in all, and whether the show runs late."""

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from demo_app.ui import theme, words

LATE_S = 30.0
"""From here on the bar says by how much the show is late, s."""


def minutes(seconds: float) -> str:
    """Minutes and seconds, with a true minus sign for time overrun."""
    whole = round(abs(seconds))
    sign = "−" if seconds < 0 and whole else ""
    return f"{sign}{whole // 60}:{whole % 60:02d}"


class ClockBar(QWidget):
    """Three clocks side by side, each with its name below its figures."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._figures = ("", "", "")
        self._over = (False, False, False)
        self._size = 16
        # Whether there is nothing but the clock.
        self._alone = False
        self.line = ""

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes."""
        self._size = sizes.panel
        self.setFixedHeight(round(sizes.panel * 3.4))

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(self._size * 18, round(self._size * 3.4))

    def show_times(
        self, clock: str, step_left_s: float | None, all_left_s: float | None, late_s: float = 0.0
    ) -> None:
        """Show the wall clock, and what is left of this step and of the show.

        Parameters
        ----------
        clock : str
            Time of the day as it is written here.
        step_left_s, all_left_s : float or None
            Seconds; None: this show has no times.
        late_s : float
            By how much the steps to come overrun the end, s.
        """
        left = [
            words.text("none") if one is None else minutes(one) for one in (step_left_s, all_left_s)
        ]
        self._alone = step_left_s is None and all_left_s is None
        figures = (clock, left[0], left[1])
        over = (
            False,
            step_left_s is not None and step_left_s < 0,
            (all_left_s is not None and all_left_s < 0) or late_s > LATE_S,
        )
        line = words.text("show.late", time=minutes(late_s)) if late_s > LATE_S else ""
        if (figures, over, line) != (self._figures, self._over, self.line):
            self._figures, self._over, self.line = figures, over, line
            self.setAccessibleName(
                words.text("show.clock.spoken", clock=clock, step=left[0], all=left[1])
            )
            self.setAccessibleDescription(line)
            self.update()

    def names(self) -> tuple[str, str, str]:
        """What stands below the figures."""
        return (
            words.text("show.clock"),
            words.text("show.step_left"),
            self.line or words.text("show.all_left"),
        )

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        with QPainter(self) as painter:
            third = self.width() / 3
            if self._alone:
                third = min(third, self._size * 6)
            for place, (figure, name, over) in enumerate(
                zip(self._figures, self.names(), self._over, strict=True)
            ):
                if self._alone and place:
                    break
                box = QRectF(place * third, 0, third, self.height())
                ink = theme.ALERT if over else theme.INK
                _write(
                    painter, box.adjusted(0, 0, 0, -self._size * 1.3), figure, ink, self._size * 1.6
                )
                below = box.adjusted(0, self._size * 2.1, 0, 0)
                _write(painter, below, name, ink if over else theme.DIM, self._size * 0.85)


def _write(painter: QPainter, box: QRectF, said: str, ink: str, size: float) -> None:
    font = QFont(theme.FONT)
    font.setPixelSize(max(round(size), 11))
    font.setBold(size > 16)
    painter.setFont(font)
    while painter.fontMetrics().horizontalAdvance(said) > box.width() and font.pixelSize() > 9:
        font.setPixelSize(font.pixelSize() - 1)
        painter.setFont(font)
    painter.setPen(QColor(ink))
    painter.drawText(box, 0x0084, said)  # centred both ways
