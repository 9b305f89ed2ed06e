//! The set-up of a class, and its class pack.

use super::{ClassId, DeskDoor, SeatId};
use crate::context::file_dialogs::FileKind;
use crate::context::folder::{make_folder, write_private};
use crate::context::random;
use crate::context::settings::World;
use crate::context::values::FileMade;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::ClassSecrets;
use surefoot_desk::{
    ClassSetup, ClassSummary, CopyClass, JoinSlip, NewClass, PacingList, PlacedConcept,
    SeatHoldings,
};
use surefoot_record::PracticeRules;
use surefoot_store::DeskStore;
use ts_rs::TS;

/// A new class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CreateClass {
    /// The new class.
    pub class: NewClass,
}

/// A seat's new name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NameSeat {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
    /// The name; `None` removes it.
    pub name: Option<String>,
}

/// More seats.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AddSeats {
    /// The class.
    pub class: String,
    /// Their names; an empty text is a seat without a name.
    pub names: Vec<String>,
}

/// A class's new title.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RenameClass {
    /// The class.
    pub class: String,
    /// The teacher's name for it, 1 to 60 characters.
    pub title: String,
}

/// The first day, the last day and the weekdays of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MoveYear {
    /// The class.
    pub class: String,
    /// First day of the year.
    pub first_day: chrono::NaiveDate,
    /// Last day of the year.
    pub last_day: chrono::NaiveDate,
    /// Weekdays on which the class meets, 1 is Monday.
    #[ts(type = "number[]")]
    pub weekdays: std::collections::BTreeSet<u8>,
}

/// The date of a concept's first lesson.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TaughtFrom {
    /// The class.
    pub class: String,
    /// The concept.
    pub concept: String,
    /// The date; `None` if the concept is not taught this year.
    pub date: Option<chrono::NaiveDate>,
}

/// A pasted pacing list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingText {
    /// The class.
    pub class: String,
    /// As pasted.
    pub text: String,
}

/// First lessons of several concepts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FirstLessons {
    /// The class.
    pub class: String,
    /// Each concept with the date of its first lesson; `None` removes it.
    pub lessons: Vec<(String, Option<chrono::NaiveDate>)>,
}

/// A rotation to suggest.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RotationDays {
    /// The class.
    pub class: String,
    /// Days in the rotation.
    pub days: usize,
}

/// An edited rotation.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewRotation {
    /// The class.
    pub class: String,
    /// The ids of the concepts, day by day.
    pub days: Vec<Vec<String>>,
}

/// The edited closures.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewClosures {
    /// The class.
    pub class: String,
    /// Dates without school.
    pub closures: Vec<chrono::NaiveDate>,
}

/// The bounds of practice at home.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewPractice {
    /// The class.
    pub class: String,
    /// The bounds, and the test it aims at.
    pub practice: PracticeRules,
}

/// A decision on a device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceDecision {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
    /// The device's number at this desk.
    #[ts(type = "number")]
    pub device: i64,
    /// Whether it is accepted or rejected; `None` quarantines it.
    pub accept: Option<bool>,
}

/// A device of a seat.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceOfSeat {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
    /// The device's number at this desk.
    #[ts(type = "number")]
    pub device: i64,
}

fn class_secrets() -> Result<ClassSecrets, CallError> {
    Ok(ClassSecrets {
        sealing: random::bytes()?,
        signing: random::bytes()?,
        seats: random::bytes()?,
    })
}

