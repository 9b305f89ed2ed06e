//! Reads the sample files, and changed ones.

use super::draft::{MOST_TITLE_CHARS, OWN_PREFIX};
use super::*;
use crate::{Catalogue, Concept, Text};
use proptest::prelude::*;
use std::collections::BTreeMap;

const CSV: &[u8] = include_bytes!("../../../../shared/samples/catalogue/stream-lab.csv");
const FAULTS: &[u8] = include_bytes!("../../../../shared/samples/catalogue/with-faults.csv");
const CASE: &[u8] = include_bytes!("../../../../shared/samples/catalogue/water-studies.case.json");

fn built_in() -> BTreeMap<String, Concept> {
    Catalogue::built_in()
        .unwrap()
        .concepts()
        .iter()
        .map(|c| (c.id.as_str().to_owned(), c.clone()))
        .collect()
}

fn made(drafts: &[ConceptDraft]) -> (Vec<Concept>, Vec<LineRefused>) {
    let all = built_in();
    let (taken, refused) = concepts_of(drafts, &Held { all: &all, own: 0 });
    (taken.into_iter().map(|one| one.concept).collect(), refused)
}

fn code(refused: &LineRefused) -> String {
    serde_json::to_value(&refused.fault).unwrap()["code"]
        .as_str()
        .unwrap()
        .to_owned()
}

#[test]
fn the_sample_table_becomes_concepts_with_what_comes_before() {
    let reading = read_catalogue("stream-lab.csv", CSV, Language::first());
    assert_eq!(reading.refused, []);
    let (concepts, refused) = made(&reading.drafts);
    assert_eq!(refused, []);
    let ids: Vec<&str> = concepts.iter().map(|c| c.id.as_str()).collect();
    assert_eq!(
        ids,
        ["own-water-level", "own-water-change", "own-stream-speed"]
    );
    let before = |at: usize| -> Vec<&str> {
        concepts[at]
            .prerequisites
            .iter()
            .map(|p| p.as_str())
            .collect()
    };
    let es = Language::tagged("es").unwrap();
    assert_eq!(before(0), ["g3-measure-line-plot"]);
    assert_eq!(before(1), ["own-water-level"]);
    assert_eq!(concepts[0].alignments, ["SL.1", "OF.4.M.1", "OF.4.M.2"]);
    assert_eq!(concepts[0].title.get(es), "Leer un medidor de agua");
    // Its prerequisite is named by its code, and its Spanish texts are missing.
    assert_eq!(before(2), ["own-water-change"]);
    assert_eq!(concepts[2].title.get(es), "Speed of a stream");
    assert_eq!(concepts[2].title.substitute(es), Some(Language::first()));
}

#[test]
fn faults_of_a_table_are_told_by_line() {
    let reading = read_catalogue("with-faults.csv", FAULTS, Language::first());
    let read: Vec<(u32, String)> = reading.refused.iter().map(|r| (r.line, code(r))).collect();
    assert_eq!(
        read,
        [
            (3, "unknown_strand".to_owned()),
            (4, "bad_grade".to_owned())
        ]
    );
    let (concepts, refused) = made(&reading.drafts);
    assert_eq!(concepts.len(), 1);
    let made: Vec<(u32, String)> = refused.iter().map(|r| (r.line, code(r))).collect();
    assert_eq!(
        made,
        [
            (5, "empty".to_owned()),
            (6, "unknown_concept".to_owned()),
            (7, "circle".to_owned()),
            (8, "circle".to_owned()),
            (9, "concept_there".to_owned())
        ]
    );
}

