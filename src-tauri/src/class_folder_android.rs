//! The class folder on Android: a document tree that the person chose, through `ClassFolderPlugin.kt`.
//!
//! What is read and written goes through private files in the cache folder, so that neither side
//! holds a file as text.

use crate::documents::{decoded, documents_of, fault_of, place_of, trees_of};
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io::{self, Read as _, Write as _};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};
use surefoot_app::{Document, DocumentTree, Wanted};
use tauri::plugin::mobile::PluginInvokeError;
use tauri::plugin::{Builder, PluginHandle, TauriPlugin};
use tauri::{AppHandle, Manager as _, Runtime};

/// The Kotlin side.
struct Plugin<R: Runtime>(PluginHandle<R>);

/// Starts the Kotlin side with the program.
pub fn plugin<R: Runtime>() -> TauriPlugin<R> {
    Builder::new("class-folder")
        .setup(|app, api| {
            let handle = api.register_android_plugin("org.surefoot.app", "ClassFolderPlugin")?;
            app.manage(Plugin(handle));
            Ok(())
        })
        .build()
}

/// Lets the person choose a folder. Returns what it is known by.
///
/// # Errors
/// Returns an error if there is no chooser, or the folder may not be kept.
pub fn pick<R: Runtime>(app: &AppHandle<R>) -> io::Result<Option<PathBuf>> {
    let picked = ask(app, "pickFolder", json!({}))?;
    let text = |field: &str| picked.get(field).and_then(Value::as_str).map(decoded);
    let Some(tree) = text("tree") else {
        return Ok(None);
    };
    let place = place_of(&tree, &text("name").unwrap_or_default());
    place
        .map(Some)
        .ok_or_else(|| io::ErrorKind::InvalidData.into())
}

/// Gives back the rights to all folders but those that are used. One that stays does no harm.
pub fn release<R: Runtime>(app: &AppHandle<R>, used: &BTreeSet<PathBuf>) {
    let _ = ask(app, "releaseFolders", json!({ "used": trees_of(used) }));
}

/// The name of a file at an address that the person picked or another program opened.
///
/// # Errors
/// Returns an error if its provider does not say it.
pub fn name<R: Runtime>(app: &AppHandle<R>, document: &str) -> io::Result<String> {
    let said = ask(app, "nameDocument", json!({ "document": document }))?;
    let name = said.get("name").and_then(Value::as_str).map(decoded);
    name.filter(|name| !name.is_empty())
        .ok_or_else(|| io::ErrorKind::NotFound.into())
}

/// The tree of a class folder.
pub struct Tree<R: Runtime> {
    pub app: AppHandle<R>,
    /// Its address.
    pub tree: String,
}

/// Asks the Kotlin side, and waits for the answer.
fn ask<R: Runtime>(app: &AppHandle<R>, command: &str, args: Value) -> io::Result<Value> {
    let plugin = app.state::<Plugin<R>>();
    (plugin.0.run_mobile_plugin(command, args)).map_err(|error| match error {
        PluginInvokeError::InvokeRejected(said) => fault_of(&said.code.unwrap_or_default()),
        _ => io::ErrorKind::Other.into(),
    })
}

/// A private file that is gone afterwards.
struct Private(PathBuf);

impl Private {
    fn new<R: Runtime>(app: &AppHandle<R>) -> io::Result<Self> {
        static NUMBER: AtomicU64 = AtomicU64::new(0);
        let folder = private_folder(app)?;
        fs::create_dir_all(&folder)?;
        let number = NUMBER.fetch_add(1, Ordering::Relaxed);
        Ok(Self(folder.join(number.to_string())))
    }

    fn path(&self) -> &Path {
        &self.0
    }
}

impl Drop for Private {
    fn drop(&mut self) {
        let _ = fs::remove_file(&self.0);
    }
}

fn private_folder<R: Runtime>(app: &AppHandle<R>) -> io::Result<PathBuf> {
    let cache = app.path().app_cache_dir().map_err(io::Error::other)?;
    Ok(cache.join("class-folder"))
}

/// Removes the private files of a program that was ended.
pub fn clear<R: Runtime>(app: &AppHandle<R>) {
    if let Ok(folder) = private_folder(app) {
        let _ = fs::remove_dir_all(folder);
    }
}

impl<R: Runtime> Tree<R> {
    fn one(&self, command: &str, args: Value) -> io::Result<Document> {
        let answer = ask(&self.app, command, args)?;
        let mut found = documents_in(&answer)?;
        found.pop().ok_or_else(|| io::ErrorKind::NotFound.into())
    }
}

fn documents_in(answer: &Value) -> io::Result<Vec<Document>> {
    let rows = answer.get("rows").and_then(Value::as_str);
    documents_of(rows.ok_or(io::ErrorKind::InvalidData)?)
}

impl<R: Runtime> DocumentTree for Tree<R> {
    fn children(&self, wanted: &Wanted, most: usize) -> io::Result<(Vec<Document>, bool)> {
        let args = json!({
            "tree": self.tree,
            "extensions": wanted.extensions,
            "names": wanted.names,
            "prefix": wanted.prefix,
            "most": most,
        });
        let answer = ask(&self.app, "listFolder", args)?;
        let more = answer.get("more").and_then(Value::as_bool);
        Ok((documents_in(&answer)?, more.unwrap_or(true)))
    }

    fn read(&self, id: &str, most_bytes: u64) -> io::Result<Vec<u8>> {
        let private = Private::new(&self.app)?;
        let args = json!({
            "tree": self.tree,
            "document": id,
            "file": private.path(),
            "most": most_bytes,
        });
        ask(&self.app, "readDocument", args)?;
        let mut bytes = Vec::new();
        File::open(private.path())?
            .take(most_bytes)
            .read_to_end(&mut bytes)?;
        Ok(bytes)
    }

    fn create(&self, name: &str) -> io::Result<Document> {
        self.one("createDocument", json!({ "tree": self.tree, "name": name }))
    }

    fn write(&self, id: &str, bytes: &[u8]) -> io::Result<()> {
        let private = Private::new(&self.app)?;
        File::create(private.path())?.write_all(bytes)?;
        let args = json!({
            "tree": self.tree,
            "document": id,
            "file": private.path(),
        });
        ask(&self.app, "writeDocument", args).map(|_| ())
    }

    fn rename(&self, id: &str, name: &str) -> io::Result<Document> {
        let args = json!({ "tree": self.tree, "document": id, "name": name });
        self.one("renameDocument", args)
    }

    fn remove(&self, id: &str) -> io::Result<()> {
        let args = json!({ "tree": self.tree, "document": id });
        ask(&self.app, "removeDocument", args).map(|_| ())
    }
}
