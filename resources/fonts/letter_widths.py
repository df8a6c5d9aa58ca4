#!/usr/bin/env python3
"""Writes core/drawing/letter_widths.cpp: how far each letter of the paper's font advances.

Core places text without a window system, so it needs the widths and nothing else of the font. Run it from anywhere after the
font files beside it have changed; a test compares the table with the font as it is painted.
"""
import pathlib
import struct

HERE = pathlib.Path(__file__).resolve().parent
OUT = HERE.parent.parent / "core" / "drawing" / "letter_widths.cpp"
FACES = [("regularWidths", "LiberationSans-Regular.ttf"), ("boldWidths", "LiberationSans-Bold.ttf")]
# Letters of left-to-right scripts that need no shaping, punctuation, fractions, arrows, signs. No soft hyphen, no controls.
WANTED = [(0x20, 0x7E), (0xA0, 0xAC), (0xAE, 0x24F), (0x384, 0x3CE), (0x400, 0x45F), (0x490, 0x4F9), (0x1E00, 0x1EFF),
          (0x2010, 0x2027), (0x2030, 0x205E), (0x2070, 0x209C), (0x20A0, 0x20BF), (0x2100, 0x218F), (0x2190, 0x21FF),
          (0x2200, 0x22FF), (0x25A0, 0x25FF)]


def tables_of(data):
    count = struct.unpack(">H", data[4:6])[0]
    found = {}
    for i in range(count):
        tag, _, offset, length = struct.unpack(">4sLLL", data[12 + 16 * i:28 + 16 * i])
        found[tag] = data[offset:offset + length]
    return found


def glyphs_of(cmap):
    """Code point to glyph, from the Unicode subtable of format 4."""
    for i in range(struct.unpack(">H", cmap[2:4])[0]):
        platform, encoding, offset = struct.unpack(">HHL", cmap[4 + 8 * i:12 + 8 * i])
        if (platform, encoding) == (3, 1):
            break
    else:
        raise SystemExit("no Unicode character map")
    form, length, _, twice = struct.unpack(">HHHH", cmap[offset:offset + 8])
    assert form == 4, form
    words = struct.unpack(">%dH" % ((length - 14) // 2), cmap[offset + 14:offset + length])
    n = twice // 2
    ends, starts, deltas, offsets = words[:n], words[n + 1:2 * n + 1], words[2 * n + 1:3 * n + 1], words[3 * n + 1:]
    glyphs = {}
    for k in range(n):
        for code in range(starts[k], ends[k] + 1):
            if offsets[k]:
                glyph = offsets[k + offsets[k] // 2 + code - starts[k]]
                glyph = (glyph + deltas[k]) % 65536 if glyph else 0
            else:
                glyph = (code + deltas[k]) % 65536
            if glyph and code != 0xFFFF:
                glyphs[code] = glyph
    return glyphs


def widths_of(path):
    tables = tables_of(path.read_bytes())
    assert struct.unpack(">H", tables[b"head"][18:20])[0] == 2048, "units of an em"
    metrics = struct.unpack(">H", tables[b"hhea"][34:36])[0]
    capital = struct.unpack(">h", tables[b"OS/2"][88:90])[0]

    def advance(glyph):
        at = 4 * min(glyph, metrics - 1)
        return struct.unpack(">H", tables[b"hmtx"][at:at + 2])[0]

    return {code: advance(glyph) for code, glyph in glyphs_of(tables[b"cmap"]).items()}, capital


def rows(numbers, form):
    line = "   "
    for number in numbers:
        text = " " + form % number + ","
        if len(line) + len(text) > 120:
            yield line
            line = "   "
        line += text
    yield line


def main():
    faces = [(name, *widths_of(HERE / file)) for name, file in FACES]
    assert len({capital for _, _, capital in faces}) == 1
    codes = [c for low, high in WANTED for c in range(low, high + 1) if all(c in widths for _, widths, _ in faces)]
    runs = []
    for code in codes:
        if runs and runs[-1][1] == code - 1:
            runs[-1][1] = code
        else:
            runs.append([code, code])
    out = ["// Written by resources/fonts/letter_widths.py from the font files beside it; not by hand.",
           '#include "core/drawing/letter_widths.h"', "", "namespace ribwright {", "", "// clang-format off",
           "const std::array<LetterRun, %d> letterRuns = {{" % len(runs)]
    first, items = 0, []
    for low, high in runs:
        items.append("{0x%04X, 0x%04X, %d}" % (low, high, first))
        first += high - low + 1
    out += rows(items, "%s") 
    out += ["}};", ""]
    for name, widths, _ in faces:
        out += ["const std::array<std::uint16_t, %d> %s = {" % (len(codes), name)]
        out += rows([widths[c] for c in codes], "%d")
        out += ["};", ""]
    out += ["// clang-format on", "", "}  // namespace ribwright", ""]
    OUT.write_text("\n".join(out))
    print(len(codes), "letters,", len(runs), "runs, capitals", faces[0][2], "of 2048, none for",
          [hex(c) for c in (0x2032, 0x2033, 0xD7, 0x2264, 0x2265, 0xBD, 0x2192, 0x2190, 0x25A1, 0xFFFD, 0x2300, 0x2205) if c not in codes])


main()
