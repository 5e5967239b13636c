"""The six lessons that come with the app: in order, within their profile, in plain words."""

import functools
import itertools
import re
from pathlib import Path

import pytest
import textstat

from demo_app.base import locate
from demo_app.content.lessons.challenges import tried
from demo_app.content.lessons.drawn import drawn, ways
from demo_app.content.lessons.hazards import HAZARDS, PROFILES, SHOWN, SIMULATED, shown_by
from demo_app.content.lessons.load import Examined, examine, own_lessons
from demo_app.content.lessons.reach import reachable
from demo_app.content.lessons.reading_age import read_by_pupils
from demo_app.content.lessons.records import Lesson
from demo_app.scenes.catalogue import ids, load
from demo_app.scenes.settings import make, settings_of

PATHS = {path.stem: path for path in own_lessons()}
AGES = [(7, 9), (9, 11), (11, 14), (14, 16), (16, 18), (18, 99)]
FIFTY_MIN = 50
SAFE = {"allergens", "small-parts", "warm-lamp", *SIMULATED}


@functools.cache
def examined(name: str) -> Examined:
    return examine(PATHS[name])


def lesson(name: str) -> Lesson:
    found = examined(name)
    assert found.lesson is not None, list(map(str, found.mistakes))
    return found.lesson


def test_there_is_one_for_each_age() -> None:
    assert sorted(lesson(name).ages for name in PATHS) == AGES
    assert all(path.parent == locate.lesson_plans() for path in PATHS.values())


@pytest.mark.parametrize("name", PATHS)
def test_each_passes_its_check(name: str) -> None:
    assert examined(name).mistakes == ()
    found = lesson(name)
    assert len(found.items) >= 4
    assert sum(step.challenge is not None for step in found.steps) >= 1
    assert sum(step.stage == "task" for step in found.steps) >= 1
    assert set(examined(name).truths) == {step.id for step in found.steps if step.question}
    if found.ages[1] <= 18:
        assert found.minutes == FIFTY_MIN
    assert found.kit
    assert found.curriculum
    assert any("allergens" in item.hazards and "Agar" in item.note for item in found.kit)


@pytest.mark.parametrize("name", PATHS)
def test_every_wrong_answer_names_a_belief_with_a_source(name: str) -> None:
    found = lesson(name)
    truths = examined(name).truths
    for step in found.steps:
        for at, belief in enumerate(step.beliefs):
            assert belief or at == truths[step.id].index
    used = {belief for step in found.steps for belief in step.beliefs if belief}
    used |= {wrong.belief for item in found.items for wrong in item.wrong}
    assert used <= {one.id for one in found.misconceptions}
    assert all(one.source and one.meet for one in found.misconceptions)


@pytest.mark.parametrize("name", PATHS)
def test_every_route_stays_within_the_profile(name: str) -> None:
    found = lesson(name)
    allowed = set(found.allows) & set(PROFILES[found.profile])
    assert allowed <= SAFE
    routes = reachable(found)
    for route in routes:
        assert set(route.hazards) <= allowed, route
        if route.scene:
            # What the route itself can show, worked out anew.
            words = [word for bound in route.bounds for word in bound.choices]
            assert shown_by(route.scene, route.settings, words) <= allowed
            scene = load(route.scene)
            make(scene.settings, dict(route.settings))
            specs = {spec.name: spec for spec in settings_of(scene.settings)}
            corners = [one.choices or (one.low, one.high) for one in route.bounds]
            for values in itertools.product(*corners):
                for bound, value in zip(route.bounds, values, strict=True):
                    assert specs[bound.name].check(value) == value
    assert {route.step for route in routes} == {
        "kit",
        *(step.id for step in found.steps),
        *(item.id for item in found.items),
    }
    if any(one in SIMULATED for route in routes for one in route.hazards):
        assert found.simulated is not None
        assert "not" in found.simulated.not_at_home


def test_no_profile_lists_what_a_school_must_not_have() -> None:
    for flags in PROFILES.values():
        assert set(flags) <= SAFE
    assert {"flame", "breakage", "hot-glass", "hot-water", "stored-energy"} <= set(HAZARDS)


def test_a_scene_that_nobody_has_thought_about_shows_everything() -> None:
    assert set(SHOWN) == set(ids())
    assert shown_by("brand-new", {}) == set(SIMULATED)
    assert "simulated-hot-water" in shown_by("light-table", {"samples": "plain,pour"})
    assert "simulated-flame" in shown_by("light-table", {}, ["ring,plain"])


@pytest.mark.parametrize("name", PATHS)
def test_challenges_are_open_at_first_and_can_be_met(name: str) -> None:
    for step in lesson(name).steps:
        if step.challenge is not None:
            assert not tried(step, {}).reached
            best = tried(step, step.challenge.solution)
            assert best.reached
            ranked = step.challenge.most or step.challenge.least
            assert (best.score is not None) == bool(ranked)


@pytest.mark.parametrize("name", PATHS)
def test_other_settings_change_right_letters(name: str) -> None:
    for seed in range(20):
        letters = [
            {drawn(item, seed, varied).letter for varied in ways(item)}
            for item in lesson(name).items
        ]
        assert max(map(len, letters)) > 1, seed


@pytest.mark.parametrize("name", PATHS)
def test_wrong_options_lie_outside_the_tolerance(name: str) -> None:
    for item in lesson(name).items:
        for seed, varied in enumerate(ways(item)):
            one = drawn(item, seed, varied)
            assert len(one.options) == 4
            assert len({option.words for option in one.options}) == 4
            for at, option in enumerate(one.options):
                assert (abs(option.value - one.value) <= one.tolerance) == (at == one.right)


@pytest.mark.parametrize("name", PATHS)
def test_pupils_words_suit_their_age(name: str) -> None:
    # Flesch-Kincaid grade (Kincaid and others 1975), by the library textstat. A grade's usual age
    # is five years more than its number at its younger end (common practice).
    found = lesson(name)
    text = read_by_pupils(found)
    assert len(text.split()) > 200
    assert textstat.flesch_kincaid_grade(text) <= min(found.ages[1], 18) - 5
    longest = max(len(sentence.split()) for sentence in re.split(r"[.?!)]+ ", text))
    assert longest <= (25 if found.ages[1] <= 14 else 40)


def test_the_measure_tells_hard_from_easy() -> None:
    hard = "Photoelasticity characterises birefringent inhomogeneities quantitatively."
    assert textstat.flesch_kincaid_grade(hard) > 18


def test_lessons_differ(tmp_path: Path) -> None:
    texts = [path.read_text(encoding="utf-8") for path in PATHS.values()]
    asks = [item.ask for name in PATHS for item in lesson(name).items]
    assert len(set(texts)) == len(texts) == 6
    assert len(asks) >= 24
