//! Test only: serves the built screens and the real calls on 127.0.0.1, so that
//! a browser can drive them. Never part of what people install.

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod person;
mod serve;
mod voice;

use chrono::NaiveDate;
use clap::Parser;
use person::{Person, TestClock};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Arc;
use surefoot_app::{App, Clock as _, DeviceClock};
use surefoot_catalogue::{ExtraLanguage, register_language};

/// Calls may wait for a long job, so that one must not hold up the next.
const WORKERS: usize = 6;

#[derive(Parser)]
#[command(
    name = "surefoot-bridge",
    about = "Test only: the screens and the real calls on 127.0.0.1."
)]
struct Arguments {
    /// Folder of the screens built with TEST_BRIDGE=1.
    #[arg(long)]
    dist: PathBuf,
    /// Folder of the program's own data.
    #[arg(long)]
    data: PathBuf,
    /// Folder that saved files go into; inside the data folder unless named.
    #[arg(long)]
    saves: Option<PathBuf>,
    /// The day it is; the device's own unless named.
    #[arg(long)]
    today: Option<NaiveDate>,
    /// Port; 0 for a free one.
    #[arg(long, default_value_t = 0)]
    port: u16,
    /// Folder of a language to add to those of the program: its files, and its line of the
    /// table as `language.json`.
    #[arg(long)]
    extra_language: Option<PathBuf>,
    /// The shell's configuration, for its content security policy.
    #[arg(long, default_value = "src-tauri/tauri.conf.json")]
    config: PathBuf,
}

fn run(arguments: Arguments) -> Result<(), String> {
    if let Some(folder) = &arguments.extra_language {
        register_language(extra_language(folder)?)?;
    }
    let csp = policy(&arguments.config)?;
    let saves = arguments
        .saves
        .unwrap_or_else(|| arguments.data.join("saves"));
    for folder in [&arguments.data, &saves] {
        std::fs::create_dir_all(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    }
    let person = Arc::new(Person::new(saves));
    let clock = TestClock::new(arguments.today.unwrap_or_else(|| DeviceClock.today()));
    let voice = voice::TestVoice::default();
    let app = App::open(
        &arguments.data,
        Box::new(person::Dialogs(Arc::clone(&person))),
        Box::new(clock.clone()),
        Box::new(voice.clone()),
    )
    .map_err(|e| e.to_string())?;
    let server =
        tiny_http::Server::http(("127.0.0.1", arguments.port)).map_err(|e| e.to_string())?;
    let port = server.server_addr().to_ip().ok_or("no address")?.port();
    let site = serve::Site {
        dist: arguments.dist,
        csp,
        host: format!("127.0.0.1:{port}"),
        app,
        person,
        clock,
        voice,
    };
    println!("http://{}/", site.host);
    std::thread::scope(|scope| {
        for _ in 0..WORKERS {
            scope.spawn(|| {
                while let Ok(request) = server.recv() {
                    site.answer(request);
                }
            });
        }
    });
    Ok(())
}

/// Reads the folder of a language.
fn extra_language(folder: &Path) -> Result<ExtraLanguage, String> {
    let at = |path: &Path, error: &dyn std::fmt::Display| format!("{}: {error}", path.display());
    let entries = std::fs::read_dir(folder).map_err(|e| at(folder, &e))?;
    let mut line = None;
    let mut files = Vec::new();
    for entry in entries {
        let path = entry.map_err(|e| at(folder, &e))?.path();
        let text = std::fs::read_to_string(&path).map_err(|e| at(&path, &e))?;
        match path.file_name().and_then(|name| name.to_str()) {
            Some("language.json") => {
                line = Some(serde_json::from_str(&text).map_err(|e| at(&path, &e))?);
            }
            Some(name) => files.push((name.to_owned(), text)),
            None => return Err(at(&path, &"not UTF-8")),
        }
    }
    let line = line.ok_or_else(|| at(folder, &"language.json is missing"))?;
    Ok(ExtraLanguage { line, files })
}

/// The policy that the real window has.
fn policy(config: &Path) -> Result<String, String> {
    let at = config.display();
    let text = std::fs::read_to_string(config).map_err(|e| format!("{at}: {e}"))?;
    let config: serde_json::Value =
        serde_json::from_str(&text).map_err(|e| format!("{at}: {e}"))?;
    config
        .pointer("/app/security/csp")
        .and_then(serde_json::Value::as_str)
        .map(str::to_owned)
        .ok_or_else(|| format!("{at}: no content security policy"))
}

fn main() -> ExitCode {
    match run(Arguments::parse()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(words) => {
            eprintln!("surefoot-bridge: {words}");
            ExitCode::FAILURE
        }
    }
}
