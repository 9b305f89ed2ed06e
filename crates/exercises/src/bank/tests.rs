//! The sample files, worked examples of both formats, and changed files.

use super::*;
use crate::text;
use crate::{Response, mark, response_for};
use proptest::prelude::*;
use std::collections::BTreeMap;
use surefoot_catalogue::{Catalogue, ConceptId, Language, Text};

const CSV: &[u8] = include_bytes!("../../../../shared/samples/bank/otter-ford.csv");
const FAULTS: &[u8] = include_bytes!("../../../../shared/samples/bank/with-faults.csv");
const ITEMS: [(&str, &[u8]); 6] = [
    (
        "bridge-planks",
        include_bytes!("../../../../shared/samples/bank/qti/bridge-planks.xml"),
    ),
    (
        "equal-to-half",
        include_bytes!("../../../../shared/samples/bank/qti/equal-to-half.xml"),
    ),
    (
        "picture",
        include_bytes!("../../../../shared/samples/bank/qti/picture.xml"),
    ),
    (
        "rivers",
        include_bytes!("../../../../shared/samples/bank/qti/rivers.xml"),
    ),
    (
        "rope-length",
        include_bytes!("../../../../shared/samples/bank/qti/rope-length.xml"),
    ),
    (
        "steps-left",
        include_bytes!("../../../../shared/samples/bank/qti/steps-left.xml"),
    ),
];

fn find(text: &str) -> ConceptFound {
    let wanted = text.to_lowercase();
    let named = Catalogue::built_in()
        .unwrap()
        .concepts()
        .iter()
        .find(|c| c.id.as_str() == wanted || c.is_titled(&wanted));
    named.map_or(ConceptFound::None, |c| ConceptFound::One(c.id.clone()))
}

fn read_one(name: &str, bytes: &[u8], chosen: Option<&str>) -> BankReading {
    let chosen = chosen.map(|id| ConceptId::new(id).unwrap());
    let file = BankFile {
        name: name.into(),
        bytes: bytes.to_vec(),
    };
    read_bank(
        &[file],
        &find,
        chosen.as_ref(),
        &BTreeMap::new(),
        Language::first(),
    )
    .remove(0)
}

fn read_text(text: &str) -> BankReading {
    read_one("a.csv", text.as_bytes(), Some("g3-facts-multiply"))
}

fn codes(reading: &BankReading) -> Vec<(u32, String)> {
    reading
        .refused
        .iter()
        .map(|line| {
            let code = serde_json::to_value(&line.fault).unwrap()["code"]
                .as_str()
                .unwrap()
                .to_owned();
            (line.line, code)
        })
        .collect()
}

#[test]
fn every_line_of_the_sample_becomes_an_exercise_that_can_be_answered() {
    let reading = read_one("otter-ford.csv", CSV, None);
    assert_eq!(reading.refused, []);
    assert_eq!(reading.taken.len(), 14);
    let kinds: std::collections::BTreeSet<_> =
        reading.taken.iter().map(|line| line.own.kind).collect();
    assert_eq!(kinds.len(), OwnKind::ALL.len());
    for line in &reading.taken {
        let item = line.own.item().unwrap();
        assert_eq!(item, line.own.item().unwrap());
        assert!(mark(&item, &response_for(&item.answer)).unwrap().right);
        for misconception in &item.misconceptions {
            let marked = mark(&item, &response_for(&misconception.answer)).unwrap();
            assert!(!marked.right && marked.noticed.is_some(), "{}", line.line);
        }
        for &language in Language::all() {
            let all = item.prompt.iter().chain(item.steps.iter().flatten());
            for block in all.chain(item.hints.iter().flatten()) {
                let text = crate::text::block_text(language.into(), block).unwrap();
                assert!(!text.contains(['{', '}', '\u{e000}']), "{text}");
            }
        }
    }
    // The first exercise has texts on two lines in two cells.
    let lines: Vec<u32> = reading.taken.iter().map(|line| line.line).collect();
    assert_eq!(&lines[..3], &[2, 5, 6]);
    let spanish = reading.taken[0].own.item().unwrap();
    let text =
        crate::text::blocks_text(Language::tagged("es").unwrap().into(), &spanish.prompt).unwrap();
    assert!(text.ends_with("¿Cuántos remos hay?"), "{text}");
}

