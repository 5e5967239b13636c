"""Every picture in spoken words: what a presenter or a captioner can read out.

The words follow the light that is computed for the picture at that instant, as the instrument
shows it; nothing is told that cannot be seen, except what the drawn section and arrows say.
"""

from collections.abc import Mapping
from typing import Any

import numpy as np

from demo_app.content.describe_drawn import Shown, crack, stress
from demo_app.content.describe_look import (
    BRIGHT,
    CLEAR,
    DARK,
    EVEN,
    bands,
    colours,
    dark_line,
    places,
    shade,
)
from demo_app.content.describe_look import zones as zones_of
from demo_app.content.describe_words import ENGLISH
from demo_app.optics.colour import LUMINANCE
from demo_app.optics.instrument import Instrument
from demo_app.optics.light_data import lamp
from demo_app.optics.seen import Seen, bare, look
from demo_app.scenes.scene import Message, Scene

MOST_SENTENCES = 4
MOST_WORDS = 25


def describe(
    scene: Scene,
    settings: Any,
    shown: Shown,
    instrument: Instrument,
    earlier: Shown | None = None,
) -> tuple[Message, ...]:
    """What is seen, as two to four sentences of `demo_app.content.describe_words`.

    Parameters
    ----------
    scene, settings : Scene, object
        What is shown.
    shown : Shown
        A view or a frame.
    instrument : Instrument
        What stands around the stage (a frame's own `instrument`).
    earlier : Shown, optional
        A view of a moment ago in the same instrument: then it is told what has changed.
    """
    pieces = look(shown.stage, instrument)
    plain = bare(instrument)
    first = _light(instrument, plain)
    where = _where(shown, pieces, plain)
    told = [*crack(shown)]
    best = _best(pieces, plain)
    if best is not None and not _even(best):
        told.append(_bands(best))
    if earlier is not None:
        told.append(_change(pieces, look(earlier.stage, instrument), instrument))
    told += stress(shown)
    room = MOST_SENTENCES - len(first) - len(where)
    sentences = (*first, *where, *told[: max(room, 0)])
    if len(sentences) > 1:
        return sentences
    return (*sentences, Message("stays")) if earlier is not None else sentences


def spoken(
    scene: Scene,
    settings: Any,
    shown: Shown,
    instrument: Instrument,
    earlier: Shown | None = None,
    texts: Mapping[str, str] = ENGLISH,
) -> str:
    """`describe` in the words of `texts`, sentence after sentence."""
    messages = describe(scene, settings, shown, instrument, earlier)
    return " ".join(sentence(message, texts) for message in messages)


def sentence(message: Message, texts: Mapping[str, str] = ENGLISH) -> str:
    """One sentence of a description in the language of `texts`."""
    values = {
        name: _named(value, texts) if isinstance(value, str) else value
        for name, value in message.values.items()
    }
    said = texts[message.id].format(**values)
    return said[:1].upper() + said[1:]


def _named(value: str, texts: Mapping[str, str]) -> str:
    """A word, or those that `value` names, as a list in that language."""
    if not value.startswith("@"):
        return value
    words = [texts[name.removeprefix("@")] for name in value.split("|")]
    said = words[0]
    for word in words[1:-1]:
        said = texts["list"].format(first=said, last=word)
    return texts["list.last"].format(first=said, last=words[-1]) if len(words) > 1 else said


def _colour_id(word: str) -> str:
    return f"@colour.{word.replace(' ', '_')}"


def _light(instrument: Instrument, plain: Any) -> list[Message]:
    """What has been done to the light, two sentences at most; a gain is always told."""
    told: list[Message] = []
    colour = _colour_id(shade(plain))
    if instrument.gain != 1:
        told.append(Message("light.gain", {"gain": instrument.gain}))
    if instrument.filters < 2:
        told.append(Message("light.one" if instrument.filters else "light.none"))
    elif instrument.tint_plate_nm > 0:
        told.append(Message("light.tint", {"bare": colour}))
    elif instrument.analyser_deg % 180 == 0:
        told.append(Message("light.parallel"))
    elif not instrument.crossed:
        told.append(Message("light.turned", {"bare": colour}))
    if lamp(instrument.lamp).one_colour:
        told.append(Message("light.lamp", {"lamp": f"@lamp.{instrument.lamp}"}))
    return told[:2]


def _dark(piece: Seen) -> bool:
    return float(np.quantile(piece.light, 0.99)) < DARK


def _as_bare(piece: Seen, plain: Any) -> bool:
    """Whether a piece looks like the field around it."""
    return bool(np.quantile(np.abs(piece.rgb - plain).max(axis=-1), 0.99) < EVEN)


def _even(piece: Seen) -> bool:
    low, high = np.quantile(piece.light, (0.03, 0.97))
    return bool(high - low < EVEN)


def _best(pieces: tuple[Seen, ...], plain: Any) -> Seen | None:
    """The piece that differs most from the field around it; None where none does."""
    found = [piece for piece in pieces if not _dark(piece) and not _as_bare(piece, plain)]
    return max(found, key=lambda one: float(np.abs(one.rgb - plain).mean()), default=None)


