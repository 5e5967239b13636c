"""Each kind of broken lesson is told with its file, its line and what to write instead."""

import re
from pathlib import Path

import pytest
from small_lesson import GOOD

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.lessons.load import examine, load

BEND = 'kind = "bar-bent", material = "polystyrene", load = 100'

# What is replaced (once), by what, the line that is told, a part of the problem and of the remedy.
QUICK = {
    "no header": ("+++\ntitle", "title", 1, "does not begin with a header", "write +++"),
    "no end of it": ("+++\n\n# Small", "\n# Small", 1, "the header has no end", "write +++"),
    "not TOML": ('aim = "See."', "aim = See.", 3, "is not TOML", "write key = value"),
    "unknown key": ('aim = "See."', 'aimm = "See."', 3, "aimm: unknown key", "write aim"),
    "no aim": ('aim = "See."\n', "", 1, "aim: missing", "add aim"),
    "ages turned round": ("[9, 11]", "[11, 9]", 4, "no range of ages", "[9, 11]"),
    "too many minutes": ("minutes = 20", "minutes = 500", 5, "out of range", "180 min"),
    "language": ('"en"', '"english!"', 6, "is no language", "such as en"),
    "profile": ("no-flame-no-breakage", "no-flame", 7, "no profile is called", "no-flame-no-b"),
    "unknown hazard": (
        '"simulated-breakage"]',
        '"simulated-break"]',
        8,
        "no hazard is",
        "-breakage",
    ),
    "hazard beyond the profile": (
        '["allergens", "sim',
        '["flame", "sim',
        8,
        "does not allow",
        "out",
    ),
    "nothing told of the simulated": (
        '[simulated]\nsays = "The screen simulates it."\n'
        'not_at_home = "Do not pull until it snaps."',
        "",
        8,
        "without words that tell the class",
        "add [simulated]",
    ),
    "says nothing of it": ("The screen simulates it.", "Hello.", 11, "does not say", "simulates"),
    "not at home missing": ("not_at_home", "not_at_hom", 12, "unknown key", "write not_at_home"),
    "kit with a flame": ('"gelatine"', '"candle"', 15, "brings 'flame'", "choose another"),
    "kit with a kettle": ('"gelatine"', '"kettle"', 15, "brings 'hot-water'", "choose another"),
    "hazard without a note": ('note = "Ask first."\n', "", 17, "without a note", "add note"),
    "simulated by hand": (
        'hazards = ["allergens"]\nnote',
        'hazards = ["simulated-heat"]\nnote',
        17,
        "not for people to state",
        "take it out",
    ),
    "belief twice": ('id = "double"', 'id = "none"', 28, "is there already", "another id"),
    "belief without a source": ('source = "A paper."\n', "", 20, "source: missing", "add source"),
    "id of capitals": ('id = "none"', 'id = "No"', 21, "is no id", "small letters"),
    "words before the first head": ("# Small", "Hello.", 41, "words before", "## Welcome"),
    "unknown head": ("## Observe", "## Observed", 71, "no head is called", "Observe"),
    "head without a title": ("## Welcome: Hello", "## Welcome", 43, "no title", "Welcome: Title"),
    "nothing said": ("Say hello.", "", 43, "nothing is to be said", "under the head"),
    "two blocks": ("Say hello.", "Say.\n```toml\na = 1\n```", 50, "a second block", "into one"),
    "picture": ("Say hello.", "![a](b.png)", 49, "picture cannot", "name a scene"),
    "table": ("Say hello.", "| a | b |", 49, "table is not read", "write a list"),
    "HTML": ("Say hello.", "<b>Hi</b>", 49, "HTML is not read", "plain words"),
    "no minutes": ("minutes = 2\n", "", 43, "minutes: missing", "add minutes"),
    "too long": ("minutes = 6", "minutes = 16", 1, "take 28 minutes", "fewer minutes"),
    "too short": ("minutes = 20", "minutes = 40", 1, "of 40 minutes", "fewer minutes"),
    "id of a step twice": (
        "## Observe: Watch",
        "## Observe: Pull",
        71,
        "has the id 'pull' too",
        "id =",
    ),
    "nobody predicted": (
        "## Predict: Pull",
        "## Observe: Pull",
        51,
        "observe comes after wel",
        "Predict",
    ),
    "left unexplained": (
        "## Explain: Why",
        "## Predict: Why",
        83,
        "predict comes after obs",
        "Explain",
    ),
    "no such setting": (
        "load = 100, crack_mm = 0 }\n\n[q",
        "lod = 100 }\n\n[q",
        56,
        "no such",
        "load",
    ),
    "setting out of range": ("load = 200, ", "load = 9000, ", 76, "out of range", "5000"),
    "question elsewhere": (
        "## Predict: Pull",
        "## Explain: Pull",
        51,
        "outside a predict",
        "Predict",
    ),
    "no such reading": (
        'reading = "retardation_middle_nm"\nsettings',
        'reading = "retard"\nsettings',
        60,
        "no such reading",
        "retardation",
    ),
    "answers with a gap": ("from = 75, below = 150", "from = 80, below = 150", 64, "no answer", ""),
    "unknown belief": (
        'below = 75, belief = "none"',
        'below = 75, belief = "nome"',
        63,
        "nome",
        "none",
    ),
    "wrong without a belief": (
        ', belief = "double" },\n]\n```\n\nL',
        " },\n]\n```\n\nL",
        62,
        "several",
        "belief",
    ),
    "bounds of no setting": ("load = [0, 600]", "lood = [0, 600]", 99, "no such setting", "load"),
    "bounds out of range": ("load = [0, 600]", "load = [0, 6000]", 99, "cannot be", "[from, to]"),
    "bounds without the start": ("load = [0, 600]", "load = [200, 600]", 99, "outside", "within"),
    "goal about nothing": (
        'of = "retardation_middle_nm", from',
        'of = "colour", from',
        103,
        "colour",
        "one of",
    ),
    "goal without an end": (
        ", from = 520, below = 590 }]",
        " }]",
        103,
        "when it is reached",
        "below",
    ),
    "solution beyond bounds": ("load = 245", "load = 700", 104, "cannot set it so", "widen"),
    "ranked by nothing": (
        'least = "tension_MPa"',
        'least = "tens"',
        106,
        "no reading",
        "tension_MPa",
    ),
    "item without what varies": (
        "How large is the pull inside? (100 N: {given}.)",
        "{load}{lod}{given}",
        116,
        "lod",
        "load",
    ),
    "given alone": (" (100 N: {given}.)", "", 116, "belong together", "both"),
    "one value": (
        'vary = { load = [200, 400] }\nreading = "pulled',
        'vary = { load = [200] }\nreading = "pulled',
        119,
        "does not vary",
        "two values",
    ),
    "two tolerances": (
        "tolerance = 5\n",
        "tolerance = 5\ntolerance_pct = 5\n",
        153,
        "two tolerances",
        "one of the two",
    ),
    "two wrong answers": (
        '    { belief = "double", times = 0.5 },\n]\n```',
        "]\n```",
        170,
        "2 wrong answers",
        "3 or more",
    ),
    "wrong out of nowhere": (
        '{ belief = "double", times = 0.5 }',
        '{ belief = "double" }',
        173,
        "how it comes",
        "times",
    ),
    "exit without an answer": ("Because.\n", "", 177, "a good answer", "two paragraphs"),
    "nothing at home": ("## At home\n\n- Look.\n", "", 1, "'At home'", "## At home"),
    "danger at home": (
        "home\n\n- Look.",
        "home\n\n- Light a candle.",
        183,
        "told to be done at home",
        "nobody looks",
    ),
    "block without an end": ("0.5 },\n]\n```", "0.5 },\n]", 113, "block has no end", "under it"),
    "no such scene": (
        'minutes = 3\nscene = "push-pull"',
        'minutes = 3\nscene = "push"',
        75,
        "no scene is called",
        "push-pull",
    ),
    "told to break": (
        "- Press the cube.",
        "- Break the bottle.",
        71,
        "'breakage' is told",
        "take it out",
    ),
    "told to light": ("It is so.", "Now light the candle.", 83, "'flame' is told", "take it out"),
    "hazard not allowed": (
        'crack_mm = 0 }\nhazards = ["allergens"]',
        'crack_mm = 0 }\nhazards = ["sharp-edges"]',
        71,
        "'sharp-edges' can be met",
        "take it out",
    ),
    "scene not allowed": (
        '"allergens", "simulated-breakage"]',
        '"allergens"]',
        51,
        "simulated-break",
        "allow it",
    ),
}

