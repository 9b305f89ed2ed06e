//! Turns of phrase that several pages share.

use super::Drafted;
use crate::words::Words;
use chrono::{Datelike, NaiveDate};
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_desk::teaching_views::CalibrationVerdict;
use surefoot_desk::views::{MistakeCount, Trend};
use surefoot_exercises::Block;
use surefoot_exercises::text::blocks_text;

/// What stands where there is nothing.
pub(super) const NONE: &str = "–";

/// A date in words.
pub(super) fn date(w: &Words, date: NaiveDate) -> Drafted<String> {
    let month = w.get(&format!("report-month-{}", date.month()))?;
    Ok(w.say(
        "report-on",
        &[
            ("month", month.into()),
            ("day", date.day().to_string().into()),
            ("year", date.year().to_string().into()),
        ],
    )?)
}

/// A rating in words.
pub(super) fn rating(w: &Words, rating: Option<Confidence>) -> Drafted<String> {
    Ok(match rating {
        Some(rating) => w.get(&format!("confidence-{}", u8::from(rating)))?,
        None => NONE.to_string(),
    })
}

/// A result in words.
pub(super) fn outcome(w: &Words, outcome: Option<Outcome>) -> Drafted<String> {
    Ok(match outcome {
        Some(Outcome::Right) => w.get("outcome-right")?,
        Some(Outcome::Wrong) => w.get("outcome-wrong")?,
        Some(Outcome::NotDone) | None => NONE.to_string(),
    })
}

/// Practice answers: alone, with help, wrong.
pub(super) fn practice(counts: [u32; 3]) -> String {
    if counts == [0; 3] {
        NONE.to_string()
    } else {
        let [alone, with_help, wrong] = counts;
        format!("{alone} / {with_help} / {wrong}")
    }
}

/// A share as whole per cent.
pub(super) fn percent(share: f64) -> String {
    format!("{:.0}%", share * 100.0)
}

/// Which way a concept moves.
pub(super) fn trend(w: &Words, trend: Trend) -> Drafted<String> {
    Ok(w.get(match trend {
        Trend::Rising => "report-trend-rising",
        Trend::Falling => "report-trend-falling",
        Trend::MaybeRising => "report-trend-maybe-rising",
        Trend::MaybeFalling => "report-trend-maybe-falling",
        Trend::NoClearChange => "report-trend-no-clear-change",
        Trend::TooSoon => "report-trend-too-soon",
    })?)
}

/// How far a student's ratings can be believed.
pub(super) fn calibration(w: &Words, verdict: CalibrationVerdict) -> Drafted<String> {
    Ok(w.get(match verdict {
        CalibrationVerdict::Over => "report-calibration-over",
        CalibrationVerdict::Under => "report-calibration-under",
        CalibrationVerdict::Near => "report-calibration-near",
        CalibrationVerdict::Unclear => "report-calibration-unclear",
        CalibrationVerdict::TooLittle => "report-calibration-too-little",
    })?)
}

/// A mistake as a teacher reads it. A code of a newer program keeps its code.
pub(super) fn mistake(w: &Words, code: &str) -> String {
    let id = format!("misconception-{}", code.replace('_', "-"));
    surefoot_exercises::messages::attribute(w.locale, &id, "name")
        .unwrap_or_else(|_| code.to_string())
}

/// Mistakes with their counts.
pub(super) fn mistakes(w: &Words, all: &[MistakeCount]) -> Vec<String> {
    all.iter()
        .map(|one| format!("{} ({})", mistake(w, &one.code), one.count))
        .collect()
}

/// Blocks as they read, in one line.
pub(super) fn reads(w: &Words, blocks: &[Block]) -> Drafted<String> {
    Ok(blocks_text(w.locale, blocks)?.replace('\n', "; "))
}
