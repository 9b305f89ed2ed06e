//! Prints that are saved, and prints that are refused.

use crate::support::Device;
use surefoot_app::{CallError, PrintOptions, PrintPaper, ReportAsked, ReportValues};
use surefoot_catalogue::Language;
use surefoot_exercises::Level;
use surefoot_record::{Field, Rule};

type Wanted<'a> = (&'a str, ReportValues);

fn asked(class: &str, (report, values): Wanted<'_>, language: Language) -> ReportAsked {
    ReportAsked {
        class: class.into(),
        report: report.into(),
        values,
        options: PrintOptions {
            language,
            paper: PrintPaper::A4,
            roomy: false,
        },
    }
}

fn sheet(concept: &str, count: u32) -> Wanted<'static> {
    let values = ReportValues {
        concepts: Some(vec![concept.into()]),
        level: Some(Level::Expected),
        count: Some(count),
        ..ReportValues::default()
    };
    ("sheet", values)
}

fn plain(report: &str) -> Wanted<'_> {
    (report, ReportValues::default())
}

#[test]
fn a_sheet_and_a_chart_are_saved_where_the_person_says() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Morning mathematics", &["Ana", "Bo"]).id;
    let concept = surefoot_exercises::concepts_with_exercises()
        .next()
        .unwrap();
    for what in [sheet(concept, 6), plain("chart"), plain("slips")] {
        let made = desk
            .app
            .desk
            .print(asked(&class, what, Language::tagged("es").unwrap()))
            .unwrap();
        let bytes = std::fs::read(desk.hands.saved.join(&made.file_name)).unwrap();
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
    let print = |class: &str, what| desk.app.desk.print(asked(class, what, Language::first()));
    let invalid = |rule| CallError::Invalid {
        field: Field::Amount,
        rule,
    };
    assert_eq!(print(&class, sheet(concept, 0)), Err(invalid(Rule::TooFew)));
    assert_eq!(
        print(&class, sheet(concept, 999)),
        Err(invalid(Rule::TooMany))
    );
    for (class, what) in [
        (class.as_str(), sheet("nothing-here", 3)),
        ("no-class", plain("chart")),
    ] {
        assert!(matches!(
            print(class, what),
            Err(CallError::NotFound { .. })
        ));
    }
    assert_eq!(std::fs::read_dir(&desk.hands.saved).unwrap().count(), 0);
}
