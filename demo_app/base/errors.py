"""The one kind of error that a person can mend."""


class InputError(ValueError):
    """Something that a person wrote or asked for cannot be used.

    Parameters
    ----------
    problem : str
        What is wrong, in plain words, without a full stop.
    place : str
        Where: a file with its line, a setting's name, a command-line word.
    remedy : str
        What to write or do instead.
    """

    def __init__(self, problem: str, *, place: str, remedy: str) -> None:
        super().__init__(f"{place}: {problem}; {remedy}")
        self.problem = problem
        self.place = place
        self.remedy = remedy
