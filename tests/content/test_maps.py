"""What-if maps: the same bytes whoever runs them, in whatever order, and however often killed."""

import csv
import io
import math
import os
import random
import signal
import subprocess
import sys
import threading
import time
from concurrent.futures import Future
from pathlib import Path

import numpy as np
import psutil
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from demo_app import __version__
from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content import sweep
from demo_app.content.maps.border import bands, borders, round_levels
from demo_app.content.maps.plan import plan_map
from demo_app.content.maps.result import Map, as_csv
from demo_app.content.maps.run import coarse_first, processes, run_map
from demo_app.content.maps.store import part_of, read_line, write_map
from demo_app.content.maps.work import Cell, cells
from demo_app.content.sweep import Vary
from demo_app.scenes.catalogue import scene

ROOT = Path(__file__).resolve().parent.parent.parent
VARY = ["load=100:4000:4", "thickness_mm=4:16:3"]
READINGS = ["tension_MPa", "breaks", "net_force_N"]


def plan(readings=READINGS, vary=VARY, **values):
    return plan_map(scene("push-pull"), vary, readings, {"kind": "bar-pulled", **values}, 0.5)


class Inline:
    """An executor that does everything at once, here."""

    def __init__(self):
        self.points = []

    def submit(self, fn, /, *args):
        future = Future()
        future.set_result(fn(*args))
        self.points += args[-1]
        return future


class Shuffled:
    """An executor that answers from a thread of its own, in any order."""

    def __init__(self, seed):
        self.seed, self.jobs, self.thread = seed, [], None

    def submit(self, fn, /, *args):
        future = Future()
        self.jobs.append((future, fn, args))
        if self.thread is None:
            self.thread = threading.Thread(target=self._work)
            self.thread.start()
        return future

    def _work(self):
        time.sleep(0.05)
        random.Random(self.seed).shuffle(self.jobs)
        for future, fn, args in self.jobs:
            if future.set_running_or_notify_cancel():
                future.set_result(fn(*args))


@pytest.fixture(scope="module")
def meant():
    return as_csv(Map(plan(), run_map(plan(), Inline())))


def test_the_table_states_its_settings(meant):
    lines = meant.splitlines()
    assert lines[0] == f"# Lehrlight {__version__}, scene push-pull, map"
    assert "# kind = bar-pulled" in lines
    assert not [line for line in lines if line.startswith(("# load", "# thickness"))]
    rows = list(csv.DictReader(line for line in lines if not line.startswith("#")))
    assert [row["load"] for row in rows] == 3 * ["100", "1400", "2700", "4000"]
    assert [row["thickness_mm"] for row in rows] == [t for t in ("4", "10", "16") for _ in "1234"]


def test_rows_are_those_of_a_sweep(meant):
    """The other way to run a scene over a setting states the same numbers."""
    chosen = scene("push-pull")
    vary = sweep.parse_vary(chosen, VARY[0])
    runs = sweep.points(chosen, {"kind": "bar-pulled", "thickness_mm": 10}, vary)
    swept = sweep.table(chosen, runs, vary, 0.5, READINGS)

    def rows(text, thickness=None):
        found = csv.DictReader(io.StringIO("".join(_bare(text))))
        return [
            [row[name] for name in ("load", "at_s", *READINGS)]
            for row in found
            if thickness in (None, row.get("thickness_mm"))
        ]

    assert rows(meant, "10") == rows(swept)


def _bare(text):
    return [line for line in text.splitlines(keepends=True) if not line.startswith("#")]


@pytest.mark.parametrize("chunk", [1, 5, 100])
def test_order_does_not_show(meant, chunk):
    executor = Shuffled(chunk)
    found = run_map(plan(), executor, chunk=chunk)
    executor.thread.join()
    assert as_csv(Map(plan(), found)) == meant


def test_processes_give_the_same_bytes(meant):
    with processes(2) as pool:
        assert as_csv(Map(plan(), run_map(plan(), pool))) == meant


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=25)
@given(st.integers(0, 2000), st.binary(max_size=12))
def test_whatever_is_left_on_disk_the_bytes_are_the_same(meant, tmp_path, kept, torn):
    """A part cut anywhere, rubbish at its end: whole lines are believed, the rest runs again."""
    part = tmp_path / "map.part"
    part.unlink(missing_ok=True)
    run_map(plan(), Inline(), part)
    part.write_bytes(part.read_bytes()[:kept] + torn)
    believed = [read_line(line) for line in part.read_text("ascii", errors="replace").splitlines()]
    executor = Inline()
    found = run_map(plan(), executor, part)
    assert as_csv(Map(plan(), found)) == meant
    assert len(executor.points) == 12 - sum(1 for one in believed if one and len(one) == 4)
    again = Inline()
    run_map(plan(), again, part)
    assert not again.points


