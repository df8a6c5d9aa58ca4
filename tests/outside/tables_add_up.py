#!/usr/bin/python3
"""Reads the tables of every sample's packet as a spreadsheet would and adds them up again.

The contract: RFC 4180, units in the header, area = cover x length x quantity, every piece in one line of the order, every corner
of a piece within its blank, every hole in metal and its screw counted once.
"""

import csv
import io
import re
import sys
import tempfile
from fractions import Fraction
from pathlib import Path

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent / "shared"))
from hole_rows import holes_add_up  # noqa: E402
from packets import SAMPLES, check, finish, inches, read_job, run  # noqa: E402

COLUMNS = {
    "sharing.csv": "blank,way,profile,thickness_in,colour,length,length_in,part,mark,wall,turned,upside_down,left_in,right_in,"
    "from_in,to_in,saved_in,line",
    "sheet-order.csv": "line,profile,thickness_in,colour,length,length_in,quantity,total_length_ft,area_sqft,weight_lb,marks,"
    "spares,blank_lengths_in,metal_sqft,pieces_sqft,cut_outs_sqft,drops_sqft,waste_sqft,spares_sqft,waste_lb",
    "delta-order.csv": "list,profile,thickness_in,colour,length,length_in,quantity,cut_to_in,order_state,marks",
    "bundles.csv": "bundle,wall,set_down_from_in,set_down_to_in,place,marks,line,profile,thickness_in,colour,length,length_in,"
    "weight_lb,bundle_weight_lb",
    "pieces.csv": "wall,mark,module,hang_order,left_in,right_in,bottom_in,low_edge_in,high_edge_in,blank_length_in,kind,batch,"
    "left_edge_in,right_edge_in,peak_u_in,order_code",
    "holes.csv": "mark,support,x_in,s_in,wall,u_in,z_in,through_lap,screw,edge_x_in,chalk_in,count,basis,status,drilled,zone",
    "cuts.csv": "mark,ring,corner,x_in,y_in",
    "module-marks.csv": "wall,band,mark,leading_edge_u_in,base_in,top_girt_in,plumb_check,hung",
    "trim-order.csv": "line,trim,colour,thickness_in,length,length_in,quantity,bought_ft,weight_lb,pieces_ft,kerfs_ft,ends_ft,"
    "drops_ft,waste_ft,result,at_least_ft",
    "trim-cuts.csv": "trim,colour,stick,stock,stock_in,cut,at_in,length_in,piece,part,parts,piece_length_in,wall,what,side,"
    "opening,lip_in,laps",
    "openings.csv": "wall,id,kind,from,column,distance_in,to,width_in,height_in,sill_in,jamb_trim_in,jamb_clearance_in,"
    "head_clearance_in,sill_clearance_in,frame_face_in,frame_bend_in,frame_member",
    "survey.csv": "wall,line,u_in,height_in,within_in,by,date",
    "findings.csv": "grade,id,wall,mark,where,why,do,source",
    "contents.csv": "file,what,pages,bytes",
}
KINDS = {"full", "rip", "rake", "notched", "above", "below", "mixed"}
METRIC = {"_in": "_mm", "_ft": "_m", "_sqft": "_m2", "_lb": "_kg"}
POUND = Fraction("0.45359237")
INCH, FOOT, MILLIMETRE, METRE = 25_400_000, 304_800_000, 10**6, 10**9  # nanometres


def nanometres(text, unit):
    """A table's figure as the whole nanometres that it stands for."""
    return round(Fraction(text) * unit)


def in_nanometres(units):
    return lambda text: nanometres(text, small(units))


def small(units):
    return INCH if units == "ft-in" else MILLIMETRE


