#!/usr/bin/python3
"""The same job gives the same packet, byte by byte: twice, in other locales, time zones and seconds, and from another folder."""

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent / "shared"))
from packets import SAMPLES, check, finish, run  # noqa: E402

# German and Turkish write 1,5 for 1.5; Turkish has an i without a dot of its own.
LOCALES = ("de_DE", "tr_TR")


def made_locales(folder):
    """Compiles the locales there; those that could be made. None at all is a fault of the machine that the test tells."""
    made = []
    for name in LOCALES:
        words = ["localedef", "--quiet", "-i", name, "-f", "UTF-8", str(folder / f"{name}.UTF-8")]
        subprocess.run(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
        if (folder / f"{name}.UTF-8").is_dir():
            made.append(f"{name}.UTF-8")
    return made


def comma_is_its_sign(locale, folder):
    env = {"PATH": os.environ["PATH"], "LOCPATH": str(folder), "LC_ALL": locale}
    return subprocess.run(["bash", "-c", "printf %.1f 1,5"], env=env, stdout=subprocess.PIPE, check=False).stdout == b"1,5"


def packet(sample, folder, **env):
    done = run("packet", sample.name, "--to", folder, env=env, cwd=sample.parent)
    check(done.returncode in (0, 1), f"{sample.name} {env}: {done.stderr.decode()}")
    return {file.name: file.read_bytes() for file in sorted(folder.iterdir())}


def main():
    checked = 0
    with tempfile.TemporaryDirectory() as temporary:
        folder = Path(temporary)
        locales = made_locales(folder)
        check(len(locales) == len(LOCALES), "localedef made not every locale: is the package locales there?")
        for locale in locales:
            check(comma_is_its_sign(locale, folder), f"{locale} does not speak")
        settings = [{"LC_ALL": "C", "TZ": "UTC"}, {"TZ": "Pacific/Kiritimati"}]
        settings += [{"LC_ALL": name, "LOCPATH": str(folder), "TZ": "Asia/Tokyo"} for name in locales]
        for sample in SAMPLES:
            first = packet(sample, folder / f"{sample.stem}")
            check("elevations.pdf" in first and len(first) > 6, f"{sample.name}: {sorted(first)}")
            time.sleep(1.1)  # into another second of the clock
            for number, env in enumerate(settings):
                again = packet(sample, folder / f"{sample.stem} {number}", **env)
                check(sorted(again) == sorted(first), f"{sample.name} {env}: {sorted(again)}")
                for name in first:
                    check(again.get(name) == first[name], f"{sample.name} {env}: {name} has other bytes")
                    checked += 1
    finish(checked)


if __name__ == "__main__":
    main()
