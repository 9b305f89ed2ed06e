//! The builders of the reports: each reads the desk and lets the crate `report` make the page or
//! file.

use super::report::{Made, ReportSource};
use super::sheets::{CONCEPTS_OF_ONE, part};
use super::values::needed;
use crate::error::CallError;
use surefoot_desk::Board;
use surefoot_desk::StudentPage;
use surefoot_desk::WarmUpPaper;
use surefoot_record::{Field, Rule, Thing};
use surefoot_report::chart::{Chart, self_rating_chart};
use surefoot_report::grid::{board_grid, summary_grid, to_csv, to_xlsx};
use surefoot_report::page::day_chart::DayChart;
use surefoot_report::page::{self, ReportPage};
use surefoot_report::sheet::{SheetWish, practice_sheet};
use surefoot_report::slips::slip_pages;
use surefoot_report::warm_up::{WarmUpWish, warm_up_sheet};

type Built<T> = Result<T, CallError>;

fn sheet_wish(source: &ReportSource<'_>) -> Built<SheetWish> {
    let values = source.values;
    let concepts = needed(values.concepts.as_ref(), "concepts")?;
    let level = needed(values.level, "level")?;
    let count = needed(values.count, "count")?;
    let parts = (concepts.iter())
        .map(|concept| {
            let taken = source.class.taken_names();
            part(
                &source.class.facts,
                concept,
                level,
                count,
                source.seed,
                taken,
            )
        })
        .collect::<Result<_, _>>()?;
    Ok(SheetWish {
        for_whom: None,
        parts,
        without_key: values.with_key == Some(false),
    })
}

/// A practice sheet with fresh numbers.
pub(super) fn sheet(source: &ReportSource<'_>) -> Built<Made> {
    let bytes = practice_sheet(&sheet_wish(source)?, &source.options)?;
    Ok(Made::new(bytes))
}

pub(super) fn sheet_page(source: &ReportSource<'_>) -> Built<ReportPage> {
    let wish = sheet_wish(source)?;
    Ok(page::practice::practice_page(&wish, source.locale())?)
}

fn seat_sheet_wish(source: &ReportSource<'_>) -> Built<SheetWish> {
    let (values, class) = (source.values, source.class);
    let seat = needed(values.seat, "seat")?;
    let count = needed(values.count, "count")?;
    let practice =
        surefoot_desk::seat_practice(source.desk, class, seat, source.today, CONCEPTS_OF_ONE)?;
    let parts = (practice.into_iter())
        .map(|one| {
            let (seed, taken) = (source.seed, class.taken_names());
            part(&class.facts, one.concept, one.level, count, seed, taken)
        })
        .collect::<Result<_, _>>()?;
    let row = class.seats.iter().find(|row| row.number == seat);
    let name = row.and_then(|row| row.name.clone());
    Ok(SheetWish {
        for_whom: name.filter(|_| source.with_names),
        parts,
        without_key: values.with_key == Some(false),
    })
}

/// A practice sheet for one student: assigned concepts first, then those needed most.
pub(super) fn seat_sheet(source: &ReportSource<'_>) -> Built<Made> {
    let bytes = practice_sheet(&seat_sheet_wish(source)?, &source.options)?;
    Ok(Made::new(bytes))
}

pub(super) fn seat_sheet_page(source: &ReportSource<'_>) -> Built<ReportPage> {
    let wish = seat_sheet_wish(source)?;
    Ok(page::practice::practice_page(&wish, source.locale())?)
}

fn warm_up_paper(source: &ReportSource<'_>) -> Built<WarmUpPaper> {
    let (today, date) = (source.today, source.day());
    let (desk, class) = (source.desk, source.class);
    let paper = surefoot_desk::warm_up_paper(desk, class, source.language(), today, date)?;
    paper.ok_or(NO_DAY)
}

/// The warm-up of a day, on half-sheets or on a sheet.
pub(super) fn warm_up(source: &ReportSource<'_>) -> Built<Made> {
    let wish = WarmUpWish {
        halves: source.values.halves != Some(false),
        without_key: source.values.with_key == Some(false),
    };
    let bytes = warm_up_sheet(&warm_up_paper(source)?, wish, &source.options)?;
    Ok(Made::new(bytes))
}

pub(super) fn warm_up_page(source: &ReportSource<'_>) -> Built<ReportPage> {
    let without_key = source.values.with_key == Some(false);
    let paper = warm_up_paper(source)?;
    Ok(page::warm_up::warm_up_page(
        &paper,
        without_key,
        source.locale(),
    )?)
}