def large(units):
    return FOOT if units == "ft-in" else METRE


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
    covers = {p["id"]: round(inches(p["cover"]) * INCH) for p in job["profiles"]}
    sheets = sum(int(line["quantity"]) - int(line["spares"]) for line in order)
    check(sheets == sum(len(line["marks"].split()) for line in order), f"{where}: a mark a sheet and none for spares")
    check([line["line"] for line in order] == [str(i + 1) for i in range(len(order))], f"{where}: lines are numbered")
    by_line = {}
    for piece in pieces:
        by_line.setdefault(piece["order_code"].rstrip("abcdefghijklmnopqrstuvwxyz"), []).append(piece)
    for line in order:
        at = f"{where}: order line {line['line']}"
        length, quantity = nanometres(line["length_in"], small(units)), int(line["quantity"])
        mine = by_line.get(line["line"], [])
        marks, spares = line["marks"].split(), int(line["spares"])
        check(sorted("+".join(marks).split("+")) == sorted(p["mark"] for p in mine), f"{at}: its marks are its pieces")
        check(quantity == len(marks) + spares, f"{at}: a sheet a mark, and its spares")
        steel_adds_up(at, job, line, marks, units)
        check(length > 0 and quantity > 0, f"{at}: something to order")
        check(nanometres(line["total_length_ft"], large(units)) == length * quantity, f"{at}: total length")
        area = Fraction(covers[line["profile"]] * length * quantity, large(units) ** 2)
        check(abs(Fraction(line["area_sqft"]) - area) <= Fraction(1, 200), f"{at}: area = cover x length x quantity")
        mark = " mm" if units == "mm" else ("'", '"', " mm")
        check(line["length"].endswith(mark), f"{at}: length {line['length']!r} carries its unit")
        check(inches(line["length"]) * INCH == length, f"{at}: both lengths are the same")
        for piece in mine:
            check(nanometres(piece["blank_length_in"], small(units)) <= length, f"{at}: long enough for {piece['mark']}")


def steel_adds_up(at, job, line, marks, units):
    """bought = pieces + cut-outs + drops + waste + spares, each to two decimals; and no blank longer than its sheet."""
    length = nanometres(line["length_in"], small(units))
    profile = next(p for p in job["profiles"] if p["id"] == line["profile"])
    width = sum(round(inches(profile[part]) * INCH) for part in ("over", "cover", "under"))
    bought = Fraction(width * length * int(line["quantity"]), large(units) ** 2)
    check(abs(Fraction(line["metal_sqft"]) - bought) <= Fraction(1, 200), f"{at}: metal width x length x quantity")
    parts = sum(Fraction(line[key]) for key in line if key.endswith("_sqft") and key not in ("metal_sqft", "area_sqft"))
    check(abs(parts - bought) <= Fraction(3, 100), f"{at}: pieces, cut-outs, drops, waste and spares are all of it")
    blanks = line["blank_lengths_in"].split()
    check(len(blanks) == len(marks), f"{at}: blanks for every sheet")
    for blank in blanks:
        used = sum(nanometres(one, small(units)) for one in blank.split("+"))
        check(used <= length, f"{at}: {blank} is no more than the sheet")


def bundles_hold(where, job, bundles, order, pieces, units):
    """Every sheet in one bundle, within the limits, as it is hung."""
    hung = {p["mark"]: int(p["hang_order"]) for p in pieces}
    limits = {"heaviest_kilograms": 1000, "most_sheets": 40, "length_spread": "120\""} | job.get("settings", {}).get("bundles", {})
    by_bundle = {}
    for row in bundles:
        by_bundle.setdefault(row["bundle"], []).append(row)
    for line in order:
        mine = [row for row in bundles if row["line"] == line["line"]]
        check(len(mine) == int(line["quantity"]), f"{where}: all of line {line['line']} is packed")
        marks = sorted(row["marks"] for row in mine if row["marks"])
        check(marks == sorted(line["marks"].split()), f"{where}: each sheet of line {line['line']} once")
    for name, rows in by_bundle.items():
        at = f"{where}: bundle {name}"
        check([row["place"] for row in rows] == [str(i + 1) for i in range(len(rows))], f"{at}: from the top")
        check(len({(row["wall"], row["profile"], row["colour"], row["thickness_in"]) for row in rows}) == 1, f"{at}: one kind")
        check(len(rows) <= limits["most_sheets"], f"{at}: not too many sheets")
        lengths = [nanometres(row["length_in"], small(units)) for row in rows]
        spread = round(inches(limits["length_spread"]) * INCH)
        check(max(lengths) - min(lengths) <= spread, f"{at}: lengths near each other")
        if rows[0]["weight_lb"]:
            unit = POUND if units == "ft-in" else 1
            total = Fraction(rows[0]["bundle_weight_lb"])
            check(abs(sum(Fraction(row["weight_lb"]) for row in rows) - total) <= Fraction(len(rows) + 1, 20), f"{at}: weight")
            check(len(rows) == 1 or total * unit <= limits["heaviest_kilograms"] + 1, f"{at}: not too heavy")
        orders = [hung[row["marks"].split("+")[0]] for row in rows if row["marks"]]
        check(orders == sorted(orders), f"{at}: first hung on top")


