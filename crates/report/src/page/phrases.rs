//! Phrases that several pages use.

use crate::words::{Drafted, Words};
use chrono::{Datelike, NaiveDate};
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_desk::{CalibrationVerdict, MisconceptionCount, PracticeSums, Trend};
use surefoot_exercises::Block;
use surefoot_exercises::text::blocks_text;

/// The sign for no value.
pub(crate) const NONE: &str = "–";

/// A date in words.
pub(crate) fn date(w: &Words, date: NaiveDate) -> Drafted<String> {
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

/// The words for a rating.
pub(crate) fn rating(w: &Words, rating: Option<Confidence>) -> Drafted<String> {
    Ok(match rating {
        Some(rating) => w.get(&format!("confidence-{}", u8::from(rating)))?,
        None => NONE.to_string(),
    })
}

/// The words for a result.
pub(crate) fn outcome(w: &Words, outcome: Option<Outcome>) -> Drafted<String> {
    Ok(match outcome {
        Some(Outcome::Right) => w.get("outcome-right")?,
        Some(Outcome::Wrong) => w.get("outcome-wrong")?,
        Some(Outcome::NotDone) | None => NONE.to_string(),
    })
}

/// Practice answers: alone, with help, wrong.
pub(crate) fn practice(sums: PracticeSums) -> String {
    if sums == PracticeSums::default() {
        NONE.to_string()
    } else {
        format!("{} / {} / {}", sums.alone, sums.with_help, sums.wrong)
    }
}

/// A share in whole per cent.
pub(crate) fn percent(share: f64) -> String {
    format!("{:.0}%", share * 100.0)
}

/// The words for a trend.
pub(crate) fn trend(w: &Words, trend: Trend) -> Drafted<String> {
    Ok(w.get(match trend {
        Trend::Rising => "report-trend-rising",
        Trend::Falling => "report-trend-falling",
        Trend::MaybeRising => "report-trend-maybe-rising",
        Trend::MaybeFalling => "report-trend-maybe-falling",
        Trend::NoClearChange => "report-trend-no-clear-change",
        Trend::TooSoon => "report-trend-too-soon",
    })?)
}

/// The words for a calibration.
pub(crate) fn calibration(w: &Words, verdict: CalibrationVerdict) -> Drafted<String> {
    Ok(w.get(match verdict {
        CalibrationVerdict::Over => "report-calibration-over",
        CalibrationVerdict::Under => "report-calibration-under",
        CalibrationVerdict::Near => "report-calibration-near",
        CalibrationVerdict::Unclear => "report-calibration-unclear",
        CalibrationVerdict::TooLittle => "report-calibration-too-little",
    })?)
}

/// The name of a misconception; no code is ever shown.
pub(crate) fn misconception(w: &Words, code: &str) -> Drafted<String> {
    let id = format!("misconception-{code}");
    Ok(
        match surefoot_exercises::messages::attribute(w.locale, &id, "name") {
            Ok(name) => name,
            Err(_) => w.get("report-misconception-other")?,
        },
    )
}

/// Misconceptions with the number of answers that they led to.
pub(crate) fn misconceptions(w: &Words, all: &[MisconceptionCount]) -> Drafted<Vec<String>> {
    all.iter()
        .map(|one| {
            let answers = w.say("report-answers", &[("count", one.count.into())])?;
            Ok(format!("{} ({answers})", misconception(w, &one.code)?))
        })
        .collect()
}

/// Blocks as text in one line.
pub(crate) fn reads(w: &Words, blocks: &[Block]) -> Drafted<String> {
    Ok(blocks_text(w.locale, blocks)?.replace('\n', "; "))
}
