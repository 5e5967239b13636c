"""Where a label stands on the cut through the wall."""

from collections.abc import Sequence

import numpy as np
from PySide6.QtCore import QRectF, QSizeF

from demo_app.ui.section_picture import Drawn


def label_box(
    drawn: Drawn,
    place_of: int,
    size: QSizeF,
    room: QRectF,
    taken: Sequence[QRectF],
    air: float,
) -> QRectF:
    """Box of a label: on the near side of the wall, on its far side, or beside it.

    The first of these that covers neither another label nor the wall; else no other label.

    Parameters
    ----------
    drawn : Drawn
        The section's nodes, pixels.
    place_of : int
        Flat index of the node that is named.
    size : QSizeF
        Of the label, pixels.
    room : QRectF
        What it must lie in; its corner is (0, 0) of the label's coordinates.
    taken : sequence of QRectF
        Other labels.
    air : float
        Distance between wall and label, pixels.
    """
    width, height = size.width(), size.height()
    x, y = float(drawn.x.flat[place_of]), float(drawn.y.flat[place_of])
    column = place_of % drawn.x.shape[1]
    wall, along = drawn.y[:, column], drawn.x[:, column]
    left = max(x - width / 2, 2.0)
    over, under = (left, float(wall.min()) - air - height), (left, float(wall.max()) + air)
    places = [over, under] if y <= float(wall.mean()) else [under, over]
    right = float(along.max()) + 2 * air
    places += [(right, y - height * (0.5 + row)) for row in (0.0, 1.1, 2.2, -1.1, -2.2)]
    boxes = [
        QRectF(
            min(at_x, room.width() - width - 2),
            min(max(at_y, 0.0), room.height() - height),
            width,
            height,
        )
        for at_x, at_y in places
    ]
    free = [box for box in boxes if not any(box.intersects(other) for other in taken)]
    clear = [box for box in free if not covers(box, drawn)]
    return [*clear, *free, *boxes][0]


def covers(box: QRectF, drawn: Drawn) -> bool:
    """Whether some of the section lies under `box`: nodes, or places between them."""
    x, y = drawn.x, drawn.y
    share = np.linspace(0.0, 1.0, 5)[:, None, None]
    for axis in (0, 1):
        x, y = (np.concatenate(_between(one, share, axis), axis=axis) for one in (x, y))
    within = (x > box.left()) & (x < box.right())
    return bool((within & (y > box.top()) & (y < box.bottom())).any())


def _between(values: np.ndarray, share: np.ndarray, axis: int) -> np.ndarray:
    first = np.delete(values, -1, axis=axis)
    return np.asarray(first + share * np.diff(values, axis=axis))
