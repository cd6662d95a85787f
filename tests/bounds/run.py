#!/usr/bin/env python3
"""Reviews folders made to take all memory or never to end, and says the peak memory and the time of each.

usage: tests/bounds/run.py PROGRAM... [--limited] [--only NAME]     PROGRAM is 'rideaudit', or 'dotnet path/to/rideaudit.dll'

--limited runs each case with 4 GB of address space (as under 'ulimit -v 4000000') and 200 MB of managed heap (DOTNET_GCHeapHardLimit).
.NET reserves half of the address space it may have before it begins, and its libraries and threads' stacks more: under 3 GB it may not begin.

A case passes when the program ends by itself with one of the expected codes, prints the expected sentence, shows no stack
trace, and its peak resident memory is at most what the case states. Times are printed and never judged.
Without --limited .NET keeps what it has collected as long as memory is plentiful, so the peak is above what a case needs.
The last line is "N passed, N failed". Folders are made in a temporary folder and taken away. Needs GNU time.
"""
import gzip
import os
import resource
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
import zipfile

REPOSITORY = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
DEMO = os.path.join(REPOSITORY, "testdata", "demo")
MB = 1 << 20
LONGEST_SECONDS = 900
ADDRESS_SPACE = 4_000_000 << 10
HEAP = 200 * MB


def a_ride(folder, name="2026-06-16-intervals.fit"):
    shutil.copy(os.path.join(DEMO, name), folder)


def zeros_gzip(path, megabytes):
    with gzip.open(path, "wb", 6) as packed:
        for _ in range(megabytes):
            packed.write(bytes(MB))


def line(path, megabytes, start=b""):
    with open(path, "wb") as file:
        file.write(start)
        for _ in range(megabytes):
            file.write(b"7" * MB)


def everything(folder):
    """A bomb, a sparse file, a line, a million points and hostile names at once, beside a week of logged rides."""
    bombs(folder)
    points(folder)
    logged(folder)
    names(folder)


def sparse(path, size):
    with open(path, "wb") as file:
        file.write(open(os.path.join(DEMO, "2026-06-16-intervals.fit"), "rb").read(14))
        file.truncate(size)


def zip_bomb(path, megabytes, entries=1):
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        for i in range(entries):
            with archive.open(f"ride-{i}.csv", "w", force_zip64=True) as entry:
                entry.write(b"seconds,power\n")
                for _ in range(megabytes):
                    entry.write(bytes(MB))


def bombs(folder):
    zeros_gzip(os.path.join(folder, "bomb.fit.gz"), 2048)
    sparse(os.path.join(folder, "sparse.fit"), 2 << 30)
    line(os.path.join(folder, "line.csv"), 200)


def zips(folder):
    zip_bomb(os.path.join(folder, "bomb.zip"), 2048)
    zip_bomb(os.path.join(folder, "many.zip"), 60, entries=8)
    inner = os.path.join(folder, "inner.zip")
    zip_bomb(inner, 500)
    with zipfile.ZipFile(os.path.join(folder, "nested.zip"), "w", zipfile.ZIP_DEFLATED) as archive:
        archive.write(inner, "inner.zip")
    os.remove(inner)


def lines(folder):
    line(os.path.join(folder, "line.csv"), 60, b"seconds,power\n")
    line(os.path.join(folder, "line.tcx"), 60, b"<TrainingCenterDatabase><Activities><Activity Sport='Biking'><Lap><Track><Trackpoint><Time>")
    line(os.path.join(folder, "line.gpx"), 60, b"<gpx creator='")
    line(os.path.join(folder, "line.txt"), 60)


def rows(folder):
    with open(os.path.join(folder, "2026-06-18-rows.csv"), "w") as file:
        file.write("seconds,power\n")
        for i in range(4_900_000):
            file.write(f"{i},200\n")


def points(folder):
    with open(os.path.join(folder, "points.gpx"), "w") as file:
        file.write("<gpx><trk><trkseg>")
        for i in range(1_150_000):
            file.write(time.strftime("<trkpt><time>%Y-%m-%dT%H:%M:%SZ</time></trkpt>", time.gmtime(1781629200 + i)))
        file.write("</trkseg></trk></gpx>")


