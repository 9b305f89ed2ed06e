//! Calls of the teacher's screens.

use crate::app::{App, files, lock};
use crate::copies::make_copy;
use crate::roster_files::roster_files;
use crate::zip_files::unzipped;
use crate::{
    AddSeats, Assign, AssignmentId, CallError, ClassConcept, ClassId, CreateClass, DeviceDecision,
    FileKind, FileSource, FirstLessons, GroupBoard, ImportAsked, ImportFrom, JobId, JobResult,
    MoveYear, NameSeat, NewClosures, NewPractice, NewRotation, Nothing, PacingText, Progress,
    RemovedWhat, RenameClass, RosterNames, RosterText, RotationDays, SeatId, Start, StoreName,
    TaughtFrom, World, chance, files_in, write_atomic,
};
use chrono::NaiveDate;
use std::fs;
use std::path::Path;
use std::sync::mpsc;
use std::thread;
use surefoot_desk::{self, ClassSecrets, Import, OpenClass};
use surefoot_desk::{
    AssignmentReport, Board, ClassSetup, ClassSummary, ConceptReports, CopyClass, FileMade,
    ImportReport, JoinSlip, PacingList, PlacedConcept, RosterFile, SeatHoldings,
};
use surefoot_store::{DeskStore, Durability};

/// Files that may stand opened while the desk is busy with the one before them.
const OPENED_AHEAD: usize = 4;

/// Imports every file, one after the other; the next ones are opened meanwhile.
/// A stop takes effect between two files; what was taken in stays.
///
/// # Errors
/// The store's.
pub fn import_files(
    desk: &DeskStore,
    sources: Vec<FileSource>,
    today: NaiveDate,
    progress: &Progress,
) -> Result<ImportReport, CallError> {
    let sources = unzipped(sources);
    progress.expect(sources.len());
    let import = Import::begin(desk, today)?;
    let opener = import.opener();
    let (opened, waiting) = mpsc::sync_channel(OPENED_AHEAD);
    let stopped = thread::scope(|scope| -> Result<bool, CallError> {
        scope.spawn(move || {
            for source in sources {
                let name = source.name().to_owned();
                // Nobody waits any more after a stop or an error.
                if opened.send((name, opener.open(source.open()))).is_err() {
                    break;
                }
            }
        });
        for (name, file) in waiting {
            if progress.stopped() {
                return Ok(true);
            }
            import.take(&name, file)?;
            progress.step();
        }
        Ok(false)
    })?;
    Ok(import.end(stopped)?)
}

fn chance_for_a_class() -> Result<ClassSecrets, CallError> {
    Ok(ClassSecrets {
        class_id: chance::bytes()?,
        sealing: chance::bytes()?,
        signing: chance::bytes()?,
        seats: chance::bytes()?,
    })
}

impl App {
    pub(crate) fn with_class<T>(
        &self,
        class: &str,
        work: impl FnOnce(&DeskStore, &OpenClass) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.with_desk(|desk| work(desk, &surefoot_desk::open_class(desk, class)?))
    }

