"""Words on the screen, in the language in use: that of the translator which Qt has installed.

Scenes and tables bring labels, units and sentences as English data; this module puts numbers and
words together. Without a translator every text is the English one, byte for byte.
"""

import datetime
import math
from collections.abc import Callable, Iterator, Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from demo_app.scenes.scene import Action, Message, Reading, Scene
from demo_app.scenes.settings import Setting, Value, settings_of
from demo_app.ui.language_ids import (
    DECIMAL,
    DESCRIBE,
    LANGUAGE,
    SAMPLE,
    SHORT,
    UI,
    choice_id,
    help_id,
    label_id,
    scene_context,
    text_id,
    value_id,
)
from demo_app.ui.template import Template

ENGLISH: Mapping[str, str] = {
    "app": "Lehrlight",
    "tagline": "See the stress in glass, as it happens.",
    "present": "Present",
    "present.help": "One big live picture for your audience, with your controls beside it.",
    "quit": "Quit",
    "play": "Play",
    "pause": "Pause",
    "play.help": "Run or stand still (Space)",
    "back": "Step back",
    "back.help": "One step earlier (Left arrow)",
    "forward": "Step on",
    "forward.help": "One step later (Right arrow)",
    "reset": "Reset",
    "reset.help": "Back to the start of the same run (R)",
    "brighten": "Brighten a faint picture",
    "brighten.help": "Ten times as bright, and the stage says so (G)",
    "hold": "Hold picture",
    "hold.off": "Let go",
    "hold.help": "Keep this picture beside the next run (H)",
    "replay": "Slow replay",
    "replay.help": "Show the break again at 1/50 of real speed (B)",
    "save": "Save picture",
    "save.help": "Save this picture as a PNG file in your Pictures folder (Ctrl+S)",
    "saved": "Saved as {path}",
    "unsaved": "Could not save the picture: {problem}",
    "time": "Time",
    "time.help": "Drag to go back to any instant of this run",
    "speed": "Speed",
    "speed.help": "How fast the model's time runs (Up and Down arrows)",
    "speed.real": "real speed",
    "speed.slow": "1/{part} of real speed",
    "speed.fast": "{times} × real speed",
    "speed.behind": "{speed}; this machine reaches {real}",
    "scene": "Scene",
    "unloaded": "The scene {scene} cannot be shown: {problem}",
    "page.run": "Run",
    "page.piece": "Piece",
    "page.light": "View",
    "page.numbers": "Numbers",
    "piece.note": "A change here starts the run again.",
    "defaults": "Back to the defaults",
    "light.turn": "Turn the polarizers",
    "light.turn.help": "Angle of the pair of polarizers ([ and ])",
    "light.parallel": "Parallel polarizers (bright field)",
    "light.parallel.help": "Off: crossed, so that unstressed glass is dark (X)",
    "light.quarter": "Quarter-wave plates (no dark crosses)",
    "light.quarter.help": "Circular light: the direction of the stress no longer counts (Q)",
    "light.tint": "Tint plate",
    "light.tint.help": "Full-wave plate: small stresses show as colours, the sign too (T)",
    "light.lamp": "Lamp",
    "light.lamp.help": "White light or one colour",
    "light.gain": "Gain",
    "light.gain.help": "Brightens the picture; the stage says so whenever it is not 1",
    "section.choice": "Section shows",
    "section.choice.help": "What the colours of the section mean (S)",
    "section.title": "Cut through the wall",
    "section.stress": "stress {name}",
    "section.heat": "temperature",
    "section.swell": "movement drawn {times} ×, really {really}",
    "section.thick": "wall drawn {times} × thicker",
    "chart.choice": "Chart shows",
    "chart.choice.help": "Which of the curves the chart shows",
    "chart.time": "time",
    "tension": "pulled",
    "compression": "squeezed",
    "mark.drop": "water drop",
    "mark.flame": "flame",
    "mark.score": "score",
    "mark.ring": "hot ring",
    "mark.crack": "crack",
    "mark.squeeze": "squeezed",
    "mark.pull": "pulled",
    "strip.adds": "plate adds",
    "strip.takes": "plate takes away",
    "gain": "brightened {gain} ×",
    "held": "Held at {time}",
    "held.now": "Now",
    "held.change": "{label}: {then} → {now}",
    "held.same": "same settings",
    "yes": "yes",
    "no": "no",
    "none": "–",
    "odds": "{percent} %",
    "odds.under": "under {percent} %",
    "odds.over": "over {percent} %",
    "reset.fault": "Something went wrong and the scene was reset: {problem}",
    "keys": "Space play · ← → step · ↑ ↓ speed · R reset · H hold · B replay · D first button "
    "of the scene · 1 to 9 each of them · S section · G brighten · [ ] turn · X crossed or "
    "parallel · Q quarter-wave plates · T tint plate · Ctrl+S save · F1 these keys · "
    "F2 controls · F11 full screen",
    "audience.title": "Audience",
    "audience.right": "{sign} Right",
    "audience.hand": "{count} hand",
    "audience.hands": "{count} hands",
    "audience.happened": "What happened: {what}",
    "audience.two": "The audience sees {name}.",
    "audience.one": "One screen: the audience sees this window.",
    "audience.gone": "Projector gone: your show goes on here.",
    "audience.unplaced": "The picture does not reach {name}: press Windows+P or look at the cable, "
    "then choose the screen again.",
    # The presenter's pages
    "show.prompts": "What to say, to hold and to mind",
    "show.hold": "In your hand: {what}",
    "show.helper": "Ask for a helper. Brief: {briefing} · Eyewear: {eyewear} · "
    "Stands: {place} · Way out: {exit}",
    "show.last": "This is the last step.",
    "show.coming": "Next: {title}",
    "show.coming.hold": "Next: {title} – take {hold}",
    "show.clock": "clock",
    "show.step_left": "left in this step",
    "show.all_left": "left in all",
    "show.late": "late by {time}",
    "show.clock.spoken": "It is {clock}; left in this step {step}, in all {all}",
    "show.steps": "Steps",
    "show.step.spent": "{spent} of {planned}",
    "show.step.cut": "cut",
    "priority.1": "must stay",
    "priority.2": "should stay",
    "priority.3": "may go",
    "hands.more": "One hand more for {answer}",
    "hands.less": "One hand less for {answer}",
    "mirror": "The audience sees: {state}",
    "hazard.flame": "open flame",
    "hazard.hot-glass": "hot glass",
    "hazard.breakage": "breaking glass",
    "hazard.sharp-edges": "sharp edges",
    "hazard.hot-water": "hot water",
    "hazard.stored-energy": "piece with stored energy",
    "header.back": "◀ Back",
    "header.back.help": "The step or part of a step before (Page up)",
    "header.next": "Next ▶",
    "header.next.help": "The next part of this step, then the next step (Page down)",
    "header.blank": "Blank",
    "header.blank.help": "A dark picture for the audience, and back (B or full stop)",
    "header.freeze": "Freeze",
    "header.freeze.help": "The audience keeps this picture while you change things (Z)",
    "header.return": "Return",
    "header.return.help": "Put back exactly what this step showed before you changed it (F)",
    "header.strip": "More",
    "header.strip.help": "Strip of actions (F5 or Esc)",
    "header.notes": "Notes",
    "header.page": "Page",
    "page.show": "Show",
    "page.steps": "Steps",
    "page.before": "Before",
    "page.between": "Between",
    "page.after": "After",
    "page.keys": "Keys",
    "next.begin": "Begin the show ▶",
    "next.ask": "Put the question ▶",
    "next.count": "Count hands ▶",
    "next.bars": "Show the bars ▶",
    "next.reveal": "Let it happen ▶",
    "next.result": "Show who was right ▶",
    "next.step": "{number}  {title} ▶",
    "next.none": "This is the last step",
    "outcome": "{reading}: {value}",
    "welcome.home": "Please do not try this at home.",
    "audience.state.live": "Live",
    "audience.state.reveal": "Live: the answer",
    "audience.state.frozen": "Frozen",
    "audience.state.blank": "Blank",
    "audience.state.question": "Question",
    "audience.state.card": "Card",
    "audience.state.widget": "Projector card",
    "emergency.title": "We stop here for a moment",
    "emergency.stay": "Please keep calm and listen.",
    "emergency.follow": "Please do what the staff ask you to.",
    "emergency.presenter": "⚠ Emergency: the audience reads a calm card, the model stands still",
    "emergency.missing": "not written down",
    "emergency.back": "The same key, or the entry of the strip, goes back to the show.",
    "contingency.none": "This step has no other way written down.",
    "catch_up.none": "No catch-up line is written down so far.",
    "favourite.stored": "Kept as favourite {number}",
    "favourite.none": "There is no favourite {number} yet: Alt+Shift+{number} keeps this state",
    "return.nothing": "Nothing was changed by hand in this step.",
    # Before, between and after shows
    "ticks": "{title}: {done} of {all}",
    "before.minutes": "Time there is",
    "before.minutes.help": "Less than the sheet asks for: the steps that may go are cut",
    "before.cut": "Left out: {steps}",
    "before.cut.none": "Every step is shown.",
    "before.cut.missing": "Even the steps that must stay take {seconds} s more than there is.",
    "before.rehearsal": "Rehearsal: time each step and propose a cut",
    "before.card": "Projector card on the audience's screen",
    "before.props": "Props",
    "before.samples": "Samples",
    "before.eyewear": "Eyewear",
    "before.helpers": "Helpers",
    "before.cautions": "Cautions",
    "venue.title": "The venue's rules",
    "venue.days": "A review holds for (days)",
    "venue.days.ask": "As your assessment says; without it no review counts.",
    "venue.days.wrong": "Write whole days, 1 to 3660",
    "venue.role": "Role that has reviewed what stands above today, no name",
    "venue.reviewed": "Reviewed today",
    "venue.nothing": "No rule has a value yet: write them first",
    "between.start": "Turnaround begins",
    "between.clock": "Turnaround: {time}",
    "between.reset": "Put back",
    "between.pieces": "Glass counted out and in",
    "between.batch": "Batch",
    "between.number": "Pieces",
    "between.out": "Out",
    "between.back": "Back",
    "between.broken": "Broken",
    "between.delivered": "New",
    "between.stock": "{batch}: {number} in stock",
    "between.none": "Nothing was counted out for this show.",
    "between.no_batch": "No batch is known yet: write one below.",
    "between.new_batch": "New batch: name; kind; glass; thickness in mm",
    "between.batch_form": "Write name; kind; glass; thickness in mm – such as A1; bottles; "
    "soda-lime; 3",
    "between.hot.title": "Hot piece",
    "between.hot": "Put down hot now",
    "after.title": "For the journal",
    "after.heads": "People in the audience",
    "after.count": "Write down",
    "after.question": "An odd question, in one line",
    "after.miss": "A near miss: what, and where",
    "after.breakage": "What broke",
    "after.meant": "It was meant to break",
    "after.kind": "Kind of note",
    "after.note": "A note",
    "after.take": "Take",
    "after.end": "End this show",
    "after.handover": "Save handover page",
    "after.taken": "{kind}: {text}",
    "screens.title": "The audience's screen",
    "screens.swap": "Change the two windows' screens",
    "screens.look": "How both windows look",
    "screens.calm": "Calm: soften bright stripes and sudden changes",
    "screens.calm.help": "For people who react to stripes and flashes. The stage says when a "
    "picture is softened.",
    "screens.still": "No fading from one picture to the next",
    "screens.high_contrast": "High contrast",
    "screens.scale": "Size of all words",
    "screens.times": "{times} ×",
    "screens.second": "Second language of the captions",
    "screens.no_second": "none",
    "page.screens": "Screens",
    "steps.fit": "Fit into the time left",
    "steps.whole": "Take every step in again",
    "steps.save": "Save this state as a step",
    "steps.pace": "{title} took {took} of {planned}",
    "steps.rehearsed": "Rehearsed so far: {paces}. To fit the slot, leave out: {dropped}",
    "choose.title": "Which show?",
    "choose.sheet": "{minutes} min · {steps} steps · {hazards}",
    "choose.no_hazard": "no flame, no breakage",
    "choose.free": "Scenes without a sheet",
    "choose.free.help": "Every scene to choose from, no clock, no notes.",
    "choose.go_on": "Go on: {title}",
    "choose.go_on.help": "{sheet} was interrupted; {spent} of it are over.",
    "choose.other": "Open another sheet …",
    "close.again": "A show is running: close the window again within {seconds} s to leave it. "
    "It can be gone on with.",
    "keeping.none": "Nothing can be saved: the data folder cannot be written. The show goes on.",
    "step.no_sheet": "There is no sheet to save a step in",
    "step.saved": "Saved as the last step of {sheet}; its words are still to be written",
    "sheet.broken": "The sheet has a mistake and stays as it was: {problem}",
    "sheet.reloaded": "The sheet was saved and has been read again.",
    "journal.disk": "written to the disk",
    "journal.memory": "kept in memory alone: the disk cannot be written",
    "journal.line": "Show {show} of the journal, {place}. Roles only, no names.",
    "journal.no_show": "No show has begun yet: there is nothing to write it to",
    "between.hot.none": "No reminder from the model for this piece. It may be hot all the same: "
    "tongs and mat until it has been checked",
    "note.state": "How it was left",
    "note.fault": "Fault",
    "note.order": "To order",
    "note.note": "Note",
    "return.wait": "One moment: what was shown is being put back.",
    "autosave.broken": "{file} could not be read and is left out.",
    "autosave.unsaved": "The show goes on, but cannot save itself: {problem}",
    "autosave.second": "Lehrlight is open already: this window does not save its show.",
    # Keys, the remote, the strip of actions and the page that teaches keys
    "key.page_down": "Page Down",
    "key.page_up": "Page Up",
    "key.left": "Left arrow",
    "key.right": "Right arrow",
    "key.up": "Up arrow",
    "key.down": "Down arrow",
    "key.stop": "Full stop (.)",
    "key.comma": "Comma (,)",
    "key.space": "Space",
    "key.range": "{first} to {last}",
    "act.next": "Next",
    "act.back": "Back",
    "act.blank": "Blank",
    "act.strip": "Strip of actions",
    "act.return": "Back to this step's state",
    "act.freeze": "Freeze the picture",
    "act.catch_up": "Catch-up line",
    "act.contingency": "It went differently",
    "act.captions": "Captions",
    "act.jump": "Jump to a step",
    "act.emergency": "Emergency card",
    "act.count": "A hand for answer {number}",
    "act.less": "A hand less for answer {number}",
    "act.play": "Play or pause",
    "act.step_back": "One instant back",
    "act.step_on": "One instant on",
    "act.faster": "Faster",
    "act.slower": "Slower",
    "act.reset": "Restart the scene",
    "act.hold": "Hold this picture",
    "act.replay": "Slow replay of the break",
    "act.first_button": "First button of the scene",
    "act.button": "Button {number} of the scene",
    "act.section": "What the section shows",
    "act.brighten": "Brighten a faint picture",
    "act.turn_back": "Turn the polarizers back",
    "act.turn_on": "Turn the polarizers on",
    "act.cross": "Crossed or parallel",
    "act.quarter": "Quarter-wave plates",
    "act.tint": "Tint plate",
    "act.favourite": "Favourite {number}",
    "act.store": "Keep as favourite {number}",
    "act.save": "Save the picture",
    "act.keys": "Show the keys",
    "act.controls": "Hide or show the controls",
    "act.full_screen": "Full screen",
    "actions.title": "Actions",
    "actions.close": "Close this strip",
    "actions.walk": "Next and Back walk, Blank confirms ({next}, {back}, {blank}).",
    "actions.alone": "Closes by itself {seconds} s after the last press.",
    "actions.here": "{label}, {place} of {count}",
    "teach.title": "Keys",
    "teach.help": "Choose Teach, then press the button of the remote or the key.",
    "teach.remote": "Presentation remote",
    "teach.show": "The show",
    "teach.question": "While a question is open",
    "teach.scene": "The scene",
    "teach.view": "Light and view",
    "teach.favourites": "Favourites",
    "teach.window": "The window",
    "teach.none": "no key",
    "teach.teach": "Teach",
    "teach.teach.help": "Teach one more key for: {label}",
    "teach.clear": "Take its keys from: {label}",
    "teach.press": "Press the button for “{label}” now.",
    "teach.cancel": "Cancel",
    "teach.cancelled": "Nothing was changed.",
    "teach.clash": "{key} belongs to {others}. Take it for “{label}”?",
    "teach.take": "Take it",
    "teach.keep": "Leave it",
    "teach.done": "{key} is now “{label}”.",
    "teach.moved": "{key} is now “{label}”, no longer {others}.",
    "teach.cleared": "“{label}” has no key now.",
    "teach.defaults": "All keys are as at first.",
    "teach.characters": "Letters, digits, signs as keys",
    "teach.characters.help": "Off: a letter does nothing by itself, for people who speak to their "
    "computer or hit keys by chance. A sign that the remote sends still works.",
    "teach.broken": "The taught keys cannot be read, so all keys are as at first: {problem}",
    # Projector card and calm mode.
    "projector.title": "Projector card: set brightness until neighbouring steps can be told apart.",
    "projector.grey": "Grey steps of retardation, as the polarizers show them",
    "projector.gain": "The same, brightened {gain} times",
    "projector.black_white": "black, white",
    "projector.fine": "Focus: lines of 1, 2 and 3 pixels",
    "projector.print": "Fine print, {px} pixels high: if the first row can read this, the focus is "
    "sharp and the picture is not scaled.",
    "projector.edges": "Frames at 0, 2.5 and 5 % from the edge: all three must be seen whole",
    "projector.edge": "{percent} %",
    "projector.letters": "Letters for the back row, from there each line must be easy to read",
    "projector.arcmin": "{arcmin}′, {px} px",
    "projector.too_big": "No room here for {said} and more.",
    "projector.hall": "Picture {height} m high, back row at {depth} m",
    "projector.unknown": "Picture's height or hall's depth not given: no letter sizes.",
    "calm": "Calm picture",
    "calm.help": "Dims bright stripes and lets nothing come up suddenly, below published limits",
    "calm.on": "Calm picture: changes are slowed",
    "calm.dimmed": "Calm picture: dimmed to {percent} % because of its stripes",
    "language": "Language of the windows",
    "language.system": "As the system",
    "language.later": "The windows speak another language from the next start on; what is shown "
    "stays as it is.",
    # Prep bench.
    "bench": "Prep bench",
    "bench.help": "Plan the glass, the oven and the flame before the doors open.",
    "bench.title": "Lehrlight: prep bench",
    "bench.questions": "Questions",
    "bench.item": "{number}  {title}",
    "bench.item.help": "Ctrl+{number}",
    "bench.flame": "Time in the flame",
    "bench.oven": "Oven programme",
    "bench.toughness": "Toughness of a sample",
    "bench.bubbles": "Bubble batch",
    "bench.colour": "Reading a colour",
    "bench.matching": "Matching my own piece",
    "bench.map": "What-if map",
    "bench.keys": "Ctrl+1 to 7 pages · Ctrl+L this list · Tab on · Ctrl+P print · Esc stop",
    "bench.inputs": "What is put in",
    "bench.answer": "Answer; arrow keys scroll",
    "bench.limits": "Holds only so far",
    "bench.chart": "Chart of {up} over {across}: {curves}",
    "bench.range": "from {low} to {high}",
    "bench.no_range": "hardly any spread",
    "bench.span": "{low} to {high}",
    "bench.hardly": "hardly ever",
    "bench.nearly": "nearly always",
    "bench.in_ten": "about {count} in 10",
    "bench.in_twenty": "about {count} in 20",
    "bench.old": "The inputs have changed: what stands here answers the earlier ones.",
    "bench.no_answer": "No answer: one of the inputs cannot be; the line beside it says which.",
    "bench.working": "Working it out …",
    "bench.progress": "Runs that make the ranges sharp",
    "bench.done": "{done} of {most}",
    "bench.stop": "Stop",
    "bench.again": "Go on",
    "bench.stopped": "Stopped before there was an answer.",
    "bench.stopped.at": "Stopped; what stands here is what was known by then. {state}",
    "bench.print": "Print …",
    "bench.print.help": "This answer as a PDF, with inputs, limits and caution (Ctrl+P)",
    "bench.unprinted": "Could not print: {problem}",
    "bench.fault": "Something went wrong: {problem}",
    "bench.lost": "the process that works it out has ended; ask again",
    "bench.pick.bare": "Pick the colour that you see without the tint plate",
    "bench.pick.plate": "Pick the colour that you see with the tint plate in",
    "bench.picker.help": "Left and Right: 5 nm; Page Up and Page Down: 50 nm; or the mouse",
    "bench.tint": "{nm} nm: plain {bare}; with the plate {adds} where it adds, {takes} where it "
    "takes away (patches from left to right)",
    "bench.keep": "Keep as device",
    "bench.keep.over": "Replace it",
    "bench.keep.name": "Name of your device, such as Jets of the big frame",
    "bench.keep.help": "Every scene and 'lehrlight solve --device' can use it then",
    "bench.keep.there": "'{name}' is there already: press again to put this value in its place.",
    "bench.kept": "'{name}' is kept; use it with --device {id}. File: {path}",
    "bench.map.help": "How does a reading change over two settings, and where does the verdict "
    "change?",
    "bench.map.across": "Across",
    "bench.map.up": "Up",
    "bench.map.from": "from",
    "bench.map.to": "to",
    "bench.map.points": "points",
    "bench.map.reading": "Reading in colours",
    "bench.map.verdict": "Border of",
    "bench.map.no_verdict": "No border",
    "bench.map.run": "Make the map",
    "bench.map.begins": "The processes are starting …",
    "bench.map.running": "{done} of {count} points are done and kept on the disk.",
    "bench.map.stopping": "Stopping after the points in hand …",
    "bench.map.whole": "All {count} points are done; {refused} of them cannot be.",
    "bench.map.part": "Stopped: {done} of {count} points are done. The same map goes on from here, "
    "also another day.",
    "bench.map.no_border": "The verdict is the same all over, or no verdict: there is no border.",
    "bench.map.other": "Other choices stand on the left than those of the map shown.",
    "bench.map.colours": "Colours: {reading}",
    "bench.map.refused": "cannot be",
    "bench.map.not_yet": "not run yet",
    "bench.map.point": "Arrow keys choose a point; the line below tells its values.",
    "bench.csv": "Save table …",
    "bench.csv.help": "All points with the settings as a CSV file (Ctrl+S)",
    # Outreach: lessons.
    "outreach": "Outreach",
    "outreach.help": "A whole lesson for a class: no flame, no breakage, predictions and tasks.",
    "outreach.choose": "Which lesson?",
    "outreach.choose.note": "{ages} · {minutes} min · {steps} steps",
    "outreach.choose.other": "Open another lesson …",
    "outreach.begin": "Begin the lesson ▶",
    "outreach.drive": "Hand over to the group ▶",
    "outreach.share": "Back to the lesson ▶",
    "outreach.back": "◀ Back to the lesson",
    "outreach.refused": "“{label}” is not part of this lesson here.",
    "outreach.ages": "Ages {low} to {high}",
    "outreach.adults": "For adults",
    "outreach.paper": "First write your own letter on paper. Nobody speaks yet.",
    "outreach.count": "Hands up for the letter that you wrote.",
    "outreach.bars": "Nobody is told yet. Let us look.",
    "outreach.again": "Now vote once more",
    "outreach.again.paper": "Write a second letter beside the first, in silence.",
    "outreach.again.line": "Read the letter that you wrote first. Would you write it again?",
    "outreach.exit": "Write your answer on the slip before you go.",
    "outreach.may": "You may change: {labels}",
    "outreach.may.title": "You may change",
    "outreach.first": "First agree on what you would try, and write it down.",
    "outreach.tell": "Tell the others: what did you change, and what happened?",
    "outreach.why": "Tell the others: what did you change, and why?",
    "outreach.try": "Try it",
    "outreach.look": "Show the result",
    "outreach.working": "The model works it out …",
    "outreach.fresh": "Next group",
    "outreach.hint": "Hint",
    "outreach.tries": "Tries: {count}",
    "outreach.ready": "No try yet",
    "outreach.reached": "✓ Reached at try {count}",
    "outreach.not_yet": "✗ Not reached yet",
    "outreach.goal.met": "✓ {label}: {value}",
    "outreach.goal.missed": "✗ {label}: {value}",
    "outreach.best": "Best so far: {label} {value}",
    "outreach.by": "Groups that reached it: {count} of {groups}",
    "outreach.peak": "Largest retardation in the middle",
    "outreach.goal.line": "{ask}  ·  {tries}",
    "outreach.failed": "The model cannot work that out: {problem}",
    "outreach.interrupted": "Tries end with the task: begin the next one with Try it.",
    "page.votes": "Votes",
    "page.handout": "Paper",
    "page.lesson": "Lesson",
    "votes.title": "Votes before and after",
    "votes.none": "No hands have been counted yet.",
    "votes.before": "before",
    "votes.after": "after",
    "votes.after.none": "not counted yet",
    "votes.right": "✓ {answer}",
    "votes.count": "{count} ({percent} %)",
    "votes.note": "Hands alone are counted: no names, and nobody can be told from these numbers.",
    "votes.gain": "Gained {percent} % of what could be gained",
    "votes.save": "Save as a table …",
    "votes.kept": "Kept in {path}",
    "votes.unkept": "The votes are not on the disk: save them as a table before you close.",
    "votes.close": "The votes are not on the disk. Close again within {seconds} s to leave them.",
    "handout.title": "Paper for the class",
    "handout.help": "A worksheet and its answer key come from the same number: the class gets the "
    "one, you keep the other. Print in black and white.",
    "handout.seed": "Number of the worksheet",
    "handout.other": "Another number",
    "handout.paper": "Paper size",
    "handout.save": "Save worksheet and key …",
    "handout.busy": "The model computes every number of the worksheet …",
    "handout.saved": "Saved: {paths}",
    "handout.kit": "Kit",
    "handout.beliefs": "What pupils commonly believe, and how to meet it",
    "hazard.allergens": "allergens",
    "hazard.small-parts": "small parts",
    "hazard.warm-lamp": "warm lamp",
}

