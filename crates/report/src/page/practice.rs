//! The preview of a practice sheet, with the exercises of its print.

use super::{Drafted, ReportPage, ReportPart};
use crate::sheet::{SheetWish, sets, title};
use crate::words::Words;
use surefoot_catalogue::Locale;

/// The exercises of a sheet, with their answers if it has a key.
pub fn practice_page(wish: &SheetWish, locale: Locale) -> Drafted<ReportPage> {
    let sets = sets(wish)?;
    let language = locale.language;
    let title = title(&sets, &Words::new(locale))?;
    let mut parts = Vec::new();
    let mut number = 0;
    for (concept, _, items) in &sets {
        if sets.len() > 1 {
            let text = concept.title.get(language).to_string();
            parts.push(ReportPart::Heading { text });
        }
        let text = concept.i_can.get(language).to_string();
        parts.push(ReportPart::Words { text });
        for item in items {
            number += 1;
            parts.push(ReportPart::Exercise {
                number,
                item: item.view(),
                answer: match wish.without_key {
                    true => Vec::new(),
                    false => item.worked().answer,
                },
            });
        }
    }
    Ok(ReportPage {
        title,
        under: wish.for_whom.clone().unwrap_or_default(),
        parts,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sheet::SheetPart;
    use surefoot_catalogue::{Catalogue, Language};

    #[test]
    fn the_screen_has_the_exercises_of_the_print_and_its_key_only_when_asked() {
        let catalogue = Catalogue::built_in().unwrap();
        let part = |id: &str| SheetPart {
            concept: catalogue.get(id).unwrap().clone(),
            level: 2.try_into().unwrap(),
            count: 3,
            seed: 7,
            own: Vec::new(),
            taken: surefoot_exercises::TakenNames::NONE,
        };
        let mut wish = SheetWish {
            parts: vec![part("g4-angle-degrees"), part("g3-multiply-divide-stories")],
            ..SheetWish::default()
        };
        let locale = Locale::from(Language::tagged("es").unwrap());
        let numbered = |wish: &SheetWish| -> Vec<(u32, bool)> {
            (practice_page(wish, locale).unwrap().parts.iter())
                .filter_map(|part| match part {
                    ReportPart::Exercise { number, answer, .. } => {
                        Some((*number, answer.is_empty()))
                    }
                    _ => None,
                })
                .collect()
        };
        assert_eq!(
            numbered(&wish),
            (1..=6).map(|n| (n, false)).collect::<Vec<_>>()
        );
        wish.without_key = true;
        assert!(numbered(&wish).iter().all(|(_, empty)| *empty));
        wish.parts.clear();
        assert!(practice_page(&wish, locale).is_err());
    }
}
