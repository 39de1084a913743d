"""Unread: no module's source is read only because the module comes in.

In    nothing: importing this does it, first of all that is ours
Out   nothing
Not   what comes in when (`app.py`, `places.py`)

PySide6 can write Qt's names in another way for modules that ask for it (`from __feature__ import ...`). To
know which may, it reads the source of every module from the disk, a twelfth of the work until the first look
list. Nobody here asks for it, and in a program without it both answers come to the same.
"""

import contextlib
from importlib import import_module
from types import ModuleType

__all__: list[str] = []


def _may_ask(_module: ModuleType) -> bool:
    return True


with contextlib.suppress(ImportError):  # a part of PySide6's own, which may be called otherwise one day
    vars(import_module("shibokensupport.feature"))["_mod_uses_pyside"] = _may_ask
