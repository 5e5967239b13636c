"""Calm mode in a session: off it changes nothing, on it settles at the model's picture."""

import numpy as np
from test_worker import request

from demo_app.optics.stripes import stripes


def answered(worker, qtbot, asked):
    with qtbot.waitSignal(worker.done) as got:
        worker.post(asked)
    return got.args[0]


def test_off_is_byte_for_byte(worker, qtbot):
    first = answered(worker, qtbot, request(1, time_s=2.0))
    calm = answered(worker, qtbot, request(2, time_s=2.0, calm=True))
    again = answered(worker, qtbot, request(3, time_s=2.0))
    assert first.pixels.tobytes() == again.pixels.tobytes()
    assert (first.dimmed, first.calming) == (1.0, False)
    if not stripes(first.pixels).exceed():
        assert calm.pixels.tobytes() == first.pixels.tobytes()


def test_a_session_settles_at_the_same_picture(session, settle):
    session.begin()
    settle(session)
    session.scrub(2.0)
    settle(session)
    wanted = session.frame.pixels.copy()
    session.scrub(0.0)
    settle(session)
    session.set_calm(True)
    settle(session)
    assert session.calm
    session.scrub(2.0)
    settle(session)
    assert not session.frame.calming
    if session.frame.dimmed == 1:
        np.testing.assert_array_equal(session.frame.pixels, wanted)
    session.set_calm(False)
    settle(session)
    np.testing.assert_array_equal(session.frame.pixels, wanted)


def test_calm_says_so_once(session, settle, count):
    session.begin()
    settle(session)
    calls = count(session.changed)
    session.set_calm(True)
    session.set_calm(True)
    settle(session)
    assert len(calls) == 1
