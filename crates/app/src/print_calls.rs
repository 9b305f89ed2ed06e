//! Calls that print: a PDF is made and handed to the person to keep.

use crate::app::{App, lock};
use crate::report_calls::report_page;
use crate::{
    CallError, FileKind, PathPrint, PrintAsked, PrintLook, PrintPaper, Printed, StudentPrint,
    chance,
};
use surefoot_catalogue::Catalogue;
use surefoot_catalogue::Locale;
use surefoot_desk::FileMade;
use surefoot_desk::{self, OpenClass};
use surefoot_exercises::Level;
use surefoot_record::Class;
use surefoot_report::chart::{Chart, self_rating_chart};
use surefoot_report::page::ReportPage;
use surefoot_report::page::practice::practice_page;
use surefoot_report::page::rating_chart::chart_page;
use surefoot_report::path::path_pages;
use surefoot_report::sheet::{SheetPart, SheetWish, practice_sheet};
use surefoot_report::slips::slip_pages;
use surefoot_report::{Density, Look, Paper, ReportError};

/// Concepts on a sheet for one student.
const CONCEPTS_OF_ONE: usize = 6;

/// Exercises of each concept on a sheet that the student prints.
const EXERCISES_OF_EACH: u32 = 2;

impl App {
    /// Prints what was asked for into a file that the person places.
    ///
    /// # Errors
    /// [`CallError::Invalid`] for nothing or too much to print,
    /// [`CallError::NotFound`] for a concept or seat that is not there,
    /// [`CallError::Files`], or the store's.
    pub fn print(&self, asked: PrintAsked) -> Result<FileMade, CallError> {
        let look = look(&asked.look);
        let (file_name, bytes) = match &asked.what {
            Printed::Sheet { seed, .. } => {
                let seed = seed_of(*seed)?;
                let wish = self.sheet_wish(&asked, seed, true)?;
                let bytes = practice_sheet(&wish, &look)?;
                (format!("practice-{seed}.pdf"), bytes)
            }
            Printed::SeatSheet { seat, seed, .. } => {
                let seed = seed_of(*seed)?;
                let wish = self.sheet_wish(&asked, seed, true)?;
                let bytes = practice_sheet(&wish, &look)?;
                (format!("practice-seat-{seat}-{seed}.pdf"), bytes)
            }
            Printed::Chart => self.with_class(&asked.class, |_, class| {
                let chart = self_rating_chart(&chart_of(class), &look)?;
                Ok(("self-ratings.pdf".into(), chart))
            })?,
            Printed::Slips { with_names } => self.with_class(&asked.class, |_, class| {
                let slips = surefoot_desk::join_slips(class)?;
                let pages = slip_pages(&slips, *with_names, &look)?;
                Ok(("join-slips.pdf".into(), pages))
            })?,
            Printed::FamilyPages => self.family_pages(&asked.class, &look)?,
            Printed::Report { report } => return self.print_report(&asked.class, report, &look),
        };
        self.handed_over(file_name, FileKind::Pdf, &bytes)
    }

    /// What a print would hold, to look at; nothing is handed out by it. With a seed, a
    /// sheet has the very exercises of the print. While names are covered it shows seats.
    ///
    /// # Errors
    /// As [`App::print`]; [`CallError::Invalid`] for what has several pages of one kind,
    /// and for slips, which are looked at as [`App::join_slips`] gives them.
    pub fn preview(&self, asked: PrintAsked) -> Result<ReportPage, CallError> {
        let look = look(&asked.look);
        let covered = lock(&self.state).settings.names_covered;
        match &asked.what {
            Printed::Sheet { seed, .. } | Printed::SeatSheet { seed, .. } => {
                let wish = self.sheet_wish(&asked, seed_of(*seed)?, !covered)?;
                Ok(practice_page(&wish, look.locale)?)
            }
            Printed::Chart => self.with_class(&asked.class, |_, class| {
                Ok(chart_page(&chart_of(class), look.density, look.locale)?)
            }),
            Printed::Report { report } => {
                let (today, language) = (self.this_day(), look.locale.language);
                self.with_class(&asked.class, |desk, class| {
                    report_page(desk, class, report, language, today, !covered)
                })
            }
            Printed::FamilyPages | Printed::Slips { .. } => Err(CallError::Invalid {
                field: "report".into(),
                rule: "one_by_one".into(),
            }),
        }
    }

