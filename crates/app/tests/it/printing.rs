//! Printing: what is saved, and what cannot be printed.

use crate::support::Device;
use surefoot_app::{CallError, PrintAsked, PrintLook, PrintPaper, Printed};
use surefoot_catalogue::Language;
use surefoot_exercises::Level;

fn asked(class: &str, what: Printed, language: Language) -> PrintAsked {
    PrintAsked {
        class: class.into(),
        what,
        look: PrintLook {
            language,
            paper: PrintPaper::A4,
            roomy: false,
        },
    }
}

fn sheet(concept: &str, count: u32) -> Printed {
    Printed::Sheet {
        concepts: vec![concept.into()],
        level: Level::Expected,
        count,
        with_key: true,
        seed: None,
    }
}

#[test]
fn a_sheet_and_a_chart_are_saved_where_the_person_says() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Morning mathematics", &["Ana", "Bo"]).id;
    let concept = surefoot_exercises::concepts_with_exercises()
        .next()
        .unwrap();
    let slips = Printed::Slips { with_names: true };
    for what in [sheet(concept, 6), Printed::Chart, slips] {
        let made = desk
            .app
            .print(asked(&class, what, Language::tagged("es").unwrap()))
            .unwrap();
        let bytes = std::fs::read(desk.hands.saved.join(&made.file_name)).unwrap();
        assert_eq!(bytes.len(), made.bytes);
        assert!(bytes.starts_with(b"%PDF-"));
    }
}

#[test]
fn what_cannot_be_printed_is_told_and_nothing_is_saved() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Morning mathematics", &["Ana"]).id;
    let concept = surefoot_exercises::concepts_with_exercises()
        .next()
        .unwrap();
    let print = |class: &str, what| desk.app.print(asked(class, what, Language::first()));
    let invalid = |rule: &str| CallError::Invalid {
        field: "amount".into(),
        rule: rule.into(),
    };
    assert_eq!(print(&class, sheet(concept, 0)), Err(invalid("too_few")));
    assert_eq!(print(&class, sheet(concept, 999)), Err(invalid("too_many")));
    for (class, what) in [
        (class.as_str(), sheet("nothing-here", 3)),
        ("no-class", Printed::Chart),
    ] {
        assert!(matches!(
            print(class, what),
            Err(CallError::NotFound { .. })
        ));
    }
    assert_eq!(std::fs::read_dir(&desk.hands.saved).unwrap().count(), 0);
}
