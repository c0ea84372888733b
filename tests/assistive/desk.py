"""A desk to sit at: a screen nobody sees, a message bus and an empty home of its own, gone again
afterwards with every process that was started on it.

    desk.py PROGRAM [ARGUMENT ...]
"""

import ctypes
import os
import signal
import subprocess
import sys
import tempfile
import time

LIMIT_S = 240
PR_SET_CHILD_SUBREAPER = 36  # linux/prctl.h


def children_of(parent):
    path = f"/proc/{parent}/task/{parent}/children"
    with open(path, encoding="ascii") as listing:
        return [int(pid) for pid in listing.read().split()]


def end_all_that_is_left():
    """Whatever the bus has started outlives it, and comes to this process as an orphan."""
    for how in (signal.SIGTERM, signal.SIGKILL):
        end = time.monotonic() + 5
        while left := children_of(os.getpid()):
            for pid in left:
                try:
                    os.kill(pid, how)
                except ProcessLookupError:
                    pass
            try:
                while os.waitpid(-1, os.WNOHANG)[0]:
                    pass
            except ChildProcessError:
                pass
            if time.monotonic() > end:
                break
            time.sleep(0.02)


def open_screen(place):
    """Starts a screen nobody sees. It takes a free number itself, and says which."""
    read, write = os.pipe()
    subprocess.Popen(
        ["Xvfb", "-displayfd", str(write), "-screen", "0", "1280x1024x24", "-nolisten", "tcp",
         "-noreset"],  # else it begins anew when its first client leaves, and nobody can come in
        env=place, pass_fds=[write], stderr=subprocess.DEVNULL)
    os.close(write)
    with os.fdopen(read, encoding="ascii") as number:
        return ":" + number.readline().strip()


def run(program, home):
    runtime = os.path.join(home, "runtime")
    os.mkdir(runtime, 0o700)
    names = ("PATH", "LANG", "LC_ALL", "PYTHONDONTWRITEBYTECODE")
    kept = {name: os.environ[name] for name in names if name in os.environ}
    place = kept | {
        "HOME": home,
        "XDG_RUNTIME_DIR": runtime,
        "XDG_DATA_HOME": os.path.join(home, "data"),
        "XDG_CONFIG_HOME": os.path.join(home, "config"),
        "XDG_CACHE_HOME": os.path.join(home, "cache"),
        "TMPDIR": home,
        "GSETTINGS_BACKEND": "memory",
        "QT_QPA_PLATFORM": "xcb",
        "QT_QUICK_BACKEND": "software",
        "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1",
    }
    place["DISPLAY"] = open_screen(place)
    sitting = subprocess.Popen(["dbus-run-session", "--", *program], env=place)
    try:
        return sitting.wait(timeout=LIMIT_S)
    except subprocess.TimeoutExpired:
        print(f"not done after {LIMIT_S} s")
        return 1


def main():
    ctypes.CDLL(None, use_errno=True).prctl(PR_SET_CHILD_SUBREAPER, 1, 0, 0, 0)
    with tempfile.TemporaryDirectory(prefix="lidlark-desk-") as home:
        try:
            status = run(sys.argv[1:], home)
        finally:
            end_all_that_is_left()
    return status


if __name__ == "__main__":
    sys.exit(main())
