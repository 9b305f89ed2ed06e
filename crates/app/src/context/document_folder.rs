//! A class folder without a path: a tree of documents that another program provides, as on Android.
//!
//! A provider may be slow, change names, keep two documents of one name, or not rename at all. Which
//! of its documents is which file, and in which order a file is replaced, is decided here; a
//! shell only passes requests on.

use crate::context::class_folder::{
    ClassFolder, FolderEntry, Listed, Mark, TreeFault, digest_of, has_extension,
    is_named_like_ours, keep_most,
};
use crate::context::file_kind::FileKind;
use crate::lock::lock;
use std::collections::{BTreeMap, BTreeSet};
use std::io;
use std::path::Path;
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::{Duration, SystemTime};

/// Documents of one listing at most; more than the files that are looked at, so that those that
/// matter can be chosen among them.
const MOST_DOCUMENTS: usize = 40_000;

/// How often, and after which pause, a document is read back until it is what was written: a
/// provider behind a pipe may need a moment.
const MOST_LOOKS: u32 = 20;
const PAUSE: Duration = Duration::from_millis(100);

/// What a document is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DocumentKind {
    /// It can be read as a file.
    File,
    /// It holds other documents.
    Folder,
    /// It has no bytes of its own.
    Other,
}

/// A document of a tree.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Document {
    /// By what its provider knows it. A new name may give it a new one.
    pub id: String,
    /// Its name. Another document may have the same.
    pub name: String,
    /// What it is.
    pub kind: DocumentKind,
    /// Whether its name can be changed.
    pub can_rename: bool,
    /// Its size, if the provider knows it.
    pub size_bytes: Option<u64>,
    /// Its time of change, in milliseconds since 1970, if the provider knows it.
    pub changed_millis: Option<u64>,
}

/// Which documents of a folder are asked for; one that fits any of these is.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Wanted {
    /// Those with one of these extensions, in any case.
    pub extensions: Vec<String>,
    /// Those with one of these names, also among too many.
    pub names: BTreeSet<String>,
    /// Those whose name begins so; nothing asks for none.
    pub prefix: Option<String>,
}

impl Wanted {
    /// Whether a document with this name is asked for.
    #[must_use]
    pub fn has(&self, name: &str) -> bool {
        self.names.contains(name)
            || (self.prefix.as_ref()).is_some_and(|prefix| name.starts_with(prefix))
            || (self.extensions.iter()).any(|extension| has_extension(name, extension))
    }
}

/// A folder of documents, as its provider offers it. Every function may wait for a network.
pub trait DocumentTree: Send + Sync {
    /// Lists the documents that are wanted, at most `most` and those wanted by name. Also returns
    /// whether there are more.
    ///
    /// # Errors
    /// Returns an error if the tree cannot be listed whole.
    fn children(&self, wanted: &Wanted, most: usize) -> io::Result<(Vec<Document>, bool)>;

    /// Reads a document, at most `most_bytes` of it.
    ///
    /// # Errors
    /// Returns an error if it cannot be read.
    fn read(&self, id: &str, most_bytes: u64) -> io::Result<Vec<u8>>;

    /// Makes an empty document, under another name if the provider likes. An existing one stays.
    ///
    /// # Errors
    /// Returns an error if there is none then.
    fn create(&self, name: &str) -> io::Result<Document>;

    /// Writes an empty document and lets it reach the disk, if there is one.
    ///
    /// # Errors
    /// Returns an error if that failed; the document may have a part then.
    fn write(&self, id: &str, bytes: &[u8]) -> io::Result<()>;

    /// Gives a document a name, or another one if the provider likes.
    ///
    /// # Errors
    /// Returns an error if it still has the old one.
    fn rename(&self, id: &str, name: &str) -> io::Result<Document>;

    /// Removes a document.
    ///
    /// # Errors
    /// Returns an error if it is still there.
    fn remove(&self, id: &str) -> io::Result<()>;
}

/// The class folder in a tree.
#[must_use]
pub fn folder_of(tree: Arc<dyn DocumentTree>) -> Arc<dyn ClassFolder> {
    Arc::new(DocumentFolder {
        tree,
        listed: Mutex::default(),
    })
}

/// A class folder in a tree.
struct DocumentFolder {
    tree: Arc<dyn DocumentTree>,
    /// The files of the last listing, by the names that they are listed under.
    listed: Mutex<Option<BTreeMap<String, Document>>>,
}

