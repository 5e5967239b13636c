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
"""Side of the smallest target, pixels (WCAG 2.2, 2.5.5)."""

SCALES = (1.0, 1.3, 1.6)
"""How much larger type may be made."""


@dataclass(frozen=True)
class Look:
    """How the controls look: quiet or of high contrast, and how large their type is.

    Parameters
    ----------
    high_contrast : bool
        Words of at least 7 : 1 (WCAG 2.2, 1.4.6) and edges round every control, white and yellow
        on black. The pictures keep their colours, which are their meaning.
    scale : float
        Factor on the type's size, one of `SCALES` as a rule; from 0.5 to 3.
    """

    high_contrast: bool = False
    scale: float = 1.0

    def __post_init__(self) -> None:
        if not 0.5 <= self.scale <= 3:
            raise ValueError(f"a scale of {self.scale} is out of range")


QUIET = Look()


@dataclass(frozen=True)
class Shades:
    """Colours of the controls by what they are for.

    Parameters
    ----------
    stage, panel, raised, base, hover, pressed, off : str
        Grounds: behind pictures, behind controls, of a control, of a field to write in, of a
        control under the mouse, of one pressed or switched on, of one that cannot be used.
    edge, border : str
        Lines that carry meaning, and the border of a control at rest.
    ink, dim, off_ink, accent, on_accent, alert : str
        Words; the accent's ground, and words on it.
    on_edge, focus : str
        Border of a control that is switched on or the main one, and of what has the keyboard. The
        focus differs from every other border by 3 : 1 at least (WCAG 2.2, 2.4.13).
    """

    stage: str
    panel: str
    raised: str
    base: str
    hover: str
    pressed: str
    off: str
    edge: str
    border: str
    ink: str
    dim: str
    off_ink: str
    accent: str
    on_accent: str
    alert: str
    on_edge: str
    focus: str


_QUIET = Shades(
    stage=STAGE,
    panel=PANEL,
    raised=RAISED,
    base="#0d1014",
    hover="#303a44",
    pressed="#1f4a43",
    off="#1a2026",
    edge=EDGE,
    border=RAISED,
    ink=INK,
    dim=DIM,
    off_ink="#8b949d",
    accent=ACCENT,
    on_accent="#06110e",
    alert=ALERT,
    on_edge="#2f7f70",
    focus=INK,
)
_STRONG = Shades(
    stage="#000000",
    panel="#000000",
    raised="#000000",
    base="#000000",
    hover="#2b2b2b",
    pressed="#003b32",
    off="#000000",
    edge="#ffffff",
    border="#7a7a7a",
    ink="#ffffff",
    dim="#dcdcdc",
    off_ink="#a0a0a0",
    accent="#5ff0d2",
    on_accent="#000000",
    alert="#ffe14d",
    on_edge="#00806e",
    focus="#ffe14d",
)


def shades(look: Look = QUIET) -> Shades:
    """Colours of a look."""
    return _STRONG if look.high_contrast else _QUIET


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
    def of(cls, height: int, look: Look = QUIET) -> "Sizes":
        """Sizes for a window that is `height` pixels high."""
        height = max(height, 480)
        return cls(
            sentence=round(height * 0.036 * look.scale),
            stage=round(height * 0.022 * look.scale),
            panel=round(min(max(round(height * 0.0185), 13), 22) * look.scale),
            gap=max(round(height * 0.011), 6),
        )


def palette(look: Look = QUIET) -> QPalette:
    """Dark palette of the whole application, disabled state included."""
    use = shades(look)
    colours = {
        QPalette.ColorRole.Window: use.panel,
        QPalette.ColorRole.WindowText: use.ink,
        QPalette.ColorRole.Base: use.base,
        QPalette.ColorRole.AlternateBase: use.panel,
        QPalette.ColorRole.Text: use.ink,
        QPalette.ColorRole.Button: use.raised,
        QPalette.ColorRole.ButtonText: use.ink,
        QPalette.ColorRole.BrightText: use.alert,
        QPalette.ColorRole.Highlight: use.accent,
        QPalette.ColorRole.HighlightedText: use.on_accent,
        QPalette.ColorRole.ToolTipBase: use.base,
        QPalette.ColorRole.ToolTipText: use.ink,
        QPalette.ColorRole.PlaceholderText: use.dim,
    }
    made = QPalette()
    for role, colour in colours.items():
        made.setColor(role, QColor(colour))
    for role in (
        QPalette.ColorRole.WindowText,
        QPalette.ColorRole.Text,
        QPalette.ColorRole.ButtonText,
    ):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(use.off_ink))
    return made