def trim_adds_up(where, job, order, cuts, units):
    trims = {t["id"]: t for t in job.get("trims", [])}
    check([line["line"] for line in order] == [str(i + 1) for i in range(len(order))], f"{where}: lines are numbered")
    kerf = round(inches(job.get("settings", {}).get("kerf", "1/8\"")) * INCH)
    small_, large_ = in_nanometres(units), lambda text: nanometres(text, large(units))
    sticks, parts = {}, {}
    for cut in cuts:
        sticks.setdefault((cut["trim"], cut["colour"], int(cut["stick"])), []).append(cut)
        if cut["cut"]:
            parts.setdefault(cut["piece"], []).append(cut)
    by_length = {}
    for (trim, colour, number), rows in sticks.items():
        at = f"{where}: {trim} {colour} stick {number}"
        stock = small_(rows[0]["stock_in"])
        check(inches(rows[0]["stock"]) * INCH == stock, f"{at}: both lengths are the same")
        ends = round(inches(trims[trim].get("end_trim", "0\"")) * INCH)
        pieces = [row for row in rows if row["cut"]]
        rest = [row for row in rows if not row["cut"]]
        check([int(row["cut"]) for row in pieces] == list(range(1, len(pieces) + 1)), f"{at}: cuts are numbered")
        check(len(rest) <= 1 and all(row["what"] in ("drop", "waste") for row in rest), f"{at}: one rest")
        kerfs = kerf * (len(pieces) - 1 + sum(row["what"] == "drop" for row in rest))
        check(sum(small_(row["length_in"]) for row in rows) + kerfs + ends == stock, f"{at}: adds up to its stock")
        for one, after in zip(pieces, pieces[1:]):
            check(small_(one["at_in"]) + small_(one["length_in"]) + kerf == small_(after["at_in"]), f"{at}: a kerf apart")
        by_length.setdefault((trim, colour, stock), []).append(pieces)
    for piece, rows in parts.items():
        at = f"{where}: {piece}"
        count, lap = int(rows[0]["parts"]), round(inches(trims[rows[0]["trim"]].get("splice_lap", "2\"")) * INCH)
        check(sorted(int(r["part"]) for r in rows) == list(range(1, count + 1)), f"{at}: every part once")
        length = sum(small_(r["length_in"]) for r in rows) - lap * (count - 1)
        check(length == small_(rows[0]["piece_length_in"]), f"{at}: parts less laps are the piece")
    check({(l["trim"], l["colour"], small_(l["length_in"])) for l in order} == set(by_length), f"{where}: what is ordered is cut")
    for line in order:
        at = f"{where}: trim line {line['line']}"
        stock, quantity = small_(line["length_in"]), int(line["quantity"])
        mine = by_length[line["trim"], line["colour"], stock]
        check(quantity == len(mine), f"{at}: as many as are cut")
        check(large_(line["bought_ft"]) == stock * quantity, f"{at}: bought")
        shares = ("pieces_ft", "kerfs_ft", "ends_ft", "drops_ft", "waste_ft")
        check(sum(large_(line[share]) for share in shares) == stock * quantity, f"{at}: bought = its shares")
        check(sum(small_(row["length_in"]) for rows in mine for row in rows) == large_(line["pieces_ft"]), f"{at}: pieces")
        check(line["result"] in ("proved", "not proved", "to length"), f"{at}: result {line['result']!r}")


