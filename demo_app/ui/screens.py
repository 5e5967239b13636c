"""Which screen the audience looks at, known by its name, and as pure rules."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QRect
from PySide6.QtGui import QScreen


@dataclass(frozen=True)
class Place:
    """A screen as it can be remembered: the screen's own object does not outlive its cable.

    Parameters
    ----------
    name : str
        Name that the system gives its socket.
    serial : str
        Serial number of the device; may be empty.
    left, top, width, height : int
        Where it is on the desktop, device-independent pixels.
    """

    name: str
    serial: str = ""
    left: int = 0
    top: int = 0
    width: int = 0
    height: int = 0

    @classmethod
    def of(cls, screen: QScreen) -> "Place":
        """Record of a screen."""
        box = screen.geometry()
        return cls(
            screen.name(),
            screen.serialNumber(),
            box.left(),
            box.top(),
            box.width(),
            box.height(),
        )

    @classmethod
    def from_record(cls, record: Any) -> "Place | None":
        """What `record` gave; None for anything that is none."""
        if not isinstance(record, dict):
            return None
        name, serial = record.get("name"), record.get("serial", "")
        return cls(name, serial) if isinstance(name, str) and isinstance(serial, str) else None

    def record(self) -> dict[str, str]:
        """What tells it from others on another day, to be stored."""
        return {"name": self.name, "serial": self.serial}

    @property
    def box(self) -> QRect:
        """Where it is."""
        return QRect(self.left, self.top, self.width, self.height)

    def mirrors(self, other: "Place") -> bool:
        """Whether both show some of the same pixels."""
        return self.box.intersects(other.box)

    def likeness(self, other: "Place") -> int:
        """How surely both are one device: 3 name and serial, 2 serial, 1 name, 0 not."""
        serial = bool(self.serial) and self.serial == other.serial
        if self.name == other.name and self.serial == other.serial:
            return 3
        return 2 if serial else int(self.name == other.name)


def apart(places: Sequence[Place]) -> tuple[Place, ...]:
    """Screens that show pixels of their own: of those that mirror one another the first."""
    found: list[Place] = []
    for place in places:
        if not any(place.mirrors(other) for other in found):
            found.append(place)
    return tuple(found)


def audience_place(
    places: Sequence[Place], presenter: Place, remembered: Place | None = None
) -> Place | None:
    """The audience's screen: the remembered one, else the first that is not the presenter's.

    Parameters
    ----------
    places : sequence of Place
        Screens there are.
    presenter : Place
        Where the presenter's window is.
    remembered : Place or None
        Chosen before.

    Returns
    -------
    Place or None
        None where there is only the presenter's screen, or copies of it.
    """
    others = [place for place in apart(places) if not place.mirrors(presenter)]
    if remembered is not None:
        # Stable: of those that are as like it the first.
        others.sort(key=remembered.likeness, reverse=True)
    return others[0] if others else None
