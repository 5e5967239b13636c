"""A process that saves, updates and counts without end, to be killed at any moment.

``python kiosk_victim.py WAY DATA [STICK ...]`` says "ready" once it begins, and what it has done.
"""

import dataclasses
import itertools
import os
import sys
import time
from pathlib import Path

from demo_app.content.kiosk import site_file, update
from demo_app.content.kiosk.counts import Counts
from demo_app.content.kiosk.fallback import load_or_last_good
from demo_app.content.kiosk.texts import load, own_folder


def say(line):
    os.write(1, f"{line}\n".encode())


def update_texts(data, sticks):
    for stick in itertools.cycle(sticks):
        update.install(Path(stick), data)
        update.open_texts(data)
        update.started(data)


def save_site(data, _sticks):
    for number in itertools.count():
        site, _ = load_or_last_good(data)
        brightness = 0.4 if number % 2 else 0.8
        site_file.save(dataclasses.replace(site, brightness=brightness), data / site_file.NAME)


def count(data, _sticks):
    counts = Counts(data)
    for number in itertools.count(1):
        counts.add("step", "dish")
        say(f"{time.monotonic()} {number}")
        time.sleep(0.005)


load(own_folder())  # Scenes are imported now, so that kills fall on what is tried.
say("ready")
WAYS = {"update": update_texts, "save": save_site, "count": count}
WAYS[sys.argv[1]](Path(sys.argv[2]), sys.argv[3:])