def files(folder):
    for i in range(100_000):
        if i % 1000 == 0:
            os.mkdir(os.path.join(folder, str(i // 1000)))
        with open(os.path.join(folder, str(i // 1000), f"{i}.fit"), "wb") as file:
            file.write(b"x")


def levels(folder):
    here = os.open(folder, os.O_RDONLY)
    for _ in range(300):
        os.mkdir("level-of-many", dir_fd=here)
        below = os.open("level-of-many", os.O_RDONLY, dir_fd=here)
        os.close(here)
        here = below
    os.close(here)
    os.symlink("..", os.path.join(folder, "level-of-many", "up"))
    os.symlink(folder, os.path.join(folder, "self"))


def doors(folder):
    for name in ("pipe.fit", "note.md", "rider.toml"):
        os.mkfifo(os.path.join(folder, name))
    door = socket.socket(socket.AF_UNIX)
    door.bind(os.path.join(folder, "door.csv"))
    for name, device in (("zero.fit", "/dev/zero"), ("random.csv", "/dev/urandom"), ("tty.gpx", "/dev/tty")):
        os.symlink(device, os.path.join(folder, name))


def endless_rider(folder):
    os.symlink("/dev/zero", os.path.join(folder, "rider.toml"))


def huge_note(folder):
    sparse(os.path.join(folder, "note.md"), 2 << 30)


def names(folder):
    ride = open(os.path.join(DEMO, "2026-06-16-intervals.fit"), "rb").read()
    for name in (b"line\nbreak.fit", b"\x1b[2Jclear.fit", b"broken-\xff\xfe.fit", "turned-\u202e.fit".encode(), b"  .fit", b"$(touch x).fit"):
        with open(os.path.join(folder.encode(), name), "wb") as file:
            file.write(ride[: 400 + len(name)])


def logged(folder):
    with open(os.path.join(folder, "log.csv"), "w") as file:
        file.write("date,minutes,kind,rating\n")
        for i in range(300):
            file.write(f"2026-06-{15 + i % 7},{20 + i % 50},{('easy', 'hard', '')[i % 3]},{i % 10}\n")


def changing(folder):
    """Files that grow, shrink and vanish all the while."""
    ride = open(os.path.join(DEMO, "2026-06-17-group.fit"), "rb").read()
    stop = threading.Event()

    def change():
        i = 0
        while not stop.is_set():
            path = os.path.join(folder, f"changing-{i % 40}.fit")
            try:
                if i % 3 == 0:
                    open(path, "wb").write(ride * (1 + i % 4))
                elif i % 3 == 1 and os.path.exists(path):
                    os.truncate(path, i % 2000)
                elif os.path.exists(path):
                    os.remove(path)
            except FileNotFoundError:
                pass
            i += 7

    thread = threading.Thread(target=change, daemon=True)
    thread.start()
    return stop.set


# name, what makes the folder, most MB resident, exit codes, a sentence that must be said
CASES = [
    ("nothing but one ride", lambda folder: None, 200, (0,), "Wrote"),
    ("gzip bomb, 2 GB sparse file, 200 MB line", bombs, 300, (0,), "larger than the 64 MB"),
    ("bombs, points, logged rides and names together", everything, 450, (0,), "larger than the 64 MB"),
    ("zip bombs", zips, 300, (0,), "larger than the 64 MB"),
    ("endless lines of 60 MB", lines, 350, (0,), "cannot be read"),
    ("4.9 million CSV rows", rows, 350, (0,), "more than 1000000 rows"),
    ("1.15 million GPX points", points, 300, (0,), "Wrote"),
    ("100,000 files", files, 300, (0,), "Wrote"),
    ("300 levels, circles of links", levels, 200, (0,), "Wrote"),
    ("pipes, sockets and devices", doors, 200, (0,), "Wrote"),
    ("endless rider file", endless_rider, 200, (0,), "Wrote"),
    ("2 GB note", huge_note, 200, (0,), "larger than the 64 KB"),
    ("hostile names", names, 200, (0,), "Wrote"),
    ("300 logged rides in a week", logged, 300, (0,), "Wrote"),
    ("files that change while they are read", changing, 300, (0,), "Wrote"),
]


def limit():
    resource.setrlimit(resource.RLIMIT_AS, (ADDRESS_SPACE, ADDRESS_SPACE))


def run(program, folder, out, limited):
    """Runs one review; its code, what it said, its peak memory in MB and its seconds."""
    with open(os.path.join(out, "said"), "wb+") as said:
        began = time.monotonic()
        # Measured by a small program: a child of this one would count what this one holds.
        peak = os.path.join(out, "peak")
        process = subprocess.Popen(["/usr/bin/time", "-f", "%M", "-o", peak, *program] + ["review", folder, "--as-of", "2026-06-22", "--pdf", os.path.join(out, "review.pdf")],
                                   cwd=out, start_new_session=True, stdin=subprocess.DEVNULL, stdout=said, stderr=subprocess.STDOUT, preexec_fn=limit if limited else None,
                                   env={**os.environ, "LANG": "C.UTF-8", **({"DOTNET_GCHeapHardLimit": f"{HEAP:x}"} if limited else {})})
        watch = threading.Timer(LONGEST_SECONDS, lambda: os.killpg(process.pid, signal.SIGKILL))
        watch.start()
        code = process.wait()
        watch.cancel()
        seconds = time.monotonic() - began
        said.seek(0)
        with open(peak, encoding="ascii") as measured:
            return code, said.read(), int(measured.read().split()[-1]) / 1024, seconds


def main(words):
    limited = "--limited" in words
    words = [word for word in words if word != "--limited"]
    only = words[words.index("--only") + 1] if "--only" in words else ""
    program = words[: words.index("--only")] if "--only" in words else words
    if not program:
        sys.exit(__doc__)
    # Reviews run in a folder of their own.
    program = [os.path.abspath(word) if os.path.exists(word) else word for word in program]
    passed = failed = 0
    for name, make, most, codes, sentence in CASES:
        if only not in name:
            continue
        with tempfile.TemporaryDirectory(prefix="rideaudit-bounds-") as world:
            folder, out = os.path.join(world, "rides"), os.path.join(world, "out")
            os.mkdir(folder)
            os.mkdir(out)
            a_ride(folder)
            stop = make(folder)
            code, said, peak, seconds = run(program, folder, out, limited)
            if callable(stop):
                stop()
            text = " ".join(said.decode("utf-8", "replace").split())
            wrong = [why for bad, why in [
                (code not in codes, f"ended with {code}"),
                (sentence not in text, f"did not say '{sentence}': {text[-400:]}"),
                ("   at " in said.decode("utf-8", "replace") or "Unhandled" in text or "should not happen" in text, "a fault"),
                (any(c < 32 and c != 10 for c in said), "a control character on the terminal"),
                (peak > most, f"more than {most} MB"),
            ] if bad]
            print(f"{'FAIL' if wrong else 'ok  '}  {name}: {peak:.0f} MB of {most}, {seconds:.1f} s, code {code}" + "".join("; " + w for w in wrong), flush=True)
            passed, failed = passed + (not wrong), failed + bool(wrong)
            shutil.rmtree(folder, ignore_errors=True)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
