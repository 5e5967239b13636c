"""Cost of colouring a live picture, beside copying the same picture in the same run.

Run it as ``python tests/benchmarks/colouring.py`` from the top of the repository. The picture is
one mirrored piece that fills the frame, with a made-up smooth stress up to 700 nm; its map has 64
rows and 240 columns.
"""

import statistics
import time
from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from scipy.interpolate import RegularGridInterpolator

from demo_app.optics.colour import XYZ_TO_RGB, desaturate, encode, white_balance
from demo_app.optics.instrument import Instrument
from demo_app.optics.light_data import lamp
from demo_app.optics.picture import colour, paint, peak_nm
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.optics.sampling import plan_for, view_of
from demo_app.optics.table import colour_table, reach_for

WIDTH, HEIGHT = 1920, 1080
PATCH = (96, 64)


def piece(*, curved: bool = False) -> Stage:
    """One mirrored piece that fills a frame of 16 to 9."""
    across = 1 - (1 - np.linspace(0, 1, 64)) ** 1.6
    along = np.linspace(-60, 60, 240)
    half_width = np.full(240, 33.75)
    if curved:
        half_width = 33.75 * (1 - 0.3 * (along / 60) ** 2)
    x, t = np.meshgrid(along, across)
    v1 = 700 * np.exp(-((x / 12) ** 2)) * (1 - 0.7 * t**2) * np.cos(3 * t)
    v2 = 350 * np.sin(x / 10) * t * np.exp(-((x / 25) ** 2))
    shown = RetardationMap(
        v1.astype(np.float32), v2.astype(np.float32), across, along, half_width, mirrored=True
    )
    return Stage((Placed(shown),), 120.0, 67.5)


def measure(repeats: int = 60) -> dict[str, float]:
    """Medians in milliseconds, of jobs that take turns so that the machine's load hits all alike.

    Each job runs twice in its turn and the second run counts, so that the copy, like the live
    picture, finds its frame in the cache: a cold copy takes longer and would flatter the ratio.

    Returns
    -------
    dict
        ``copy``: `numpy.copyto` of the RGBA frame; ``colour``: the frame between crossed
        polarizers at 45 degrees; ``turned``: at 30 degrees, where mirror images differ;
        ``curved``: the latter with a curved outline; ``table``: building the colour table up to
        750 nm; ``first``: the first frame of a geometry, with its sampling plan; ``naive``:
        per-pixel 4 x 4 Mueller matrices over the spectrum, measured on a patch of 96 x 64 pixels
        and scaled to the frame.
    """
    frame = np.empty((HEIGHT, WIDTH, 4), np.uint8)
    other = np.zeros_like(frame)
    straight, curved = piece(), piece(curved=True)
    level, turned = Instrument(), Instrument(polarizer_deg=30)
    jobs: dict[str, Callable[[], Any]] = {
        "copy": lambda: np.copyto(frame, other),
        "colour": lambda: colour(straight, level, WIDTH, HEIGHT, frame),
        "turned": lambda: colour(straight, turned, WIDTH, HEIGHT, frame),
        "curved": lambda: colour(curved, turned, WIDTH, HEIGHT, frame),
        "table": lambda: colour_table.__wrapped__(turned, 750.0),
    }
    taken = medians(jobs, repeats)
    table = colour_table(turned, reach_for(peak_nm(curved)))
    start = time.perf_counter()
    paint(curved, plan_for(curved, WIDTH - 1, HEIGHT - 1), table)
    taken["first"] = (time.perf_counter() - start) * 1e3
    start = time.perf_counter()
    naive_patch(straight, turned)
    taken["naive"] = (time.perf_counter() - start) * 1e3 * WIDTH * HEIGHT / (PATCH[0] * PATCH[1])
    return taken


