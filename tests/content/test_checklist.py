"""A checklist asks for what the sheet asks for, each thing once."""

from demo_app.content.checklist import Item, checklist
from demo_app.content.cues.records import Helper, Sheet, Step
from demo_app.content.venue import FOLLOW

HELPER = Helper("Press.", "goggles", "left", "aisle")
QUIET = Step("look", "Look", "light-table", props=("lamp", "filters"), samples=("dish",))
LOUD = Step(
    "break",
    "Break",
    "toughen",
    props=("Lamp ", "box"),
    samples=("plate", "dish"),
    hazards=("breakage", "sharp-edges"),
    cautions=("Stop if the box is open.", FOLLOW),
    helper=HELPER,
)
FIRE = Step("burn", "Burn", "ring", hazards=("flame",), cautions=(FOLLOW,))


def test_each_thing_once_with_the_steps_that_want_it() -> None:
    found = checklist(Sheet("t", "v", 5, (QUIET, LOUD, FIRE)))
    assert found.props == (
        Item("lamp", ("look", "break")),
        Item("filters", ("look",)),
        Item("box", ("break",)),
    )
    assert found.samples == (Item("dish", ("look", "break")), Item("plate", ("break",)))
    assert found.cautions[1] == Item(FOLLOW, ("break", "burn"))
    assert [item.text for item in found.hazards] == ["breakage", "sharp-edges", "flame"]
    assert [(one.step, one.helper) for one in found.helpers] == [("break", HELPER)]


def test_eyewear_for_presenter_and_helper() -> None:
    found = checklist(Sheet("t", "v", 5, (QUIET, LOUD, FIRE)))
    assert found.eyewear == (
        Item("presenter: eyewear for breakage", ("break",)),
        Item("presenter: eyewear for flame", ("burn",)),
        Item("helper: goggles", ("break",)),
    )
    assert checklist(Sheet("t", "v", 5, (QUIET,))).eyewear == ()


def test_reset_follows_the_hazards() -> None:
    def words(*steps: Step) -> str:
        return " ".join(item.text for item in checklist(Sheet("t", "v", 5, steps)).reset)

    assert "Shards" not in words(QUIET, FIRE)
    assert "Flame out" not in words(QUIET, LOUD)
    assert "Shards" in words(LOUD)
    assert "Flame out" in words(FIRE)
    assert "first step" in words(QUIET)


def test_the_venue_decides() -> None:
    found = checklist(Sheet("t", "v", 5, (QUIET,)))
    assert "theirs wins" in found.rule