LEAST_ODDS = 0.001
"""Smallest odds that are told in numbers."""

_SHOWN_UNITS = {"C": "°C", "deg": "°", "um": "µm", "kW/m2": "kW/m²", "W/m2K": "W/m²K", "MPa": "MPa"}


def said(context: str, name: str, english: str) -> str:
    """`english` in the language in use; `context` and `name` are those of its translation."""
    return QCoreApplication.translate(context, english, name) if english else english


def decimal_point() -> str:
    """Decimal sign of the language in use."""
    return said(LANGUAGE, DECIMAL, SAMPLE)[1]


def text(name: str, /, **values: Any) -> str:
    """Words called `name`, with values put in."""
    english = ENGLISH[name]
    found = said(UI, name, english)
    if found == english:
        return english.format(**values)
    return Template(found, english=english, decimal_point=decimal_point()).format(**values)


class Table(Mapping[str, str]):
    """A table of English texts in the language in use; values are put in as in English.

    Parameters
    ----------
    context : str
        Of the translations, whose ids are the table's names after `prefix`.
    english : mapping
    prefix : str
    word : callable, optional
        Says a word that is put in and is none of the table's texts; default: `colour`.
    """

    def __init__(
        self,
        context: str,
        english: Mapping[str, str],
        prefix: str = "",
        word: Callable[[str], str] | None = None,
    ) -> None:
        self._context, self._english, self._prefix = context, english, prefix
        self._other = word

    def __getitem__(self, name: str) -> str:
        english = self._english[name]
        found = said(self._context, self._prefix + name, english)
        if found == english:
            return english
        return Template(found, english=english, decimal_point=decimal_point(), word=self.word)

    def __iter__(self) -> Iterator[str]:
        return iter(self._english)

    def __len__(self) -> int:
        return len(self._english)

    def word(self, english: str) -> str:
        """A word that is put into a text, if it is itself a text of the table."""
        for name, text in self._english.items():
            if text == english:
                return said(self._context, self._prefix + name, english)
        found = colour(english)
        return self._other(english) if found == english and self._other is not None else found