#[test]
fn each_fault_of_the_faulty_sample_is_told_by_its_line_and_the_rest_is_taken() {
    let reading = read_one("with-faults.csv", FAULTS, None);
    let lines: Vec<u32> = reading.taken.iter().map(|line| line.line).collect();
    assert_eq!(lines, [2, 15]);
    let expected = [
        (3, "bad_answer"),
        (4, "unknown_concept"),
        (6, "not_a_choice"),
        (7, "bad_braces"),
        (8, "unknown_kind"),
        (9, "wrong_is_right"),
        (10, "key_breaks_form"),
        (11, "same_as_line"),
        (12, "empty"),
        (13, "wrong_cells"),
        (14, "alone"),
    ];
    assert_eq!(
        codes(&reading),
        expected.map(|(line, code)| (line, code.to_owned()))
    );
}

#[test]
fn a_heading_that_does_not_fit_is_refused_whole() {
    let reading = read_text("kind,question,answr,hint,hint\nwhole number,1 + 1?,2,,\n");
    assert!(reading.taken.is_empty());
    assert_eq!(
        codes(&reading),
        [
            (1, "unknown_column".into()),
            (1, "column_twice".into()),
            (1, "missing_column".into())
        ]
    );
    let without = read_one(
        "a.csv",
        b"kind,question,answer\nwhole number,1 + 1?,2\n",
        None,
    );
    assert_eq!(codes(&without), [(1, "missing_column".into())]);
    assert_eq!(codes(&read_text("")), [(1, "not_known".into())]);
}

#[test]
fn text_stays_text_and_what_is_no_text_is_refused() {
    let reading = read_text(
        "kind,question,answer\nwhole number,<b>How</b> many? <script>x</script>,7\nwhole number,a\u{202e}b,7\nwhole number,a\u{e000}b,8\n",
    );
    let item = reading.taken[0].own.item().unwrap();
    assert_eq!(
        crate::text::blocks_text(Language::first().into(), &item.prompt).unwrap(),
        "<b>How</b> many? <script>x</script>"
    );
    assert_eq!(
        codes(&reading),
        [(3, "bad_character".into()), (4, "bad_character".into())]
    );
}

#[test]
fn things_to_order_never_stand_in_their_order_at_first() {
    let reading =
        read_text("kind,question,answer\norder,Least first?,1 | 2 | 3\norder,A to D?,a|b|c|d\n");
    for line in &reading.taken {
        let own = &line.own;
        assert_ne!(
            own.answer,
            (0..own.choices.len())
                .map(|n| n.to_string())
                .collect::<Vec<_>>()
                .join(" ")
        );
    }
}

#[test]
fn the_same_exercise_has_the_same_id_and_every_change_another() {
    let id = |text: &str| read_text(text).taken[0].own.id();
    let first = id("kind,question,answer\nwhole number,1 + 1?,2\n");
    assert_eq!(first, id("answer,kind,question\n2,Whole-Number,1 + 1?\n"));
    assert_ne!(first, id("kind,question,answer\nwhole number,1 + 1 ?,2\n"));
    assert_ne!(
        first,
        id("kind,question,answer,level\nwhole number,1 + 1?,2,1\n")
    );
    assert_eq!(first.to_string().parse::<OwnId>(), Ok(first));
    assert!(first.seed() < 1 << 60);
}

#[test]
fn what_the_class_has_already_is_not_taken_twice_and_room_ends() {
    let text = "kind,question,answer\nwhole number,1 + 1?,2\nwhole number,1 + 2?,3\n";
    let own = read_text(text).taken[0].own.clone();
    let file = BankFile {
        name: "a.csv".into(),
        bytes: text.as_bytes().to_vec(),
    };
    let chosen = own.concept.clone();
    let held = BTreeMap::from([(own.id(), own.json_bytes())]);
    let reading = &read_bank(
        std::slice::from_ref(&file),
        &find,
        Some(&chosen),
        &held,
        Language::first(),
    )[0];
    assert_eq!(codes(reading), [(2, "already_there".into())]);
    let full = BTreeMap::from([(own.id(), MOST_BANK_BYTES - 10)]);
    let reading = &read_bank(&[file], &find, Some(&chosen), &full, Language::first())[0];
    assert_eq!(
        codes(reading),
        [(2, "already_there".into()), (3, "bank_too_long".into())]
    );
}

