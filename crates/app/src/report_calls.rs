//! Calls of the reports: shown on the screen, printed, and as tables.

use crate::app::App;
use crate::{CallError, FileKind, ReportWanted, TableAsked, TableWanted};
use surefoot_catalogue::Language;
use surefoot_catalogue::Locale;
use surefoot_desk::FileMade;
use surefoot_desk::{self, OpenClass};
use surefoot_report::Look;
use surefoot_report::grid::{board_grid, summary_grid, to_csv, to_xlsx};
use surefoot_report::page::{
    ReportPage, class_summary, conference, family, group, print, print_each, share_safe, talk,
};
use surefoot_store::DeskStore;

impl App {
    /// Saves a table for other programs.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Files`], or the store's.
    pub fn save_table(&self, asked: TableAsked) -> Result<FileMade, CallError> {
        let today = self.this_day();
        let locale = Locale::from(asked.language);
        let board = self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::board(desk, class, asked.language, today)?)
        })?;
        let (name, kind, bytes) = match asked.table {
            TableWanted::BoardCsv => {
                let csv = to_csv(&board_grid(&board, locale)?)?;
                ("board", FileKind::Csv, csv)
            }
            TableWanted::SummaryCsv => {
                let csv = to_csv(&summary_grid(&board, locale)?)?;
                ("class-summary", FileKind::Csv, csv)
            }
            TableWanted::Workbook => {
                let grids = [board_grid(&board, locale)?, summary_grid(&board, locale)?];
                ("board", FileKind::Xlsx, to_xlsx(&grids)?)
            }
        };
        self.handed_over(format!("{name}-{today}.{}", kind.extension()), kind, &bytes)
    }

    /// Prints a report. A share-safe table is noted as handed out once it has a place.
    pub(crate) fn print_report(
        &self,
        class: &str,
        report: &ReportWanted,
        look: &Look,
    ) -> Result<FileMade, CallError> {
        let today = self.this_day();
        let language = look.locale.language;
        let one_page = matches!(
            report,
            ReportWanted::Family { .. }
                | ReportWanted::Conference { .. }
                | ReportWanted::ShareSafe
                | ReportWanted::Group { .. }
        );
        let (bytes, table) = self.with_class(class, |desk, class| {
            let page = report_page(desk, class, report, language, today, true)?;
            let table = match report {
                ReportWanted::ShareSafe => {
                    let table = surefoot_desk::share_table(desk, class, language, today)?;
                    surefoot_desk::check_share_table(desk, class, &table)?;
                    Some(table)
                }
                _ => None,
            };
            Ok((print(&page, look, one_page)?, table))
        })?;
        let name = match report {
            ReportWanted::Family { seat } => format!("family-seat-{seat}"),
            ReportWanted::Conference { seat } => format!("conference-seat-{seat}"),
            ReportWanted::ClassSummary => "class-summary".into(),
            ReportWanted::ShareSafe => "class-table".into(),
            ReportWanted::Group { .. } => "small-group".into(),
            ReportWanted::Talk { .. } => "talk".into(),
        };
        let made = self.handed_over(format!("{name}-{today}.pdf"), FileKind::Pdf, &bytes)?;
        if let Some(table) = table
            && made.place.is_some()
        {
            self.with_class(class, |desk, class| {
                Ok(surefoot_desk::release_share_table(desk, class, &table)?)
            })?;
        }
        Ok(made)
    }
}

impl App {
    /// A page for the family of every student who has reported, in one file.
    pub(crate) fn family_pages(
        &self,
        class: &str,
        look: &Look,
    ) -> Result<(String, Vec<u8>), CallError> {
        let today = self.this_day();
        let language = look.locale.language;
        let bytes = self.with_class(class, |desk, class| {
            let mut pages = Vec::new();
            for page in surefoot_desk::student_pages(desk, class, language, today)? {
                if !page.concepts.is_empty() {
                    let title = &class.row.title;
                    pages.push(family::family_page(&page, title, today, look.locale)?);
                }
            }
            Ok(print_each(&class.row.title, &pages, look)?)
        })?;
        let bytes = bytes.ok_or_else(|| CallError::Invalid {
            field: "students".into(),
            rule: "no_reports".into(),
        })?;
        Ok((format!("family-pages-{today}.pdf"), bytes))
    }
}

/// A report of a class; without names, seats stand in their place.
///
/// # Errors
/// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
pub fn report_page(
    desk: &DeskStore,
    class: &OpenClass,
    report: &ReportWanted,
    language: Language,
    today: chrono::NaiveDate,
    with_names: bool,
) -> Result<ReportPage, CallError> {
    let locale = Locale::from(language);
    let title = &class.row.title;
    let student = |seat: u32| -> Result<_, CallError> {
        let mut page = surefoot_desk::student_page(desk, class, seat, language, today)?;
        page.student.name = page.student.name.filter(|_| with_names);
        Ok(page)
    };
    Ok(match report {
        ReportWanted::Family { seat } => {
            family::family_page(&student(*seat)?, title, today, locale)?
        }
        ReportWanted::Conference { seat } => {
            conference::conference_page(&student(*seat)?, title, today, locale)?
        }
        ReportWanted::ClassSummary => {
            let board = surefoot_desk::board(desk, class, language, today)?;
            class_summary::class_summary(&board, locale)?
        }
        ReportWanted::ShareSafe => {
            let table = surefoot_desk::share_table(desk, class, language, today)?;
            share_safe::share_page(&table, locale)?
        }
        ReportWanted::Group { concept, seats } => {
            let mut page = surefoot_desk::group_page(desk, class, language, today, concept, seats)?;
            if !with_names {
                let lacking = page.first.iter_mut().flat_map(|first| &mut first.lacking);
                lacking.for_each(|member| member.name = None);
                page.members
                    .iter_mut()
                    .for_each(|member| member.name = None);
            }
            group::group_plan(&page, title, today, locale)?
        }
        ReportWanted::Talk { minutes } => {
            let view = surefoot_desk::talk(desk, class, language, today, *minutes)?;
            talk::talk_page(&view, locale)?
        }
    })
}
