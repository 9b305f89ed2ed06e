//! Settings of this device, and whose data is open.

use serde::{Deserialize, Serialize};
use std::fs;
use std::path::Path;
use surefoot_catalogue::Language;
use ts_rs::TS;

/// Whose data the screens work on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum World {
    /// The person's own.
    Own,
    /// The invented sample class, in a folder of its own.
    Sample,
}

/// Colours of the screens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// As the system says.
    System,
    /// Ink on paper.
    Light,
    /// Dark.
    Dark,
    /// High contrast, black on white.
    Contrast,
    /// High contrast, white on black.
    ContrastDark,
}

/// Settings of this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceSettings {
    /// Language of the start and of the teacher's screens.
    pub language: Language,
    /// Colours.
    pub theme: Theme,
    /// Whether names are covered on the teacher's screens.
    pub names_covered: bool,
    /// Screens whose guide was read; `all`: none is shown by itself.
    #[serde(default)]
    pub guides_read: Vec<String>,
}

/// Settings that cannot be read are the usual ones: nothing else hangs on them.
pub(crate) fn read_settings(path: &Path) -> DeviceSettings {
    fs::read(path)
        .ok()
        .and_then(|text| serde_json::from_slice(&text).ok())
        .unwrap_or(DeviceSettings {
            language: Language::En,
            theme: Theme::System,
            names_covered: false,
            guides_read: Vec::new(),
        })
}
