//! Prints and tables: practice sheets, self-rating charts, pages for families and conferences,
//! class summaries, join slips, CSV and XLSX.
//!
//! `page` makes pages that the screens show too; `sheet`, `warm_up`, `chart`, `path` and `slips` make
//! prints only; `grid` makes tables for spreadsheets. All prints go through `flow`
//! (pages), `slab` and `mark` (laid-out content) and `pdf` (the file). The pages are tagged
//! PDF (PDF/UA-1). They have the same bytes on every device, but for words in a script that the
//! built-in fonts lack: a font of the system prints these.
//!
//! This crate is pure: values in, bytes out. It knows no store, no files but the system's
//! fonts, no clock and no random numbers.

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod built_in;
pub mod chart;
pub mod drawing;
pub mod entry;
pub mod error;
pub mod flow;
pub mod font;
mod glyph;
pub mod grid;
pub mod inline;
pub mod mark;
pub mod math;
pub mod page;
pub mod paper;
pub mod path;
mod pdf;
pub mod sheet;
pub mod slab;
pub mod slips;
mod system_fonts;
pub mod table;
pub mod warm_up;
pub mod words;

pub use error::ReportError;
pub use paper::{Density, Paper, PrintOptions};
