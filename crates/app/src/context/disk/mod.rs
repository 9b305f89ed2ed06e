//! The files of the program's data folder: in a folder of the system, or in the private storage
//! that a browser gives to one place.
//!
//! Everything else of this crate names these files by their paths and reaches them through this
//! module. `folder` reads files that a person chose.

#[cfg(target_family = "wasm")]
mod browser;
#[cfg(not(target_family = "wasm"))]
mod system;

#[cfg(target_family = "wasm")]
pub(crate) use browser::*;
#[cfg(target_family = "wasm")]
pub use browser::{make_room, open_storage, put_file};
#[cfg(not(target_family = "wasm"))]
pub(crate) use system::*;

use std::ffi::OsString;
use std::path::{Path, PathBuf};

/// The path with an ending added to its name.
pub(crate) fn with_end(path: &Path, end: &str) -> PathBuf {
    let mut name: OsString = path.as_os_str().to_owned();
    name.push(end);
    PathBuf::from(name)
}
