//! Picks and saves files with the dialogs of the system. On Android a picked file is an address
//! that only the system can open, so this code uses paths only where it must.

use crate::opened::Opened;
use std::io::Read;
use std::path::Path;
use std::sync::Arc;
use surefoot_app::{CallError, FileDialogs, FileKind, FileSource};
use tauri::{AppHandle, Manager as _, Runtime};
use tauri_plugin_dialog::{DialogExt as _, FileDialogBuilder, FilePath};
use tauri_plugin_fs::{FsExt as _, OpenOptions};

/// The dialogs of the system, shown by the main window.
pub struct SystemDialogs<R: Runtime> {
    app: AppHandle<R>,
    opened: Arc<Opened>,
}

fn files(detail: impl ToString) -> CallError {
    CallError::Files {
        detail: detail.to_string(),
    }
}

impl<R: Runtime> SystemDialogs<R> {
    /// Dialogs of `app`; `opened` holds the files that other programs open with this one.
    pub fn new(app: AppHandle<R>, opened: Arc<Opened>) -> Self {
        Self { app, opened }
    }

    fn dialog(&self, kind: FileKind) -> FileDialogBuilder<R> {
        let dialog = self.app.dialog().file();
        #[cfg(desktop)]
        {
            let extensions = kind.picked_extensions();
            let dialog = dialog.add_filter(format!("*.{}", extensions.join(", *.")), extensions);
            match self.app.get_webview_window("main") {
                Some(window) => dialog.set_parent(&window),
                None => dialog,
            }
        }
        // Android filters by media type and does not know ours, so a filter would hide our files.
        #[cfg(not(desktop))]
        {
            let _ = kind;
            dialog
        }
    }

    fn source(&self, at: FilePath) -> FileSource {
        let app = self.app.clone();
        let name = self.name(&at);
        FileSource::new(name, move || {
            #[cfg(desktop)]
            if let Ok(path) = at.clone().into_path()
                && !path.metadata()?.is_file()
            {
                // Opening a pipe would never return.
                return Err(std::io::Error::new(
                    std::io::ErrorKind::InvalidInput,
                    "not a regular file",
                ));
            }
            let mut options = OpenOptions::new();
            options.read(true);
            let file = app.fs().open(at, options)?;
            Ok(Box::new(file) as Box<dyn Read + Send>)
        })
    }

    /// The name of a file for people; Android asks the system.
    fn name(&self, at: &FilePath) -> String {
        let text = match at {
            FilePath::Path(path) => path.display().to_string(),
            FilePath::Url(address) => match address.to_file_path() {
                Ok(path) => path.display().to_string(),
                Err(()) => address.to_string(),
            },
        };
        #[cfg(target_os = "android")]
        if let Ok(name) = crate::class_folder_android::name(&self.app, &text) {
            return name;
        }
        Path::new(&text)
            .file_name()
            .map_or(text.clone(), |name| name.to_string_lossy().into_owned())
    }

    fn sources(&self, picked: Vec<FilePath>) -> Vec<FileSource> {
        let mut sources: Vec<_> = picked.into_iter().map(|at| self.source(at)).collect();
        sources.sort_by(|a, b| a.name().cmp(b.name()));
        sources
    }
}

impl<R: Runtime> FileDialogs for SystemDialogs<R> {
    fn pick_file(&self, kind: FileKind) -> Result<Option<FileSource>, CallError> {
        let picked = self.dialog(kind).blocking_pick_file();
        Ok(picked.map(|at| self.source(at)))
    }

    fn pick_files(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        let picked = self.dialog(kind).blocking_pick_files();
        Ok(picked.map(|picked| self.sources(picked)))
    }

    #[cfg(desktop)]
    fn pick_folder(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        let Some(folder) = self.dialog(kind).blocking_pick_folder() else {
            return Ok(None);
        };
        let folder = folder.into_path().map_err(files)?;
        surefoot_app::files_in(&folder, kind)
            .map(Some)
            .map_err(files)
    }

    #[cfg(any(desktop, target_os = "android"))]
    fn has_class_folders(&self) -> bool {
        true
    }

