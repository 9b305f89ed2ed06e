//! The class: its set-up, seats, roster, rotation, calendar and first lessons.

mod changes;
mod copy;
mod pacing;
mod pacing_list;
pub(crate) mod roster;
mod roster_file;
mod roster_table;
pub(crate) mod setup;
mod year_end;

pub use changes::{
    balanced_rotation, bring_back, delete_class, move_year, remove_seat, rename_class,
    seat_holdings, spare_concepts,
};
pub use copy::copy_class;
pub use pacing::{choose_concepts, spread_first_lessons};
pub use pacing_list::{read_pacing, set_first_lessons};
pub use roster::{LONGEST_NAME_CHARACTERS, MOST_SEATS, read_roster};
pub use roster_file::{MOST_ROSTER_BYTES, read_roster_files};
pub use setup::{
    Chance, LONGEST_TITLE_CHARACTERS, add_seats, class_setup, classes, create_class, name_seat,
    set_closures, set_practice, set_rotation, set_taught_from,
};
pub use year_end::{classes_over, skip_pack_versions};
