"""What a visitor needs, and what the operating system says that people here need."""

from dataclasses import dataclass

from PySide6.QtGui import QGuiApplication

from demo_app.ui import theme
from demo_app.ui.kiosk.measures import LARGE


@dataclass(frozen=True)
class Ease:
    """What makes the kiosk easier to use.

    Parameters
    ----------
    large_text : bool
    high_contrast : bool
    still : bool
        Nothing moves by itself, and nothing fades.
    describe : bool
        The picture's description stands under it.
    scale : float
        Size of type when nobody has asked for larger.
    """

    large_text: bool = False
    high_contrast: bool = False
    still: bool = False
    describe: bool = False
    scale: float = 1.0

    @property
    def look(self) -> theme.Look:
        """Colours that go with it."""
        return theme.Look(self.high_contrast)

    @property
    def type_scale(self) -> float:
        """Factor on the type's size."""
        return max(self.scale, LARGE if self.large_text else 1.0)


def system_contrast() -> bool:
    """Whether the operating system asks for more contrast."""
    app = QGuiApplication.instance()
    if not isinstance(app, QGuiApplication):
        return False
    hints = app.styleHints()
    wishes = hints.accessibility()
    return bool(wishes.contrastPreference().value)


def system_still() -> bool:
    """Whether the operating system asks for less motion; Qt before 6.12 cannot say."""
    app = QGuiApplication.instance()
    if not isinstance(app, QGuiApplication):
        return False
    hints = app.styleHints()
    wish = getattr(hints.accessibility(), "motionPreference", None)
    return wish is not None and bool(wish().value)
