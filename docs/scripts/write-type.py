"""Widths of the letters of the figures' typeface, for drawings that are made without a browser.

Source: Atkinson Hyperlegible Next (Braille Institute, SIL Open Font License 1.1), as packed by
@fontsource-variable/atkinson-hyperlegible-next 5.3.0, weight 400. Needs Python with fonttools and brotli:
    pip install fonttools brotli && python docs/scripts/write-type.py
"""

from pathlib import Path

from fontTools.ttLib import TTFont

ROOT = Path(__file__).resolve().parents[2]
FILES = ROOT / "node_modules/@fontsource-variable/atkinson-hyperlegible-next/files"
OUT = ROOT / "src/report/drawing/type"


widths = {}
for subset in ("latin-ext", "latin"):
    font = TTFont(FILES / f"atkinson-hyperlegible-next-{subset}-wght-normal.woff2")
    for code, name in font.getBestCmap().items():
        # Marks that stand over a letter have no width of their own, and text is composed before it is measured.
        if 0x300 <= code < 0x370:
            continue
        widths[code] = font["hmtx"][name][0]

HEAD = (
    "// Written by docs/scripts/write-type.py from Atkinson Hyperlegible Next, weight 400 (SIL Open Font License 1.1,\n"
    "// copyright 2020-2024 The Atkinson Hyperlegible Next Project Authors). Do not edit.\n\n"
)

by_width = {}
for code, width in sorted(widths.items()):
    by_width.setdefault(width, []).append(chr(code))


def quoted(text):
    plain = text.replace("\\", "\\\\")
    return f'"{plain}"' if "'" in plain else f"'{plain}'"


lines = [f"  [{width}, {quoted(''.join(letters))}]," for width, letters in sorted(by_width.items())]
(OUT / "widths.ts").write_text(
    HEAD
    + "/** Advance widths in thousandths of the type size, with the letters that have them. */\n"
    + "export const WIDTHS: readonly (readonly [width: number, letters: string])[] = [\n"
    + "\n".join(lines)
    + "\n];\n",
    encoding="utf-8",
)
print(len(widths), "letters")
