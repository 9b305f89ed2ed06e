//! The paths in the program's data folder.
//!
//! ```text
//! settings.json        settings of this device
//! class-folder.json    the class folder of the desk
//! shown-folders.json   the class folders that this device was shown for its students
//! own/desk.sqlite      the teacher's desk
//! own/students/ID.sqlite
//! own/copies/desk/NUMBER.DATE.sqlite
//! own/copies/students/ID/NUMBER.DATE.sqlite
//! own/quarantine/      stores that were replaced; the program does not delete them by itself
//! sample/              the sample class: the same files
//! sample/shared-folder/ the hand-ins of the sample class
//! ```

use super::settings::World;
use std::path::{Path, PathBuf};

/// The data folder.
#[derive(Debug, Clone)]
pub(crate) struct DataPaths {
    data: PathBuf,
}

impl DataPaths {
    pub(crate) fn new(data: &Path) -> Self {
        Self {
            data: data.to_owned(),
        }
    }

    pub(crate) fn settings(&self) -> PathBuf {
        self.data.join("settings.json")
    }

    /// The note about the class folder of the desk.
    pub(crate) fn class_folder(&self) -> PathBuf {
        self.data.join("class-folder.json")
    }

    /// The note about the class folders that this device was shown for its students.
    pub(crate) fn shown_folders(&self) -> PathBuf {
        self.data.join("shown-folders.json")
    }

    pub(crate) fn world(&self, world: World) -> WorldPaths {
        WorldPaths::new(&self.data.join(match world {
            World::Own => "own",
            World::Sample => "sample",
        }))
    }

    /// The folder in which the sample class is made before it is moved to its place.
    pub(crate) fn sample_in_the_making(&self) -> PathBuf {
        self.data.join("sample-in-the-making")
    }

    pub(crate) fn sample(&self) -> PathBuf {
        self.data.join("sample")
    }
}

/// The paths of one world.
#[derive(Debug, Clone)]
pub struct WorldPaths {
    folder: PathBuf,
}

impl WorldPaths {
    /// The paths of the world in a folder.
    #[must_use]
    pub fn new(folder: &Path) -> Self {
        Self {
            folder: folder.to_owned(),
        }
    }

    /// The teacher's desk.
    #[must_use]
    pub fn desk(&self) -> PathBuf {
        self.folder.join("desk.sqlite")
    }

    /// The folder of the students' stores.
    #[must_use]
    pub fn students(&self) -> PathBuf {
        self.folder.join("students")
    }

    /// A student's store.
    #[must_use]
    pub fn student(&self, id: &str) -> PathBuf {
        self.students().join(format!("{id}.sqlite"))
    }

    /// The folder of this world.
    #[must_use]
    pub(crate) fn folder(&self) -> &Path {
        &self.folder
    }

    /// The folder of the copies of the desk.
    #[must_use]
    pub(crate) fn desk_copies(&self) -> PathBuf {
        self.folder.join("copies").join("desk")
    }

    /// The folder of the copies of students' stores, with one folder for each student.
    #[must_use]
    pub(crate) fn student_copies(&self) -> PathBuf {
        self.folder.join("copies").join("students")
    }

    /// The folder of replaced and damaged stores.
    #[must_use]
    pub(crate) fn quarantine(&self) -> PathBuf {
        self.folder.join("quarantine")
    }

    /// The shared folder of the sample class.
    #[must_use]
    pub fn shared_folder(&self) -> PathBuf {
        self.folder.join("shared-folder")
    }

    /// The folder of the class packs of the sample class.
    #[must_use]
    pub fn class_packs(&self) -> PathBuf {
        self.folder.join("class-packs")
    }
}

/// Whether `id` has the form of a student's id, so that it cannot lead out of the folder.
pub(crate) fn is_student_id(id: &str) -> bool {
    !id.is_empty() && id.len() <= 40 && id.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-')
}
