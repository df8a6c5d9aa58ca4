"""Boxes of the words on a PDF's pages as poppler's pdftotext finds them, in mm, y down, and what is wrong with them."""

import html
import re
import subprocess
import unicodedata
from typing import NamedTuple

MILLIMETRE = 25.4 / 72  # of a point
APART = 0.3  # mm of clear paper between two texts
FRAME = 10  # mm from the paper's edge

# Of the paper's font, Liberation Sans, in em. Poppler gives a word the whole line of its font; letters without an accent
# on a capital reach up less far.
LINE_UP, LETTERS_UP, LINE_DOWN = 0.905273, 1491 / 2048, 0.211914
LINE = LINE_UP + LINE_DOWN


class Word(NamedTuple):
    left: float
    top: float
    right: float
    bottom: float
    text: str


def has_high_accent(text):
    return any(letter.isupper() and len(unicodedata.normalize("NFD", letter)) > 1 for letter in text)


def trimmed(word, ems):
    """The word's box without the room over its letters. Which side that is follows from the size: one side of the box is a
    line of one of the sizes (em, mm) that the pages use; where that is the width, the word is read upward. None when
    neither side is such a line."""
    wide, high = word.right - word.left, word.bottom - word.top
    sizes = {side: min(ems, key=lambda em: abs(em * LINE - side)) for side in (wide, high)}
    lines = [side for side in (high, wide) if abs(sizes[side] * LINE - side) < 0.004]
    if not lines:
        return None
    spare = 0 if has_high_accent(word.text) else (LINE_UP - LETTERS_UP) * sizes[lines[0]]
    return word._replace(top=word.top + spare) if lines[0] == high else word._replace(left=word.left + spare)


def pages_of(pdf):
    """Of each page its width and height in mm and its words."""
    done = subprocess.run(["pdftotext", "-bbox", str(pdf), "-"], stdout=subprocess.PIPE, check=True, timeout=120)
    pages = []
    for page in done.stdout.decode().split("<page ")[1:]:
        size = re.match(r'width="([\d.]+)" height="([\d.]+)"', page)
        words = re.findall(r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)">(.*?)</word>', page)
        width, height = (float(side) * MILLIMETRE for side in size.groups())
        pages.append((width, height, [Word(*(float(at) * MILLIMETRE for at in w[:4]), html.unescape(w[4])) for w in words]))
    return pages


def too_near(words):
    """Pairs of words with less than APART of clear paper between them."""
    found, waiting = [], []
    for word in sorted(words):
        waiting = [other for other in waiting if other.right > word.left - APART]
        for other in waiting:
            if max(word.top - other.bottom, other.top - word.bottom) < APART - 0.001:
                found.append((other, word))
        waiting.append(word)
    return found


def faults_of(pdf, ems):
    """One line a fault, and the number of words looked at."""
    faults, count = [], 0
    for number, (width, height, words) in enumerate(pages_of(pdf), 1):
        boxes = []
        for word in words:
            box = trimmed(word, ems)
            if box is None:
                faults.append(f"page {number}: {word} has no size that the pages use")
                continue
            boxes.append(box)
            if min(box.left, box.top, width - box.right, height - box.bottom) < FRAME:
                faults.append(f"page {number}: {box} stands beyond the frame")
        faults += [f"page {number}: {a} and {b} stand too near" for a, b in too_near(boxes)]
        count += len(words)
    return faults, count
