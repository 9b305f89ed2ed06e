//! Reports: what is shown, what is noted, and prints of a student's own.

use crate::support::{Device, class_and_tablet, date, rate};
use surefoot_app::{
    CallError, ClassId, Entries, EntryAsked, Nothing, PathPrint, PrintAsked, PrintLook, PrintPaper,
    Printed, ReportWanted, SeatId, StudentPrint, TableAsked, TableWanted,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{EntryMade, EntryValue};

const TODAY: &str = "2026-11-24";

/// A class of 24 that rated a day of late November on paper.
fn rated_class() -> (Device, String) {
    let desk = Device::on(TODAY);
    let names: Vec<String> = (1..=24).map(|n| format!("Name{n}x")).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let class = desk.new_class("Room 9 (invented)", &names).id;
    let day = desk
        .app
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
    desk.app.make_entries(made).unwrap();
    (desk, class)
}

fn asked(class: &str, what: Printed) -> PrintAsked {
    PrintAsked {
        class: class.into(),
        what,
        look: PrintLook {
            language: Language::En,
            paper: PrintPaper::Letter,
            roomy: true,
        },
    }
}

fn shown(desk: &Device, class: &str, report: ReportWanted) -> String {
    let page = desk.app.preview(asked(class, Printed::Report { report }));
    serde_json::to_string(&page.unwrap()).unwrap()
}

fn print(desk: &Device, class: &str, report: ReportWanted) -> Result<String, CallError> {
    let made = desk.app.print(asked(class, Printed::Report { report }))?;
    Ok(made.file_name)
}

#[test]
fn a_family_page_names_one_student_and_nobody_while_names_are_covered() {
    let (desk, class) = rated_class();
    let page = shown(&desk, &class, ReportWanted::Family { seat: 3 });
    assert!(page.contains("Name3x"));
    assert!(
        (1..=24)
            .filter(|n| *n != 3)
            .all(|n| !page.contains(&format!("Name{n}x")))
    );
    let mut settings = desk.app.start(Nothing {}).unwrap().settings;
    settings.names_covered = true;
    desk.app.save_device_settings(settings).unwrap();
    for report in [
        ReportWanted::Family { seat: 3 },
        ReportWanted::Conference { seat: 3 },
    ] {
        assert!(!shown(&desk, &class, report).contains("Name"));
    }
    assert!(matches!(
        print(&desk, &class, ReportWanted::Family { seat: 99 }),
        Err(CallError::NotFound { .. })
    ));
}

#[test]
fn a_sheet_is_looked_at_before_it_is_printed_and_has_the_same_exercises() {
    let (desk, class) = rated_class();
    let sheet = |seed| Printed::SeatSheet {
        seat: 3,
        count: 2,
        with_key: true,
        seed,
    };
    let looked = |seed| {
        let page = desk.app.preview(asked(&class, sheet(seed))).unwrap();
        serde_json::to_string(&page).unwrap()
    };
    assert_eq!(looked(Some(7)), looked(Some(7)));
    assert_ne!(looked(Some(7)), looked(Some(8)));
    assert!(looked(Some(7)).contains("Name3x"));
    let made = desk.app.print(asked(&class, sheet(Some(7)))).unwrap();
    assert!(made.file_name.ends_with("-7.pdf"), "{}", made.file_name);
    let chart = desk.app.preview(asked(&class, Printed::Chart)).unwrap();
    assert!(chart.parts.len() > 10);
    let mut settings = desk.app.start(Nothing {}).unwrap().settings;
    settings.names_covered = true;
    desk.app.save_device_settings(settings).unwrap();
    assert!(!looked(Some(7)).contains("Name3x"));
}

#[test]
fn the_pages_of_all_families_are_one_file_without_those_who_have_not_reported() {
    let (desk, class) = rated_class();
    let pages = |class: &str| desk.app.print(asked(class, Printed::FamilyPages));
    let made = pages(&class).unwrap();
    let all = std::fs::read(desk.hands.saved.join(&made.file_name)).unwrap();
    let one = print(&desk, &class, ReportWanted::Family { seat: 3 }).unwrap();
    let one = std::fs::read(desk.hands.saved.join(one)).unwrap();
    assert!(all.starts_with(b"%PDF") && all.len() > 3 * one.len());
    let empty = desk.new_class("Room 8 (invented)", &["Ann"]).id;
    assert!(matches!(
        pages(&empty),
        Err(CallError::Invalid { field, .. }) if field == "students"
    ));
}

#[test]
fn a_table_for_the_school_is_refused_for_nearly_the_same_class() {
    let (desk, class) = rated_class();
    let page = shown(&desk, &class, ReportWanted::ShareSafe);
    assert!(!page.contains("Name") && !page.contains("Seat"));
    // Looking notes nothing: the table may be handed out, and again.
    for _ in 0..2 {
        print(&desk, &class, ReportWanted::ShareSafe).unwrap();
    }
    desk.app
        .remove_seat(SeatId {
            class: class.clone(),
            seat: 24,
        })
        .unwrap();
    assert!(shown(&desk, &class, ReportWanted::ShareSafe).contains("cannot be handed out"));
    let refused = CallError::Invalid {
        field: "share_table".into(),
        rule: "nearly_same_class".into(),
    };
    assert_eq!(print(&desk, &class, ReportWanted::ShareSafe), Err(refused));
}

#[test]
fn tables_are_saved_and_a_seat_gets_a_sheet() {
    let (desk, class) = rated_class();
    for (table, name) in [
        (TableWanted::BoardCsv, "board-2026-11-24.csv"),
        (TableWanted::SummaryCsv, "class-summary-2026-11-24.csv"),
        (TableWanted::Workbook, "board-2026-11-24.xlsx"),
    ] {
        let made = desk
            .app
            .save_table(TableAsked {
                class: class.clone(),
                table,
                language: Language::Es,
            })
            .unwrap();
        assert_eq!(made.file_name, name);
        let bytes = std::fs::read(desk.hands.saved.join(name)).unwrap();
        assert!(!String::from_utf8_lossy(&bytes).contains("Name"));
    }
    let made = desk.app.print(PrintAsked {
        class: class.clone(),
        what: Printed::SeatSheet {
            seat: 1,
            count: 2,
            with_key: true,
            seed: None,
        },
        look: PrintLook {
            language: Language::En,
            paper: PrintPaper::A4,
            roomy: false,
        },
    });
    assert!(made.unwrap().file_name.starts_with("practice-seat-1-"));
    let classes = desk.app.class_setup(ClassId { class });
    assert_eq!(classes.unwrap().seats.len(), 24);
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
        tablet.app.print_practice(asked.clone()).unwrap(),
        tablet
            .app
            .print_path(PathPrint {
                student: asked.student.clone(),
                paper: asked.paper,
                with_goals: true,
            })
            .unwrap(),
    ] {
        let bytes = std::fs::read(tablet.hands.saved.join(&made.file_name)).unwrap();
        assert!(bytes.starts_with(b"%PDF-") && bytes.len() == made.bytes);
    }
    // The same evening prints in the same order; nothing was used up by it.
    assert!(tablet.app.print_practice(asked).is_ok());
}
