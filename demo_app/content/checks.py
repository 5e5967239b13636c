"""Files that people write, checked by kind before anybody stands in front of an audience."""

from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.physics.material_files import load_material


def check_file(path: Path) -> str:
    """Check one file; the kind follows from the end of its name.

    Parameters
    ----------
    path : pathlib.Path
        So far: a material, ``.toml``.

    Returns
    -------
    str
        What the file holds, in plain words.

    Raises
    ------
    InputError
        With file, line where there is one, and what to write instead.
    """
    if path.suffix.lower() != ".toml":
        raise InputError(
            f"a file that ends in '{path.suffix}' is of no known kind",
            place=str(path),
            remedy="materials end in .toml",
        )
    found = load_material(path)
    assumed = f"; assumed: {', '.join(found.assumed)}" if found.assumed else ""
    return f"material {found.name} ({found.kind}), in order{assumed}"
