"""The font that comes with the app: it is the one in use, and it has every sign that is written."""

import pytest
from PySide6.QtGui import QFontDatabase, QFontInfo, QRawFont

from demo_app.base.locate import assets
from demo_app.scenes.catalogue import ids, load
from demo_app.scenes.settings import settings_of
from demo_app.ui import theme, words

FILES = sorted((assets() / "fonts").glob("*.ttf"))
SIGNS = "0123456789.,:…–−×\u00a0\u202f"


def test_the_font_in_use_comes_from_the_app(app):
    assert len(FILES) == 2
    for file in FILES:
        number = QFontDatabase.addApplicationFont(str(file))
        assert QFontDatabase.applicationFontFamilies(number) == [theme.FONT]
        QFontDatabase.removeApplicationFont(number)
    assert QFontInfo(app.font()).family() == theme.FONT


def test_widgets_use_it(window):
    for widget in (window.stage.sentence, window.controls.transport.play, window.stage.chart):
        assert QFontInfo(widget.font()).family() == theme.FONT


def written():
    """Everything that the app writes on a screen."""
    yield SIGNS
    yield from words.ENGLISH.values()
    for scene in map(load, ids()):
        yield scene.title
        yield from scene.texts.values()
        yield from (action.label for action in scene.actions)
        for named in (*settings_of(scene.settings), *scene.readings, *scene.traces):
            yield from (named.label, named.help, words.unit(named.unit))


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.stem)
def test_every_sign_is_in_the_font(app, file):
    font = QRawFont(str(file), 16)
    missing = {sign for said in written() for sign in said if not font.supportsCharacter(ord(sign))}
    assert missing == set()
