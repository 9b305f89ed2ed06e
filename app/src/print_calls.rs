//! Calls that print: a PDF is made and handed to the person to keep.

use crate::app::App;
use crate::{CallError, FileKind, PrintAsked, PrintLook, PrintPaper, Printed, chance};
use surefoot_core::item::{Level, has_generator};
use surefoot_core::messages::Locale;
use surefoot_core::teacher::views::FileMade;
use surefoot_report::chart::{Chart, self_rating_chart};
use surefoot_report::sheet::{SheetPart, SheetWish, practice_sheet};
use surefoot_report::{Density, Look, Paper, ReportError};

impl App {
    /// Prints what was asked for into a file that the person places.
    ///
    /// # Errors
    /// [`CallError::Invalid`] for nothing or too much to print,
    /// [`CallError::NotFound`] for a concept that is not there,
    /// [`CallError::Files`], or the store's.
    pub fn print(&self, asked: PrintAsked) -> Result<FileMade, CallError> {
        let look = look(&asked.look);
        let (file_name, bytes) = match asked.what {
            Printed::Sheet {
                concepts,
                level,
                count,
                with_key,
            } => {
                // Short enough to be typed again.
                let seed = chance::number()? % 1_000_000;
                let wish = sheet(concepts, level, count, with_key, seed)?;
                (
                    format!("practice-{seed}.pdf"),
                    practice_sheet(&wish, &look)?,
                )
            }
            Printed::Chart => self.with_class(&asked.class, |_, class| {
                let facts = &class.facts;
                let days = facts
                    .rotation
                    .days()
                    .iter()
                    .map(|day| day.iter().filter_map(|id| facts.concepts.get(id)).collect())
                    .collect();
                let chart = Chart {
                    class_title: &facts.title,
                    days,
                    pass_count: facts.rotation.pass_count(&facts.year),
                };
                Ok(("self-ratings.pdf".into(), self_rating_chart(&chart, &look)?))
            })?,
        };
        Ok(FileMade {
            place: self.door.save(&file_name, FileKind::Pdf, &bytes)?,
            file_name,
            bytes: bytes.len(),
        })
    }
}

fn look(asked: &PrintLook) -> Look {
    Look {
        locale: Locale::from(asked.language),
        paper: match asked.paper {
            PrintPaper::A4 => Paper::A4,
            PrintPaper::Letter => Paper::Letter,
        },
        density: if asked.roomy {
            Density::Roomy
        } else {
            Density::Compact
        },
    }
}

fn sheet(
    concepts: Vec<String>,
    level: Level,
    count: u32,
    with_key: bool,
    seed: u64,
) -> Result<SheetWish, CallError> {
    if let Some(concept) = concepts.iter().find(|c| !has_generator(c)) {
        return Err(ReportError::NoConcept {
            id: concept.clone(),
        }
        .into());
    }
    Ok(SheetWish {
        for_whom: None,
        parts: concepts
            .into_iter()
            .map(|concept| SheetPart {
                concept,
                level,
                count: count as usize,
                seed,
            })
            .collect(),
        without_key: !with_key,
    })
}

impl From<ReportError> for CallError {
    fn from(error: ReportError) -> Self {
        let amount = |rule: &str| Self::Invalid {
            field: "amount".into(),
            rule: rule.into(),
        };
        match error {
            ReportError::Nothing => amount("too_few"),
            ReportError::TooMany { .. } => amount("too_many"),
            ReportError::NoConcept { .. } => Self::NotFound {
                what: "concept".into(),
            },
            other => Self::Storage {
                detail: other.to_string(),
            },
        }
    }
}
