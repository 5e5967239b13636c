"""A scene played as its window plays it: at its own pace, pictures blended between two steps."""

import numpy as np

from demo_app.optics.instrument import Instrument
from demo_app.optics.picture import colour
from demo_app.optics.retardation import blend
from demo_app.scenes.run import states

STEP_NM = 3.0


def played(scene, settings, size=(240, 135), every_s=0.1):
    """Clock (s), view, instrument and picture of a whole story, from its start to its end.

    In slow stretches pictures follow each other at a change of `STEP_NM` of retardation, which no
    eye takes for a flash: light changes by a hundredth at most.
    """
    run = states(scene, settings)
    instrument = scene.light(settings, Instrument())
    before, after = next(run), next(run)
    here, there = scene.view(settings, before), scene.view(settings, after)
    time_s, clock_s, end = 0.0, 0.0, scene.seconds(settings)
    while True:
        while after.time_s <= time_s + 1e-9:
            before, after = after, next(run)
            here, there = there, scene.view(settings, after)
        gap, pace = after.time_s - before.time_s, scene.pace(settings, before)
        stage = here.stage
        if pace * every_s < 0.5 * gap:
            stage = blend(stage, there.stage, (time_s - before.time_s) / gap)
        yield clock_s, here, instrument, colour(stage, instrument, *size)
        if time_s >= end:
            return
        slow = gap * min(1.0, STEP_NM / max(change_nm(here.stage, there.stage), 1e-9))
        passed = max(pace * every_s, min(slow, after.time_s - time_s))
        passed = min(passed, end - time_s)
        time_s, clock_s = time_s + passed, clock_s + passed / pace


def change_nm(first, second):
    """Largest change of a map between two stages, nm; infinite where the pieces are others."""
    if len(first.pieces) != len(second.pieces):
        return np.inf
    largest = 0.0
    for a, b in zip(first.pieces, second.pieces, strict=True):
        if a.map.v1.shape != b.map.v1.shape:
            return np.inf
        for one, other in ((a.map.v1, b.map.v1), (a.map.v2, b.map.v2)):
            largest = max(largest, float(np.abs(one - other).max()))
    return largest
