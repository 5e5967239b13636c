"""The journal: what is written, what is refused, what comes out of it."""

import csv
import json
import sqlite3

import pytest
from hypothesis import given
from hypothesis import strategies as st

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.journal import events, listing, pieces, schema, shows
from demo_app.content.journal.files import NAME, open_memory
from demo_app.content.journal.store import Journal, open_journal

NINE = 1_790_000_000.0


@pytest.fixture
def journal(tmp_path):
    made = open_journal(tmp_path)
    assert made.news() == ()
    yield made
    made.close()


@pytest.fixture
def day(journal):
    """One rehearsal and one show with a little of everything."""
    rehearsal = shows.begin_show(journal, "Fifteen minutes", NINE, rehearsal=True)
    shows.end_show(journal, rehearsal, NINE + 900)
    show = shows.begin_show(
        journal,
        "Fifteen minutes",
        NINE + 3600,
        sheet=shows.sheet_hash("a sheet"),
        venue="Millrace Glass House",
    )
    pieces.add_batch(journal, "B7", "bottle", "soda-lime", 3.0, order_below=4)
    pieces.move(journal, "B7", "delivered", 6, NINE)
    pieces.move(journal, "B7", "out", 4, NINE, show=show)
    first = shows.begin_step(journal, show, "ring", "Ring and drop", NINE + 3610)
    votes = (("at the ring", 12, True), ("at the neck", 30, False))
    shows.set_votes(journal, show, "ring", votes)
    shows.end_step(journal, first, 121.5)
    shows.skip_step(journal, show, "touch", "Warm touch", NINE + 3800)
    events.add_breakage(journal, "bottle parted", NINE + 3700, meant=True, show=show, step="ring")
    events.add_near_miss(journal, "hot ring near a sleeve", "bench", NINE + 3710, show=show)
    events.add_question(journal, "Does it work in space?", NINE + 3900, show=show)
    events.add_note(journal, "fault", "lamp flickers", NINE + 3950, show=show)
    pieces.move(journal, "B7", "broken", 1, NINE + 4000, show=show)
    pieces.move(journal, "B7", "back", 2, NINE + 4000, show=show)
    shows.end_show(journal, show, NINE + 4500, 180)
    return show


def test_a_day_in_one_line_a_show(journal, day):
    before, row = listing.summary(journal)
    assert before["rehearsal"] == 1
    assert (row["steps_shown"], row["steps_cut"], row["attendance"]) == (1, 1, 180)
    assert (row["hands"], row["hands_right"]) == (42, 12)
    assert (row["breakages_meant"], row["breakages_not_meant"], row["near_misses"]) == (1, 0, 1)


def test_a_count_that_does_not_balance_is_told(journal, day):
    (one,) = pieces.balances(journal, day)
    assert (one.went_out, one.came_back, one.broke, one.missing) == (4, 2, 1, 1)
    assert "1 not found yet" in one.words
    pieces.move(journal, "B7", "back", 1, NINE, show=day)
    assert "balances" in pieces.balances(journal, day)[0].words
    pieces.move(journal, "B7", "back", 1, NINE, show=day)
    assert "1 more than went out" in pieces.balances(journal, day)[0].words


@given(
    st.lists(
        st.tuples(st.sampled_from(pieces.WAYS), st.integers(1, 9), st.sampled_from([True, False]))
    )
)
def test_every_piece_is_somewhere(moves):
    """Delivered and corrected = in stock + missing in shows + broken, whatever was done."""
    journal = Journal(open_memory(), None, on_disk=False)
    show = shows.begin_show(journal, "A", NINE)
    pieces.add_batch(journal, "B", "plate", "soda-lime", 4.0)
    total = broken = 0
    for way, number, in_show in moves:
        at = show if in_show or way in ("out", "back") else None
        signed = -number if way == "corrected" and in_show else number
        pieces.move(journal, "B", way, signed, NINE, show=at)
        total += signed if way in ("delivered", "corrected") else 0
        broken += number if way == "broken" else 0
    (stock,) = pieces.stock(journal)
    missing = sum(one.missing for one in pieces.balances(journal))
    assert total == stock.in_stock + missing + broken
    journal.close()


def test_stock_says_what_to_order(journal, day):
    (batch,) = pieces.stock(journal)
    assert (batch.in_stock, batch.short, batch.wrong) == (4, False, False)
    pieces.move(journal, "B7", "broken", 1, NINE)
    assert pieces.stock(journal)[0].short
    pieces.move(journal, "B7", "corrected", -5, NINE)
    assert pieces.stock(journal)[0].wrong


def test_a_second_count_of_hands_replaces_the_first(journal, day):
    shows.set_votes(journal, day, "ring", (("at the ring", 13, True),))
    found = {row["answer"]: row["hands"] for row in listing.rows(journal, "votes", day)}
    assert found == {"at the ring": 13, "at the neck": 30}


