//! Reads when a first lesson is: a date in common ways of writing, a week, or last year.

use crate::error::{DeskError, faulty};
use chrono::{Datelike, NaiveDate};
use std::collections::BTreeSet;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::messages::message;
use surefoot_catalogue::{Language, Locale};

/// Words of a date at most: "Monday, the 14th of September 2026".
const MOST_WORDS: usize = 7;

/// The time of a first lesson.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum When {
    Date(NaiveDate),
    /// A date without a year, or with one that the list gives.
    Day {
        month: u32,
        day: u32,
    },
    /// A week with lessons, from 1.
    Week(usize),
    LastYear,
}

/// The words of all languages.
struct Words {
    /// January first; each with its names.
    months: Vec<Vec<String>>,
    weekdays: BTreeSet<String>,
    week: BTreeSet<String>,
    last_year: BTreeSet<String>,
    /// Words between the parts of a date.
    between: BTreeSet<String>,
    /// Words between two dates.
    until: BTreeSet<String>,
    headings: BTreeSet<String>,
}

impl Words {
    fn of_all_languages() -> Result<Self, DeskError> {
        let one = |id: &str| -> Result<Vec<String>, DeskError> {
            (Language::all().iter())
                .map(|language| {
                    let words = message(Locale::from(*language), id, None).map_err(faulty)?;
                    Ok(words.to_lowercase())
                })
                .collect()
        };
        let list = |id: &str| -> Result<BTreeSet<String>, DeskError> {
            let all = one(id)?;
            let words = all.iter().flat_map(|words| words.split(','));
            Ok(words.map(|word| word.trim().to_owned()).collect())
        };
        Ok(Self {
            months: (1..=12)
                .map(|month| one(&format!("report-month-{month}")))
                .collect::<Result<_, _>>()?,
            weekdays: list("reading-weekdays")?,
            week: list("reading-week")?,
            last_year: list("reading-last-year")?,
            between: list("reading-date-words")?,
            until: list("reading-until")?,
            headings: list("reading-pacing-headings")?,
        })
    }

    /// A month by its name, or by its first three letters or more.
    fn month(&self, word: &str) -> Option<u32> {
        let long_enough = word.chars().count() >= 3;
        let month = self.months.iter().position(|names| {
            names
                .iter()
                .any(|name| long_enough && name.starts_with(word))
        })?;
        u32::try_from(month + 1).ok()
    }
}

/// How the dates of a list are read.
pub(super) struct Calendar<'y> {
    year: &'y SchoolYear,
    words: Words,
    /// Whether `9/8` is the ninth of August.
    pub day_first: bool,
    /// Whether a date of the list is valid both ways.
    pub read_both_ways: bool,
}

impl<'y> Calendar<'y> {
    pub fn new(
        year: &'y SchoolYear,
        lines: &[&str],
        day_first: Option<bool>,
    ) -> Result<Self, DeskError> {
        let mut calendar = Self {
            year,
            words: Words::of_all_languages()?,
            day_first: false,
            read_both_ways: false,
        };
        let pairs: Vec<(u32, u32)> = (lines.iter())
            .flat_map(|line| {
                line.split(|c: char| c.is_whitespace() || matches!(c, ',' | ';' | '|'))
            })
            .filter_map(|word| numbers(first_of_span(word)))
            .filter(|(a, b, _)| *a <= 31 && *b <= 31)
            .map(|(a, b, _)| (a, b))
            .collect();
        let only_day_first = pairs.iter().any(|(a, _)| *a > 12);
        let only_month_first = pairs.iter().any(|(_, b)| *b > 12);
        calendar.read_both_ways =
            !only_day_first && !only_month_first && pairs.iter().any(|(a, b)| a != b);
        calendar.day_first = match day_first {
            Some(chosen) if calendar.read_both_ways => chosen,
            _ => only_day_first && !only_month_first,
        };
        Ok(calendar)
    }

    /// The date of a time; `None` if it is outside the school year.
    pub fn date(&self, when: When) -> Option<NaiveDate> {
        let year = self.year;
        let date = match when {
            When::Date(date) => date,
            When::Day { month, day } => (year.first_day.year()..=year.last_day.year())
                .filter_map(|in_year| NaiveDate::from_ymd_opt(in_year, month, day))
                .find(|date| year.contains(*date))?,
            When::Week(number) => {
                let mut weeks: Vec<NaiveDate> = Vec::new();
                let mut last = None;
                for day in year.school_days() {
                    let week = day.iso_week();
                    if last != Some(week) {
                        weeks.push(day);
                        last = Some(week);
                    }
                }
                *weeks.get(number.checked_sub(1)?)?
            }
            When::LastYear => year.school_days().next()?,
        };
        year.contains(date).then_some(date)
    }

