"""How the parts of a teacher's window share its room."""

from typing import TYPE_CHECKING, Any

from demo_app.content.running.records import DRIVE
from demo_app.ui import theme

if TYPE_CHECKING:
    from demo_app.shells.teaching.window import OutreachWindow


def lay_out(window: "OutreachWindow") -> None:
    """With one screen or two, with notes or without; pupils who drive see no notes."""
    two, driven = window.side.out is not None, window.running.phase == DRIVE
    window.header.notes.setVisible(not two)
    window.show_page.set_mode(two=two, notes=not driven and (two or window.notes))


def size(window: "OutreachWindow", *, again: bool = False) -> None:
    """Type sizes, spacing and colours of all parts."""
    look = window.side.preferences.look
    sizes = theme.Sizes.of(window.height(), look)
    if sizes != window.sizes or again:
        window.sizes = sizes
        window.setPalette(theme.palette(look))
        window.setStyleSheet(theme.style_sheet(sizes, look))
        parts: tuple[Any, ...] = (window.header, window.bar, window.panel, window.strip)
        for part in (*parts, *window.named.values()):
            part.set_sizes(sizes)
        lay_out(window)
    place_strip(window)
    box = window.layout()
    if box is not None:
        box.activate()


def place_strip(window: "OutreachWindow") -> None:
    """The strip of actions over the panel."""
    width = min(max(window.panel.width(), 340), window.width())
    top = window.header.height() if window.header.isVisible() else 0
    window.strip.setGeometry(window.width() - width, top, width, window.height() - top)
