"""Commands that read, check and write what people keep: files, journal, answers."""

import argparse
from pathlib import Path
from typing import Any

from demo_app.commands.saying import progress, tell


def check(words: argparse.Namespace) -> int:
    """Check files that people write."""
    from demo_app.content.checks import checked

    status = 0
    for name in words.files:
        found = checked(Path(name))
        for line in found.lines:
            print(f"{name}: {line}", flush=True)
        for error in found.mistakes:
            status = tell(str(error))
    return status


def bench(words: argparse.Namespace) -> int:
    """Answer a question of the prep bench; open its window where none is named."""
    if words.question is None and not words.list:
        from demo_app.commands.windows import bench as window

        return window(words)
    from demo_app.content.bench.command import bench, listed

    if words.list:
        print(listed())
        return 0

    def to_pdf(made: Any, path: Path) -> None:
        from demo_app.ui.printing import print_pdf

        print_pdf(made.html, path, images=made.images, title=made.title)

    print(
        bench(
            words.question,
            words.set,
            words.out,
            progress(),
            to_pdf,
            json=words.json,
            quickly=words.first,
            keep=words.keep,
        )
    )
    return 0


def journal(words: argparse.Namespace) -> int:
    """List the shows that were given, or write tables."""
    from demo_app.content.journal.listing import listed, read_journal, record, told, write_tables
    from demo_app.content.readings import as_json

    journal = read_journal()
    if words.show is not None:
        one = told(journal, words.show)
    if words.csv is not None:
        write_tables(journal, Path(words.csv), words.show)
    elif words.json:
        print(as_json(record(journal, words.show)))
    else:
        print(listed(journal) if words.show is None else one)
    return 0


def handover(words: argparse.Namespace) -> int:
    """Write the page for whoever comes next."""
    from demo_app.base.atomic import check_place, write_text
    from demo_app.content.handover import check_name, gathered, page, parse_day
    from demo_app.content.journal.listing import read_journal

    out, day = check_name(Path(words.out)), parse_day(words.day)
    check_place(out)
    text = page(gathered(read_journal(), day))
    if out.suffix.lower() == ".pdf":
        from demo_app.ui.printing import print_pdf

        print_pdf(text, out, paper=words.paper)
    else:
        write_text(out, text)
    return 0


def handout(words: argparse.Namespace) -> int:
    """Write the worksheet or the answer key of a lesson."""
    from demo_app.base.atomic import check_place, write_text
    from demo_app.content.handouts.make import MOST_SEED, check_name
    from demo_app.content.handouts.make import handout as made
    from demo_app.content.handouts.page import page
    from demo_app.content.lessons.load import load
    from demo_app.content.lessons.named import lesson_called
    from demo_app.content.words import parse_whole

    out = check_name(Path(words.out))
    seed = parse_whole(words.seed, place="--seed", low=0, high=MOST_SEED)
    lesson = load(lesson_called(words.lesson, "handout"))
    check_place(out)
    text = page(made(lesson, 1 if seed is None else seed, words.key), words.paper)
    if out.suffix.lower() == ".pdf":
        from demo_app.ui.printing import print_pdf

        print_pdf(text, out, paper=words.paper)
    else:
        write_text(out, text)
    return 0
