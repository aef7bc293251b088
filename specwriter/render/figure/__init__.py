"""Figures of a document → SVG, and from the same SVG a picture of print quality."""

from specwriter.render.figure.draw import figure_svg
from specwriter.render.figure.picture import figure_png

__all__ = ["figure_png", "figure_svg"]
