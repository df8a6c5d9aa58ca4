#!/usr/bin/python3
"""What the program says word for word, on standard output and standard error, and the exit code with it: with right and with
wrong input, in folders with awkward names, and without a display."""

import csv
import os
import re
import shutil
import sys
import tempfile
from pathlib import Path
from xml.etree import ElementTree

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent / "shared"))
from packets import SAMPLES, SOURCE, check, finish, run  # noqa: E402

SAMPLE = SOURCE / "sample-jobs" / "gable-workshop.json"
SHED = SOURCE / "tests" / "outside" / "shared" / "small shed.json"
HELP = """Ribwright lays out the wall cladding of steel buildings.

  ribwright [JOB]                  the window
  ribwright packet JOB --to DIR    tables, elevations and findings into DIR; deletes nothing there
  ribwright order JOB              the sheet order as CSV on standard output
  ribwright check JOB [PAGE]       findings, one a line; PAGE: the fingerprint in a page's title block,
                                   to be told whether the page is current and what has changed

  --units ft-in|mm                 units of tables and pages (usual: the job's own)
  --paper letter|tabloid|a4|a3     paper of the packet (usual: letter, or a4 in millimetres)
  --language en|es                 language of pages and findings (usual: en), or of the window
                                   (usual: the system's)
  --help, --version

Exit: 0 done and nothing stops; 1 done, but some finding is a stop; 2 the job cannot be read or
the command is wrong.
"""
COMMANDS = "packet, order and check"
OPTIONS = "--to, --units, --paper, --language, --help and --version"

# words of the command line, then all of standard error. Exit 2 and nothing on standard output.
REFUSED = [
    (["pakcet", "a.json", "--to", "d"], f"pakcet: is no command; the nearest of {COMMANDS} is packet"),
    (["chekc"], f"chekc: is no command; the nearest of {COMMANDS} is check"),
    (["order"], "order: wants a job file after it"),
    (["check"], "check: wants a job file after it"),
    (["packet", "--to", "d"], "packet: wants a job file after it"),
    (["packet", "a.json"], "packet: wants --to and the folder to write into"),
    (["packet", "a.json", "--to"], "--to: wants a value after it: the folder to write into"),
    (["packet", "a.json", "--to", "--units"], "--to: wants a value after it: the folder to write into"),
    (["packet", "a.json", "--to="], "--to: wants the folder to write into, and it is empty"),
    (["order", "a.json", "b.json"], "b.json: is one word too many; only one job at a time"),
    (["a.json", "b.json"], f"a.json: is no command; the nearest of {COMMANDS} is packet"),
    (["order", "a.json", "--unit", "mm"], f"--unit: is no option; the nearest of {OPTIONS} is --units"),
    (["order", "a.json", "--units", "cm"], '--units: "cm" is no system of units; write ft-in or mm'),
    (["order", "a.json", "--units"], "--units: wants a value after it: ft-in or mm"),
    (["order", "a.json", "--units", "mm", "--units", "mm"], "--units: is there twice; write it once"),
    (["order", "a.json", "--paper", "a4"], "--paper: goes with packet alone"),
    (["check", "a.json", "--to", "d"], "--to: goes with packet alone"),
    (
        ["check", "a.json", "job.1", "job.2"],
        "job.2: is one word too many; only one job and one page's fingerprint at a time",
    ),
    (["order", "a.json", "--language", "es"], "--language: goes with packet, check or the window"),
    (["check", "a.json", "--language", "EN"], '--language: "EN" is no language of pages and findings; write en or es'),
    (["check", "a.json", "--language"], "--language: wants a value after it: en or es"),
    (
        ["a.json", "--units", "mm"],
        "--units: goes with packet, order or check; in the window choose the job's units there",
    ),
    (
        ["packet", "a.json", "--to", "d", "--paper", "a5"],
        '--paper: "a5" is no paper size; write letter, tabloid, a4 or a3',
    ),
    (["--help=all"], "--help=all: wants nothing after it; write --help"),
]