impl DocumentFolder {
    /// The document that is listed under a name.
    fn find(&self, name: &str) -> io::Result<Document> {
        if lock(&self.listed).is_none() {
            self.list(&BTreeSet::from([name.to_owned()]))?;
        }
        let found = lock(&self.listed)
            .as_ref()
            .and_then(|listed| listed.get(name).cloned());
        found.ok_or_else(|| io::ErrorKind::NotFound.into())
    }

    /// Makes a document with a content. Returns it when it can be read back; otherwise it is gone.
    fn make(&self, name: &str, bytes: &[u8]) -> io::Result<Document> {
        let made = self.tree.create(name)?;
        let whole = (self.tree)
            .write(&made.id, bytes)
            .and_then(|()| self.holds(&made.id, bytes));
        if let Err(error) = whole {
            let _ = self.tree.remove(&made.id);
            return Err(error);
        }
        Ok(made)
    }

    /// Whether a document has exactly these bytes. What closes without an error may still be cut.
    fn holds(&self, id: &str, bytes: &[u8]) -> io::Result<()> {
        let most_bytes = (bytes.len() as u64).saturating_add(1);
        for look in 0..MOST_LOOKS {
            if look > 0 {
                thread::sleep(PAUSE);
            }
            if self.tree.read(id, most_bytes)? == bytes {
                return Ok(());
            }
        }
        Err(io::ErrorKind::WriteZero.into())
    }

    /// Puts a whole document that has another name in the place of `old`. While it does, one of
    /// them is there under a name that is read. Returns nothing if it cannot be renamed; then it
    /// is gone.
    fn put_renamed(
        &self,
        made: &Document,
        name: &str,
        old: &[Document],
    ) -> io::Result<Option<Document>> {
        let mut old = old.to_owned();
        let renamed = (made.can_rename).then(|| self.rename_over(made, name, &mut old));
        let Some(Ok(put)) = renamed else {
            let _ = self.tree.remove(&made.id);
            return Ok(None);
        };
        let mut put = self.take_place(put, name, &old)?;
        if put.name != name {
            put = self.tree.rename(&put.id, name)?;
        }
        if put.name != name {
            return Err(TreeFault::ChangesNames.into());
        }
        Ok(Some(put))
    }

    /// Renames a document, although another may have the name. Where the provider refuses a second
    /// one, the older is named like a copy first.
    fn rename_over(
        &self,
        made: &Document,
        name: &str,
        old: &mut [Document],
    ) -> io::Result<Document> {
        let refused = match self.tree.rename(&made.id, name) {
            Ok(put) => return Ok(put),
            Err(refused) => refused,
        };
        let [only] = old else {
            return Err(refused);
        };
        *only = self.tree.rename(&only.id, &copy_name(only))?;
        let put = self.tree.rename(&made.id, name);
        if put.is_err() {
            let _ = self.tree.rename(&only.id, name);
        }
        put
    }

    /// Writes a document where nothing can be renamed. It may be seen half-written, beside `old`.
    fn put_anew(&self, name: &str, bytes: &[u8], old: &[Document]) -> io::Result<Document> {
        let put = self.take_place(self.make(name, bytes)?, name, old)?;
        if put.name == name {
            return Ok(put);
        }
        // The name is free now. Until it is taken, the one with the number is read.
        let again = self.make(name, bytes)?;
        if again.name != name {
            let _ = self.tree.remove(&again.id);
            return Err(TreeFault::ChangesNames.into());
        }
        self.replace(again, &[put])
    }

    /// Lets a whole document take the place of `old`. If it has another name than `old`, this must be
    /// one with a number, as most providers give: "hand-in (1)". After an error it is gone.
    fn take_place(&self, put: Document, name: &str, old: &[Document]) -> io::Result<Document> {
        let counted = !old.is_empty() && is_named_like_ours(&put.name);
        let placed = if put.name == name || counted {
            self.replace(put.clone(), old)
        } else {
            Err(TreeFault::ChangesNames.into())
        };
        if placed.is_err() {
            let _ = self.tree.remove(&put.id);
        }
        placed
    }

    /// Removes what a document takes the place of.
    fn replace(&self, put: Document, old: &[Document]) -> io::Result<Document> {
        for document in old.iter().filter(|document| document.id != put.id) {
            match self.tree.remove(&document.id) {
                Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(error),
                _ => {}
            }
        }
        Ok(put)
    }
}

