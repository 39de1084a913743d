"""Plain button: what a button says, safe from losing an ampersand.

In    words that may carry a name which a person has typed
Out   the same for a button, a box to tick or an entry of a menu: Qt takes the letter behind "&" for its key,
      and would call the medium "peat & perlite" "peat _perlite"
Not   lists, labels and hints: an ampersand is one there (`plainhint.py`)
"""

__all__ = ["plain_button"]


def plain_button(words: str) -> str:
    """Written so that Qt shows every letter of it."""
    return words.replace("&", "&&")