#[test]
fn the_sample_package_gives_its_items_with_codes_order_and_grade() {
    let reading = read_catalogue("water-studies.case.json", CASE, Language::first());
    assert_eq!(reading.format, CatalogueFormat::Case);
    assert_eq!(reading.title, "Water studies of Otter Ford (invented)");
    assert_eq!(reading.refused, []);
    assert_eq!(reading.drafts.len(), 5);
    let mut picked: Vec<ConceptDraft> = reading.drafts[1..4].to_vec();
    assert_eq!(picked[0].id, "own-of-4-w-1");
    assert_eq!(picked[0].under, "Measuring water (invented)");
    assert_eq!(picked[0].grade, Some(4));
    assert_eq!(
        picked[2].grade, None,
        "two grades are for the teacher to choose"
    );
    let title = picked[2].title.get(Language::first());
    assert!(title.ends_with('…') && title.chars().count() <= MOST_TITLE_CHARS);
    let (none, refused) = made(&picked);
    assert!(none.is_empty());
    assert_eq!(refused[0].at, "CFItems[1]");
    for draft in &mut picked {
        draft.strand = Some(crate::Strand::Measurement);
        draft.grade = Some(4);
    }
    let (concepts, refused) = made(&picked);
    assert_eq!(refused, []);
    assert_eq!(concepts[1].prerequisites[0].as_str(), "own-of-4-w-1");
    assert_eq!(concepts[1].alignments, ["OF.4.W.2"]);
    // A prerequisite that was not picked is left out.
    let (alone, refused) = made(&picked[2..]);
    assert_eq!((alone.len(), refused.len()), (1, 0));
    assert!(alone[0].prerequisites.is_empty());
}

#[test]
fn the_language_of_a_package_is_read_and_an_unknown_one_named() {
    let package = |document: &str, item: &str| {
        let text = format!(
            r#"{{"CFDocument":{{"language":"{document}"}},
                "CFItems":[{{"identifier":"a","fullStatement":"x","language":"{item}"}}]}}"#
        );
        read_catalogue("a.json", text.as_bytes(), Language::first())
    };
    let es = Language::tagged("es").unwrap();
    for (document, item) in [("es-MX", ""), ("en", "es"), ("", "es-419")] {
        let reading = package(document, item);
        assert_eq!(
            reading.drafts[0].i_can,
            Text::one(es, "x"),
            "{document} {item}"
        );
    }
    for (document, item, at) in [("xx", "", "CFDocument"), ("", "xx-YY", "CFItems[0]")] {
        let reading = package(document, item);
        assert_eq!(reading.refused[0].at, format!("{at}.language"));
        assert_eq!(code(&reading.refused[0]), "unknown_language");
    }
}

#[test]
fn the_plain_column_is_in_the_main_language() {
    let es = Language::tagged("es").unwrap();
    let text = "title,title_en,i_can,strand,grade\nHola,Hello,Puedo,data,4\n";
    let reading = read_catalogue("a.csv", text.as_bytes(), es);
    assert_eq!(reading.refused, []);
    let draft = &reading.drafts[0];
    assert_eq!(
        draft.title,
        Text::one(es, "Hola").with(Language::first(), "Hello")
    );
    assert_eq!(draft.i_can, Text::one(es, "Puedo"));
}

#[test]
fn a_package_that_is_none_is_told_by_its_place() {
    for (text, at, wanted) in [
        ("{}", "CFDocument", "not_a_package"),
        ("{\"CFDocument\":{}}", "CFItems", "not_a_package"),
        (
            "{\"CFDocument\":{},\"CFItems\":[{\"fullStatement\":\"x\"}]}",
            "CFItems[0].identifier",
            "empty",
        ),
        (
            "{\"CFDocument\":{},\"CFItems\":[{\"identifier\":\"a\"}]}",
            "CFItems[0].fullStatement",
            "empty",
        ),
    ] {
        let reading = read_catalogue("a.json", text.as_bytes(), Language::first());
        assert_eq!(
            (
                reading.refused[0].at.as_str(),
                code(&reading.refused[0]).as_str()
            ),
            (at, wanted)
        );
    }
    let broken = read_catalogue("a.json", b"{\n\"CFDocument\": nonsense", Language::first());
    assert_eq!(broken.refused[0].line, 2);
}

proptest! {
    #![proptest_config(surefoot_test_support::long())]

    /// No reader panics, and all concepts have the prefix of own concepts.
    #[test]
    fn changed_catalogues(changes in surefoot_test_support::any_changes(), which in 0..3_usize) {
        let bytes = surefoot_test_support::changed([CSV, FAULTS, CASE][which], &changes);
        let reading = read_catalogue("changed", &bytes, Language::first());
        let (concepts, _) = made(&reading.drafts);
        for concept in concepts {
            prop_assert!(concept.id.as_str().starts_with(OWN_PREFIX));
        }
    }
}
