"""A lesson's file taken apart: a header between two lines of +++, then parts under ## heads.

What a program reads is TOML: the header, and blocks fenced by three backticks. Each is handed on
with as many empty lines before it as the file has, so that every mistake names its own line.
"""

import re
from dataclasses import dataclass
from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, parse_text
from demo_app.content.lessons.records import Words

FENCE = "+++"
_HEAD = re.compile(r"##\s+(?P<kind>[^:]+?)\s*(?::\s*(?P<title>.*\S))?\s*")
_POINT = re.compile(r"\s*[-*]\s+(.*\S)")
_UNKNOWN = (
    (re.compile(r"!\["), "a picture cannot be put in", "name a scene: its picture is computed"),
    (re.compile(r"#{3,}"), "a head may have two signs at most", "write ## Kind: Title"),
    (re.compile(r"\s*<[a-zA-Z/!]"), "HTML is not read here", "write plain words or a list"),
    (re.compile(r"\s*\|"), "a table is not read here", "write a list, a line each with - before"),
)


@dataclass(frozen=True)
class Block(Table):
    """A header or a block of a lesson: what is missing in it is told where it begins.

    Parameters
    ----------
    begins : int
        Line of the header, or of the head above the block.
    """

    begins: int = 1

    def error(self, key: str, problem: str, remedy: str, *further: str | int) -> InputError:
        """As of a `Table`, but never without a line."""
        found = super().error(key, problem, remedy, *further)
        if found.place != str(self.path):
            return found
        return InputError(
            found.problem, place=f"{self.path}, line {self.begins}", remedy=found.remedy
        )


def block(path: Path, text: str, begins: int) -> Block:
    """`text` as a block; `InputError` if it is not TOML."""
    found = parse_text(path, text)
    return Block(path, text, found.content, begins=begins)


@dataclass(frozen=True)
class Part:
    """What stands under one head.

    Parameters
    ----------
    kind, title : str
        Of ``## Kind: Title``.
    line : int
        Of the head.
    table : Block
        Its TOML block; empty if it has none.
    body : tuple of Words
    """

    kind: str
    title: str
    line: int
    table: Block
    body: tuple[Words, ...]


@dataclass(frozen=True)
class Parts:
    """A file taken apart: its header, and what stands under each head."""

    header: Block
    parts: tuple[Part, ...]


def split(path: Path, text: str, wrong: list[InputError]) -> Parts:
    """Take a lesson apart; small mistakes are added to `wrong`.

    Raises
    ------
    InputError
        If there is no header, or it is not TOML.
    """
    lines = text.splitlines()
    if not lines or lines[0].strip() != FENCE:
        raise InputError(
            "does not begin with a header",
            place=f"{path}, line 1",
            remedy=f"write {FENCE} on the first line, then title = ... and so on, then {FENCE}",
        )
    ends = [at for at, line in enumerate(lines) if line.strip() == FENCE]
    if len(ends) < 2:
        raise InputError(
            "the header has no end", place=f"{path}, line 1", remedy=f"write {FENCE} under it"
        )
    header = block(path, _padded(lines, 1, ends[1]), 1)
    return Parts(header, tuple(_parts(path, lines, ends[1] + 1, wrong)))


def _padded(lines: list[str], first: int, end: int) -> str:
    """Lines from `first` up to `end` on the lines where they stand in the file."""
    return "\n" * first + "\n".join(lines[first:end]) + "\n"


def _parts(path: Path, lines: list[str], first: int, wrong: list[InputError]) -> list[Part]:
    heads = [at for at in range(first, len(lines)) if lines[at].startswith("## ")]
    fenced = _fenced(lines, first)
    heads = [at for at in heads if at not in fenced]
    for at in range(first, heads[0] if heads else len(lines)):
        if lines[at].strip() and not lines[at].startswith("# "):
            wrong.append(_error(path, at, "words before the first head", "write ## Welcome first"))
            break
    ends = [*heads[1:], len(lines)]
    return [_part(path, lines, at, end, wrong) for at, end in zip(heads, ends, strict=True)]


def _fenced(lines: list[str], first: int) -> set[int]:
    inside, found = False, set()
    for at in range(first, len(lines)):
        if lines[at].startswith("```"):
            inside = not inside
        elif inside:
            found.add(at)
    return found


def _part(path: Path, lines: list[str], head: int, end: int, wrong: list[InputError]) -> Part:
    met = _HEAD.fullmatch(lines[head])
    kind, title = (met["kind"], met["title"] or "") if met else ("", "")
    if not met:
        wrong.append(_error(path, head, "a head without words", "write ## Kind: Title"))
    blocks = []
    prose: list[tuple[int, str]] = []
    at = head + 1
    while at < end:
        if lines[at].startswith("```"):
            close = next((k for k in range(at + 1, end) if lines[k].startswith("```")), None)
            if close is None:
                wrong.append(_error(path, at, "the block has no end", "write ``` under it"))
                break
            blocks.append((at + 1, close))
            at = close
        else:
            prose.append((at, lines[at]))
        at += 1
    if len(blocks) > 1:
        wrong.append(
            _error(path, blocks[1][0] - 1, "a second block under one head", "put both into one")
        )
    table = Block(path, "", {}, begins=head + 1)
    if blocks:
        try:
            table = block(path, _padded(lines, *blocks[0]), head + 1)
        except InputError as error:
            wrong.append(error)
    return Part(kind, title, head + 1, table, _body(path, prose, wrong))


def _body(path: Path, prose: list[tuple[int, str]], wrong: list[InputError]) -> tuple[Words, ...]:
    found: list[Words] = []
    open_still = False
    for at, line in prose:
        for form, problem, remedy in _UNKNOWN:
            if form.match(line):
                wrong.append(_error(path, at, problem, remedy))
        point = _POINT.fullmatch(line)
        if not line.strip():
            open_still = False
        elif point:
            found.append(Words(point[1], True))
            open_still = True
        elif open_still:
            last = found.pop()
            found.append(Words(f"{last.text} {line.strip()}", last.point))
        else:
            found.append(Words(line.strip()))
            open_still = True
    return tuple(found)


def _error(path: Path, at: int, problem: str, remedy: str) -> InputError:
    return InputError(problem, place=f"{path}, line {at + 1}", remedy=remedy)
