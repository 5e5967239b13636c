"""Looks of the controls against WCAG 2.2: contrast, focus, targets, large text."""

import re

import pytest
from PySide6.QtGui import QPalette

from demo_app.content.projector import LEAST_ARCMIN, Hall, type_arcmin
from demo_app.ui import theme

LOOKS = [theme.Look(strong, scale) for strong in (False, True) for scale in theme.SCALES]
QUIET, STRONG = theme.Look(), theme.Look(high_contrast=True)


def grounds(use):
    return (use.stage, use.panel, use.raised, use.base, use.hover, use.pressed)


@pytest.mark.parametrize("look", [QUIET, STRONG], ids=["quiet", "strong"])
def test_words_stand_out(look):
    use = theme.shades(look)
    # 1.4.3 asks for 4.5 : 1, 1.4.6 for 7 : 1.
    least = 7.0 if look.high_contrast else 4.5
    for ground in grounds(use):
        assert theme.contrast(use.ink, ground) >= least
    for ground in (use.stage, use.panel, use.raised, use.base):
        for ink in (use.dim, use.alert, use.accent):
            assert theme.contrast(ink, ground) >= least
    assert theme.contrast(use.on_accent, use.accent) >= least


@pytest.mark.parametrize("look", [QUIET, STRONG], ids=["quiet", "strong"])
def test_lines_stand_out(look):
    # 1.4.11: 3 : 1 for what carries meaning.
    use = theme.shades(look)
    for ground in (use.stage, use.panel):
        assert theme.contrast(use.edge, ground) >= 3
        assert theme.contrast(use.on_edge, ground) >= 3
    if look.high_contrast:
        assert theme.contrast(use.border, use.panel) >= 3


@pytest.mark.parametrize("look", [QUIET, STRONG], ids=["quiet", "strong"])
def test_the_focus_is_seen(look):
    # 2.4.7, and 2.4.13: two pixels wide, 3 : 1 between the same pixels with and without it.
    use = theme.shades(look)
    for rest in (use.border, use.on_edge, use.panel, use.off):
        assert theme.contrast(use.focus, rest) >= 3
    sheet = theme.style_sheet(theme.Sizes.of(720, look), look)
    for name in ("QPushButton", "QComboBox", "QDoubleSpinBox", "QToolButton", "QTabBar::tab"):
        assert f"{name}:focus" in sheet
    assert "border: 2px solid" in sheet
    assert sheet.count(use.focus) >= 2


@pytest.mark.parametrize("look", LOOKS, ids=str)
@pytest.mark.parametrize("height", [480, 720, 1080])
def test_targets_are_large_enough(look, height):
    sheet = theme.style_sheet(theme.Sizes.of(height, look), look)
    controls = re.search(r"QPushButton, QComboBox[^}]*min-height: (\d+)px; border: (\d)px", sheet)
    assert int(controls[1]) + 2 * int(controls[2]) >= theme.TOUCH_PX  # 2.5.5
    for name in ("QCheckBox", "QSlider"):
        found = re.search(rf"{name} {{ min-height: (\d+)px", sheet)
        assert int(found[1]) >= theme.TOUCH_PX
    tab = re.search(r"QTabBar::tab { min-height: (\d+)px", sheet)
    assert int(tab[1]) + 3 >= theme.TOUCH_PX


def test_large_text():
    plain = theme.Sizes.of(720)
    assert plain == theme.Sizes.of(720, theme.Look(scale=1.0))
    for scale in theme.SCALES[1:]:
        large = theme.Sizes.of(720, theme.Look(scale=scale))
        for name in ("sentence", "stage", "panel"):
            assert getattr(large, name) == pytest.approx(getattr(plain, name) * scale, abs=1)


@pytest.mark.parametrize("scale", [0.0, 0.4, 3.1, float("nan")])
def test_a_useless_scale(scale):
    with pytest.raises(ValueError, match="out of range"):
        theme.Look(scale=scale)


def test_palettes_differ(app):
    quiet, strong = theme.palette(), theme.palette(STRONG)
    for role in (QPalette.ColorRole.Window, QPalette.ColorRole.Highlight):
        assert quiet.color(role) != strong.color(role)
    assert strong.color(QPalette.ColorRole.Window).name() == "#000000"


@pytest.mark.parametrize("picture_px", [720, 1080])
def test_the_sentence_reaches_the_back_row(picture_px):
    # A hall nine metres deep with a picture two metres high: ISO 9241-303 asks for 16'.
    sizes, hall = theme.Sizes.of(picture_px), Hall(2.0, 9.0)
    assert type_arcmin(sizes.sentence, picture_px, hall) >= LEAST_ARCMIN
    large = theme.Sizes.of(picture_px, theme.Look(scale=1.6))
    assert type_arcmin(large.stage, picture_px, hall) >= LEAST_ARCMIN
