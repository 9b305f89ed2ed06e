//! Calls of the student's screens.

use crate::app::{App, files, lock};
use crate::{
    AnswerGiven, CallError, CheckInTap, DraftKept, ExerciseId, FileKind, FileSource, Focus, Goals,
    Join, NewStudentSettings, Nothing, OpenedFiles, PackOffer, PackTaken, PracticeAsked,
    SeatCodeTyped, StoreName, StudentDay, StudentId, Sure, World, chance, write_atomic,
};
use std::fs;
use surefoot_exchange::{BACKUP_CAPS, CARRY_CAPS};
use surefoot_store::{Durability, StudentStore};
use surefoot_student::practice_views::{Feedback, OpenExercise, PracticeStep, Summary};
use surefoot_student::views::{HandInMade, HandInPreview, MyPath, Profile, StudentSettings, Today};
use surefoot_student::{self, Joined, NewStudent, Tapped, Wishes};

impl App {
    pub(crate) fn as_student<T>(
        &self,
        id: &str,
        work: impl FnOnce(&StudentStore, &Joined) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.with_student(id, |store| {
            let joined = surefoot_student::joined(store)?;
            work(store, &joined)
        })
    }

    /// Lets the person pick a class pack.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a file that is none, [`CallError::Files`].
    pub fn pick_class_pack(&self, _: Nothing) -> Result<Option<PackOffer>, CallError> {
        let picked = self.door.pick_file(FileKind::ClassPack)?;
        picked.map(|source| self.offer(source)).transpose()
    }

    /// What another program opened with this one, or what was dropped on its
    /// window, since the last time this was asked. Of class packs, carry files
    /// and backups the last; hand-ins and zips all wait for an import.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a class pack that is none; hand-ins are
    /// judged by their import.
    pub fn opened_files(&self, _: Nothing) -> Result<OpenedFiles, CallError> {
        let mut opened = OpenedFiles {
            pack: None,
            hand_ins: 0,
            carry: None,
            backup: None,
        };
        for source in self.door.take_opened() {
            let name = source.name().to_owned();
            let extension = name
                .rsplit_once('.')
                .map(|(_, end)| end.to_ascii_lowercase())
                .unwrap_or_default();
            let is = |kind: FileKind| kind.picked_extensions().contains(&extension.as_str());
            if is(FileKind::HandIn) {
                lock(&self.state).opened.push(source);
            } else if is(FileKind::CarryFile) {
                let bytes = source.read(CARRY_CAPS.sealed_bytes)?;
                opened.carry = Some(self.keep_sealed(name, bytes));
            } else if is(FileKind::Backup) {
                let bytes = source.read(BACKUP_CAPS.sealed_bytes)?;
                opened.backup = Some(self.keep_sealed(name, bytes));
            } else {
                opened.pack = Some(self.offer(source)?);
            }
        }
        opened.hand_ins = lock(&self.state).opened.len();
        Ok(opened)
    }

    fn offer(&self, source: FileSource) -> Result<PackOffer, CallError> {
        let pack = surefoot_student::read_class_pack(source.open()?)?;
        let content = pack.content();
        let offer = PackOffer {
            pack: 0,
            class_title: content.title.clone(),
            concepts: content.rotation.days.iter().map(Vec::len).sum(),
            first_day: content.year.first_day,
            last_day: content.year.last_day,
        };
        Ok(PackOffer {
            pack: self.keep_pack(pack),
            ..offer
        })
    }

    /// Checks a seat code while it is typed.
    ///
    /// # Errors
    /// [`CallError::SeatCode`], [`CallError::NotFound`].
    pub fn check_seat_code(&self, typed: SeatCodeTyped) -> Result<Nothing, CallError> {
        surefoot_student::check_seat_code(&*self.kept_pack(typed.pack)?, &typed.seat_code)?;
        Ok(Nothing {})
    }

