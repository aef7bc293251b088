"""Job + clause library → the document: choosing, drafting, numbering, closing."""

from specwriter.assemble.document import Document, Enclosure, OpenDecision
from specwriter.assemble.house import HouseError
from specwriter.assemble.inspection import check_library
from specwriter.assemble.library import Folder, Library, load_library
from specwriter.assemble.provision import LibraryError, assemble
from specwriter.assemble.select import Choice, select

__all__ = [
    "Choice",
    "Document",
    "Enclosure",
    "Folder",
    "HouseError",
    "Library",
    "LibraryError",
    "OpenDecision",
    "assemble",
    "check_library",
    "load_library",
    "select",
]
