"""The scene light-table: one scale, one light, the reading glass, and what it refuses."""

import math

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.pictures import draw
from demo_app.content.readings import solve
from demo_app.optics.instrument import TINT_PLATE_NM, Instrument
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.optics.sampling import view_of
from demo_app.optics.strip import colour_strip
from demo_app.optics.table import exact_signal
from demo_app.physics.material_files import material
from demo_app.scenes.catalogue import scene
from demo_app.scenes.run import state_at, states
from demo_app.scenes.scene import Outline
from demo_app.scenes.settings import make
from demo_app.scenes.tray import borrowed
from demo_app.scenes.tray.record import KNOWN, sample
from demo_app.scenes.tray.sample import Sample, Spread, laid, spread

TABLE = scene("light-table")
SIX = ("plain", "laminated", "toughened", "toughened-face", "dish", "bubble")


def ended(**values):
    chosen = make(TABLE.settings, values)
    return chosen, state_at(TABLE, chosen)


def said(chosen, state):
    message = TABLE.say(chosen, state)
    return message.id, message.words(TABLE.texts)


def picture(chosen, state, size=(480, 240), instrument=None):
    """Bytes red, green, blue, and where they lie on the stage."""
    stage = TABLE.view(chosen, state).stage
    pixels = draw(stage, size, TABLE.light(chosen, instrument or Instrument()))
    return pixels[..., 2::-1].astype(int), view_of(stage, *size)


def held(chosen, state, name, dx=0.0, dy=0.0):
    """State with the reading glass over a sample, (dx, dy) mm off its middle."""
    place = chosen.names.index(name)
    stage = TABLE.view(chosen, state).stage
    piece = stage.pieces[place]  # Each of the six is one piece.
    middle = piece.x_mm + float(piece.map.along_mm[0] + piece.map.along_mm[-1]) / 2
    return TABLE.point(chosen, state, (middle + dx, piece.y_mm + dy))


def flat(nm, width=20.0, height=10.0):
    """A map of one retardation, its slow axis along x."""
    v1 = np.full((2, 2), nm, np.float32)
    ends = np.array([-1.0, 1.0])
    return RetardationMap(
        v1, np.zeros_like(v1), ends, ends * width / 2, np.full(2, height / 2), mirrored=False
    )


# What it must show


def test_six_samples_on_one_scale_of_which_plain_and_laminated_are_dark():
    chosen, state = ended()
    assert chosen.names == SIX
    pixels, view = picture(chosen, state)
    stage = TABLE.view(chosen, state).stage
    assert len(stage.pieces) == 6
    brightest = {}
    for name, piece in zip(SIX, stage.pieces, strict=True):
        columns = [round(view.column(piece.x_mm + piece.map.along_mm[k])) for k in (0, -1)]
        half = piece.map.half_width_mm.max()
        rows = [round(view.row(piece.y_mm + side * half)) for side in (1, -1)]
        brightest[name] = pixels[rows[0] : rows[1], columns[0] : columns[1]].max()
    assert brightest["plain"] == brightest["laminated"] == 0
    assert min(brightest[name] for name in SIX[2:]) > 150


def test_pieces_of_other_scenes_are_those_of_other_scenes():
    chosen, state = ended(samples="dish,bubble,push-pull")
    for name, piece in zip(chosen.names, TABLE.view(chosen, state).stage.pieces, strict=True):
        other = scene(name)
        theirs = other.view(other.settings(), state_at(other, other.settings())).stage.pieces[0]
        # Millimetres and nanometres as they are there.
        np.testing.assert_allclose(np.diff(piece.map.along_mm), np.diff(theirs.map.along_mm))
        if name != "push-pull":
            np.testing.assert_array_equal(piece.map.v1, theirs.map.v1)
    assert "cold" in sample("dish").look
    assert "at 3.3 s" in sample("push-pull").look


def test_a_toughened_plate_is_as_in_its_scene_edge_on_and_nearly_dark_face_on():
    toughen = scene("toughen")
    found = solve(toughen, make(toughen.settings, {"then": "nothing"})).readings
    edge_on, face_on = sample("toughened"), sample("toughened-face")
    optic = material("soda-lime").stress_optic
    # Wertheim's law: retardation = C * stress * way, here 5 mm.
    v1 = edge_on.pieces[0].map.v1[:, 0]
    assert v1[0] == pytest.approx(1e15 * optic * 5e-3 * found["surface_MPa"], rel=0.03)
    assert v1[80] == pytest.approx(1e15 * optic * 5e-3 * found["centre_MPa"], rel=0.01)
    assert v1.sum() == pytest.approx(0, abs=1e-4 * float(np.abs(v1).sum()))
    assert edge_on.size_mm[1] == 6.0
    # Face-on the layers cancel: a tenth of what the same 6 mm would show along the surface.
    across = 1e15 * optic * 6e-3 * abs(found["surface_MPa"])
    assert face_on.spread.median < 0.1 * across
    assert face_on.look == "face-on"
    assert edge_on.look.endswith("edge-on")


