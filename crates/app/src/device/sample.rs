//! The sample class.

use super::DeviceDoor;
use super::start::Start;
use crate::context::clock::latest_weekday;
use crate::context::jobs::{JobId, JobResult};
use crate::context::settings::World;
use crate::context::values::Nothing;
use crate::context::wipe::wipe_folder;
use crate::demo::{self, DemoPlan};
use crate::error::{CallError, files};
use std::fs;
use surefoot_record::{Field, Rule, Thing};

impl DeviceDoor {
    /// Makes the sample class anew. The result of the job holds what goes wrong.
    pub fn make_sample(&self, _: Nothing) -> Result<JobId, CallError> {
        if self.context.world() == World::Sample {
            return Err(CallError::Invalid {
                field: Field::World,
                rule: Rule::SampleOpen,
            });
        }
        self.student.stores.while_all_closed(|| Ok(()))?;
        self.desk.stores.while_all_closed(|| Ok(()))?;
        // Removals of the old sample class do not fit the new one.
        self.desk.discard_all_removed();
        let (making, place) = (
            self.context.paths.sample_in_the_making(),
            self.context.paths.sample(),
        );
        let plan = DemoPlan::sample(latest_weekday(self.context.device_today()));
        Ok(self.context.jobs.start(move |progress| {
            wipe_folder(&making)?;
            let made = demo::make(&making, &plan, progress);
            if let Err(error) = made {
                wipe_folder(&making)?;
                return Err(error);
            }
            wipe_folder(&place)?;
            fs::rename(&making, &place).map_err(files)?;
            Ok(JobResult::SampleReady)
        }))
    }

    /// Opens the sample class.
    ///
    /// # Errors
    /// Returns [`CallError::NotFound`] if it was not made yet.
    pub fn enter_sample(&self, _: Nothing) -> Result<Start, CallError> {
        if !self.context.paths.world(World::Sample).desk().is_file() {
            return Err(CallError::NotFound {
                what: Thing::Sample,
            });
        }
        self.context.enter(World::Sample);
        self.start(Nothing {})
    }

    /// Returns to the person's own data.
    pub fn leave_sample(&self, _: Nothing) -> Result<Start, CallError> {
        self.context.enter(World::Own);
        self.start(Nothing {})
    }
}