def title(scene: Scene) -> str:
    """Name of a scene."""
    return said(scene_context(scene), "title", scene.title)


def scene_name(id: str) -> str:
    """Short name of a scene that need not be loaded."""
    return said(SHORT, id, choice(id))


def label(context: str, what: Setting | Reading | Action) -> str:
    """Name of a setting, a reading, a curve or a button; `context` is that of its record."""
    return said(context, label_id(what), what.label)


def help_of(context: str, what: Setting | Reading) -> str:
    """The sentence that explains a setting or a reading; "" where there is none."""
    return said(context, help_id(what), what.help)


def texts(scene: Scene) -> Mapping[str, str]:
    """Texts of a scene by id."""
    return Table(scene_context(scene), scene.texts, text_id(""))


def colour(english: str) -> str:
    """An interference colour, or a direction of stress; anything else stays as it is."""
    from demo_app.content.describe_words import ENGLISH as DESCRIBED

    plain = english[:1].lower() + english[1:]
    for name, text in DESCRIBED.items():
        if text == plain and name.startswith("colour."):
            found = said(DESCRIBE, name, plain)
            return found if english == plain else found[:1].upper() + found[1:]
    for name in ("tension", "compression"):
        if ENGLISH[name] == english:
            return said(UI, name, english)
    return english


