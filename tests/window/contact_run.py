"""Every concept's exercise in the window's own engine (WebKitGTK), in every language:
its mathematics is well-formed MathML, laid out as the standard says (MathML Core,
https://www.w3.org/TR/mathml-core/), and pictures of all are kept."""

import functools
import http.server
import json
import pathlib
import subprocess
import tempfile
import threading

import driver
from driver import TOP, Checks, Window

CARDS = 12
LANGUAGES = [line["tag"] for line in json.loads((TOP / "shared/languages.json").read_text(encoding="utf-8"))]
BROWSER = next(pathlib.Path("/usr/lib").glob("*/webkit2gtk-4.1/MiniBrowser"), None)
# Counts the formulas of a page, and finds those that are not drawn as they should be.
LOOK = """
const broken = [];
const names = new Set('math mrow mi mn mo mtext mspace mfrac msup msub msqrt mover munder munderover mtable mtr mtd mpadded menclose mstyle'.split(' '));
const wrong = (math, why) => broken.push(why + ': ' + math.outerHTML.slice(0, 200));
const all = [...document.querySelectorAll('math')];
for (const math of all) {
  const text = new XMLSerializer().serializeToString(math);
  if (new DOMParser().parseFromString(text, 'application/xml').querySelector('parsererror')) wrong(math, 'not well-formed');
  const size = math.getBoundingClientRect();
  if (size.width < 3 || size.height < 3) wrong(math, 'no size');
  for (const part of math.querySelectorAll('*')) if (!names.has(part.localName)) wrong(math, 'element ' + part.localName);
  for (const mfrac of math.querySelectorAll('mfrac')) {
    const [top, bottom] = [...mfrac.children].map(one => one.getBoundingClientRect());
    if (mfrac.children.length !== 2) wrong(math, 'a fraction of other than two parts');
    else if (top.bottom > bottom.top + 1) wrong(math, 'a numerator not above its denominator');
    else if (Math.abs((top.left + top.right) - (bottom.left + bottom.right)) > 4) wrong(math, 'parts of a fraction not in line');
  }
  for (const msup of math.querySelectorAll('msup')) {
    const [base, power] = [...msup.children].map(one => one.getBoundingClientRect());
    if (power.top >= base.top || power.left < base.right - 2) wrong(math, 'a power not above and after its base');
  }
}
return { count: all.length, fractions: document.querySelectorAll('mfrac').length, broken: broken.slice(0, 5) };
"""


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, *_):
        pass


checks = Checks()
if BROWSER is None:
    raise SystemExit("needs the MiniBrowser of WebKitGTK")
driver.PROGRAM = BROWSER
surefoot = TOP / "target/debug/surefoot"
lines = subprocess.run([surefoot, "exercises", "--concept", "all", "--level", "2", "--seed", "3"],
                       capture_output=True, check=True, text=True).stdout
items = [json.loads(line) for line in lines.splitlines()]
checks.that("every concept has an exercise", len(items) >= 140, len(items))

pages = functools.partial(Quiet, directory=TOP / "ui/dist-contact")
server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), pages)
threading.Thread(target=server.serve_forever, daemon=True).start()
folder = tempfile.TemporaryDirectory(prefix="surefoot-contact-", ignore_cleanup_errors=True)

with Window(folder.name, ["--automation"]) as window:
    window.request("POST", f"{window.session}/window/rect", {"width": 1720, "height": 2900})
    window.request("POST", f"{window.session}/url",
                   {"url": f"http://127.0.0.1:{server.server_port}/"})
    window.wait(lambda: window.script("return Boolean(window.contact)"), "the page of exercises")
    seen = fractions = 0
    for language in LANGUAGES:
        for at in range(0, len(items), CARDS):
            window.script_async(
                "const done = arguments[arguments.length - 1];"
                "window.contact.show(arguments[0], arguments[1], false)"
                ".then(() => document.fonts.ready).then(() => done(true));",
                items[at:at + CARDS], language)
            found = window.script(LOOK)
            seen += found["count"]
            fractions += found["fractions"]
            checks.that(f"{language} from {at}: mathematics is well-formed and laid out",
                        not found["broken"], found["broken"])
            window.shot(f"contact-{language}-{at // CARDS + 1:02}")
    checks.that("there was mathematics to check", seen > 500 and fractions > 100,
                (seen, fractions))
    print(f"        {seen} formulas, {fractions} fractions")

server.shutdown()
checks.finish()
