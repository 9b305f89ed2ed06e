//! The class: its set-up, seats, roster, rotation, calendar and first lessons.

mod changes;
mod class_day;
pub(crate) mod concepts;
mod copy;
pub(crate) mod heard;
pub(crate) mod marks;
mod open;
mod pacing;
pub(crate) mod pacing_concept;
pub(crate) mod pacing_list;
mod pacing_when;
pub(crate) mod pack_stamp;
mod roster;
mod roster_columns;
mod roster_file;
mod roster_name;
mod roster_table;
mod seats;
mod setup;
mod views;
mod year_end;

pub use changes::{
    balanced_rotation, delete_class, move_year, rename_class, restore, unscheduled_concepts,
};
pub use class_day::{class_day, close_day};
pub use copy::copy_class;
pub(crate) use open::without_keys;
pub use open::{OpenClass, open_class};
pub use pacing::{choose_concepts, spread_first_lessons};
pub use pacing_list::{read_pacing, set_first_lessons};
pub use roster::{LONGEST_NAME_CHARACTERS, MOST_SEATS, read_roster};
pub use roster_file::{MOST_ROSTER_BYTES, read_roster_files};
pub use seats::{add_seats, move_seat, name_seat, remove_seat, seat_holdings};
pub(crate) use seats::{checked_name, class_signs, seat_code, seat_student};
pub(crate) use setup::checked_title;
pub use setup::{
    ClassSecrets, LONGEST_TITLE_CHARACTERS, class_ids, class_setup, classes, create_class,
    identities, set_closures, set_practice, set_rotation, set_taught_from,
};
pub use views::*;
pub use year_end::{classes_over, set_saves_packs, skip_pack_versions};