/// A class chart of one day, in the order of the entry grid.
pub(super) fn day_chart(source: &ReportSource<'_>) -> Built<ReportPage> {
    let (facts, language) = (&source.class.facts, source.language());
    let date = source.day().ok_or(NO_DAY)?;
    let at = (facts.rotation.position(&facts.year, date)).ok_or(NO_DAY)?;
    let concepts = facts.rotation.concepts_on(&facts.year, date).iter();
    let chart = DayChart {
        class_title: &source.class.row.title,
        date,
        day: at.day + 1,
        concepts: concepts.map(|id| facts.name(id, language).title).collect(),
        seats: (source.class.seats.iter())
            .map(|seat| {
                let name = seat.name.as_deref().filter(|_| source.with_names);
                (seat.number, name)
            })
            .collect(),
    };
    Ok(page::day_chart::day_chart(&chart, source.locale())?)
}

/// The day asked for has no school, or the year is over.
const NO_DAY: CallError = CallError::Invalid {
    field: Field::Dates,
    rule: Rule::Missing,
};

fn chart_of<'a>(source: &ReportSource<'a>) -> Chart<'a> {
    let facts = &source.class.facts;
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

/// A chart for self-ratings on paper.
pub(super) fn chart(source: &ReportSource<'_>) -> Built<Made> {
    let bytes = self_rating_chart(&chart_of(source), &source.options)?;
    Ok(Made::new(bytes))
}

pub(super) fn chart_page(source: &ReportSource<'_>) -> Built<ReportPage> {
    let chart = chart_of(source);
    let options = &source.options;
    Ok(page::rating_chart::chart_page(
        &chart,
        options.density,
        options.locale,
    )?)
}

fn student_page(source: &ReportSource<'_>) -> Built<StudentPage> {
    let seat = needed(source.values.seat, "seat")?;
    let mut page = surefoot_desk::student_page(
        source.desk,
        source.class,
        seat,
        source.language(),
        source.today,
    )?;
    page.student.name = page.student.name.filter(|_| source.with_names);
    Ok(page)
}

/// One page in plain words for the family of one student.
pub(super) fn family(source: &ReportSource<'_>) -> Built<ReportPage> {
    let student = student_page(source)?;
    let title = &source.class.row.title;
    Ok(page::family::family_page(
        &student,
        title,
        source.today,
        source.locale(),
    )?)
}

/// The pages for the families of all students with a report, in one file.
pub(super) fn family_pages(source: &ReportSource<'_>) -> Built<Made> {
    let (class, today) = (source.class, source.today);
    let title = &class.row.title;
    let mut pages = Vec::new();
    for seat in &class.seats {
        let page =
            surefoot_desk::student_page(source.desk, class, seat.number, source.language(), today)?;
        if !page.concepts.is_empty() {
            pages.push(page::family::family_page(
                &page,
                title,
                today,
                source.locale(),
            )?);
        }
    }
    let bytes = page::print_each(title, &pages, &source.options)?;
    bytes.map(Made::new).ok_or(CallError::Invalid {
        field: Field::Students,
        rule: Rule::NoReports,
    })
}

/// A page for a talk with one student.
pub(super) fn conference(source: &ReportSource<'_>) -> Built<ReportPage> {
    let student = student_page(source)?;
    let title = &source.class.row.title;
    Ok(page::conference::conference_page(
        &student,
        title,
        source.today,
        source.locale(),
    )?)
}

/// What was taught again, and what came of it: for the class, or for one student.
pub(super) fn taught_again(source: &ReportSource<'_>) -> Built<ReportPage> {
    let (class, seat) = (source.class, source.values.seat);
    if seat.is_some_and(|seat| class.seats.iter().all(|row| row.number != seat)) {
        return Err(CallError::NotFound { what: Thing::Seat });
    }
    let mut log = surefoot_desk::taught_again(source.desk, class, source.language(), source.today)?;
    if !source.with_names {
        log.seats.iter_mut().for_each(|one| one.name = None);
        // The teacher's words may hold a name.
        log.entries.iter_mut().for_each(|entry| entry.note = None);
        let members = log.entries.iter_mut().flat_map(|entry| &mut entry.members);
        members.for_each(|member| member.name = None);
    }
    let title = &class.row.title;
    Ok(page::taught_again::taught_again_page(
        &log,
        seat,
        title,
        source.locale(),
    )?)
}

/// One page for a small group.
pub(super) fn group(source: &ReportSource<'_>) -> Built<ReportPage> {
    let values = source.values;
    let mut plan = surefoot_desk::group_page(
        source.desk,
        source.class,
        source.language(),
        source.today,
        needed(values.concept.as_ref(), "concept")?,
        needed(values.seats.as_ref(), "seats")?,
    )?;
    if !source.with_names {
        let lacking = plan.first.iter_mut().flat_map(|first| &mut first.lacking);
        lacking.for_each(|member| member.name = None);
        plan.members
            .iter_mut()
            .for_each(|member| member.name = None);
    }
    let title = &source.class.row.title;
    Ok(page::group::group_plan(
        &plan,
        title,
        source.today,
        source.locale(),
    )?)
}

