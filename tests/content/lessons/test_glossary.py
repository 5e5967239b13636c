"""The glossary: all languages, both kinds of English, each entry with its source."""

from pathlib import Path

import pytest

from demo_app.base import locate
from demo_app.content.checks import checked
from demo_app.content.glossary import ABOUT, LANGUAGES, examine, glossary

OWN = locate.assets() / "glossary.toml"
ASKED = (
    *("annealed", "toughened", "thermal-stress", "thermal-shock", "temporary-stress"),
    *("permanent-stress", "retardation", "safety-glass"),
)


def test_it_holds_what_is_asked_for_in_three_languages() -> None:
    found = glossary()
    assert set(ASKED) <= {term.id for term in found.terms}
    for term in found.terms:
        assert tuple(term.words) == LANGUAGES
        assert all(one.term and one.meaning for one in term.words.values())
        assert len({one.meaning for one in term.words.values()}) == len(LANGUAGES)
        assert term.source
    toughened = next(term for term in found.terms if term.id == "toughened")
    assert (toughened.british, toughened.american) == ("toughened glass", "tempered glass")


def test_each_subject_has_facts_with_sources() -> None:
    facts = glossary().facts
    assert {fact.about for fact in facts} == set(ABOUT)
    assert all(fact.source and all(fact.words.values()) for fact in facts)
    assert any(fact.read for fact in facts)


def test_it_passes_the_check() -> None:
    assert checked(OWN).lines[0].startswith("glossary: ")


@pytest.mark.parametrize(
    ("old", "new", "told", "remedy"),
    [
        ('es = "vidrio recocido"\n', "", "es: missing", "add es"),
        ('british = "annealed glass"', 'britsh = "annealed glass"', "britsh: unknown", "british"),
        ('id = "toughened"', 'id = "annealed"', "is there twice", "another id"),
        ('about = "crack-off"', 'about = "crackoff"', "is no subject", "crack-off"),
        ('en = "Glass that was cooled', 'fr = "Glass that was cooled', "unknown key", "write"),
        ("\nread = false\n", '\nread = "no"\n', "neither true nor false", "write true or false"),
    ],
)
def test_mistakes_have_a_line_and_a_remedy(
    tmp_path: Path, old: str, new: str, told: str, remedy: str
) -> None:
    path = tmp_path / "glossary.toml"
    path.write_text(OWN.read_text(encoding="utf-8").replace(old, new, 1), encoding="utf-8")
    found = examine(path)
    assert found.glossary is None
    assert any(
        told in str(one) and remedy in one.remedy and ", line " in one.place
        for one in found.mistakes
    ), list(map(str, found.mistakes))
