"""Cue sheets: every mistake is one line with its place and what to write instead."""

import re
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.cues.load import load, mistakes

GOOD = """\
title = "Small show"
venue = "Millrace Glass House"
minutes = 5
allows = ["flame", "breakage"]

[[step]]
title = "A drop"
scene = "ring"
settings = { drop = false, heat_s = 12 }
at_s = 3
seconds = 120
priority = 1
say = ["Look.", "Listen."]
hazards = ["flame"]
cautions = ["Stop if it flickers."]

[step.helper]
briefing = "Hold this."
eyewear = "goggles"
place = "left"
exit = "down the steps"

[step.question]
ask = "Does it crack?"
reading = "breaks"
settings = { drop = true }
answers = [
    { text = "yes", is = true },
    { text = "no", is = false },
]

[[step.contingency]]
when = "early"
say = "So it goes."
settings = { score_depth_um = 0 }

[[step]]
title = "A bar"
scene = "push-pull"
seconds = 60
priority = 2
say = "Bend it."

[step.question]
ask = "How much is left over?"
reading = "net_force_N"
at_s = 4
answers = [
    { text = "less", below = -1 },
    { text = "nothing", from = -1, below = 1 },
    { text = "more", from = 1 },
]
"""

ANSWERED = " is a number; write from"
"""In messages that take a run of the model."""

