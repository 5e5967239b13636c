"""One worker, latest wins."""

import threading
from dataclasses import replace

import bar_scene
import numpy as np

from demo_app.optics.instrument import Instrument
from demo_app.ui.request import Request
from demo_app.ui.timeline import Entry
from demo_app.ui.worker import Worker


def request(number, time_s=1.0, **values):
    made = Request(
        number=number,
        scene=bar_scene.SCENE,
        plan=(Entry(0, bar_scene.BarSettings()),),
        ready=(),
        time_s=time_s,
        span_s=0.0,
        budget_s=10.0,
        traced=0,
        every=1,
        instrument=Instrument(),
        size=(200, 100),
    )
    return replace(made, **values)


def test_latest_wins(worker, qtbot, count):
    done = count(worker.done)
    let_go = threading.Event()
    slow = replace(bar_scene.SCENE, start=lambda s: (let_go.wait(5), bar_scene.start(s))[1])
    worker.post(request(1, scene=slow))
    qtbot.waitUntil(lambda: worker._waiting is None)
    for number in range(2, 100):
        worker.post(request(number))
    let_go.set()
    qtbot.waitUntil(lambda: len(done) == 2)
    qtbot.wait(50)
    assert [frame.number for (frame,) in done] == [1, 99]


def test_frame_lies_between_two_states(worker, qtbot):
    with qtbot.waitSignal(worker.done) as got:
        worker.post(request(1, time_s=0.52))
    frame = got.args[0]
    before, after = frame.last
    assert before.time_s <= 0.52 < after.time_s
    assert frame.reached
    assert frame.time_s == 0.52
    first = bar_scene.view(bar_scene.BarSettings(), before).stage.pieces[0].map.v1
    second = bar_scene.view(bar_scene.BarSettings(), after).stage.pieces[0].map.v1
    share = (0.52 - before.time_s) / (after.time_s - before.time_s)
    shown = frame.stage.pieces[0].map.v1
    np.testing.assert_allclose(shown, first + share * (second - first), rtol=1e-5, atol=1e-3)


def test_fast_play_shows_whole_steps(worker, qtbot):
    with qtbot.waitSignal(worker.done) as got:
        worker.post(request(1, time_s=0.52, span_s=1.0))
    frame = got.args[0]
    assert frame.time_s == frame.last[0].time_s


def test_budget_ends_stepping(worker, qtbot):
    with qtbot.waitSignal(worker.done) as got:
        worker.post(request(1, time_s=1e6, budget_s=0.01))
    frame = got.args[0]
    assert not frame.reached
    assert 0 < frame.time_s < 1e6


def test_a_fault_is_told_and_the_worker_goes_on(worker, qtbot):
    broken = replace(bar_scene.SCENE, advance=lambda s, state: 1 / 0)
    with qtbot.waitSignal(worker.failed) as got:
        worker.post(request(7, scene=broken))
    assert got.args[0] == 7
    assert isinstance(got.args[1], ZeroDivisionError)
    with qtbot.waitSignal(worker.done):
        worker.post(request(8))


def test_memory_is_used_again(worker, qtbot):
    with qtbot.waitSignal(worker.done) as got:
        worker.post(request(1))
    pixels = got.args[0].pixels
    worker.give_back(pixels)
    with qtbot.waitSignal(worker.done) as got:
        worker.post(request(2, time_s=2.0))
    assert got.args[0].pixels is pixels


def test_ends_while_busy(app):
    worker = Worker()
    worker.start()
    worker.post(request(1, time_s=3.0))
    worker.end()
    assert worker.isFinished()
