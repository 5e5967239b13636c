"""Spoken descriptions follow the picture: invariants, and every scene at several instants."""

import itertools
from dataclasses import replace

import numpy as np
import pytest

from demo_app.content.describe import MOST_SENTENCES, MOST_WORDS, describe, sentence, spoken
from demo_app.content.describe_look import bands, shade
from demo_app.content.describe_words import ENGLISH
from demo_app.optics.instrument import TINT_PLATE_NM, Instrument
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.scenes.catalogue import scene, scenes
from demo_app.scenes.run import liveliest, states
from demo_app.scenes.scene import Mark, Outline, View

PLAIN = Instrument()
ANY = scene("push-pull")
SETTINGS = ANY.settings()
CHANGES = (
    {},
    {"gain": 10.0},
    {"tint_plate_nm": TINT_PLATE_NM},
    {"analyser_deg": 0.0},
    {"lamp": "sodium"},
    {"quarter_wave": True},
    {"filters": 1},
    {"filters": 0, "gain": 2.0},
)


def plate(v1, v2=None, x_mm=0.0):
    """A plate of 100 mm x 40 mm with a map given row by row from its lower edge up."""
    v1 = np.asarray(v1, np.float32)
    v2 = np.zeros_like(v1) if v2 is None else np.asarray(v2, np.float32)
    rows, columns = v1.shape
    along = np.linspace(-50, 50, columns)
    made = RetardationMap(v1, v2, np.linspace(-1, 1, rows), along, np.full(columns, 20.0), False)
    return Placed(made, x_mm)


def view(*pieces, **rest):
    return View(Stage(pieces, 120.0 * max(1, len(pieces)), 60.0), **rest)


def ids(shown, instrument=PLAIN, earlier=None):
    return [m.id for m in describe(ANY, SETTINGS, shown, instrument, earlier)]


def words(shown, instrument=PLAIN, earlier=None):
    return spoken(ANY, SETTINGS, shown, instrument, earlier)


def bent(most_nm=200.0):
    """A bar bent in its plane: no retardation in the middle, most at both edges."""
    return view(plate(np.repeat(np.linspace(-most_nm, most_nm, 41)[:, None], 60, axis=1)))


DARK = view(plate(np.zeros((5, 5))))


def test_unstressed_is_all_dark():
    assert ids(DARK) == ["all_dark"]
    assert "all dark" in words(DARK)
    assert "all of them are dark" in words(
        view(plate(np.zeros((3, 3)), x_mm=-60), DARK.stage.pieces[0])
    )


def test_a_bent_bar_has_a_dark_line_and_bright_edges():
    said = words(bent())
    assert "bright along the upper and lower edges" in said
    assert "dark line along the middle" in said
    assert "2 bright bands run from left to right" in said


@pytest.mark.parametrize("side", ["left", "right"])
def test_the_bright_end(side):
    grow = np.repeat(np.linspace(0, 250, 60)[None] ** 1.5 / 16, 9, axis=0)
    said = words(view(plate(grow[:, ::-1] if side == "left" else grow)))
    other = {"left": "right", "right": "left"}[side]
    assert f"bright at the {side} end and darker at the {other} end" in said


@pytest.mark.parametrize("edge", ["upper", "lower"])
def test_the_bright_edge(edge):
    grow = np.repeat(np.linspace(0, 250, 41)[:, None], 30, axis=1)
    said = words(view(plate(grow if edge == "upper" else grow[::-1])))
    assert f"bright along the {edge} edge" in said


@pytest.mark.parametrize("orders", [1, 2, 4])
def test_bands_are_counted(orders):
    # In one-colour light a whole wavelength between crossed polarizers is one bright band.
    sodium = Instrument(lamp="sodium")
    wave = np.repeat(np.linspace(0, 589.3 * orders, 60)[:, None], 30, axis=1)
    said = words(view(plate(wave)), sodium)
    expected = "One bright band runs" if orders == 1 else f"{orders} bright bands run"
    assert expected in said
    assert "yellow light only" in said