def test_a_clock_that_is_set_back_is_noted_and_nothing_ends_before_it_began(journal):
    show = shows.begin_show(journal, "A", NINE)
    shows.end_step(journal, shows.begin_step(journal, show, "a", "", NINE + 60), 90)
    shows.begin_step(journal, show, "b", "", NINE - 3600)
    shows.end_show(journal, show, NINE - 3500)
    (row,) = listing.rows(journal, "shows")
    assert row["ended"] == NINE + 150
    a, b = listing.rows(journal, "steps")
    assert (b["begun"], b["seconds"]) == (NINE + 150, 0)
    assert a["seconds"] == 90
    notes = [row["text"] for row in listing.rows(journal, "notes")]
    assert notes[0] == "The computer's clock went back by 3750 s during the show"


def test_a_clock_that_trembles_is_no_news(journal):
    show = shows.begin_show(journal, "A", NINE)
    shows.end_show(journal, show, NINE - 1)
    assert listing.rows(journal, "notes") == []


def test_a_show_without_an_end_is_offered(journal, day):
    assert shows.unfinished(journal) == ()
    show = shows.begin_show(journal, "B", NINE + 9000)
    assert [row["id"] for row in shows.unfinished(journal)] == [show]


def test_a_step_that_a_crash_left_open_lasted_until_the_next(journal):
    show = shows.begin_show(journal, "A", NINE, sheet="abc", rehearsal=True)
    for number, begun in enumerate((NINE, NINE + 100, NINE + 250)):
        step = shows.begin_step(journal, show, f"step-{number % 2}", "", begun)
        if number == 1:
            shows.end_step(journal, step, 140)
    shows.skip_step(journal, show, "step-3", "", NINE + 300)
    shows.end_show(journal, show, NINE + 400)
    seconds = [row["seconds"] for row in listing.rows(journal, "steps")]
    assert seconds == [100, 140, 50, 0]
    assert shows.step_times(journal, "abc") == {"step-0": [100, 50], "step-1": [140]}
    assert shows.step_times(journal, "abc", rehearsals=False) == {}


def test_closed_notes_and_questions_are_not_open(journal, day):
    (fault,) = events.open_notes(journal, "fault")
    (question,) = events.open_questions(journal)
    events.close_note(journal, fault["id"], NINE + 5000)
    events.close_question(journal, question["id"], NINE + 5000)
    assert events.open_notes(journal, "fault") == events.open_questions(journal) == ()


@pytest.mark.parametrize(
    ("wrong", "said"),
    [
        (lambda j: shows.begin_show(j, " ", NINE), "title: is empty"),
        (lambda j: shows.end_show(j, 99, NINE), "no show 99"),
        (lambda j: shows.count_heads(j, 1, -1), "-1 cannot be a count"),
        (lambda j: shows.count_heads(j, 1, 2.5), "2.5 cannot be a count"),
        (lambda j: shows.begin_step(j, 99, "a", "", NINE), "no show 99"),
        (lambda j: events.add_question(j, "x" * 301, NINE), "at most 300"),
        (lambda j: events.add_question(j, "Ask ann@example.org", NINE), "address"),
        (lambda j: events.add_near_miss(j, "call 0123 456789", "", NINE), "telephone"),
        (lambda j: events.add_note(j, "mood", "x", NINE), "state, fault, order, note"),
        (lambda j: events.add_question(j, "Why?", NINE, show=99), "FOREIGN KEY"),
        (lambda j: pieces.move(j, "B7", "lent", 1, NINE), "delivered, corrected"),
        (lambda j: pieces.move(j, "B8", "delivered", 1, NINE), "write one of B7"),
        (lambda j: pieces.move(j, "B7", "out", 1, NINE), "which show"),
        (lambda j: pieces.move(j, "B7", "broken", -1, NINE), "-1 cannot be"),
        (lambda j: pieces.move(j, "B7", "corrected", 0, NINE), "0 cannot be"),
        (lambda j: pieces.move(j, "B7", "delivered", True, NINE), "True cannot be"),
        (lambda j: pieces.add_batch(j, "B7", "bottle", ""), "there already"),
        (lambda j: pieces.add_batch(j, "B9", "bottle", "", -1.0), "0.1 to 1000"),
        (lambda j: events.close_note(j, 99, NINE), "has no 99"),
    ],
)
def test_what_cannot_be_kept_is_refused_and_nothing_is_written(journal, day, wrong, said):
    before = listing.record(journal)
    with pytest.raises(InputError, match=said):
        wrong(journal)
    assert listing.record(journal) == before
    assert journal.on_disk


def test_numbers_in_a_question_are_not_taken_for_a_telephone(journal):
    said = "Is 650 °C, 1 500 kg or 10:30-11:00 too much, 2026-05-04?"
    events.add_question(journal, f"  {said}\n", NINE)
    assert events.open_questions(journal)[0]["text"] == said


def test_no_table_has_a_place_for_a_name():
    columns = {
        (table, row[1])
        for table in schema.TABLES
        for row in open_memory().execute(f"PRAGMA table_info({table})")
    }
    suspicious = ("visitor", "person", "child", "school", "email", "age", "gender", "who")
    assert not [one for one in columns if any(word == one[1] for word in suspicious)]
    assert {one for one in columns if "name" in one[1]} == {("batches", "name")}