def test_every_sample_is_named_with_its_view_on_the_picture():
    chosen, state = ended()
    words = [mark.kind for mark in TABLE.view(chosen, state).marks]
    assert words[2:5] == [
        "toughened, 5 mm slice, edge-on",
        "toughened, face-on",
        "dish, from above, cold",
    ]


def test_samples_come_one_after_another():
    chosen = make(TABLE.settings, {})
    counts = []
    for state in states(TABLE, chosen):
        counts.append(len(TABLE.view(chosen, state).stage.pieces))
        if state.time_s >= TABLE.seconds(chosen):
            break
    assert counts == [4, 5, 6, 6]


def test_a_borrowed_piece_leaves_no_solver_behind():
    def kept():
        return {place: size for place, (_, size) in borrowed._remembered().items()}

    before = kept()
    assert borrowed.borrowed("push-pull").id == "push-pull"
    assert all(size <= before.get(place, 0) for place, size in kept().items())


def test_places_stay_while_others_come():
    chosen = make(TABLE.settings, {})
    first = TABLE.view(chosen, TABLE.start(chosen)).stage
    last = TABLE.view(chosen, state_at(TABLE, chosen)).stage
    assert first.width_mm == last.width_mm
    assert [(p.x_mm, p.y_mm) for p in first.pieces] == [(p.x_mm, p.y_mm) for p in last.pieces[:4]]


def test_no_two_samples_overlap_and_all_are_in_the_field():
    for names in (KNOWN[:6], KNOWN[5:], KNOWN[-1:]):
        chosen, state = ended(samples=",".join(names))
        stage = TABLE.view(chosen, state).stage
        taken = np.zeros((400, 800), int)
        view = view_of(stage, 800, 400)
        for piece in stage.pieces:
            left, right = (view.column(piece.x_mm + piece.map.along_mm[k]) for k in (0, -1))
            half = piece.map.half_width_mm.max()
            top, low = (view.row(piece.y_mm + side * half) for side in (1, -1))
            assert 0 < left < right < 800
            assert 0 < top < low < 400
            taken[math.ceil(top) : int(low), math.ceil(left) : int(right)] += 1
        assert taken.max() == 1


# Readings


def test_readings_are_those_of_what_lies_there():
    found = solve(TABLE, make(TABLE.settings, {"samples": "bubble,plain"})).readings
    assert found["plain_retardation_median_nm"] == found["plain_retardation_p95_nm"] == 0
    assert 0 < found["bubble_retardation_median_nm"] < found["bubble_retardation_p95_nm"]
    assert found["dish_retardation_median_nm"] is None
    assert found["point_retardation_nm"] is None


def test_percentiles_are_taken_over_the_area():
    ramp = np.linspace(0, 100, 401)
    ends = np.array([-1.0, 1.0])
    v1 = np.repeat(ramp[None], 2, axis=0).astype(np.float32)
    none = np.zeros_like(v1)
    strip = RetardationMap(v1, none, ends, ramp, np.full(401, 5.0), mirrored=False)
    found = spread([strip])
    assert [found.low, found.median, found.high] == pytest.approx([5, 50, 95], abs=0.3)
    # A triangle has the share x^2 of its area below x.
    triangle = RetardationMap(v1, none, ends, ramp, ramp / 2, mirrored=False)
    found = spread([triangle])
    assert found.median == pytest.approx(100 * math.sqrt(0.5), abs=0.3)
    assert found.high == pytest.approx(100 * math.sqrt(0.95), abs=0.3)
    # Two equal pieces have the percentiles of one; a dark piece has none.
    both = spread([triangle, triangle])
    assert both.median == pytest.approx(found.median, abs=0.3)
    assert spread([flat(0.0)]) == Spread(0, 0, 0)


# The reading glass


@pytest.mark.parametrize(("nm", "path_mm", "MPa"), [(131, 10, 5), (786, 6, 50), (2620, 10, 100)])
def test_stress_follows_from_retardation_and_thickness(nm, path_mm, MPa):
    # sigma1 - sigma2 = retardation / (C t), ASTM C770 and F218, with C = 2.62 Brewster.
    one = laid("plain", "", (Placed(flat(nm)),), (), 2.62e-12, path_mm)
    assert one.stress_MPa(nm) == pytest.approx(MPa, rel=1e-6)


