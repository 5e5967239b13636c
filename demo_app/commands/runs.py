"""Commands that run a scene without a window."""

import argparse
import sys
from pathlib import Path
from typing import Any

from demo_app.base.errors import InputError
from demo_app.commands.saying import progress


def scenes(words: argparse.Namespace) -> int:
    """List scenes with their settings and readings."""
    from demo_app.content.readings import as_json, scenes_record, scenes_table
    from demo_app.scenes.catalogue import scenes

    known = scenes().values()
    print(as_json(scenes_record(known)) if words.json else scenes_table(known))
    return 0


def solve(words: argparse.Namespace) -> int:
    """Run a scene and print its readings."""
    from demo_app.content.readings import as_json, as_record, as_table, check_names, only, solve

    scene, settings, at_s = _prepared(words)
    check_names(scene, words.reading)
    found = only(solve(scene, settings, at_s), words.reading)
    print(as_json(as_record(found)) if words.json else as_table(found))
    return 0


def picture(words: argparse.Namespace) -> int:
    """Run a scene and draw it."""
    from demo_app.base.atomic import check_place
    from demo_app.content.pictures import arranged, check_name, drawn
    from demo_app.content.words import parse_size
    from demo_app.optics.png import save_png
    from demo_app.scenes.run import state_at

    scene, settings, at_s = _prepared(words)
    size, out = parse_size(words.size), check_name(Path(words.out))
    settings, instrument = arranged(scene, settings, words)
    check_place(out)
    state = state_at(scene, settings, at_s)
    save_png(out, drawn(scene.view(settings, state), size, instrument))
    return 0


def sweep(words: argparse.Namespace) -> int:
    """Vary one setting, into a table."""
    from demo_app.base.atomic import check_place, write_text
    from demo_app.content.sweep import parse_vary, points, table
    from demo_app.content.words import parse_instant
    from demo_app.scenes.catalogue import scene

    chosen = scene(words.scene)
    if len(words.vary) > 1:
        raise InputError("is given twice", place="--vary", remedy="vary one setting at a time")
    vary = parse_vary(chosen, words.vary[0])
    runs = points(chosen, _values(words, chosen), vary)
    at_s = parse_instant(chosen, runs, words.at)
    out = Path(words.out)
    check_place(out)
    write_text(out, table(chosen, runs, vary, at_s, words.reading, progress()))
    return 0


def map_(words: argparse.Namespace) -> int:
    """Vary two settings over all cores, into a table."""
    from demo_app.base.atomic import check_place
    from demo_app.content.maps.plan import plan_map
    from demo_app.content.maps.result import Map
    from demo_app.content.maps.run import MOST_WORKERS, processes, run_map
    from demo_app.content.maps.store import part_of, write_map
    from demo_app.content.words import parse_instant, parse_whole
    from demo_app.scenes.catalogue import scene

    chosen = scene(words.scene)
    at_s = parse_instant(chosen, [chosen.settings()], words.at)
    plan = plan_map(chosen, words.vary, words.reading, _values(words, chosen), at_s)
    workers = parse_whole(words.workers, place="--workers", low=1, high=MOST_WORKERS)
    out = Path(words.out)
    check_place(out)
    try:
        with processes(workers) as pool:
            found = Map(plan, run_map(plan, pool, part_of(out), progress=progress()))
    except KeyboardInterrupt:
        print("\nstopped; the same command goes on from here", file=sys.stderr, flush=True)
        raise
    write_map(out, found)
    return 0


def _prepared(words: argparse.Namespace) -> tuple[Any, Any, float | None]:
    """Scene, settings record and instant of a command that runs one scene once."""
    from demo_app.content.words import parse_instant
    from demo_app.scenes.catalogue import scene
    from demo_app.scenes.settings import make

    chosen = scene(words.scene)
    settings: Any = make(chosen.settings, _values(words, chosen))
    return chosen, settings, parse_instant(chosen, [settings], words.at)


def _values(words: argparse.Namespace, chosen: Any) -> dict[str, Any]:
    """Settings that the command line names: those of the device, and over them each by itself."""
    from demo_app.content.words import parse_sets

    values: dict[str, Any] = dict(parse_sets(words.set))
    if words.device is None:
        return values
    from demo_app.content.site.devices import device, values_of

    return values_of(device(words.device), chosen, values)
