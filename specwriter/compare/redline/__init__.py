"""Two Word files → one with tracked changes: accepted it reads as the new, rejected as the old."""

from specwriter.compare.redline.redline import redline
from specwriter.compare.redline.revision import Author

__all__ = ["Author", "redline"]
