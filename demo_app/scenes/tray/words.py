"""What the table states: each sample's retardation, the place under the glass, the sentence."""

from typing import Any

from demo_app.optics.instrument import TINT_PLATE_NM, Instrument
from demo_app.optics.light_data import lamp
from demo_app.optics.words import interference_colour
from demo_app.scenes.scene import Message, Reading
from demo_app.scenes.tray.record import KNOWN, Settings, State, samples
from demo_app.scenes.tray.sample import Sample
from demo_app.scenes.tray.view import pointed

DARK_NM = 20.0
"""Below this a sample is as good as black (interference colours: CIELAB lightness under 12)."""
COLOURED_NM = 280.0
"""From here on white light is no longer grey or white but yellow, orange and so on."""
ORDER_NM = 565.0
"""One order of retardation in white light: a wavelength of its middle (common practice)."""
_ALONG_DEG = 5.0
"""Polarizers closer to the samples' length than this leave stress along it dark."""

NAMES = {name: name.replace("-", " ") for name in KNOWN} | {
    "toughened": "toughened edge-on",
    "toughened-face": "toughened face-on",
}

_OF_SAMPLES = tuple(
    Reading(f"{name.replace('-', '_')}_retardation_{end}", f"{said.capitalize()}{what}", "nm", told)
    for name, said in NAMES.items()
    for end, what, told in (
        ("median_nm", ", median", "Half of it has less."),
        ("p95_nm", ", 95 %", "95 % of it has less."),
    )
)

READINGS = (
    *_OF_SAMPLES,
    Reading("point_retardation_nm", "Under the glass", "nm", "Where the reading glass is held."),
    Reading("point_order", "Order there", "", "Over 565 nm, or over a one-colour lamp's wave."),
    Reading("point_stress_MPa", "Stress there", "MPa", "Difference of both principal stresses."),
)

TEXTS = {
    **NAMES,
    "here": "under the glass",
    "retardation": "retardation",
    "sample": "sample",
    "lamp": "The lamp alone: light that swings in all directions. There is nothing to see yet.",
    "one_filter": "One filter is in. It lets through what swings its way, which is half: the light "
    "is half as bright, and still there is nothing to see.",
    "crossed": "The second filter stands across the first: it stops all that the first lets "
    "through. Now only what turns light between them can shine.",
    "laying": "All lie in one light, on one scale. The others come, one by one.",
    "sorted": "Dark: {dark}. Coloured in places: {partly}; all over: {coloured}. Beyond some "
    "{limit:.0f} nm white light loses one colour after another.",
    "sorted_grey": "Dark: {dark}. Grey: {grey}. Coloured in places: {partly}; all over: "
    "{coloured}. Beyond some {limit:.0f} nm white light loses one colour after another.",
    "all_dark": "Dark: {dark}. Light that meets no stress on its way, or pull and squeeze "
    "alike, is stopped by the crossed filter.",
    "no_colour": "Dark: {dark}. Grey: {grey}. Below some {limit:.0f} nm of retardation all colours "
    "of the white light still come through, some more, some less: grey and white.",
    "tint": "The tint plate adds {plate:.0f} nm: without stress all is {colour}, and even a "
    "little turns it blue where it adds to the plate, yellow where it takes away.",
    "one_colour": "Light of one colour has no colours to lose: there is but bright and dark, and "
    "each dark line is one wavelength, {wave:.0f} nm, of retardation more.",
    "along": "The filters stand along the samples. Stress along or across a sample does not turn "
    "such light: what was bright goes dark, whatever its stress.",
    "none": "none",
    "point_stress": "Under the glass: {nm:.0f} nm, order {order:.2f}. In {path:g} mm of glass "
    "the pulls along and across then differ by {stress:.1f} MPa.",
    "point_path": "Under the glass: {nm:.0f} nm, order {order:.2f}. How far the light goes through "
    "this wall differs from place to place, so colour alone tells no stress.",
    "point_molecules": "Under the glass: {nm:.0f} nm, order {order:.2f}. Molecules that froze "
    "drawn out make most of it, so it is no measure of stress.",
}


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings of what lies there; None for what does not."""
    lying = {one.id: one.spread for one in samples(settings, state) if one is not None}
    found: dict[str, Any] = {}
    for name in KNOWN:
        spread, word = lying.get(name), name.replace("-", "_")
        found[f"{word}_retardation_median_nm"] = None if spread is None else spread.median
        found[f"{word}_retardation_p95_nm"] = None if spread is None else spread.high
    here = pointed(settings, state)
    return {
        **found,
        "point_retardation_nm": None if here is None else here[1],
        "point_order": None if here is None else order(settings, here[1]),
        "point_stress_MPa": None if here is None else here[0].stress_MPa(here[1]),
    }


def order(settings: Settings, retardation_nm: float) -> float:
    """Retardation in wavelengths: of a one-colour lamp, or of the middle of white light."""
    used = lamp(settings.lamp)
    return retardation_nm / (used.middle_nm if used.one_colour else ORDER_NM)


def say(settings: Settings, state: State) -> Message:
    """Why some are grey and others coloured, or what is under the glass."""
    if not settings.ready:
        return Message(settings.built.replace("-", "_"))
    here = pointed(settings, state)
    if here is not None:
        return _pointed(settings, *here)
    lying = samples(settings, state)
    if all(one is None for one in lying):
        return Message("laying")
    used = lamp(settings.lamp)
    if used.one_colour:
        return Message("one_colour", {"wave": used.middle_nm})
    if settings.tint_plate:
        plain = interference_colour(TINT_PLATE_NM, Instrument(lamp=settings.lamp))
        return Message("tint", {"plate": TINT_PLATE_NM, "colour": plain})
    if abs((settings.turn_deg + 45) % 90 - 45) < _ALONG_DEG:
        return Message("along")
    return _sorted([one for one in lying if one is not None])


def _sorted(found: list[Sample]) -> Message:
    kinds: dict[str, list[Sample]] = {"dark": [], "grey": [], "partly": [], "coloured": []}
    for one in found:
        kinds[_kind(one)].append(one)
    values: dict[str, float | str] = {
        "limit": COLOURED_NM,
        **{kind: _names(these) for kind, these in kinds.items()},
    }
    if kinds["partly"] or kinds["coloured"]:
        return Message("sorted_grey" if kinds["grey"] else "sorted", values)
    return Message("no_colour" if kinds["grey"] else "all_dark", values)


def _kind(one: Sample) -> str:
    """What is seen of a sample in white light between crossed polarizers."""
    if one.spread.high < DARK_NM:
        return "dark"
    if one.spread.median >= COLOURED_NM:
        return "coloured"
    return "partly" if one.spread.high >= COLOURED_NM else "grey"


def _names(found: list[Sample]) -> str:
    return ", ".join(NAMES[one.id] for one in found) or TEXTS["none"]


def _pointed(settings: Settings, here: Sample, nm: float) -> Message:
    values = {"nm": nm, "order": order(settings, nm)}
    if here.stretched:
        return Message("point_molecules", values)
    stress = here.stress_MPa(nm)
    if stress is None or here.path_mm is None:
        return Message("point_path", values)
    return Message("point_stress", {**values, "path": here.path_mm, "stress": stress})
