"""PDF marks: bookmarks for a PDF that was written without any.

In    the bytes of a PDF as Qt writes it (plain cross-reference table), headings with their page from 0
Out   the same bytes with an outline after them, as an incremental update
Not   making the PDF (`report`)

ISO 32000-1:2008, 7.5.6 (incremental updates) and 12.3.3 (document outline). Where the file is built otherwise
than expected it stays as it is: bookmarks are a help, no part of the report.
"""

import re
from collections.abc import Sequence

__all__ = ["add_marks"]

PAGE = re.compile(rb"(?<!\d)(\d+) 0 obj\s*<<\s*/Type /Page\b(?!s)")
TRAILER = re.compile(rb"trailer\s*<<(.*?)>>\s*startxref\s+(\d+)\s+%%EOF\s*$", re.DOTALL)


def add_marks(pdf: bytes, marks: Sequence[tuple[str, int]]) -> bytes:
    """The PDF with one bookmark a heading; as it was where there is none or it is built otherwise."""
    trailer = TRAILER.search(pdf)
    pages = [int(number) for number in PAGE.findall(pdf)]
    if trailer is None or not marks or max(page for _, page in marks) >= len(pages):
        return pdf
    root = re.search(rb"/Root (\d+) 0 R", trailer[1])
    size = re.search(rb"/Size (\d+)", trailer[1])
    if root is None or size is None:
        return pdf
    found = re.search(rb"(?<!\d)%s 0 obj\s*<<(.*?)>>\s*endobj" % root[1], pdf, re.DOTALL)
    if found is None or b"/Outlines" in found[1]:
        return pdf
    outline = int(size[1])
    objects = {int(root[1]): b"<<" + found[1] + b"\n/Outlines %d 0 R\n>>" % outline}
    last = outline + len(marks)
    objects[outline] = b"<< /Type /Outlines /First %d 0 R /Last %d 0 R /Count %d >>" % (
        outline + 1, last, len(marks),
    )  # fmt: skip
    for number, (words, page) in enumerate(marks, outline + 1):
        before = b"" if number == outline + 1 else b" /Prev %d 0 R" % (number - 1)
        after = b"" if number == last else b" /Next %d 0 R" % (number + 1)
        title = b"<FEFF" + words.encode("utf-16-be").hex().encode() + b">"
        objects[number] = (
            b"<< /Title %s /Parent %d 0 R /Dest [%d 0 R /Fit]" % (title, outline, pages[page])
            + before + after + b" >>"
        )  # fmt: skip
    kept = re.sub(rb"/Size \d+|/Prev \d+", b"", trailer[1])
    return _updated(pdf, objects, kept, int(trailer[2]), last + 1)


def _updated(pdf: bytes, objects: dict[int, bytes], trailer: bytes, before: int, size: int) -> bytes:
    body = bytearray(pdf if pdf.endswith(b"\n") else pdf + b"\n")
    table = bytearray(b"xref\n")
    for number, content in sorted(objects.items()):
        table += b"%d 1\n%010d 00000 n \n" % (number, len(body))
        body += b"%d 0 obj\n%s\nendobj\n" % (number, content)
    start = len(body)
    body += table
    body += b"trailer\n<<%s/Size %d /Prev %d\n>>\nstartxref\n%d\n%%%%EOF\n" % (trailer, size, before, start)
    return bytes(body)
