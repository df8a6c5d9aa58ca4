#!/usr/bin/python3
"""Reads the tables of every sample's packet as a spreadsheet would and adds them up again.

The contract: RFC 4180, units in the header, area = cover x length x quantity, every piece in one line of the order, every corner
of a piece within its blank.
"""

import csv
import io
import sys
import tempfile
from fractions import Fraction
from pathlib import Path

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent / "shared"))
from packets import SAMPLES, check, finish, inches, read_job, run  # noqa: E402

COLUMNS = {
    "sheet-order.csv": "line,profile,thickness_in,colour,length,length_in,quantity,total_length_ft,area_sqft,weight_lb,marks",
    "pieces.csv": "wall,mark,module,hang_order,left_in,right_in,bottom_in,low_edge_in,high_edge_in,blank_length_in,kind,batch,"
    "left_edge_in,right_edge_in,peak_u_in,order_code",
    "cuts.csv": "mark,ring,corner,x_in,y_in",
    "findings.csv": "grade,id,wall,mark,where,why,do,source",
    "contents.csv": "file,what,pages,bytes",
}
KINDS = {"full", "rip", "rake", "notched", "above", "below", "mixed"}
METRIC = {"_in": "_mm", "_ft": "_m", "_sqft": "_m2", "_lb": "_kg"}
FOOT = Fraction("304.8")
POUND = Fraction("0.45359237")


def header(name, units):
    columns = COLUMNS[name].split(",")
    if units == "ft-in":
        return columns
    return [next((c[: -len(i)] + m for i, m in METRIC.items() if c.endswith(i)), c) for c in columns]


def read(folder, name, units):
    raw = (folder / name).read_bytes()
    check(b"\r\n" in raw and raw.endswith(b"\r\n"), f"{folder.name}/{name}: records end with CR LF")
    check(raw.count(b"\n") == raw.count(b"\r\n"), f"{folder.name}/{name}: no bare line end")
    rows = list(csv.reader(io.StringIO(raw.decode("utf-8"), newline=""), strict=True))
    check(rows[0] == header(name, units), f"{folder.name}/{name}: header {rows[0]}")
    # Without units in the keys, so that both kinds of tables are looked at alike.
    keys = COLUMNS[name].split(",")
    check(all(len(row) == len(keys) for row in rows), f"{folder.name}/{name}: every row is as long as its header")
    return [dict(zip(keys, row)) for row in rows[1:]]


def twice_area(corners):
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, corners[1:] + corners[:1]))


def order_adds_up(where, job, order, pieces, units):
    covers = {p["id"]: inches(p["cover"]) for p in job["profiles"]}
    inch = Fraction(1) if units == "ft-in" else Fraction("25.4")
    large = 12 * inch if units == "ft-in" else Fraction(1000)  # small units in a large one
    check(sum(int(line["quantity"]) for line in order) == len(pieces), f"{where}: as many sheets as pieces")
    check([line["line"] for line in order] == [str(i + 1) for i in range(len(order))], f"{where}: lines are numbered")
    by_line = {}
    for piece in pieces:
        by_line.setdefault(piece["order_code"].rstrip("abcdefghijklmnopqrstuvwxyz"), []).append(piece)
    for line in order:
        at = f"{where}: order line {line['line']}"
        length, quantity = Fraction(line["length_in"]), int(line["quantity"])
        mine = by_line.get(line["line"], [])
        check(sorted(line["marks"].split()) == sorted(p["mark"] for p in mine), f"{at}: its marks are its pieces")
        check(quantity == len(line["marks"].split()), f"{at}: a mark a sheet")
        check(length > 0 and quantity > 0, f"{at}: something to order")
        total = length * quantity / large
        check(abs(Fraction(line["total_length_ft"]) - total) < Fraction(1, 10**9), f"{at}: total length")
        area = covers[line["profile"]] * inch * length * quantity / large**2
        check(abs(Fraction(line["area_sqft"]) - area) <= Fraction(1, 200), f"{at}: area = cover x length x quantity")
        mark = " mm" if units == "mm" else ("'", '"', " mm")
        check(line["length"].endswith(mark), f"{at}: length {line['length']!r} carries its unit")
        check(abs(inches(line["length"]) * inch - length) < Fraction(1, 10**6), f"{at}: both lengths are the same")
        for piece in mine:
            check(Fraction(piece["blank_length_in"]) <= length, f"{at}: long enough for {piece['mark']}")


