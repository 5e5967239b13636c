"""The alarm: every scene, played at its own pace, against the published photosensitivity limits."""

from dataclasses import replace

import numpy as np
import pytest
from playing_scenes import played

from demo_app.optics import calm
from demo_app.optics.flashes import flashes, sampled
from demo_app.optics.stripes import lasting, stripes
from demo_app.scenes.catalogue import scene, scenes

# Scenes whose pictures, at the defaults, are striped beyond the limits if calm mode is off: see
# the tests below, which fail if this list is wrong either way.
STRIPED = {"cooling", "ring", "toughen"}


pytestmark = pytest.mark.slow


@pytest.fixture(scope="module", params=sorted(scenes()))
def story(request):
    """Clock, and pictures without and with calm mode, of one scene; and its name."""
    name = request.param
    clock, plain_light, calm_light, plain, soft = [], [], [], [], []
    held = None
    chosen = scene(name)
    for clock_s, _, _, picture in played(chosen, chosen.settings()):
        clock.append(clock_s)
        plain.append((clock_s, stripes(picture)))
        plain_light.append(sampled(picture))
        if held is None:
            shown, held = calm.first(picture, clock_s)
        else:
            # A window asks again until the picture has settled.
            now, settled = held.at_s, False
            while now < clock_s - 1e-9 and not settled:
                now = min(now + calm.LONGEST_S, clock_s)
                shown, held, settled = calm.calmer(picture.copy(), now, held)
            held = replace(held, at_s=clock_s)
        soft.append((clock_s, stripes(shown)))
        calm_light.append(sampled(shown))
    return name, np.array(clock), np.array(plain_light), np.array(calm_light), plain, soft


def test_no_scene_flashes(story):
    _, clock, light, soft_light, _, _ = story
    assert not flashes(clock, light).exceed()
    assert not flashes(clock, soft_light).exceed()


def test_calm_mode_keeps_stripes_below_the_limits(story):
    assert lasting(story[5]) == ()


def test_which_scenes_need_calm_mode(story):
    assert bool(lasting(story[4])) == (story[0] in STRIPED)