def said(done):
    return done.returncode, done.stdout.decode("utf-8"), done.stderr.decode("utf-8")


def compare(where, done, code, out, error):
    found = said(done)
    return check(found == (code, out, error), f"{where}:\n  wanted {(code, out, error)}\n  found  {found}")


def wrong_words(folder):
    for words, error in REFUSED:
        compare(" ".join(words), run(*words, cwd=folder), 2, "", error + "\n")
    check(not list(folder.iterdir()), "wrong words leave nothing behind")
    return len(REFUSED)


def asked(folder):
    compare("--help", run("--help"), 0, HELP, "")
    compare("packet --help", run("packet", "--help"), 0, HELP, "")
    version = said(run("--version"))
    check(version[0] == 0 and version[1].startswith("ribwright ") and version[2] == "", f"--version: {version}")
    compare("window", run(SAMPLE), 2, "", NO_DISPLAY)
    return 4


NO_DISPLAY = "window: there is no display to open it on; packet, order and check need none\n"


def wrong_files(folder):
    missing = folder / "no such job.json"
    for command in (["order"], ["check"], ["packet", "--to", folder / "out"]):
        done = run(*command, missing)
        check(done.returncode == 2 and done.stdout == b"", f"{command[0]}: a missing job is refused")
        check(str(missing).encode() in done.stderr, f"{command[0]}: names the missing job: {done.stderr}")
        check(not (folder / "out").exists(), f"{command[0]}: no folder is made for a job that is not there")
    bad = folder / "bad job.json"
    text = SAMPLE.read_text(encoding="utf-8")
    bad.write_text(text.replace('"walls"', '"wals"', 1), encoding="utf-8")
    done = run("order", bad)
    check(done.returncode == 2 and done.stdout == b"", "a misspelt key is refused")
    check(b"wals" in done.stderr and b"walls" in done.stderr, f"a misspelt key, and the right one: {done.stderr}")
    bad.write_text(text[: len(text) // 2], encoding="utf-8")
    done = run("packet", bad, "--to", folder / "out")
    check(done.returncode == 2 and done.stdout == b"", "half a job is refused")
    check(done.stderr.startswith(str(bad).encode()), f"half a job is named first: {done.stderr}")
    check(not (folder / "out").exists(), "half a job makes no folder")
    return 5


def wrong_places(folder):
    """A packet is there whole or the folder is as it was."""
    file = folder / "a file"
    file.write_text("mine", encoding="utf-8")
    done = run("packet", SAMPLE, "--to", file)
    check(done.returncode == 2 and done.stdout == b"", "a file is no folder to write into")
    check(str(file).encode() in done.stderr, f"the file in the way is named: {done.stderr}")
    check(file.read_text(encoding="utf-8") == "mine", "the file in the way stays")

    blocked = folder / "blocked"
    (blocked / "cuts.csv").mkdir(parents=True)
    (blocked / "pieces.csv").write_text("old", encoding="utf-8")
    done = run("packet", SAMPLE, "--to", blocked)
    check(done.returncode == 2 and done.stdout == b"", "a folder where a table goes is refused")
    check(b"cuts.csv" in done.stderr, f"the folder in the way is named: {done.stderr}")
    check(sorted(p.name for p in blocked.iterdir()) == ["cuts.csv", "pieces.csv"], "nothing new beside it")
    check((blocked / "pieces.csv").read_text(encoding="utf-8") == "old", "and the old table stays as it was")

    done = run("packet", SAMPLE, "--to", "/proc/ribwright")
    check(done.returncode == 2 and done.stdout == b"", "a place that takes no folder is refused")
    check(b"/proc/ribwright" in done.stderr, f"the place is named: {done.stderr}")

    with open("/dev/full", "wb") as full:
        done = run("order", SAMPLE, stdout=full)
    check(done.returncode == 2, f"an order that could not be written is no order: {done.returncode}")
    compare_error = "standard output: takes no more; is the disk full, or the program after the pipe gone?\n"
    check(done.stderr.decode() == compare_error, f"and it is said: {done.stderr}")
    return 4


def packet(folder):
    """Into a folder that is not there, with an awkward name; again over itself; nothing else is touched."""
    to = folder / "for the yard, 2nd 'set' \u00fc" / "packet"
    done = run("packet", SAMPLE, "--to", to)
    code, out, error = said(done)
    check(code in (0, 1) and error == "", f"packet: {code} {error}")
    names = [line.split(":")[0].strip() for line in out.splitlines()[1:-1]]
    check(out.splitlines()[0] == f"Wrote into {to}:", f"says where: {out.splitlines()[0]}")
    check(sorted(names) == sorted(p.name for p in to.iterdir()), f"says what: {names}")
    check(names[-1] == "contents.csv", "the list of contents comes last")
    check(out.splitlines()[-1].startswith("Findings: stop "), "and how many findings")
    first = {p.name: p.read_bytes() for p in to.iterdir()}
    (to / "mine.txt").write_text("mine", encoding="utf-8")
    (to / "pieces.csv").write_text("old", encoding="utf-8")
    run("packet", SAMPLE, "--to", to, "--units", "ft-in")
    again = {p.name: p.read_bytes() for p in to.iterdir()}
    check(again.pop("mine.txt") == b"mine", "what else lies in the folder stays")
    check(again == first, f"the same job gives the same bytes: {[n for n in first if again.get(n) != first[n]]}")
    return 2


def no_qt(folder):
    """order and check start no Qt, so a platform that is not there does not matter; packet needs no display either."""
    nonsense = {"QT_QPA_PLATFORM": "nonsense", "QT_PLUGIN_PATH": "/nowhere", "DISPLAY": ":no"}
    for command in ("order", "check"):
        plain = run(command, SAMPLE)
        check(plain.returncode in (0, 1) and plain.stderr == b"", f"{command}: {plain.returncode} {plain.stderr}")
        check(said(run(command, SAMPLE, env=nonsense)) == said(plain), f"{command} starts no Qt")
    done = run("packet", SAMPLE, "--to", folder / "shown nowhere", env={"DISPLAY": ":no", "WAYLAND_DISPLAY": "no"})
    check(done.returncode in (0, 1), f"packet looks for no display: {done.stderr}")
    return 3


# 10 ft of flat sheets, 36 in cover, lip 1-1/2, leg 3/4, 8 ft high, 1-3/4 in below concrete: 97-3/4 in, so 98 in; module lines at
# 1-1/2 + 36 n from the right, so four sheets. 38-1/4 in x 98 in x 4 = 9.6735 m2 of 0.5 mm and 275 g/m2: 40.63 kg, 89.6 lb. The window
# is stated at 9 ft and is 3 ft wide.
SHED_ORDER = """line,profile,thickness_in,colour,length,length_in,quantity,total_length_ft,area_sqft,weight_lb,marks,\
spares,blank_lengths_in,metal_sqft,pieces_sqft,cut_outs_sqft,drops_sqft,waste_sqft,spares_sqft,waste_lb
1,flat-36,0.01968504,barn red,"8' 2""\",98,4,32.666666667,98.00,89.6,A1 A2 A3 A4,0,98 98 98 98,104.12,86.04,0.00,0.00,18.08,0.00,15.6
"""
# The window takes 2.08 sq ft out of a sheet.
SHED_ORDER_STOP = SHED_ORDER.replace("86.04,0.00,", "83.96,2.08,")
SHED_ORDER_METRIC = """line,profile,thickness_mm,colour,length,length_mm,quantity,total_length_m,area_m2,weight_kg,marks,\
spares,blank_lengths_mm,metal_m2,pieces_m2,cut_outs_m2,drops_m2,waste_m2,spares_m2,waste_kg
1,flat-36,0.5,barn red,2489.2 mm,2489.2,4,9.9568,9.10,40.6,A1 A2 A3 A4,0,2489.2 2489.2 2489.2 2489.2,9.67,7.99,0.00,0.00,1.68,0.00,7.1
"""
SHED_STOP = """stop opening-off-wall A W1: wall A, W1: The opening reaches from 9' 0" to 12' 0", beyond the wall, which is 10' 0" wide. \
-> Correct its place or width.
stop 1, look 0, note 0
"""
SHED_WROTE = """Wrote into yard:
  sheet-order.csv: sheets to order, a line a length
  bundles.csv: how the sheets are packed, from the top of each bundle
  pieces.csv: every piece: its place, size and kind
  holes.csv: every hole of every sheet: not for drilling
  cuts.csv: corners of every piece, to cut by
  module-marks.csv: where the leading edge of each sheet stands
  openings.csv: doors, windows and louvres as they are stated
  survey.csv: what was measured of girts and slab edge
  findings.csv: what stops, wants a look or is good to know
  elevations.pdf: elevation of every wall
  elevation-A.svg: elevation of wall A
  drill-templates.pdf: templates, strips and marks for drilling, wall by wall
  drill-templates-A.svg: survey, template and strip pages of wall A
  schedules.pdf: what is ordered and cut, for all walls
  packet.pdf: all pages in the order of their use
  contents.csv: what is in this packet
Findings: stop {}, look 0, note 0
"""


def small_shed(folder):
    """Exit 1 just when something is a stop; what is asked for is done all the same."""
    job = folder / SHED.name
    shutil.copy(SHED, job)
    compare("order, a stop", run("order", job), 1, SHED_ORDER_STOP.replace("\n", "\r\n"), "")
    compare("check, a stop", run("check", job), 1, SHED_STOP, "")
    compare("packet, a stop", run("packet", job.name, "--to", "yard", cwd=folder), 1, SHED_WROTE.format(1), "")
    without_window = SHED.read_text(encoding="utf-8").split('"openings"')[0].rstrip().rstrip(",") + "}]}"
    job.write_text(without_window, encoding="utf-8")
    compare("order, none", run("order", job), 0, SHED_ORDER.replace("\n", "\r\n"), "")
    compare("order, metric", run("order", job, "--units", "mm"), 0, SHED_ORDER_METRIC.replace("\n", "\r\n"), "")
    compare("check, none", run("check", job), 0, "stop 0, look 0, note 0\n", "")
    compare("packet, none", run("packet", job.name, "--to", "yard", cwd=folder), 0, SHED_WROTE.format(0), "")
    return 7


NO_FINGERPRINT = (
    "is no fingerprint; it reads like A.k3f.9bq.77a.0c4.e2d.55b, or job. and six groups, "
    "and stands in the page's title block"
)


def texts_of(drawing):
    return [element.text for element in ElementTree.parse(drawing).iter() if element.tag.endswith("text") and element.text]


def fingerprints_on(drawing):
    """Of the job and of the wall, from a drawing's title block; one that is broken over two lines is put together."""
    texts = texts_of(drawing)
    found = set()
    for i, text in enumerate(texts):
        for candidate in (text, text + (texts[i + 1] if i + 1 < len(texts) else "")):
            if re.fullmatch(r"(job|[A-Z]+)(\.[0-9a-z]{3}){6}", candidate):
                found.add(candidate)
    return sorted(found, key=lambda text: not text.startswith("job."))


def older_pages(folder):
    """A page from a packet is current until the job changes; then what has changed is said, and it is a stop."""
    job = folder / "small shed.json"
    text = SHED.read_text(encoding="utf-8").replace('"distance": "9', '"distance": "2')
    job.write_text(text, encoding="utf-8")
    run("packet", job, "--to", folder / "yard")
    run("packet", job, "--to", folder / "metric", "--units", "mm", "--language", "es")
    pages = fingerprints_on(folder / "yard" / "elevation-A.svg")
    check(len(pages) == 2 and pages[1].startswith("A."), f"two fingerprints on a page: {pages}")
    others = fingerprints_on(folder / "metric" / "elevation-A.svg")
    check(len(others) == 2 and others != pages, f"and two in millimetres: {others}")
    for page in pages + others + [pages[1].upper()]:
        stated = page if page[0] != "A" else "A" + page[1:].lower()
        compare(f"{page}, current", run("check", job, page), 0, f"Page {stated} is current.\nstop 0, look 0, note 0\n", "")

    job.write_text(text.replace('"distance": "2', '"distance": "6'), encoding="utf-8")
    for page in pages:
        place = "paper-older-than-job" + (" A" if page.startswith("A") else "")
        compare(f"{page}, older", run("check", job, page), 1, OLDER.format(page=page, place=place), "")
    compare("in Spanish", run("check", job, pages[0], "--language=es"), 1, OLDER_SPANISH.format(page=pages[0]), "")

    compare("no fingerprint", run("check", job, "A.k3f"), 2, "", f"A.k3f: {NO_FINGERPRINT}\n")
    other = "Q" + pages[1][1:]
    no_wall = "the job has no wall Q; the page is of another job, and is to be checked against that one"
    compare("no such wall", run("check", job, other), 2, "", f"{other}: {no_wall}\n")
    return 12


OLDER = """Page {page} is older than the job. What has changed since: openings.
stop {place}: page {page}: The job has changed since this page was printed, in: openings. -> Take this page off the site and print it anew.
stop 1, look 0, note 0
"""
OLDER_SPANISH = """La página {page} es anterior al trabajo. Lo que cambió desde entonces: vanos.
stop paper-older-than-job: página {page}: El trabajo cambió desde que se imprimió esta página, en: vanos. \
-> Retire la hoja de la obra y trabaje con una impresa del trabajo tal como está ahora.
stop 1, look 0, note 0
"""


def findings_line_up(folder):
    """check prints findings.csv a line each, and counts them."""
    for sample in SAMPLES:
        to = folder / sample.stem
        run("packet", sample, "--to", to)
        done = run("check", sample)
        lines = done.stdout.decode().splitlines()
        with open(to / "findings.csv", newline="", encoding="utf-8-sig") as table:
            rows = list(csv.DictReader(table))
        wanted = []
        for row in rows:
            place = " ".join(word for word in (row["grade"], row["id"], row["wall"], row["mark"]) if word)
            source = f" [{row['source']}]" if row["source"] else ""
            wanted.append(f"{place}: {row['where']}: {row['why']} -> {row['do']}{source}")
        counts = {grade: sum(row["grade"] == grade for row in rows) for grade in ("stop", "look", "note")}
        wanted.append(", ".join(f"{grade} {count}" for grade, count in counts.items()))
        check(lines == wanted, f"{sample.name}: check says\n" + "\n".join(lines) + "\nand not\n" + "\n".join(wanted))
        check(done.returncode == (1 if counts["stop"] else 0), f"{sample.name}: exit {done.returncode}")
        words = done.stdout.decode()
        lacking = re.search(r"finding\.|screws\.[a-z]|\{", words)
        check(not lacking, f"{sample.name}: every finding has its words and values")
    return len(SAMPLES)


def main():
    checked = 0
    for part in (wrong_words, asked, wrong_files, wrong_places, packet, no_qt, small_shed, older_pages, findings_line_up):
        folder = Path(tempfile.mkdtemp(prefix="rib wright's, "))
        try:
            checked += part(folder)
        finally:
            shutil.rmtree(folder)
    finish(checked)


if __name__ == "__main__":
    os.umask(0o022)
    main()