# what is wrong, text to replace, text to put in, start of the line named, what the message says
BROKEN = [
    ("top key", 'title = "Small', 'titel = "Small', "titel", r"titel: unknown key; write title"),
    ("no title", 'title = "Small show"', "", None, r"title: missing; add title"),
    ("empty venue", '"Millrace Glass House"', '" "', "venue", "venue: .* is empty; write words"),
    ("minutes", "minutes = 5", 'minutes = "5"', "minutes", "'5' is not a number; write a number"),
    ("too many minutes", "minutes = 5", "minutes = 900", "minutes", "out of range.* 1 to 180 min"),
    ("language", "minutes = 5", 'minutes = 5\nlanguage = "English!"', "language", "such as en"),
    ("hazard", '["flame", "br', '["flames", "br', "allows", "'flames'; write flame, or one of"),
    ("step key", "say = [", "sya = [", "sya", r"step 1.sya: unknown key; write say"),
    ("no say", 'say = ["Look.", "Listen."]', "", "[[step]]", r"step 1.say: nothing is to be said"),
    ("empty say", '"Look."', '""', "say = [", r"step 1.say 1: '' is not a text"),
    ("say number", '"Bend it."', "3", "say = 3", r"step 2.say: 3 is no list of texts"),
    ("scene", '"push-pull"', '"push-pul"', "scene = ", r"'push-pul'; write push-pull, or one"),
    ("no scene", 'scene = "push-pull"', "", "[[step]]", r"step 2.scene: missing; add scene"),
    (
        "setting",
        "heat_s = 12",
        "heats = 12",
        "settings",
        r"heats: .* no such setting; write heat_s",
    ),
    ("setting's range", "heat_s = 12", "heat_s = 500", "settings", "500 is out of range; .*120 s"),
    ("setting's kind", "drop = false", 'drop = "never"', "settings", "neither yes nor no"),
    ("huge", "heat_s = 12", "heat_s = " + "9" * 400, "settings", "out of range; write fewer"),
    ("settings' form", "{ drop = true }", '"drop"', 'settings = "', "write settings = { name"),
    ("at_s", "at_s = 3", "at_s = 33", "at_s", "33 s is after the end of the story; write at most"),
    ("negative at_s", "at_s = 3", "at_s = -1", "at_s", r"step 1.at_s: -1 is out of range"),
    ("play", "at_s = 3", 'at_s = 3\nplay = "yes"', "play", "'yes' is neither true nor false"),
    ("seconds", "seconds = 120", "seconds = 1", "seconds", "1 is out of range; .* 5 to 3600 s"),
    ("long step", "seconds = 60", "seconds = 301", "seconds", "longer than the sheet's 5 minutes"),
    ("long sheet", "seconds = 60", "seconds = 240", "minutes", "take 6.0 minutes, the sheet has 5"),
    ("priority", "priority = 2", "priority = 4", "priority", r"step 2.priority: 4 is no priority"),
    ("priority's kind", "priority = 2", "priority = true", "priority", "True is no priority"),
    ("never kept", "priority = 1", "priority = 2", "priority", "no step has priority 1; write"),
    ("same id", 'title = "A bar"', 'title = "A bar"\nid = "a-drop"', "id", r"line 6 has the id"),
    ("same title", '"A bar"', '"A  drop!"', "title", r"step 2.title: .* 'a-drop' too; write"),
    ("step's hazard", 'hazards = ["flame"]', 'hazards = ["fire"]', "hazards", "'fire'; write one"),
    ("not allowed", 'hazards = ["flame"]', 'hazards = ["hot-glass"]', "hazards", "ask whoever"),
    ("no caution", "cautions = [", "props = [", "hazards", r"flame without any caution; add"),
    ("no eyewear", 'eyewear = "goggles"', "", "[step.helper]", r"eyewear: missing, with flame"),
    ("no exit", 'exit = "down the steps"', "", "[step.helper]", r"helper.exit: missing"),
    ("helper's key", "place =", "plaice =", "plaice", r"plaice: unknown key; write place"),
    ("helper's form", "[step.helper]", "[[step.helper]]", "[[step", r"helper: is not a table"),
    ("question's key", 'ask = "Does', 'aks = "Does', "aks", r"aks: unknown key; write ask"),
    ("long question", "Does it", "Does it " * 20, "ask", "cannot be read from the back row; .* 90"),
    ("long answer", '"less"', f'"{"less " * 9}"', '    { text = "less', "back row; .* most 32"),
    ("reading", '"breaks"', '"brakes"', "reading", r"no such reading; write breaks, or one of"),
    ("question's end", "at_s = 4", "at_s = 99", "at_s = 99", r"question.at_s: 99 s is after"),
    ("already seen", "settings = { drop = true }", "at_s = 2", "at_s = 2", "already be seen"),
    ("one answer", '    { text = "no", is = false },\n', "", "answers", "1 answers; write 2 to 6"),
    ("answer's key", "below = -1", "upto = -1", '    { text = "l', "upto: unknown key; write"),
    ("no way", '"yes", is = true', '"yes"', '    { text = "yes', "nothing says when it is right"),
    ("two ways", "is = true", "is = true, from = 2", '    { text = "yes', "in several ways"),
    ("otherwise", "is = true", "otherwise = 1", '    { text = "yes', "1 is neither true nor false"),
    ("is a number", "is = true", "is = 1", '    { text = "yes', "write from and below for numbers"),
    (
        "overlap",
        "from = -1, below = 1",
        "from = -2, below = 1",
        '    { text = "n',
        "overlaps.*= -1",
    ),
    (
        "gap",
        "from = -1, below = 1",
        "from = 0, below = 1",
        '    { text = "nothing',
        "-1 to 0; close",
    ),
    ("open below", "below = -1", "from = -5, below = -1", '    { text = "less', "right below -5"),
    ("open above", "from = 1 }", "from = 1, below = 5 }", "answers", "right from 5 on; close"),
    (
        "empty",
        "from = -1, below = 1",
        "from = 1, below = -1",
        '    { text = "noth',
        "never be right",
    ),
    ("twice yes", "is = false", "is = true", '    { text = "no"', "right when another one is"),
    ("spare", "is = false", "is = false },\n{ text = '?', otherwise = true", "{ text", "never be"),
    ("mixed", "is = false", "from = 3", '    { text = "no"', "another kind of reading"),
    ("same words", '"no"', '"Yes "', '    { text = "Yes', "has the same words; tell them apart"),
    ("contingency's key", "when =", "wen =", "wen", r"contingency 1.wen: unknown key; write when"),
    ("contingency's say", 'say = "So it goes."', "", "[[step.con", "contingency 1.say: missing"),
    ("contingency's setting", "depth_um = 0", "depth_um = -1", "settings = { s", "out of range"),
    ("contingency's form", "[[step.contingency]]", "[step.contingency]", "[step.c", "begin each"),
    ("caption", "at_s = 3", "at_s = 3\ncaptions = { en = 3 }", "captions", "en: 3 is not a text"),
    ("caption's tag", "at_s = 3", "at_s = 3\ncaptions.e = 'a'", "captions", "'e' is no language"),
    ("no TOML", "minutes = 5", "minutes = five", "minutes", "is not TOML: .*; write key = value"),
    ("kind of reading", '"breaks"', '"swell_um"', "reading", "swell_um is a number; write from"),
    ("unforeseen", '"breaks"', '"break_at_s"', "reading", "break_at_s is a number; write from"),
]


