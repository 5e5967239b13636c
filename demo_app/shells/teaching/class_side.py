"""What the class sees of a lesson: questions with their notes, cards, the goal of a challenge."""

from demo_app.shells.presenting.audience_side import AudienceSide
from demo_app.ui.cards import Card
from demo_app.ui.question_view import Poll
from demo_app.ui.request import Frame


class ClassSide(AudienceSide):
    """Keeps the class's view in step with the lesson."""

    _goal = ""

    def show_class(self, poll: Poll | None, card: Card | None, goal: str) -> None:
        """Question, card, goal, frozen, dark.

        Parameters
        ----------
        poll : Poll or None
        card : Card or None
            Lies over everything but an alert.
        goal : str
            Stands below the picture while pupils drive; "" for none.
        """
        running = self._conductor.running
        languages = 1 if self._second is None else 2
        captions = 1 if goal else languages if running.captions else 0
        for view in self.views:
            view.show_question(poll)
            view.show_card(card)
            if view.captions.languages != captions:
                view.set_caption_languages(captions)
            if goal and view.captions.shown() != (goal,):
                view.set_captions([goal])
            view.set_frozen(running.frozen)
            view.set_blank(running.blank)
        self._goal = goal

    def _caption(self, said: str, frame: Frame) -> None:
        if not self._goal:
            super()._caption(said, frame)
