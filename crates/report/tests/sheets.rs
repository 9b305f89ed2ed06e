//! Practice sheets of every concept in every language pass the PDF/UA-1 checks of the writer.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on stops")]

use surefoot_catalogue::Locale;
use surefoot_catalogue::{Catalogue, Concept, ConceptId, Language, Text};
use surefoot_exercises::bank::{OwnExercise, OwnForm, OwnKind};
use surefoot_exercises::{Level, TakenNames, concepts_with_exercises};
use surefoot_report::sheet::{MOST_EXERCISES, SheetPart, SheetWish, practice_sheet};
use surefoot_report::{Density, Paper, PrintOptions, ReportError};

fn part(concept: &str, level: Level, count: usize, seed: u64) -> SheetPart {
    SheetPart {
        concept: Catalogue::built_in().unwrap().get(concept).unwrap().clone(),
        level,
        count,
        seed,
        own: Vec::new(),
        taken: TakenNames::NONE,
    }
}

/// An own concept without a generator.
fn tides() -> Concept {
    let built_in = Catalogue::built_in().unwrap();
    let known = built_in.get(concepts_with_exercises().next().unwrap());
    Concept {
        id: ConceptId::new("own-tides").unwrap(),
        ..known.unwrap().clone()
    }
}

fn own(question: &str, level: Level) -> OwnExercise {
    OwnExercise {
        concept: ConceptId::new("own-tides").unwrap(),
        level,
        kind: OwnKind::WholeNumber,
        question: Text::one(Language::first(), question),
        choices: Vec::new(),
        answer: "7".into(),
        form: OwnForm::Any,
        unit: None,
        hints: Vec::new(),
        steps: Vec::new(),
        wrong: Vec::new(),
    }
}

#[test]
fn every_concept_prints_at_every_level_in_every_language() {
    for (nth, concept) in concepts_with_exercises().enumerate() {
        let languages = Language::all().iter().cycle();
        for (level, &language) in Level::ALL.into_iter().zip(languages) {
            let options = PrintOptions {
                locale: Locale::from(language),
                paper: if nth % 2 == 0 {
                    Paper::A4
                } else {
                    Paper::Letter
                },
                density: if nth % 3 == 0 {
                    Density::Roomy
                } else {
                    Density::Compact
                },
            };
            let wish = SheetWish {
                parts: vec![part(concept, level, 4, 17)],
                ..SheetWish::default()
            };
            let bytes = practice_sheet(&wish, &options)
                .unwrap_or_else(|error| panic!("{concept} level {level:?}: {error}"));
            assert!(bytes.starts_with(b"%PDF-1."), "{concept}");
        }
    }
}

#[test]
fn the_same_wish_gives_the_same_bytes_and_another_seed_does_not() {
    let concept = concepts_with_exercises().next().unwrap();
    let made = |seed| {
        let wish = SheetWish {
            parts: vec![part(concept, Level::Expected, 6, seed)],
            ..SheetWish::default()
        };
        practice_sheet(&wish, &PrintOptions::default()).unwrap()
    };
    assert_eq!(made(3), made(3));
    assert_ne!(made(3), made(4));
}

#[test]
fn what_cannot_be_printed_is_told() {
    let made = |parts| {
        practice_sheet(
            &SheetWish {
                parts,
                ..SheetWish::default()
            },
            &PrintOptions::default(),
        )
    };
    let concept = concepts_with_exercises().next().unwrap();
    assert_eq!(made(vec![]), Err(ReportError::Nothing));
    assert_eq!(
        made(vec![part(concept, Level::Entry, MOST_EXERCISES + 1, 1)]),
        Err(ReportError::TooMany {
            asked: MOST_EXERCISES + 1,
            most: MOST_EXERCISES
        })
    );
    assert_eq!(
        made(vec![SheetPart {
            concept: tides(),
            ..part(concept, Level::Entry, 3, 1)
        }]),
        Err(ReportError::NoConcept {
            id: "own-tides".into()
        })
    );
    // The largest seeds do not overflow.
    assert!(made(vec![part(concept, Level::Entry, 3, u64::MAX)]).is_ok());
}

#[test]
fn own_exercises_print_like_the_others() {
    let parts = vec![SheetPart {
        concept: tides(),
        own: vec![
            own("How many hours are 420 minutes?", Level::Entry),
            own("Find the depth: {3 1/2} + {7/2} = ?", Level::Stretch),
        ],
        ..part(
            concepts_with_exercises().next().unwrap(),
            Level::Entry,
            5,
            1,
        )
    }];
    let wish = SheetWish {
        parts,
        ..SheetWish::default()
    };
    let bytes = practice_sheet(&wish, &PrintOptions::default()).unwrap();
    assert!(bytes.starts_with(b"%PDF-1."));
}

fn pages(concept: &str, options: &PrintOptions) -> usize {
    let wish = SheetWish {
        parts: vec![part(concept, Level::Expected, 20, 17)],
        without_key: true,
        ..SheetWish::default()
    };
    let pdf = practice_sheet(&wish, options).unwrap();
    let text = String::from_utf8_lossy(&pdf).into_owned();
    let count = text.split("/Count ").nth(1).unwrap();
    let digits: String = count.chars().take_while(char::is_ascii_digit).collect();
    digits.parse().unwrap()
}

#[test]
fn twenty_short_exercises_with_space_to_work_take_few_pages() {
    // A sample of all concepts; a long story or a large figure needs more.
    let mut all: Vec<(usize, &str)> = Vec::new();
    for (nth, concept) in concepts_with_exercises().enumerate().step_by(5) {
        let options = PrintOptions {
            locale: Locale::from(Language::all()[nth % Language::all().len()]),
            paper: [Paper::A4, Paper::Letter][nth / 2 % 2],
            density: Density::Roomy,
        };
        all.push((pages(concept, &options), concept));
    }
    let sum: usize = all.iter().map(|(pages, _)| pages).sum();
    println!("{sum} pages for {} concepts: {all:?}", all.len());
    assert!(all.len() > 30 && sum < 4 * all.len(), "{sum} pages");
    for concept in [
        "g3-divide-share",
        "g3-area-rectangle",
        "g4-fraction-compare",
    ] {
        for language in Language::all() {
            for paper in [Paper::A4, Paper::Letter] {
                let options = PrintOptions {
                    locale: Locale::from(*language),
                    paper,
                    density: Density::Roomy,
                };
                let count = pages(concept, &options);
                assert!(count <= 3, "{concept} {language:?} {paper:?}: {count}");
            }
        }
    }
}