def _where(shown: Shown, pieces: tuple[Seen, ...], plain: Any) -> list[Message]:
    """Which piece, and where on it, is bright and dark: one or two sentences."""
    if not pieces:
        return [Message("all_dark")]
    quiet = [_dark(piece) or _as_bare(piece, plain) for piece in pieces]
    field_dark = float(plain @ LUMINANCE) < DARK
    if all(quiet):
        if not field_dark:
            return [Message("all_alike", {"colour": _colour_id(shade(plain))})]
        many = len(pieces) > 1
        return [Message("several_dark", {"count": len(pieces)}) if many else Message("all_dark")]
    best = _best(pieces, plain)
    assert best is not None
    if len(pieces) == 1:
        return [_inside(best, _ring(shown, best), "")]
    names = _names(pieces)
    lit = [f"@spot.{name}" for name, still in zip(names, quiet, strict=True) if not still]
    here = names[[piece is best for piece in pieces].index(True)]
    values: dict[str, float | str] = {"count": len(pieces), "places": "|".join(lit)}
    return [Message("several", values), _inside(best, None, f"@spot.{here}")]


def _ring(shown: Shown, piece: Seen) -> float | None:
    """Mean light near a heated ring, where one is drawn."""
    for mark in shown.marks:
        near = np.abs(piece.x_mm - mark.x_mm) <= max(mark.size_mm, 4.0)
        if mark.kind == "ring" and near.any():
            rows = slice(len(piece.rgb) // 4, -(len(piece.rgb) // 4))
            return float(piece.light[rows, near].mean())
    return None


def _inside(piece: Seen, ring: float | None, name: str) -> Message:
    """Where one piece is bright and dark."""
    light = piece.light
    extra: dict[str, float | str] = {"place": name} if name else {}
    bright, most, dark, least = places(zones_of(light), ring)
    if _even(piece):
        colour = shade(np.median(piece.rgb.reshape(-1, 3), axis=0))
        if colour == "black":
            faint = {"bright": f"@{bright}", **extra}
            return Message("brightest_faint" if name else "faint", faint)
        alike = {"colour": _colour_id(colour), **extra}
        return Message("brightest_even" if name else "even", alike)
    level = "@level.bright" if most > BRIGHT else "@level.dim"
    if bright == "place.both_edges" and dark_line(light):
        return Message("brightest_dark_line" if name else "dark_line", {"level": level, **extra})
    if most < CLEAR * least:
        brightest = _colour_id(shade(_at_brightest(piece)))
        values: dict[str, float | str] = {"bright": brightest, **extra}
        return Message("brightest_patches" if name else "patches", values)
    values = {"level": level, "bright": f"@{bright}", "dark": f"@{dark}", **extra}
    return Message("brightest" if name else "one_place", values)


def _at_brightest(piece: Seen) -> Any:
    flat = piece.rgb.reshape(-1, 3)
    return flat[int(np.argmax(piece.light.ravel()))]


def _names(pieces: tuple[Seen, ...]) -> list[str]:
    """Where each piece lies among the others, as "column.row" of three each."""
    x = np.array([float(one.x_mm.mean()) for one in pieces])
    y = np.array([one.y_mm for one in pieces])
    return [f"{_third(a, x)}.{2 - _third(b, y)}" for a, b in zip(x, y, strict=True)]


def _third(value: float, of: Any) -> int:
    low, high = float(of.min()), float(of.max())
    return 1 if high - low < 1 else min(2, int(3 * (value - low) / (high - low)))


def _bands(piece: Seen) -> Message:
    count, way = bands(piece.light)
    words = "|".join(_colour_id(word) for word in colours(piece))
    values: dict[str, float | str] = {"count": count, "way": f"@way.{way}", "colours": words}
    return Message("no_bands" if count == 0 else "band" if count == 1 else "bands", values)


def _change(pieces: tuple[Seen, ...], before: tuple[Seen, ...], instrument: Instrument) -> Message:
    """Whether the light has grown against an earlier picture."""
    now, then = (_mean(some) for some in (pieces, before))
    tells = instrument.crossed and instrument.tint_plate_nm == 0 and instrument.filters == 2
    if max(now, then) > DARK / 4 and now > 1.1 * then:
        return Message("grows" if tells and max(now, then) < BRIGHT else "brighter")
    if max(now, then) > DARK / 4 and then > 1.1 * now:
        return Message("fades" if tells and max(now, then) < BRIGHT else "darker")
    same = len(pieces) == len(before) and all(
        a.rgb.shape == b.rgb.shape and float(np.abs(a.rgb - b.rgb).max()) < EVEN
        for a, b in zip(pieces, before, strict=True)
    )
    return Message("stays" if same else "moves")


def _mean(pieces: tuple[Seen, ...]) -> float:
    return float(np.mean([piece.light.mean() for piece in pieces])) if pieces else 0.0
