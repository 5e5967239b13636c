"""A what-if map of 2,000 points of `toughen`: one worker, two, killed and resumed, a cluster's.

All four give the same bytes, or this stops. The two-worker run is killed by ``kill -9`` half-way
in another round and goes on from what is on disk.

Run it as ``python tests/benchmarks/maps.py`` from the top of the repository. One worker and two
take turns, and the quietest pair of `REPEATS` counts: two workers need both cores to themselves.
Processor time is stated beside, which others on the machine disturb less.
"""

import os
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path.insert(0, str(ROOT))

REPEATS = 3
COUNT = 2000
WORDS = [
    *("map", "toughen", "--vary", "jet_W_m2K=50:500:50", "--vary", "start_C=600:700:40"),
    *("--reading", "surface_MPa", "--reading", "grade"),
]


def command(out: Path, workers: int) -> list[str]:
    """The map as a person orders it."""
    return [
        *(sys.executable, "-m", "demo_app", *WORDS),
        *("--out", str(out), "--workers", str(workers)),
    ]


def drawn(out: Path, workers: int) -> bytes:
    """Bytes of the map, from the command line."""
    subprocess.run(command(out, workers), check=True, cwd=ROOT)
    return out.read_bytes()


def killed(out: Path) -> tuple[bytes, int]:
    """Bytes of the map after ``kill -9`` in the middle, and the points that were done by then."""
    part = out.with_name(out.name + ".part")
    one = subprocess.Popen(command(out, 2), cwd=ROOT)
    while not (part.exists() and part.read_bytes().count(b"\n") > COUNT / 2):
        time.sleep(0.05)
        assert one.poll() is None
    one.send_signal(signal.SIGKILL)
    one.wait()
    assert not out.exists()
    done = part.read_bytes().count(b"\n") - 2
    return drawn(out, 2), done


def cluster() -> bytes:
    """Bytes of the map through two processes of a dask cluster on this machine."""
    import dask
    from dask.distributed import Client, LocalCluster

    from demo_app.content.maps.plan import plan_map
    from demo_app.content.maps.result import Map, as_csv
    from demo_app.content.maps.run import run_map
    from demo_app.scenes.catalogue import scene

    plan = plan_map(scene("toughen"), [WORDS[3], WORDS[5]], [WORDS[7], WORDS[9]], {})
    with (
        dask.config.set({"distributed.worker.daemon": True}),
        LocalCluster(n_workers=2, threads_per_worker=1, dashboard_address=None) as made,
        Client(made) as client,
    ):
        return as_csv(Map(plan, run_map(plan, client.get_executor()))).encode()


@dataclass(frozen=True)
class Timed:
    """Milliseconds by the clock and of all processors, and the result."""

    clock: float
    work: float
    result: Any


def timed(act: Callable[[], Any]) -> Timed:
    """How long `act` and the processes that it waits for take."""
    began, worked = time.perf_counter(), _worked()
    result = act()
    return Timed(1e3 * (time.perf_counter() - began), 1e3 * (_worked() - worked), result)


def _worked() -> float:
    spent = os.times()
    return spent.user + spent.system + spent.children_user + spent.children_system


def rows() -> list[dict[str, Any]]:
    """Four rows."""
    os.environ["PYTHONPATH"] = str(ROOT)
    with tempfile.TemporaryDirectory() as folder:
        pairs = []
        for _ in range(REPEATS):
            out = Path(folder, "map.csv")
            pairs.append((timed(lambda o=out: drawn(o, 1)), timed(lambda o=out: drawn(o, 2))))
        again, before = killed(Path(folder, "killed.csv"))
    through = timed(cluster)
    maps = [*(run.result for pair in pairs for run in pair), again, through.result]
    assert len(set(maps)) == 1, "the maps differ"
    assert maps[0].count(b"\n") > COUNT
    one, two = min(pairs, key=lambda pair: pair[0].clock + pair[1].clock)
    faster, even = one.clock / two.clock, 2 * one.work / two.work
    return [
        {
            "name": f"map of {COUNT} points of toughen, 1 worker",
            "milliseconds": one.clock,
            "ratio": 1.0,
            "reference": "itself",
        },
        {
            "name": f"2 workers, {faster:.2f} times as fast ({even:.2f} by processor time)",
            "milliseconds": two.clock,
            "ratio": two.clock / one.clock,
            "reference": "1 worker",
        },
        {
            "name": f"the same killed at {before} points, resumed: same bytes",
            "milliseconds": two.clock,
            "ratio": 1.0,
            "reference": "2 workers",
        },
        {
            "name": "the same through dask, 2 processes: same bytes",
            "milliseconds": through.clock,
            "ratio": through.clock / two.clock,
            "reference": "2 workers",
        },
    ]


if __name__ == "__main__":
    for row in rows():
        print(row)