/// One page for a substitute.
pub(super) fn substitute(source: &ReportSource<'_>) -> Built<ReportPage> {
    let (desk, class, today) = (source.desk, source.class, source.today);
    let minutes = needed(source.values.minutes, "minutes")?;
    let language = source.language();
    let date = source.values.date.unwrap_or(today);
    let talk = surefoot_desk::talk_of(desk, class, language, today, date, minutes)?;
    let mut kept = surefoot_desk::groups_desk(desk, class, language, today)?.kept;
    if !source.with_names {
        let groups = kept.iter_mut().flat_map(|day| &mut day.groups);
        let members = groups.flat_map(|group| {
            let parts = [&mut group.members, &mut group.partners, &mut group.missed];
            parts.into_iter().flatten()
        });
        members.for_each(|member| member.name = None);
    }
    let facts = &class.facts;
    let next = facts.year.next_school_day(talk.date);
    let next = next.map(|date| page::substitute::NextReview {
        date,
        concepts: (facts.rotation.concepts_on(&facts.year, date).iter())
            .map(|id| facts.name(id, language))
            .collect(),
    });
    Ok(page::substitute::substitute_page(
        &talk,
        kept.first(),
        next.as_ref(),
        &page::substitute::Ways {
            names: source.with_names,
            class_folder: desk.class_folder(&class.row.id)?,
            projector: desk.lock()?.is_some(),
        },
        source.locale(),
    )?)
}

/// Today's talk plan.
pub(super) fn talk(source: &ReportSource<'_>) -> Built<ReportPage> {
    let minutes = needed(source.values.minutes, "minutes")?;
    let view = surefoot_desk::talk(
        source.desk,
        source.class,
        source.language(),
        source.today,
        minutes,
    )?;
    Ok(page::talk::talk_page(&view, source.locale())?)
}

fn board(source: &ReportSource<'_>) -> Built<Board> {
    let language = source.language();
    Ok(surefoot_desk::board(
        source.desk,
        source.class,
        &[],
        language,
        source.today,
    )?)
}

/// The summary of a class, for its teachers.
pub(super) fn class_summary(source: &ReportSource<'_>) -> Built<ReportPage> {
    let board = board(source)?;
    Ok(page::class_summary::class_summary(&board, source.locale())?)
}

pub(super) fn share_safe_page(source: &ReportSource<'_>) -> Built<ReportPage> {
    let language = source.language();
    let table = surefoot_desk::share_table(source.desk, source.class, language, source.today)?;
    Ok(page::share_safe::share_page(&table, source.locale())?)
}

/// The share-safe table. Saving it records its release, because tables that are added and
/// subtracted could reveal what a few students answered.
pub(super) fn share_safe(source: &ReportSource<'_>) -> Built<Made> {
    let language = source.language();
    let made = surefoot_desk::make_share_table(source.desk, source.class, language, source.today)?;
    surefoot_desk::check_share_table(&made.table)?;
    let page = page::share_safe::share_page(&made.table, source.locale())?;
    Ok(Made {
        bytes: page::print(&page, &source.options, true)?,
        after_saving: Some(Box::new(move |desk, class| {
            Ok(surefoot_desk::release_share_table(desk, class, &made)?)
        })),
    })
}

/// Both tables as a workbook.
pub(super) fn workbook(source: &ReportSource<'_>) -> Built<Made> {
    let (board, locale) = (board(source)?, source.locale());
    let grids = [board_grid(&board, locale)?, summary_grid(&board, locale)?];
    Ok(Made::new(to_xlsx(&grids)?))
}

/// A table of concepts by passes.
pub(super) fn board_csv(source: &ReportSource<'_>) -> Built<Made> {
    let grid = board_grid(&board(source)?, source.locale())?;
    Ok(Made::new(to_csv(&grid)?))
}

/// A table with one row for each concept.
pub(super) fn summary_csv(source: &ReportSource<'_>) -> Built<Made> {
    let grid = summary_grid(&board(source)?, source.locale())?;
    Ok(Made::new(to_csv(&grid)?))
}

/// The join slips of every seat, or of one.
pub(super) fn slips(source: &ReportSource<'_>) -> Built<Made> {
    let mut slips = surefoot_desk::join_slips(source.class)?;
    let (seat, seats) = (source.values.seat, &source.values.seats);
    if seat.is_some() || seats.is_some() {
        let mut asked = seat.iter().chain(seats.iter().flatten());
        slips.retain(|slip| asked.clone().any(|seat| *seat == slip.seat));
        if asked.any(|seat| !slips.iter().any(|slip| slip.seat == *seat)) {
            slips.clear();
        }
        if slips.is_empty() {
            return Err(CallError::NotFound { what: Thing::Seat });
        }
    }
    let pages = slip_pages(&slips, source.with_names, &source.options)?;
    Ok(Made::new(pages))
}
