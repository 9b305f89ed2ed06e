//! Imports hand-ins from files.

use super::zip_files::unzipped;
use crate::context::file_dialogs::FileSource;
use crate::context::jobs::Progress;
use crate::error::CallError;
use chrono::NaiveDate;
use std::sync::mpsc;
use std::thread;
use surefoot_desk::Import;
use surefoot_desk::ImportReport;
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
    let sources = unzipped(sources);
    progress.expect(sources.len());
    let import = Import::begin(desk, today)?;
    let opener = import.opener();
    let (opened, waiting) = mpsc::sync_channel(OPENED_AHEAD);
    let stopped = thread::scope(|scope| -> Result<bool, CallError> {
        scope.spawn(move || {
            for source in sources {
                let name = source.name().to_owned();
                // The import has stopped or failed.
                if opened.send((name, opener.open(source.open()))).is_err() {
                    break;
                }
            }
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
