//! Files that another program opened with this one. They may come before the page is ready, so
//! they wait until it asks.

use std::sync::{Mutex, PoisonError};
use tauri::{AppHandle, Emitter as _, Runtime};
use tauri_plugin_dialog::FilePath;

/// The event that tells the page to ask for new files.
pub const EVENT: &str = "opened";

/// The waiting files.
#[derive(Default)]
pub struct Opened(Mutex<Vec<FilePath>>);

impl Opened {
    /// Adds the files of a command line, whose paths are relative to `folder`.
    #[cfg(desktop)]
    pub fn add_arguments(&self, arguments: &[String], folder: &std::path::Path) {
        let files = arguments.iter().skip(1).filter(|a| !a.starts_with('-'));
        self.add(files.map(|file| match tauri::Url::parse(file) {
            Ok(address) if address.scheme() == "file" => FilePath::Url(address),
            _ => FilePath::Path(folder.join(file)),
        }));
    }

    /// Adds the addresses of the system's event "opened".
    #[cfg(any(target_os = "macos", target_os = "ios", target_os = "android"))]
    pub fn add_addresses(&self, addresses: &[tauri::Url]) {
        // A shared text comes as a `data:` address, which is no file.
        let files = addresses.iter().filter(|a| a.scheme() != "data");
        self.add(files.cloned().map(FilePath::Url));
    }

    /// Adds files and folders that were dropped on the window.
    pub fn add_paths(&self, paths: &[std::path::PathBuf]) {
        self.add(paths.iter().cloned().map(FilePath::Path));
    }

    fn add(&self, files: impl Iterator<Item = FilePath>) {
        self.0
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .extend(files);
    }

    /// Removes and returns the waiting files.
    pub fn take(&self) -> Vec<FilePath> {
        std::mem::take(&mut *self.0.lock().unwrap_or_else(PoisonError::into_inner))
    }
}

/// Brings the window to the front and sends the event to its page.
pub fn tell<R: Runtime>(app: &AppHandle<R>) {
    // A window that is closing stays where it is.
    #[cfg(desktop)]
    if let Some(window) = tauri::Manager::get_webview_window(app, "main") {
        let _ = window.unminimize();
        let _ = window.set_focus();
    }
    let _ = app.emit(EVENT, ());
}

#[cfg(all(test, desktop))]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use std::path::Path;

    #[test]
    fn a_command_line_gives_its_files_from_its_own_folder_once() {
        let opened = Opened::default();
        let words = [
            "surefoot",
            "--sample",
            "a.sfclass",
            "/b/c.sfclass",
            "file:///d%20e",
        ];
        opened.add_arguments(&words.map(str::to_owned), Path::new("/somewhere"));
        let paths: Vec<_> = opened
            .take()
            .into_iter()
            .map(|f| f.into_path().unwrap())
            .collect();
        let wanted = ["/somewhere/a.sfclass", "/b/c.sfclass", "/d e"];
        assert_eq!(paths, wanted.map(std::path::PathBuf::from));
        assert!(opened.take().is_empty());
    }
}
