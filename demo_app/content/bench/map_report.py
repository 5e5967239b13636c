"""A what-if map as a page to print: picture, settings, what it holds for, and the caution."""

import datetime
import html

from demo_app import __version__
from demo_app.content.bench.raster import Pixels
from demo_app.content.bench.report import Report
from demo_app.content.bench.words import CAUTIONS, COMMON
from demo_app.content.maps.plan import scene_of
from demo_app.content.maps.result import Map
from demo_app.content.readings import in_words
from demo_app.scenes.settings import Setting, settings_of

LIMIT = "A map is one run a point, with no spread; a border is no finer than its points."
_WIDE = 640
_NAME = "map.png"


def map_report(found: Map, picture: Pixels, day: datetime.date | None = None) -> Report:
    """The page of a whole map.

    Parameters
    ----------
    found : Map
        Its points.
    picture : numpy.ndarray
        Shape (height, width, 3), uint8: the map with its axes and key, on white.
    day : datetime.date, optional
        Default: today.
    """
    plan, scene = found.plan, scene_of(found.plan)
    known = {one.name: one for one in settings_of(scene.settings)}
    labels = {one.name: f"{one.label} {one.unit}".rstrip() for one in scene.readings}
    title = f"What-if map: {scene.title}"
    cautions = "<br>".join(html.escape(one.words(COMMON)) for one in CAUTIONS)
    high = round(_WIDE * picture.shape[0] / picture.shape[1])
    told = day or datetime.date.today()
    axes = "".join(
        _row(f"{way}: {known[one.name].label}", _span(known[one.name], one.values))
        for way, one in (("across", plan.across), ("up", plan.up))
    )
    rest = "".join(_row(known[name].label, _value(known[name], v)) for name, v in plan.values)
    parts = (
        f"<html><head><meta charset='utf-8'><title>{html.escape(title)}</title></head><body>",
        f"<h1>{html.escape(title)}</h1>",
        f"<p>{html.escape(', '.join(labels[name] for name in plan.readings))}</p>",
        f"<table border='2' cellspacing='0' cellpadding='6'><tr><td>{cautions}</td></tr></table>",
        f"<p><img src='{_NAME}' width='{_WIDE}' height='{high}'></p>",
        "<h2>What was put in</h2>",
        f"<table border='1' cellspacing='0' cellpadding='3'>{axes}{rest}</table>",
        f"<h2>Holds only so far</h2><p>{LIMIT}</p>",
        f"<p>{plan.count} points, {len(found.refused)} of them cannot be. Lehrlight {__version__}, "
        f"{told.isoformat()}, map {plan.fingerprint()}.</p></body></html>",
    )
    return Report("\n".join(parts), {_NAME: picture}, title)


def _row(name: str, value: str) -> str:
    return f"<tr><td>{html.escape(name)}</td><td>{html.escape(value)}</td></tr>"


def _value(setting: Setting, value: object) -> str:
    return f"{in_words(value)} {setting.unit}".rstrip()


def _span(setting: Setting, values: tuple[float, ...]) -> str:
    low, high = (in_words(float(f"{end:.6g}")) for end in (values[0], values[-1]))
    return f"{low} to {high} {setting.unit}".rstrip() + f" in {len(values)} points"
