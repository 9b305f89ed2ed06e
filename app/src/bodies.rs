//! Bodies to come.
use super::*;
#[allow(
    missing_docs,
    clippy::missing_errors_doc,
    clippy::unused_self,
    clippy::needless_pass_by_value
)]
impl App {
    pub fn open(
        _data_dir: &std::path::Path,
        _door: Box<dyn FileDoor>,
        _clock: Box<dyn Clock>,
    ) -> Result<Self, CallError> {
        Ok(Self {})
    }
    pub fn start(&self, _: Nothing) -> Result<Start, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn save_device_settings(&self, _: DeviceSettings) -> Result<Start, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn make_sample(&self, _: Nothing) -> Result<JobId, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn enter_sample(&self, _: Nothing) -> Result<Start, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn leave_sample(&self, _: Nothing) -> Result<Start, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn job(&self, _: JobId) -> Result<JobState, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn cancel_job(&self, _: JobId) -> Result<JobState, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn pick_class_pack(&self, _: Nothing) -> Result<Option<PackOffer>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn check_seat_code(&self, _: SeatCodeTyped) -> Result<Nothing, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn join(&self, _: Join) -> Result<Profile, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn today(&self, _: StudentDay) -> Result<Today, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn check_in(&self, _: CheckInTap) -> Result<Today, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn practice(&self, _: PracticeAsked) -> Result<PracticeStep, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn sure(&self, _: Sure) -> Result<OpenExercise, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn hint(&self, _: ExerciseId) -> Result<OpenExercise, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn answer(&self, _: AnswerGiven) -> Result<Feedback, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn show_steps(&self, _: ExerciseId) -> Result<Feedback, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn practice_summary(&self, _: StudentId) -> Result<Summary, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn my_path(&self, _: StudentId) -> Result<MyPath, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn set_focus(&self, _: Focus) -> Result<MyPath, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn hand_in_preview(&self, _: StudentId) -> Result<HandInPreview, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn hand_in(&self, _: StudentId) -> Result<HandInMade, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn take_class_pack(&self, _: StudentId) -> Result<Option<PackTaken>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn student_settings(&self, _: StudentId) -> Result<StudentSettings, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn save_student_settings(
        &self,
        _: NewStudentSettings,
    ) -> Result<StudentSettings, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn read_roster(&self, _: RosterText) -> Result<RosterNames, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn create_class(&self, _: CreateClass) -> Result<ClassSummary, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn class_setup(&self, _: ClassId) -> Result<ClassSetup, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn name_seat(&self, _: NameSeat) -> Result<ClassSetup, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn add_seats(&self, _: AddSeats) -> Result<ClassSetup, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn set_taught_from(&self, _: TaughtFrom) -> Result<ClassSetup, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn set_rotation(&self, _: NewRotation) -> Result<ClassSetup, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn set_closures(&self, _: NewClosures) -> Result<ClassSetup, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn join_slips(&self, _: ClassId) -> Result<Vec<JoinSlip>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn save_class_pack(&self, _: ClassId) -> Result<FileMade, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn import_hand_ins(&self, _: ImportAsked) -> Result<Option<JobId>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn imports(&self, _: Nothing) -> Result<Vec<ImportAccount>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn undo_import(&self, _: Nothing) -> Result<Vec<ImportAccount>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn decide_device(&self, _: DeviceDecision) -> Result<ClassSetup, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn board(&self, _: ClassId) -> Result<Board, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn concept_reports(&self, _: ClassConcept) -> Result<ConceptReports, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn assign(&self, _: Assign) -> Result<Vec<AssignmentReport>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn assignments(&self, _: ClassId) -> Result<Vec<AssignmentReport>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
    pub fn withdraw_assignment(&self, _: AssignmentId) -> Result<Vec<AssignmentReport>, CallError> {
        Err(CallError::NotFound {
            what: "call".into(),
        })
    }
}