def test_the_glass_reads_a_place():
    chosen, state = ended()
    up = 3.0 * (1 - 2.5 / 160)  # Middle of the slice's second row from its face.
    reading = TABLE.read(chosen, held(chosen, state, "toughened", 10.0, up))
    edge_on = sample("toughened")
    nm = reading["point_retardation_nm"]
    assert nm == pytest.approx(abs(edge_on.pieces[0].map.v1[-2, 0]), rel=0.03)
    assert reading["point_order"] == pytest.approx(nm / 565)
    optic = material("soda-lime").stress_optic
    assert reading["point_stress_MPa"] == pytest.approx(1e-15 * nm / (optic * 5e-3))
    assert said(chosen, held(chosen, state, "toughened"))[0] == "point_stress"
    assert said(chosen, held(chosen, state, "dish"))[0] == "point_molecules"
    assert said(chosen, held(chosen, state, "bubble"))[0] == "point_path"
    for name in ("dish", "bubble"):
        assert TABLE.read(chosen, held(chosen, state, name))["point_stress_MPa"] is None
    assert TABLE.read(chosen, held(chosen, state, "plain"))["point_retardation_nm"] == 0


def test_the_glass_magnifies_and_stays_when_the_finger_is_lifted():
    chosen, state = ended()
    over = held(chosen, state, "toughened")
    stage = TABLE.view(chosen, over).stage
    assert len(stage.pieces) == 7
    # The 6 mm of the slice fill 24 of the glass's 40 mm.
    middle = stage.pieces[-1].map.v1[:, 60]
    assert (middle != 0).mean() == pytest.approx(24 / 40, abs=0.02)
    assert TABLE.point(chosen, over, None) == over
    spans = TABLE.view(chosen, over).chart.spans
    assert spans[-1].id == "here"
    # Beside the samples there is nothing to read.
    beside = TABLE.point(chosen, over, (0.0, 0.0))
    assert TABLE.read(chosen, beside)["point_retardation_nm"] is None
    assert said(chosen, beside)[0] == "sorted"


def test_one_order_is_a_wavelength_of_the_lamp():
    for lamp, wave in (("daylight", 565.0), ("sodium", 589.3)):
        chosen, state = ended(lamp=lamp)
        reading = TABLE.read(chosen, held(chosen, state, "dish", 20.0, -10.0))
        expected = reading["point_retardation_nm"] / wave
        assert reading["point_order"] == pytest.approx(expected, rel=1e-3)


# The light


def linear(code):
    signal = code / 255
    return signal / 12.92 if signal <= 0.04045 else ((signal + 0.055) / 1.055) ** 2.4


def test_it_is_built_up_from_the_lamp_to_the_samples():
    chosen = make(TABLE.settings, {"built": "lamp"})
    light = []
    for _ in range(3):
        state = TABLE.start(chosen)
        pixels, _ = picture(chosen, state)
        assert np.ptp(pixels, axis=(0, 1)).max() == 0
        light.append(linear(pixels[0, 0, 1]))
        assert said(chosen, state)[0] == chosen.built.replace("-", "_")
        chosen = TABLE.actions[0].apply(chosen, state)
    # Malus: one filter takes half of the lamp's light, the crossed one the rest.
    assert light[0] == pytest.approx(1, abs=0.01)
    assert light[1] == pytest.approx(light[0] / 2, abs=0.01)
    assert light[2] == 0
    assert chosen == make(TABLE.settings, {})
    assert TABLE.actions[0].apply(chosen, state).built == "lamp"


def test_an_open_field_between_parallel_filters_is_as_elsewhere():
    chosen, state = ended(samples="plain")
    pixels, _ = picture(chosen, state, instrument=Instrument(analyser_deg=0))
    assert linear(pixels[0, 0, 1]) == pytest.approx(Instrument().exposure, abs=0.01)


def test_what_else_is_arranged_stays():
    chosen = make(TABLE.settings, {"lamp": "sodium", "turn_deg": 20})
    arranged = Instrument(lamp="green", quarter_wave=True, analyser_deg=0, gain=3)
    light = TABLE.light(chosen, arranged)
    assert (light.lamp, light.polarizer_deg) == ("sodium", 20)
    assert (light.quarter_wave, light.analyser_deg, light.gain) == (True, 0, 3)
    assert TABLE.relit(chosen, light) == chosen
    wanted = Instrument(lamp="green", polarizer_deg=-30, tint_plate_nm=TINT_PLATE_NM)
    told = TABLE.relit(chosen, wanted)
    assert (told.lamp, told.turn_deg, told.tint_plate) == ("green", 150, True)


