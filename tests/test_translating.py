"""The tool that keeps the translation files: what comes in, what goes, and whole files only."""

from demo_app import translating
from demo_app.translating import FINISHED, UNFINISHED, VANISHED, Entry
from demo_app.ui.language_ids import DESCRIBE, UI
from demo_app.ui.language_sources import Source, sources
from demo_app.ui.languages import FOLDER, STEM, translation

OLD = Source(UI, "a", "Old words & <signs>")
NEW = Source(UI, "a", "New words")
OTHER = Source(DESCRIBE, "b", "Others")


def test_new_texts_come_in_and_old_ones_go():
    held = (Entry(OLD, "Alte", FINISHED), Entry(OTHER, "Andere", FINISHED))
    assert translating.merge([OLD, OTHER], held) == held
    assert translating.merge([OLD, OTHER, NEW], held)[2] == Entry(
        NEW, "Alte", UNFINISHED, OLD.english
    )
    gone = translating.merge([OLD], held)
    assert gone == (held[0], Entry(OTHER, "Andere", VANISHED))
    # It comes back with its translation, and one that nobody made is no loss.
    assert translating.merge([OLD, OTHER], gone) == held
    assert translating.merge([OLD], (held[0], Entry(OTHER))) == held[:1]


def test_changed_english_keeps_the_translation_to_be_mended():
    held = (Entry(OLD, "Alte", FINISHED),)
    changed = translating.merge([NEW], held)
    assert changed == (Entry(NEW, "Alte", UNFINISHED, OLD.english),)
    assert translating.merge([NEW], changed) == changed


def test_files_are_written_and_read_alike(tmp_path):
    held = (
        Entry(OLD, 'Alte & <Zeichen> "ä ñ"', FINISHED),
        Entry(OTHER, "", UNFINISHED, "Before"),
        Entry(NEW, "Neu", VANISHED),
    )
    file = tmp_path / "x.ts"
    file.write_text(translating.written("de", held), encoding="utf-8")
    assert sorted(map(str, translating.read(file))) == sorted(map(str, held))
    compiled = translation(translating.compiled(file, tmp_path / "x.qm"))
    assert compiled.translate(OLD.context, OLD.english, OLD.id) == held[0].said
    assert compiled.translate(NEW.context, NEW.english, NEW.id) == ""


def test_a_new_language_begins_unfinished(tmp_path, monkeypatch, capsys):
    (tmp_path / FOLDER).mkdir()
    monkeypatch.setattr(translating, "assets", lambda: tmp_path)
    assert translating.main(["pt_BR"]) == 0
    number = len(sources())
    assert capsys.readouterr().out == f"pt_BR: 0 finished, {number} unfinished, 0 vanished\n"
    assert translation(tmp_path / FOLDER / f"{STEM}pt_BR.qm").isEmpty()
    assert translating.main(["../x"]) == 2
    assert "'../x' is no language" in capsys.readouterr().err


def test_a_file_that_is_broken_stays_as_it_is(tmp_path, monkeypatch, capsys):
    (tmp_path / FOLDER).mkdir()
    file = tmp_path / FOLDER / f"{STEM}de.ts"
    file.write_text("<TS>")
    monkeypatch.setattr(translating, "assets", lambda: tmp_path)
    assert translating.main([]) == 2
    assert "is no translation file" in capsys.readouterr().err
    assert file.read_text() == "<TS>"
