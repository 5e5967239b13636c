"""Every scene, found by walking the folder: what no scene may get wrong, at its ranges' corners."""

import dataclasses
import itertools
import math
import string

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.content.pictures import draw
from demo_app.content.readings import as_json, as_record, result
from demo_app.scenes.catalogue import scenes
from demo_app.scenes.run import states
from demo_app.scenes.scene import as_arranged
from demo_app.scenes.settings import make, settings_of

SHORT = 12  # steps of a run at a corner
EVERY = 10  # least number of steps between the instants of a whole story that are looked at
WIDER = 1.15  # ratio of their step numbers later on, so that a long story takes few looks
SIZE = (192, 108)
BORROWING = {"light-table"}  # Shows pieces of other scenes, which are held in balance there.


def corners(scene):
    """Settings to try: the default, and each setting alone at each end or choice."""
    yield {}
    for setting in settings_of(scene.settings):
        if isinstance(setting.default, bool):
            ends = (not setting.default,)
        elif isinstance(setting.default, str):
            ends = tuple(word for word in setting.choices if word != setting.default)
        else:
            ends = (setting.low, setting.high)
        yield from ({setting.name: end} for end in ends)


def cases(of=corners):
    return [
        pytest.param(
            scene, values, id="-".join([scene.id, *(f"{k}={v}" for k, v in values.items())])
        )
        for scene in scenes().values()
        for values in of(scene)
    ]


def each_scene():
    return [pytest.param(scene, id=scene.id) for scene in scenes().values()]


def record_or_refusal(scene, values):
    """The settings record; or None where the scene says that two settings contradict each other."""
    try:
        return make(scene.settings, values)
    except InputError:
        return None


def short_run(scene, settings, steps=SHORT):
    return next(itertools.islice(states(scene, settings), steps, None))


def looks(scene, settings):
    """States of a whole story, each with whether it is one to look at; the last one is."""
    due, end = 0, scene.seconds(settings)
    for state in states(scene, settings):
        over = state.time_s >= end
        look = over or state.step >= due
        if look:
            due = max(state.step + EVERY, int(state.step * WIDER))
        yield state, look
        if over:
            return


def check_state(scene, settings, state):
    """Readings, traces, maps and sentence of one instant."""
    found = result(scene, settings, state)
    assert list(found.readings) == [reading.name for reading in scene.readings]
    assert as_json(as_record(found))
    for value in found.readings.values():
        assert value is None or isinstance(value, bool | float | int | str)
    trace = scene.trace(settings, state)
    assert list(trace) == [reading.name for reading in scene.traces]
    assert all(math.isfinite(value) for value in trace.values())
    check_words(found.sentence)
    view = scene.view(settings, state)
    # A scene that has a say in its light may show the bare light.
    assert view.stage.pieces or scene.light is not as_arranged
    check_view(view, scene.texts)


def check_words(sentence):
    assert sentence.strip() == sentence
    assert sentence.endswith(".")
    assert len(sentence.split()) >= 3
    assert not set("{}") & set(sentence)
    assert "nan" not in sentence.lower().split()


def check_view(view, texts):
    assert view.stage.width_mm > 0
    assert view.stage.height_mm > 0
    for piece in view.stage.pieces:
        check_map(piece.map)
    if view.section is not None:
        check_section(view.section, texts)
    if view.chart is not None:
        check_chart(view.chart, texts)
    for outline in view.outlines:
        check_line(outline.x_mm, outline.y_mm)
    for mark in view.marks:
        assert all(map(math.isfinite, (mark.x_mm, mark.y_mm, mark.size_mm, mark.angle_deg)))


def check_map(found):
    assert found.v1.shape == found.v2.shape == (found.across.size, found.along_mm.size)
    assert found.half_width_mm.shape == found.along_mm.shape
    assert np.isfinite(found.v1).all()
    assert np.isfinite(found.v2).all()
    assert (np.diff(found.across) > 0).all()
    assert (np.diff(found.along_mm) > 0).all()
    assert (found.half_width_mm >= 0).all()


def check_chart(chart, texts):
    names = [chart.x_id, chart.y_id, *(name for name, _ in chart.levels)]
    assert {*names, *(part.id for part in (*chart.curves, *chart.spans))} <= set(texts)
    if chart.spans:
        assert not chart.curves
        assert chart.reach > 0
    else:
        assert 1 <= len(chart.curves) <= 4
    for span in chart.spans:
        assert 0 <= span.low <= span.middle <= span.high <= chart.reach
    assert all(math.isfinite(level) for _, level in chart.levels)
    for curve in chart.curves:
        check_line(curve.x, curve.y)


