//! The board, the page of a concept, the page of a student, and ratings compared with results.

use super::{ClassId, DeskDoor, SeatId};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::{Board, ClassNow, ConceptReports};
use surefoot_desk::{Comparison, StudentPage};
use ts_rs::TS;

/// The board of a group of seats.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupBoard {
    /// The class.
    pub class: String,
    /// The seats.
    pub group: Vec<u32>,
}

/// A concept of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassConcept {
    /// The class.
    pub class: String,
    /// The concept.
    pub concept: String,
}

impl DeskDoor {
    /// The board.
    pub fn board(&self, id: ClassId) -> Result<Board, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::board(desk, class, &[], language, today)?)
        })
    }

    /// The board of a group of seats.
    pub fn group_board(&self, asked: GroupBoard) -> Result<Board, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::board(
                desk,
                class,
                &asked.group,
                language,
                today,
            )?)
        })
    }

    /// The page of a concept.
    pub fn concept_reports(&self, asked: ClassConcept) -> Result<ConceptReports, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
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

    /// Compares ratings with results.
    pub fn comparison(&self, id: ClassId) -> Result<Comparison, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::comparison(desk, class, language, today)?)
        })
    }

    /// What the class needs now, in sentences.
    pub fn class_now(&self, id: ClassId) -> Result<ClassNow, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::class_now(desk, class, language, today)?)
        })
    }

    /// The page of a student.
    pub fn student_page(&self, id: SeatId) -> Result<StudentPage, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::student_page(
                desk, class, id.seat, language, today,
            )?)
        })
    }
}
