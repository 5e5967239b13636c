"""The page that teaches keys."""

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QAbstractButton, QLabel
from test_window import fits

from demo_app.ui import theme, words
from demo_app.ui.keymap import ACTS, Keymap
from demo_app.ui.remote import Remote
from demo_app.ui.teach_page import TeachPage

Key = Qt.Key


def opened(width=520, height=720):
    remote = Remote(Keymap())
    remote.install()
    page = TeachPage(remote)
    page.remote = remote
    sizes = theme.Sizes.of(height)
    page.setStyleSheet(theme.style_sheet(sizes))
    page.set_sizes(sizes)
    page.resize(width, height)
    page.show()
    return page


@pytest.fixture
def page(app):
    made = opened()
    yield made
    end(made)


def end(page):
    """Let it go at once: each `application.make` dresses all widgets that there are anew."""
    page.remote.uninstall()
    page.close()
    page.deleteLater()
    QCoreApplication.sendPostedEvents(page, QEvent.Type.DeferredDelete)


def press(qtbot, page, key):
    qtbot.keyClick(page, key)
    QCoreApplication.sendPostedEvents(None, QEvent.Type.MetaCall)


def shown(page, act):
    return page.rows[act].keys.text().replace("\u00a0", " ")


def test_all_acts_are_listed_with_their_keys(page):
    assert set(page.rows) == set(ACTS)
    assert shown(page, "next") == "Page Down"
    assert shown(page, "strip") == "F5, Esc, Shift + F5"


def test_a_free_key_is_taught_at_once(page, qtbot, count):
    changed, acted = count(page.changed), count(page.remote.acted)
    qtbot.mouseClick(page.rows["next"].teach, Qt.MouseButton.LeftButton)
    assert "“Next”" in page.line.text()
    press(qtbot, page, Key.Key_MediaNext)
    assert shown(page, "next") == "Page Down, Media Next"
    assert changed == [(page.remote.keymap,)]
    assert page.remote.keymap.act("Media Next") == "next"
    assert acted == []
    press(qtbot, page, Key.Key_MediaNext)
    assert acted == [("next",)]


def test_a_clash_is_told_and_settled(page, qtbot, count):
    changed = count(page.changed)
    qtbot.mouseClick(page.rows["next"].teach, Qt.MouseButton.LeftButton)
    press(qtbot, page, Key.Key_F5)
    assert page.line.text() == "F5 belongs to “Strip of actions”. Take it for “Next”?"
    assert changed == []
    qtbot.mouseClick(page.leave, Qt.MouseButton.LeftButton)
    assert page.remote.keymap == Keymap()
    qtbot.mouseClick(page.rows["next"].teach, Qt.MouseButton.LeftButton)
    press(qtbot, page, Key.Key_F5)
    qtbot.mouseClick(page.take, Qt.MouseButton.LeftButton)
    assert page.line.text() == "F5 is now “Next”, no longer “Strip of actions”."
    assert "F5" not in shown(page, "strip").split(", ")
    assert shown(page, "next") == "Page Down, F5"
    assert len(changed) == 1


def test_a_key_that_controls_need_is_refused(page, qtbot):
    page.teach("next")
    press(qtbot, page, Key.Key_Return)
    assert "needed by controls" in page.line.text()
    assert page.remote.keymap == Keymap()
    assert not page.leave.isEnabled()


def test_it_can_be_cancelled_and_hiding_cancels(page, qtbot, count):
    acted = count(page.remote.acted)
    page.teach("next")
    qtbot.mouseClick(page.leave, Qt.MouseButton.LeftButton)
    press(qtbot, page, Key.Key_PageDown)
    assert acted == [("next",)]
    page.teach("next")
    page.hide()
    page.show()
    press(qtbot, page, Key.Key_PageUp)
    assert acted == [("next",), ("back",)]
    assert page.remote.keymap == Keymap()


def test_clear_defaults_and_letters(page, qtbot, count):
    changed = count(page.changed)
    qtbot.mouseClick(page.rows["jump"].clear, Qt.MouseButton.LeftButton)
    assert shown(page, "jump") == "no key"
    assert not page.rows["jump"].clear.isEnabled()
    qtbot.mouseClick(page.characters, Qt.MouseButton.LeftButton)
    assert not page.remote.keymap.characters
    assert page.remote.keymap.act("Z") == ""
    qtbot.mouseClick(page.defaults, Qt.MouseButton.LeftButton)
    assert page.remote.keymap == Keymap()
    assert page.characters.isChecked()
    assert len(changed) == 3


def test_every_button_has_a_name_and_a_size(page, app):
    """WCAG 2.2: name (4.1.2), target size (2.5.5) 44 px."""
    app.processEvents()
    for button in page.findChildren(QAbstractButton):
        assert button.accessibleName() or button.text()
        assert button.height() >= 44
        assert button.width() >= 44


@pytest.mark.parametrize("longer", [1.0, 1.4])
@pytest.mark.parametrize(("width", "height"), [(346, 720), (520, 1080), (900, 1080)])
def test_no_words_are_cut(app, monkeypatch, longer, width, height):
    plain = words.text

    def text(name, /, **values):
        said = plain(name, **values).split(" ")
        return " ".join(word + "n" * round(len(word) * (longer - 1)) for word in said)

    monkeypatch.setattr(words, "text", text)
    page = opened(width, height)
    page.teach("catch_up")
    page._hear("PgDown")
    app.processEvents()
    assert (page.width(), page.height()) == (width, height)
    for label in page.findChildren(QLabel):
        if label.isVisible() and label.text():
            assert fits(label), label.text()
    for button in page.findChildren(QAbstractButton):
        room = button.width() - (40 if button is page.characters else 8)
        assert QFontMetrics(button.font()).horizontalAdvance(button.text()) <= room, button.text()
    end(page)