    /// Prints tonight's practice of a student, with its key on a page apart.
    ///
    /// # Errors
    /// [`CallError::Invalid`] when nothing can be practised yet,
    /// [`CallError::Locked`], [`CallError::Files`], or the store's.
    pub fn print_practice(&self, asked: StudentPrint) -> Result<FileMade, CallError> {
        let today = self.this_day();
        let seed = short_seed()?;
        let bytes = self.as_student(&asked.student, |store, joined| {
            let queue = surefoot_student::queue(store, joined, today, CONCEPTS_OF_ONE)?;
            let parts = queue
                .into_iter()
                .map(|entry| {
                    let (concept, level) = (&entry.concept, entry.level);
                    part(&joined.facts, concept, level, EXERCISES_OF_EACH, seed)
                })
                .collect::<Result<_, _>>()?;
            let wish = SheetWish {
                parts,
                ..SheetWish::default()
            };
            let look = own_look(joined.locale(), asked.paper);
            Ok(practice_sheet(&wish, &look)?)
        })?;
        self.handed_over(format!("practice-{seed}.pdf"), FileKind::Pdf, &bytes)
    }

    /// Prints a student's path, for the folder; the goals only where the student says so.
    ///
    /// # Errors
    /// As [`App::print_practice`].
    pub fn print_path(&self, asked: PathPrint) -> Result<FileMade, CallError> {
        let today = self.this_day();
        let bytes = self.as_student(&asked.student, |store, joined| {
            let mut path = surefoot_student::my_path(store, joined, today)?;
            if !asked.with_goals {
                path.goals.clear();
            }
            let look = own_look(joined.locale(), asked.paper);
            Ok(path_pages(&path, &joined.facts.title, &look)?)
        })?;
        self.handed_over("my-path.pdf".into(), FileKind::Pdf, &bytes)
    }

    /// Lets the person place a file.
    pub(crate) fn handed_over(
        &self,
        file_name: String,
        kind: FileKind,
        bytes: &[u8],
    ) -> Result<FileMade, CallError> {
        Ok(FileMade {
            place: self.door.save(&file_name, kind, bytes)?,
            file_name,
            bytes: bytes.len(),
        })
    }

    /// The exercises of a sheet that was asked for.
    fn sheet_wish(
        &self,
        asked: &PrintAsked,
        seed: u64,
        with_names: bool,
    ) -> Result<SheetWish, CallError> {
        let today = self.this_day();
        self.with_class(&asked.class, |desk, class| {
            let facts = &class.facts;
            let (parts, for_whom, with_key) = match &asked.what {
                Printed::Sheet {
                    concepts,
                    level,
                    count,
                    with_key,
                    ..
                } => {
                    let parts = (concepts.iter())
                        .map(|concept| part(facts, concept, *level, *count, seed))
                        .collect::<Result<_, _>>()?;
                    (parts, None, *with_key)
                }
                Printed::SeatSheet {
                    seat,
                    count,
                    with_key,
                    ..
                } => {
                    let practice =
                        surefoot_desk::seat_practice(desk, class, *seat, today, CONCEPTS_OF_ONE)?;
                    let parts = (practice.into_iter())
                        .map(|one| part(facts, one.concept, one.level, *count, seed))
                        .collect::<Result<_, _>>()?;
                    let row = class.seats.iter().find(|row| row.number == *seat);
                    let name = row.and_then(|row| row.name.clone());
                    (parts, name.filter(|_| with_names), *with_key)
                }
                _ => (Vec::new(), None, false),
            };
            Ok(SheetWish {
                for_whom,
                parts,
                without_key: !with_key,
            })
        })
    }
}

/// The seed asked for, or a fresh one short enough to be typed again.
fn seed_of(asked: Option<u32>) -> Result<u64, CallError> {
    match asked {
        Some(seed) => Ok(u64::from(seed)),
        None => short_seed(),
    }
}

/// A seed short enough to be typed again.
fn short_seed() -> Result<u64, CallError> {
    Ok(chance::number()? % 1_000_000)
}

fn chart_of(class: &OpenClass) -> Chart<'_> {
    let facts = &class.facts;
    let days = facts
        .rotation
        .days()
        .iter()
        .map(|day| day.iter().filter_map(|id| facts.concepts.get(id)).collect())
        .collect();
    Chart {
        class_title: &facts.title,
        days,
        pass_count: facts.rotation.pass_count(&facts.year),
    }
}

/// A student's print has room to work.
fn own_look(locale: Locale, paper: PrintPaper) -> Look {
    Look {
        locale,
        ..look(&PrintLook {
            language: locale.language,
            paper,
            roomy: true,
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

/// Exercises of a concept, the teacher's own among them.
fn part(
    facts: &Class,
    concept: &str,
    level: Level,
    count: u32,
    seed: u64,
) -> Result<SheetPart, ReportError> {
    let no_concept = || ReportError::NoConcept {
        id: concept.chars().take(80).collect(),
    };
    // A concept of another grade can be printed too.
    let known = match facts.concepts.get(concept) {
        Some(known) => known.clone(),
        None => Catalogue::built_in()
            .map_err(|error| ReportError::Writer(error.to_string()))?
            .get(concept)
            .cloned()
            .ok_or_else(no_concept)?,
    };
    Ok(SheetPart {
        concept: known,
        level,
        count: count as usize,
        seed,
        own: facts.own_of(concept).to_vec(),
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
