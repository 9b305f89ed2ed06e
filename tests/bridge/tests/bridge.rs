//! The bridge answers only for itself, with the window's own policy.
#![allow(clippy::unwrap_used)]

use std::fs;
use std::io::{BufRead as _, BufReader, Read as _, Write as _};
use std::net::TcpStream;
use std::process::{Child, Command, Stdio};

struct Bridge {
    child: Child,
    host: String,
    folder: tempfile::TempDir,
}

impl Drop for Bridge {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Bridge {
    fn start() -> Self {
        let folder = tempfile::tempdir().unwrap();
        fs::create_dir(folder.path().join("dist")).unwrap();
        fs::write(folder.path().join("dist/index.html"), "<p>here").unwrap();
        fs::write(folder.path().join("secret"), "not served").unwrap();
        let config = concat!(
            env!("CARGO_MANIFEST_DIR"),
            "/../../src-tauri/tauri.conf.json"
        );
        let mut child = Command::new(env!("CARGO_BIN_EXE_surefoot-bridge"))
            .arg("--dist")
            .arg(folder.path().join("dist"))
            .arg("--data")
            .arg(folder.path().join("data"))
            .args(["--config", config, "--today", "2026-09-14"])
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap())
            .read_line(&mut line)
            .unwrap();
        let host = line.trim();
        let host = host.strip_prefix("http://").unwrap().trim_end_matches('/');
        Self {
            child,
            host: host.to_owned(),
            folder,
        }
    }

    fn ask_as(&self, host: &str, request: &str, body: &str) -> (u16, String) {
        let mut stream = TcpStream::connect(&self.host).unwrap();
        let length = body.len();
        write!(
            stream,
            "{request} HTTP/1.1\r\nHost: {host}\r\nContent-Length: {length}\r\nConnection: close\r\n\r\n{body}"
        )
        .unwrap();
        let mut text = String::new();
        stream.read_to_string(&mut text).unwrap();
        let status = text.split(' ').nth(1).unwrap().parse().unwrap();
        (status, text)
    }

    fn ask(&self, request: &str, body: &str) -> (u16, String) {
        self.ask_as(&self.host, request, body)
    }
}

#[test]
fn screens_come_with_the_windows_policy() {
    let bridge = Bridge::start();
    let (status, text) = bridge.ask("GET /", "");
    assert_eq!(status, 200);
    assert!(text.ends_with("<p>here"));
    assert!(
        text.contains("script-src 'self'; style-src 'self'"),
        "{text}"
    );
}

#[test]
fn other_hosts_and_other_folders_get_nothing() {
    let bridge = Bridge::start();
    assert_eq!(bridge.ask_as("elsewhere.example", "GET /", "").0, 421);
    assert_eq!(bridge.ask_as("localhost", "POST /call/start", "{}").0, 421);
    for path in [
        "/../secret",
        "/%2e%2e/secret",
        "//etc/passwd",
        "/nothing.js",
    ] {
        let (status, text) = bridge.ask(&format!("GET {path}"), "");
        assert_eq!(status, 404, "{path}: {text}");
    }
    assert!(bridge.folder.path().join("secret").exists());
}

#[test]
fn calls_give_their_value_or_their_error() {
    let bridge = Bridge::start();
    let (status, text) = bridge.ask("POST /call/start", "{}");
    assert_eq!(status, 200, "{text}");
    assert!(text.contains(r#""today":"2026-09-14""#), "{text}");
    let (status, text) = bridge.ask("POST /call/no_such_call", "{}");
    assert_eq!(status, 422);
    assert!(text.contains(r#""code":"unknown_call""#), "{text}");
    let (status, text) = bridge.ask("POST /call/today", r#"{"wrong":1}"#);
    assert_eq!(status, 422);
    assert!(text.contains(r#""code":"bad_arguments""#), "{text}");
    assert_eq!(bridge.ask("POST /call/start", "{").0, 400);
    assert_eq!(bridge.ask("DELETE /call/start", "").0, 405);
}

#[test]
fn the_day_can_be_moved() {
    let bridge = Bridge::start();
    assert_eq!(bridge.ask("POST /test/today", r#""2026-09-15""#).0, 200);
    let (_, text) = bridge.ask("POST /call/start", "{}");
    assert!(text.contains(r#""today":"2026-09-15""#), "{text}");
    assert_eq!(bridge.ask("POST /test/today", r#""soon""#).0, 400);
}

#[test]
fn a_person_picks_what_the_test_said() {
    let bridge = Bridge::start();
    let (status, text) = bridge.ask("POST /call/pick_class_pack", "{}");
    assert_eq!(status, 422, "nothing was said yet: {text}");
    assert!(text.contains(r#""code":"files""#), "{text}");
    assert_eq!(bridge.ask("POST /test/pick", "[]").0, 200);
    let (status, text) = bridge.ask("POST /call/pick_class_pack", "{}");
    assert_eq!(status, 200, "{text}");
    assert!(text.ends_with("null"), "{text}");
    let not_a_pack = serde_json::json!([bridge.folder.path().join("secret")]);
    assert_eq!(
        bridge.ask("POST /test/pick", &not_a_pack.to_string()).0,
        200
    );
    let (status, text) = bridge.ask("POST /call/pick_class_pack", "{}");
    assert_eq!(status, 422);
    assert!(text.contains(r#""code":"refused""#), "{text}");
    assert!(bridge.ask("GET /test/saved", "").1.ends_with("[]"));
}

#[test]
fn a_file_opened_from_elsewhere_is_given_once() {
    let bridge = Bridge::start();
    let (status, text) = bridge.ask("POST /call/opened_files", "{}");
    assert_eq!(status, 200, "{text}");
    assert!(text.contains(r#""pack":null"#), "{text}");
    let not_a_pack = serde_json::json!([bridge.folder.path().join("secret")]);
    assert_eq!(
        bridge.ask("POST /test/open", &not_a_pack.to_string()).0,
        200
    );
    let (status, text) = bridge.ask("POST /call/opened_files", "{}");
    assert_eq!(status, 200);
    assert!(text.contains(r#""code":"refused""#), "{text}");
    let (_, text) = bridge.ask("POST /call/opened_files", "{}");
    assert!(text.contains(r#""not_taken":[]"#), "{text}");
}
