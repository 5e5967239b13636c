"""Names that texts, site file and counts share: languages, steps, and words beside the steps."""

LANGUAGES = ("en", "de", "es")
"""Languages that a kiosk can offer."""

STEP_IDS = (
    "warm-touch",
    "one-drop",
    "slow-or-sudden",
    "toughened-or-plain",
    "bubble",
    "dish",
)
"""Ids that steps may have: what the site file turns off, and what is counted."""

KEYS: dict[str, tuple[str, ...]] = {
    # The inviting view.
    "welcome": (),
    "invite": (),
    "choose": (),
    # Ways about.
    "home": (),
    "back": (),
    "languages": (),
    "ease": (),
    "pause": (),
    "go_on": (),
    "again": (),
    "next": (),
    "other_steps": (),
    # A step.
    "predict": (),
    "do": (),
    "see": (),
    "why": (),
    "right": (),
    "surprise": (),
    "no_answer": (),
    "your_prediction": ("answer",),
    "happened": ("answer",),
    "chosen": ("place", "count"),
    "working": (),
    "step_reset": (),
    "more": ("label",),
    "less": ("label",),
    "value": ("label", "value"),
    "yes": (),
    "no": (),
    # Ease of use.
    "high_contrast": (),
    "large_text": (),
    "still": (),
    "describe": (),
    "on": (),
    "off": (),
    "picture": (),
    "picture_still": (),
    # Idle, closed, cleaning.
    "still_there": (),
    "goes_back": ("seconds",),
    "stay": (),
    "closed": (),
    "opens": ("when",),
    "cleaning": ("seconds",),
    # Staff.
    "staff.title": (),
    "staff.code": (),
    "staff.wrong": (),
    "staff.wait": ("seconds",),
    "staff.delete": (),
    "staff.enter": (),
    "staff.no_code": (),
    "staff.hours": (),
    "staff.always_open": (),
    "staff.closed_day": (),
    "staff.languages": (),
    "staff.default": (),
    "staff.steps": (),
    "staff.brightness": (),
    "staff.looks": (),
    "staff.counts": (),
    "staff.starts": (),
    "staff.predictions": (),
    "staff.resets": (),
    "staff.today": (),
    "staff.week": (),
    "staff.problems": (),
    "staff.no_problems": (),
    "staff.update": (),
    "staff.update_none": (),
    "staff.update_found": ("folder",),
    "staff.update_done": (),
    "staff.update_refused": (),
    "staff.roll_back": (),
    "staff.clean": (),
    "staff.quit": (),
    "staff.quit_sure": (),
    "staff.cancel": (),
    "staff.close": (),
    "staff.save": (),
    "staff.saved": (),
    "staff.not_saved": (),
    "day.0": (),
    "day.1": (),
    "day.2": (),
    "day.3": (),
    "day.4": (),
    "day.5": (),
    "day.6": (),
}
"""Key to the names of the values that are put into it; every language has to have all of them."""

SHORT = 32
"""Letters that fit on a button (common practice: a button is read at a glance)."""

ON_BUTTONS = frozenset(
    {"home", "back", "languages", "ease", "pause", "go_on", "again", "next", "other_steps"}
    | {"yes", "no", "high_contrast", "large_text", "still", "describe", "on", "off", "stay"}
    | {"staff.delete", "staff.enter", "staff.update", "staff.roll_back", "staff.clean"}
    | {"staff.quit", "staff.cancel", "staff.close", "staff.save"}
)
"""Keys of those that stand on buttons."""
