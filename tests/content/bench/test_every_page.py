"""What holds for every question of the bench."""

import datetime
import itertools
import json
import re

import numpy as np
import pytest

from demo_app import __version__
from demo_app.content.bench import flame, sampling
from demo_app.content.bench.answer import never, quiet
from demo_app.content.bench.catalogue import IDS, page, pages
from demo_app.content.bench.flame_run import QUICK
from demo_app.content.bench.report import report
from demo_app.content.bench.words import as_record, as_words, inputs_of, texts_of
from demo_app.content.readings import as_json
from demo_app.scenes.settings import settings_of

SPREADING = [id for id in IDS if id not in ("colour", "matching")]


def some(id, monkeypatch, count=2):
    """The answer after `count` runs."""
    monkeypatch.setattr(sampling, "FIRST", count)
    asked = page(id)
    return next(asked.full(asked.question(), quiet, never))


@pytest.fixture(scope="module", params=IDS)
def first(request):
    asked = page(request.param)
    return asked, asked.first(asked.question())


def test_every_figure_is_a_range_and_never_a_bare_number(first):
    _, answer = first
    assert answer.figures
    for one in answer.figures:
        ends = [end for end in (one.low, one.middle, one.high) if end is not None]
        assert ends == sorted(ends)
        assert np.isfinite(ends).all()
        if one.unit != "%" and one.id not in ("best_s", "count") and ends:
            assert one.low < one.high


def test_the_cautions_and_limits_are_there(first):
    asked, answer = first
    said = as_words(asked, answer)
    assert "never clears a piece of glass for use" in said
    assert "does not replace your venue's assessment" in said
    assert len(answer.limits) >= 3
    assert "safe" not in said.replace("that a real piece is safe", "")


def test_every_word_has_its_text(first):
    asked, answer = first
    texts = texts_of(asked)
    ids = [one.id for one in answer.figures]
    ids += [table.id for table in answer.tables]
    ids += [column.id for table in answer.tables for column in table.columns]
    for chart in answer.charts:
        ids += [chart.x_id, chart.y_id, *(id for id, _ in chart.levels)]
        ids += [curve.id for curve in chart.curves]
    ids += [strip.id for strip in answer.strips]
    assert [id for id in ids if id not in texts] == []
    for one in (*answer.sentences, *answer.limits, *answer.cautions):
        assert "{" not in one.words(texts)


def test_charts_and_tables_are_whole(first):
    _, answer = first
    for table in answer.tables:
        assert table.rows
        assert all(len(row) == len(table.columns) for row in table.rows)
    for chart in answer.charts:
        assert len(chart.curves) <= 4
        for curve in chart.curves:
            assert curve.x.shape == curve.y.shape
            assert np.isfinite(curve.x).all()
            assert np.isfinite(curve.y).all()


def test_an_answer_is_strict_json_that_holds_what_was_asked(first):
    asked, answer = first
    record = json.loads(as_json(as_record(asked, answer)))
    names = [one.name for one in settings_of(asked.question)]
    assert list(record["question"]) == names
    assert record["version"] == __version__
    assert record["cautions"]


def test_the_printed_page_holds_inputs_figures_limits_seed_and_caution(first):
    asked, answer = first
    made = report(asked, answer, datetime.date(2031, 5, 4))
    text = re.sub(r"<[^>]+>", " ", made.html).replace("&#x27;", "'")
    for label, value in inputs_of(answer.question):
        assert label in text
        assert value in text
    for one in (*answer.limits, *answer.cautions, *answer.sentences):
        assert one.words(texts_of(asked)) in text
    assert f"Lehrlight {__version__}, 2031-05-04" in text
    assert ("no seed" in text) == (answer.seed is None)
    named = set(re.findall(r"src='([^']+)'", made.html))
    assert named == set(made.images)
    for pixels in made.images.values():
        assert pixels.dtype == np.uint8
        assert pixels.shape[2] == 3
        assert pixels.min() < 200


@pytest.mark.parametrize("id", SPREADING)
def test_the_same_seed_gives_the_same_answer_and_another_another(id, monkeypatch):
    monkeypatch.setattr(flame, "FINE", QUICK)
    one, again = (some(id, monkeypatch) for _ in range(2))
    assert as_json(as_record(page(id), one)) == as_json(as_record(page(id), again))
    asked = page(id)
    other = next(asked.full(asked.question(seed=2.0), quiet, never))
    assert [f.middle for f in other.figures] != [f.middle for f in one.figures]


def test_progress_is_told_and_cancelling_ends_the_answers(monkeypatch):
    asked, told = page("toughness"), []
    monkeypatch.setattr(sampling, "FIRST", 2)
    answers = asked.full(
        asked.question(runs="16"), lambda done, most: told.append((done, most)),
        lambda: len(told) >= 5,
    )  # fmt: skip
    found = list(answers)
    assert [one.runs for one in found] == [2, 4]
    assert not found[-1].done
    assert told == [(k, 16) for k in range(1, 6)]


@pytest.mark.parametrize("id", ["oven", "toughness"])
def test_what_matters_most_is_told_in_words_and_a_table(id, monkeypatch):
    answer = some(id, monkeypatch, 8)
    texts = texts_of(page(id))
    table = answer.tables[-1]
    assert table.id == "matters"
    assert all(row[0] in texts for row in table.rows)
    assert sum(row[1] for row in table.rows) == pytest.approx(100)
    assert all(f"most_{row[0][3:]}" in texts for row in table.rows[:-1])
    assert as_words(page(id), answer)


def test_answers_double_their_runs_until_the_last(monkeypatch):
    asked = page("toughness")
    monkeypatch.setattr(sampling, "FIRST", 4)
    found = list(asked.full(asked.question(runs="16"), quiet, never))
    assert [one.runs for one in found] == [4, 8, 16]
    assert found[-1].done


def test_a_page_has_controls_of_its_own():
    for one in pages():
        settings = settings_of(one.question)
        assert all(setting.label and setting.help for setting in settings)
        names = [setting.name for setting in settings]
        assert all(a != b for a, b in itertools.combinations(names, 2))
