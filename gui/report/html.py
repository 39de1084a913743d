"""Report HTML: the same report as one file for mail, with everything inside.

In    a `Report`
Out   HTML 5 that needs no other file, no script and no network; every text escaped
Not   pages of paper (`pages.py`)
"""

from base64 import b64encode
from collections.abc import Callable
from html import escape

from data.report.content import (
    Block,
    Grid,
    GrowthFigure,
    Heading,
    IntervalFigure,
    Materials,
    Paragraph,
    PictureRow,
    Report,
    VerdictGrid,
)
from gui.language.spoken import is_english, spoken
from gui.language.words import translate
from gui.report.figures import chart_png, chart_words, picture_jpeg
from gui.report.words import TextTable, text_tables
from gui.style.tokens import LIGHT

__all__ = ["as_html"]

STYLE = f"""
body {{ font-family: "Noto Sans", Arial, sans-serif; font-size: 15px; line-height: 1.45; color: {LIGHT.ink};
  background: {LIGHT.sheet}; max-width: 46em; margin: 0 auto; padding: 16px; overflow-wrap: anywhere; }}
h1 {{ font-size: 28px; margin: 0; }} h2 {{ font-size: 20px; margin: 32px 0 8px; }}
h3 {{ font-size: 16px; margin: 20px 0 4px; }} h4 {{ font-size: 14px; margin: 14px 0 4px; }}
p {{ margin: 8px 0; }} .small {{ font-size: 13px; }} .soft {{ color: {LIGHT.soft_ink}; }}
.answer {{ border-left: 4px solid {LIGHT.accent}; padding-left: 12px; }}
.caution {{ border-left: 4px solid {LIGHT.notice}; padding-left: 12px; }}
.over {{ overflow-x: auto; }}
table {{ border-collapse: collapse; width: 100%; font-size: 13px; margin: 12px 0; }}
th, td {{ text-align: left; vertical-align: top; padding: 4px 8px; border-bottom: 1px solid {LIGHT.line};
  overflow-wrap: break-word; }}
.number {{ text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }}
caption {{ text-align: left; color: {LIGHT.soft_ink}; }}
img {{ max-width: 100%; height: auto; border: 0; }}
.chart {{ width: 100%; min-width: 34em; max-width: none; }}
.row {{ display: flex; flex-wrap: wrap; gap: 10px; }}
figure {{ margin: 0; flex: 1 1 200px; max-width: 33%; font-size: 13px; }}
@media (max-width: 34em) {{ figure {{ flex-basis: 100%; max-width: 100%; }} }}
@media print {{ h2, h3, h4 {{ break-after: avoid; }} tr, figure {{ break-inside: avoid; }} }}
"""


def as_html(report: Report, check: Callable[[], None] = lambda: None) -> str:
    """The whole file; `check` is called now and then and may raise to stop."""
    body = [f"<h1>{escape(report.title)}</h1>", f'<p class="soft">{escape(spoken(report.subtitle))}</p>']
    for block in report.blocks:
        check()
        body.append(_html_of(block))
    language = "en" if is_english() else translate("Report", "en")
    return (
        f'<!DOCTYPE html>\n<html lang="{escape(language)}">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; img-src data:; '
        "style-src 'unsafe-inline'\">\n"
        f"<title>{escape(report.title)}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n"
        + "\n".join(body)
        + "\n</body>\n</html>\n"
    )


def _html_of(block: Block) -> str:
    match block:
        case Heading():
            tag = f"h{block.level + 1}"
            return f"<{tag}>{escape(spoken(block.text))}</{tag}>"
        case Paragraph():
            kind = f' class="{block.role}"' if block.role else ""
            return f"<p{kind}>{_lines(spoken(block.text))}</p>"
        case IntervalFigure() | GrowthFigure():
            chart = _image("png", chart_png(block), chart_words(block), "chart")
            return f'<div class="over">{chart}</div>'
        case PictureRow():
            return _pictures(block)
        case Grid() | VerdictGrid() | Materials():
            return "\n".join(map(_table, text_tables(block)))
    return ""


def _lines(text: str) -> str:
    return escape(text).replace("\n", "<br>")


def _image(kind: str, data: bytes, words: str, name: str = "") -> str:
    named = f' class="{name}"' if name else ""
    return f'<img{named} src="data:image/{kind};base64,{b64encode(data).decode()}" alt="{escape(words)}">'


def _pictures(block: PictureRow) -> str:
    figures = []
    for one in block.pictures:
        data, words = picture_jpeg(one.path), spoken(one.words)
        lost = f"<p>{escape(translate('Report', 'The picture is gone.'))}</p>"
        image = lost if data is None else _image("jpeg", data, f"{block.name}, {words}")
        figures.append(f"<figure>{image}<figcaption>{escape(words)}</figcaption></figure>")
    name = f"<h4>{escape(block.name)}</h4>\n" if block.name else ""
    return f'{name}<div class="row">{"".join(figures)}</div>'


def _table(table: TextTable) -> str:
    def cell(tag: str, column: int, text: str) -> str:
        side = "" if column in table.wide else ' class="number"'
        scope = ' scope="col"' if tag == "th" else ""
        return f"<{tag}{scope}{side}>{_lines(text)}</{tag}>"

    head = "".join(cell("th", column, text) for column, text in enumerate(table.head))
    rows = []
    for number, row in enumerate(table.rows):
        if number in table.bold_rows:
            rows.append(f'<tr><th colspan="{len(table.head)}">{escape(row[0])}</th></tr>')
        else:
            rows.append(f"<tr>{''.join(cell('td', column, text) for column, text in enumerate(row))}</tr>")
    return (
        f'<div class="over"><table><caption>{escape(table.name)}</caption><thead><tr>{head}</tr></thead>'
        f"<tbody>{''.join(rows)}</tbody></table></div>"
    )
