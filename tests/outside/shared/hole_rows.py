"""What must hold for the rows of holes.csv, reckoned from the other tables and the job alone, in whole nanometres."""

import re

from packets import check, inches

INCH = 25_400_000
SUPPORT = re.compile(r"base|eave|rake|stitch|(girt|column|left jamb|right jamb|head|sill|end lap) \S.*")
DRILLED = {"stack", "in place", "no"}
STANDINGS = {("plan", "held"), ("plan", "cleared"), ("surveyed", "cleared")}


def length(text):
    """A length as the job states it, a minus before the whole of it."""
    if text.startswith("-"):
        return -length(text[1:])
    return round(inches(text) * INCH)


def holes_add_up(where, job, holes, pieces, cuts, to_nanometres):
    """`to_nanometres`: of a table's figure. Gives how many screws there are."""
    rows = [figures(row, to_nanometres) for row in holes]
    sheets = {p["mark"]: figures(p, to_nanometres) for p in pieces}
    rings = rings_by_mark(cuts, to_nanometres)
    diameters = {s["id"]: length(s["diameter"]) for s in job.get("screws", [])}
    at_place = {}
    for row in rows:
        at = f"{where}: hole {row['mark']} {row['support']} at u {row['u_in']}, z {row['z_in']}"
        known = check(row["mark"] in sheets, f"{at}: is in a piece")
        if not (check(row["screw"] in diameters, f"{at}: screw {row['screw']!r} is the job's") and known):
            return 0
        words_are_known(at, row)
        lies_in_metal(at, row, rings[row["mark"]], 3 * diameters[row["screw"]])
        at_place.setdefault((row["wall"], row["u_in"], row["z_in"]), []).append(row)
    screws_have_one_owner(where, at_place, job)
    measures_agree(where, rows, sheets)
    only_measured_girts_are_cleared(where, rows, sheets)
    rows_are_in_order(where, rows, pieces, sheets)
    holes_keep_apart(where, rows, diameters)
    out_of_openings(where, job, rows, pieces, sheets)
    check(sum(row["count"] for row in rows) == len(at_place), f"{where}: as many screws as places")
    return len(at_place)


def figures(row, to_nanometres):
    """The row with its lengths as numbers."""
    numbers = {key: to_nanometres(row[key]) for key in row if key.endswith("_in")}
    return {**row, **numbers, **({"count": int(row["count"])} if "count" in row else {})}


def rings_by_mark(cuts, to_nanometres):
    rings = {}
    for cut in cuts:
        corner = (to_nanometres(cut["x_in"]), to_nanometres(cut["y_in"]))
        rings.setdefault(cut["mark"], {}).setdefault(cut["ring"], []).append(corner)
    return rings


def words_are_known(at, row):
    check(SUPPORT.fullmatch(row["support"]), f"{at}: support {row['support']!r}")
    check(row["through_lap"] in ("yes", "no"), f"{at}: through lap {row['through_lap']!r}")
    check(row["count"] in (0, 1), f"{at}: count {row['count']}")
    check((row["basis"], row["status"]) in STANDINGS, f"{at}: {row['basis']}, {row['status']}")
    check(row["drilled"] in DRILLED, f"{at}: drilled {row['drilled']!r}")
    check(row["zone"] in ("field", "corner"), f"{at}: zone {row['zone']!r}")


def only_measured_girts_are_cleared(where, rows, sheets):
    """A sheet has one standing; on a girt's height by the plans none is cleared to be drilled in the stack."""
    standing = {}
    for row in rows:
        at = f"{where}: hole {row['mark']} {row['support']} at u {row['u_in']}, z {row['z_in']}"
        check(standing.setdefault(row["mark"], row["status"]) == row["status"], f"{at}: stands as its sheet does")
        girt = row["support"].startswith("girt ") and row["drilled"] == "stack"
        check(not girt or row["basis"] == "surveyed" or row["status"] == "held", f"{at}: held until it is measured")
        check(row["status"] == "held" or sheets[row["mark"]]["batch"], f"{at}: cleared with its batch")


def sides(ring):
    return zip(ring, ring[1:] + ring[:1])


def holds(ring, x, y):
    inside = False
    for (ax, ay), (bx, by) in sides(ring):
        if (ay > y) != (by > y):
            # x < ax + (bx - ax) (y - ay) / (by - ay), without a division
            left = (x - ax) * (by - ay) < (bx - ax) * (y - ay)
            inside ^= left if by > ay else (x - ax) * (by - ay) > (bx - ax) * (y - ay)
    return inside


def nearer_than(side, x, y, twice):
    """True when the place is nearer to the side than half of `twice`."""
    (ax, ay), (bx, by) = side
    dx, dy, px, py = bx - ax, by - ay, x - ax, y - ay
    along, square = px * dx + py * dy, dx * dx + dy * dy
    if along <= 0:
        return 4 * (px * px + py * py) < twice * twice
    if along >= square:
        return 4 * ((x - bx) ** 2 + (y - by) ** 2) < twice * twice
    return 4 * (px * dy - py * dx) ** 2 < twice * twice * square


def lies_in_metal(at, row, rings, three_d):
    """In its piece as cuts.csv cuts it, and 1.5 d from every edge of it (AISI S100-16)."""
    x, y = row["edge_x_in"], row["s_in"]
    check(holds(rings["0"], x, y), f"{at}: lies on its sheet")
    check(not any(holds(ring, x, y) for name, ring in rings.items() if name != "0"), f"{at}: lies in no cut-out")
    near = any(nearer_than(side, x, y, three_d) for ring in rings.values() for side in sides(ring))
    check(not near, f"{at}: is at least 1.5 d from every edge")


