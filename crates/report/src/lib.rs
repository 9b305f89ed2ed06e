//! What leaves Surefoot on paper and in tables: practice sheets, charts, family
//! and conference pages, class summaries, CSV and XLSX.
//!
//! Pure: values in, bytes out. No files, no clock, no chance. The pages are
//! tagged PDF (PDF/UA-1), the same bytes on every device.

pub mod chart;
pub mod drawing;
pub mod entry;
pub mod error;
pub mod flow;
pub mod font;
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
pub mod table;
pub mod words;

pub use error::ReportError;
pub use paper::{Density, Look, Paper};