def test_an_older_file_is_brought_up_whole_or_not_at_all():
    db = sqlite3.connect(":memory:", isolation_level=None)
    schema.migrate(db)
    later = (*schema.MIGRATIONS, ("CREATE TABLE more (id INTEGER) STRICT", "NONSENSE"))
    with pytest.raises(sqlite3.OperationalError, match="NONSENSE"):
        schema.migrate(db, later)
    assert schema.version(db) == len(schema.MIGRATIONS)
    assert not db.execute("SELECT * FROM sqlite_master WHERE name = 'more'").fetchall()
    schema.migrate(db, (*later[:-1], later[-1][:1]))
    assert schema.version(db) == len(schema.MIGRATIONS) + 1
    with pytest.raises(schema.NewerFileError):
        schema.migrate(db)
    db.close()


# The command ------------------------------------------------------------------------------------


@pytest.fixture
def home(tmp_path, monkeypatch, day, journal):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path))
    out = tmp_path / "out"
    out.mkdir()
    monkeypatch.chdir(out)
    return tmp_path


def run(capsys, *words):
    status = main([str(word) for word in words])
    out, err = capsys.readouterr()
    return status, out, err


def test_the_list_for_people(home, capsys):
    status, out, err = run(capsys, "journal")
    assert (status, err) == (0, "")
    first, second, glass = out.splitlines()
    assert "rehearsal: Fifteen minutes, 15 min" in first
    assert (
        "show: Fifteen minutes, 15 min, steps shown 1, cut 1, 180 people (near misses: 1" in second
    )
    assert "show 2: B7: 4 out, 2 back, 1 broken: 1 not found yet" in glass


def test_one_show_for_people(home, capsys):
    _, out, _ = run(capsys, "journal", "--show", "2")
    for said in (
        "2:01  Ring and drop",
        "12  at the ring  (right)",
        "cut  Warm touch",
        "near miss: hot ring near a sleeve (bench)",
        "asked: Does it work in space?",
        "fault: lamp flickers",
    ):
        assert said in out


def test_json_for_programs(home, capsys):
    found = json.loads(run(capsys, "journal", "--json", "--show", "2")[1])
    assert [row["show"] for row in found["shows"]] == [2]
    assert found["glass"][0]["missing"] == 1
    assert found["steps"][0]["seconds"] == 121.5
    assert "T" in found["steps"][0]["begun"]


def test_a_table_for_each_kind_of_row(home, capsys):
    assert run(capsys, "journal", "--csv", "all")[0] == 0
    written = sorted(path.stem for path in (home / "out" / "all").iterdir())
    assert written == sorted(schema.TABLES)
    with (home / "out" / "all" / "votes.csv").open(newline="") as file:
        votes = list(csv.DictReader(file))
    assert [(row["answer"], row["hands"], row["correct"]) for row in votes] == [
        ("at the ring", "12", "1"),
        ("at the neck", "30", "0"),
    ]


def test_one_table_of_shows(home, capsys):
    assert run(capsys, "journal", "--csv", "shows.csv")[0] == 0
    with (home / "out" / "shows.csv").open(newline="") as file:
        rows = list(csv.DictReader(file))
    assert [row["attendance"] for row in rows] == ["", "180"]


def test_a_text_that_a_spreadsheet_would_run_is_quoted(home, journal, capsys):
    events.add_question(journal, "=1+1", NINE)
    run(capsys, "journal", "--csv", "all")
    text = (home / "out" / "all" / "questions.csv").read_text()
    assert "'=1+1" in text


def test_a_table_without_rows_has_its_heads(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "new"))
    monkeypatch.chdir(tmp_path)
    assert run(capsys, "journal") == (0, "The journal has no shows yet.\n", "")
    assert not (tmp_path / "new").exists()  # Reading makes nothing.
    assert run(capsys, "journal", "--csv", "shows.csv")[0] == 0
    assert (tmp_path / "shows.csv").read_text().startswith("show,title,sheet_hash,venue")


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--show", "99"], "there is no show 99"),
        (["--show", "99", "--json"], "there is no show 99"),
        (["--show", "99", "--csv", "x"], "there is no show 99"),
        (["--show", "first"], "invalid int value"),
        (["--show", "-1"], "there is no show -1"),
        (["--json", "--csv", "x"], "not allowed"),
        (["--csv", "away/x.csv"], "folder is missing"),
        (["--csv", "away/x"], "No such file"),
        (["--csv", ""], "names no file"),
    ],
)
def test_words_that_cannot_be_used(home, capsys, words, said):
    status, out, err = run(capsys, "journal", *words)
    assert (status, out, err.count("\n")) == (2, "", 1)
    assert said in err
    assert list((home / "out").iterdir()) == []


def test_a_file_that_is_no_journal_is_left_alone(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path))
    (tmp_path / NAME).write_bytes(b"no journal at all" * 100)
    status, out, err = run(capsys, "journal")
    assert (status, out) == (2, "")
    assert "is no journal that can be read" in err
    assert (tmp_path / NAME).read_bytes().startswith(b"no journal")