def test_one_flipped_letter_is_not_believed():
    text = '00000000 [1, 2.5, [3.0], ""]\n'
    assert read_line(text) is None
    assert read_line("") is None
    assert read_line("garbage") is None


def test_points_of_another_map_are_not_mixed_in(tmp_path):
    part = tmp_path / "map.part"
    run_map(plan(), Inline(), part)
    with pytest.raises(InputError, match="another map"):
        run_map(plan(crack_mm=0.4), Inline(), part)
    with pytest.raises(InputError, match="another map"):
        run_map(plan(["tension_MPa"]), Inline(), part)


def test_progress_and_stopping(tmp_path):
    part, told, arrived = tmp_path / "map.part", [], []
    found = run_map(
        plan(),
        Inline(),
        part,
        progress=lambda done, count: told.append((done, count)),
        arrived=lambda some: arrived.extend(one.index for one in some),
        cancelled=lambda: len(told) == 3,
        chunk=2,
    )
    assert told == [(0, 12), (2, 12), (4, 12)]
    assert sorted(found) == sorted(arrived)
    assert len(found) == 4
    half = Map(plan(), found)
    assert not half.whole
    assert np.isfinite(half.numbers("tension_MPa")).sum() == 4
    with pytest.raises(InputError, match="8 points are not finished"):
        as_csv(half)
    told.clear()
    rest = Inline()
    run_map(plan(), rest, part, progress=lambda done, count: told.append((done, count)))
    assert told[0] == (4, 12)
    assert len(rest.points) == 8


def test_points_come_coarse_first():
    for count in (0, 1, 2, 7, 64, 100):
        assert sorted(coarse_first(count)) == list(range(count))
    assert coarse_first(100)[:4] == [0, 64, 32, 96]


def test_what_cannot_be_is_said_in_its_row():
    """Glass below its strain point cannot be toughened; the others of the map can."""
    chosen = plan_map(
        scene("toughen"), ["start_C=400:650:2", "jet_W_m2K=100:300:2"], ["surface_MPa"], {}, 0.5
    )
    found = Map(chosen, run_map(chosen, Inline()))
    assert [one.index for one in found.refused] == [0, 2]
    assert "below the strain point" in as_csv(found)
    assert np.isnan(found.numbers("surface_MPa")).tolist() == [[True, False], [True, False]]


def test_a_map_without_a_point_is_refused(tmp_path):
    chosen = plan_map(
        scene("toughen"), ["start_C=300:400:2", "jet_W_m2K=100:300:2"], ["surface_MPa"], {}
    )
    out = tmp_path / "map.csv"
    found = Map(chosen, run_map(chosen, Inline(), part_of(out)))
    with pytest.raises(InputError, match=r"no point can be run.*strain point"):
        write_map(out, found)
    assert not list(tmp_path.iterdir())


WORDS = [
    *("map", "push-pull", "--vary", "load=100:4000:12", "--vary", "thickness_mm=4:16:10"),
    *("--set", "kind=bar-pulled", "--at", "0.5", "--reading", "tension_MPa"),
]


def order(out, *words):
    return subprocess.Popen(
        [sys.executable, "-W", "error", "-m", "demo_app", *WORDS, "--out", str(out), *words],
        cwd=ROOT,
        stderr=subprocess.PIPE,
        text=True,
    )


def under_way(one, part, points):
    """Wait until some points are on disk."""
    until = time.monotonic() + 60
    while not (part.exists() and part.read_bytes().count(b"\n") > points):
        assert one.poll() is None
        assert time.monotonic() < until
        time.sleep(0.01)


@pytest.fixture(scope="module")
def whole(tmp_path_factory):
    out = tmp_path_factory.mktemp("whole") / "map.csv"
    assert main([*WORDS, "--out", str(out), "--workers", "1"]) == 0
    assert [path.name for path in out.parent.iterdir()] == ["map.csv"]
    return out.read_bytes()


