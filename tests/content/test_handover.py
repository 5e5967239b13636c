"""The handover page: what it says, and that a screen reader finds its way."""

import datetime
import html.parser
import itertools
import time

import pytest

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.handover import STYLE, Handover, gathered, page, parse_day
from demo_app.content.journal import events, pieces, shows
from demo_app.content.journal.store import opened

DAY = datetime.date(2026, 11, 24)
MORNING = time.mktime((2026, 11, 24, 9, 30, 0, 0, 0, -1))
ONE_DAY = 86400.0
VOID = {"meta", "br", "img", "hr", "link"}


class Walker(html.parser.HTMLParser):
    """Elements in order, their words, and whether each one that opens is closed."""

    def __init__(self, text):
        super().__init__(convert_charrefs=True)
        self.open, self.seen, self.words = [], [], {}
        self.feed(text)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag, attrs):
        self.seen.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        if data.strip() and self.open:
            self.words.setdefault(self.open[-1], []).append(data.strip())

    def attributes(self, tag):
        return [attrs for name, attrs in self.seen if name == tag]


@pytest.fixture
def home(tmp_path, monkeypatch):
    """Yesterday's show lost a flask; today's is in order, and something is told of everything."""
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "home"))
    monkeypatch.chdir(tmp_path)
    with opened() as journal:
        pieces.add_batch(journal, "F2", "flask", "soda-lime", 6.0, order_below=5)
        pieces.add_batch(journal, "B7", "bottle", "soda-lime", 3.0)
        pieces.move(journal, "F2", "delivered", 5, MORNING)
        pieces.move(journal, "B7", "delivered", 9, MORNING)
        old = shows.begin_show(journal, "Yesterday's", MORNING - ONE_DAY)
        pieces.move(journal, "F2", "out", 2, MORNING, show=old)
        pieces.move(journal, "F2", "back", 1, MORNING, show=old)
        shows.end_show(journal, old, MORNING - ONE_DAY + 900, 50)
        new = shows.begin_show(journal, "Today's <b>", MORNING)
        pieces.move(journal, "B7", "out", 2, MORNING, show=new)
        pieces.move(journal, "B7", "broken", 1, MORNING, show=new)
        pieces.move(journal, "B7", "back", 1, MORNING, show=new)
        shows.end_show(journal, new, MORNING + 900, 150)
        events.add_near_miss(journal, "sleeve at the flame", "bench", MORNING, show=new)
        events.add_near_miss(journal, "old near miss", "", MORNING - ONE_DAY, show=old)
        events.add_breakage(journal, "plate fell", MORNING, meant=False)
        events.add_breakage(journal, "bottle parted", MORNING, meant=True, show=new)
        events.add_question(journal, "Would ice & salt do?", MORNING, show=new)
        answered = events.add_question(journal, "answered", MORNING, show=new)
        events.close_question(journal, answered, MORNING)
        for kind, text in (
            ("state", "burner shut off"),
            ("fault", "lamp flickers"),
            ("order", "dropper"),
            ("note", "key is at the desk"),
        ):
            events.add_note(journal, kind, text, MORNING - 5 * ONE_DAY)
        mended = events.add_note(journal, "fault", "mended", MORNING)
        events.close_note(journal, mended, MORNING)
    return tmp_path


def written(capsys, *words):
    status = main(["handover", *words])
    out, err = capsys.readouterr()
    return status, out, err


def test_the_page_says_what_the_next_one_has_to_know(home, capsys):
    assert written(capsys, "--day", "2026-11-24", "--out", "h.html") == (0, "", "")
    text = (home / "h.html").read_text(encoding="utf-8")
    said = " ".join(" ".join(words) for words in Walker(text).words.values())
    for wanted in (
        "theirs wins",
        "burner shut off (2026-11-19)",
        "lamp flickers (2026-11-19)",
        "dropper",
        "F2, flask: 4 in stock, order below 5",
        "Show 1, F2: 2 out, 1 back, 0 broken: 1 not found yet",
        "sleeve at the flame (bench)",
        "broken by accident: plate fell",
        "Would ice & salt do?",
        "Today's <b>",
        "150",
        "key is at the desk",
    ):
        assert wanted in said, wanted
    for unwanted in ("mended", "answered", "old near miss", "bottle parted", "Yesterday's"):
        assert unwanted not in said, unwanted


def test_a_screen_reader_finds_its_way(home, capsys):
    """WCAG 2.2: language of page (3.1.1), page titled (2.4.2), info and relationships (1.3.1)."""
    written(capsys, "--day", "2026-11-24", "--out", "h.html")
    found = Walker((home / "h.html").read_text(encoding="utf-8"))
    assert found.attributes("html") == [{"lang": "en"}]
    assert found.words["title"] == found.words["h1"] == ["Handover, 2026-11-24"]
    assert len(found.words["h2"]) == 9
    levels = [int(tag[1]) for tag, _ in found.seen if tag in ("h1", "h2", "h3")]
    assert levels[0] == 1
    assert max(b - a for a, b in itertools.pairwise(levels)) <= 1
    assert len(found.words["caption"]) == len(found.attributes("table")) == 3
    assert {head["scope"] for head in found.attributes("th")} == {"col", "row"}
    assert len(found.attributes("main")) == 1
    assert not found.attributes("script")
    assert "http" not in (home / "h.html").read_text()


def test_its_words_stand_out_from_the_paper():
    """WCAG 2.2, 1.4.3: at least 4.5 to 1; borders, 1.4.11: at least 3 to 1."""

    def luminance(colour):
        parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
        linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    for colour, least in (("#111111", 4.5), ("#767676", 3.0)):
        assert colour in STYLE
        assert 1.05 / (luminance(colour) + 0.05) >= least
    assert "background: #ffffff" in STYLE


def test_an_empty_journal_gives_a_page_that_says_so(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "none"))
    monkeypatch.chdir(tmp_path)
    assert written(capsys, "--out", "h.html")[0] == 0
    text = (tmp_path / "h.html").read_text()
    assert text == page(Handover(datetime.date.today().isoformat()))
    assert text.count("Nothing is written down.") == 5
    assert not (tmp_path / "none").exists()


def test_another_day_has_its_own_shows(home):
    with opened() as journal:
        before = gathered(journal, DAY - datetime.timedelta(1))
        assert [row["title"] for row in before.shows] == ["Yesterday's"]
        after = gathered(journal, DAY + datetime.timedelta(1))
        assert after.shows == ()
        assert [one.batch for one in after.glass] == ["F2"]  # What is missing is told every day.


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ([], "--out"),
        (["--out", "h.doc"], ".html or .pdf"),
        (["--out", ""], ".html or .pdf"),
        (["--out", "away/h.html"], "folder is missing"),
        (["--out", "h.html", "--day", "today"], "2026-03-31"),
        (["--out", "h.html", "--day", "2026-02-30"], "2026-03-31"),
        (["--out", "h.html", "--day", "20260301"], "2026-03-31"),
        (["--out", "h.pdf", "--paper", "A3"], "invalid choice"),
    ],
)
def test_words_that_cannot_be_used(home, capsys, words, said):
    status, out, err = written(capsys, *words)
    assert (status, out, err.count("\n")) == (2, "", 1)
    assert said in err
    assert [path.name for path in home.iterdir()] == ["home"]


def test_a_day_is_today_unless_it_is_said():
    assert parse_day(None) == datetime.date.today()
    assert parse_day("2026-11-24") == DAY
    with pytest.raises(InputError):
        parse_day("2026-11-24 ")
