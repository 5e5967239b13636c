"""Draws the README's picture: the window at 10.6 s of the scene ring, the flame just off."""

import time

from demo_app.base.locate import assets
from demo_app.scenes import catalogue
from demo_app.shells.present import PresentWindow
from demo_app.ui import application

AT_S = 10.6


def main():
    app = application.make([])
    window = PresentWindow([catalogue.load("ring")], "ring")
    window.begin()
    window.resize(window.sizeHint())
    window.show()
    session = window.session

    def settle():
        chart = window.stage.chart
        while not (session.frame and session.settled and chart.ready):
            app.processEvents()
            time.sleep(0.01)

    settle()
    session.scrub(AT_S)
    settle()
    assert window.grab().save(str(assets() / "readme" / "ring.png"))
    window.close()


if __name__ == "__main__":
    main()
