"""Which key does what: names, contexts, teaching, the file."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent

from demo_app.base.errors import InputError
from demo_app.ui import key_names, keymap_file
from demo_app.ui.key_names import checked, name_of, spoken
from demo_app.ui.keymap import ACTS, GROUPS, REMOTE, STRIP, Context, Keymap, label, told_keys
from demo_app.ui.session_acts import SESSION_ACTS

Key, Held = Qt.Key, Qt.KeyboardModifier
KEYS = sorted({key for keys in Keymap().keys.values() for key in keys} | {"F7", "A", "Ctrl+J"})
QUESTION, STRIPPED = Context(question=True), Context(strip=True)


def press(key, held=Held.NoModifier, text="", scan=0, virtual=0):
    return QKeyEvent(QEvent.Type.KeyPress, key, held, scan, virtual, 0, text)


@pytest.mark.parametrize(
    ("key", "held", "name"),
    [
        (Key.Key_PageDown, Held.NoModifier, "PgDown"),
        (Key.Key_PageDown, Held.KeypadModifier, "PgDown"),
        (Key.Key_Escape, Held.NoModifier, "Esc"),
        (Key.Key_F5, Held.ShiftModifier, "Shift+F5"),
        (Key.Key_Period, Held.NoModifier, "."),
        (Key.Key_Period, Held.KeypadModifier, "."),
        (Key.Key_B, Held.NoModifier, "B"),
        (Key.Key_B, Held.ShiftModifier, "B"),
        (Key.Key_S, Held.ControlModifier, "Ctrl+S"),
        (Key.Key_1, Held.NoModifier, "1"),
        (Key.Key_1, Held.KeypadModifier, "1"),
        (Key.Key_Exclam, Held.ShiftModifier, "Shift+1"),
        (Key.Key_1, Held.ShiftModifier, "Shift+1"),
        (Key.Key_1, Held.AltModifier, "Alt+1"),
        (Key.Key_Exclam, Held.AltModifier | Held.ShiftModifier, "Alt+Shift+1"),
        (Key.Key_Question, Held.ShiftModifier, "?"),
        (Key.Key_Plus, Held.ControlModifier, "Ctrl++"),
        (Key.Key_Backtab, Held.ShiftModifier, "Shift+Tab"),
        (Key.Key_Shift, Held.ShiftModifier, ""),
        (Key.Key_AltGr, Held.NoModifier, ""),
        (Key.Key_unknown, Held.NoModifier, ""),
    ],
)
def test_names_of_keys(app, key, held, name):
    assert name_of(press(key, held)) == name


@pytest.mark.parametrize(
    ("platform", "scan", "virtual"),
    [
        ("xcb", 11, 0),
        ("wayland", 11, 0),
        ("wayland-egl", 11, 0),
        ("windows", 3, 0),
        ("cocoa", 0, 19),
    ],
)
def test_the_row_above_the_letters_is_called_by_place(monkeypatch, platform, scan, virtual):
    """The second key of the row: evdev code 3 and 8 more for X11, set 1 code 3, macOS code 19."""
    monkeypatch.setattr(key_names.QGuiApplication, "platformName", lambda: platform)
    # France: é without Shift, 2 with it. Germany: 2, and a quotation mark.
    for key, held, name in [
        (Key.Key_Eacute, Held.NoModifier, "2"),
        (Key.Key_2, Held.ShiftModifier, "Shift+2"),
        (Key.Key_QuoteDbl, Held.ShiftModifier, "Shift+2"),
        (Key.Key_QuoteDbl, Held.AltModifier | Held.ShiftModifier, "Alt+Shift+2"),
    ]:
        assert name_of(press(key, held, "x", scan, virtual)) == name


def test_a_sign_made_with_alt_gr_is_itself(monkeypatch):
    """Germany: AltGr and the row's 8 write a bracket; Windows reports AltGr as Ctrl and Alt."""
    for platform, held, scan in [
        ("xcb", Held.GroupSwitchModifier, 17),
        ("windows", Held.ControlModifier | Held.AltModifier, 9),
    ]:
        monkeypatch.setattr(key_names.QGuiApplication, "platformName", lambda name=platform: name)
        assert name_of(press(Key.Key_BracketLeft, held, "[", scan)) == "["


def test_what_a_remote_sends_and_what_it_does():
    """Keys of presentation remotes (common practice): Page keys, full stop or B, F5 and Esc."""
    first = Keymap()
    sent = {
        "PgDown": "next",
        "PgUp": "back",
        ".": "blank",
        "B": "blank",
        "F5": "strip",
        "Esc": "strip",
    }
    for key, act in sent.items():
        assert first.act(key) == act == first.button(key)
        assert first.act(key, QUESTION) == act
        assert first.act(key, STRIPPED) == STRIP[act]
    assert first.act("V") == "replay"


def test_digits_count_hands_while_a_question_is_open():
    first = Keymap()
    for place in range(1, 7):
        assert first.act(str(place)) == f"button.{place}"
        assert first.act(str(place), QUESTION) == f"count.{place}"
        assert first.act(f"Shift+{place}", QUESTION) == f"less.{place}"
        assert first.act(f"Shift+{place}") == ""
    assert first.act("7", QUESTION) == "button.7"


def test_arrows_and_return_walk_the_open_strip():
    first = Keymap()
    assert [first.act(key, STRIPPED) for key in ("Up", "Down", "Return", "Space", "Z", "F9")] == [
        "strip.back",
        "strip.next",
        "strip.confirm",
        "strip.confirm",
        "freeze",
        "",
    ]


