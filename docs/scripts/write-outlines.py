"""Outlines of the letters of the figures' typeface, for figures as files that no program sets anew.

Source: Atkinson Hyperlegible Next (Braille Institute, SIL Open Font License 1.1), as packed by
@fontsource-variable/atkinson-hyperlegible-next 5.3.0, weight 400. Needs Python with fonttools and brotli:
    pip install fonttools brotli && python docs/scripts/write-outlines.py
"""

import json
from pathlib import Path

from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.ttLib import TTFont
from fontTools.varLib.instancer import instantiateVariableFont

ROOT = Path(__file__).resolve().parents[2]
FILES = ROOT / "node_modules/@fontsource-variable/atkinson-hyperlegible-next/files"
OUT = ROOT / "src/report/drawing/type/outlines.ts"
# Letters of the languages that tables come in, and signs that captions and axes use.
SUBSETS = ("latin-ext", "latin")


def path(glyphs, name):
    """Commands M, L, Q, Z with whole thousandths of the size, y upwards from the base line."""
    pen = DecomposingRecordingPen(glyphs)
    glyphs[name].draw(pen)
    parts = []
    at = (0, 0)
    for command, points in pen.value:
        if command == "moveTo":
            at = points[0]
            parts.append(f"M{at[0]} {at[1]}")
        elif command == "lineTo":
            at = points[0]
            parts.append(f"L{at[0]} {at[1]}")
        elif command == "qCurveTo":
            # Points between two off the curve lie in their middle.
            off, end = list(points[:-1]), points[-1]
            for place, control in enumerate(off):
                last = place == len(off) - 1
                to = end if last else tuple(round((a + b) / 2) for a, b in zip(control, off[place + 1]))
                parts.append(f"Q{control[0]} {control[1]} {to[0]} {to[1]}")
        elif command in ("closePath", "endPath"):
            parts.append("Z")
    return "".join(parts)


outlines = {}
for subset in SUBSETS:
    font = instantiateVariableFont(TTFont(FILES / f"atkinson-hyperlegible-next-{subset}-wght-normal.woff2"), {"wght": 400})
    assert font["head"].unitsPerEm == 1000
    glyphs = font.getGlyphSet()
    for code, name in font.getBestCmap().items():
        if 0x20 < code < 0x180 or code in (0x2010, 0x2012, 0x2013, 0x2014, 0x2018, 0x2019, 0x201C, 0x201D, 0x2026, 0x2212, 0x2264, 0x2265, 0xD7):
            outlines[chr(code)] = path(glyphs, name)

HEAD = (
    "// Written by docs/scripts/write-outlines.py from Atkinson Hyperlegible Next, weight 400 (SIL Open Font License 1.1,\n"
    "// copyright 2020-2024 The Atkinson Hyperlegible Next Project Authors). Do not edit.\n\n"
)
rows = [[letter, outlines[letter]] for letter in sorted(outlines)]
OUT.write_text(
    HEAD
    + "/** Letters with their outlines: M, L, Q and Z in thousandths of the type size, y upwards from the base line. */\n"
    + "export const OUTLINES: readonly (readonly [letter: string, path: string])[] = JSON.parse(\n  `"
    + json.dumps(rows, ensure_ascii=False, separators=(",", ":")).replace("\\", "\\\\").replace("`", "\\`")
    + "`,\n);\n",
    encoding="utf-8",
)
print(len(outlines), "letters")