    /// The time of a line, and its other cells.
    pub fn split(&self, line: &str) -> (Option<When>, Vec<String>) {
        if let Some(when) = self.when(line) {
            return (Some(when), Vec::new());
        }
        let strong = |c: char| matches!(c, '\t' | ';' | '|');
        let mut cells: Vec<&str> = line.split(strong).collect();
        let mut when = self.take(&mut cells);
        if when.is_none() && cells.len() == 1 {
            let mut by_comma: Vec<&str> = line.split([',']).collect();
            when = self.take(&mut by_comma);
            if when.is_some() {
                // A title may have a comma of its own.
                let whole = by_comma.join(",");
                let mut all = vec![whole];
                all.extend(by_comma.iter().map(|cell| (*cell).to_owned()));
                return (when, filled(all));
            }
        }
        if when.is_some() {
            return (
                when,
                filled(cells.iter().map(|cell| (*cell).to_owned()).collect()),
            );
        }
        let mut rest = Vec::new();
        for cell in cells {
            match self.at_an_end(cell).filter(|_| when.is_none()) {
                Some((found, left)) => {
                    when = Some(found);
                    rest.push(left);
                }
                None => rest.push(cell.to_owned()),
            }
        }
        (when, filled(rest))
    }

    /// Whether a line only names the columns of the list.
    pub fn is_heading(&self, cells: &[String]) -> bool {
        cells.iter().all(|cell| {
            let cell = cell.to_lowercase();
            let mut words = cell
                .split(|c: char| !c.is_alphabetic())
                .filter(|w| !w.is_empty());
            words.all(|word| self.words.headings.contains(word))
        })
    }

    /// Removes the cell that is a time. A date counts more than a week.
    fn take(&self, cells: &mut Vec<&str>) -> Option<When> {
        let found: Vec<(usize, When)> = (cells.iter().enumerate())
            .filter_map(|(at, cell)| Some((at, self.when(cell)?)))
            .collect();
        let best = (found.iter())
            .find(|(_, when)| !matches!(when, When::Week(_)))
            .or(found.first())
            .map(|(_, when)| *when)?;
        let times: BTreeSet<usize> = found.iter().map(|(at, _)| *at).collect();
        let mut at = 0;
        cells.retain(|_| {
            at += 1;
            !times.contains(&(at - 1))
        });
        Some(best)
    }

    /// A time in the first or the last words of a cell, and the rest.
    fn at_an_end(&self, cell: &str) -> Option<(When, String)> {
        let words: Vec<&str> = cell.split_whitespace().collect();
        let most = MOST_WORDS.min(words.len());
        for count in (1..=most).rev() {
            let (start, after) = words.split_at_checked(count)?;
            if let Some(when) = self.when(&start.join(" ")) {
                return Some((when, trimmed(&after.join(" "))));
            }
            let (before, end) = words.split_at_checked(words.len() - count)?;
            if let Some(when) = self.when(&end.join(" ")) {
                return Some((when, trimmed(&before.join(" "))));
            }
        }
        None
    }

    /// Reads a text that is a time and nothing else.
    pub fn when(&self, text: &str) -> Option<When> {
        let text = trimmed(text).to_lowercase();
        if text.is_empty() {
            return None;
        }
        if self.words.last_year.contains(&text) {
            return Some(When::LastYear);
        }
        if let Some(when) = self.point(&text) {
            return Some(when);
        }
        // Of a span, the first day counts.
        let signs = text.split_once(['–', '—']).or_else(|| text.split_once('-'));
        let words = || {
            let words: Vec<&str> = text.split(' ').collect();
            let at = words
                .iter()
                .position(|word| self.words.until.contains(*word))?;
            let (start, end) = words.split_at_checked(at)?;
            Some((start.join(" "), end.get(1..)?.join(" ")))
        };
        let (start, end) = signs
            .map(|(start, end)| (start.to_owned(), end.to_owned()))
            .or_else(words)?;
        let (start, end) = (start.trim(), end.trim());
        let number = end.chars().all(|c| c.is_ascii_digit()) && !end.is_empty();
        // "14–18 September" has its month at the end.
        let borrowed = || {
            let month = end
                .split(' ')
                .find(|word| self.words.month(word).is_some())?;
            self.point(&format!("{start} {month}"))
        };
        (number || self.point(end).is_some())
            .then(|| self.point(start).or_else(borrowed))
            .flatten()
    }

