//! The table of reports. A new report needs an entry here, a builder and messages.

use super::builders as build;
use super::report::{Output, Report, ReportSection};
use super::values::ReportField::{
    Concepts, Count, Day, Group, Halves, Key, Level, Minutes, Names, Numbers, Paper, Seat,
    SeatOrAll, Space,
};
use crate::context::file_dialogs::FileKind;

/// Exercises of each concept on a sheet at most.
const MOST_OF_EACH: u32 = 20;

/// Exercises of each concept on a sheet for one student at most.
const MOST_OF_EACH_FOR_ONE: u32 = 5;

/// All reports, in the order of the Print screen.
pub const REPORTS: &[Report] = &[
    Report {
        name: "sheet",
        section: ReportSection::Sheet,
        fields: &[
            Concepts,
            Level,
            Count { most: MOST_OF_EACH },
            Key,
            Numbers,
            Paper,
            Space,
        ],
        file_name: "practice-{seed}",
        kind: FileKind::Pdf,
        output: Output::File {
            preview: Some(build::sheet_page),
            make: build::sheet,
        },
    },
    Report {
        name: "seat_sheet",
        section: ReportSection::SeatSheet,
        fields: &[
            Seat,
            Count {
                most: MOST_OF_EACH_FOR_ONE,
            },
            Key,
            Numbers,
            Paper,
            Space,
        ],
        file_name: "practice-seat-{seat}-{seed}",
        kind: FileKind::Pdf,
        output: Output::File {
            preview: Some(build::seat_sheet_page),
            make: build::seat_sheet,
        },
    },
    Report {
        name: "warm_up",
        section: ReportSection::WarmUp,
        fields: &[Day, Halves, Key, Paper],
        file_name: "warm-up-{day}",
        kind: FileKind::Pdf,
        output: Output::File {
            preview: Some(build::warm_up_page),
            make: build::warm_up,
        },
    },
    Report {
        name: "chart",
        section: ReportSection::Chart,
        fields: &[Paper, Space],
        file_name: "self-ratings",
        kind: FileKind::Pdf,
        output: Output::File {
            preview: Some(build::chart_page),
            make: build::chart,
        },
    },
    Report {
        name: "day_chart",
        section: ReportSection::Chart,
        fields: &[Day, Names, Paper],
        file_name: "class-chart-{day}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: true,
            build: build::day_chart,
        },
    },
    Report {
        name: "family",
        section: ReportSection::Report,
        fields: &[Seat, Paper],
        file_name: "family-seat-{seat}-{date}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: true,
            build: build::family,
        },
    },
    Report {
        name: "family_pages",
        section: ReportSection::Report,
        fields: &[Paper],
        file_name: "family-pages-{date}",
        kind: FileKind::Pdf,
        output: Output::File {
            preview: None,
            make: build::family_pages,
        },
    },
    Report {
        name: "conference",
        section: ReportSection::Report,
        fields: &[Seat, Paper],
        file_name: "conference-seat-{seat}-{date}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: true,
            build: build::conference,
        },
    },
    Report {
        name: "taught_again",
        section: ReportSection::Report,
        fields: &[SeatOrAll, Paper],
        file_name: "taught-again{one}-{date}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: false,
            build: build::taught_again,
        },
    },
    Report {
        name: "group",
        section: ReportSection::Report,
        fields: &[Group, Paper],
        file_name: "small-group-{date}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: true,
            build: build::group,
        },
    },
    Report {
        name: "talk",
        section: ReportSection::Report,
        fields: &[Minutes, Paper],
        file_name: "talk-{date}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: false,
            build: build::talk,
        },
    },
    Report {
        name: "substitute",
        section: ReportSection::Report,
        fields: &[Day, Minutes, Names, Paper],
        file_name: "substitute-{date}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: true,
            build: build::substitute,
        },
    },
    Report {
        name: "class_summary",
        section: ReportSection::Report,
        fields: &[Paper],
        file_name: "class-summary-{date}",
        kind: FileKind::Pdf,
        output: Output::Page {
            fits_one_sheet: false,
            build: build::class_summary,
        },
    },
    Report {
        name: "share_safe",
        section: ReportSection::Report,
        fields: &[Paper],
        file_name: "class-table-{date}",
        kind: FileKind::Pdf,
        output: Output::File {
            preview: Some(build::share_safe_page),
            make: build::share_safe,
        },
    },
    Report {
        name: "workbook",
        section: ReportSection::Table,
        fields: &[],
        file_name: "board-{date}",
        kind: FileKind::Xlsx,
        output: Output::File {
            preview: None,
            make: build::workbook,
        },
    },
    Report {
        name: "board_csv",
        section: ReportSection::Table,
        fields: &[],
        file_name: "board-{date}",
        kind: FileKind::Csv,
        output: Output::File {
            preview: None,
            make: build::board_csv,
        },
    },
    Report {
        name: "summary_csv",
        section: ReportSection::Table,
        fields: &[],
        file_name: "class-summary-{date}",
        kind: FileKind::Csv,
        output: Output::File {
            preview: None,
            make: build::summary_csv,
        },
    },
    Report {
        name: "slips",
        section: ReportSection::Slips,
        fields: &[SeatOrAll, Names, Paper],
        file_name: "join-slips{one}",
        kind: FileKind::Pdf,
        output: Output::File {
            preview: None,
            make: build::slips,
        },
    },
];
