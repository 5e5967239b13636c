"""What the hands do, and with what."""

from dataclasses import dataclass

from demo_app.base.errors import InputError
from demo_app.physics.beams import bowing_limit
from demo_app.physics.material_files import material, material_names
from demo_app.scenes.settings import choice, number

LENGTH_MM, HEIGHT_MM, RADIUS_MM = 140.0, 20.0, 25.0
"""The bar, and the disk."""
SLICE_MM = 12.0
"""Height of the slice: the thickness of the plate that it is cut from."""
INNER_MM, OUTER_MM, PAD_MM = 60.0, 120.0, 6.0
"""Distances of the pads that bend a bar (four-point: as EN 1288-3, scaled), and their width."""
DISK_PAD_MM = 4.0
LARGEST_N = 5000.0
KINDS = (
    "bar-squeezed",
    "bar-pulled",
    "bar-bent",
    "bar-bent-three",
    "disk-squeezed",
    "locked-in",
)
STRIPS = {"bar-squeezed", "bar-pulled"}
BENT = {"bar-bent", "bar-bent-three"}


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    kind: str = choice(
        "What is done",
        "bar-bent",
        KINDS,
        help="A bar squeezed, pulled, bent over four or three pads; a disk squeezed across; or a "
        "toughened slice that nobody touches.",
        live=False,
    )
    material: str = choice(
        "Material", "soda-lime", material_names(), help="What it is made of.", live=False
    )
    load: float = number(
        "Force of the hands",
        "N",
        800,
        0,
        LARGEST_N,
        step=50,
        help="Grows to this bit by bit; a piece with locked-in stress is not touched.",
    )
    thickness_mm: float = number(
        "Thickness", "mm", 10, 3, 20, step=0.5, help="Path of the light.", live=False
    )
    crack_mm: float = number(
        "Small cracks",
        "mm",
        0.3,
        0,
        5,
        step=0.1,
        help="Length of two small cracks, from the middle of both edges (in a disk: from its "
        "middle to either side); 0: none. Too small to show in the colours.",
        live=False,
    )
    jet_W_m2K: float = number(
        "Jets",
        "W/m²K",
        200,
        10,
        500,
        step=10,
        help="How hard the slice's plate was blown with cold air; for locked-in stress only.",
        live=False,
    )

    def __post_init__(self) -> None:
        """Refuse a squeezed bar that would bow out sideways."""
        if self.kind != "bar-squeezed":
            return
        limit = bowing_limit(
            material(self.material), 1e-3 * LENGTH_MM, 1e-3 * HEIGHT_MM, 1e-3 * self.thickness_mm
        )
        if self.load > limit:
            raise InputError(
                f"a bar as thin as {self.thickness_mm:g} mm bows out sideways at {limit:.0f} N",
                place="load",
                remedy=f"write at most {limit:.0f}, or a thicker bar",
            )

    @property
    def held(self) -> bool:
        """Whether hands hold the piece."""
        return self.kind != "locked-in"

    @property
    def height_mm(self) -> float:
        """Of the cut through the middle, mm."""
        if self.kind == "disk-squeezed":
            return 2 * RADIUS_MM
        return HEIGHT_MM if self.held else SLICE_MM

    @property
    def length_mm(self) -> float:
        """Of the piece, mm."""
        return 2 * RADIUS_MM if self.kind == "disk-squeezed" else LENGTH_MM
