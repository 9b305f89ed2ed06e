//! Warm-ups of every concept pass the PDF/UA-1 checks of the writer, on half-sheets and on sheets.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on stops")]

use surefoot_catalogue::{Catalogue, Language, Locale};
use surefoot_desk::{WarmUpExercise, WarmUpPaper};
use surefoot_exercises::{Level, concepts_with_exercises, generate};
use surefoot_record::ConceptName;
use surefoot_report::warm_up::{WarmUpWish, warm_up_sheet};
use surefoot_report::{Density, Paper, PrintOptions, ReportError};

const HALVES: WarmUpWish = WarmUpWish {
    halves: true,
    without_key: true,
};
const WHOLE: WarmUpWish = WarmUpWish {
    halves: false,
    without_key: true,
};

fn paper(concepts: &[&str], level: Level, language: Language) -> WarmUpPaper {
    let catalogue = Catalogue::built_in().unwrap();
    let exercises = concepts
        .iter()
        .map(|id| {
            let concept = catalogue.get(id).unwrap();
            WarmUpExercise {
                concept: ConceptName {
                    id: (*id).to_owned(),
                    strand: concept.strand.as_str().to_owned(),
                    title: concept.title.get(language).to_owned(),
                    i_can: concept.i_can.get(language).to_owned(),
                    shown_in: None,
                    has_exercises: true,
                },
                item: generate(id, level, 5).unwrap(),
            }
        })
        .collect();
    WarmUpPaper {
        class_title: "Room 9 (invented)".into(),
        date: "2026-11-25".parse().unwrap(),
        day: 3,
        exercises,
    }
}

fn options(language: Language, paper: Paper) -> PrintOptions {
    PrintOptions {
        locale: Locale::from(language),
        paper,
        density: Density::Roomy,
    }
}

fn pages(pdf: &[u8]) -> usize {
    let text = String::from_utf8_lossy(pdf);
    let count = text.split("/Count ").nth(1).unwrap();
    let digits: String = count.chars().take_while(char::is_ascii_digit).collect();
    digits.parse().unwrap()
}

#[test]
fn six_concepts_take_few_pages_whatever_they_are() {
    let all: Vec<&str> = concepts_with_exercises().collect();
    let mut counts = [[0; 4]; 2];
    for (nth, concepts) in all.chunks(6).enumerate().step_by(3) {
        for (level, &language) in Level::ALL.into_iter().zip(Language::all().iter().cycle()) {
            let size = if nth % 2 == 0 {
                Paper::A4
            } else {
                Paper::Letter
            };
            let options = options(language, size);
            let paper = paper(concepts, level, language);
            for (place, wish) in [HALVES, WHOLE].into_iter().enumerate() {
                let pdf = warm_up_sheet(&paper, wish, &options).unwrap();
                assert!(pdf.starts_with(b"%PDF-1."));
                counts[place][pages(&pdf).min(4) - 1] += 1;
                let with_key = WarmUpWish {
                    without_key: false,
                    ..wish
                };
                let keyed = warm_up_sheet(&paper, with_key, &options).unwrap();
                assert_eq!(pages(&keyed), pages(&pdf) + 1);
            }
        }
    }
    println!("half-sheets and sheets of 1, 2, 3, more pages: {counts:?}");
    // Concepts of one strand stand together here, so a page may have six figures.
    let [halves, whole] = counts;
    assert_eq!((halves[3], whole[3]), (0, 0), "{counts:?}");
    assert!(
        halves[0] + halves[1] >= halves[2] && whole[0] + whole[1] > 4 * whole[2],
        "{counts:?}"
    );
}

#[test]
fn a_half_sheet_is_on_the_page_twice_and_nothing_is_printed_of_nothing() {
    let language = Language::first();
    let options = options(language, Paper::Letter);
    let one = paper(&["g3-add-within-1000"], Level::Expected, language);
    let half = warm_up_sheet(&one, HALVES, &options).unwrap();
    let whole = warm_up_sheet(&one, WHOLE, &options).unwrap();
    assert_eq!((pages(&half), pages(&whole)), (1, 1));
    assert_eq!(warm_up_sheet(&one, HALVES, &options).unwrap(), half);
    let none = WarmUpPaper {
        exercises: Vec::new(),
        ..one
    };
    assert_eq!(
        warm_up_sheet(&none, HALVES, &options),
        Err(ReportError::Nothing)
    );
}
