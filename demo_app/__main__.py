"""``python -m demo_app`` is the command ``lehrlight``."""

import sys

from demo_app.cli import main

sys.exit(main())
