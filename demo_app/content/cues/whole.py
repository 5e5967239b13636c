"""What holds for a cue sheet as a whole: its time, its hazards, its ids and priorities."""

from collections.abc import Iterator, Sequence

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table
from demo_app.content.cues.records import Step

LONGER = 1.1
"""Steps of priority 1 and 2 may take this many times the minutes: no plan is to the second."""
LONGEST = 2.0
"""All steps may take this many times the minutes: those of priority 3 wait for time left."""

Steps = Sequence[tuple[Table, Step]]


def whole(
    top: Table, minutes: float | None, allows: tuple[str, ...] | None, steps: Steps
) -> list[InputError]:
    """Mistakes that no step makes alone; `minutes` and `allows` are None where they are wrong."""
    return [
        *_same_ids(steps),
        *([] if allows is None else _not_allowed(allows, steps)),
        *([] if minutes is None else _too_long(top, minutes, steps)),
        *_none_kept(steps),
    ]


def _same_ids(steps: Steps) -> Iterator[InputError]:
    first: dict[str, int] = {}
    for table, step in steps:
        if step.id in first:
            yield table.error(
                "id" if "id" in table.content else "title",
                f"the step on line {first[step.id]} has the id '{step.id}' too",
                'write another id = "..."',
            )
        first.setdefault(step.id, step.line)


def _not_allowed(allows: tuple[str, ...], steps: Steps) -> Iterator[InputError]:
    for table, step in steps:
        for at, name in enumerate(step.hazards):
            if name not in allows:
                yield table.error(
                    "hazards",
                    f"'{name}' is not allowed by this sheet",
                    f"take the step out, or ask whoever decides and add '{name}' to allows"
                    " at the top",
                    at,
                )


def _too_long(top: Table, minutes: float, steps: Steps) -> Iterator[InputError]:
    longer = [(table, step) for table, step in steps if step.seconds > 60 * minutes]
    for table, step in longer:
        yield table.error(
            "seconds",
            f"{step.seconds:g} s is longer than the sheet's {minutes:g} minutes",
            f"write at most {60 * minutes:g}",
        )
    if longer:
        return
    needed = sum(step.seconds for _, step in steps if step.priority < 3)
    every = sum(step.seconds for _, step in steps)
    if needed > LONGER * 60 * minutes:
        yield top.error(
            "minutes",
            f"steps of priority 1 and 2 take {needed / 60:.1f} minutes, the sheet has {minutes:g}",
            "write more minutes, fewer seconds, or priority = 3 with some steps",
        )
    elif every > LONGEST * 60 * minutes:
        yield top.error(
            "minutes",
            f"all steps take {every / 60:.1f} minutes, the sheet has {minutes:g}",
            "take some steps of priority 3 out",
        )


def _none_kept(steps: Steps) -> Iterator[InputError]:
    if steps and all(step.priority != 1 for _, step in steps):
        table, _ = steps[0]
        yield table.error(
            "priority", "no step has priority 1", "write priority = 1 with what is never cut"
        )
