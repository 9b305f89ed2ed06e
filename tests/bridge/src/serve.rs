//! Requests and answers.
//!
//! | request | does |
//! |---|---|
//! | `GET /…` | a file of the screens |
//! | `POST /call/NAME` | the call; 200 with what it gave, or 422 with its error |
//! | `POST /test/pick` | JSON list of paths picked the next time; empty to go back |
//! | `POST /test/open` | JSON list of paths opened with this program from elsewhere |
//! | `POST /test/save` | `"decline"` or `"unwritable"`: the next save |
//! | `POST /test/today` | `"YYYY-MM-DD"`: the day it is from now on |
//! | `POST /test/pass` | minutes that pass at once |
//! | `POST /test/voice` | `"quick"`, `"long"` or `"missing"`: how the voice reads from now on |
//! | `GET /test/said` | `{ "said": [{ "language", "text" }], "stops" }` of the voice |
//! | `POST /test/shares` | `true` or `false`: whether there is a share sheet from now on |
//! | `POST /test/folder` | `"not_allowed"`, `"changes_names"` or `null`: what class folders refuse |
//! | `GET /test/saved` | `[{ "name", "bytes" }]` of what has been saved |
//! | `GET /test/shared` | the same of what has been shared |

use crate::person::{Person, SaveDecision, TestClock};
use crate::voice::{Manner, TestVoice};
use serde_json::{Value, json};
use std::io::{Read as _, Write as _};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;
use surefoot_app::{App, TreeFault};
use tiny_http::{Method, Request};

/// More than any call's arguments.
const MOST_BODY_BYTES: u64 = 8 << 20;

/// What is served.
pub struct Site {
    /// The built screens.
    pub dist: PathBuf,
    /// The content security policy that the window has.
    pub csp: String,
    /// The only host answered for, so that no page from elsewhere gets in.
    pub host: String,
    /// The program.
    pub app: App,
    /// The person at the screen.
    pub person: Arc<Person>,
    /// The day it is.
    pub clock: TestClock,
    /// The system's speech.
    pub voice: TestVoice,
}

struct Answer {
    status: u16,
    media_type: &'static str,
    body: Vec<u8>,
}

fn bare(status: u16) -> Answer {
    Answer {
        status,
        media_type: "text/plain",
        body: Vec::new(),
    }
}

fn data(status: u16, value: &Value) -> Answer {
    Answer {
        status,
        media_type: "application/json",
        body: value.to_string().into_bytes(),
    }
}

impl Site {
    /// Answers one request; a call that panics is answered with 500.
    pub fn answer(&self, mut request: Request) {
        let answer = catch_unwind(AssertUnwindSafe(|| self.choose(&mut request)))
            .unwrap_or_else(|_| bare(500));
        // Every connection is closed after its answer: the server has few threads,
        // and a browser that keeps six connections open would starve itself.
        let head = format!(
            "HTTP/1.1 {} \r\nContent-Length: {}\r\nContent-Type: {}\r\n\
             Content-Security-Policy: {}\r\nX-Content-Type-Options: nosniff\r\n\
             Cache-Control: no-store\r\nConnection: close\r\n\r\n",
            answer.status,
            answer.body.len(),
            answer.media_type,
            self.csp
        );
        let mut writer = request.into_writer();
        // The browser may have gone; there is nobody to tell.
        let _ = writer
            .write_all(head.as_bytes())
            .and_then(|()| writer.write_all(&answer.body))
            .and_then(|()| writer.flush());
    }