#[test]
fn the_items_of_the_sample_are_read_as_they_are_meant() {
    let read = |name: &str| {
        let bytes = ITEMS.iter().find(|(n, _)| *n == name).unwrap().1;
        read_one(name, bytes, Some("g3-facts-divide"))
    };
    let own = |name: &str| {
        let reading = read(name);
        assert_eq!(reading.refused, [], "{name}");
        reading.taken[0].own.clone()
    };
    let planks = own("bridge-planks");
    assert_eq!(
        (planks.kind, planks.answer.as_str()),
        (OwnKind::OneChoice, "2")
    );
    assert_eq!(planks.concept.as_str(), "g3-facts-multiply");
    assert_eq!(
        planks.question.get(Language::first()),
        "A bridge has 8 rows of planks. Each row has 7 planks.\nHow many planks are there?"
    );
    let half = own("equal-to-half");
    assert_eq!(
        (half.kind, half.answer.as_str()),
        (OwnKind::SeveralChoices, "0 3")
    );
    assert_eq!(
        half.question.get(Language::first()),
        "Which fractions are equal to {1/2}?"
    );
    assert_eq!(half.choices[3].get(Language::first()), "{4/8}");
    let rope = own("rope-length");
    assert_eq!((rope.kind, rope.answer.as_str()), (OwnKind::Decimal, "2.5"));
    assert_eq!(rope.concept.as_str(), "g3-facts-divide");
    assert!(
        rope.question
            .get(Language::first())
            .ends_with("Each part is ____ meters long.")
    );
    let steps = own("steps-left");
    assert_eq!(
        (steps.kind, steps.answer.as_str()),
        (OwnKind::WholeNumber, "385")
    );
    assert_eq!(
        steps.question.get(Language::first()),
        "A tower has 912 steps. Mia has climbed 527 of them. How many are left?"
    );
    let rivers = own("rivers");
    assert_eq!(
        (rivers.kind, rivers.answer.as_str()),
        (OwnKind::Order, "1 2 0")
    );
    assert_eq!(codes(&read("picture")), [(13, "unknown_element".into())]);
}

fn item(declaration: &str, body: &str, processing: &str) -> BankReading {
    let text = format!(
        "<qti-assessment-item xmlns=\"http://www.imsglobal.org/xsd/imsqtiasi_v3p0\">\n<qti-response-declaration identifier=\"R\" {declaration}</qti-response-declaration>\n<qti-item-body>{body}</qti-item-body>\n<qti-response-processing template=\"https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/{processing}\"/>\n</qti-assessment-item>"
    );
    read_one("a.xml", text.as_bytes(), Some("g3-facts-multiply"))
}

const PICK: &str = "<qti-choice-interaction response-identifier=\"R\" max-choices=\"0\"><qti-prompt>Which?</qti-prompt><qti-simple-choice identifier=\"A\">a</qti-simple-choice><qti-simple-choice identifier=\"B\">b</qti-simple-choice><qti-simple-choice identifier=\"C\">c</qti-simple-choice></qti-choice-interaction>";

/// The shape of the published `map_response` example: parts add up, and the bounds hold.
#[test]
fn only_what_gets_the_most_of_a_mapping_is_right() {
    let several = |mapping: &str| {
        item(
            &format!("cardinality=\"multiple\" base-type=\"identifier\">{mapping}"),
            PICK,
            "map_response.xml",
        )
    };
    let reading = several(
        "<qti-mapping default-value=\"-2\" upper-bound=\"2\"><qti-map-entry map-key=\"A\" mapped-value=\"1\"/><qti-map-entry map-key=\"C\" mapped-value=\"1\"/></qti-mapping>",
    );
    let own = &reading.taken[0].own;
    assert_eq!(own.answer, "0 2");
    let made = own.item().unwrap();
    for (indexes, right) in [
        (vec![0, 2], true),
        (vec![2, 0], true),
        (vec![0], false),
        (vec![0, 1, 2], false),
    ] {
        let response = Response::SeveralChoices { indexes };
        assert_eq!(mark(&made, &response).unwrap().right, right);
    }
    // A choice that costs nothing leaves two sets with the most.
    let loose = several(
        "<qti-mapping default-value=\"0\"><qti-map-entry map-key=\"A\" mapped-value=\"1\"/></qti-mapping>",
    );
    assert_eq!(codes(&loose), [(2, "several_best".into())]);
    // An upper bound below the sum does too.
    let bounded = several(
        "<qti-mapping default-value=\"-1\" upper-bound=\"1\"><qti-map-entry map-key=\"A\" mapped-value=\"1\"/><qti-map-entry map-key=\"B\" mapped-value=\"1\"/></qti-mapping>",
    );
    assert_eq!(codes(&bounded), [(2, "several_best".into())]);
    let none = several("<qti-mapping default-value=\"-1\"/>");
    assert_eq!(codes(&none), [(2, "none_best".into())]);
    let other = several(
        "<qti-correct-response><qti-value>B</qti-value></qti-correct-response><qti-mapping default-value=\"-1\"><qti-map-entry map-key=\"A\" mapped-value=\"1\"/></qti-mapping>",
    );
    assert_eq!(codes(&other), [(2, "keys_disagree".into())]);
}

