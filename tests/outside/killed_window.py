#!/usr/bin/env python3
"""The built program with a job open is killed, again and again: its lock is stale, the next window takes it over, and
what stands in the folder is the job alone. A window that lives keeps its lock."""
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time

root, build = sys.argv[1:3]
program = os.path.join(build, "ribwright")
KILLS = 3


def start(job, home):
    settings = dict(os.environ, QT_QPA_PLATFORM="offscreen", XDG_CONFIG_HOME=home, XDG_DATA_HOME=home, XDG_RUNTIME_DIR=home)
    return subprocess.Popen([program, job], env=settings, stderr=subprocess.DEVNULL)


def holder(lock):
    """The number of the process that a lock names; 0 while it names none."""
    try:
        with open(lock, encoding="utf-8") as file:
            return int(file.readline() or 0)
    except FileNotFoundError:
        return 0


def wait_for(what, holds):
    for _ in range(1500):
        if holds():
            return
        time.sleep(0.02)
    sys.exit(f"{what}: not within 30 s")


def main():
    with tempfile.TemporaryDirectory(prefix="killed é ") as folder:
        home = os.path.join(folder, "home")
        os.makedirs(home, mode=0o700)
        job = os.path.join(folder, "my shop.json")
        shutil.copyfile(os.path.join(root, "sample-jobs", "gable-workshop.json"), job)
        with open(job, "rb") as file:
            before = file.read()
        lock = os.path.join(folder, ".my shop.json.lock")
        for kill in range(KILLS):
            window = start(job, home)
            wait_for(f"window {kill} locks the job", lambda: holder(lock) == window.pid)
            if kill == 0:
                second = start(job, home)
                time.sleep(1.5)
                assert second.poll() is None, "the second window is gone"
                assert holder(lock) == window.pid, "the second window took the lock of one that lives"
                second.send_signal(signal.SIGKILL)
                second.wait()
            window.send_signal(signal.SIGKILL)
            window.wait()
            assert holder(lock) == window.pid, "killed, and yet it put its lock away?"
            with open(job, "rb") as file:
                assert file.read() == before, "the job has changed"
        names = sorted(os.listdir(folder))
        assert names == [".my shop.json.lock", "home", "my shop.json"], names
    print(f"{KILLS} windows killed, each lock taken over")


main()