impl ClassFolder for DocumentFolder {
    fn list(&self, first: &BTreeSet<String>) -> io::Result<Listed> {
        let extensions = [
            FileKind::ClassPack.extension(),
            FileKind::HandIn.extension(),
            "zip",
        ];
        let wanted = Wanted {
            extensions: extensions.map(str::to_owned).into(),
            names: first.clone(),
            prefix: None,
        };
        let (found, more) = self.tree.children(&wanted, MOST_DOCUMENTS)?;
        let mut files = by_name(found);
        let mut names: Vec<String> = files.keys().cloned().collect();
        let too_many = keep_most(&mut names, first) || more;
        files.retain(|name, _| names.binary_search(name).is_ok());
        let entries = (files.iter())
            .map(|(name, document)| FolderEntry {
                name: name.clone(),
                mark: mark_of(document),
            })
            .collect();
        *lock(&self.listed) = Some(files);
        Ok(Listed { entries, too_many })
    }

    fn read(&self, name: &str, most_bytes: u64) -> io::Result<Vec<u8>> {
        let document = self.find(name)?;
        self.tree.read(&document.id, most_bytes)
    }

    /// The provider sets the time.
    fn write(&self, name: &str, bytes: &[u8], _changed: SystemTime) -> io::Result<()> {
        if Path::new(name).file_name() != Some(name.as_ref()) {
            return Err(io::ErrorKind::InvalidInput.into());
        }
        let part = format!(".{name}.part");
        let wanted = Wanted {
            extensions: Vec::new(),
            names: BTreeSet::from([name.to_owned()]),
            prefix: Some(part.clone()),
        };
        let (there, _) = self.tree.children(&wanted, MOST_DOCUMENTS)?;
        let (old, parts): (Vec<_>, Vec<_>) = (there.into_iter()).partition(|one| one.name == name);
        if old.iter().any(|one| one.kind != DocumentKind::File) {
            return Err(io::ErrorKind::IsADirectory.into());
        }
        // Of a program that was ended. Somebody's folder stays.
        for left in parts.iter().filter(|one| one.kind == DocumentKind::File) {
            let _ = self.tree.remove(&left.id);
        }
        let made = self.make(&part, bytes)?;
        let put = match self.put_renamed(&made, name, &old) {
            Ok(None) => self.put_anew(name, bytes, &old).map(|_| ()),
            put => put.map(|_| ()),
        };
        // What is there now is found by the next listing.
        *lock(&self.listed) = None;
        put
    }

    fn remove(&self, name: &str) -> io::Result<()> {
        let document = self.find(name)?;
        self.tree.remove(&document.id)?;
        if let Some(listed) = lock(&self.listed).as_mut() {
            listed.remove(name);
        }
        Ok(())
    }
}

/// The files with names like ours, by name. Of several documents with one name, the one that changed
/// last has it; the others are listed like copies, so that none hides another.
fn by_name(mut documents: Vec<Document>) -> BTreeMap<String, Document> {
    documents.retain(|one| one.kind == DocumentKind::File && is_named_like_ours(&one.name));
    documents
        .sort_by(|a, b| (b.changed_millis.cmp(&a.changed_millis)).then_with(|| a.id.cmp(&b.id)));
    let mut files = BTreeMap::new();
    for document in documents {
        let name = if files.contains_key(&document.name) {
            copy_name(&document)
        } else {
            document.name.clone()
        };
        files.entry(name).or_insert(document);
    }
    files
}

/// A name for another document with the same name. It stays while the document does; the next one
/// gets another, also where a name makes the id.
fn copy_name(document: &Document) -> String {
    let size = document.size_bytes.unwrap_or(0).to_be_bytes();
    let changed = document.changed_millis.unwrap_or(0).to_be_bytes();
    let digest = digest_of(&[document.id.as_bytes(), &size, &changed]);
    let signs: String = digest.chars().take(8).collect();
    let (stem, extension) = (document.name.rsplit_once('.')).unwrap_or((&document.name, ""));
    format!("{stem} ({signs}).{extension}")
}

/// What changes with a document's content. Without a time, its id and the hour: we replace documents
/// instead of changing them, and what another program changes is looked at within the hour.
fn mark_of(document: &Document) -> Mark {
    const HOUR_SECONDS: u64 = 60 * 60;
    let unknown = || {
        let since = SystemTime::UNIX_EPOCH.elapsed().unwrap_or_default();
        let hour = since.as_secs() / HOUR_SECONDS;
        let digest = digest_of(&[document.id.as_bytes(), &hour.to_be_bytes()]);
        let signs: String = digest.chars().take(16).collect();
        u64::from_str_radix(&signs, 16).unwrap_or(hour)
    };
    Mark {
        size_bytes: document.size_bytes.unwrap_or(0),
        changed_millis: document.changed_millis.unwrap_or_else(unknown),
    }
}
