#!/usr/bin/python3
"""The window's words in other languages are whole: every string that the window's sources hold stands in resources/ribwright_*.ts
with a translation, and nothing stands there that the sources have no more."""

import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
from pathlib import Path

SOURCE = Path(sys.argv[1])
LUPDATE = shutil.which("lupdate", path="/usr/lib/qt6/bin:/usr/lib64/qt6/bin:/usr/local/lib/qt6/bin") or shutil.which("lupdate6")
faults = []


def check(right, fault):
    if not right:
        faults.append(fault)


def messages(file):
    """(context, source, comment) -> (translation, state): state is None where a message is finished."""
    found = {}
    for context in xml.parse(file).getroot().iter("context"):
        for message in context.iter("message"):
            key = (context.findtext("name"), message.findtext("source"), message.findtext("comment") or "")
            translation = message.find("translation")
            found[key] = (translation.text or "", translation.get("type"))
    return found


def gathered(file, folder):
    """What lupdate gathers from the sources of today, beginning with a copy of the file."""
    copy = Path(folder) / file.name
    shutil.copy(file, copy)
    words = ["-silent", "-locations", "none", "-no-obsolete", "-source-language", "en_US", "-recursive", "ui", "app", "-I", "."]
    done = subprocess.run([LUPDATE, *words, "-ts", copy], cwd=SOURCE, capture_output=True, text=True, check=False)
    check(done.returncode == 0 and not done.stderr, f"lupdate: {done.stderr}")
    return messages(copy)


def places(text):
    """What is filled in (%1, %n), and whether it ends as a sentence or a label."""
    return sorted(re.findall(r"%\d|%n", text)), text.endswith((".", "!")), text.endswith(" "), text.endswith("…")


def whole(file):
    stated = messages(file)
    with tempfile.TemporaryDirectory() as folder:
        today = gathered(file, folder)
    for key in today.keys() - stated.keys():
        check(False, f"{file.name}: lacks {key}; run ninja window_words and translate it")
    for key in stated.keys() - today.keys():
        check(False, f"{file.name}: the sources have no {key} any more; run ninja window_words")
    for key, (translation, state) in stated.items():
        check(state is None and translation, f"{file.name}: {key} is not translated ({state})")
        if translation:
            check(places(translation) == places(key[1]), f"{file.name}: {key} and its translation end or fill in otherwise: {translation}")
            check(translation.count("&") == key[1].count("&"), f"{file.name}: {key}: the underlined letter is missing or new: {translation}")
    return len(stated)


def main():
    check(LUPDATE, "lupdate is not there; install qt6-l10n-tools")
    files = sorted((SOURCE / "resources").glob("ribwright_*.ts"))
    check(files, "no words of the window in any language")
    count = sum(whole(file) for file in files) if LUPDATE else 0
    check(count > 100, f"only {count} strings were looked at")
    for fault in faults:
        print(fault)
    print(f"{count} strings of the window looked at, {len(faults)} faults")
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    main()