    fn choose(&self, request: &mut Request) -> Answer {
        let host_fits = request
            .headers()
            .iter()
            .any(|h| h.field.equiv("Host") && h.value.as_str() == self.host);
        if !host_fits {
            return bare(421);
        }
        let path = request.url().split('?').next().unwrap_or("/").to_owned();
        match (request.method(), path.as_str()) {
            (Method::Get, "/test/saved") => match self.person.saved() {
                Ok(saved) => data(200, &sizes(saved)),
                Err(_) => bare(500),
            },
            (Method::Get, "/test/shared") => data(200, &sizes(self.person.shared())),
            (Method::Get, "/test/said") => {
                let (said, stops) = self.voice.heard();
                let said: Value = said
                    .into_iter()
                    .map(|(language, text)| json!({ "language": language, "text": text }))
                    .collect();
                data(200, &json!({ "said": said, "stops": stops }))
            }
            (Method::Get, _) => self.file(path.trim_start_matches('/')),
            (Method::Post, _) => match read_body(request) {
                Ok(body) => self.post(&path, body),
                Err(status) => bare(status),
            },
            _ => bare(405),
        }
    }

    fn post(&self, path: &str, body: Value) -> Answer {
        if let Some(name) = path.strip_prefix("/call/") {
            return match surefoot_app::dispatch(&self.app, name, body) {
                Ok(value) => data(200, &value),
                Err(error) => match serde_json::to_value(&error) {
                    Ok(value) => data(422, &value),
                    Err(_) => bare(500),
                },
            };
        }
        let done = match path {
            "/test/pick" => serde_json::from_value(body).map(|paths| self.person.will_pick(paths)),
            "/test/open" => serde_json::from_value(body).map(|paths| self.person.open_with(paths)),
            "/test/shares" => {
                serde_json::from_value(body).map(|shares| self.person.will_share(shares))
            }
            "/test/folder" => {
                self.person.refuse_folders(match body.as_str() {
                    Some("not_allowed") => Some(TreeFault::NotAllowed),
                    Some("changes_names") => Some(TreeFault::ChangesNames),
                    _ => None,
                });
                Ok(())
            }
            "/test/today" => serde_json::from_value(body).map(|day| self.clock.set(day)),
            "/test/pass" => serde_json::from_value(body).map(|minutes| self.clock.pass(minutes)),
            "/test/voice" => {
                self.voice.set(match body.as_str() {
                    Some("quick") => Manner::Quick,
                    Some("long") => Manner::Long,
                    Some("missing") => Manner::Missing,
                    _ => return bare(400),
                });
                Ok(())
            }
            "/test/save" => match body.as_str() {
                Some("decline") => {
                    self.person.will_decide(SaveDecision::Decline);
                    Ok(())
                }
                Some("unwritable") => {
                    self.person.will_decide(SaveDecision::Unwritable);
                    Ok(())
                }
                _ => return bare(400),
            },
            _ => return bare(404),
        };
        done.map_or_else(|_| bare(400), |()| data(200, &json!({})))
    }

    fn file(&self, path: &str) -> Answer {
        let path = Path::new(if path.is_empty() { "index.html" } else { path });
        if !path.components().all(|c| matches!(c, Component::Normal(_))) {
            return bare(404);
        }
        let media_type = match path.extension().and_then(|e| e.to_str()) {
            Some("html") => "text/html; charset=utf-8",
            Some("js") => "text/javascript",
            Some("css") => "text/css",
            Some("svg") => "image/svg+xml",
            Some("png") => "image/png",
            Some("woff2") => "font/woff2",
            Some("json") => "application/json",
            _ => "application/octet-stream",
        };
        match std::fs::read(self.dist.join(path)) {
            Ok(body) => Answer {
                status: 200,
                media_type,
                body,
            },
            Err(_) => bare(404),
        }
    }
}

fn read_body(request: &mut Request) -> Result<Value, u16> {
    let mut body = Vec::new();
    request
        .as_reader()
        .take(MOST_BODY_BYTES + 1)
        .read_to_end(&mut body)
        .map_err(|_| 400_u16)?;
    if body.len() as u64 > MOST_BODY_BYTES {
        return Err(413);
    }
    serde_json::from_slice(&body).map_err(|_| 400)
}

fn sizes(files: Vec<(String, u64)>) -> Value {
    (files.into_iter())
        .map(|(name, bytes)| json!({ "name": name, "bytes": bytes }))
        .collect()
}