    /// Reads one day or week.
    fn point(&self, text: &str) -> Option<When> {
        let text = trimmed(text);
        if let Ok(date) = text.parse() {
            return Some(When::Date(date));
        }
        let words: Vec<&str> = text
            .split(|c: char| c.is_whitespace() || c == ',')
            .map(|word| word.trim_matches(['.', '(', ')']))
            .filter(|word| !word.is_empty() && !self.words.between.contains(*word))
            .filter(|word| !self.words.weekdays.contains(*word))
            .collect();
        let plain = |word: &str| word.parse::<usize>().ok();
        match *words.as_slice() {
            [one] => match numbers(one) {
                Some(_) => self.numeric(one),
                None => (self.words.week.iter())
                    .find_map(|week| plain(one.strip_prefix(week.as_str())?))
                    .map(When::Week),
            },
            [week, number] if self.words.week.contains(week) => {
                let first = number.split(['-', '–']).next().unwrap_or(number);
                match plain(first) {
                    Some(number) => Some(When::Week(number)),
                    None => self.numeric(number),
                }
            }
            [week, ref rest @ ..] if self.words.week.contains(week) && rest.len() < MOST_WORDS => {
                self.point(&rest.join(" "))
            }
            [one, other] => self.named_day(one, other),
            [one, other, year] => {
                let When::Day { month, day } = self.named_day(one, other)? else {
                    return None;
                };
                let date = NaiveDate::from_ymd_opt(full_year(year.parse().ok()?)?, month, day)?;
                Some(When::Date(date))
            }
            _ => None,
        }
    }

    fn numeric(&self, word: &str) -> Option<When> {
        let (one, other, year) = numbers(word)?;
        let (month, day) = match self.day_first {
            true => (other, one),
            false => (one, other),
        };
        match year {
            Some(year) => Some(When::Date(NaiveDate::from_ymd_opt(
                full_year(year)?,
                month,
                day,
            )?)),
            None => valid(month, day),
        }
    }

    /// A month and a day, in either order; the day may have an ending, as in "14th".
    fn named_day(&self, one: &str, other: &str) -> Option<When> {
        let day = |word: &str| -> Option<u32> {
            let digits = word.trim_end_matches(|c: char| !c.is_ascii_digit());
            let ending = word.len() - digits.len();
            (ending <= 2).then(|| digits.parse().ok()).flatten()
        };
        match (self.words.month(one), self.words.month(other)) {
            (Some(month), _) => valid(month, day(other)?),
            (None, Some(month)) => valid(month, day(one)?),
            (None, None) => None,
        }
    }
}

fn filled(cells: Vec<String>) -> Vec<String> {
    let cells = cells.iter().map(|cell| trimmed(cell));
    cells.filter(|cell| !cell.is_empty()).collect()
}

/// Without spaces, quotes and signs between parts at the ends.
fn trimmed(text: &str) -> String {
    let open = text.contains('(') != text.contains(')');
    let around = |c: char| {
        c.is_whitespace()
            || matches!(c, '"' | ',' | ':' | ';' | '-' | '–' | '—' | '•')
            || (open && matches!(c, '(' | ')'))
    };
    let text = text.trim_matches(around);
    let inner = text
        .strip_prefix('(')
        .and_then(|text| text.strip_suffix(')'));
    inner.unwrap_or(text).to_owned()
}

/// A date in numbers, such as `9/8`, `9.8.`, `9-8-26` or `9/8/2026`.
fn numbers(word: &str) -> Option<(u32, u32, Option<i32>)> {
    let word = word.trim_matches(['.', '(', ')', '"', ':']);
    let sign = word.chars().find(|c| !c.is_ascii_digit())?;
    if !matches!(sign, '/' | '.' | '-') {
        return None;
    }
    let parts: Vec<&str> = word.split(sign).collect();
    let short = |part: &str| {
        (part.len() <= 2)
            .then(|| part.parse::<u32>().ok())
            .flatten()
    };
    match *parts.as_slice() {
        [one, other] => Some((short(one)?, short(other)?, None)),
        [one, other, year] => Some((short(one)?, short(other)?, Some(year.parse().ok()?))),
        _ => None,
    }
}

/// The first date of a span in numbers, such as `9/8-9/12`.
fn first_of_span(word: &str) -> &str {
    let dash = |c: char| matches!(c, '–' | '—') || (c == '-' && word.contains(['/', '.']));
    word.split(dash).next().unwrap_or(word)
}

fn full_year(year: i32) -> Option<i32> {
    match year {
        0..=99 => Some(2000 + year),
        1000..=9999 => Some(year),
        _ => None,
    }
}

fn valid(month: u32, day: u32) -> Option<When> {
    // A leap year has every day that a year can have.
    NaiveDate::from_ymd_opt(2000, month, day).map(|_| When::Day { month, day })
}
