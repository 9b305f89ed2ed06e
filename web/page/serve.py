"""Serves a folder on this machine alone, as a school's web space would, and opens it.

serve.py FOLDER [--port 8123] [--open PATH]
"""

import argparse
import functools
import http.server
import webbrowser

TYPES = {
    ".js": "text/javascript",
    ".mjs": "text/javascript",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".sfclass": "application/octet-stream",
    ".sqlite": "application/octet-stream",
}


class Pages(http.server.SimpleHTTPRequestHandler):
    extensions_map = {**http.server.SimpleHTTPRequestHandler.extensions_map, **TYPES}

    def end_headers(self):
        # A browser asks each time whether a file changed, so that a new version is found.
        self.send_header("Cache-Control", "no-cache")
        self.send_header("X-Content-Type-Options", "nosniff")
        super().end_headers()

    def log_message(self, *_):
        pass


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder")
    parser.add_argument("--port", type=int, default=8123)
    parser.add_argument("--open")
    asked = parser.parse_args()
    handler = functools.partial(Pages, directory=asked.folder)
    with http.server.ThreadingHTTPServer(("127.0.0.1", asked.port), handler) as server:
        # A browser trusts this name as it trusts https.
        address = f"http://localhost:{server.server_port}/{asked.open or ''}"
        print(address, flush=True)
        if asked.open is not None:
            webbrowser.open(address)
        try:
            server.serve_forever()
        except KeyboardInterrupt:
            pass


if __name__ == "__main__":
    main()
