"""Run by the system's Python, which knows UNO: settles every redline of a folder.

    settle_in_office.py FOLDER PIPE

Each FOLDER/x.docx is opened twice in the running office, all changes are accepted or rejected by
the command of its menu, and the result is saved to FOLDER/accept and FOLDER/reject.
"""

from __future__ import annotations

import sys
import time
from pathlib import Path
from typing import Any

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException


def connected(pipe: str) -> Any:
    """The context of the office, which may still be starting."""
    local = uno.getComponentContext()
    manager = local.ServiceManager
    resolver = manager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(300):
        try:
            return resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
        except NoConnectException:
            time.sleep(0.2)
    raise SystemExit("the office does not answer")


def property_of(name: str, value: Any) -> Any:
    made = PropertyValue()
    made.Name, made.Value = name, value
    return made


def main(folder: Path, pipe: str) -> None:
    context = connected(pipe)
    create = context.ServiceManager.createInstanceWithContext
    desktop = create("com.sun.star.frame.Desktop", context)
    helper = create("com.sun.star.frame.DispatchHelper", context)
    hidden = (property_of("Hidden", True),)
    word = (property_of("FilterName", "MS Word 2007 XML"),)
    for path in sorted(folder.glob("*.docx")):
        for what in ("Accept", "Reject"):
            document = desktop.loadComponentFromURL(path.as_uri(), "_blank", 0, hidden)
            frame = document.getCurrentController().getFrame()
            helper.executeDispatch(frame, f".uno:{what}AllTrackedChanges", "", 0, ())
            target = folder / what.lower() / path.name
            document.storeToURL(target.as_uri(), word)
            document.close(True)
    desktop.terminate()


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2])
