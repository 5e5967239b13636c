"""Style of what only the prep bench has: lists, tables, progress, visible focus."""

from demo_app.ui import theme


def style_sheet(sizes: theme.Sizes, look: theme.Look = theme.QUIET) -> str:
    """Style sheet of the whole window."""
    use = theme.shades(look)
    touch = max(theme.TOUCH_PX, sizes.panel * 2)
    return (
        theme.style_sheet(sizes, look)
        + f"""
    QListWidget {{ background: {use.panel}; border: 2px solid {use.panel}; outline: 0; }}
    QListWidget:focus {{ border-color: {use.focus}; }}
    QListWidget::item {{ min-height: {touch}px; padding: 2px {sizes.gap}px; color: {use.ink};
        border-left: 4px solid {use.panel}; }}
    QListWidget::item:selected {{ background: {use.pressed}; color: {use.ink};
        border-left-color: {use.accent}; }}
    QScrollArea#answer {{ border: 2px solid {use.panel}; }}
    QScrollArea#answer:focus {{ border-color: {use.focus}; }}
    QLabel#main {{ font-size: {round(sizes.sentence * 1.7)}px; font-weight: 700; }}
    QLabel#range {{ font-size: {round(sizes.panel * 1.4)}px; font-weight: 600; }}
    QLabel#said {{ font-size: {round(sizes.panel * 1.2)}px; font-weight: 600; }}
    QLabel#caution {{ color: {use.alert}; border-top: 1px solid {use.edge};
        padding-top: {sizes.gap // 2}px; }}
    QTableWidget {{ background: {use.base}; border: 2px solid {use.edge};
        gridline-color: {use.edge}; }}
    QTableWidget:focus {{ border-color: {use.focus}; }}
    QTableWidget::item {{ padding: 2px 4px; }}
    QTableWidget::item:selected {{ background: {use.pressed}; color: {use.ink}; }}
    QHeaderView {{ background: {use.raised}; }}
    QHeaderView::section {{ background: {use.raised}; color: {use.ink}; border: 0;
        border-right: 1px solid {use.edge}; padding: 3px 4px; }}
    QProgressBar {{ min-height: {touch // 2}px; border: 1px solid {use.edge};
        border-radius: 6px; background: {use.base}; text-align: center; }}
    QProgressBar::chunk {{ background: {use.on_edge}; border-radius: 5px; }}
    """
    )
