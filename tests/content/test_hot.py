"""Reminders of hot glass, and the time between two shows."""

import math
import time

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.content import turnaround
from demo_app.content.hot import REMINDER_C, hot_in_view, hot_piece, profile_of
from demo_app.scenes.catalogue import scene
from demo_app.scenes.run import state_at
from demo_app.scenes.scene import Section, View

NOW = time.mktime((2026, 11, 24, 14, 0, 0, 0, 0, -1))


def test_it_says_hot_until_at_least_and_never_more():
    piece = hot_piece("Bottle", "soda-lime", 3, 185, NOW)
    assert 180 < piece.seconds < 900
    clock = time.strftime("%H:%M", time.localtime(piece.until))
    assert piece.words(NOW).startswith(f"Bottle: hot until at least {clock}.")
    assert piece.left_s(NOW) == pytest.approx(piece.seconds)
    after = piece.words(piece.until + 3600)
    assert after.startswith(f"Bottle: was hot until at least {clock} and may be still.")
    assert piece.left_s(piece.until + 3600) == 0
    for said in (piece.words(NOW), after):
        assert "ongs" in said
        for promise in ("safe", "cool enough", "can be touched", "may be touched"):
            assert promise not in said


def test_below_what_burns_in_ten_minutes():
    """ISO 13732-1:2006: 48 °C for a contact of 10 min, 43 °C for 8 h (from memory)."""
    assert 43 < REMINDER_C < 48


def test_in_air_as_warm_it_stays_hot():
    piece = hot_piece("Bottle", "soda-lime", 3, 185, NOW, reach_C=45, air_C=45)
    assert math.isinf(piece.seconds)
    assert piece.words(NOW + 1e6).startswith("Bottle: hot. ")


@pytest.mark.parametrize("name", ["ring", "bubble"])
def test_a_piece_on_the_stage(name):
    what = scene(name)
    settings = what.settings()
    state = state_at(what, settings, 8.0)
    view = what.view(settings, state)
    piece = hot_in_view(what.title, settings.glass, view, NOW)
    assert piece.start_C == view.section.temperature_C.max() > 60
    assert piece.seconds > 5
    # Heat also runs along the wall, so it is hot for a shorter time than if all of it were as hot.
    thickest = 1e3 * float(profile_of(view.section).thickness.max())
    assert (
        piece.seconds < 1.02 * hot_piece("", settings.glass, thickest, piece.start_C, NOW).seconds
    )


def test_the_ring_is_hot_until_then_in_the_scenes_own_model():
    """The bottle's finite elements, flame out and no drop, are hotter at the time claimed."""
    what = scene("ring")
    settings = what.settings(heat_s=8.0, drop=False, score_depth_um=0.0)
    state = state_at(what, settings, 8.0)
    piece = hot_in_view("Bottle", settings.glass, what.view(settings, state), NOW, reach_C=60)
    assert 20 < piece.seconds < 120
    while state.time_s < 8.0 + piece.seconds:
        state = what.advance(settings, state)
    assert what.view(settings, state).section.temperature_C.max() > 60


def test_a_scene_without_a_section_has_no_reminder():
    what = scene("pour")
    settings = what.settings()
    view = View(what.view(settings, what.start(settings)).stage)
    assert hot_in_view("Tumbler", "soda-lime", view, NOW) is None


def test_a_sections_wall():
    x, y = np.meshgrid([0.0, 10.0, 30.0], [0.0, 1.0, 4.0])
    zero = np.zeros_like(x)
    temperature = np.array([[100.0, 50, 20], [100, 50, 20], [40, 50, 20]])
    section = Section(x, y, zero, zero, temperature, zero, "stress", 1.0)
    found = profile_of(section)
    np.testing.assert_allclose(found.place, [0, 0.010, 0.030])
    np.testing.assert_allclose(found.thickness, 0.004)
    np.testing.assert_allclose(found.temperature - 273.15, [(100 * 1 + 70 * 3) / 4, 50, 20])


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"glass": "ice"}, "ice"),
        ({"thickness_mm": 0}, "0.1 to 200 mm"),
        ({"thickness_mm": math.nan}, "0.1 to 200 mm"),
        ({"start_C": 1e9}, "-20 to 1600"),
        ({"reach_C": 20}, "30 to 100"),
        ({"air_C": 90}, "-20 to 60"),
    ],
)
def test_what_a_piece_cannot_be(changes, said):
    words = {"name": "A", "glass": "soda-lime", "thickness_mm": 3, "start_C": 185, "now": NOW}
    with pytest.raises(InputError, match=said):
        hot_piece(**{**words, **changes})


def test_a_turnaround_is_over_when_everything_is_done():
    turn = turnaround.begin(NOW, NOW + 1800, ("Blinds up",))
    assert len(turn.open) == len(turnaround.RESET) + 1
    assert turn.elapsed_s(NOW + 60) == 60
    assert turn.left_s(NOW + 60) == 1740
    for number, item in enumerate(turn.items):
        assert turn.ready_at is None
        turn = turnaround.tick(turn, item.id, NOW + 100 + number)
    last = NOW + 100 + len(turn.items) - 1
    assert turn.open == ()
    assert turn.ready_at == last
    assert turn.elapsed_s(NOW + 9999) == last - NOW
    again = turnaround.tick(turn, "glass-counted", None)
    assert [item.id for item in again.open] == ["glass-counted"]
    assert again.elapsed_s(NOW + 9999) == 9999
    assert turnaround.from_record(turnaround.as_record(turn)) == turn


def test_a_clock_set_back_and_an_unknown_thing():
    turn = turnaround.begin(NOW)
    assert turn.elapsed_s(NOW - 100) == 0
    assert turn.left_s(NOW) is None
    with pytest.raises(InputError, match="hot-pieces"):
        turnaround.tick(turn, "tea", NOW)
