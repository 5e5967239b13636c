"""English for descriptions of pictures: templates and the words that are put into them.

A value that begins with "@" names another text of this table, and several with "|" between them a
list. Every sentence has 25 words at most.
"""

from collections.abc import Mapping

ENGLISH: Mapping[str, str] = {
    "light.gain": "The picture is brightened {gain:g} times.",
    "light.none": "Both polarizing filters are out, so no stress can show.",
    "light.one": "One polarizing filter is out, so no stress can show.",
    "light.tint": "The tint plate is in: what has no stress looks {bare}, and stress changes "
    "that colour.",
    "light.parallel": "The polarizers stand parallel: what has no stress is bright, and stress "
    "darkens it.",
    "light.turned": "The polarizers stand neither crossed nor parallel: what has no stress looks "
    "{bare}.",
    "light.lamp": "The lamp gives {lamp} light only, so bands show and other colours do not.",
    "all_dark": "The piece is all dark: no stress shows anywhere.",
    "all_alike": "The piece looks like the empty field around it, {colour}: no stress shows.",
    "even": "The piece is evenly {colour}, from edge to edge.",
    "faint": "The piece is almost dark; a faint light shows {bright}.",
    "brightest_faint": "The one {place} is almost dark; a faint light shows {bright}.",
    "dark_line": "It is {level} along the upper and lower edges, with a dark line along the "
    "middle.",
    "brightest_dark_line": "The one {place} is {level} along both edges, with a dark line along "
    "the middle.",
    "one_place": "It is {level} {bright} and darker {dark}.",
    "patches": "Light and dark patches alternate; the brightest is {bright}.",
    "several": "{count} pieces; light shows {places}.",
    "several_dark": "{count} pieces, and all of them are dark: no stress shows.",
    "brightest": "The one {place} is {level} {bright} and darker {dark}.",
    "brightest_patches": "The one {place} has light and dark patches, brightest {bright}.",
    "brightest_even": "The one {place} is evenly {colour}.",
    "no_bands": "There are no separate bands; the light is {colours}.",
    "band": "One bright band runs {way}; the light is {colours}.",
    "bands": "{count} bright bands run {way}; the light is {colours}.",
    "grows": "The piece has become brighter than a moment ago: stress grows.",
    "fades": "The piece has become darker than a moment ago: stress fades.",
    "moves": "As bright as a moment ago, but the pattern has moved.",
    "stays": "Nothing has changed since a moment ago.",
    "brighter": "The picture has become brighter than a moment ago.",
    "darker": "The picture has become darker than a moment ago.",
    "crack": "A crack shows {place}.",
    "shards": "The piece is broken; thin lines show the edges of its fragments.",
    "section": "The cut shows pull {pulled}, {pull:.0f} MPa at most, and squeeze {squeezed}, "
    "{squeeze:.0f} MPa at most.",
    "section.close": "The cut shows pull, {pull:.0f} MPa at most, close beside squeeze, "
    "{squeeze:.0f} MPa at most, {pulled}.",
    "section.pull": "The cut shows pull {pulled}, {pull:.0f} MPa at most.",
    "section.squeeze": "The cut shows squeeze {squeezed}, {squeeze:.0f} MPa at most.",
    "arrows": "Arrows mark pull {pulled} and squeeze {squeezed}.",
    "level.bright": "bright",
    "level.dim": "dimly lit",
    "place.both_edges": "along the upper and lower edges",
    "place.top": "along the upper edge",
    "place.bottom": "along the lower edge",
    "place.middle": "along the middle",
    "place.both_ends": "at both ends",
    "place.left": "at the left end",
    "place.right": "at the right end",
    "place.centre": "in the centre",
    "place.across": "half way between the ends",
    "place.ring": "near the heated ring",
    "place.rim": "all round the rim",
    "spot.0.0": "at the upper left",
    "spot.1.0": "at the top",
    "spot.2.0": "at the upper right",
    "spot.0.1": "on the left",
    "spot.1.1": "in the middle",
    "spot.2.1": "on the right",
    "spot.0.2": "at the lower left",
    "spot.1.2": "at the bottom",
    "spot.2.2": "at the lower right",
    "way.lengthwise": "from left to right",
    "way.upright": "from top to bottom",
    "list": "{first}, {last}",
    "list.last": "{first} and {last}",
    "lamp.sodium": "yellow",
    "lamp.green": "green",
    **{
        f"colour.{name.replace(' ', '_')}": name
        for name in (
            "black", "dark grey", "grey", "pale grey", "white",
            *(
                f"{shade}{hue}"
                for shade in ("dark ", "", "bright ", "pale ")
                for hue in ("red", "pink", "orange", "yellow", "green", "blue", "violet")
            ),
        )
    },
}  # fmt: skip
