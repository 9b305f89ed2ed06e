//! The preview of a warm-up, with the exercises of its print.

use super::{Draft, Drafted, ReportPage, ReportPart};
use crate::error::ReportError;
use surefoot_catalogue::Locale;
use surefoot_desk::WarmUpPaper;

/// The exercises of a warm-up under the titles of their concepts, with answers if it has a key.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without an exercise.
pub fn warm_up_page(paper: &WarmUpPaper, without_key: bool, locale: Locale) -> Drafted<ReportPage> {
    if paper.exercises.is_empty() {
        return Err(ReportError::Nothing);
    }
    let mut draft = Draft::new(
        locale,
        |w| Ok(w.get("report-warm-up")?),
        &paper.class_title,
        paper.date,
    )?;
    for (number, one) in (1..).zip(&paper.exercises) {
        let text = one.concept.title.clone();
        draft.put(ReportPart::Heading { text });
        draft.put(ReportPart::Exercise {
            number,
            item: one.item.view(),
            answer: match without_key {
                true => Vec::new(),
                false => one.item.worked().answer,
            },
        });
    }
    Ok(draft.page)
}
