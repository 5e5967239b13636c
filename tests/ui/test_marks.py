"""Words beside arrows: in the picture, and clear of each other."""

import itertools

import pytest
from PySide6.QtGui import QImage, QPainter

from demo_app.scenes.scene import Mark
from demo_app.ui.field import Field
from demo_app.ui.marks import MarkPainter

WIDTH, HEIGHT, SIZE = 600, 300, 20


def words_of(found):
    """Boxes of the words of some marks, and those of the arrows."""
    image = QImage(WIDTH, HEIGHT, QImage.Format.Format_RGB32)
    with QPainter(image) as painter:
        font = painter.font()
        font.setPixelSize(SIZE)
        painter.setFont(font)
        made = MarkPainter(painter, Field(WIDTH, HEIGHT, 0.2, (0.0, 0.0)), SIZE)
        made.all(found)
    return made._taken[len(found) :], made._taken[: len(found)]


@pytest.mark.parametrize("apart_mm", [6.0, 10.0, 16.0])
def test_words_of_two_upright_pairs_at_the_edge_keep_apart(app, apart_mm):
    # The foot of a flask at the left edge of the picture: no room to the left of the outer pair.
    left = -0.5 * 0.2 * WIDTH + 5
    pairs = [
        Mark("squeeze", left, 0.0, 9.0, 90.0),
        Mark("pull", left + apart_mm, 0.0, 9.0, 90.0),
    ]
    said, arrows = words_of(pairs)
    assert len(said) == 2
    for one, other in itertools.combinations(said, 2):
        assert not one.intersects(other)
    for word in said:
        assert not any(word.intersects(pair) for pair in arrows)
        assert word.left() >= 0
        assert word.right() <= WIDTH