def _line(text: str, start: str) -> set[int]:
    return {n for n, line in enumerate(text.splitlines(), 1) if line.startswith(start)}


@pytest.fixture
def sheet(tmp_path: Path) -> Path:
    return tmp_path / "show.toml"


def test_the_pattern_is_in_order(sheet: Path) -> None:
    sheet.write_text(GOOD, encoding="utf-8")
    assert mistakes(sheet) == ()
    found = load(sheet)
    assert [step.id for step in found.steps] == ["a-drop", "a-bar"]
    assert [step.line for step in found.steps] == [6, 37]
    first, second = found.steps
    assert first.settings == {"drop": False, "heat_s": 12.0}
    assert first.question is not None
    assert first.question.settings == {"drop": True}
    assert first.question.answers[1].equals is False
    assert first.helper is not None
    assert first.contingencies[0].settings == {"score_depth_um": 0.0}
    assert second.say == ("Bend it.",)
    assert second.question is not None
    assert second.question.answers[1].low == -1
    assert second.question.at_s == 4
    assert found.path == sheet


@pytest.mark.parametrize(
    ("old", "new", "start", "message"),
    [case[1:] for case in BROKEN],
    ids=[case[0] for case in BROKEN],
)
def test_mistake(sheet: Path, old: str, new: str, start: str | None, message: str) -> None:
    assert old in GOOD
    text = GOOD.replace(old, new, 1)
    sheet.write_text(text, encoding="utf-8")
    (error,) = mistakes(sheet, run=ANSWERED in message)
    assert re.search(message, str(error)), str(error)
    assert error.remedy
    assert "\n" not in str(error)
    if start is None:
        assert error.place == str(sheet)
    else:
        line = int(re.fullmatch(rf"{re.escape(str(sheet))}, line (\d+)", error.place)[1])
        assert line in _line(text, start), f"line {line}: {text.splitlines()[line - 1]}"