BY_THE_MODEL = {
    "right answer with another right": (
        'below = 75, belief = "none" },\n    { text = "Twice as much", from = 75, below = 150 },',
        'below = 75 },\n    { text = "Some", from = 75, below = 150, belief = "none" },',
        63,
        "names no belief",
        "add belief",
    ),
    "challenge met at once": (
        "from = 520, below = 590",
        "from = 100, below = 590",
        103,
        "as the step opens",
        "more",
    ),
    "solution that fails": ("load = 245", "load = 400", 104, "do not reach goal 1", "mend"),
    "wrong within the tolerance": (
        'times = 2 },\n    { belief = "none", value = 0 },\n    { belief = "double", settings',
        'times = 1.02 },\n    { belief = "none", value = 0 },\n    { belief = "double", settings',
        124,
        "only 2 wrong",
        "another",
    ),
    "no number": (
        'reading = "squeezed_N"\ntol',
        'reading = "breaks"\ntol',
        170,
        "no number",
        "another reading",
    ),
}


def broken(path: Path, old: str, new: str) -> Path:
    assert GOOD.count(old) >= 1, old
    path.write_text(GOOD.replace(old, new, 1), encoding="utf-8")
    return path


def meets(error: InputError, path: Path, line: int, problem: str, remedy: str) -> bool:
    at = re.fullmatch(rf"{re.escape(str(path))}, line (\d+)", error.place)
    return (
        at is not None
        and at[1] == str(line)
        and problem in error.problem
        and remedy in error.remedy
    )