def check_line(x, y):
    assert x.shape == y.shape
    assert x.ndim == 1
    assert np.isfinite(x).all()
    assert np.isfinite(y).all()


def check_section(section, texts):
    assert section.stress_id in texts
    fields = [getattr(section, f.name) for f in dataclasses.fields(section)]
    arrays = [value for value in fields if isinstance(value, np.ndarray)]
    assert len({array.shape for array in arrays}) == 1
    assert all(np.isfinite(array).all() for array in arrays)
    assert (section.temperature_C > -273.15).all()
    assert section.magnified > 0


def fingerprint(scene, settings, state):
    """All that can be seen of a state, as bytes."""
    view = scene.view(settings, state)
    maps = [part.map for part in view.stage.pieces]
    seen = [array for one in maps for array in (one.v1, one.v2, one.half_width_mm)]
    if view.section is not None:
        seen += [view.section.temperature_C, view.section.stress_MPa]
    words = as_json(as_record(result(scene, settings, state)))
    return words.encode() + b"".join(array.tobytes() for array in seen)


@pytest.mark.parametrize(("scene", "values"), cases())
def test_a_short_run_is_sound(scene, values):
    settings = record_or_refusal(scene, values)
    if settings is not None:
        for state in itertools.islice(states(scene, settings), SHORT):
            assert state.time_s >= 0
        check_state(scene, settings, state)


@pytest.mark.slow
@pytest.mark.parametrize(("scene", "values"), cases())
def test_the_story_is_sound_to_its_end(scene, values):
    settings = record_or_refusal(scene, values)
    if settings is None:
        return
    assert math.isfinite(scene.seconds(settings))
    before = -1.0
    for state, look in looks(scene, settings):
        assert state.time_s > before
        before = state.time_s
        if look:
            check_state(scene, settings, state)


@pytest.mark.parametrize("scene", each_scene())
def test_the_start_is_sound_and_drawn(scene):
    settings = scene.settings()
    state = scene.start(settings)
    assert state.time_s == 0
    assert state.step == 0
    check_state(scene, settings, state)
    picture = draw(scene.view(settings, state).stage, SIZE)
    assert picture.shape[:2] == SIZE[::-1]
    assert picture.dtype == np.uint8


@pytest.mark.parametrize("scene", each_scene())
def test_the_same_steps_give_the_same_bytes(scene):
    settings = scene.settings()
    first, second = (fingerprint(scene, settings, short_run(scene, settings)) for _ in range(2))
    assert first == second


@pytest.mark.parametrize("scene", each_scene())
def test_the_state_is_frozen(scene):
    settings = scene.settings()
    for record in (settings, scene.start(settings)):
        name = dataclasses.fields(record)[0].name
        with pytest.raises(dataclasses.FrozenInstanceError):
            setattr(record, name, None)


@pytest.mark.parametrize("scene", each_scene())
def test_every_sentence_names_values_that_have_names(scene):
    assert scene.texts
    for text in scene.texts.values():
        for _, field, _, _ in string.Formatter().parse(text):
            assert field != ""


@pytest.mark.parametrize("scene", each_scene())
def test_a_free_piece_holds_itself_in_balance(scene):
    if "net_force_N" in {reading.name for reading in scene.readings}:
        pytest.skip("hands hold the piece; the scene's own tests balance them")
    if scene.id in BORROWING:
        pytest.skip("the pieces are those of other scenes")
    settings = scene.settings()
    for state, look in looks(scene, settings):
        if look:
            for piece in scene.view(settings, state).stage.pieces:
                assert abs(imbalance(piece.map)) < 0.02


def imbalance(found):
    """Sum of v1 over the outline, against the sum of its size.

    No hand holds the piece, so each stress component sums to zero over its volume (mean-stress
    theorem, from Cauchy's equations), and with it the retardation that is linear in them over
    the picture.
    """
    weight = np.gradient(found.across)[:, None]
    weight = weight * (np.gradient(found.along_mm) * found.half_width_mm)[None, :]
    size = float((weight * np.abs(found.v1)).sum())
    return float((weight * found.v1).sum()) / size if size > 0 else 0.0
