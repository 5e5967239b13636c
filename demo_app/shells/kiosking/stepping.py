"""What a step's panel says and offers in each of its phases."""

from collections.abc import Sequence

from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Control, KioskStep, Spoken
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import Setting, settings_of
from demo_app.shells.kiosking.where import DO, PREDICT, SEE, TRY, WHY, Where
from demo_app.ui.kiosk.step_page import StepPage
from demo_app.ui.kiosk.stepper import ChoiceRow, NumberStepper, Worked
from demo_app.ui.languages import Language

PLACES = {PREDICT: 0, DO: 1, SEE: 2, WHY: 3, TRY: 3}
HEADINGS = {PREDICT: "predict", DO: "do", SEE: "see", WHY: "why", TRY: "do"}


def show_step(
    page: StepPage, where: Where, step: KioskStep, spoken: Spoken, scene: Scene, language: Language
) -> None:
    """Fill a step's panel for where a visitor is."""
    words = spoken.words
    page.show_words(
        PLACES[where.phase], step.title, words[HEADINGS[where.phase]], lines(where, step, spoken)
    )
    asking = where.phase == PREDICT
    page.show_answers([one.text for one in step.question.answers] if asking else [])
    acts, main = {
        PREDICT: ([], ""),
        DO: ([("do", step.do)], "do"),
        SEE: ([("again", words["again"]), ("next", words["next"])], "next"),
        WHY: ([("try", words["do"]), ("other", words["other_steps"])], "other"),
        TRY: ([("again", words["again"]), ("other", words["other_steps"])], "again"),
    }[where.phase]
    page.show_acts(acts, main)
    if where.phase == TRY:
        page.show_controls(lambda parent: _controls(parent, step, spoken, scene, language))
    else:
        page.show_controls(None)


def lines(where: Where, step: KioskStep, spoken: Spoken) -> list[str]:
    """The sentences of a phase."""
    words, answers = spoken.words, step.question.answers
    if where.phase == PREDICT:
        return [step.question.ask]
    if where.phase == DO:
        chosen = "" if where.prediction is None else answers[where.prediction].text
        return [spoken.word("your_prediction", answer=chosen), step.see]
    if where.phase == SEE:
        return [step.see]
    if where.phase == TRY:
        return [step.touch]
    if where.outcome is None:
        return [step.why]
    verdict = {True: "right", False: "surprise", None: "no_answer"}[where.right]
    happened = spoken.word("happened", answer=answers[where.outcome.right].text)
    return [words[verdict], happened, step.why]


def _controls(
    parent: QWidget, step: KioskStep, spoken: Spoken, scene: Scene, language: Language
) -> Sequence[Worked]:
    by_name = {one.name: one for one in settings_of(scene.settings)}
    known = {**step.settings, **step.question.settings}
    made = []
    for control in step.controls:
        setting = by_name[control.setting]
        worked = _worked(parent, setting, control, spoken, language)
        worked.show_value(known.get(setting.name, setting.default))
        made.append(worked)
    return made


def _worked(
    parent: QWidget, setting: Setting, control: Control, spoken: Spoken, language: Language
) -> Worked:
    if isinstance(setting.default, (bool, str)):
        return ChoiceRow(setting, control, parent, usual=spoken.words)
    return NumberStepper(
        setting,
        control,
        parent,
        more=spoken.word("more", label=control.label),
        less=spoken.word("less", label=control.label),
        quantity=lambda value, unit: language.quantity(value, unit, 4),
    )