def test_bands_on_a_line_of_light():
    light = np.tile((1 - np.cos(np.linspace(0, 12 * np.pi, 61)))[:, None] / 2, (1, 81))
    assert bands(light.astype(np.float32)) == (6, "lengthwise")
    assert bands(light.T.astype(np.float32)) == (6, "upright")


def test_growth_and_fading():
    strong, weak = bent(120), bent(60)
    assert "grows" in ids(strong, earlier=weak)
    assert "fades" in ids(weak, earlier=strong)
    assert "stays" in ids(strong, earlier=strong)
    assert ids(DARK, earlier=DARK) == ["all_dark", "stays"]


def test_parallel_polarizers_and_the_tint_plate():
    parallel, tint = Instrument(analyser_deg=0.0), Instrument(tint_plate_nm=TINT_PLATE_NM)
    assert ids(DARK, parallel) == ["light.parallel", "all_alike"]
    assert "white: no stress shows" in words(DARK, parallel)
    # The usual tint plate gives the purple of passage, 565 nm.
    assert "violet: no stress shows" in words(DARK, tint)
    assert "all_alike" not in ids(bent(), tint)


def test_gain_and_lamp_are_told():
    assert words(bent(), Instrument(gain=10.0)).startswith("The picture is brightened 10 times.")
    assert "green light only" in words(bent(), Instrument(lamp="green"))
    assert "brightened" not in words(bent())


def test_a_crack_is_told_where_it_is():
    cracked = replace(bent(), marks=(Mark("crack", 45.0, 0.0),))
    assert "A crack shows on the right." in words(cracked)
    line = Outline("shard", np.array([0.0, 1, 1]), np.array([0.0, 0, 1]))
    assert "broken" in words(replace(bent(), outlines=(line,)))


def test_lightness_comes_first():
    assert shade(np.array([0.01, 0.05, 0.25])) == "dark blue"
    assert shade(np.array([1.0, 0.9, 0.0])) == "bright yellow"
    assert shade(np.zeros(3)) == "black"
    assert shade(np.ones(3)) == "white"


def test_texts_are_tidy():
    for text in ENGLISH.values():
        assert text.strip() == text


def check(chosen, settings, shown, instrument, earlier):
    messages = describe(chosen, settings, shown, instrument, earlier)
    assert 1 <= len(messages) <= MOST_SENTENCES
    for message in messages:
        said = sentence(message)
        assert len(said.split()) <= MOST_WORDS, said
        assert "@" not in said
        assert "{" not in said
        assert said[0].upper() == said[0]
        assert said.endswith(".")
    if earlier is not None or len(instrument_changes(instrument)):
        assert len(messages) >= 2
    return spoken(chosen, settings, shown, instrument, earlier)


def instrument_changes(instrument):
    parts = ("gain", "tint_plate_nm", "analyser_deg", "filters")
    return [part for part in parts if getattr(instrument, part) != getattr(PLAIN, part)]


@pytest.mark.parametrize("name", sorted(scenes()))
def test_every_scene_at_several_instants(name):
    chosen = scene(name)
    settings = chosen.settings()
    instrument = chosen.light(settings, PLAIN)
    due = iter(np.linspace(0, chosen.seconds(settings), 4))
    wanted, earlier, told = next(due), None, []
    for state in itertools.islice(states(chosen, settings), 3000):
        if state.time_s < wanted - 1e-9:
            continue
        shown = chosen.view(settings, state)
        check(chosen, settings, shown, instrument, None)
        told.append(check(chosen, settings, shown, instrument, earlier))
        earlier, wanted = shown, next(due, None)
        if wanted is None:
            break
    assert wanted is None
    assert len(set(told)) >= 3, "pictures that differ sound alike"
    if name != "light-table":
        assert "dark" in told[0]
        assert "no stress" in told[0]


@pytest.mark.parametrize("change", CHANGES, ids=str)
def test_every_light(change):
    chosen = scene("ring")
    settings = chosen.settings()
    shown = chosen.view(settings, liveliest(chosen, settings, 8))
    check(chosen, settings, shown, replace(PLAIN, **change), None)