def style_sheet(sizes: Sizes, look: Look = QUIET) -> str:
    """Style of the controls; the stage paints itself."""
    use = shades(look)
    touch = max(TOUCH_PX, sizes.panel * 2)
    return f"""
    QWidget {{ font-size: {sizes.panel}px; color: {use.ink}; }}
    QWidget#stage {{ background: {use.stage}; }}
    QWidget#panel, QWidget#page, QScrollArea {{ background: {use.panel}; border: 0; }}
    QLabel#sentence {{ font-size: {sizes.sentence}px; font-weight: 600; background: {use.stage}; }}
    QLabel#alert {{ color: {use.alert}; }}
    QLabel#quiet {{ color: {use.dim}; }}
    QLabel#value {{ font-weight: 600; }}
    QLabel#title {{ font-size: {round(sizes.panel * 1.25)}px; font-weight: 600; }}
    QPushButton, QComboBox, QDoubleSpinBox, QSpinBox, QToolButton {{
        min-height: {touch - 4}px; border: 2px solid {use.border}; border-radius: 8px;
        background: {use.raised}; padding: 0 {sizes.gap}px; }}
    QSpinBox {{ padding: 0; min-width: {round(sizes.panel * 4)}px; }}
    QSpinBox::up-button, QSpinBox::down-button {{ width: {touch // 2}px; }}
    QDoubleSpinBox {{ padding: 0; min-width: {round(sizes.panel * 8)}px;
        max-width: {round(sizes.panel * 8)}px; }}
    QDoubleSpinBox::up-button, QDoubleSpinBox::down-button {{
        subcontrol-origin: border; width: 0; border: 0; }}
    QPushButton:hover, QComboBox:hover {{ background: {use.hover}; }}
    QPushButton:pressed, QPushButton:checked {{ background: {use.pressed};
        border-color: {use.on_edge}; }}
    QPushButton:focus, QComboBox:focus, QDoubleSpinBox:focus, QSpinBox:focus,
        QToolButton:focus
        {{ border-color: {use.focus}; }}
    QPushButton:disabled, QComboBox:disabled, QDoubleSpinBox:disabled, QSpinBox:disabled
        {{ background: {use.off}; border-color: {use.off}; color: {use.off_ink}; }}
    QPushButton#main {{ background: {use.accent}; border-color: {use.on_edge};
        color: {use.on_accent}; font-weight: 700; }}
    QPushButton#main:focus {{ border-color: {use.focus}; }}
    QPushButton#door {{ font-size: {round(sizes.sentence * 0.8)}px; padding: {sizes.gap * 2}px;
        text-align: left; }}
    QComboBox::drop-down {{ width: {touch // 2}px; border: 0; }}
    QComboBox QAbstractItemView {{ background: {use.raised};
        selection-background-color: {use.accent}; selection-color: {use.on_accent}; }}
    QComboBox QAbstractItemView::item {{ min-height: {touch}px; }}
    QCheckBox {{ min-height: {touch}px; spacing: {sizes.gap}px; }}
    QLineEdit {{ min-height: {touch - 4}px; border: 2px solid {use.edge}; border-radius: 8px;
        background: {use.base}; padding: 0 {sizes.gap}px; }}
    QAbstractSpinBox QLineEdit {{ min-height: 0; border: 0; padding: 0; background: transparent; }}
    QLineEdit:focus {{ border-color: {use.focus}; }}
    QSlider {{ min-height: {touch}px; }}
    QSlider::groove:horizontal {{ height: 6px; border-radius: 3px; background: {use.edge}; }}
    QSlider::sub-page:horizontal {{ height: 6px; border-radius: 3px; background: {use.accent}; }}
    QSlider::handle:horizontal {{ width: {touch // 2}px; margin: -{touch // 4}px 0;
        border-radius: {touch // 4}px; background: {use.ink}; border: 2px solid {use.panel}; }}
    QSlider::handle:horizontal:focus {{ border-color: {use.accent}; }}
    QSlider::sub-page:horizontal:disabled, QSlider::handle:horizontal:disabled
        {{ background: {use.edge}; }}
    QTabWidget::pane {{ border: 0; }}
    QTabBar::tab {{ min-height: {touch - 3}px; padding: 0 {sizes.gap + 2}px;
        background: {use.panel}; color: {use.dim}; border-bottom: 3px solid {use.panel};
        border-top: 3px solid {use.panel}; }}
    QTabBar::tab:selected {{ color: {use.ink}; border-bottom-color: {use.accent}; }}
    QTabBar::tab:focus {{ color: {use.accent}; border-top-color: {use.focus}; }}
    QScrollBar:vertical {{ width: 14px; background: {use.panel}; }}
    QScrollBar::handle:vertical {{ background: {use.edge}; border-radius: 5px;
        min-height: {touch}px; margin: 2px; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ height: 0; }}
    QToolTip {{ border: 1px solid {use.edge}; padding: 6px; }}
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
