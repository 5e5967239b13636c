"""Which inputs of a question mean something only where another input says so."""

from collections.abc import Mapping

from demo_app.ui.benching.question_form import Only


def _if(where: str, *values: object, names: str) -> tuple[Only, ...]:
    return tuple(Only(name, where, values) for name in names.split())


ONLY: Mapping[str, tuple[Only, ...]] = {
    "oven": _if("door", True, names="door_at_min door_for_min door_C"),
    "toughness": (
        *_if("known", "cooling", names="start_C jet_W_m2K start_tol_C jet_tol_pct"),
        *_if("known", "edge", names="edge_at edge_nm path_mm"),
        *_if("known", "face", names="face_MPa"),
        *_if("known", "edge", "face", names="reading_tol_pct"),
    ),
    "colour": (
        *_if(
            "method",
            "colour",
            names="bare seen_nm plate plate_seen_nm plate_way plate_nm match",
        ),
        *_if("bare", True, names="seen_nm"),
        *_if("plate", True, names="plate_seen_nm plate_way"),
        *_if(
            "method",
            "turning",
            names="whole_order lower_came lower_deg higher_came higher_deg turn_tol_deg",
        ),
        *_if("lower_came", True, names="lower_deg"),
        *_if("higher_came", True, names="higher_deg"),
    ),
    "matching": (
        *_if("unknown", "jets", "thickness", names="start_C"),
        *_if("unknown", "thickness", names="jet_W_m2K"),
        *_if("unknown", "jets", "flame", names="thickness_mm"),
        *_if(
            "unknown",
            "flame",
            names="outer_diameter_mm ring_width_mm first_s second_s third_s",
        ),
    ),
}
"""By the question's page."""
