"""Glass by batch: what lies in stock, what went out to a show, and whether all of it came back."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from demo_app.base.errors import InputError
from demo_app.content.journal.lines import count, line, words
from demo_app.content.journal.store import Journal, Row

WAYS = ("delivered", "corrected", "out", "back", "broken")
"""How pieces move: into stock; a recount (may be negative); out to a show; back from it whole;
broken, in a show or in store, and binned."""

_SIGNED = """
SELECT batches.*,
    coalesce(sum(CASE way
        WHEN 'delivered' THEN pieces WHEN 'corrected' THEN pieces WHEN 'back' THEN pieces
        WHEN 'out' THEN -pieces
        WHEN 'broken' THEN CASE WHEN show IS NULL THEN -pieces ELSE 0 END END), 0) AS in_stock
FROM batches LEFT JOIN movements ON movements.batch = batches.id
GROUP BY batches.id ORDER BY batches.name
"""

_BALANCE = """
SELECT batches.name AS batch, batches.kind AS kind, show,
    sum(CASE way WHEN 'out' THEN pieces ELSE 0 END) AS went_out,
    sum(CASE way WHEN 'back' THEN pieces ELSE 0 END) AS came_back,
    sum(CASE way WHEN 'broken' THEN pieces ELSE 0 END) AS broke
FROM movements JOIN batches ON batches.id = movements.batch
WHERE show IS NOT NULL AND (?1 IS NULL OR show = ?1)
GROUP BY batches.id, show ORDER BY show, batches.name
"""

_COUNT = "{batch}: {out} out, {back} back, {broken} broken"
ENGLISH: Mapping[str, str] = MappingProxyType(
    {
        "even": f"{_COUNT}: the count balances",
        "short": f"{_COUNT}: {{apart}} not found yet, look for them before anybody comes in",
        "over": f"{_COUNT}: {{apart}} more than went out, count again",
    }
)
"""What is said of a count."""


@dataclass(frozen=True)
class Stock:
    """What lies in stock of a batch; `thickness_mm` is None where it has none."""

    number: int
    batch: str
    kind: str
    glass: str
    thickness_mm: float | None
    in_stock: int
    order_below: int

    @property
    def short(self) -> bool:
        """Whether more should be ordered."""
        return self.in_stock < self.order_below

    @property
    def wrong(self) -> bool:
        """Whether more went than there was: a count is wrong somewhere."""
        return self.in_stock < 0


@dataclass(frozen=True)
class Balance:
    """Pieces of a batch in one show."""

    show: int
    batch: str
    kind: str
    went_out: int
    came_back: int
    broke: int

    @property
    def missing(self) -> int:
        """Pieces that nobody has counted in; negative if more came than went."""
        return self.went_out - self.came_back - self.broke

    @property
    def words(self) -> str:
        """`told` in English."""
        return self.told(ENGLISH)

    def told(self, texts: Mapping[str, str]) -> str:
        """The count in one line by `ENGLISH` in some language; what does not balance is told."""
        line = "short" if self.missing > 0 else "over" if self.missing < 0 else "even"
        return texts[line].format(
            batch=self.batch,
            out=self.went_out,
            back=self.came_back,
            broken=self.broke,
            apart=abs(self.missing),
        )


def add_batch(
    journal: Journal,
    name: str,
    kind: str,
    glass: str,
    thickness_mm: float | None = None,
    *,
    order_below: int = 0,
) -> int:
    """A batch of pieces that are alike.

    Parameters
    ----------
    journal : Journal
        Where it is written.
    name : str
        What stands on its box; unique.
    kind : str
        Bottles, plates, flasks.
    glass : str
        Of what.
    thickness_mm : float, optional
        Wall or plate.
    order_below : int
        With fewer in stock it is on the handover page's list of what to order.

    Raises
    ------
    InputError
        If a batch has that name, or a value cannot be.
    """
    said = words(name, "batch")
    if journal.rows("SELECT id FROM batches WHERE name = ?", said):
        raise InputError(f"'{said}' is there already", place="batch", remedy="give another name")
    if thickness_mm is not None and not 0 < thickness_mm < 1000:
        raise InputError(
            f"{thickness_mm} cannot be", place="thickness_mm", remedy="write 0.1 to 1000 mm"
        )
    return journal.insert(
        "batches",
        name=said,
        kind=words(kind, "kind"),
        glass=line(glass, "glass"),
        thickness_mm=None if thickness_mm is None else float(thickness_mm),
        order_below=count(order_below, "order_below"),
    )


def move(
    journal: Journal,
    batch: str,
    way: str,
    pieces: int,
    now: float,
    *,
    show: int | None = None,
    note: str = "",
) -> int:
    """Pieces of a batch go one of `WAYS`.

    Raises
    ------
    InputError
        If the batch or the way is unknown, or the count cannot be.
    """
    if way not in WAYS:
        raise InputError(
            f"'{way}' is not known", place="way", remedy=f"write one of {', '.join(WAYS)}"
        )
    if way in ("out", "back") and show is None:
        raise InputError("no show is named", place=way, remedy="say which show it is for")
    if way == "corrected" and pieces < 0:
        count(-pieces, "pieces", 1)
    else:
        count(pieces, "pieces", 1)
    return journal.insert(
        "movements",
        batch=_batch(journal, batch)["id"],
        show=show,
        at=float(now),
        way=way,
        pieces=pieces,
        note=line(note, "note"),
    )


def stock(journal: Journal) -> tuple[Stock, ...]:
    """All batches with what lies in stock, by name."""
    return tuple(
        Stock(
            row["id"],
            row["name"],
            row["kind"],
            row["glass"],
            row["thickness_mm"],
            row["in_stock"],
            row["order_below"],
        )
        for row in journal.rows(_SIGNED)
    )


def balances(journal: Journal, show: int | None = None) -> tuple[Balance, ...]:
    """Glass counted out and in, a line for each batch and show; of one show, or of all."""
    return tuple(Balance(**row) for row in journal.rows(_BALANCE, show))


def _batch(journal: Journal, name: str) -> Row:
    found = journal.rows("SELECT * FROM batches WHERE name = ?", name)
    if not found:
        known = ", ".join(row["name"] for row in journal.rows("SELECT name FROM batches"))
        raise InputError(
            f"no batch is called '{name}'",
            place="batch",
            remedy=f"write one of {known}" if known else "write down a delivery first",
        )
    return found[0]
