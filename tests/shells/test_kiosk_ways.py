"""A visitor's place, idle time, the corners, the care of the screen: functions, no window."""

import dataclasses

import pytest
from PySide6.QtCore import QRect

from demo_app.shells.kiosking import care, idling
from demo_app.shells.kiosking import where as ways
from demo_app.shells.kiosking.idling import AWAKE, GONE, WARNING, Idle
from demo_app.shells.kiosking.mounted import text_folders
from demo_app.shells.kiosking.where import DO, PREDICT, SEE, TRY, WHY, Where
from demo_app.ui.answering import Outcome
from demo_app.ui.kiosk.corners import ORDER, Corners, pressed, released
from demo_app.ui.kiosk.measures import Measures, grid, pixels_per_mm, rooms

RIGHT = Outcome(1, "")


def test_a_step_goes_through_its_phases_and_back():
    where = ways.opened("bubble")
    walked = [where.phase]
    for act in (
        lambda one: ways.predicted(one, 1),
        ways.done,
        lambda one: ways.answered(one, RIGHT),
        ways.explained,
        ways.tried,
    ):
        where = act(where)
        walked.append(where.phase)
    assert walked == [PREDICT, DO, SEE, SEE, WHY, TRY]
    assert where.right
    back = []
    while where.page == "step":
        where = ways.back(where)
        back.append((where.page, where.phase, where.prediction, where.outcome))
    assert back[:4] == [
        ("step", WHY, 1, RIGHT),
        ("step", SEE, 1, RIGHT),
        ("step", DO, 1, None),
        ("step", PREDICT, None, None),
    ]
    assert where == ways.home()
    assert ways.back(where) == Where()


@pytest.mark.parametrize("where", [Where(), ways.home(), ways.opened("bubble")])
def test_nothing_is_skipped(where):
    assert ways.explained(where) == where
    assert ways.tried(where) == where
    assert ways.done(where) == where
    assert ways.answered(where, RIGHT) == where
    assert ways.back(ways.asked_for_languages(where)) == dataclasses.replace(
        where, under=where.page
    )


def test_a_warning_lasts_twenty_seconds():
    # WCAG 2.2, 2.2.1.
    idle = Idle(100.0, away=False)
    assert [idle.state(100 + t) for t in (0, 89.9, 90, 109.9, 110)] == [
        AWAKE,
        AWAKE,
        WARNING,
        WARNING,
        GONE,
    ]
    assert idle.left_s(195) == 15
    assert idling.touched(idle, 109).state(190) == AWAKE
    assert dataclasses.replace(idle, away=True).state(1e9) == AWAKE


def hold(corners, corner, at_s, seconds=1.0):
    return released(pressed(corners, corner, at_s), corner, at_s + seconds)


def test_four_holds_in_their_order():
    corners = Corners()
    for number, corner in enumerate(ORDER):
        assert not corners.complete
        corners = hold(corners, corner, 2.0 * number)
    assert corners.complete


@pytest.mark.parametrize("spoil", ["short", "late", "elsewhere", "moved"])
def test_other_holds_do_not_count(spoil):
    corners = Corners()
    for number, corner in enumerate(ORDER):
        at_s = 2.0 * number + (60 if spoil == "late" and number == 3 else 0)
        if spoil == "elsewhere" and number == 2:
            corners = hold(corners, "", at_s - 1.5, 0.1)
        short = spoil == "short" and number == 1
        if spoil == "moved" and number == 2:
            corners = released(pressed(corners, corner, at_s), "", at_s + 1)
        else:
            corners = hold(corners, corner, at_s, 0.2 if short else 1.0)
    assert not corners.complete


def test_the_picture_goes_round_pixel_by_pixel():
    places = [care.shift(care.STEP_S * (number + 0.5)) for number in range(8 * care.SHIFT_PX)]
    assert len(set(places)) == len(places)
    for (x, y), (to_x, to_y) in zip(places, [*places[1:], places[0]], strict=True):
        assert abs(to_x - x) + abs(to_y - y) == 1
        assert max(abs(x), abs(y)) == care.SHIFT_PX


@pytest.mark.parametrize(
    "size", [(1280, 720), (1920, 1080), (1080, 1920), (800, 600), (3840, 2160)]
)
@pytest.mark.parametrize("scale", [1.0, 1.3, 1.6])
def test_rooms_share_the_window(size, scale):
    measures = Measures(*size, 3.8, scale)
    room = rooms(measures)
    whole = QRect(0, 0, *size)
    for one in (room.stage, room.panel, room.bar):
        assert whole.contains(one)
    assert not room.stage.intersects(room.panel)
    assert not room.panel.intersects(room.bar)
    assert room.bar.bottom() == whole.bottom()


def test_a_grid_fills_its_room():
    boxes = grid(QRect(10, 20, 300, 200), 5, 2, 10)
    assert len(boxes) == 5
    assert boxes[-1].width() == 300
    assert boxes[0].topLeft().toTuple() == (10, 20)


class Screen:
    """What a screen says of itself."""

    def __init__(self, dpi):
        self.dpi = dpi

    def geometry(self):
        return QRect(0, 0, 1920, 1080)

    def physicalDotsPerInch(self):
        return self.dpi


@pytest.mark.parametrize("dpi", [0.0, float("nan"), float("inf"), 5.0, 5000.0])
def test_a_screen_that_lies_is_not_believed(dpi):
    assert pixels_per_mm(Screen(dpi)) == pytest.approx(96 / 25.4)


def test_a_ruler_wins():
    assert pixels_per_mm(Screen(200.0)) == pytest.approx(200 / 25.4)
    assert pixels_per_mm(Screen(200.0), 960.0, 540.0) == 2.0
    assert pixels_per_mm(None) == pytest.approx(96 / 25.4)


def test_only_folders_with_steps_are_listed(tmp_path):
    (tmp_path / "holiday").mkdir()
    (tmp_path / "words").mkdir()
    (tmp_path / "words" / "steps.toml").write_text("")
    assert text_folders(None, [tmp_path]) == (tmp_path / "words",)
    assert text_folders(tmp_path / "words", []) == (tmp_path / "words",)
    assert text_folders(tmp_path / "gone", [tmp_path / "gone too"]) == ()
