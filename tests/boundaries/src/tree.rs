//! The source tree without what is built or fetched.

use std::fs;
use std::io;
use std::path::Path;

/// Folders that hold nothing written for this project.
const SKIPPED: &[&str] = &[
    ".git",
    ".venv",
    "target",
    "target-android",
    "node_modules",
    "dist",
    "dist-bridge",
    "dist-contact",
    "dist-pseudo",
    "dist-web",
    "gen",
    "shots",
    "__pycache__",
    "coverage",
];

/// One file of the tree.
#[derive(Debug, Clone)]
pub struct SourceFile {
    /// From the top of the tree, with `/` between folders.
    pub path: String,
    /// What it says.
    pub text: String,
}

impl SourceFile {
    /// Its name without folders.
    #[must_use]
    pub fn name(&self) -> &str {
        self.path.rsplit('/').next().unwrap_or(&self.path)
    }

    /// Its extension without the dot; empty when it has none.
    #[must_use]
    pub fn extension(&self) -> &str {
        self.name().rsplit_once('.').map_or("", |(_, end)| end)
    }

    /// Whether a package manager wrote it.
    #[must_use]
    pub fn is_lock(&self) -> bool {
        ["Cargo.lock", "package-lock.json"].contains(&self.name())
    }
}

/// All text files of the tree, in the order of their paths. Pictures, fonts and
/// other files that are not UTF-8 are left out.
pub fn source_files(top: &Path) -> io::Result<Vec<SourceFile>> {
    let mut found = Vec::new();
    walk(top, "", &mut found)?;
    found.sort_by(|a, b| a.path.cmp(&b.path));
    Ok(found)
}

fn walk(folder: &Path, prefix: &str, found: &mut Vec<SourceFile>) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        let path = format!("{prefix}{name}");
        let kind = entry.file_type()?;
        if kind.is_dir() && !SKIPPED.contains(&name.as_str()) {
            walk(&entry.path(), &format!("{path}/"), found)?;
        } else if kind.is_file()
            && name != ".git"
            && let Ok(text) = String::from_utf8(fs::read(entry.path())?)
        {
            found.push(SourceFile { path, text });
        }
    }
    Ok(())
}
