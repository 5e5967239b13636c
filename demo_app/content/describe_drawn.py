"""What is drawn on and beside a picture, in words: cracks, a section's stress, arrows."""

from typing import Any, Protocol

import numpy as np

from demo_app.optics.retardation import Stage
from demo_app.scenes.scene import Mark, Message, Outline, Section

NEAR = 0.95
"""Share of a section's largest stress above which a node counts to where it is."""
STRESS_MPA = 0.5
"""Least stress that is told of a section, MPa: its numbers are whole."""


class Shown(Protocol):
    """What is described: a scene's `View`, or a frame of the window."""

    @property
    def stage(self) -> Stage:
        """Pieces between the polarizers."""

    @property
    def section(self) -> Section | None:
        """Cut through the wall."""

    @property
    def marks(self) -> tuple[Mark, ...]:
        """Words and arrows on the picture."""

    @property
    def outlines(self) -> tuple[Outline, ...]:
        """Lines on the picture."""


def crack(shown: Shown) -> list[Message]:
    """A crack or shards, where they are drawn."""
    kinds = {outline.kind for outline in shown.outlines}
    if "shard" in kinds:
        return [Message("shards")]
    at = [(mark.x_mm, mark.y_mm) for mark in shown.marks if mark.kind == "crack"]
    at += [
        (float(line.x_mm.mean()), float(line.y_mm.mean()))
        for line in shown.outlines
        if line.kind == "crack" and "hand" not in kinds
    ]
    if not at:
        return []
    return [Message("crack", {"place": f"@{_spot(shown.stage, *at[0])}"})]


def _spot(stage: Stage, x_mm: float, y_mm: float) -> str:
    """Where on the picture a point lies, by thirds."""
    across = (x_mm - stage.centre_mm[0]) / stage.width_mm
    up = (y_mm - stage.centre_mm[1]) / stage.height_mm
    column, row = (int(np.clip(np.floor(3 * (part + 0.5)), 0, 2)) for part in (across, -up))
    return f"spot.{column}.{row}"


def stress(shown: Shown) -> list[Message]:
    """What is pulled and what is squeezed, from the section, else from the arrows."""
    section = shown.section
    if section is None:
        pulled, squeezed = (_marked(shown, kind) for kind in ("pull", "squeeze"))
        if pulled is None or squeezed is None or pulled == squeezed:
            return []
        return [Message("arrows", {"pulled": f"@{pulled}", "squeezed": f"@{squeezed}"})]
    found = section.stress_MPa
    pull, squeeze = float(found.max()), -float(found.min())
    values: dict[str, float | str] = {"pull": pull, "squeeze": squeeze}
    # Where there is none of it, it has no place.
    if pull >= STRESS_MPA:
        values["pulled"] = f"@{_place_of(section, found >= NEAR * pull)}"
    if squeeze >= STRESS_MPA:
        values["squeezed"] = f"@{_place_of(section, found <= -NEAR * squeeze)}"
    if pull >= STRESS_MPA and squeeze >= STRESS_MPA:
        if values["pulled"] == values["squeezed"]:
            return [Message("section.close", values)]
        return [Message("section", values)]
    if pull >= STRESS_MPA:
        return [Message("section.pull", values)]
    return [Message("section.squeeze", values)] if squeeze >= STRESS_MPA else []


def _marked(shown: Shown, kind: str) -> str | None:
    found = next((mark for mark in shown.marks if mark.kind == kind), None)
    return None if found is None else _spot(shown.stage, found.x_mm, found.y_mm)


def _place_of(section: Section, flags: Any) -> str:
    """Where in a section the flagged nodes lie, by thirds of its width and height."""
    x, y = section.x_mm, section.y_mm
    middle = float(x[flags].mean()), float(y[flags].mean())
    shares = [
        (value - float(of.min())) / max(float(np.ptp(of)), 1e-9)
        for value, of in zip(middle, (x, y), strict=True)
    ]
    column, row = (int(np.clip(np.floor(3 * part), 0, 2)) for part in (shares[0], 1 - shares[1]))
    both = flags.any(axis=1)
    top, bottom = bool(both[0]), bool(both[-1])
    if top and bottom:
        return "place.both_edges"
    alike = float(np.ptp(section.stress_MPa, axis=1).max()) < 0.05 * max(
        float(np.ptp(section.stress_MPa)), 1e-9
    )
    if alike:
        return ("place.top", "place.middle", "place.bottom")[row]
    return f"spot.{column}.{row}"