#[test]
fn items_that_cannot_be_taken_say_why() {
    let single = "cardinality=\"single\" base-type=\"identifier\"><qti-correct-response><qti-value>A</qti-value></qti-correct-response>";
    let code = |reading: BankReading| codes(&reading).remove(0).1;
    assert_eq!(item(single, PICK, "match_correct").taken.len(), 1);
    assert_eq!(
        code(item(single, PICK, "map_response_point.xml")),
        "unknown_processing"
    );
    assert_eq!(
        code(item(single, &format!("{PICK}{PICK}"), "match_correct")),
        "not_one_question"
    );
    assert_eq!(
        code(item(single, "<p>x</p>", "match_correct")),
        "not_one_question"
    );
    assert_eq!(
        code(item(
            &single.replace("base-type=\"identifier\"", "base-type=\"point\""),
            PICK,
            "match_correct"
        )),
        "declaration_unfit"
    );
    assert_eq!(
        code(item(
            "cardinality=\"single\" base-type=\"identifier\">",
            PICK,
            "match_correct"
        )),
        "no_key"
    );
    assert_eq!(
        code(item(&single.replace(">A<", ">Z<"), PICK, "match_correct")),
        "not_a_choice"
    );
    let text = "cardinality=\"single\" base-type=\"string\"><qti-correct-response><qti-value>York</qti-value></qti-correct-response>";
    let gap = "<p>Where? <qti-text-entry-interaction response-identifier=\"R\"/></p>";
    assert_eq!(code(item(text, gap, "match_correct")), "bad_answer");
    for (text, wanted) in [
        ("<assessmentItem/>", "older_qti"),
        ("<html/>", "not_an_item"),
        ("<qti-assessment-item>", "not_xml"),
        ("<a></b>", "not_xml"),
        (
            "<!DOCTYPE a [<!ENTITY x \"y\">]><qti-assessment-item>&x;</qti-assessment-item>",
            "entities",
        ),
        (
            "<qti-assessment-item>&nbsp;</qti-assessment-item>",
            "entities",
        ),
        ("<qti-assessment-item/>", "empty"),
    ] {
        assert_eq!(
            code(read_one(
                "a.xml",
                text.as_bytes(),
                Some("g3-facts-multiply")
            )),
            wanted,
            "{text}"
        );
    }
    let deep = format!("{}{}", "<a>".repeat(200), "</a>".repeat(200));
    assert_eq!(
        code(read_one("a.xml", deep.as_bytes(), None)),
        "xml_too_large"
    );
    let wide = format!("<a>{}</a>", "<b/>".repeat(30_000));
    assert_eq!(
        code(read_one("a.xml", wide.as_bytes(), None)),
        "xml_too_large"
    );
    assert_eq!(
        code(read_one("a.xml", ITEMS[4].1, None)),
        "no_concept_chosen"
    );
    assert_eq!(
        code(read_one("a.csv", &vec![b'x'; MOST_FILE_BYTES + 1], None)),
        "file_too_large"
    );
}

proptest! {
    #![proptest_config(surefoot_test_support::long())]

    /// The readers answer, and what they take holds every rule.
    #[test]
    fn changed_question_banks(changes in surefoot_test_support::any_changes(), which in 0..8_usize) {
        let bytes = [CSV, FAULTS].into_iter().chain(ITEMS.iter().map(|(_, bytes)| *bytes)).nth(which).unwrap();
        let reading = read_one("changed", &surefoot_test_support::changed(bytes, &changes), Some("g3-facts-multiply"));
        for line in &reading.taken {
            line.own.check().unwrap();
            let made = line.own.item().unwrap();
            prop_assert!(mark(&made, &response_for(&made.answer)).unwrap().right);
        }
    }
}

#[test]
fn a_message_shows_the_words_as_they_stand() {
    let say = say_of(&Text::one(
        Language::first(),
        "100 % of { not }".replace(['{', '}'], "").as_str(),
    ))
    .unwrap();
    assert_eq!(
        text::say(Language::first().into(), &say).unwrap(),
        "100 % of  not "
    );
}
