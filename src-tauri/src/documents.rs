//! How the Kotlin side tells of documents, and by what a class folder on Android is known.

use std::collections::BTreeSet;
use std::io;
use std::path::{Path, PathBuf};
use surefoot_app::{Document, DocumentKind, TreeFault};
use tauri::Url;

/// What a class folder is known by: the address of its tree, and its name after a `#`. `None` if that
/// is not the address of a provider.
pub fn place_of(tree: &str, name: &str) -> Option<PathBuf> {
    let is_address = tree.starts_with("content://") && !tree.contains('#');
    is_address.then(|| format!("{tree}#{name}").into())
}

/// The address of a class folder's tree.
pub fn tree_of(place: &Path) -> String {
    parts(place).0
}

/// The name of a class folder for people.
pub fn name_of(place: &Path) -> String {
    parts(place).1
}

/// The addresses of trees that are used.
pub fn trees_of(used: &BTreeSet<PathBuf>) -> Vec<String> {
    used.iter().map(|place| tree_of(place)).collect()
}

fn parts(place: &Path) -> (String, String) {
    let text = place.to_string_lossy();
    let (tree, name) = text.split_once('#').unwrap_or((&text, &text));
    (tree.to_owned(), name.to_owned())
}

/// A text that Kotlin encoded with `Uri.encode`.
pub fn decoded(text: &str) -> String {
    let pairs = Url::parse(&format!("x:?{text}")).map(|address| {
        let mut pairs = address.query_pairs();
        pairs.next().map(|(text, _)| text.into_owned())
    });
    pairs.ok().flatten().unwrap_or_default()
}

/// The documents of an answer, one a line: id, name, kind, whether it can be renamed, size and
/// time, or -1.
///
/// # Errors
/// [`io::ErrorKind::InvalidData`] for anything else.
pub fn documents_of(rows: &str) -> io::Result<Vec<Document>> {
    let documents = rows.lines().map(document_of);
    documents
        .collect::<Option<_>>()
        .ok_or_else(|| io::ErrorKind::InvalidData.into())
}

fn document_of(row: &str) -> Option<Document> {
    let fields: Vec<&str> = row.split(' ').collect();
    let [id, name, kind, can_rename, size, time] = fields.as_slice() else {
        return None;
    };
    // A provider that does not know says less than 0.
    let known = |number: &str| number.parse::<i64>().map(|n| u64::try_from(n).ok());
    Some(Document {
        id: decoded(id),
        name: decoded(name),
        kind: match *kind {
            "file" => DocumentKind::File,
            "folder" => DocumentKind::Folder,
            "other" => DocumentKind::Other,
            _ => return None,
        },
        can_rename: match *can_rename {
            "1" => true,
            "0" => false,
            _ => return None,
        },
        size_bytes: known(size).ok()?,
        changed_millis: known(time).ok()?,
    })
}

/// The fault that Kotlin names by a word.
pub fn fault_of(word: &str) -> io::Error {
    match word {
        "not_allowed" => TreeFault::NotAllowed.into(),
        "gone" => io::ErrorKind::NotFound.into(),
        "denied" => io::ErrorKind::PermissionDenied.into(),
        "full" => io::ErrorKind::StorageFull.into(),
        "silent" => io::ErrorKind::TimedOut.into(),
        _ => io::ErrorKind::Other.into(),
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use surefoot_app::FolderTrouble;

    #[test]
    fn a_class_folder_has_an_address_and_a_name_for_people() {
        let tree = "content://provider.example/tree/primary%3ASchool%2FRoom%207";
        let place = place_of(tree, "Room #7 🦊").unwrap();
        assert_eq!(tree_of(&place), tree);
        assert_eq!(name_of(&place), "Room #7 🦊");
        assert_eq!(trees_of(&[place].into()), [tree]);
        for other in ["file:///sdcard", "content://a/tree/b#c", "", "/sdcard"] {
            assert_eq!(place_of(other, "a"), None, "{other}");
        }
        // What a desktop noted has no name.
        assert_eq!(name_of(Path::new("/srv/school")), "/srv/school");
    }

    #[test]
    fn names_come_back_as_people_gave_them() {
        // As `Uri.encode` writes them: all but letters, digits and _-!.~'()* as UTF-8.
        for (encoded, name) in [
            ("hand-in-ab12.sfhandin", "hand-in-ab12.sfhandin"),
            ("a%20b%2Bc%26d%3De%23f%25g%2Fh", "a b+c&d=e#f%g/h"),
            ("%F0%9F%A6%8A(1)'*!~", "🦊(1)'*!~"),
            ("%C3%B1%0A%00", "ñ\n\0"),
            ("%FF", "\u{fffd}"),
            ("", ""),
        ] {
            assert_eq!(decoded(encoded), name, "{encoded}");
        }
    }

    #[test]
    fn documents_are_read_and_anything_else_is_refused() {
        let rows = "a%2F1 a%20b.zip file 1 12 1796040000000\nb b folder 0 -1 -1\nc c other 0 0 0\n";
        let found = documents_of(rows).unwrap();
        let [first, second, third] = found.as_slice() else {
            panic!("{found:?}");
        };
        assert_eq!((first.id.as_str(), first.name.as_str()), ("a/1", "a b.zip"));
        assert_eq!(first.kind, DocumentKind::File);
        assert!(first.can_rename);
        assert_eq!(first.size_bytes, Some(12));
        assert_eq!(first.changed_millis, Some(1_796_040_000_000));
        assert_eq!(second.kind, DocumentKind::Folder);
        assert_eq!((second.size_bytes, second.changed_millis), (None, None));
        assert_eq!(third.kind, DocumentKind::Other);
        assert_eq!(documents_of("").unwrap(), []);
        for row in [
            "a",
            "a b file 1 2",
            "a b file 2 1 1",
            "a b link 1 1 1",
            "a b file 1 x 1",
        ] {
            assert!(documents_of(row).is_err(), "{row}");
        }
    }

    #[test]
    fn each_word_for_a_fault_is_told_in_its_own_way() {
        for (word, told) in [
            ("not_allowed", FolderTrouble::NotAllowed),
            ("gone", FolderTrouble::Away),
            ("denied", FolderTrouble::ReadOnly),
            ("full", FolderTrouble::Full),
            ("silent", FolderTrouble::Silent),
            ("other", FolderTrouble::Other),
        ] {
            assert_eq!(FolderTrouble::from(fault_of(word)), told, "{word}");
        }
    }
}
