"""The program from outside: its command, and its table of calls through the test bridge."""

import json
import os
import pathlib
import subprocess
import time
import urllib.error
import urllib.request

from outcome import need

TOP = pathlib.Path(__file__).resolve().parents[2]
BINARIES = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", TOP / "target")) / "debug"
JOB_SECONDS = 600
_running = []


class Refused(Exception):
    """A call that did not do what was asked; `error` says why."""

    def __init__(self, call, error):
        super().__init__(f"{call}: {json.dumps(error)[:300]}")
        self.error = error

    @property
    def code(self):
        return self.error.get("code")


class Program:
    """The program with a data folder of its own, at a date."""

    def __init__(self, folder, today):
        self.data, self.saves = folder / "data", folder / "saves"
        pages = folder / "pages"
        for one in (self.data, self.saves, pages):
            one.mkdir(parents=True, exist_ok=True)
        self.today = today
        self.desk_path = self.data / "own" / "desk.sqlite"
        arguments = {"dist": pages, "data": self.data, "saves": self.saves, "today": today}
        self._process = subprocess.Popen(
            [BINARIES / "surefoot-bridge", *(f"--{k}={v}" for k, v in arguments.items())],
            cwd=TOP,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )
        self._address = self._process.stdout.readline().strip()
        if not self._address:
            raise RuntimeError(f"the test bridge did not start, status {self._process.wait()}")
        _running.append(self)

    def _post(self, path, body):
        request = urllib.request.Request(self._address + path, json.dumps(body).encode())
        with urllib.request.urlopen(request, timeout=JOB_SECONDS) as answer:
            return json.loads(answer.read())

    def call(self, name, /, **arguments):
        try:
            return self._post(f"call/{name}", arguments)
        except urllib.error.HTTPError as error:
            body = error.read()
            why = json.loads(body) if body else {"code": "panic"}
            need(why["code"] not in ("unknown_call", "bad_arguments"), f"{name}: {why}")
            raise Refused(name, why) from None

    def pick(self, *paths):
        self._post("test/pick", [str(path) for path in paths])

    def open_with(self, *paths):
        self._post("test/open", [str(path) for path in paths])

    def go_to(self, today):
        self._post("test/today", today)
        self.today = today

    def job(self, job):
        """Waits for a job and returns its result."""
        until = time.monotonic() + JOB_SECONDS
        while time.monotonic() < until:
            result = self.call("job", **job)["result"]
            if result is not None:
                return result
            time.sleep(0.02)
        raise RuntimeError("the job did not end")

    def saved(self, made):
        return self.saves / made["file_name"]

    def stored(self):
        """The files in its data folder."""
        return [path for path in self.data.rglob("*") if path.is_file()]

    def stored_bytes(self):
        return sum(path.stat().st_size for path in self.stored())

    def peak_bytes(self):
        """The most memory it has had since the last call of this."""
        process = pathlib.Path("/proc") / str(self._process.pid)
        line = next(
            s for s in process.joinpath("status").read_text().splitlines() if s.startswith("VmHWM")
        )
        process.joinpath("clear_refs").write_text("5")
        return int(line.split()[1]) * 1024

    def cpu_seconds(self):
        """The processor time it has used; unlike a clock, it says nothing of a busy machine."""
        stat = pathlib.Path(f"/proc/{self._process.pid}/stat").read_text().rpartition(")")[2]
        return sum(map(int, stat.split()[11:13])) / os.sysconf("SC_CLK_TCK")

    def close(self):
        self._process.kill()
        self._process.wait()
        self._process.stdout.close()
        _running.remove(self)


def close_all():
    for program in list(_running):
        program.close()


def command(*arguments):
    """Runs `surefoot`; returns what subprocess gives, its output as bytes."""
    return subprocess.run(
        [BINARIES / "surefoot", *map(str, arguments)],
        capture_output=True,
        cwd=TOP,
        timeout=JOB_SECONDS,
    )