    /// Joins a class.
    ///
    /// # Errors
    /// [`CallError::SeatCode`], [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn join(&self, join: Join) -> Result<Profile, CallError> {
        let pack = self.kept_pack(join.pack)?;
        // Checked before a file is made, so that a typing slip leaves none behind.
        surefoot_student::check_seat_code(&pack, &join.seat_code)?;
        let id = chance::hex::<8>()?;
        let path = self.here().student(&id);
        fs::create_dir_all(self.here().students()).map_err(files)?;
        let joined = {
            let store = StudentStore::open(&path, Durability::Full)?;
            surefoot_student::join(
                &store,
                &pack,
                self.this_day(),
                &NewStudent {
                    device: chance::bytes()?,
                    signing_seed: chance::bytes()?,
                    sealing_seed: chance::bytes()?,
                    seat_code: &join.seat_code,
                    nickname: &join.nickname,
                    picture: &join.picture,
                    language: join.language,
                },
            )
        };
        if let Err(error) = joined {
            // Nobody has joined with it yet, so there is nothing in it to lose.
            let _ = fs::remove_file(&path);
            return Err(error.into());
        }
        self.profile(&id)
    }

    /// A day of the review.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn today(&self, day: StudentDay) -> Result<Today, CallError> {
        let today = self.this_day();
        self.as_student(&day.student, |store, joined| {
            Ok(surefoot_student::today(store, joined, today, day.date)?)
        })
    }

    /// A tap on Today, on disk when this returns.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Invalid`], or the store's.
    pub fn check_in(&self, tap: CheckInTap) -> Result<Today, CallError> {
        let today = self.this_day();
        self.as_student(&tap.student, |store, joined| {
            surefoot_student::check_in(
                store,
                joined,
                today,
                tap.date,
                &tap.concept,
                Tapped {
                    confidence: tap.confidence,
                    outcome: tap.outcome,
                },
            )?;
            Ok(surefoot_student::today(
                store,
                joined,
                today,
                Some(tap.date),
            )?)
        })
    }

    /// What to practise now.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn practice(&self, asked: PracticeAsked) -> Result<PracticeStep, CallError> {
        let (today, seed) = (self.this_day(), chance::number()?);
        self.as_student(&asked.student, |store, joined| {
            let concept = asked.concept.as_deref();
            Ok(surefoot_student::practice(
                store, joined, today, concept, asked.more, seed,
            )?)
        })
    }

    /// How sure the student says to be.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn sure(&self, said: Sure) -> Result<OpenExercise, CallError> {
        let today = self.this_day();
        self.as_student(&said.student, |store, joined| {
            Ok(surefoot_student::sure(
                store,
                joined,
                today,
                &said.exercise,
                said.sure,
            )?)
        })
    }

    /// The next hint.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn hint(&self, id: ExerciseId) -> Result<OpenExercise, CallError> {
        let today = self.this_day();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::hint(store, joined, today, &id.exercise)?)
        })
    }

    /// Marks an answer.
    ///
    /// # Errors
    /// [`CallError::UnreadableAnswer`], [`CallError::NotFound`], or the store's.
    pub fn answer(&self, given: AnswerGiven) -> Result<Feedback, CallError> {
        let today = self.this_day();
        self.as_student(&given.student, |store, joined| {
            Ok(surefoot_student::answer(
                store,
                joined,
                today,
                &given.exercise,
                &given.response,
                given.seconds,
            )?)
        })
    }

    /// Keeps what stands in the answer, so that stopping loses nothing of it.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Invalid`] for one that is too long, or the store's.
    pub fn keep_draft(&self, kept: DraftKept) -> Result<Nothing, CallError> {
        self.as_student(&kept.student, |store, _| {
            surefoot_student::keep_draft(store, &kept.exercise, kept.draft.as_ref())?;
            Ok(Nothing {})
        })
    }

    /// The worked steps instead of an answer.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn show_steps(&self, id: ExerciseId) -> Result<Feedback, CallError> {
        let today = self.this_day();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::show_steps(
                store,
                joined,
                today,
                &id.exercise,
            )?)
        })
    }

    /// Tonight's practice, looked back on.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn practice_summary(&self, id: StudentId) -> Result<Summary, CallError> {
        let today = self.this_day();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::practice_summary(store, joined, today)?)
        })
    }

    /// The student's year.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn my_path(&self, id: StudentId) -> Result<MyPath, CallError> {
        let today = self.this_day();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::my_path(store, joined, today)?)
        })
    }

    /// Chooses the concepts to work on.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn set_focus(&self, focus: Focus) -> Result<MyPath, CallError> {
        let today = self.this_day();
        self.as_student(&focus.student, |store, joined| {
            surefoot_student::set_focus(store, joined, &focus.concepts)?;
            Ok(surefoot_student::my_path(store, joined, today)?)
        })
    }

    /// Writes the student's goals.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn set_goals(&self, goals: Goals) -> Result<MyPath, CallError> {
        let today = self.this_day();
        self.as_student(&goals.student, |store, joined| {
            surefoot_student::set_goals(store, &goals.goals)?;
            Ok(surefoot_student::my_path(store, joined, today)?)
        })
    }

    /// What a hand-in would hold.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn hand_in_preview(&self, id: StudentId) -> Result<HandInPreview, CallError> {
        let today = self.this_day();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::hand_in_preview(store, joined, today)?)
        })
    }

    /// Makes a hand-in and puts it where the person says; in the sample class,
    /// into its shared folder.
    ///
    /// # Errors
    /// [`CallError::Files`], [`CallError::NotFound`], or the store's.
    pub fn hand_in(&self, id: StudentId) -> Result<HandInMade, CallError> {
        self.make_hand_in(&id, |name, bytes| {
            let place = self.door.save(name, FileKind::HandIn, bytes)?;
            Ok((place, false))
        })
    }

    /// Makes a hand-in and gives it to another program by the system's share
    /// sheet, or saves it as [`App::hand_in`] does where there is none.
    ///
    /// # Errors
    /// As [`App::hand_in`].
    pub fn share_hand_in(&self, id: StudentId) -> Result<HandInMade, CallError> {
        self.make_hand_in(&id, |name, bytes| {
            if self.door.share(name, FileKind::HandIn, bytes)? {
                return Ok((Some(String::new()), true));
            }
            Ok((self.door.save(name, FileKind::HandIn, bytes)?, false))
        })
    }

    /// `hand_over` gives where the file went, and whether another program has it.
    fn make_hand_in(
        &self,
        id: &StudentId,
        hand_over: impl FnOnce(&str, &[u8]) -> Result<(Option<String>, bool), CallError>,
    ) -> Result<HandInMade, CallError> {
        let today = self.this_day();
        let made = self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::make_hand_in(store, joined, today)?)
        })?;
        // The store is free while the person looks for a place.
        let (place, shared) = match self.world() {
            World::Sample => {
                let folder = self.here().shared_folder();
                fs::create_dir_all(&folder).map_err(files)?;
                write_atomic(&folder.join(&made.file_name), &made.bytes)?;
                (Some(String::new()), false)
            }
            World::Own => hand_over(&made.file_name, &made.bytes)?,
        };
        if place.is_some() {
            self.with_student(&id.student, |store| {
                surefoot_student::note_hand_in(store, &made)?;
                let name = StoreName::Student {
                    student: id.student.clone(),
                };
                self.keep_copy(&name, true, |into| store.copy_into(into));
                Ok(())
            })?;
        }
        Ok(HandInMade {
            file_name: made.file_name,
            place,
            shared,
            bytes: made.bytes.len(),
            check_ins: made.check_ins,
            answers: made.answers,
        })
    }

    /// Lets the person pick a newer class pack.
    ///
    /// # Errors
    /// [`CallError::Refused`], [`CallError::Files`], or the store's.
    pub fn take_class_pack(&self, id: StudentId) -> Result<Option<PackTaken>, CallError> {
        let today = self.this_day();
        let source = match self.world() {
            World::Own => self.door.pick_file(FileKind::ClassPack)?,
            World::Sample => crate::demo::newest_class_pack(&self.here())?,
        };
        let Some(source) = source else {
            return Ok(None);
        };
        let bytes = source.open()?;
        let version = self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::take_class_pack(
                store, joined, today, bytes,
            )?)
        })?;
        let open_assignments = self.as_student(&id.student, |_, joined| {
            Ok(joined.assignments.iter().filter(|a| a.due >= today).count())
        })?;
        Ok(Some(PackTaken {
            version,
            open_assignments,
        }))
    }

    /// The student's settings.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn student_settings(&self, id: StudentId) -> Result<StudentSettings, CallError> {
        self.as_student(&id.student, |_, joined| {
            Ok(surefoot_student::settings(joined, self.this_day()))
        })
    }

    /// Writes the student's settings.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn save_student_settings(
        &self,
        new: NewStudentSettings,
    ) -> Result<StudentSettings, CallError> {
        self.as_student(&new.student, |store, joined| {
            Ok(surefoot_student::save_settings(
                store,
                joined,
                self.this_day(),
                Wishes {
                    language: new.language,
                    minutes: new.minutes,
                    exercises: new.exercises,
                    evenings: new.evenings,
                    look: new.look,
                },
            )?)
        })
    }
}
