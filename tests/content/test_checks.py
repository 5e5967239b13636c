"""The kind of a file follows from what it holds, and every kind is explained."""

from pathlib import Path

import pytest

from demo_app.base import locate
from demo_app.content.checks import checked
from demo_app.content.venue_file import write_template

RING = '[[step]]\ntitle = "Ring"\nscene = "ring"\nsay = "Look."\n'


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "some.toml"


def test_a_sheet_is_known_by_its_steps(file: Path) -> None:
    file.write_text(f'title = "A"\nvenue = "B"\nminutes = 2\n{RING}', encoding="utf-8")
    found = checked(file)
    assert not found.mistakes
    assert found.lines == (
        "cue sheet A, B: 1 steps, 1.0 of 2 minutes planned; hazards allowed: none; in order",
    )
    file.write_text(RING, encoding="utf-8")
    problems = [str(error).split(": ", 1)[1] for error in checked(file).mistakes]
    assert problems == [
        "title: missing; add title = ...",
        "venue: missing; add venue = ...",
        "minutes: missing; add minutes = ...",
    ]


def test_a_material_is_known_by_its_kind(file: Path) -> None:
    glass = locate.assets() / "materials" / "soda-lime.toml"
    assert checked(glass).lines[0].startswith("material Soda-lime")
    text = glass.read_text(encoding="utf-8").replace("density =", "densitty =")
    file.write_text(text, encoding="utf-8")
    (error,) = checked(file).mistakes
    assert "densitty: unknown key; write density, or one of" in str(error)


def test_a_venue_is_known_by_its_rules(file: Path) -> None:
    write_template(file)
    (line,) = checked(file).lines
    assert line.startswith("venue ")
    assert "without a review that counts" in line
    file.write_text('kind = "venue"\n[rules.audience]\nvalue = 3\n', encoding="utf-8")
    assert {"name", "audience"} <= {
        str(error).split(": ")[1].split(".")[-1] for error in checked(file).mistakes
    }


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("", "holds nothing; write a show, a venue or a material"),
        ("# only words\n", "holds nothing"),
        ("title = \n", "line 1: is not TOML"),
    ],
)
def test_what_is_of_no_kind(file: Path, text: str, message: str) -> None:
    file.write_text(text, encoding="utf-8")
    (error,) = checked(file).mistakes
    assert message in str(error)
    assert not checked(file).lines
