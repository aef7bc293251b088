"""Figures of a document → SVG, and from the same SVG a picture of print quality."""

from specwriter.render.figure.draw import figure_svg
from specwriter.render.figure.metafile import figure_emf

__all__ = ["figure_emf", "figure_svg"]