def screws_have_one_owner(where, at_place, job):
    both = {p.get("lap_holes", "upper sheet only") for p in job.get("patterns", [])} != {"upper sheet only"}
    for (wall, u, z), mine in at_place.items():
        at = f"{where}: hole of wall {wall} at u {u}, z {z}"
        check(sum(row["count"] for row in mine) == 1, f"{at}: one sheet owns it, the others are its twins")
        check(len({row["mark"] for row in mine}) == len(mine), f"{at}: once in a sheet")
        for key in ("support", "through_lap", "screw", "chalk_in", "zone"):
            check(len({row[key] for row in mine}) == 1, f"{at}: the same {key} in every sheet")
        if mine[0]["through_lap"] == "yes":
            check(len(mine) > 1, f"{at}: a lap is of two sheets")
        if not both:
            check(sum(row["drilled"] != "no" for row in mine) == 1, f"{at}: drilled in the upper sheet alone")


def measures_agree(where, rows, sheets):
    """u, z, s and both x measure the same place, each from its own datum."""
    toward, lines, chalk = {}, {}, {}
    for row in rows:
        sheet = sheets[row["mark"]]
        at = f"{where}: {row['mark']} {row['support']} at z {row['z_in']}"
        check(row["s_in"] == row["z_in"] - sheet["bottom_in"], f"{at}: s is from its lowest end")
        from_left = row["edge_x_in"] == row["u_in"] - sheet["left_in"]
        from_right = row["edge_x_in"] == sheet["right_in"] - row["u_in"]
        check(from_left or from_right, f"{at}: edge_x is from a metal edge")
        if from_left != from_right:
            toward.setdefault(row["wall"], set()).add(1 if from_left else -1)
        lines.setdefault(row["mark"], set()).add(row["edge_x_in"] - row["x_in"])
        chalk.setdefault(row["wall"], set()).add(row["z_in"] - row["chalk_in"])
    for wall, hands in toward.items():
        check(len(hands) == 1, f"{where}: wall {wall} is measured from one hand")
        first, second = ([s["left_in"] for s in sheets.values() if s["wall"] == wall and s["module"] == n] for n in "12")
        if len(hands) == 1 and first and second:
            check(hands == {1 if first[0] < second[0] else -1}, f"{where}: wall {wall} is measured as it hangs")
    for mark, offsets in lines.items():
        check(len(offsets) == 1, f"{where}: {mark} has one module line: {offsets}")
    for wall, heights in chalk.items():
        bottoms = {s["bottom_in"] for s in sheets.values() if s["wall"] == wall}
        check(min(heights) >= min(bottoms), f"{where}: wall {wall}: no chalk line below its sheets")
        check(heights <= bottoms or len(heights) == 1, f"{where}: wall {wall}: chalk lines {heights}")


def rows_are_in_order(where, rows, pieces, sheets):
    order = {p["mark"]: n for n, p in enumerate(pieces)}  # wall by wall in hanging order
    keys = [(order[row["mark"]], row["s_in"], row["x_in"]) for row in rows]
    check(keys == sorted(keys), f"{where}: holes stand by piece, then from its lowest end up, then across")
    check(all(sheets[row["mark"]]["wall"] == row["wall"] for row in rows), f"{where}: holes name their sheet's wall")


def holes_keep_apart(where, rows, diameters):
    """No two of one sheet nearer than max(3 d, 1 in)."""
    by_mark = {}
    for row in rows:
        by_mark.setdefault(row["mark"], []).append(row)
    for mark, mine in by_mark.items():
        for n, a in enumerate(mine):
            for b in mine[n + 1 :]:
                least = max(3 * diameters[a["screw"]], 3 * diameters[b["screw"]], INCH)
                if b["s_in"] - a["s_in"] >= least:
                    break
                apart = (a["s_in"] - b["s_in"]) ** 2 + (a["x_in"] - b["x_in"]) ** 2
                check(apart >= least**2, f"{where}: {mark}: holes at s {a['s_in']} and {b['s_in']} keep apart")


def left_jamb(wall, width, opening):
    place, wide = opening.get("place", {}), length(opening["width"])
    start, distance = place.get("from", "left corner"), length(place.get("distance", '0"'))
    centre = place.get("to") == "centre"
    if start == "right corner":
        return width - distance - (wide // 2 if centre else wide)
    if start == "column":
        columns = wall["columns"]
        bays = [length(bay) for bay in columns["bays"]]
        distance += length(columns.get("offset", '0"')) + sum(bays[: place["column"] - 1])
    return distance - (wide // 2 if centre else 0)


def out_of_openings(where, job, rows, pieces, sheets):
    """No hole within the steel of an opening as the job states it."""
    for wall in job["walls"]:
        reach = length(wall.get("reach_right", '0"'))
        ends = [sheets[p["mark"]]["right_in"] for p in pieces if p["wall"] == wall["letter"]]
        for opening in wall.get("openings", []):
            left = left_jamb(wall, max(ends) - reach, opening)
            right, sill = left + length(opening["width"]), length(opening.get("sill", '0"'))
            head = sill + length(opening["height"])
            inside = [
                row
                for row in rows
                if row["wall"] == wall["letter"] and left < row["u_in"] < right and sill < row["z_in"] < head
            ]
            check(not inside, f"{where}: {len(inside)} holes of wall {wall['letter']} lie in {opening['id']}")