def rows(repeats: int = 60) -> list[dict[str, Any]]:
    """Rows of the benchmarks' table: name, milliseconds, ratio, reference."""
    taken = measure(repeats)
    words = {
        "colour": "colouring one 1920 x 1080 frame, polarizers at 45 degrees",
        "turned": "the same, polarizers at 30 degrees",
        "curved": "the same, curved outline",
        "table": "colour table up to 750 nm",
        "first": "first frame of a geometry, curved outline",
    }
    by_copy = [
        {
            "name": name,
            "milliseconds": taken[key],
            "ratio": taken[key] / taken["copy"],
            "reference": "copying the frame",
        }
        for key, name in words.items()
    ]
    naive = {
        "name": "per-pixel spectra (measured on 96 x 64 pixels, scaled)",
        "milliseconds": taken["naive"],
        "ratio": taken["naive"] / taken["turned"],
        "reference": words["turned"],
    }
    return [*by_copy, naive]


def naive_patch(stage: Stage, instrument: Instrument) -> Any:
    """A patch above the middle of the frame with neither table nor plan, lowest row first.

    Plane polarizers alone: for every pixel and wavelength a product of 4 x 4 Mueller matrices,
    all of a row of pixels at once, summed over the spectrum and turned into sRGB.
    """
    light = lamp(instrument.lamp)
    to_rgb = (XYZ_TO_RGB @ white_balance(light.white)).T
    view, shown = view_of(stage, WIDTH, HEIGHT), stage.pieces[0].map
    read = RegularGridInterpolator(
        (shown.across, shown.along_mm), np.stack([shown.v1, shown.v2], axis=-1).astype(float)
    )
    x = view.x_mm(np.arange(PATCH[0]) + WIDTH / 2 + 0.5)
    first = _polarizer(instrument.polarizer_deg)
    last = _polarizer(instrument.polarizer_deg + instrument.analyser_deg)
    patch = np.zeros((PATCH[1], PATCH[0], 3))
    for row in range(PATCH[1]):
        y = view.y_mm(np.full(PATCH[0], HEIGHT / 2 - row - 0.5))
        v1, v2 = read(np.stack([y / np.interp(x, shown.along_mm, shown.half_width_mm), x], 1)).T
        axis = np.degrees(np.arctan2(v2, v1)) / 2
        plates = _retarders(np.hypot(v1, v2)[:, None] / light.wavelength_nm, axis[:, None])
        seen = 2 * (last @ plates @ first)[..., 0, 0]
        patch[row] = encode(desaturate(instrument.exposure * (seen @ light.weights @ to_rgb)))
    return patch


def _polarizer(angle_deg: float) -> Any:
    row = np.array([1, np.cos(np.radians(2 * angle_deg)), np.sin(np.radians(2 * angle_deg)), 0])
    return np.outer(row, row) / 2


def _retarders(waves: Any, angle_deg: Any) -> Any:
    """Mueller matrices, shape (pixels, wavelengths, 4, 4)."""
    twice = np.broadcast_to(np.radians(2 * angle_deg), waves.shape)
    turn = np.zeros((*waves.shape, 4, 4))
    turn[..., 0, 0] = turn[..., 3, 3] = 1
    turn[..., 1, 1] = turn[..., 2, 2] = np.cos(twice)
    turn[..., 2, 1] = np.sin(twice)
    turn[..., 1, 2] = -np.sin(twice)
    plate = np.zeros_like(turn)
    plate[..., 0, 0] = plate[..., 1, 1] = 1
    plate[..., 2, 2] = plate[..., 3, 3] = np.cos(2 * np.pi * waves)
    plate[..., 3, 2] = np.sin(2 * np.pi * waves)
    plate[..., 2, 3] = -np.sin(2 * np.pi * waves)
    return turn @ plate @ np.swapaxes(turn, -1, -2)


def medians(jobs: dict[str, Callable[[], Any]], repeats: int) -> dict[str, float]:
    times: dict[str, list[float]] = {name: [] for name in jobs}
    for _ in range(repeats):
        for name, job in jobs.items():
            job()
            start = time.perf_counter()
            job()
            times[name].append(time.perf_counter() - start)
    return {name: statistics.median(taken) * 1e3 for name, taken in times.items()}


def show(table: Sequence[dict[str, Any]]) -> None:
    """Print rows of the benchmarks' table."""
    for row in table:
        print(
            f"{row['name']:58s} {row['milliseconds']:10.2f} ms  {row['ratio']:9.1f} x "
            f"{row['reference']}"
        )


if __name__ == "__main__":
    show(rows())
