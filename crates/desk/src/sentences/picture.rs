//! The one picture of the class that all sentences are made from: what the screens show.

use crate::TaughtAgainEntry;
use crate::board::{Board, BoardRow, Contradiction, board_from, contradictions};
use crate::class::{NamedSeat, OpenClass};
use crate::error::DeskError;
use crate::estimate::Reports;
use crate::groups::needed;
use crate::talk::{TalkDay, TalkView, USUAL_TALK_MINUTES, talk_from};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::Language;
use surefoot_record::ConceptName;
use surefoot_store::DeskStore;

/// The views of one class on one date, from one reading of its reports.
pub(super) struct Picture {
    /// The board of the whole class.
    pub board: Board,
    /// The talk plan of today, or of the next school day if today is none.
    pub talk: TalkView,
    /// The talk plan of the school day after that.
    pub talk_after: TalkView,
    /// Sure but wrong, most students first.
    pub sure_but_wrong: Vec<Contradicted>,
    /// Unsure but right, most students first.
    pub unsure_but_right: Vec<Contradicted>,
    /// Who may join a group on a concept, weakest concept first.
    pub joining: Vec<Joining>,
    /// What was taught again and has a verdict that is news.
    pub taught_again: Option<TaughtAgainEntry>,
    /// Passes with ratings of three students or more, on the concept that has most of them.
    pub passes_rated: usize,
}

/// The students whose ratings and results disagree on a concept in the same way.
pub(super) struct Contradicted {
    pub concept: ConceptName,
    pub students: Vec<NamedSeat>,
}

/// The students who may join a group on a concept.
pub(super) struct Joining {
    pub concept: ConceptName,
    pub students: Vec<NamedSeat>,
    /// The mean probability that they need it; none while the level is not known.
    pub need: Option<f64>,
}

impl Picture {
    pub(super) fn of(
        desk: &DeskStore,
        class: &OpenClass,
        reports: &Reports,
        taught_again: Option<TaughtAgainEntry>,
        language: Language,
        today: NaiveDate,
    ) -> Result<Self, DeskError> {
        let board = board_from(desk, class, reports, language, today)?;
        let talk = |day: TalkDay| {
            let minutes = USUAL_TALK_MINUTES;
            let date = day.date(&class.facts.year, board.today);
            talk_from(desk, class, reports, &board, language, minutes, date)
        };
        let (talk, talk_after) = (talk(TalkDay::First)?, talk(TalkDay::Second)?);
        let (sure, unsure) = contradictions(class, reports, language);
        let joining = if board.level_known {
            joining(class, reports, language, today)
        } else {
            low_raters(class, reports, &board)
        };
        let passes = reports.trends.concepts.iter().map(|trend| trend.passes);
        Ok(Self {
            talk,
            talk_after,
            sure_but_wrong: by_concept(sure),
            unsure_but_right: by_concept(unsure),
            joining,
            taught_again,
            passes_rated: passes.max().unwrap_or(0),
            board,
        })
    }

    /// The rows of the concepts that can be weak, weakest first.
    pub(super) fn ranked(&self) -> impl Iterator<Item = &BoardRow> {
        self.board.rows.iter().filter(|row| row.rank.is_some())
    }

    /// The row of a concept.
    pub(super) fn row(&self, concept: &str) -> Option<&BoardRow> {
        self.board.rows.iter().find(|row| row.concept.id == concept)
    }
}

/// The same contradictions by concept, those of most students first.
fn by_concept(list: Vec<Contradiction>) -> Vec<Contradicted> {
    let mut found: BTreeMap<String, Contradicted> = BTreeMap::new();
    for Contradiction {
        student, concept, ..
    } in list
    {
        let of = found
            .entry(concept.id.clone())
            .or_insert_with(|| Contradicted {
                concept,
                students: Vec::new(),
            });
        of.students.push(NamedSeat {
            seat: student.seat,
            name: student.name,
        });
    }
    let mut found: Vec<Contradicted> = found.into_values().collect();
    for of in &mut found {
        of.students.sort_by_key(|student| student.seat);
    }
    found.sort_by_key(|of| std::cmp::Reverse(of.students.len()));
    found
}

fn joining(
    class: &OpenClass,
    reports: &Reports,
    language: Language,
    today: NaiveDate,
) -> Vec<Joining> {
    let found = needed(class, reports, today).into_iter();
    found
        .filter_map(|(concept, students)| {
            let id = reports.concepts.get(concept)?;
            let sum: f64 = students.iter().map(|(_, need)| need).sum();
            let count = u32::try_from(students.len()).unwrap_or(u32::MAX);
            Some(Joining {
                concept: class.facts.name(id, language),
                need: (count > 0).then(|| sum / f64::from(count)),
                students: students
                    .into_iter()
                    .filter_map(|(student, _)| class.seats.get(student))
                    .map(|seat| NamedSeat {
                        seat: seat.number,
                        name: seat.name.clone(),
                    })
                    .collect(),
            })
        })
        .collect()
}

/// Without a level: who last chose Not yet or With help, as the board counts them.
fn low_raters(class: &OpenClass, reports: &Reports, board: &Board) -> Vec<Joining> {
    let last = reports.last_ratings();
    let needs = |concept: &str, seat: u32| {
        last.get(&(seat, concept))
            .is_some_and(|(_, rating)| rating.needs_help())
    };
    let ranked = board.rows.iter().filter(|row| row.rank.is_some());
    ranked
        .map(|row| Joining {
            concept: row.concept.clone(),
            students: (class.seats.iter())
                .filter(|seat| needs(&row.concept.id, seat.number))
                .map(|seat| NamedSeat {
                    seat: seat.number,
                    name: seat.name.clone(),
                })
                .collect(),
            need: None,
        })
        .collect()
}
