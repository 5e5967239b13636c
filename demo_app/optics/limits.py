"""Published limits for pictures that may harm photosensitive people, as one frozen record.

Sources
-------
Harding, Wilkins, Erba, Barkley and Fisher, Epilepsia 46 (9), 2005, 1423-1425 (consensus of an
expert group): stripes, clearly discernible, more than five light-dark pairs in any orientation
(eight if they stand still or drift one way), lightest stripe above 50 cd/m2, for 0.5 s or longer,
over more than 0.006 sr.
Wilkins, Emmett and Harding, Epilepsia 46 (8), 2005, 1212-1218: more than a quarter of the screen,
50 cd/m2, 0.5 s.
WCAG 2.2, 2.3.1 and its definition of the general and red flash thresholds: no more than three
flashes in a second over more than a quarter of any 10 degrees of the visual field; a flash is a
pair of opposing changes of a tenth of the largest luminance, the darker below 0.80; red: a state
with R / (R + G + B) of 0.8 or more, and 0.2 of difference in the CIE 1976 UCS diagram.
From memory: ITU-R BT.1702 and the British broadcasters' guidance, whose five light-dark pairs agree
with the above; and Wilkins 1980, after whom stripes of less than a tenth of (Michelson) contrast
provoke nothing, which is what is taken here for "clearly discernible".
"""

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Limits:
    """What a picture or a sequence of them must stay below.

    Parameters
    ----------
    pairs : int
        Light-dark pairs that are allowed. The figure for stripes that move is the default, for
        those of a live run mostly do.
    area : float
        Share of the screen that stripes may take.
    bright_cd_m2 : float
        Luminance up to which the lightest stripe may go, cd/m2.
    seconds : float
        For how long stripes may be seen, s.
    contrast : float
        Michelson contrast from which on stripes count as clearly discernible.
    screen_cd_m2 : float
        Luminance of full white on the screen in use. The default is a bright one; see
        `screen_luminance`.
    flare_cd_m2 : float
        Stray light of the hall on the screen, which lowers contrast in the dark.
    flashes : int
        Flashes allowed in one second.
    change : float
        Change of relative luminance that counts.
    dark : float
        Relative luminance below which the darker state must lie to count.
    red : float
        R / (R + G + B) from which on a colour is a saturated red.
    chroma : float
        Distance in the CIE 1976 UCS diagram that counts.
    field : float
        Side of 10 degrees of visual field as a share of the picture's: 341 x 256 pixels of
        1024 x 768.
    """

    pairs: int = 5
    area: float = 0.25
    bright_cd_m2: float = 50.0
    seconds: float = 0.5
    contrast: float = 0.1
    screen_cd_m2: float = 200.0
    flare_cd_m2: float = 1.0
    flashes: int = 3
    change: float = 0.1
    dark: float = 0.8
    red: float = 0.8
    chroma: float = 0.2
    field: float = 1 / 3


LIMITS = Limits()


def screen_luminance(lumens: float, width_m: float, height_m: float, gain: float = 1.0) -> float:
    """Luminance of full white that a projector makes on a matt screen, cd/m2.

    The illuminance is ``lumens / area``, and a matt (Lambertian) screen of that gain gives
    ``gain / pi`` of it: 4000 lm on 3.0 m x 1.7 m make 250 cd/m2.
    """
    return gain * lumens / (math.pi * width_m * height_m)