def unit(name: str) -> str:
    """Unit as the screen writes it."""
    return _SHOWN_UNITS.get(name, name)


def number(value: float, digits: int = 3) -> str:
    """`plain_number` with the decimal sign of the language in use."""
    return plain_number(value, digits).replace(".", decimal_point())


def plain_number(value: float, digits: int = 3) -> str:
    """Number in at most `digits` digits and three decimals, with a true minus sign."""
    if not math.isfinite(value):
        return ENGLISH["none"]
    if value == 0:
        return "0"
    decimals = min(max(digits - 1 - math.floor(math.log10(abs(value))), 0), 3)
    written = f"{value:,.{decimals}f}"
    if "." in written:
        written = written.rstrip("0").rstrip(".")
    written = "0" if written in {"-0", ""} else written
    return written.replace("-", "−").replace(",", "\u202f")


def quantity(value: float, name: str, digits: int = 3) -> str:
    """Number with its unit."""
    return with_unit(number(value, digits), name)


def with_unit(number: str, name: str) -> str:
    """A written number with its unit."""
    shown = unit(name)
    if not shown:
        return number
    return number + ("" if shown == "°" else "\u00a0") + shown


def clock(seconds: float) -> str:
    """Model time: seconds with two decimals, then minutes, then hours."""
    if seconds < 100:
        return f"{seconds:.2f}".replace(".", decimal_point()) + "\u00a0s"
    if seconds < 7200:
        return f"{int(seconds // 60)}\u00a0min {int(seconds % 60):02d}\u00a0s"
    return f"{int(seconds // 3600)}\u00a0h {int(seconds % 3600 // 60):02d}\u00a0min"


