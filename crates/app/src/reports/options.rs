//! The options of a print, as the screens send them.

use serde::{Deserialize, Serialize};
use surefoot_catalogue::{Language, Locale};
use surefoot_report::{Density, Paper};
use ts_rs::TS;

/// The options of a print.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PrintOptions {
    /// The language of the print.
    pub language: Language,
    /// The paper.
    pub paper: PrintPaper,
    /// Whether there is space to work or write in; otherwise it takes as little paper as possible.
    pub roomy: bool,
}

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum PrintPaper {
    /// 210 mm × 297 mm.
    A4,
    /// 8.5 in × 11 in.
    Letter,
}

impl From<PrintOptions> for surefoot_report::PrintOptions {
    fn from(options: PrintOptions) -> Self {
        Self {
            locale: Locale::from(options.language),
            paper: options.paper.into(),
            density: match options.roomy {
                true => Density::Roomy,
                false => Density::Compact,
            },
        }
    }
}

impl From<PrintPaper> for Paper {
    fn from(paper: PrintPaper) -> Self {
        match paper {
            PrintPaper::A4 => Self::A4,
            PrintPaper::Letter => Self::Letter,
        }
    }
}
