"""Colours and sizes: a dark, quiet stage that a projector carries to the back row."""

from dataclasses import dataclass

from PySide6.QtGui import QColor, QPalette

STAGE = "#08090b"
PANEL = "#15191e"
RAISED = "#252c34"
EDGE = "#5f6b77"
INK = "#f4f2ec"
DIM = "#a9b3bd"
ACCENT = "#5fd3bc"
ALERT = "#ffd166"
# Orange and blue differ in lightness and hue for every common colour blindness; words and arrows
# always stand beside them.
TENSION = "#ff9f43"
COMPRESSION = "#5aa9ff"
NEUTRAL = "#33383f"
# Cold to hot, lightness rising all the way so that it also reads in grey.
HEAT = ("#20242c", "#4b2a63", "#96345f", "#d65a3a", "#f6a02d", "#fff3a6")
CURVES = ("#f4f2ec", "#5aa9ff", "#ff9f43", "#5fd3bc")

FONT = "DejaVu Sans"

TOUCH_PX = 44


@dataclass(frozen=True)
class Sizes:
    """Type sizes and spacing in pixels, from the window's height.

    Parameters
    ----------
    sentence : int
        The plain sentence: for the back row.
    stage : int
        Words on pictures: capital letters of about 22 minutes of arc in the worst seat of a
        small hall.
    panel : int
        Words on the presenter's controls.
    gap : int
        Space between things.
    """

    sentence: int
    stage: int
    panel: int
    gap: int

    @classmethod
    def of(cls, height: int) -> "Sizes":
        """Sizes for a window that is `height` pixels high."""
        height = max(height, 480)
        return cls(
            sentence=round(height * 0.036),
            stage=round(height * 0.022),
            panel=min(max(round(height * 0.0185), 13), 22),
            gap=max(round(height * 0.011), 6),
        )


def palette() -> QPalette:
    """Dark palette of the whole application, disabled state included."""
    shades = {
        QPalette.ColorRole.Window: PANEL,
        QPalette.ColorRole.WindowText: INK,
        QPalette.ColorRole.Base: "#0d1014",
        QPalette.ColorRole.AlternateBase: PANEL,
        QPalette.ColorRole.Text: INK,
        QPalette.ColorRole.Button: RAISED,
        QPalette.ColorRole.ButtonText: INK,
        QPalette.ColorRole.BrightText: ALERT,
        QPalette.ColorRole.Highlight: ACCENT,
        QPalette.ColorRole.HighlightedText: "#08130f",
        QPalette.ColorRole.ToolTipBase: "#0d1014",
        QPalette.ColorRole.ToolTipText: INK,
        QPalette.ColorRole.PlaceholderText: DIM,
    }
    made = QPalette()
    for role, colour in shades.items():
        made.setColor(role, QColor(colour))
    for role in (
        QPalette.ColorRole.WindowText,
        QPalette.ColorRole.Text,
        QPalette.ColorRole.ButtonText,
    ):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor("#8b949d"))
    return made


def style_sheet(sizes: Sizes) -> str:
    """Style of the controls; the stage paints itself."""
    touch = max(TOUCH_PX, sizes.panel * 2)
    return f"""
    QWidget {{ font-size: {sizes.panel}px; color: {INK}; }}
    QWidget#stage {{ background: {STAGE}; }}
    QWidget#panel, QWidget#page, QScrollArea {{ background: {PANEL}; border: 0; }}
    QLabel#sentence {{ font-size: {sizes.sentence}px; font-weight: 600; background: {STAGE}; }}
    QLabel#alert {{ color: {ALERT}; }}
    QLabel#quiet {{ color: {DIM}; }}
    QLabel#value {{ font-weight: 600; }}
    QLabel#title {{ font-size: {round(sizes.panel * 1.25)}px; font-weight: 600; }}
    QPushButton, QComboBox, QDoubleSpinBox, QToolButton {{
        min-height: {touch - 4}px; border: 2px solid {RAISED}; border-radius: 8px;
        background: {RAISED}; padding: 0 {sizes.gap}px; }}
    QDoubleSpinBox {{ padding: 0; min-width: {round(sizes.panel * 8)}px;
        max-width: {round(sizes.panel * 8)}px; }}
    QDoubleSpinBox::up-button, QDoubleSpinBox::down-button {{
        subcontrol-origin: border; width: 0; border: 0; }}
    QPushButton:hover, QComboBox:hover {{ background: #303a44; }}
    QPushButton:pressed, QPushButton:checked {{ background: #1f4a43; border-color: {ACCENT}; }}
    QPushButton:focus, QComboBox:focus, QDoubleSpinBox:focus, QToolButton:focus
        {{ border-color: {INK}; }}
    QPushButton:disabled, QComboBox:disabled, QDoubleSpinBox:disabled
        {{ background: #1a2026; border-color: #1a2026; color: #8b949d; }}
    QPushButton#main {{ background: {ACCENT}; border-color: {ACCENT}; color: #06110e;
        font-weight: 700; }}
    QPushButton#main:focus {{ border-color: {INK}; }}
    QPushButton#door {{ font-size: {round(sizes.sentence * 0.8)}px; padding: {sizes.gap * 2}px;
        text-align: left; }}
    QComboBox::drop-down {{ width: {touch // 2}px; border: 0; }}
    QComboBox QAbstractItemView {{ background: {RAISED}; selection-background-color: {ACCENT};
        selection-color: #06110e; }}
    QComboBox QAbstractItemView::item {{ min-height: {touch}px; }}
    QCheckBox {{ min-height: {touch}px; spacing: {sizes.gap}px; }}
    QSlider {{ min-height: {touch}px; }}
    QSlider::groove:horizontal {{ height: 6px; border-radius: 3px; background: {EDGE}; }}
    QSlider::sub-page:horizontal {{ height: 6px; border-radius: 3px; background: {ACCENT}; }}
    QSlider::handle:horizontal {{ width: {touch // 2}px; margin: -{touch // 4}px 0;
        border-radius: {touch // 4}px; background: {INK}; border: 2px solid {PANEL}; }}
    QSlider::handle:horizontal:focus {{ border-color: {ACCENT}; }}
    QSlider::sub-page:horizontal:disabled, QSlider::handle:horizontal:disabled
        {{ background: {EDGE}; }}
    QTabWidget::pane {{ border: 0; }}
    QTabBar::tab {{ min-height: {touch}px; padding: 0 {sizes.gap + 2}px; background: {PANEL};
        color: {DIM}; border-bottom: 3px solid {PANEL}; }}
    QTabBar::tab:selected {{ color: {INK}; border-bottom-color: {ACCENT}; }}
    QTabBar::tab:focus {{ color: {ACCENT}; }}
    QScrollBar:vertical {{ width: 14px; background: {PANEL}; }}
    QScrollBar::handle:vertical {{ background: {EDGE}; border-radius: 5px; min-height: {touch}px;
        margin: 2px; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ height: 0; }}
    QToolTip {{ border: 1px solid {EDGE}; padding: 6px; }}
    """


def contrast(first: str, second: str) -> float:
    """Contrast ratio of two colours, 1 to 21 (WCAG 2.1, relative luminance)."""

    def luminance(name: str) -> float:
        colour = QColor(name)
        parts = (colour.redF(), colour.greenF(), colour.blueF())
        red, green, blue = (
            p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts
        )
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue

    high, low = sorted((luminance(first), luminance(second)), reverse=True)
    return (high + 0.05) / (low + 0.05)
