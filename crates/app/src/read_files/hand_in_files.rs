//! Imports hand-ins from files.

use super::zip_files::{MOST_UNPACKED_BYTES, ZipRoom, each_hand_in};
use crate::context::file_dialogs::FileSource;
use crate::context::jobs::Progress;
use crate::error::CallError;
use chrono::NaiveDate;
use std::ops::ControlFlow;
use std::sync::mpsc;
use std::thread;
use surefoot_desk::Import;
use surefoot_desk::ImportReport;
use surefoot_exchange::open_hand_in;
use surefoot_store::DeskStore;

/// Hand-ins opened ahead at most.
const OPENED_AHEAD: usize = 4;

/// Imports every file, one after the other, and opens the next ones meanwhile. A stop takes
/// effect between two files; what is imported stays.
pub fn import_files(
    desk: &DeskStore,
    sources: Vec<FileSource>,
    today: NaiveDate,
    progress: &Progress,
) -> Result<ImportReport, CallError> {
    let import = Import::begin(desk, today)?;
    let identities = import.identities();
    let (opened, waiting) = mpsc::sync_channel(OPENED_AHEAD);
    let stopped = thread::scope(|scope| -> Result<bool, CallError> {
        scope.spawn(move || {
            // Sending fails once the import has stopped or failed.
            let _ = each_hand_in(
                sources,
                ZipRoom::new(MOST_UNPACKED_BYTES),
                |files| progress.expect(files),
                |name, file| {
                    let file = file.and_then(|bytes| open_hand_in(bytes, &identities));
                    match opened.send((name, file)) {
                        Ok(()) => ControlFlow::Continue(()),
                        Err(_) => ControlFlow::Break(()),
                    }
                },
            );
        });
        for (name, file) in waiting {
            if progress.stopped() {
                return Ok(true);
            }
            import.take(&name, file)?;
            progress.step();
        }
        Ok(false)
    })?;
    Ok(import.end(stopped)?)
}
