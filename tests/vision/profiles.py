"""Profiles: colour profiles made by hand."""

import struct

import numpy as np


def wide_gamut_profile() -> bytes:
    """An ICC profile made by hand: the primaries of Display P3, adapted to D50, with the sRGB curve.

    Colorants of "Display P3" (from memory); version 2, matrix and curves.
    """
    v = np.arange(1024) / 1023
    curve = np.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055) ** 2.4)
    curve_tag = b"curv\0\0\0\0" + struct.pack(">I", 1024) + np.round(curve * 65535).astype(">u2").tobytes()

    def xyz(*values: float) -> bytes:
        return b"XYZ \0\0\0\0" + b"".join(struct.pack(">i", round(value * 65536)) for value in values)

    name = b"wide\0"
    text = b"desc\0\0\0\0" + struct.pack(">I", len(name)) + name + b"\0" * 78
    tags = {
        b"desc": text,
        b"cprt": b"text\0\0\0\0none\0",
        b"wtpt": xyz(0.9642, 1.0, 0.8249),
        b"rXYZ": xyz(0.51512, 0.24120, -0.00105),
        b"gXYZ": xyz(0.29198, 0.69225, 0.04189),
        b"bXYZ": xyz(0.15710, 0.06657, 0.78407),
        b"rTRC": curve_tag,
        b"gTRC": curve_tag,
        b"bTRC": curve_tag,
    }
    table, bodies, at = struct.pack(">I", len(tags)), b"", 128 + 4 + 12 * len(tags)
    for tag, body in tags.items():
        padded = body + b"\0" * (-len(body) % 4)
        table += tag + struct.pack(">II", at + len(bodies), len(body))
        bodies += padded
    size = 128 + len(table) + len(bodies)
    head = struct.pack(">I4sI4s4s4s", size, b"\0\0\0\0", 0x02100000, b"mntr", b"RGB ", b"XYZ ")
    head += struct.pack(">6H", 2026, 1, 1, 0, 0, 0) + b"acsp" + b"\0" * 28
    head += b"".join(struct.pack(">i", round(value * 65536)) for value in (0.9642, 1.0, 0.8249))
    return head.ljust(128, b"\0") + table + bodies