def test_every_mistake_is_explained_in_the_order_of_lines(
    sheet: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = GOOD
    for wrong, old, new, _, _ in BROKEN:
        if wrong in ("top key", "scene", "at_s", "no eyewear", "overlap", "contingency's key"):
            text = text.replace(old, new, 1)
    sheet.write_text(text, encoding="utf-8")
    found = mistakes(sheet)
    places = [int(error.place.rsplit(" ", 1)[1]) if "line" in error.place else 0 for error in found]
    assert len(found) == 6
    assert places == sorted(places)
    with pytest.raises(InputError) as first:
        load(sheet)
    assert str(first.value) == str(found[0])
    assert main(["check", str(sheet)]) == 2
    assert capsys.readouterr().err.splitlines() == [f"lehrlight: {error}" for error in found]


def test_settings_that_contradict_each_other_name_the_one_at_fault(sheet: Path) -> None:
    text = GOOD.replace(
        'scene = "push-pull"',
        'scene = "pour"\nsettings = { thick_mm = 3, thin_mm = 3.5 }',
    ).replace("net_force_N", "odds_ratio")
    sheet.write_text(text, encoding="utf-8")
    (error,) = mistakes(sheet, run=False)
    assert "step 2.settings.thin_mm: the thin tumbler is not thinner" in str(error)
    assert "write less than 3" in error.remedy


def test_a_contradiction_that_the_question_brings_in_is_its_own(sheet: Path) -> None:
    text = GOOD.replace(
        'scene = "push-pull"', 'scene = "pour"\nsettings = { thick_mm = 5, thin_mm = 2 }'
    ).replace('reading = "net_force_N"', 'reading = "odds_ratio"\nsettings = { thick_mm = 2 }')
    sheet.write_text(text, encoding="utf-8")
    (error,) = mistakes(sheet, run=False)
    assert "step 2.question.settings: the thin tumbler is not thinner" in str(error)
    assert error.place.endswith(f"line {_line(text, 'settings = { thick_mm = 2').pop()}")


def test_no_value_and_no_answer_for_it(sheet: Path) -> None:
    text = GOOD.replace('"breaks"', '"break_at_s"').replace("drop = true", "score_depth_um = 0")
    text = text.replace("is = true", "below = 5").replace("is = false", "from = 5")
    sheet.write_text(text, encoding="utf-8")
    (error,) = mistakes(sheet)
    assert "step 1.question.reading: break_at_s says nothing (none) there" in str(error)


def test_a_word_may_be_the_answer(sheet: Path) -> None:
    answers = '{ text = "fine", is = "toughened" }, { text = "other", otherwise = true }'
    text = GOOD.replace('"push-pull"', '"toughen"')
    start = text.index('reading = "net')
    sheet.write_text(f'{text[:start]}reading = "grade"\nanswers = [{answers}]\n', encoding="utf-8")
    assert mistakes(sheet) == ()
    gap = f'{text[:start]}reading = "grade"\nanswers = [{answers}]\n'.replace(
        "otherwise = true", 'is = "x"'
    )
    sheet.write_text(gap, encoding="utf-8")
    (error,) = mistakes(sheet)
    assert "no answer is right if the reading is any other word" in str(error)


def test_choices_may_be_a_list(sheet: Path) -> None:
    text = GOOD[: GOOD.index('[[step]]\ntitle = "A bar"')]
    table = '[[step]]\ntitle = "Table"\nscene = "light-table"\nsay = "Look."\n'
    sheet.write_text(f'{text}{table}settings.samples = ["plain", "dish"]\n', encoding="utf-8")
    assert load(sheet).steps[1].settings == {"samples": "plain,dish"}
    sheet.write_text(f'{text}{table}settings.samples = ["plain", "fish"]\n', encoding="utf-8")
    (error,) = mistakes(sheet, run=False)
    assert "step 2.settings.samples: 'fish' is not known" in str(error)


def test_a_missing_sheet(tmp_path: Path) -> None:
    (error,) = mistakes(tmp_path / "none.toml")
    assert "cannot be read" in str(error)
    with pytest.raises(InputError, match="cannot be read"):
        load(tmp_path / "none.toml")


def test_a_sheet_without_steps(sheet: Path) -> None:
    sheet.write_text(GOOD[: GOOD.index("[[step]]")], encoding="utf-8")
    (error,) = mistakes(sheet, run=False)
    assert error.remedy == "begin each step with a line [[step]]"


def test_steps_of_the_last_priority_wait_for_time_left(sheet: Path) -> None:
    text = GOOD.replace("seconds = 60\npriority = 2", "seconds = 240\npriority = 3")
    sheet.write_text(text, encoding="utf-8")
    assert mistakes(sheet, run=False) == ()
    more = text[text.index('[[step]]\ntitle = "A bar"') :].replace("A bar", "Another bar")
    sheet.write_text(f"{text}\n{more}", encoding="utf-8")
    assert mistakes(sheet, run=False) == ()  # exactly twice the minutes
    sheet.write_text(f"{text}\n{more.replace('240', '241')}", encoding="utf-8")
    (error,) = mistakes(sheet, run=False)
    assert "all steps take 10.0 minutes, the sheet has 5" in str(error)


_ODD = st.sampled_from(
    [
        "1979-05-27",
        "07:32:00",
        "[]",
        "[[1], {}]",
        "{}",
        "{ a = [{ b = 1 }] }",
        "inf",
        "nan",
        "-0.0",
        "9" * 400,
        "1e308",
        '""',
        "'\t'",
        "true",
        '"ring"',
        '["ring", 3]',
        "[true]",
        "0x7f",
        "'é'",
    ]
)
_SET = re.compile(r"(?m)(?<== )[^\n{\[]+?(?=[\n,]| \})")


@given(st.lists(st.tuples(st.integers(0, 999), _ODD), min_size=1, max_size=3))
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
def test_no_odd_value_escapes(sheet: Path, swaps: list[tuple[int, str]]) -> None:
    text = GOOD
    for place, odd in swaps:
        found = list(_SET.finditer(text))[place % len(_SET.findall(text))]
        text = text[: found.start()] + odd + text[found.end() :]
    sheet.write_text(text, encoding="utf-8")
    lines = text.count("\n")
    for error in mistakes(sheet, run=False):
        assert "\n" not in str(error)
        line = re.search(r"line (\d+)$", error.place)
        assert line is None or 1 <= int(line[1]) <= lines


@given(st.integers(0, len(GOOD)), st.integers(0, 60))
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
def test_no_torn_sheet_escapes(sheet: Path, start: int, length: int) -> None:
    sheet.write_text(GOOD[:start] + GOOD[start + length :], encoding="utf-8")
    assert all(error.remedy for error in mistakes(sheet, run=False))