    fn setup_after(
        &self,
        class: &str,
        work: impl FnOnce(&DeskStore) -> Result<(), CallError>,
    ) -> Result<ClassSetup, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_desk(|desk| {
            work(desk)?;
            Ok(surefoot_desk::class_setup(desk, class, language, today)?)
        })
    }

    /// The names in a pasted roster.
    ///
    /// # Errors
    /// None.
    pub fn read_roster(&self, roster: RosterText) -> Result<RosterNames, CallError> {
        let (names, left_out) = surefoot_desk::read_roster(&roster.text);
        Ok(RosterNames { names, left_out })
    }

    /// Makes a class.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::Calendar`], [`CallError::Rotation`], or the store's.
    pub fn create_class(&self, new: CreateClass) -> Result<ClassSummary, CallError> {
        let today = self.this_day();
        let chance = chance_for_a_class()?;
        self.with_desk(|desk| {
            Ok(surefoot_desk::create_class(
                desk, &new.class, &chance, today,
            )?)
        })
    }

    /// Reads a roster out of files that the person picks; nothing when they
    /// changed their mind. Only names and titles leave the files.
    ///
    /// # Errors
    /// [`CallError::Files`], [`CallError::Refused`] for a file too large or
    /// unreadable, [`CallError::Invalid`] when no name is in it.
    pub fn pick_roster(&self, _: Nothing) -> Result<Option<RosterFile>, CallError> {
        let Some(sources) = self.door.pick_files(FileKind::Roster)? else {
            return Ok(None);
        };
        let files = roster_files(sources)?;
        Ok(Some(surefoot_desk::read_roster_files(&files)?))
    }

    /// Makes a class with the set-up of another one.
    ///
    /// # Errors
    /// As [`App::create_class`], and [`CallError::NotFound`].
    pub fn copy_class(&self, copy: CopyClass) -> Result<ClassSummary, CallError> {
        let today = self.this_day();
        let chance = chance_for_a_class()?;
        self.with_desk(|desk| Ok(surefoot_desk::copy_class(desk, &copy, &chance, today)?))
    }

    /// A class's set-up.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn class_setup(&self, id: ClassId) -> Result<ClassSetup, CallError> {
        self.setup_after(&id.class, |_| Ok(()))
    }

    /// Names a seat.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Invalid`], or the store's.
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
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn add_seats(&self, new: AddSeats) -> Result<ClassSetup, CallError> {
        let seed = chance::bytes()?;
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::add_seats(
                desk, &new.class, &new.names, &seed,
            )?)
        })
    }

    /// Sets the date of a concept's first lesson.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
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

    /// Reads a pacing list; nothing is changed.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn read_pacing(&self, asked: PacingText) -> Result<PacingList, CallError> {
        let language = self.language();
        self.with_class(&asked.class, |_, class| {
            Ok(surefoot_desk::read_pacing(class, &asked.text, language))
        })
    }

    /// Sets several first lessons together.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's; then none is set.
    pub fn set_first_lessons(&self, new: FirstLessons) -> Result<ClassSetup, CallError> {
        let class = new.class;
        self.setup_after(&class, |desk| {
            let lessons = new.lessons.into_iter().collect();
            Ok(surefoot_desk::set_first_lessons(desk, &class, &lessons)?)
        })
    }

    /// The rotation spread evenly anew; nothing is changed.
    ///
    /// # Errors
    /// [`CallError::Rotation`], [`CallError::NotFound`], or the store's.
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
    ///
    /// # Errors
    /// [`CallError::Rotation`], [`CallError::NotFound`], or the store's.
    pub fn set_rotation(&self, new: NewRotation) -> Result<ClassSetup, CallError> {
        let class = new.class;
        self.setup_after(&class, |desk| {
            Ok(surefoot_desk::set_rotation(desk, &class, new.days)?)
        })
    }

    /// Replaces the closures.
    ///
    /// # Errors
    /// [`CallError::Calendar`], [`CallError::NotFound`], or the store's.
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

    /// Renames the class.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn rename_class(&self, new: RenameClass) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::rename_class(desk, &new.class, &new.title)?)
        })
    }

    /// Changes first day, last day and weekdays.
    ///
    /// # Errors
    /// [`CallError::Calendar`], [`CallError::NotFound`], or the store's.
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

    /// What the desk holds of a seat.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn seat_holdings(&self, id: SeatId) -> Result<SeatHoldings, CallError> {
        self.with_desk(|desk| Ok(surefoot_desk::seat_holdings(desk, &id.class, id.seat)?))
    }

    /// Removes a seat with all that came from it, and the copies that still hold
    /// it. For a while it can be brought back from memory.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn remove_seat(&self, id: SeatId) -> Result<ClassSetup, CallError> {
        let what = |class: &OpenClass| {
            let seat = class.seats.iter().find(|seat| seat.number == id.seat);
            RemovedWhat::Seat {
                seat: id.seat,
                name: seat.and_then(|seat| seat.name.clone()),
            }
        };
        self.remove_from_desk(&id.class, what, |desk| {
            Ok(surefoot_desk::remove_seat(desk, &id.class, id.seat)?)
        })?;
        self.setup_after(&id.class, |_| Ok(()))
    }

    /// Deletes a class with all that came in for it, and the copies that still
    /// hold it. For a while it can be brought back from memory.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn delete_class(&self, id: ClassId) -> Result<Start, CallError> {
        self.remove_from_desk(
            &id.class,
            |_| RemovedWhat::Class,
            |desk| Ok(surefoot_desk::delete_class(desk, &id.class)?),
        )?;
        self.start(Nothing {})
    }

    /// Concepts of the catalogue that are not in the rotation.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn unscheduled_concepts(&self, id: ClassId) -> Result<Vec<PlacedConcept>, CallError> {
        let language = self.language();
        self.with_desk(|desk| {
            Ok(surefoot_desk::unscheduled_concepts(
                desk, &id.class, language,
            )?)
        })
    }

    /// Sets the bounds of practice at home, and the test it aims at.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn set_practice(&self, new: NewPractice) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::set_practice(desk, &new.class, new.practice)?)
        })
    }

    /// The join slips.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn join_slips(&self, id: ClassId) -> Result<Vec<JoinSlip>, CallError> {
        self.with_class(&id.class, |_, class| Ok(surefoot_desk::join_slips(class)?))
    }

    /// Makes the class pack and puts it where the person says; in the sample
    /// class, beside its older ones.
    ///
    /// # Errors
    /// [`CallError::Files`], [`CallError::NotFound`], or the store's.
    pub fn save_class_pack(&self, id: ClassId) -> Result<FileMade, CallError> {
        let today = self.this_day();
        let made = self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::make_class_pack(desk, class, today)?)
        })?;
        let place = match self.world() {
            World::Sample => {
                let folder = self.here().class_packs();
                fs::create_dir_all(&folder).map_err(files)?;
                write_atomic(&folder.join(&made.file_name), &made.bytes)?;
                Some(String::new())
            }
            World::Own => self
                .door
                .save(&made.file_name, FileKind::ClassPack, &made.bytes)?,
        };
        Ok(FileMade {
            file_name: made.file_name,
            place,
            bytes: made.bytes.len(),
        })
    }

    /// Starts an import; nothing when the person changed their mind.
    ///
    /// # Errors
    /// [`CallError::Files`], or the store's.
    pub fn import_hand_ins(&self, asked: ImportAsked) -> Result<Option<JobId>, CallError> {
        let sources = match asked.from {
            ImportFrom::Folder => self.door.pick_folder(FileKind::HandIn)?,
            ImportFrom::Files => self.door.pick_files(FileKind::HandIn)?,
            ImportFrom::Opened => Some(std::mem::take(&mut lock(&self.state).opened)),
            ImportFrom::SampleFolder => match self.world() {
                World::Sample => Some(files_in(&self.here().shared_folder(), FileKind::HandIn)?),
                World::Own => {
                    return Err(CallError::NotFound {
                        what: "sample".into(),
                    });
                }
            },
        };
        let Some(sources) = sources else {
            return Ok(None);
        };
        // Opened once here, so that a damaged desk is told before anything is read.
        self.with_desk(|_| Ok(()))?;
        Ok(Some(self.start_import(sources, |_| Ok(()))?))
    }

    /// Starts an import; `after` is done once it is over, with its account.
    pub(crate) fn start_import(
        &self,
        sources: Vec<FileSource>,
        after: impl FnOnce(&ImportReport) -> Result<(), CallError> + Send + 'static,
    ) -> Result<JobId, CallError> {
        let (path, today) = (self.here().desk(), self.this_day());
        let copies = (self.world() == World::Own).then(|| self.here().desk_copies());
        let copy_day = self.device_today();
        Ok(self.jobs.start(move |progress| {
            // A connection of its own, so that the screens are not kept waiting.
            let desk = DeskStore::open_again(&path, Durability::Full)?;
            let account = import_files(&desk, sources, today, progress)?;
            if let Some(folder) = copies {
                // What came in is in today's copy too. The import stands without it.
                let copied = |into: &Path| desk.copy_into(into);
                let _ = make_copy(&folder, copy_day, &StoreName::Desk, true, copied);
            }
            after(&account)?;
            Ok(JobResult::Import { account })
        }))
    }

    /// The journal of imports.
    ///
    /// # Errors
    /// The store's.
    pub fn imports(&self, _: Nothing) -> Result<Vec<ImportReport>, CallError> {
        self.with_desk(|desk| Ok(surefoot_desk::imports(desk)?))
    }

    /// Undoes the last import.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn undo_import(&self, _: Nothing) -> Result<Vec<ImportReport>, CallError> {
        self.with_desk(|desk| {
            surefoot_desk::undo_import(desk)?;
            Ok(surefoot_desk::imports(desk)?)
        })
    }

    /// Decides about a device that claims a seat.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn decide_device(&self, decision: DeviceDecision) -> Result<ClassSetup, CallError> {
        self.setup_after(&decision.class, |desk| {
            let class = surefoot_desk::open_class(desk, &decision.class)?;
            Ok(surefoot_desk::decide_device(
                desk,
                &class,
                decision.seat,
                &decision.device,
                decision.accept,
            )?)
        })
    }

    /// The board.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn board(&self, id: ClassId) -> Result<Board, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::board(desk, class, language, today)?)
        })
    }

    /// The board of some seats alone.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn group_board(&self, asked: GroupBoard) -> Result<Board, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::board_of(
                desk,
                class,
                &asked.group,
                language,
                today,
            )?)
        })
    }

    /// The students behind a concept.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn concept_reports(&self, asked: ClassConcept) -> Result<ConceptReports, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::concept_reports(
                desk,
                class,
                &asked.concept,
                language,
                today,
            )?)
        })
    }

    /// Assigns practice.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn assign(&self, new: Assign) -> Result<Vec<AssignmentReport>, CallError> {
        let (language, today) = (self.language(), self.this_day());
        let id = chance::hex::<8>()?;
        self.with_class(&new.class, |desk, class| {
            surefoot_desk::assign(desk, class, &new.assignment, &id, today)?;
            Ok(surefoot_desk::assignments(desk, class, language)?)
        })
    }

    /// The assignments that stand.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn assignments(&self, id: ClassId) -> Result<Vec<AssignmentReport>, CallError> {
        let language = self.language();
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::assignments(desk, class, language)?)
        })
    }

    /// Takes an assignment back.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn withdraw_assignment(
        &self,
        id: AssignmentId,
    ) -> Result<Vec<AssignmentReport>, CallError> {
        let language = self.language();
        self.with_class(&id.class, |desk, class| {
            surefoot_desk::withdraw_assignment(desk, class, &id.assignment)?;
            Ok(surefoot_desk::assignments(desk, class, language)?)
        })
    }

    /// Lets an assignment that was taken back stand again.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn restore_assignment(&self, id: AssignmentId) -> Result<Vec<AssignmentReport>, CallError> {
        let language = self.language();
        self.with_class(&id.class, |desk, class| {
            surefoot_desk::restore_assignment(desk, class, &id.assignment)?;
            Ok(surefoot_desk::assignments(desk, class, language)?)
        })
    }
}