def test_every_act_has_a_key_and_words_and_no_key_two_acts():
    first = Keymap()
    assert set(first.keys) == set(ACTS)
    assert len(ACTS) == len(set(ACTS))
    for act in ACTS:
        assert first.keys[act], act
        assert label(act)
        for key in first.keys[act]:
            assert checked(key) == key
            assert first.holders(key, act) == (), key
    assert set(SESSION_ACTS) <= set(ACTS)
    assert set(ACTS) >= REMOTE


def test_no_act_ends_a_show():
    ending = ("quit", "close", "end", "exit", "leave", "stop")
    assert not [act for act in (*ACTS, *STRIP.values()) if act.startswith(ending)]
    assert {act for act in STRIP.values() if "close" in act} == {"strip.close"}


def test_a_taught_key_moves():
    first = Keymap()
    assert first.holders("B", "freeze") == ("blank",)
    taught = first.teach("freeze", "B")
    assert taught.act("B") == "freeze"
    assert taught.keys["blank"] == (".",)
    assert taught.keys["freeze"] == ("Z", "B")
    assert first.act("B") == "blank"
    assert taught.teach("freeze", "B") == taught


def test_a_digit_taught_to_the_remote_leaves_both_its_acts():
    first = Keymap()
    assert set(first.holders("1", "next")) == {"count.1", "button.1"}
    taught = first.teach("next", "1")
    assert taught.act("1") == taught.act("1", QUESTION) == "next"
    # But a scene's button and a count of hands may share one.
    assert first.holders("3", "count.1") == ("count.3",)


@pytest.mark.parametrize(
    "key", ["Tab", "Return", "Backtab", "Alt+F4", "", "Shift", "Rubbish", "A, B"]
)
def test_keys_that_cannot_be_taught(key):
    with pytest.raises(InputError):
        Keymap().teach("next", key)


def test_characters_can_be_switched_off():
    """WCAG 2.2, criterion 2.1.4: shortcuts of one character can be turned off or remapped."""
    off = Keymap().with_characters(False)
    for key in KEYS:
        if len(key) > 1:
            assert off.act(key) == Keymap().act(key)
        else:
            assert off.act(key) == ("blank" if key == "." else "")
            assert off.act(key, QUESTION) == off.act(key)
    # The sign that a remote sends stays, and can be taught away: the criterion's other way.
    assert off.teach("freeze", ".").act(".") == ""


@given(st.lists(st.tuples(st.sampled_from(ACTS), st.sampled_from(KEYS)), max_size=12))
def test_however_keys_are_taught_each_has_one_act(lessons):
    taught = Keymap()
    for act, key in lessons:
        taught = taught.teach(act, key)
        assert key in taught.keys[act]
    for act, keys in taught.keys.items():
        assert len(keys) == len(set(keys))
        assert not any(taught.holders(key, act) for key in keys)


@given(
    st.lists(
        st.tuples(st.sampled_from(ACTS), st.sampled_from([*KEYS, '"', "\\", "Ä"])), max_size=9
    ),
    st.booleans(),
)
def test_the_file_gives_back_what_it_was_given(tmp_path_factory, lessons, characters):
    taught = Keymap().with_characters(characters)
    for act, key in lessons:
        taught = taught.teach(act, key)
    path = tmp_path_factory.mktemp("keys") / keymap_file.NAME
    keymap_file.save(taught.clear("hold"), path)
    assert keymap_file.load(path) == (taught.clear("hold"), "")


def test_without_a_file_the_keys_are_as_at_first(tmp_path):
    assert keymap_file.load(tmp_path / "keys.toml") == (Keymap(), "")


def test_an_act_that_a_file_does_not_name_keeps_its_free_keys(tmp_path):
    path = tmp_path / "keys.toml"
    path.write_text('[keys]\nfreeze = ["B", "Page Down"]\n')
    read, line = keymap_file.load(path)
    assert line == ""
    assert read.keys["freeze"] == ("B", "PgDown")
    assert read.keys["blank"] == (".",)
    assert read.keys["next"] == ()


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("[keys", "line 1"),
        ("", "keys: missing"),
        ('[keys]\nnext = ["F5"]\nback = ["F5"]', "line 3: keys.back: 'F5' is that of next too"),
        ('[keys]\nnext = ["Nonsense"]', "line 2: keys.next: 'Nonsense' is no key"),
        ('[keys]\nnext = ["Tab"]', "needed by controls"),
        ('[keys]\nnxet = ["F5"]', "write next"),
        ("[keys]\nnext = 5", "5 is no list of texts"),
        ('characters = "no"\n[keys]', "neither true nor false"),
    ],
)
def test_a_broken_file_gives_the_first_keys_and_one_line(tmp_path, text, said):
    path = tmp_path / "keys.toml"
    path.write_text(text)
    read, line = keymap_file.load(path)
    assert read == Keymap()
    assert said in line
    assert "\n" not in line


@pytest.mark.parametrize(
    ("key", "said"),
    [
        ("PgDown", "Page Down"),
        ("Shift+F5", "Shift + F5"),
        (".", "Full stop (.)"),
        ("Ctrl++", "Ctrl + +"),
        ("+", "+"),
        ("Alt+Shift+1", "Alt + Shift + 1"),
    ],
)
def test_keys_as_people_read_them(key, said):
    assert spoken(key).replace("\u00a0", " ") == said


def test_the_list_of_keys_follows_what_was_taught():
    told = told_keys(Keymap().teach("freeze", "F9").clear("hold")).replace("\u00a0", " ")
    assert "Page Down Next · Page Up Back" in told
    assert "1 to 6 A hand for answer" in told
    assert "Z, F9 Freeze the picture" in told
    assert "Hold this picture" not in told
    assert sum(told.count(f" {label(act)}") > 0 for act in GROUPS["view"]) == len(GROUPS["view"])
