//! The table of reports: everything that a teacher can print or save about a class.
//!
//! An entry has the fields that a report asks for, the name of its file and its builder. The
//! command and the Print screen read the table and know no report by name. The words for the
//! list are the messages `report-name-NAME` and `report-about-NAME`.
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
