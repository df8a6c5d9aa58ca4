#!/usr/bin/python3
"""The committed schema, judged by a validator that is not ours: it is sound JSON Schema 2020-12, every sample job, shipped profile
and pattern holds to it, and what is wrong in structure is refused by it as well."""

import copy
import json
import sys
from pathlib import Path

from jsonschema import Draft202012Validator

ROOT = Path(sys.argv[1])
SCHEMA = json.loads((ROOT / "resources" / "job.schema.json").read_text(encoding="utf-8"))
faults = []


def check(holds, what):
    if not holds:
        faults.append(what)


def told(validator, value):
    return [f"{'.'.join(map(str, error.absolute_path))}: {error.message}" for error in validator.iter_errors(value)]


def at(job, path):
    """The object or list that a path leads to, and its last step."""
    *steps, last = path
    for step in steps:
        job = job[step]
    return job, last


Draft202012Validator.check_schema(SCHEMA)
job_schema = Draft202012Validator(SCHEMA)
profile_schema = Draft202012Validator({"$ref": "#/$defs/profile", "$defs": SCHEMA["$defs"]})
pattern_schema = Draft202012Validator({
    "type": "object",
    "properties": {"pattern": {"$ref": "#/$defs/pattern"}, "screws": {"type": "array", "items": {"$ref": "#/$defs/screw"}}},
    "required": ["pattern", "screws"],
    "additionalProperties": False,
    "$defs": SCHEMA["$defs"],
})

samples = sorted((ROOT / "sample-jobs").glob("*.json"))
profiles = sorted((ROOT / "resources" / "profiles").glob("*.json"))
patterns = sorted((ROOT / "resources" / "patterns").glob("*.json"))
check(len(samples) >= 5, f"only {len(samples)} sample jobs")
check(len(profiles) >= 1, "no shipped profile")
check(len(patterns) >= len(profiles), "fewer patterns than profiles")
for file in samples:
    for line in told(job_schema, json.loads(file.read_text(encoding="utf-8"))):
        faults.append(f"{file.name}: {line}")
for file in patterns:
    for line in told(pattern_schema, json.loads(file.read_text(encoding="utf-8"))):
        faults.append(f"{file.name}: {line}")
for file in profiles:
    for line in told(profile_schema, json.loads(file.read_text(encoding="utf-8"))):
        faults.append(f"{file.name}: {line}")

# Every object of the schema is closed, and every key says what it is.
for name, table in SCHEMA["$defs"].items():
    if table["type"] != "object":
        continue
    check(table["additionalProperties"] is False, f"{name} takes any key")
    for key, value in table["properties"].items():
        check(value.get("description"), f"{name}.{key} is not described")
        check(key == key.lower() and " " not in key, f"{name}.{key} is no snake_case")

# A sound job with one thing changed: (path, new value), or None to take it away.
SOUND = json.loads((ROOT / "sample-jobs" / "gable-workshop.json").read_text(encoding="utf-8"))
WALL, OPENING, GIRT = ("walls", 0), ("walls", 0, "openings", 0), ("walls", 0, "girts", 0)
GONE = object()
WRONG = [
    (("ribwright",), GONE),
    (("ribwright",), 2),
    (("ribwright",), "1"),
    (("units",), GONE),
    (("units",), "inches"),
    (("decimal_sign",), ";"),
    (("wals",), []),
    (("name",), 3),
    (("name",), "two\nlines"),
    (("name",), "x" * 201),
    (("note",), "\u0007"),
    (("walls",), {}),
    (("site",), []),
    (("site", "true_north"), "12"),
    (("site", "true_north"), 361),
    (("site", "sight_points", 0, "at"), GONE),
    (("site", "sight_points", 0, "weight"), 0),
    (("site", "sight_points", 0, "weight"), 2.5),
    (("building", "outline", 0, "x"), 3),
    (("building", "outline", 0, "y"), GONE),
    (("building", "roof", "kind"), "hip"),
    (("building", "roof", "slope"), 0.333),
    (("building", "roof", "slope"), "steep"),
    (("settings", "kerf"), 3),
    (("settings", "kerf"), "thin"),
    (("settings", "byte_order_mark"), "yes"),
    (("settings", "stack_limit"), 0),
    (("settings", "kurf"), '1/8"'),
    (("profiles", 0, "cover"), GONE),
    (("profiles", 0, "section"), SOUND["profiles"][0]["section"][:1]),
    (("profiles", 0, "section", 0, "z"), '1"'),
    (WALL + ("letter",), GONE),
    (WALL + ("letter",), "a"),
    (WALL + ("letter",), "B2"),
    (WALL + ("letter",), "ABCD"),
    (WALL + ("hang",), "leftward"),
    (WALL + ("expansion_joints",), "20'"),
    (WALL + ("columns", "bays"), ["20'"] * 10_001),
    (WALL + ("bands", 0, "translucent"), [0]),
    (WALL + ("bands", 0, "color"), "red"),
    (OPENING + ("id",), ""),
    (OPENING + ("id",), " D1"),
    (OPENING + ("width",), GONE),
    (OPENING + ("width",), None),
    (OPENING + ("kind",), "sliding"),
    (OPENING + ("place", "from"), "middle"),
    (OPENING + ("place", "column"), -1),
    (GIRT + ("height",), 42),
    (GIRT + ("height",), GONE),
    (GIRT + ("typed_by",), "edge"),
    (WALL + ("survey",), {"girts": [{"readings": []}]}),
    (("facts",), {"hung": [{"mark": "A1"}]}),
    (("facts",), {"orders": [{"id": "1", "placed": [{"quantity": 2}]}]}),
    (("silenced",), [{"reason": "seen"}]),
]
check(not told(job_schema, SOUND), "the sound job is refused")
for path, value in WRONG:
    job = copy.deepcopy(SOUND)
    owner, last = at(job, path)
    if value is GONE:
        del owner[last]
    else:
        owner[last] = value
    what = "gone" if value is GONE else repr(value)[:40]
    check(told(job_schema, job), f"{'.'.join(map(str, path))}, {what}: the schema takes it")

# What may be said, though the program itself would write it otherwise.
RIGHT = [
    (("walls", 0, "eave_hold_down"), "0"),
    (("walls", 0, "eave_hold_down"), "½ in"),
    (("walls", 0, "eave_hold_down"), "(1' - 6\") / 12"),
    (("building", "roof", "slope"), "150 in 250"),
    (("building", "roof", "slope"), "9.5 deg"),
    (("building", "roof", "slope"), "9.5°"),
    (("site", "true_north"), -12.25),
    (("note",), "two\nlines\tand a tab"),
    (("walls", 0, "letter"), "ABC"),
]
for path, value in RIGHT:
    job = copy.deepcopy(SOUND)
    owner, last = at(job, path)
    owner[last] = value
    check(not told(job_schema, job), f"{'.'.join(map(str, path))}, {value!r}: the schema refuses it")

for line in faults:
    print(line)
print(f"{len(samples)} jobs, {len(profiles)} profiles, {len(WRONG)} wrong files, {len(faults)} faults")
sys.exit(1 if faults else 0)
