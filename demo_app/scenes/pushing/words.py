"""The plain sentence for each instant."""

from demo_app.physics.heat import ROOM
from demo_app.physics.material_files import material
from demo_app.scenes.pushing.settings import BENT, Settings
from demo_app.scenes.pushing.state import State, cracks, cut_sums, profile, sums
from demo_app.scenes.scene import Message

TEXTS = {
    "untouched": "Nobody touches it: there is no stress in it, and it stays dark.",
    "pulled": "The hands pull with {force:.0f} N, and everywhere in the bar all the pull adds up "
    "to just that: {net:.0f} N.",
    "pulled_crack": "The hands pull with {force:.0f} N, and all the pull in the bar adds up to "
    "just that. It opens the small cracks by {gape:.2f} µm, {percent:.0f} % of the way to a break.",
    "squeezed": "The hands squeeze with {force:.0f} N, and everywhere in the bar all the squeeze "
    "adds up to just that: {net:.0f} N.",
    "squeezed_crack": "The hands squeeze with {force:.0f} N, and all the squeeze in the bar adds "
    "up to just that. It presses the small cracks shut.",
    "bent": "Below it is pulled with {pull:.0f} N in all, above it is squeezed with "
    "{squeeze:.0f} N: pull and squeeze add up to zero.",
    "bent_crack": "Below it is pulled with {pull:.0f} N in all, above it is squeezed with "
    "{squeeze:.0f} N: together zero. The crack below opens by {gape:.2f} µm, {percent:.0f} % of "
    "the way to a break; the one above is pressed shut.",
    "disk": "Squeezed from above and below, the disk is pulled apart sideways: across the upright "
    "cut {pull:.0f} N of pull and {squeeze:.0f} N of squeeze add up to zero.",
    "disk_crack": "Squeezed from above and below, the disk is pulled apart sideways: the upright "
    "crack opens by {gape:.2f} µm, {percent:.0f} % of the way to a break; the lying one is "
    "pressed shut.",
    "hot": "The plate is hot and soft: what pulls in it flows away at once.",
    "cooling": "The skin is cooler than the middle and at the moment {does} with {skin:.0f} MPa; "
    "pull and squeeze add up to zero all the time.",
    "locked": "Nobody touches it, and still its skin is squeezed with {skin:.0f} MPa and its "
    "middle pulled with {middle:.0f} MPa: {pull:.0f} N against {squeeze:.0f} N, together zero.",
    "locked_crack": "Nobody touches it, and still its skin is squeezed with {skin:.0f} MPa and its "
    "middle pulled with {middle:.0f} MPa, together zero. The squeeze presses the cracks shut.",
    "locked_reached": "The cracks have got through the squeezed skin into the pull behind it: "
    "{percent:.0f} % of the way to a break, and nobody touches it.",
    "broke": "The crack ran, {at:.1f} s after the start: two parts, and with nothing to hold on to "
    "the stress is gone.",
    "broke_slice": "The crack reached the pull inside and ran: two parts, each with its own pull "
    "and squeeze, and in each they add up to zero.",
    "broke_flaw": "It broke at an ordinary scratch, {at:.1f} s after the start: such a pull breaks "
    "most pieces that have been in use.",
    "section_title": "Seen from the side",
    "along": "along the bar",
    "sideways": "sideways",
    "across": "stress in the cut",
    "height": "height in the cut",
    "stress": "stress",
    "mean": "all added up, shared out evenly",
}

DOES = ("pulled", "squeezed")


def say(settings: Settings, state: State) -> Message:
    """The sentence."""
    found = cracks(settings, state)
    worst = max((crack.ratio for crack in found), default=0.0)
    if state.broke_s is not None:
        if not settings.held:
            return Message("broke_slice")
        return Message("broke" if _by_crack(state) else "broke_flaw", {"at": state.broke_s})
    if not settings.held:
        return _locked(settings, state, worst, cracked=bool(found))
    if state.force == 0:
        return Message("untouched")
    name = {"bar-pulled": "pulled", "bar-squeezed": "squeezed", "disk-squeezed": "disk"}
    kind = "bent" if settings.kind in BENT else name[settings.kind]
    pull, squeeze = sums(settings, state)
    values = {
        "force": state.force,
        "net": abs(cut_sums(settings, state)[0]),
        "pull": pull,
        "squeeze": -squeeze,
        "percent": 100 * max(0.0, worst),
        "gape": 1e6 * max((float(crack.opening.max()) for crack in found), default=0.0),
    }
    return Message(f"{kind}_crack" if found else kind, values)


def _by_crack(state: State) -> bool:
    return dict(state.last).get("intensity_ratio", 0.0) >= 1.0


def _locked(settings: Settings, state: State, worst: float, *, cracked: bool) -> Message:
    assert state.column is not None
    _, stress = profile(settings, state)
    skin, middle = 1e-6 * float(stress[0]), 1e-6 * float(stress[stress.size // 2])
    hottest = float(state.column.temperature.max())
    if hottest > material(settings.material).strain_point and abs(skin) < 1.0:
        return Message("hot")
    if hottest > ROOM + 20:
        return Message("cooling", {"skin": abs(skin), "does": DOES[skin < 0]})
    if worst > 0:
        return Message("locked_reached", {"percent": 100 * worst})
    pull, squeeze = sums(settings, state)
    values = {"skin": -skin, "middle": middle, "pull": pull, "squeeze": -squeeze}
    return Message("locked_crack" if cracked else "locked", values)
