//! Everything a teacher can print or save about a class, in one table.
//!
//! An entry says what a report asks for, how its file is called and what builds it. The
//! window, the command and the print screen read the table, and know no report by name.
//! Words for the list are the messages `report-name-NAME` and `report-about-NAME`.
//!
//! Must never know a door, a dialog or a clock.

mod builders;
pub mod list;
pub mod options;
pub mod report;
pub mod sheets;
mod table;
pub mod values;

pub use list::named;
pub use report::{Made, Report, ReportSource};
pub use table::REPORTS;
