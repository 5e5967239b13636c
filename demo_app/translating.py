"""Bring the translation files up to date: ``python -m demo_app.translating``.

Stands outside the layers, as the command line does. Writes what is new into each
``lehrlight_*.ts`` as unfinished, marks what is gone as vanished, and compiles the files beside
them. Finish a text with Qt Linguist (``pyside6-linguist``) or any editor, then run it again.
"""

import argparse
import re
import subprocess
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from xml.etree import ElementTree
from xml.sax.saxutils import escape

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.ui.language_sources import Source, sources
from demo_app.ui.languages import FOLDER, STEM

FINISHED, UNFINISHED, VANISHED = "", "unfinished", "vanished"
HEAD = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
COMPILE = "from PySide6.scripts.pyside_tool import lrelease; lrelease()"


@dataclass(frozen=True)
class Entry:
    """One text of a translation file.

    Parameters
    ----------
    source : Source
        What is translated.
    said : str
        The translation, or "".
    state : str
        FINISHED, UNFINISHED or VANISHED.
    before : str
        Other English words, which `said` was made for; "" if none.
    """

    source: Source
    said: str = ""
    state: str = UNFINISHED
    before: str = ""


def read(file: Path) -> tuple[Entry, ...]:
    """Entries of a translation file, in its order.

    Raises
    ------
    InputError
        If it cannot be read as one.
    """
    try:
        root = ElementTree.fromstring(file.read_bytes())
    except (OSError, ElementTree.ParseError) as error:
        raise InputError(
            f"is no translation file ({error})", place=str(file), remedy="mend it or remove it"
        ) from None
    return tuple(
        _entry(context.findtext("name", ""), message)
        for context in root.iter("context")
        for message in context.iter("message")
    )


def _entry(context: str, message: ElementTree.Element) -> Entry:
    source = Source(context, message.findtext("comment", ""), message.findtext("source", ""))
    said = message.find("translation")
    return Entry(
        source,
        "" if said is None else said.text or "",
        UNFINISHED if said is None else said.get("type", FINISHED),
        message.findtext("oldsource", ""),
    )


def merge(wanted: Sequence[Source], held: Sequence[Entry]) -> tuple[Entry, ...]:
    """What a file should hold: each wanted text, then the translations of those that are gone.

    A text whose English has changed keeps its old translation, unfinished, for a person to mend.
    """
    exact = {entry.source: entry for entry in held}
    # What a person has finished counts before what an older run has left over.
    ranked = sorted(held, key=lambda entry: (FINISHED, UNFINISHED, VANISHED).index(entry.state))
    named: dict[tuple[str, str], Entry] = {}
    for entry in ranked:
        named.setdefault((entry.source.context, entry.source.id), entry)
    made = []
    for source in wanted:
        same, other = exact.get(source), named.get((source.context, source.id))
        if same is not None:
            state = FINISHED if same.state == VANISHED else same.state
            made.append(replace(same, state=state))
        elif other is not None and other.said:
            made.append(Entry(source, other.said, UNFINISHED, other.source.english))
        else:
            made.append(Entry(source))
    taken = set(wanted) | {
        Source(entry.source.context, entry.source.id, entry.before) for entry in made
    }
    gone = [entry for entry in held if entry.source not in taken and entry.said]
    return (*made, *(replace(entry, state=VANISHED) for entry in gone))


def written(code: str, entries: Sequence[Entry]) -> str:
    """A translation file as text."""
    contexts = dict.fromkeys(entry.source.context for entry in entries)
    lines = [f'<TS version="2.1" language="{code}" sourcelanguage="en">']
    for context in contexts:
        lines += ["<context>", f"    <name>{escape(context)}</name>"]
        for entry in entries:
            if entry.source.context == context:
                lines += _message(entry)
        lines.append("</context>")
    return HEAD + "\n".join((*lines, "</TS>")) + "\n"


def _message(entry: Entry) -> Iterator[str]:
    kind = f' type="{entry.state}"' if entry.state else ""
    yield "    <message>"
    yield f"        <source>{escape(entry.source.english)}</source>"
    if entry.before:
        yield f"        <oldsource>{escape(entry.before)}</oldsource>"
    yield f"        <comment>{escape(entry.source.id)}</comment>"
    yield f"        <translation{kind}>{escape(entry.said)}</translation>"
    yield "    </message>"


def compiled(file: Path, target: Path) -> Path:
    """Compile a translation file with Qt's own lrelease; what is not finished stays out.

    Raises
    ------
    InputError
        If that fails.
    """
    words = ("-silent", "-nounfinished", str(file), "-qm", str(target))
    done = subprocess.run(
        [sys.executable, "-c", COMPILE, *words], capture_output=True, text=True, check=False
    )
    if done.returncode or not target.is_file():
        raise InputError(
            "cannot be compiled", place=str(file), remedy=(done.stderr or done.stdout).strip()
        )
    return target


def update(folder: Path, code: str, *, drop: bool = False) -> tuple[Entry, ...]:
    """Bring the file of one language up to date and compile it; returns what it holds then.

    Parameters
    ----------
    folder : pathlib.Path
        Where the files lie.
    code : str
        Language; its file is made if it is missing.
    drop : bool
        Whether texts that are gone go too.
    """
    file = folder / f"{STEM}{code}.ts"
    entries = merge(sources(), read(file) if file.exists() else ())
    if drop:
        entries = tuple(entry for entry in entries if entry.state != VANISHED)
    write_text(file, written(code, entries))
    compiled(file, file.with_suffix(".qm"))
    return entries


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command; exit status 2 after one line about what a person can mend."""
    parser = argparse.ArgumentParser(prog="python -m demo_app.translating", description=__doc__)
    parser.add_argument("codes", metavar="CODE", nargs="*", help="languages, such as de")
    parser.add_argument("--drop", action="store_true", help="forget what is gone")
    wanted = parser.parse_args(argv)
    try:
        folder = assets() / FOLDER
        there = [file.stem.removeprefix(STEM) for file in sorted(folder.glob(f"{STEM}*.ts"))]
        for code in wanted.codes or there:
            if not re.fullmatch(r"[a-z]{2,3}(_[A-Z]{2})?", code):
                raise InputError(
                    f"'{code}' is no language", place="CODE", remedy="write one such as de or pt_BR"
                )
            entries = update(folder, code, drop=wanted.drop)
            counts = [
                f"{sum(entry.state == state for entry in entries)} {said}"
                for state, said in (
                    (FINISHED, "finished"),
                    (UNFINISHED, "unfinished"),
                    (VANISHED, "vanished"),
                )
            ]
            sys.stdout.write(f"{code}: {', '.join(counts)}\n")
    except InputError as error:
        sys.stderr.write(f"translating: {error}\n")
        return 2
    return 0


if __name__ == "__main__":
    sys.exit(main())