def test_killed_and_resumed_it_has_the_same_bytes(whole, tmp_path):
    out = tmp_path / "map.csv"
    for points in (20, 60):
        one = order(out, "--workers", "2")
        under_way(one, part_of(out), points)
        workers = psutil.Process(one.pid).children(recursive=True)
        one.kill()
        one.wait()
        one.stderr.close()
        assert not out.exists()
        gone, alive = psutil.wait_procs(workers, timeout=20)
        assert gone
        assert not alive, "workers outlive their killed parent"
    last = order(out, "--workers", "2")
    assert last.communicate()[1] == ""
    assert last.returncode == 0
    assert out.read_bytes() == whole
    assert [path.name for path in tmp_path.iterdir()] == ["map.csv"]


@pytest.mark.skipif(os.name == "nt", reason="no SIGINT to another process")
def test_ctrl_c_keeps_what_is_done(whole, tmp_path):
    out = tmp_path / "map.csv"
    one = order(out, "--workers", "2")
    under_way(one, part_of(out), 20)
    one.send_signal(signal.SIGINT)
    said = one.communicate()[1]
    assert one.returncode == 130
    assert said == "\nstopped; the same command goes on from here\n"
    assert not out.exists()
    assert part_of(out).exists()
    assert main([*WORDS, "--out", str(out)]) == 0
    assert out.read_bytes() == whole


def test_a_worker_that_dies_is_said(tmp_path):
    out = tmp_path / "map.csv"
    one = order(out, "--workers", "1")
    under_way(one, part_of(out), 20)
    for child in psutil.Process(one.pid).children(recursive=True):
        if "resource_tracker" not in " ".join(child.cmdline()):
            child.kill()
    said = one.communicate()[1]
    assert one.returncode == 2
    assert said.startswith(
        "lehrlight: map: a worker was ended from outside; run the same map again"
    )
    assert said.count("\n") == 1


DASK = """
import sys
from dask.distributed import Client, LocalCluster
from demo_app.content.maps.plan import plan_map
from demo_app.content.maps.result import Map, as_csv
from demo_app.content.maps.run import run_map
from demo_app.scenes.catalogue import scene
if __name__ == "__main__":
    plan = plan_map(scene("push-pull"), sys.argv[1:3], sys.argv[3:], {"kind": "bar-pulled"}, 0.5)
    with LocalCluster(2, threads_per_worker=1, dashboard_address=None) as made:
        with Client(made) as client:
            sys.stdout.write(as_csv(Map(plan, run_map(plan, client.get_executor()))))
"""


@pytest.mark.slow
def test_a_cluster_gives_the_same_bytes(meant, tmp_path):
    pytest.importorskip("distributed")
    script = tmp_path / "through_dask.py"
    script.write_text(DASK)
    done = subprocess.run(
        [sys.executable, str(script), *VARY, *READINGS],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout == meant


def made_of(rule, count=41):
    """A map over x and y from -2 to 2 in which `rule` (x, y) is the reading."""
    axis = tuple(np.linspace(-2, 2, count).tolist())
    of = plan_map(
        scene("push-pull"), [Vary("load", axis), Vary("thickness_mm", axis)], ["tension_MPa"], {}
    )
    points = [of.point(index) for index in range(of.count)]
    found = [rule(one["load"], one["thickness_mm"]) for one in points]
    return Map(
        of,
        {
            index: Cell(index, None, (), "no") if value == "no" else Cell(index, 0.0, (value,))
            for index, value in enumerate(found)
        },
    )


def test_the_border_of_a_level_is_the_circle():
    (border,) = borders(made_of(lambda x, y: x**2 + y**2), "tension_MPa", (1.0,))
    (line,) = border.lines
    assert border.name == "1"
    # Linear between points 0.1 apart: off by up to h^2/8 * 2 / 2.
    assert np.abs(np.hypot(*line.T) - 1).max() < 0.1**2 / 8 * 1.1
    assert line[0] == pytest.approx(line[-1])


def test_the_border_of_a_verdict_is_no_finer_than_the_grid():
    (border,) = borders(made_of(lambda x, y: x**2 + y**2 < 1), "tension_MPa")
    assert border.name == "yes"
    assert np.abs(np.hypot(*border.lines[0].T) - 1).max() < 0.1


def test_words_have_borders_each():
    found = borders(made_of(lambda x, y: ("a", "b", "c")[(x > -1) + (x > 1)]), "tension_MPa")
    assert [one.name for one in found] == ["a", "b"]
    assert len(found[0].lines) == 1
    assert np.abs(found[0].lines[0][:, 0] + 1).max() < 0.1
    assert len(found[1].lines) == 2


def area(line):
    x, y = line.T
    return 0.5 * abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1)))