def test_a_tint_plate_adds_to_the_pull_and_takes_from_the_squeeze():
    # The plate's slow axis lies along the slice (45 degrees before the polarizer), and glass is
    # slow along a pull: 565 nm + what is pulled, 565 nm - what is squeezed.
    chosen, _ = ended(samples="toughened", tint_plate="yes")
    light = TABLE.light(chosen, Instrument())
    piece = sample("toughened").pieces[0]
    stage = Stage((piece,), 13.0, 6.5)
    pixels = draw(stage, (1300, 650), light)[..., 2::-1].astype(float)
    view = view_of(stage, 1300, 650)
    y = 3.0 * piece.map.across
    for wanted in (-114.0, 114.0):
        k = int(np.abs(piece.map.v1[:80, 0] - wanted).argmin())
        seen = pixels[int(view.row(y[k])), 650]
        expected = 255 * exact_signal(
            Instrument(), np.array(565 + float(piece.map.v1[k, 0])), np.array(0.0)
        )
        assert np.abs(seen - expected).max() < 25
    # Blue where it adds, yellow where it takes away (Murphy and Davidson, Fundamentals of Light
    # Microscopy, 2012).
    added, taken = colour_strip(light, 114.0, 2)[:, 1].astype(int)
    assert added[2] > added[0] + 50
    assert taken[0] > taken[2] + 50


def test_stress_along_the_filters_is_dark():
    chosen, state = ended(samples="toughened", turn_deg=0)
    pixels, _ = picture(chosen, state)
    assert pixels.max() == 0
    assert said(chosen, state)[0] == "along"


@pytest.mark.parametrize(
    ("values", "id", "words"),
    [
        ({"samples": "plain"}, "all_dark", "plain"),
        ({"samples": "plain,touch"}, "no_colour", "Grey: touch"),
        ({}, "sorted", "all over: toughened edge-on, dish"),
        ({"samples": "touch,dish"}, "sorted_grey", "all over: dish"),
        ({"tint_plate": "yes"}, "tint", "565 nm: without stress all is violet"),
        ({"lamp": "sodium"}, "one_colour", "589 nm"),
    ],
)
def test_the_sentence_tells_why(values, id, words):
    found, sentence = said(*ended(**values))
    assert found == id
    assert words in sentence


# The chart


def test_the_chart_marks_each_sample_over_the_colours():
    chosen, state = ended()
    chart = TABLE.view(chosen, state).chart
    assert chart.colours
    assert [span.id for span in chart.spans] == list(SIX)
    assert chart.reach > max(span.high for span in chart.spans)
    for span in chart.spans:
        assert span.low <= span.middle <= span.high
    assert chart.spans[2].high == sample("toughened").spread.high


def test_there_is_no_chart_before_there_is_a_sample():
    chosen, state = ended(built="crossed")
    assert TABLE.view(chosen, state).chart is None


# What it refuses


@pytest.mark.parametrize(
    ("words", "problem"),
    [
        ("plane", "'plane' is not known"),
        ("plain,toughen", "'toughen' is not known"),
        ("light-table", "'light-table' is not known"),
        ("", "none is named"),
        ("plain,dish,plain", "'plain' is named twice"),
        (",".join(KNOWN[:7]), "7 are too many"),
    ],
)
def test_what_cannot_lie_there(words, problem):
    with pytest.raises(InputError, match=problem) as error:
        make(TABLE.settings, {"samples": words})
    assert error.value.place == "samples"


def test_names_may_have_blanks():
    assert make(TABLE.settings, {"samples": " plain , dish"}).names == ("plain", "dish")


def test_the_command_line_says_it_in_one_line(capsys, tmp_path):
    out = tmp_path / "x.png"
    words = ["picture", "light-table", "--set", "samples=vase", "--out", str(out)]
    assert main(words) == 2
    told = capsys.readouterr().err
    assert told.startswith("lehrlight: samples: 'vase' is not known; write one of plain, laminated")
    assert told.count("\n") == 1
    assert not out.exists()


def test_options_and_settings_ask_for_the_same_light(tmp_path):
    def made(name, *words):
        out = tmp_path / name
        shared = ["picture", "light-table", "--set", "samples=toughened", "--size", "160x90"]
        assert main([*shared, "--out", str(out), *words]) == 0
        return out.read_bytes()

    by_settings = [
        w for s in ("lamp=sodium", "turn_deg=30", "tint_plate=yes") for w in ("--set", s)
    ]
    by_options = ["--lamp", "sodium", "--turn", "30", "--tint-plate"]
    plain = made("plain.png")
    assert made("a.png", *by_settings) == made("b.png", *by_options) != plain
    assert made("c.png", "--parallel") != plain


def test_a_sample_that_lies_anywhere_is_brought_to_its_middle():
    line = Outline("cut", np.array([30.0]), np.array([4.0]))
    one = laid("x", "", (Placed(flat(1.0), 30.0, 4.0), Placed(flat(2.0), 60.0, 4.0)), (line,), 1, 1)
    assert isinstance(one, Sample)
    assert [part.x_mm for part in one.pieces] == [-15.0, 15.0]
    assert one.size_mm == (50.0, 10.0)
    assert (one.outlines[0].x_mm[0], one.outlines[0].y_mm[0]) == (-15.0, 0.0)
