"""What the oven's answers say in plain words."""

from collections.abc import Mapping

from demo_app.content.bench.answer import Figure
from demo_app.content.bench.door import celsius
from demo_app.physics.annealing_search import SAFE_PULL
from demo_app.physics.oven import Schedule
from demo_app.scenes.scene import Message

TEXTS = {
    "hours": "Until it is cold",
    "birefringence": "Left in the piece",
    "temper": "Temper number",
    "passes": "Good enough",
    "pull": "Largest pull on the way",
    "cracks": "Cracks on the way",
    "door_birefringence": "Left, door opened",
    "door_passes": "Good enough, door opened",
    "door_pull": "Largest pull, door opened",
    "door_cracks": "Cracks, door opened",
    "programme": "Hold at {hold:.0f} °C for {minutes:.0f} minutes, cool at {slow:.3g} °C/h down to "
    "{slow_to:.0f} °C, then at {fast:.3g} °C/h: {hours:.1f} hours in all.",
    "passes_well": "Nine of ten such pieces keep at most {high:.3g} nm on each centimetre; "
    "{limit:.3g} are allowed.",
    "passes_badly": "Within the tolerances it may keep up to {high:.3g} nm on each centimetre, and "
    "{limit:.3g} are allowed: {odds:.0f} % pass. A wider tolerance of the thickness makes the "
    "programme slower.",
    "door_harmless": "The opened door leaves little behind: at most {high:.3g} nm on each "
    "centimetre stay.",
    "door_spoils": "The opened door spoils it: {middle:.3g} nm on each centimetre stay in place of "
    "{calm:.3g}, and only {odds:.0f} % pass. Anneal the piece again.",
    "door_pulls": "For a time its chill pulls the skin with up to {pull:.0f} MPa, more than the "
    "{trusted:.0f} MPa that annealed glass is customarily trusted with: a bruised piece may crack.",
    "door_cracks_it": "The chill pulls the skin with up to {pull:.0f} MPa: {odds:.0f} in 100 "
    "handled pieces crack at the door.",
    "segments": "For the oven's controller",
    "segment": "segment",
    "up": "heat up",
    "hold": "hold",
    "slow": "cool slowly",
    "fast": "cool faster",
    "rate": "rate",
    "to": "to",
    "for": "hold for",
    "ends": "ends at h:min",
    "temperature": "temperature",
    "time": "time",
    "oven": "oven",
    "inside": "middle of the glass, door opened",
    "outside": "its surface, door opened",
    "strain": "strain point",
    "limit_design": "The programme is laid out for the thickest piece within the tolerance.",
    "limit_plate": "The thickest section is taken as a wide plate of even thickness. Feet, rims "
    "and joints of thick and thin keep more: leave a margin, and look at the piece.",
    "limit_one": "A section that loses heat by one face alone counts as a plate twice as thick.",
    "limit_cold": "Times count from the beginning of the hold, and a piece that comes in cold "
    "is taken as hot and even by then: its heating up is not run.",
    "limit_door": "While the door is open, air and walls are taken as cool as stated, and as told "
    "once it is shut; a heavy oven's walls stay hotter than that.",
    "limit_rest": "The limit is that of stress that stays; colour, bubbles and stones are another "
    "matter. A glass of unknown make needs its own annealing point.",
}  # fmt: skip


def say(limit: float, told: Schedule, seconds: float, by: Mapping[str, Figure]) -> list[Message]:
    """What the figures `by` their ids say; `limit` in nm/cm, the whole takes `seconds`."""
    kept = by["birefringence"]
    assert kept.high is not None and kept.middle is not None  # noqa: PT018
    found = [
        Message(
            "programme",
            {
                "hold": celsius(told.hold),
                "minutes": told.hold_time / 60,
                "slow": 3600 * told.slow,
                "slow_to": celsius(told.slow_to),
                "fast": 3600 * told.fast,
                "hours": seconds / 3600,
            },
        )
    ]
    values: dict[str, float | str] = {"high": kept.high, "limit": limit}
    if kept.high <= limit:
        found.append(Message("passes_well", values))
    else:
        found.append(Message("passes_badly", {**values, "odds": by["passes"].middle or 0.0}))
    if "door_passes" not in by:
        return found
    after, passes, pull = (by[f"door_{id}"] for id in ("birefringence", "passes", "pull"))
    values = {
        "high": after.high or 0.0, "middle": after.middle or 0.0, "calm": kept.middle,
        "odds": passes.middle or 0.0, "pull": pull.high or 0.0,
    }  # fmt: skip
    spoilt = (passes.middle or 0.0) < 0.8 * (by["passes"].middle or 0.0)
    found.append(Message("door_spoils" if spoilt else "door_harmless", values))
    trusted = 1e-6 * SAFE_PULL
    if (pull.high or 0.0) > trusted:
        found.append(Message("door_pulls", {"pull": values["pull"], "trusted": trusted}))
    cracks = by["door_cracks"].high or 0.0
    if cracks >= 1:
        found.append(Message("door_cracks_it", {"pull": values["pull"], "odds": cracks}))
    return found