def day(value: datetime.date) -> str:
    """A day as the language in use writes it; in English as files do, which no one mistakes."""
    locale = QLocale()
    if said(LANGUAGE, DECIMAL, SAMPLE) == SAMPLE:
        return value.isoformat()
    return locale.toString(
        QDate(value.year, value.month, value.day), QLocale.FormatType.ShortFormat
    )


def speed(value: float) -> str:
    """Speed as a person says it."""
    if abs(value - 1) < 1e-9:
        return text("speed.real")
    if value < 1:
        return text("speed.slow", part=number(float(f"{1 / value:.2g}"), 2))
    return text("speed.fast", times=number(value, 2))


def value_of(setting: Setting, value: Value, context: str = "") -> str:
    """Value of a setting with its unit; `context` is that of its record's translations."""
    if isinstance(value, bool):
        return text("yes" if value else "no")
    if isinstance(value, str):
        return ", ".join(choice_of(context, setting, one) for one in value.split(","))
    return quantity(value, setting.unit, 4)


def choice(name: str) -> str:
    """A choice's English word: its id without dashes, first letter large."""
    plain = name.replace("-", " ").replace("_", " ")
    return plain[:1].upper() + plain[1:]


def choice_of(context: str, setting: Setting, name: str) -> str:
    """A choice's word."""
    return said(context, choice_id(setting, name), choice(name))


