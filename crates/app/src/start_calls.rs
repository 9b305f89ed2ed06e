//! Calls about the device: start, settings, the sample class, long jobs.

use crate::app::{App, files, lock};
use crate::demo::{self, DemoPlan};
use crate::{
    CallError, DeviceSettings, JobId, JobResult, JobState, MessageFile, Nothing, Start, StoreName,
    WordsOf, World,
};
use chrono::NaiveDate;
use std::fs;
use surefoot_desk::ClassSummary;
use surefoot_exercises::messages;
use surefoot_student::views::Profile;

/// Students of the sample class that can be played.
const SAMPLE_STUDENTS_SHOWN: usize = 3;

impl App {
    /// Where the program stands.
    ///
    /// # Errors
    /// The store's.
    pub fn start(&self, _: Nothing) -> Result<Start, CallError> {
        let world = self.world();
        let mut students = Vec::new();
        let mut damaged = Vec::new();
        for id in self.student_ids_with_copies()? {
            if world == World::Sample && students.len() == SAMPLE_STUDENTS_SHOWN {
                break;
            }
            match self.profile(&id) {
                Ok(profile) => students.push(profile),
                // A store without a student was left by a join that did not finish.
                Err(CallError::NotFound { .. }) => {}
                // One student's trouble keeps no other from working.
                Err(error) => damaged.push(self.damaged(StoreName::Student { student: id }, error)),
            }
        }
        let today = self.this_day();
        let has_desk = self.here().desk().is_file() || self.here().desk_copies().is_dir();
        let classes = match self.classes_of_desk(has_desk, today) {
            Ok(classes) => classes,
            Err(error) => {
                damaged.push(self.damaged(StoreName::Desk, error));
                Vec::new()
            }
        };
        Ok(Start {
            today,
            version: env!("CARGO_PKG_VERSION").to_owned(),
            world,
            sample_ready: self.places.world(World::Sample).desk().is_file(),
            students,
            classes,
            damaged,
            years_over: match world {
                World::Own => self.years_over(),
                World::Sample => Vec::new(),
            },
            removed: self.removed(),
            shares: self.door.shares(),
            settings: lock(&self.state).settings.clone(),
        })
    }

    fn classes_of_desk(
        &self,
        has_desk: bool,
        today: NaiveDate,
    ) -> Result<Vec<ClassSummary>, CallError> {
        if has_desk {
            self.with_desk(|desk| Ok(surefoot_desk::classes(desk, today)?))
        } else {
            Ok(Vec::new())
        }
    }

    pub(crate) fn profile(&self, id: &str) -> Result<Profile, CallError> {
        self.with_student_unasked(id, |store| {
            let joined = surefoot_student::joined(store)?;
            Ok(Profile {
                has_pin: store.pin()?.is_some(),
                id: id.to_owned(),
                nickname: joined.student.nickname,
                picture: joined.student.picture,
                language: joined.student.language,
                look: joined.student.look,
                class_title: joined.facts.title,
            })
        })
    }

    /// Writes the settings of this device.
    ///
    /// # Errors
    /// [`CallError::Files`].
    pub fn save_device_settings(&self, settings: DeviceSettings) -> Result<Start, CallError> {
        self.put_settings(settings)?;
        self.start(Nothing {})
    }

    /// The words of exercises and their pictures, which the screens need once one is shown.
    ///
    /// # Errors
    /// None.
    pub fn exercise_words(&self, of: WordsOf) -> Result<Vec<MessageFile>, CallError> {
        Ok(messages::sources(of.language)
            .map(|(area, text)| MessageFile {
                area: area.to_owned(),
                text: text.to_owned(),
            })
            .collect())
    }

    /// Makes the sample class anew, in a folder of its own.
    ///
    /// # Errors
    /// None here; the job's result holds what goes wrong.
    pub fn make_sample(&self, _: Nothing) -> Result<JobId, CallError> {
        if self.world() == World::Sample {
            return Err(CallError::Invalid {
                field: "world".into(),
                rule: "sample_open".into(),
            });
        }
        self.close_stores();
        // The sample class made anew knows nothing of what was removed from the old one.
        self.drop_held();
        let (making, place) = (self.places.sample_in_the_making(), self.places.sample());
        let plan = DemoPlan::sample(crate::latest_weekday(self.device_today()));
        Ok(self.jobs.start(move |progress| {
            let clear = |folder: &std::path::Path| match fs::remove_dir_all(folder) {
                Err(error) if error.kind() != std::io::ErrorKind::NotFound => Err(files(error)),
                _ => Ok(()),
            };
            clear(&making)?;
            let made = demo::make(&making, &plan, progress);
            if let Err(error) = made {
                clear(&making)?;
                return Err(error);
            }
            clear(&place)?;
            fs::rename(&making, &place).map_err(files)?;
            Ok(JobResult::SampleReady)
        }))
    }

    /// Opens the sample class.
    ///
    /// # Errors
    /// [`CallError::NotFound`] before it has been made.
    pub fn enter_sample(&self, _: Nothing) -> Result<Start, CallError> {
        if !self.places.world(World::Sample).desk().is_file() {
            return Err(CallError::NotFound {
                what: "sample".into(),
            });
        }
        lock(&self.state).world = World::Sample;
        self.start(Nothing {})
    }

    /// Goes back to the person's own data.
    ///
    /// # Errors
    /// The store's.
    pub fn leave_sample(&self, _: Nothing) -> Result<Start, CallError> {
        lock(&self.state).world = World::Own;
        self.start(Nothing {})
    }

    /// How far a long job is.
    ///
    /// # Errors
    /// [`CallError::NotFound`].
    pub fn job(&self, id: JobId) -> Result<JobState, CallError> {
        self.jobs.state(id, false)
    }

    /// Asks a long job to stop.
    ///
    /// # Errors
    /// [`CallError::NotFound`].
    pub fn cancel_job(&self, id: JobId) -> Result<JobState, CallError> {
        self.jobs.state(id, true)
    }
}
