"""Drives the real window through WebDriver (https://www.w3.org/TR/webdriver2/),
with nothing but Python's own library. Run under a screen and a session bus."""

import base64
import contextlib
import json
import os
import pathlib
import shutil
import signal
import socket
import subprocess
import time
import traceback
import urllib.error
import urllib.request

TOP = pathlib.Path(__file__).resolve().parents[2]
PROGRAM = pathlib.Path(os.environ.get("SUREFOOT_WINDOW", TOP / "target/debug/surefoot-desktop"))
SHOTS = TOP / "shots/window"
ELEMENT = "element-6066-11e4-a52e-4f735466cecf"  # the specification's own key
PATIENCE_SECONDS = 20
# Ends when no animation or transition with an end runs, and the page is painted.
PAINTED = """
const done = arguments[arguments.length - 1];
const running = () => document.getAnimations()
  .filter(a => a.playState === 'running' && Number.isFinite(a.effect?.getComputedTiming().endTime));
const painted = () => new Promise(r => requestAnimationFrame(() => requestAnimationFrame(r)));
(async () => {
  await painted();
  for (let left = running(); left.length; left = running()) {
    await Promise.allSettled(left.map(a => a.finished));
    await painted();
  }
  done(true);
})();
"""


class Missing(AssertionError):
    """Something is not on the page."""


def free_port():
    with socket.socket() as s:
        s.bind(("127.0.0.1", 0))
        return s.getsockname()[1]


def environment(home):
    """Sets the program's folders under `home`, so that runs do not share any."""
    return dict(
        os.environ,
        HOME=str(home),
        XDG_DATA_HOME=str(home / "data"),
        XDG_CONFIG_HOME=str(home / "config"),
        XDG_CACHE_HOME=str(home / "cache"),
        XDG_RUNTIME_DIR=str(home),
    )


class Window:
    """One start of the program."""

    def __init__(self, home, arguments=(), program=PROGRAM):
        self.program = program
        self.home = pathlib.Path(home)
        self.home.mkdir(parents=True, exist_ok=True)
        self.home.chmod(0o700)
        self.arguments = list(arguments)

    def __enter__(self):
        self.port = free_port()
        driver = shutil.which("WebKitWebDriver")
        if not driver:
            raise SystemExit("needs WebKitWebDriver")
        self.log = open(self.home / "driver.log", "ab")
        self.driver = subprocess.Popen(
            [driver, f"--port={self.port}", "--host=127.0.0.1"],
            # Without this variable the window refuses a driver.
            env=environment(self.home) | {"TAURI_WEBVIEW_AUTOMATION": "true"},
            stdout=self.log, stderr=self.log, start_new_session=True)
        options = {"binary": str(self.program), "args": self.arguments}
        wanted = {"capabilities": {"alwaysMatch": {"webkitgtk:browserOptions": options}}}
        try:
            self.session = f"/session/{self.wait(lambda: self.open_session(wanted))}"
        except BaseException:
            self.__exit__()
            raise
        return self

    def open_session(self, wanted):
        self.asked = time.monotonic()
        try:
            return self.request("POST", "/session", wanted)["sessionId"]
        except (urllib.error.URLError, ConnectionError):
            return None  # the driver is still starting

    def __exit__(self, *_):
        with contextlib.suppress(Exception):
            self.request("DELETE", self.session)
        with contextlib.suppress(ProcessLookupError):
            os.killpg(self.driver.pid, signal.SIGTERM)
        self.driver.wait(10)
        self.log.close()

    def request(self, method, path, body=None):
        data = None if body is None else json.dumps(body).encode()
        request = urllib.request.Request(
            f"http://127.0.0.1:{self.port}{path}", method=method, data=data,
            headers={"Content-Type": "application/json"})
        with urllib.request.urlopen(request, timeout=120) as answer:
            return json.load(answer)["value"]

    def wait(self, look, what="", seconds=PATIENCE_SECONDS):
        """Calls `look` until it returns something."""
        until = time.monotonic() + seconds
        while True:
            seen = look()
            if seen:
                return seen
            if time.monotonic() > until:
                raise Missing(f"waited {seconds} s in vain: {what}")
            time.sleep(0.1)

    def script(self, code, *arguments):
        return self.request("POST", f"{self.session}/execute/sync",
                            {"script": code, "args": list(arguments)})

    def script_async(self, code, *arguments):
        """Runs `code`, which ends by calling the last of its arguments."""
        return self.request("POST", f"{self.session}/execute/async",
                            {"script": code, "args": list(arguments)})

    def call(self, name, arguments=None):
        """A call as the page makes it: ["ok", value] or ["error", error]."""
        return self.script_async(
            "const done = arguments[arguments.length - 1];"
            "window.__TAURI_INTERNALS__.invoke('call', { name: arguments[0], args: arguments[1] })"
            ".then(v => done(['ok', v]), e => done(['error', e]));", name, arguments or {})

    def elements(self, css):
        found = self.request("POST", f"{self.session}/elements",
                             {"using": "css selector", "value": css})
        return [e[ELEMENT] for e in found]

    def find(self, css, seconds=PATIENCE_SECONDS):
        return self.wait(lambda: self.elements(css), css, seconds)[0]

    def hook(self, name, seconds=PATIENCE_SECONDS):
        return self.find(f'[data-testid="{name}"]', seconds)

    def click(self, element):
        # Scrolls to the middle, where the bar at the foot does not cover it.
        self.script("arguments[0].scrollIntoView({ block: 'center' })", {ELEMENT: element})
        self.request("POST", f"{self.session}/element/{element}/click", {})

    def press(self, name, seconds=PATIENCE_SECONDS):
        self.click(self.hook(name, seconds))

    def text(self, element):
        return self.request("GET", f"{self.session}/element/{element}/text")

    def attribute(self, element, name):
        return self.request("GET", f"{self.session}/element/{element}/attribute/{name}")

    def type(self, element, text):
        self.request("POST", f"{self.session}/element/{element}/value", {"text": text})

    def shot(self, name):
        SHOTS.mkdir(parents=True, exist_ok=True)
        self.script_async(PAINTED)
        picture = self.request("GET", f"{self.session}/screenshot")
        (SHOTS / f"{name}.png").write_bytes(base64.b64decode(picture))


class Checks:
    """Counts checks. Reports failures and continues."""

    def __init__(self):
        self.passed = self.failed = 0

    def that(self, name, holds, found=""):
        if holds:
            self.passed += 1
            print(f"ok      {name}", flush=True)
        else:
            self.failed += 1
            print(f"FAILED  {name}: {found!r}", flush=True)

    @contextlib.contextmanager
    def step(self, name):
        """A part of the run that counts as one check."""
        try:
            yield
        except Exception:  # noqa: BLE001: any exception is reported as a failure
            traceback.print_exc()
            self.that(name, False, "see above")
        else:
            self.that(name, True)

    def finish(self):
        print(f"{self.passed} passed, {self.failed} failed")
        raise SystemExit(1 if self.failed or not self.passed else 0)