def pieces_are_whole(where, pieces, cuts):
    check(len({p["mark"] for p in pieces}) == len(pieces), f"{where}: every mark once")
    corners = {}
    for cut in cuts:
        corners.setdefault((cut["mark"], int(cut["ring"])), []).append(cut)
    hands, last = {}, {}
    for piece in pieces:
        at = f"{where}: {piece['mark']}"
        width = Fraction(piece["right_in"]) - Fraction(piece["left_in"])
        check(piece["kind"] in KINDS, f"{at}: kind {piece['kind']!r}")
        check(int(piece["hang_order"]) == last.get(piece["wall"], 0) + 1, f"{at}: hangs after the one before")
        last[piece["wall"]] = int(piece["hang_order"])
        edges = [Fraction(piece[k]) for k in ("left_edge_in", "right_edge_in")]
        check(
            Fraction(piece["low_edge_in"]) <= min(edges) and max(edges) <= Fraction(piece["high_edge_in"]),
            f"{at}: its edges lie between low and high",
        )
        check(
            Fraction(piece["left_in"]) <= Fraction(piece["peak_u_in"]) <= Fraction(piece["right_in"]),
            f"{at}: its peak lies on it",
        )
        for ring in range(sum(1 for key in corners if key[0] == piece["mark"])):
            rows = corners.get((piece["mark"], ring), [])
            points = [(Fraction(r["x_in"]), Fraction(r["y_in"])) for r in rows]
            if not check(len(points) >= 3, f"{at}: ring {ring} has corners"):
                continue
            check([r["corner"] for r in rows] == [str(i + 1) for i in range(len(rows))], f"{at}: corners are numbered")
            check(points[0] == min(points), f"{at}: ring {ring} begins at the starting edge's lowest corner")
            check(all(0 <= x <= width and y >= 0 for x, y in points), f"{at}: ring {ring} lies on the sheet")
            hands.setdefault(piece["wall"], set()).add(twice_area(points) > 0)
            if ring == 0:
                check(min(x for x, _ in points) == 0 and max(x for x, _ in points) == width, f"{at}: width of its metal")
                check(min(y for _, y in points) == 0, f"{at}: y counts from its lowest end")
                check(max(y for _, y in points) <= Fraction(piece["blank_length_in"]), f"{at}: fits its blank")
        check((piece["mark"], 0) in corners, f"{at}: has an outline")
    check(set(m for m, _ in corners) == {p["mark"] for p in pieces}, f"{where}: cuts and pieces name the same marks")
    for wall, turns in hands.items():
        check(len(turns) == 1, f"{where}: all rings of wall {wall} go round the same way")


def contents_are_there(where, folder, contents):
    listed = {row["file"]: row for row in contents}
    there = {p.name for p in folder.iterdir()} - {"contents.csv"}
    check(set(listed) == there, f"{where}: contents.csv lists what is there: {sorted(set(listed) ^ there)}")
    for name in set(listed) & there:
        check(int(listed[name]["bytes"]) == (folder / name).stat().st_size, f"{where}: bytes of {name}")
        check(listed[name]["what"] != "", f"{where}: {name} is explained")


def main():
    checked = 0
    for sample in SAMPLES:
        tables = {}
        for units in ("ft-in", "mm"):
            with tempfile.TemporaryDirectory() as temporary:
                folder = Path(temporary) / f"{sample.stem} {units}"
                done = run("packet", sample, "--to", folder, "--units", units)
                if not check(done.returncode in (0, 1), f"{sample.name}: {done.stderr.decode()}"):
                    continue
                t = tables[units] = {name: read(folder, name, units) for name in COLUMNS}
                where = f"{sample.name} {units}"
                order_adds_up(where, read_job(sample), t["sheet-order.csv"], t["pieces.csv"], units)
                pieces_are_whole(where, t["pieces.csv"], t["cuts.csv"])
                contents_are_there(where, folder, t["contents.csv"])
                grades = [row["grade"] for row in t["findings.csv"]]
                check(set(grades) <= {"stop", "look", "note"}, f"{where}: grades {set(grades)}")
                check(done.returncode == (1 if "stop" in grades else 0), f"{where}: 1 just when something stops")
                alone = run("order", sample, "--units", units)
                check(alone.stdout == (folder / "sheet-order.csv").read_bytes(), f"{where}: order prints the same table")
                checked += 1
        same_in_both_units(sample.name, tables)
    finish(checked)


def same_in_both_units(where, tables):
    """The same nanometres stand in both."""
    if len(tables) < 2:
        return
    for name in ("pieces.csv", "cuts.csv", "sheet-order.csv"):
        for a, b in zip(tables["ft-in"][name], tables["mm"][name]):
            for key in a:
                if key.endswith("_in"):
                    apart = abs(Fraction(a[key]) * Fraction("25.4") - Fraction(b[key]))
                    check(apart <= Fraction(1, 2 * 10**6), f"{where} {name} {key}: {a[key]} in is {b[key]} mm")
        check(len(tables["ft-in"][name]) == len(tables["mm"][name]), f"{where} {name}: as many rows in both units")
    for a, b in zip(tables["ft-in"]["sheet-order.csv"], tables["mm"]["sheet-order.csv"]):
        if "translucent" in (a["colour"], b["colour"]):
            check(a["weight_lb"] == b["weight_lb"] == "", f"{where}: no one states the weight of line {a['line']}")
            continue
        pounds, kilograms = Fraction(a["weight_lb"]), Fraction(b["weight_lb"])
        check(abs(pounds * POUND - kilograms) <= Fraction(1, 10), f"{where}: weight of line {a['line']}")
        check(abs(Fraction(a["area_sqft"]) * FOOT**2 / 10**6 - Fraction(b["area_sqft"])) <= Fraction(1, 100), f"{where}: area of line {a['line']}")


if __name__ == "__main__":
    main()
