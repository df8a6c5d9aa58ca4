#!/usr/bin/python3
"""Looks at the pages of every sample's packet with other programs: exact paper sizes, embedded fonts, text that stays text and
keeps clear of other text and of the paper's edge, pages counted right, a bookmark for every wall, SVG that is well-formed XML."""

import csv
import re
import subprocess
import sys
import tempfile
from pathlib import Path

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent / "shared"))
from packets import SAMPLES, check, finish, read_job, run  # noqa: E402
from text_boxes import faults_of  # noqa: E402

# Millimetres, lying: ANSI A and B, ISO 216 A4 and A3.
PAPERS = {"letter": (279.4, 215.9), "tabloid": (431.8, 279.4), "a4": (297, 210), "a3": (420, 297)}
# What a wall is called, what stands between a page and how many there are, and what all walls are called.
LANGUAGES = {"en": ("Wall", "of", "All walls"), "es": ("Pared", "de", "Todas las paredes")}


def told(*words):
    return subprocess.run(words, stdout=subprocess.PIPE, stderr=subprocess.PIPE, check=False, timeout=120)


def page_sizes(pdf):
    text = told("pdfinfo", "-f", "1", "-l", "9999", str(pdf)).stdout.decode()
    count = int(re.search(r"^Pages: +(\d+)$", text, re.M).group(1))
    sizes = [(float(w), float(h)) for w, h in re.findall(r"^Page +\d+ size: +([\d.]+) x ([\d.]+) pts", text, re.M)]
    return count, sizes


def walls_have_bookmarks(where, pdf, job, wall, all_walls):
    done = told("mutool", "show", str(pdf), "outline")
    check("error" not in done.stderr.decode() and "warning: repair" not in done.stderr.decode(), f"{where}: {done.stderr}")
    headings = re.findall(r'^[+|-]\t"([^\n]*)"\t#page=(\d+)', done.stdout.decode(), re.M)
    # A wall that is not sheeted has no pages for drilling.
    drilled = [one for one in job["walls"] if pdf.name != "drill-templates.pdf" or one.get("cladding", "sheeted") == "sheeted"]
    walls = headings
    if pdf.name in ("packet.pdf", "schedules.pdf"):  # what is of all walls stands at the end
        walls = headings[:-1]
        drilled = drilled if pdf.name == "packet.pdf" else []
        check([title for title, _ in headings[-1:]] == [all_walls], f"{where}: the last bookmark of {headings}")
    letters = [re.match(wall + r" (\S+?)(,|$)", title) for title, _ in walls]
    check(all(letters) and len(letters) == len(drilled), f"{where}: bookmarks {headings}")
    opened = [int(page) for _, page in headings]
    check(opened[:1] == [1] and opened == sorted(set(opened)), f"{where}: bookmarks open pages {opened}")


def text_keeps_clear(where, pdf, folder):
    """The sizes that text may have are those of the SVG, which is told the same pages."""
    sizes = {size for svg in folder.glob("*.svg") for size in re.findall(r' font-size="([\d.]+)"', svg.read_text("utf-8"))}
    faults, count = faults_of(pdf, sorted(map(float, sizes)))
    check(count > 100, f"{where}: only {count} words were found")
    for fault in faults:
        check(False, f"{where}: {fault}")


def pdf_is_sound(where, pdf, paper, job, language):
    wall, of, all_walls = LANGUAGES[language]
    count, sizes = page_sizes(pdf)
    check(len(sizes) == count and count > 0, f"{where}: every page has a size")
    for number, size in enumerate(sizes, 1):
        apart = max(abs(a - b / 25.4 * 72) for a, b in zip(size, PAPERS[paper]))
        check(apart < 0.002, f"{where}: page {number} is {size}, wants {PAPERS[paper]}")
    fonts = told("pdffonts", str(pdf)).stdout.decode().splitlines()[2:]
    check(fonts, f"{where}: text stays text, so there are fonts")
    for line in fonts:
        embedded = re.search(r" (yes|no) +(yes|no) +(yes|no) +\d+ +\d+$", line)
        check(embedded and embedded.group(1) == "yes", f"{where}: font not embedded: {line}")
    walls_have_bookmarks(where, pdf, job, wall, all_walls)
    if pdf.name != "packet.pdf":  # which has the pages of the others
        text_keeps_clear(where, pdf, pdf.parent)
    texts = told("pdftotext", "-layout", str(pdf), "-").stdout.decode().split("\f")[:count]
    check(len(texts) == count, f"{where}: text on {len(texts)} of {count} pages")
    for number, text in enumerate(texts, 1):
        check(job["name"] in " ".join(text.split()), f"{where}: page {number} names the job")
        check(re.search(rf"\b{number} {of} {count}\b", text), f"{where}: page {number} says {number} {of} {count}")
    return count


def svg_is_sound(where, svg):
    done = told("xmllint", "--noout", "--nonet", str(svg))
    check(done.returncode == 0, f"{where}: {done.stderr.decode()}")
    text = svg.read_text(encoding="utf-8")
    check("<text" in text, f"{where}: text stays text")
    check(re.search(r'<svg[^>]* width="[\d.]+mm"[^>]* height="[\d.]+mm"', text), f"{where}: its size is in mm")


def packet_is_sound(sample, paper, language, folder):
    where = f"{sample.name} {paper} {language}"
    done = run("packet", sample, "--to", folder, "--paper", paper, "--language", language)
    if not check(done.returncode in (0, 1), f"{where}: {done.stderr.decode()}"):
        return
    with open(folder / "contents.csv", newline="", encoding="utf-8-sig") as table:
        pages = {row["file"]: row["pages"] for row in csv.DictReader(table)}
    for pdf in sorted(folder.glob("*.pdf")):
        count = pdf_is_sound(f"{where}: {pdf.name}", pdf, paper, read_job(sample), language)
        check(pages.get(pdf.name) == str(count), f"{where}: contents.csv counts the pages of {pdf.name}")
    svgs = sorted(folder.glob("*.svg"))
    for svg in svgs:
        svg_is_sound(f"{where}: {svg.name}", svg)
    check((folder / "elevations.pdf").is_file() and svgs, f"{where}: elevations on both kinds of paper")


def main():
    checked = 0
    for sample in SAMPLES:
        for paper in PAPERS:
            for language in LANGUAGES if paper in ("letter", "a3") else ["en"]:
                with tempfile.TemporaryDirectory() as temporary:
                    packet_is_sound(sample, paper, language, Path(temporary))
                checked += 1
    finish(checked)


if __name__ == "__main__":
    main()
