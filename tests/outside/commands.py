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
  ribwright cut LIST               how a list of lengths is cut from the least stock, as CSV, and whether that is
                                   proved; LIST: CSV with the columns length and quantity, and mark if wanted,
                                   or plain whole numbers: stock 1952, kerf 2, then a length and its count a line

  --units ft-in|mm                 units of tables and pages (usual: the job's own)
  --paper letter|tabloid|a4|a3     paper of the packet (usual: letter, or a4 in millimetres)
  --language en|es                 language of pages and findings (usual: en), or of the window
                                   (usual: the system's)
  --stock LENGTH[:COST]            stock that a CSV is cut from; once for each length of stock
  --kerf LENGTH                    lost between two pieces (usual: nothing)
  --end-trim LENGTH                lost at both ends of each stock together (usual: nothing)
  --effort N                       steps of work after which the best plan so far is given (usual: 3000000000)
  --proof                          with the plan why none is better, in points to be checked by hand
  --help, --version

Exit: 0 done and nothing stops; 1 done, but some finding is a stop; 2 the job cannot be read or
the command is wrong.
"""
COMMANDS = "packet, order, check and cut"
OPTIONS = (
    "--to, --units, --paper, --language, --stock, --kerf, --end-trim, --effort, --proof, --help and --version"
)

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
    (["order", "a.json", "--language", "es"], "--language: goes with packet, check, cut or the window"),
    (["check", "a.json", "--language", "EN"], '--language: "EN" is no language of pages and findings; write en or es'),
    (["check", "a.json", "--language"], "--language: wants a value after it: en or es"),
    (
        ["a.json", "--units", "mm"],
        "--units: goes with packet, order, check or cut; in the window choose the job's units there",
    ),
    (
        ["packet", "a.json", "--to", "d", "--paper", "a5"],
        '--paper: "a5" is no paper size; write letter, tabloid, a4 or a3',
    ),
    (["cut"], "cut: wants a list of lengths after it"),
    (["cut", "a.csv", "b.csv"], "b.csv: is one word too many; only one list at a time"),
    (["cut", "a.csv", "--to", "d"], "--to: goes with packet alone"),
    (["order", "a.json", "--kerf", "1"], "--kerf: goes with cut alone"),
    (["check", "a.json", "--proof"], "--proof: goes with cut alone"),
    (["a.json", "--stock", "20'"], "--stock: goes with cut alone"),
    (["cut", "a.csv", "--stock"], "--stock: wants a value after it: a length, and a cost behind a colon if it has one"),
    (["cut", "a.csv", "--kerf="], "--kerf: wants a length, and it is empty"),
    (["cut", "a.csv", "--kerf", "1", "--kerf", "2"], "--kerf: is there twice; write it once"),
    (["cut", "a.csv", "--effort", "much"], '--effort: "much" is no number of steps; write a whole number'),
    (["cut", "a.csv", "--effort=-1"], '--effort: "-1" is no number of steps; write a whole number'),
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


NO_DISPLAY = "window: there is no display to open it on; packet, order, check and cut need none\n"


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
  sharing.csv: which pieces come out of one blank, and where in it
  bundles.csv: how the sheets are packed, from the top of each bundle
  delta-order.csv: what is to be ordered now, what is used from site, what is left over
  pieces.csv: every piece: its place, size and kind
  holes.csv: every hole of every sheet: not for drilling
  cuts.csv: corners of every piece, to cut by
  module-marks.csv: where the leading edge of each sheet stands
  trim-order.csv: trim to order: stock lengths
  trim-cuts.csv: trim: what is cut from each stock length
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


TRIM = """mark,length,quantity,colour
head,8' 2",3,red
jamb,7' 0-1/2",2,red
sill,3' 6",4,red
"""
PLAIN = "stock 100  # bars\n88 1\n60 4\n55 2\n30 3\n"
PLAIN_PROOF = """Pieces of 55 to 88 count 1 point each.
Pieces of 30 count 0 points each.
No stock of 100 can hold more than 1 points.
The order is worth 7 points.
6 stock lengths hold at most 6 points: so 7 are needed, and no plan uses fewer.
"""


def cut_rows(done):
    """The plan's rows, and what is said below it."""
    code, out, error = said(done)
    check(code == 0 and error == "", f"cut: {code} {error}")
    table, _, rest = out.rpartition("\r\n")
    return list(csv.DictReader(table.splitlines())), rest


def cut_lists(folder):
    """What is wanted is what is cut, in either form of list; the result stands in one line below."""
    trim, plain = folder / "trim, north.csv", folder / "bars.txt"
    trim.write_text(TRIM, encoding="utf-8")
    plain.write_text(PLAIN, encoding="utf-8")

    rows, rest = cut_rows(run("cut", trim, "--stock", "10' 2\"", "--kerf", "1/8"))
    check(rest == "total 7, proved\n", f"cut, CSV: {rest}")  # no two of head and jamb fit one stock, two sills do
    columns = "pattern,times,stock,stock_in,length,length_in,quantity,mark,left,left_in"
    check(",".join(rows[0]) == columns, f"cut, columns: {list(rows[0])}")
    count = {}
    for row in rows:
        count[row["mark"]] = count.get(row["mark"], 0) + int(row["times"]) * int(row["quantity"])
    check(count == {"head": 3, "jamb": 2, "sill": 4}, f"cut, what is wanted: {count}")

    rows, rest = cut_rows(run("cut", trim, "--stock", "3100", "--stock=6200", "--units", "mm", cwd=folder))
    check(rest.startswith("total ") and rest.endswith(", proved\n"), f"cut, two stocks: {rest}")
    check("stock_mm" in rows[0] and "left_mm" in rows[0], f"cut, metric columns: {list(rows[0])}")
    _, rest = cut_rows(run("cut", trim, "--stock", "10' 2\":12.50", "--stock", "20' 4\":24"))
    check(rest == "total 73.5, proved\n" or rest == "total 72, proved\n", f"cut, costs: {rest}")

    rows, rest = cut_rows(run("cut", plain))
    check(rest == "total 7, proved\n", f"cut, plain: {rest}")
    check(list(rows[0]) == ["pattern", "times", "stock", "length", "quantity", "left"], f"plain columns: {list(rows[0])}")
    _, rest = cut_rows(run("cut", plain, "--proof"))
    check(rest == "total 7, proved\n" + PLAIN_PROOF, f"cut, proof: {rest}")
    _, rest = cut_rows(run("cut", plain, "--proof", "--language", "es"))
    check("ningún plan usa menos" in rest, f"cut, proof in Spanish: {rest}")
    _, rest = cut_rows(run("cut", SOURCE / "tests/outside/cutting/classic/ft0060_1.txt", "--effort", "200000"))
    check(re.fullmatch(r"total 2[1-9], bound 20\n", rest), f"cut, little effort: {rest}")
    same = said(run("cut", trim, "--stock", "20'")), said(run("cut", trim, "--stock", "20'"))
    check(same[0] == same[1], "the same list gives the same plan")

    order = folder / "order.csv"
    order.write_bytes(run("order", SAMPLE).stdout)
    _, rest = cut_rows(run("cut", order, "--stock", "40'"))
    check(rest.endswith(", proved\n"), f"cut, a sheet order: {rest}")
    return 10


def cut_refused(folder):
    for text, words, error in CUT_REFUSED:
        (folder / "list").write_text(text, encoding="utf-8")
        compare(f"cut {text!r} {words}", run("cut", "list", *words, cwd=folder), 2, "", error + "\n")
    return len(CUT_REFUSED)


CSV = "length,quantity\n8' 2\",3\n"
# text of the list, options, then all of standard error
CUT_REFUSED = [
    (CSV, [], "--stock: is wanted with a table of lengths; write --stock and the length they are cut from"),
    (CSV, ["--stock", "10 fo"], '--stock: "10 fo" is no length; write 7\' 6", 7 ft 6 in or 2286 mm'),
    (CSV, ["--stock", "20':x"], '--stock: "x" is no cost; write it like 12 or 12.50'),
    (
        CSV,
        ["--stock", "20':3", "--stock", "10'"],
        "--stock: has a cost for some lengths and none for others; state one for each or for none",
    ),
    ("length,count\n1,2\n", ["--stock", "20'"], "list: line 1: no column is called quantity"),
    ("size,quantity\n1,2\n", ["--stock", "20'"], "list: line 1: has no column length; name it length, length_in or length_mm"),
    (
        "length,quantity\n1,2.5\n0,1\n",
        ["--stock", "20'"],
        'list: line 2, quantity: "2.5" is no count; write a whole number of pieces\n'
        'list: line 3, length: "0" is no length to cut; it is more than nothing',
    ),
    ("stock 10\n3 x\n", [], 'list: line 2: "x" is no whole number; write digits alone'),
    (
        "stock 10\n3 1\n",
        ["--kerf", "1"],
        "list: states its own stock in numbers without a unit; leave out --stock, --kerf, --end-trim and --units",
    ),
    ("stock 10\nsupply 1\n6 2\n", [], "list: stocks: hold too little for what is wanted; state more supply"),
]


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
    for part in (wrong_words, asked, wrong_files, wrong_places, packet, no_qt, small_shed, older_pages, findings_line_up, cut_lists, cut_refused):
        folder = Path(tempfile.mkdtemp(prefix="rib wright's, "))
        try:
            checked += part(folder)
        finally:
            shutil.rmtree(folder)
    finish(checked)


if __name__ == "__main__":
    os.umask(0o022)
    main()
