//! Pages as values, which the screens show and the prints use.

pub mod class_summary;
pub mod conference;
pub mod day_chart;
pub mod family;
pub mod group;
pub(crate) mod phrases;
pub mod practice;
pub mod rating_chart;
mod set;
pub mod share_safe;
pub mod substitute;
pub mod talk;
pub mod taught_again;
pub mod warm_up;

pub use set::{print, print_each};

use crate::words::Drafted;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_exercises::{Block, ItemView};
use ts_rs::TS;

/// A page for the screen and for paper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ReportPage {
    /// Its title.
    pub title: String,
    /// Class and date, shown under the title.
    pub under: String,
    /// Its parts, from the top.
    pub parts: Vec<ReportPart>,
}

/// A part of a page.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ReportPart {
    /// A heading.
    Heading {
        /// Its words.
        text: String,
    },
    /// A paragraph.
    Words {
        /// Its words.
        text: String,
    },
    /// A caution in a frame.
    Caution {
        /// Its words.
        text: String,
    },
    /// Short lines, each with a dash before it.
    Lines {
        /// The lines.
        texts: Vec<String>,
    },
    /// Concepts with the student's ratings.
    Ratings {
        /// The lines.
        lines: Vec<RatedLine>,
    },
    /// A table.
    Table {
        /// The table.
        table: ReportTable,
    },
    /// Exercises, answers and figures.
    Content {
        /// The blocks.
        blocks: Vec<Block>,
    },
    /// An exercise of a practice sheet.
    Exercise {
        /// Its number on the sheet.
        number: u32,
        /// What is asked.
        item: ItemView,
        /// Its answer; empty without a key.
        answer: Vec<Block>,
    },
    /// Lines to write on.
    Write {
        /// What to write.
        label: String,
        /// How many lines.
        lines: u32,
    },
}

/// A concept and the student's rating of it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RatedLine {
    /// The concept's title.
    pub title: String,
    /// Its "I can" statement.
    pub i_can: String,
    /// The rating.
    pub rating: Option<Confidence>,
    /// The words for the rating.
    pub words: String,
}

/// A table of words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReportTable {
    /// What it is about, for screen readers.
    pub summary: String,
    /// Its columns.
    pub columns: Vec<ReportColumn>,
    /// Its rows; the first cell names the row.
    pub rows: Vec<Vec<String>>,
}

/// A column of a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReportColumn {
    /// Its name.
    pub title: String,
    /// Its share of the width.
    pub share: u8,
    /// Whether it holds numbers, which are centred.
    pub figures: bool,
}

impl ReportColumn {
    fn words(title: impl Into<String>, share: u8) -> Self {
        Self {
            title: title.into(),
            share,
            figures: false,
        }
    }

    fn figures(title: impl Into<String>, share: u8) -> Self {
        Self {
            figures: true,
            ..Self::words(title, share)
        }
    }
}

/// A page while it is written in one language.
struct Draft {
    w: crate::words::Words,
    page: ReportPage,
}

impl Draft {
    fn new(
        locale: surefoot_catalogue::Locale,
        title: impl FnOnce(&crate::words::Words) -> Drafted<String>,
        class_title: &str,
        date: chrono::NaiveDate,
    ) -> Drafted<Self> {
        let w = crate::words::Words::new(locale);
        let under = format!("{class_title} · {}", phrases::date(&w, date)?);
        let title = title(&w)?;
        Ok(Self {
            w,
            page: ReportPage {
                title,
                under,
                parts: Vec::new(),
            },
        })
    }

    fn put(&mut self, part: ReportPart) {
        self.page.parts.push(part);
    }

    fn heading(&mut self, id: &str) -> Drafted {
        let text = self.w.get(id)?;
        self.put(ReportPart::Heading { text });
        Ok(())
    }

    fn words(&mut self, id: &str, args: &[(&'static str, crate::words::Value)]) -> Drafted {
        let text = self.w.say(id, args)?;
        self.put(ReportPart::Words { text });
        Ok(())
    }

    fn caution(&mut self, id: &str) -> Drafted {
        let text = self.w.get(id)?;
        self.put(ReportPart::Caution { text });
        Ok(())
    }

    fn write(&mut self, id: &str, lines: u32) -> Drafted {
        let label = self.w.get(id)?;
        self.put(ReportPart::Write { label, lines });
        Ok(())
    }
}