def delta_covers_the_order(where, delta, order, units):
    """Every sheet of the order is to be ordered or comes from one that is there, long enough, each mark once."""
    marks = sorted(mark for line in order for mark in line["marks"].split())
    served = sorted(mark for row in delta if row["list"] in ("order", "use") for mark in row["marks"].split())
    check(marks == served, f"{where}: each sheet ordered or served once")
    for row in delta:
        at = f"{where}: delta-order.csv {row['list']} {row['length']}"
        check(row["list"] in ("order", "use", "left", "to come"), f"{at}: a list that is known")
        check((row["cut_to_in"] != "") == (row["list"] == "use"), f"{at}: cut to just what is used")
        if row["list"] == "use":
            check(nanometres(row["cut_to_in"], small(units)) <= nanometres(row["length_in"], small(units)), f"{at}: long enough")
            check(int(row["quantity"]) >= len(row["marks"].split()), f"{at}: a sheet each")
            check(row["order_state"] in ("on site", "to come"), f"{at}: where it is")


def pieces_are_whole(where, pieces, cuts, units):
    check(len({p["mark"] for p in pieces}) == len(pieces), f"{where}: every mark once")
    rings = {}
    for cut in cuts:
        rings.setdefault(cut["mark"], {}).setdefault(int(cut["ring"]), []).append(cut)
    check(set(rings) == {p["mark"] for p in pieces}, f"{where}: cuts and pieces name the same marks")
    turns, last = {}, {}
    for piece in pieces:
        at = f"{where}: {piece['mark']}"
        size = {key: nanometres(piece[key], small(units)) for key in piece if key.endswith("_in")}
        check(piece["kind"] in KINDS, f"{at}: kind {piece['kind']!r}")
        check(int(piece["hang_order"]) == last.get(piece["wall"], 0) + 1, f"{at}: hangs after the one before")
        last[piece["wall"]] = int(piece["hang_order"])
        edges = [size["left_edge_in"], size["right_edge_in"]]
        check(size["low_edge_in"] <= min(edges), f"{at}: its edges are not below its low edge")
        check(max(edges) <= size["high_edge_in"], f"{at}: its edges are not above its high edge")
        check(size["left_in"] <= size["peak_u_in"] <= size["right_in"], f"{at}: its peak lies on it")
        mine = rings.get(piece["mark"], {})
        check(sorted(mine) == list(range(len(mine))), f"{at}: rings are numbered from 0")
        for ring, rows in mine.items():
            points = [(nanometres(r["x_in"], small(units)), nanometres(r["y_in"], small(units))) for r in rows]
            ring_is_whole(f"{at} ring {ring}", ring, rows, points, size)
            turns.setdefault(piece["wall"], set()).add(twice_area(points) > 0)
    for wall, ways in turns.items():
        check(len(ways) == 1, f"{where}: all rings of wall {wall} go round the same way")