def test_the_small_lesson_is_in_order(tmp_path: Path) -> None:
    path = tmp_path / "small.md"
    path.write_text(GOOD, encoding="utf-8")
    found = examine(path)
    assert found.mistakes == ()
    assert found.truths["pull"].index == 1
    assert load(path) == found.lesson


@pytest.mark.parametrize("name", QUICK)
def test_each_kind_of_mistake_is_told(name: str, tmp_path: Path) -> None:
    old, new, line, problem, remedy = QUICK[name]
    path = broken(tmp_path / "small.md", old, new)
    found = examine(path, run=False)
    assert found.lesson is None
    assert any(meets(one, path, line, problem, remedy) for one in found.mistakes), list(
        map(str, found.mistakes)
    )


@pytest.mark.parametrize("name", BY_THE_MODEL)
def test_what_the_model_says_otherwise_is_told(name: str, tmp_path: Path) -> None:
    old, new, line, problem, remedy = BY_THE_MODEL[name]
    path = broken(tmp_path / "small.md", old, new)
    assert examine(path, run=False).lesson is not None
    found = examine(path)
    assert any(meets(one, path, line, problem, remedy) for one in found.mistakes), list(
        map(str, found.mistakes)
    )


def test_there_are_more_than_twenty_kinds() -> None:
    assert len(QUICK) > 50


def test_the_command_tells_file_line_and_remedy(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = broken(tmp_path / "small.md", "[9, 11]", "[11, 9]")
    assert main(["check", str(path)]) == 2
    told = capsys.readouterr().err
    assert told.startswith(f"lehrlight: {path}, line 4: ages: ") or f"{path}, line 4" in told
    assert told.count("\n") == 1


def test_a_readme_is_told_as_no_lesson(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "README.md"
    path.write_text("# Read me\n", encoding="utf-8")
    assert main(["check", str(path)]) == 0
    assert "not a lesson" in capsys.readouterr().out


def test_a_missing_file_is_one_line(tmp_path: Path) -> None:
    (error,) = examine(tmp_path / "no.md").mistakes
    assert "cannot be read" in error.problem