    #[cfg(target_os = "android")]
    fn pick_class_folder(&self) -> Result<Option<std::path::PathBuf>, CallError> {
        crate::class_folder_android::pick(&self.app).map_err(files)
    }

    #[cfg(target_os = "android")]
    fn class_folder(&self, at: &std::path::Path) -> Arc<dyn surefoot_app::ClassFolder> {
        surefoot_app::folder_of(Arc::new(crate::class_folder_android::Tree {
            app: self.app.clone(),
            tree: crate::documents::tree_of(at),
        }))
    }

    #[cfg(target_os = "android")]
    fn class_folder_name(&self, at: &std::path::Path) -> String {
        crate::documents::name_of(at)
    }

    #[cfg(target_os = "android")]
    fn release_class_folders(&self, used: &std::collections::BTreeSet<std::path::PathBuf>) {
        crate::class_folder_android::release(&self.app, used);
    }

    #[cfg(desktop)]
    fn pick_class_folder(&self) -> Result<Option<std::path::PathBuf>, CallError> {
        let picked = self.dialog(FileKind::HandIn).blocking_pick_folder();
        picked
            .map(|folder| folder.into_path().map_err(files))
            .transpose()
    }

    /// On Android the person picks the files of a folder instead.
    #[cfg(not(desktop))]
    fn pick_folder(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        self.pick_files(kind)
    }

    #[cfg(desktop)]
    fn save(
        &self,
        suggested_name: &str,
        kind: FileKind,
        bytes: &[u8],
    ) -> Result<Option<String>, CallError> {
        let dialog = self.dialog(kind).set_file_name(suggested_name);
        let Some(at) = dialog.blocking_save_file() else {
            return Ok(None);
        };
        let path = at.into_path().map_err(files)?;
        surefoot_app::write_atomic(&path, bytes).map_err(files)?;
        Ok(Some(path.display().to_string()))
    }

    /// A file on Android has no folder to rename in, so it is overwritten, and an error says that it
    /// may not be whole.
    #[cfg(not(desktop))]
    fn save(
        &self,
        suggested_name: &str,
        kind: FileKind,
        bytes: &[u8],
    ) -> Result<Option<String>, CallError> {
        use std::io::Write as _;
        let dialog = self.dialog(kind).set_file_name(suggested_name);
        let Some(at) = dialog.blocking_save_file() else {
            return Ok(None);
        };
        let name = self.name(&at);
        let mut options = OpenOptions::new();
        options.write(true).create(true).truncate(true);
        let mut file = self.app.fs().open(at, options).map_err(files)?;
        file.write_all(bytes)
            .and_then(|()| crate::outgoing::sync(&file))
            .map_err(files)?;
        Ok(Some(name))
    }

    #[cfg(target_os = "android")]
    fn shares(&self) -> bool {
        true
    }

    #[cfg(target_os = "android")]
    fn share(&self, name: &str, kind: FileKind, bytes: &[u8]) -> Result<bool, CallError> {
        let Some(window) = self.app.get_webview_window("main") else {
            return Ok(false);
        };
        // The file provider of the Android project shares only the cache folder.
        let shared = self
            .app
            .path()
            .app_cache_dir()
            .map_err(files)?
            .join("share");
        let now = std::time::SystemTime::now();
        crate::outgoing::wipe_old(&shared, now)?;
        let path = crate::outgoing::folder_for(&shared, now)?.join(name);
        surefoot_app::write_atomic(&path, bytes).map_err(files)?;
        crate::share_android::send_file(&window, &path, kind.media_type()).map_err(files)?;
        Ok(true)
    }

    fn take_opened(&self) -> Vec<FileSource> {
        let mut sources = Vec::new();
        for at in self.opened.take() {
            // Of a dropped folder, the hand-ins are taken.
            #[cfg(desktop)]
            if let Ok(path) = at.clone().into_path()
                && path.is_dir()
            {
                sources.extend(surefoot_app::files_in(&path, FileKind::HandIn).unwrap_or_default());
                continue;
            }
            sources.push(self.source(at));
        }
        sources
    }
}