impl DeskDoor {
    pub(super) fn setup_after(
        &self,
        class: &str,
        work: impl FnOnce(&DeskStore) -> Result<(), CallError>,
    ) -> Result<ClassSetup, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_desk(|desk| {
            work(desk)?;
            Ok(surefoot_desk::class_setup(desk, class, language, today)?)
        })
    }

    /// Makes a class.
    pub fn create_class(&self, new: CreateClass) -> Result<ClassSummary, CallError> {
        let today = self.context.today();
        let secrets = class_secrets()?;
        self.with_desk(|desk| {
            Ok(surefoot_desk::create_class(
                desk, &new.class, &secrets, today,
            )?)
        })
    }

    /// Makes a class with the set-up of an earlier one.
    pub fn copy_class(&self, copy: CopyClass) -> Result<ClassSummary, CallError> {
        let today = self.context.today();
        let secrets = class_secrets()?;
        self.with_desk(|desk| Ok(surefoot_desk::copy_class(desk, &copy, &secrets, today)?))
    }

    /// A class's set-up.
    pub fn class_setup(&self, id: ClassId) -> Result<ClassSetup, CallError> {
        self.setup_after(&id.class, |_| Ok(()))
    }

    /// Names a seat.
    pub fn name_seat(&self, new: NameSeat) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::name_seat(
                desk,
                &new.class,
                new.seat,
                new.name.as_deref(),
            )?)
        })
    }

    /// Adds seats.
    pub fn add_seats(&self, new: AddSeats) -> Result<ClassSetup, CallError> {
        let seed = random::bytes()?;
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::add_seats(
                desk, &new.class, &new.names, &seed,
            )?)
        })
    }

    /// Renames the class.
    pub fn rename_class(&self, new: RenameClass) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::rename_class(desk, &new.class, &new.title)?)
        })
    }

    /// Changes first day, last day and weekdays.
    pub fn move_year(&self, new: MoveYear) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::move_year(
                desk,
                &new.class,
                new.first_day,
                new.last_day,
                new.weekdays.clone(),
            )?)
        })
    }

    /// Counts what the desk has of a seat.
    pub fn seat_holdings(&self, id: SeatId) -> Result<SeatHoldings, CallError> {
        self.with_desk(|desk| Ok(surefoot_desk::seat_holdings(desk, &id.class, id.seat)?))
    }

    /// Concepts of the catalogue that are not in the rotation.
    pub fn unscheduled_concepts(&self, id: ClassId) -> Result<Vec<PlacedConcept>, CallError> {
        let language = self.context.language();
        self.with_desk(|desk| {
            Ok(surefoot_desk::unscheduled_concepts(
                desk, &id.class, language,
            )?)
        })
    }

    /// Sets the date of a concept's first lesson.
    pub fn set_taught_from(&self, new: TaughtFrom) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::set_taught_from(
                desk,
                &new.class,
                &new.concept,
                new.date,
            )?)
        })
    }

    /// Reads a pacing list and changes nothing.
    pub fn read_pacing(&self, asked: PacingText) -> Result<PacingList, CallError> {
        let language = self.context.language();
        self.with_class(&asked.class, |_, class| {
            Ok(surefoot_desk::read_pacing(class, &asked.text, language))
        })
    }

    /// Sets the first lessons of several concepts: all of them, or none if one is invalid.
    pub fn set_first_lessons(&self, new: FirstLessons) -> Result<ClassSetup, CallError> {
        let class = new.class;
        self.setup_after(&class, |desk| {
            let lessons = new.lessons.into_iter().collect();
            Ok(surefoot_desk::set_first_lessons(desk, &class, &lessons)?)
        })
    }

    /// Suggests a rotation with days of equal size, and changes nothing.
    pub fn balanced_rotation(&self, asked: RotationDays) -> Result<Vec<Vec<String>>, CallError> {
        self.with_desk(|desk| {
            Ok(surefoot_desk::balanced_rotation(
                desk,
                &asked.class,
                asked.days,
            )?)
        })
    }

    /// Replaces the rotation.
    pub fn set_rotation(&self, new: NewRotation) -> Result<ClassSetup, CallError> {
        let class = new.class;
        self.setup_after(&class, |desk| {
            Ok(surefoot_desk::set_rotation(desk, &class, new.days)?)
        })
    }

    /// Replaces the closures.
    pub fn set_closures(&self, new: NewClosures) -> Result<ClassSetup, CallError> {
        let class = new.class;
        self.setup_after(&class, |desk| {
            Ok(surefoot_desk::set_closures(
                desk,
                &class,
                new.closures.into_iter().collect(),
            )?)
        })
    }

    /// Sets the bounds of practice at home, and the test it aims at.
    pub fn set_practice(&self, new: NewPractice) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::set_practice(desk, &new.class, new.practice)?)
        })
    }

    /// The join slips.
    pub fn join_slips(&self, id: ClassId) -> Result<Vec<JoinSlip>, CallError> {
        self.with_class(&id.class, |_, class| Ok(surefoot_desk::join_slips(class)?))
    }

    /// Makes the class pack and saves it where the person chooses; in the sample class, in the
    /// folder of its class packs.
    pub fn save_class_pack(&self, id: ClassId) -> Result<FileMade, CallError> {
        let today = self.context.today();
        let made = self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::make_class_pack(desk, class, today)?)
        })?;
        let place = match self.context.world() {
            World::Sample => {
                let folder = self.context.data().class_packs();
                make_folder(&folder)?;
                write_private(&folder.join(&made.file_name), &made.bytes)?;
                Some(String::new())
            }
            World::Own => {
                self.context
                    .dialogs
                    .save(&made.file_name, FileKind::ClassPack, &made.bytes)?
            }
        };
        Ok(FileMade {
            file_name: made.file_name,
            place,
        })
    }

    /// Accepts or rejects a device.
    pub fn decide_device(&self, decision: DeviceDecision) -> Result<ClassSetup, CallError> {
        self.setup_after(&decision.class, |desk| {
            let class = surefoot_desk::open_class(desk, &decision.class)?;
            Ok(surefoot_desk::decide_device(
                desk,
                &class,
                decision.seat,
                decision.device,
                decision.accept,
            )?)
        })
    }

    /// Discards a device that does not count, with everything that it brought.
    pub fn discard_device(&self, of: DeviceOfSeat) -> Result<ClassSetup, CallError> {
        self.setup_after(&of.class, |desk| {
            let class = surefoot_desk::open_class(desk, &of.class)?;
            Ok(surefoot_desk::discard_device(
                desk, &class, of.seat, of.device,
            )?)
        })
    }
}