def reading(spec: Reading, value: Any, context: str = "") -> str:
    """Value of a reading with its unit; None is a dash."""
    if value is None:
        return text("none")
    if isinstance(value, bool):
        return text("yes" if value else "no")
    if isinstance(value, str):
        return ", ".join(said(context, value_id(spec, one), one) for one in value.split(", "))
    if "_probability" in spec.name:
        return odds(float(value))
    return quantity(float(value), spec.unit)


def odds(value: float) -> str:
    """Probability in percent; never nought or all, as no glass is certain either way."""
    if value < LEAST_ODDS:
        return text("odds.under", percent=number(100 * LEAST_ODDS))
    if value > 1 - LEAST_ODDS:
        return text("odds.over", percent=number(100 * (1 - LEAST_ODDS)))
    return text("odds", percent=number(100 * value))


def sentence(scene: Scene, message: Message) -> str:
    """A scene's sentence in the language in use."""
    return message.words(texts(scene))


def difference(then: Any, now: Any, context: str = "") -> str:
    """Settings that differ between a held picture and the live one."""
    changes = [
        text(
            "held.change",
            label=label(context, setting),
            then=value_of(setting, getattr(then, setting.name), context),
            now=value_of(setting, getattr(now, setting.name), context),
        )
        for setting in settings_of(type(now))
        if getattr(then, setting.name) != getattr(now, setting.name)
    ]
    return "; ".join(changes) if changes else text("held.same")