def ring_is_whole(at, ring, rows, points, size):
    width = size["right_in"] - size["left_in"]
    height = size["high_edge_in"] - size["bottom_in"]
    check(len(points) >= 3 and twice_area(points) != 0, f"{at}: has an area")
    check([r["corner"] for r in rows] == [str(i + 1) for i in range(len(rows))], f"{at}: corners are numbered")
    check(points[0] == min(points), f"{at}: begins at the starting edge's lowest corner")
    check(all(0 <= x <= width and 0 <= y <= height for x, y in points), f"{at}: lies on the sheet")
    for a, b, c in zip(points, points[1:] + points[:1], points[2:] + points[:2]):
        straight = (b[0] - a[0]) * (c[1] - b[1]) == (b[1] - a[1]) * (c[0] - b[0])
        check(not straight, f"{at}: no corner on a straight side at {b}")
    if ring == 0:
        xs, ys = [x for x, _ in points], [y for _, y in points]
        check((min(xs), max(xs)) == (0, width), f"{at}: as wide as its metal")
        check((min(ys), max(ys)) == (0, height), f"{at}: y counts from its lowest end to its high edge")
        check(height <= size["blank_length_in"], f"{at}: fits its blank")


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
                trim_adds_up(where, read_job(sample), t["trim-order.csv"], t["trim-cuts.csv"], units)
                order_adds_up(where, read_job(sample), t["sheet-order.csv"], t["pieces.csv"], units)
                bundles_hold(where, read_job(sample), t["bundles.csv"], t["sheet-order.csv"], t["pieces.csv"], units)
                delta_covers_the_order(where, t["delta-order.csv"], t["sheet-order.csv"], units)
                pieces_are_whole(where, t["pieces.csv"], t["cuts.csv"], units)
                screws = holes_add_up(where, read_job(sample), t["holes.csv"], t["pieces.csv"], t["cuts.csv"], in_nanometres(units))
                check(screws > 0, f"{where}: has screws")
                marks_are_edges(where, t["module-marks.csv"], t["pieces.csv"], units)
                contents_are_there(where, folder, t["contents.csv"])
                grades = [row["grade"] for row in t["findings.csv"]]
                check(set(grades) <= {"stop", "look", "note"}, f"{where}: grades {set(grades)}")
                check(done.returncode == (1 if "stop" in grades else 0), f"{where}: 1 just when something stops")
                alone = run("order", sample, "--units", units)
                check(alone.stdout == (folder / "sheet-order.csv").read_bytes(), f"{where}: order prints the same table")
                checked += 1
        same_in_both_units(sample.name, tables)
    finish(checked)


def marks_are_edges(where, marks, pieces, units):
    """Every leading edge is an edge of that sheet's metal; the same stands at base and top girt."""
    number = in_nanometres(units)
    for mark in marks:
        # An opening may take the leading side of others away.
        own = [p for p in pieces if p["mark"] == mark["mark"] and p["kind"] in ("full", "rake")]
        edges = {number(p[side]) for p in own for side in ("left_in", "right_in")}
        check(not own or number(mark["leading_edge_u_in"]) in edges, f"{where}: {mark['mark']} leads at none of its edges")
        check(mark["base_in"] == mark["top_girt_in"], f"{where}: {mark['mark']} hangs plumb")
    check({p["mark"].split(".")[0] for p in pieces} <= {m["mark"] for m in marks}, f"{where}: every sheet is marked")


def same_in_both_units(where, tables):
    """The same nanometres stand in both."""
    if len(tables) < 2:
        return
    for name in ("pieces.csv", "holes.csv", "cuts.csv", "sheet-order.csv"):
        feet, metric = tables["ft-in"][name], tables["mm"][name]
        check(len(feet) == len(metric), f"{where} {name}: as many rows in both units")
        for a, b in zip(feet, metric):
            for key in (k for k in a if k.endswith("_in")):
                inch, millimetre = re.split("[ +]", a[key]), re.split("[ +]", b[key])  # a list of blanks in one cell
                same = [nanometres(one, INCH) for one in inch] == [nanometres(one, MILLIMETRE) for one in millimetre]
                check(same, f"{where} {name} {key}: {a[key]} in is {b[key]} mm")
    for a, b in zip(tables["ft-in"]["sheet-order.csv"], tables["mm"]["sheet-order.csv"]):
        at = f"{where}: line {a['line']}"
        apart = abs(Fraction(a["area_sqft"]) * FOOT**2 / METRE**2 - Fraction(b["area_sqft"]))
        check(apart <= Fraction(1, 100), f"{at}: the same area in both")
        if "translucent" in (a["colour"], b["colour"]):
            check(a["weight_lb"] == b["weight_lb"] == "", f"{at}: no one states the weight of a translucent sheet")
            continue
        apart = abs(Fraction(a["weight_lb"]) * POUND - Fraction(b["weight_lb"]))
        check(apart <= Fraction(1, 10), f"{at}: the same weight in both")


if __name__ == "__main__":
    main()
