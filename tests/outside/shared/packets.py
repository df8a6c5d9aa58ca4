"""What the tests of packets share: the built program, the sample jobs, and a packet of each in a folder of its own."""

import json
import os
import subprocess
import sys
import tempfile
from fractions import Fraction
from pathlib import Path

SOURCE = Path(sys.argv[1]).resolve() if len(sys.argv) > 1 else Path(__file__).resolve().parents[3]
BUILD = Path(sys.argv[2]).resolve() if len(sys.argv) > 2 else SOURCE / ".build" / "release"
PROGRAM = BUILD / "ribwright"
SAMPLES = sorted((SOURCE / "sample-jobs").glob("*.json"))

# Nothing of the machine speaks in: no display, no platform chosen, plain text.
PLAIN = {"PATH": os.environ.get("PATH", "/usr/bin:/bin"), "LC_ALL": "C.UTF-8", "HOME": tempfile.gettempdir()}

faults = []


def check(fact, words):
    """Keeps the words of what does not hold, and goes on."""
    if not fact:
        faults.append(words)
    return bool(fact)


def finish(checked):
    """Ends the script: non-zero when something did not hold, or when nothing at all was looked at."""
    if checked == 0:
        faults.append("nothing was looked at")
    for words in faults[:40]:
        print(words)
    print(f"{checked} looked at, {len(faults)} faults")
    sys.exit(1 if faults else 0)


def run(*words, env=None, cwd=None, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE):
    return subprocess.run(
        [str(PROGRAM), *map(str, words)],
        env={**PLAIN, **(env or {})},
        cwd=cwd,
        stdin=stdin,
        stdout=stdout,
        stderr=subprocess.PIPE,
        timeout=120,
        check=False,
    )


def read_job(path):
    return json.loads(path.read_text(encoding="utf-8"))


def inches(text):
    """A stated length in inches, exact: 12' 3-1/2", 36", 1000 mm. Independent of the program's own reader."""
    text = text.strip()
    if text.endswith("mm"):
        return Fraction(text[:-2].strip()) / Fraction("25.4")
    feet = Fraction(0)
    if "'" in text:
        before, text = text.split("'", 1)
        feet = Fraction(before.strip())
    text = text.strip().rstrip('"').strip()
    if not text:
        return feet * 12
    whole, _, part = text.partition("-")
    return feet * 12 + Fraction(whole) + (Fraction(part) if part else 0)
