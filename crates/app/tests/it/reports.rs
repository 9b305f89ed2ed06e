//! Reports: previews, releases, and prints for a student.

use crate::support::{Device, class_and_tablet, date, rate};
use surefoot_app::reports::REPORTS;
use surefoot_app::{
    CallError, ClassId, Entries, EntryAsked, Language, Nothing, PathPrint, PrintOptions,
    PrintPaper, ReportAsked, ReportField, ReportValues, SeatId, StudentPrint,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{EntryMade, EntryValue};
use surefoot_record::{Field, Rule};

const TODAY: &str = "2026-11-24";

/// A class of 24 that rated a day of late November on paper.
fn rated_class() -> (Device, String) {
    let desk = Device::on(TODAY);
    let names: Vec<String> = (1..=24).map(|n| format!("Name{n}x")).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let class = desk.new_class("Room 9 (invented)", &names).id;
    let day = desk
        .app
        .desk
        .entry_day(EntryAsked {
            class: class.clone(),
            date: None,
        })
        .unwrap();
    let rating = |seat| {
        if seat <= 10 {
            Confidence::NotYet
        } else {
            Confidence::OnMyOwn
        }
    };
    let cells = day.concepts.iter().flat_map(|concept| {
        (1..=24).map(move |seat| EntryMade {
            seat,
            concept: concept.id.clone(),
            value: EntryValue::Rating {
                rating: Some(rating(seat)),
            },
        })
    });
    let made = Entries {
        class: class.clone(),
        date: date(TODAY),
        made: cells.collect(),
    };
    desk.app.desk.make_entries(made).unwrap();
    (desk, class)
}

fn asked(class: &str, report: &str, values: ReportValues) -> ReportAsked {
    ReportAsked {
        class: class.into(),
        report: report.into(),
        values,
        options: PrintOptions {
            language: Language::first(),
            paper: PrintPaper::Letter,
            roomy: true,
        },
    }
}

fn seat(seat: u32) -> ReportValues {
    ReportValues {
        seat: Some(seat),
        ..ReportValues::default()
    }
}

fn shown(desk: &Device, class: &str, report: &str, values: ReportValues) -> String {
    let page = desk.app.desk.preview(asked(class, report, values));
    serde_json::to_string(&page.unwrap()).unwrap()
}

fn print(
    desk: &Device,
    class: &str,
    report: &str,
    values: ReportValues,
) -> Result<String, CallError> {
    let made = desk.app.desk.print(asked(class, report, values))?;
    Ok(made.file_name)
}

/// Values for what a report asks for: a seat, or a group of seats.
pub(crate) fn values_for(
    fields: &[ReportField],
    concept: &str,
    seat: u32,
    group: &[u32],
) -> ReportValues {
    let mut values = ReportValues::default();
    for field in fields {
        match field {
            ReportField::Seat => values.seat = Some(seat),
            ReportField::Group => {
                values.concept = Some(concept.into());
                values.seats = Some(group.to_vec());
            }
            ReportField::Minutes => values.minutes = Some(5),
            ReportField::Concepts => values.concepts = Some(vec![concept.into()]),
            ReportField::Level => values.level = Some(surefoot_exercises::Level::Expected),
            ReportField::Count { most } => values.count = Some(2.min(*most)),
            ReportField::Key => values.with_key = Some(true),
            ReportField::Names => values.with_names = Some(true),
            ReportField::Numbers => values.seed = Some(7),
            ReportField::SeatOrAll | ReportField::Day | ReportField::Paper | ReportField::Space => {
            }
        }
    }
    values
}

#[test]
fn every_report_of_the_table_is_listed_looked_at_and_saved_in_every_language() {
    let (desk, class) = rated_class();
    let day = desk.app.desk.entry_day(EntryAsked {
        class: class.clone(),
        date: None,
    });
    let concept = day.unwrap().concepts[0].id.clone();
    for &language in Language::all() {
        let mut settings = desk.app.device.start(Nothing {}).unwrap().settings;
        settings.language = language;
        desk.app.device.save_device_settings(settings).unwrap();
        let listed = desk.app.desk.reports(Nothing {}).unwrap();
        assert_eq!(listed.len(), REPORTS.len());
        for report in listed {
            assert!(!report.title.is_empty() && !report.about.is_empty());
            let mut wanted = asked(
                &class,
                &report.name,
                values_for(&report.fields, &concept, 3, &[1, 2, 3]),
            );
            wanted.options.language = language;
            assert_eq!(
                desk.app.desk.preview(wanted.clone()).is_ok(),
                report.previewed
            );
            let made = desk.app.desk.print(wanted).unwrap();
            let bytes = std::fs::read(desk.hands.saved.join(&made.file_name)).unwrap();
            assert!(!bytes.is_empty(), "{}", report.name);
        }
    }
}

#[test]
fn a_report_is_refused_without_a_value_and_with_one_that_it_does_not_ask_for() {
    let (desk, class) = rated_class();
    let refused = |report: &str, values, detail: &str| {
        let error = CallError::BadArguments {
            detail: detail.into(),
        };
        assert_eq!(print(&desk, &class, report, values), Err(error));
    };
    let none = ReportValues::default();
    refused("family", none, "the report asks for seat");
    refused("chart", seat(3), "the report does not ask for seat");
    assert!(matches!(
        print(&desk, &class, "horoscope", seat(3)),
        Err(CallError::NotFound { what }) if what == "report"
    ));
}

#[test]
fn a_family_page_names_one_student_and_nobody_while_names_are_covered() {
    let (desk, class) = rated_class();
    let page = shown(&desk, &class, "family", seat(3));
    assert!(page.contains("Name3x"));
    assert!(
        (1..=24)
            .filter(|n| *n != 3)
            .all(|n| !page.contains(&format!("Name{n}x")))
    );
    let mut settings = desk.app.device.start(Nothing {}).unwrap().settings;
    settings.names_covered = true;
    desk.app.device.save_device_settings(settings).unwrap();
    for report in ["family", "conference"] {
        assert!(!shown(&desk, &class, report, seat(3)).contains("Name"));
    }
    assert!(matches!(
        print(&desk, &class, "family", seat(99)),
        Err(CallError::NotFound { .. })
    ));
}

#[test]
fn a_sheet_is_looked_at_before_it_is_printed_and_has_the_same_exercises() {
    let (desk, class) = rated_class();
    let sheet = |seed| ReportValues {
        count: Some(2),
        with_key: Some(true),
        seed,
        ..seat(3)
    };
    let looked = |seed| shown(&desk, &class, "seat_sheet", sheet(seed));
    assert_eq!(looked(Some(7)), looked(Some(7)));
    assert_ne!(looked(Some(7)), looked(Some(8)));
    assert!(looked(Some(7)).contains("Name3x"));
    let made = desk
        .app
        .desk
        .print(asked(&class, "seat_sheet", sheet(Some(7))))
        .unwrap();
    assert!(made.file_name.ends_with("-7.pdf"), "{}", made.file_name);
    let chart = desk
        .app
        .desk
        .preview(asked(&class, "chart", ReportValues::default()))
        .unwrap();
    assert!(chart.parts.len() > 10);
    let mut settings = desk.app.device.start(Nothing {}).unwrap().settings;
    settings.names_covered = true;
    desk.app.device.save_device_settings(settings).unwrap();
    assert!(!looked(Some(7)).contains("Name3x"));
}

#[test]
fn the_pages_of_all_families_are_one_file_without_those_who_have_not_reported() {
    let (desk, class) = rated_class();
    let pages = |class: &str| {
        desk.app
            .desk
            .print(asked(class, "family_pages", ReportValues::default()))
    };
    let made = pages(&class).unwrap();
    let all = std::fs::read(desk.hands.saved.join(&made.file_name)).unwrap();
    let one = print(&desk, &class, "family", seat(3)).unwrap();
    let one = std::fs::read(desk.hands.saved.join(one)).unwrap();
    assert!(all.starts_with(b"%PDF") && all.len() > 3 * one.len());
    let empty = desk.new_class("Room 8 (invented)", &["Ann"]).id;
    assert!(matches!(
        pages(&empty),
        Err(CallError::Invalid { field, .. }) if field == Field::Students
    ));
}

#[test]
fn a_table_for_the_school_is_refused_after_too_small_a_change() {
    let (desk, class) = rated_class();
    let page = shown(&desk, &class, "share_safe", ReportValues::default());
    assert!(!page.contains("Name") && !page.contains("Seat"));
    // A preview records no release.
    for _ in 0..2 {
        print(&desk, &class, "share_safe", ReportValues::default()).unwrap();
    }
    desk.app
        .desk
        .remove_seat(SeatId {
            class: class.clone(),
            seat: 24,
        })
        .unwrap();
    assert!(
        shown(&desk, &class, "share_safe", ReportValues::default())
            .contains("cannot be handed out")
    );
    let refused = CallError::Invalid {
        field: Field::ShareTable,
        rule: Rule::TooFewChanged,
    };
    assert_eq!(
        print(&desk, &class, "share_safe", ReportValues::default()),
        Err(refused)
    );
}

#[test]
fn tables_are_saved_without_a_name_and_a_seat_gets_a_sheet() {
    let (desk, class) = rated_class();
    for (table, name) in [
        ("board_csv", "board-2026-11-24.csv"),
        ("summary_csv", "class-summary-2026-11-24.csv"),
        ("workbook", "board-2026-11-24.xlsx"),
    ] {
        let made = print(&desk, &class, table, ReportValues::default()).unwrap();
        assert!(made.ends_with(&format!("-{name}")), "{made}");
        let bytes = std::fs::read(desk.hands.saved.join(&made)).unwrap();
        assert!(!String::from_utf8_lossy(&bytes).contains("Name"));
    }
    let values = ReportValues {
        count: Some(2),
        ..seat(1)
    };
    let made = print(&desk, &class, "seat_sheet", values).unwrap();
    assert!(made.contains("-practice-seat-1-"));
    let classes = desk.app.desk.class_setup(ClassId { class });
    assert_eq!(classes.unwrap().seats.len(), 24);
}

#[test]
fn one_slip_is_made_alone_and_names_without_a_font_are_told() {
    let desk = Device::on(TODAY);
    // No font has a sign for a code point that is not a character.
    let class = desk
        .new_class("Room 9 (invented)", &["Ana", "Bao \u{10fffe}"])
        .id;
    let slips = |values| print(&desk, &class, "slips", values);
    let size = |name: &str| {
        std::fs::metadata(desk.hands.saved.join(name))
            .unwrap()
            .len()
    };
    let all = slips(ReportValues::default()).unwrap();
    let one = slips(seat(1)).unwrap();
    assert_eq!(one, "room-9--invented-join-slips-seat-1.pdf");
    assert!(size(&one) < size(&all));
    assert!(matches!(slips(seat(99)), Err(CallError::NotFound { .. })));
    let told = desk.app.desk.without_font(ClassId {
        class: class.clone(),
    });
    let told = told.unwrap();
    assert_eq!(told.len(), 1);
    assert_eq!(
        (told[0].seat, told[0].signs.as_str()),
        (Some(2), "\u{10fffe}")
    );
}

#[test]
fn a_student_prints_the_evening_and_the_path() {
    let (_desk, _class, tablet, student) = class_and_tablet("2026-09-16");
    rate(&tablet, &student, Confidence::NotYet);
    let asked = StudentPrint {
        student,
        paper: PrintPaper::A4,
    };
    for made in [
        tablet.app.student.print_practice(asked.clone()).unwrap(),
        tablet
            .app
            .student
            .print_path(PathPrint {
                student: asked.student.clone(),
                paper: asked.paper,
                with_goals: true,
            })
            .unwrap(),
    ] {
        let bytes = std::fs::read(tablet.hands.saved.join(&made.file_name)).unwrap();
        assert!(bytes.starts_with(b"%PDF-"));
    }
    // Printing changes nothing, so it can be repeated.
    assert!(tablet.app.student.print_practice(asked).is_ok());
}