def test_bands_fill_the_map_but_for_what_is_refused():
    found = made_of(lambda x, y: "no" if x > 1.01 else x**2 + y**2)
    levels = round_levels(found.numbers("tension_MPa"), 5)
    assert levels == (0, 2, 4, 6, 8)
    filled = bands(found, "tension_MPa", levels)
    assert [(one.low, one.high) for one in filled] == [(0, 2), (2, 4), (4, 6), (6, 8)]
    areas = [
        sum(area(outline) - sum(map(area, holes)) for outline, *holes in one.polygons)
        for one in filled
    ]
    assert sum(areas) == pytest.approx(3 * 4)
    # Within sqrt(2) of the middle, cut off at x = 1.
    cut = 2 * math.pi - (math.pi / 2 - 1)
    assert areas[0] == pytest.approx(cut, rel=2e-3)


def test_levels_are_round_and_cover():
    for low, high in [(0.0, 1.0), (-101.3, -7.0), (3e5, 3.1e5), (1e-9, 2e-9)]:
        levels = np.array(round_levels(np.array([low, np.nan, high])))
        assert levels[0] <= low * (1 + 1e-9) if low > 0 else levels[0] <= low
        assert levels[-1] >= high - 1e-9 * abs(high)
        assert 4 <= levels.size <= 11
    assert round_levels(np.array([np.nan])) == ()
    assert round_levels(np.array([2.0, 2.0])) == (2.0,)


@pytest.mark.parametrize(
    ("act", "words"),
    [
        (lambda: plan(vary=VARY[:1]), "varies two"),
        (lambda: plan(vary=[*VARY, "crack_mm=1:2:2"]), "varies two"),
        (lambda: plan(vary=2 * VARY[:1]), "given twice"),
        (lambda: plan(vary=["load=1:1:2", VARY[1]]), "does not vary"),
        (lambda: plan(vary=["load=1:2:1", VARY[1]]), "does not vary"),
        (lambda: plan(vary=["load=1:2:1000", "thickness_mm=4:16:900"]), "too many"),
        (lambda: plan(vary=["load=1:9e9:3", VARY[1]]), "out of range"),
        (lambda: plan(vary=["kind=1:2:3", VARY[1]]), "no number called"),
        (lambda: plan(load=3), "also set by --set"),
        (lambda: plan(lod=3), "no setting is called 'lod'"),
        (lambda: plan([]), "none is named"),
        (lambda: plan(["tension"]), "no reading called"),
        (lambda: processes(0).__enter__(), "0 workers"),
        (lambda: borders(made_of(lambda x, y: x), "tension_MPa"), "name a level"),
        (lambda: borders(made_of(lambda x, y: x), "breaks"), "has no reading"),
        (lambda: made_of(lambda x, y: "a").numbers("tension_MPa"), "in words"),
    ],
)
def test_what_cannot_be_mapped_is_refused(act, words):
    with pytest.raises(InputError, match=words):
        act()


def test_a_worker_states_what_a_scene_states():
    (one,) = cells(plan(), (5,))
    assert one.index == 5
    assert isinstance(one.values[0], float)
    assert isinstance(one.values[1], bool)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--workers", "0"], "--workers: '0' cannot be used; write a whole number 1 to 256"),
        (["--workers", "two"], "--workers: 'two' cannot be used"),
        (["--reading", "pull"], "no reading called 'pull'"),
        (["--vary", "crack_mm=0.1:1:3"], "3 settings vary"),
        (["--set", "load=3"], "load is also set by --set"),
        (["--device", "no-such"], "no device is called 'no-such'"),
    ],
)
def test_the_command_refuses_in_one_line(words, said, tmp_path, capsys):
    assert main([*WORDS, "--out", str(tmp_path / "map.csv"), *words]) == 2
    line = capsys.readouterr().err
    assert said in line
    assert line.count("\n") == 1
    assert not list(tmp_path.iterdir())


def test_the_command_wants_a_place_for_its_table(tmp_path, capsys):
    assert main([*WORDS, "--out", str(tmp_path / "none" / "map.csv")]) == 2
    assert "its folder is missing" in capsys.readouterr().err
