"""Sentence: text for a person that remembers how it was built.

In    an English template with named fields, and their values
Out   a plain English string; beside it template and values, so that a window can say it in another language
Not   choosing the language (`gui`)
"""

from collections.abc import Mapping
from typing import Any, Self

__all__ = ["Sentence"]


class Sentence(str):
    """`Sentence("{n} of {total} trays", n=14, total=18)` is "14 of 18 trays" wherever a string is wanted.

    The template is a literal, or the words cannot be found for translating. Values may be sentences.
    """

    __slots__ = ("template", "values")

    template: str
    values: Mapping[str, Any]

    def __new__(cls, template: str, **values: Any) -> Self:
        """The sentence in English; a field that is missing is our mistake and raises `KeyError`."""
        sentence = super().__new__(cls, template.format(**values))
        sentence.template = template
        sentence.values = values
        return sentence

    def but(self, **values: Any) -> Self:
        """The same sentence with other values for these fields."""
        return type(self)(self.template, **{**self.values, **values})

    def __getnewargs_ex__(self) -> tuple[tuple[str], dict[str, Any]]:
        return (self.template,), dict(self.values)
