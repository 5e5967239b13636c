"""All benchmarks in one run: ``python tests/benchmarks/run.py [--json] [NAME ...]``.

Ratios are to a reference of the same run, so that they say something on any machine; leave the
machine alone while it runs.
"""

import argparse
import importlib
import json
import os
import pkgutil
import sys
from pathlib import Path
from typing import Any

_HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(_HERE), str(_HERE.parent.parent)]

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from demo_app.base.process import one_thread_for_matrices  # noqa: E402 (needs the path)

one_thread_for_matrices()


def names() -> list[str]:
    """Modules beside this one that have ``rows()``."""
    found = [m.name for m in pkgutil.iter_modules([str(_HERE)]) if m.name != "run"]
    return sorted(found)


def table(chosen: list[str]) -> list[dict[str, Any]]:
    """Rows of the chosen benchmarks, each with its benchmark's name."""
    rows: list[dict[str, Any]] = []
    for name in chosen:
        module = importlib.import_module(name)
        rows.extend({"benchmark": name, **row} for row in module.rows())
    return rows


def line(row: dict[str, Any]) -> str:
    """One row for a person."""
    cost = (
        f"{row['milliseconds']:10.2f} ms"
        if "milliseconds" in row
        else f"{row['megabytes']:10.0f} MB"
    )
    return f"{row['name']:60s} {cost}  {row['ratio']:9.2f} x {row['reference']}"


def main() -> int:
    """Print the table, or JSON."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--json", action="store_true", help="machine-readable")
    parser.add_argument("name", nargs="*", choices=[*names(), []], help="only these")
    words = parser.parse_args()
    rows = table(words.name or names())
    if words.json:
        print(json.dumps(rows, indent=2))
    else:
        print("\n".join(line(row) for row in rows))
    return 0


if __name__ == "__main__":
    sys.exit(main())
