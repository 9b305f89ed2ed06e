//! Settings of this device, and whose data is open.

use super::disk;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use std::io::ErrorKind;
use std::path::Path;
use surefoot_catalogue::Language;
use ts_rs::TS;

/// Whose data the screens work on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum World {
    /// The person's own.
    Own,
    /// The sample class.
    Sample,
}

/// Colours of the screens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// As the system is set.
    System,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
    /// High contrast, black on white.
    Contrast,
    /// High contrast, white on black.
    ContrastDark,
}

/// Settings of this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceSettings {
    /// Language of the first screen and of the teacher's screens.
    pub language: Language,
    /// Colours.
    pub theme: Theme,
    /// Whether names are covered on the teacher's screens.
    pub names_covered: bool,
    /// Screens whose guide was read; with `all`, no guide opens by itself.
    pub guides_read: Vec<String>,
}

/// Reads the settings; without a file, those of a new device.
///
/// # Errors
/// Returns [`CallError::Files`] for a file that cannot be read or has an unknown value, and names
/// the value. The person can remove the file.
pub(crate) fn read_settings(path: &Path) -> Result<DeviceSettings, CallError> {
    let text = match disk::read(path) {
        Ok(text) => text,
        Err(error) if error.kind() == ErrorKind::NotFound => {
            return Ok(DeviceSettings {
                language: Language::first(),
                theme: Theme::System,
                names_covered: false,
                guides_read: Vec::new(),
            });
        }
        Err(error) => return Err(error.into()),
    };
    serde_json::from_slice(&text).map_err(|error| CallError::Files {
        detail: format!("{}: {error}", path.display()),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    #[test]
    fn an_unknown_setting_is_named_and_no_file_is_a_new_device() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("settings.json");
        assert_eq!(read_settings(&path).unwrap().theme, Theme::System);
        let text = r#"{"language":"en","theme":"plaid","names_covered":false,"guides_read":[]}"#;
        fs::write(&path, text).unwrap();
        match read_settings(&path) {
            Err(CallError::Files { detail }) => assert!(detail.contains("plaid"), "{detail}"),
            other => panic!("{other:?}"),
        }
    }
}
