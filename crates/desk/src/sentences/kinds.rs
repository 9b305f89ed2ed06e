//! The kinds of sentences, in the order of the screen, and the function that makes each.

use super::certainty::{Certainty, ENOUGH_SHARE, least, of_needs, of_strength, of_weakness};
use super::picture::{Contradicted, Picture};
use crate::HelpSays;
use crate::board::BoardRow;
use crate::class::NamedSeat;
use crate::talk::TalkWay;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_record::ConceptName;
use ts_rs::TS;

/// A sentence of the first screen. It has no student's probability.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Sentence {
    /// What it says, with its reason.
    pub says: SentenceKind,
    /// The concept that it is about.
    pub concept: Option<ConceptName>,
    /// How certain it is.
    pub certainty: Certainty,
    /// What can be done about it in one press.
    pub actions: Vec<SentenceAction>,
}

/// What a sentence says. The order is that of the screen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum SentenceKind {
    /// This concept of the next review deserves the minutes of talk.
    Talk {
        /// The day of that review.
        date: NaiveDate,
        /// Whether that is today.
        is_today: bool,
        /// How to discuss it.
        way: TalkWay,
        /// The minutes that it takes.
        minutes: u32,
        /// How many present students are expected to get it wrong; none while the level is not
        /// known.
        wrong: Option<u32>,
    },
    /// The class feels sure of the concept, and most answers are wrong.
    SureAndWrong {
        /// Students who last chose On my own or Could teach it.
        sure: u32,
        /// Students who rated it.
        rated: u32,
    },
    /// The concept is weak in the class.
    Weak {
        /// How many students have it; none while the level is not known.
        heads: Option<Heads>,
        /// Students who last chose Not yet or With help.
        low: u32,
        /// Students who rated it.
        rated: u32,
    },
    /// Every concept that can be weak is well in hand.
    NothingWeak {
        /// How many concepts those are.
        concepts: usize,
    },
    /// These students could work on the concept in a small group.
    Together {
        /// The students, by seat.
        students: Vec<NamedSeat>,
        /// Whether the level is known, so that each likely needs it. Otherwise each last chose Not
        /// yet or With help.
        estimated: bool,
    },
    /// What came of it that the concept was taught again, as the screen of what was taught again says.
    TaughtAgain {
        /// What is said there; only what answers were compared for.
        help: HelpSays,
        /// School date of the teaching.
        since: NaiveDate,
        /// Students who were taught.
        taught: usize,
        /// The day to look again, if it cannot be told yet.
        next_on: Option<NaiveDate>,
    },
    /// These students feel sure of the concept and get it wrong.
    SureButWrong {
        /// The students, by seat.
        students: Vec<NamedSeat>,
    },
    /// These students can do the concept and do not feel sure of it.
    UnsureButRight {
        /// The students, by seat.
        students: Vec<NamedSeat>,
    },
}

/// A share of a class as a number of students, with its likely range.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Heads {
    /// The share times the class, rounded.
    pub about: u32,
    /// Low end of the likely range, rounded.
    pub low: u32,
    /// High end of the likely range, rounded.
    pub high: u32,
    /// Students of the class.
    pub of: u32,
}

/// What one press does about a sentence.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum SentenceAction {
    /// Shows an exercise on the projector.
    Show,
    /// Opens Groups with a suggestion.
    Group,
    /// Begins an assignment.
    Assign,
    /// Opens a practice sheet.
    Print,
}

/// One function for each kind, in the order of the screen. Each gives its sentences, the most
/// important first.
pub(super) const KINDS: &[fn(&Picture) -> Vec<Sentence>] = &[
    talk,
    sure_and_wrong,
    weak,
    together,
    taught_again,
    sure_but_wrong,
    unsure_but_right,
];

fn sentence(
    says: SentenceKind,
    concept: &ConceptName,
    certainty: Certainty,
    actions: &[SentenceAction],
) -> Sentence {
    let possible = |action: &SentenceAction| {
        // Groups need no exercises.
        concept.has_exercises || *action == SentenceAction::Group
    };
    Sentence {
        says,
        concept: Some(concept.clone()),
        certainty,
        actions: actions.iter().copied().filter(possible).collect(),
    }
}

fn talk(picture: &Picture) -> Vec<Sentence> {
    let plan = &picture.talk;
    let chosen = plan.concepts.iter().filter(|concept| concept.chosen);
    let mut found: Vec<(f64, Sentence)> = chosen
        .filter_map(|one| {
            let row = picture.row(&one.concept.id)?;
            let says = SentenceKind::Talk {
                date: plan.date,
                is_today: plan.is_today,
                way: one.way?,
                minutes: one.minutes,
                wrong: one.expected_wrong.map(whole),
            };
            let actions = [SentenceAction::Show, SentenceAction::Print];
            let certainty = of_talk(row, one.way?);
            let worth = one.worth.unwrap_or(0.0);
            Some((worth, sentence(says, &one.concept, certainty, &actions)))
        })
        .collect();
    // Stable: without a level, in the order of the review.
    found.sort_by(|(a, _), (b, _)| b.total_cmp(a));
    found.into_iter().map(|(_, sentence)| sentence).collect()
}

/// A short look is offered where the concept is in hand, so its certainty is that of strength.
fn of_talk(row: &BoardRow, way: TalkWay) -> Certainty {
    match way {
        TalkWay::ShortLook => of_strength(row),
        TalkWay::TeachAgain | TalkWay::PairTalk => of_weakness(row),
    }
}

fn sure_and_wrong(picture: &Picture) -> Vec<Sentence> {
    let rows = picture.ranked().filter(|row| row.sure_and_wrong);
    rows.map(|row| {
        let [not_yet, with_help, alone, teach] = row.latest;
        let sure = alone.saturating_add(teach);
        let says = SentenceKind::SureAndWrong {
            sure,
            rated: not_yet.saturating_add(with_help).saturating_add(sure),
        };
        // Said only if the whole likely range is below one half.
        let certainty = if row.ask_first {
            Certainty::AskFirst
        } else {
            Certainty::Clear
        };
        let actions = [SentenceAction::Show, SentenceAction::Assign];
        sentence(says, &row.concept, certainty, &actions)
    })
    .collect()
}

/// Whether a row's concept is weak: fewer than enough of the class have it or, without a level,
/// somebody needs help and so it has a place in the order.
pub(super) fn is_weak(row: &BoardRow) -> bool {
    let [not_yet, with_help, ..] = row.latest;
    match row.has_it {
        _ if row.rank.is_none() => false,
        Some(share) => share < ENOUGH_SHARE,
        None => not_yet.saturating_add(with_help) > 0,
    }
}

fn weak(picture: &Picture) -> Vec<Sentence> {
    let found: Vec<Sentence> = (picture.ranked().filter(|row| is_weak(row)))
        .map(|row| {
            let [not_yet, with_help, alone, teach] = row.latest;
            let low = not_yet.saturating_add(with_help);
            let says = SentenceKind::Weak {
                heads: heads(row, picture.board.seats),
                low,
                rated: low.saturating_add(alone).saturating_add(teach),
            };
            let actions = [
                SentenceAction::Assign,
                SentenceAction::Show,
                SentenceAction::Print,
            ];
            sentence(says, &row.concept, of_weakness(row), &actions)
        })
        .collect();
    if found.is_empty() && picture.board.level_known {
        nothing_weak(picture)
    } else {
        found
    }
}

fn nothing_weak(picture: &Picture) -> Vec<Sentence> {
    let steps = picture.ranked().map(of_strength);
    let sentence = least(steps).map(|certainty| Sentence {
        says: SentenceKind::NothingWeak {
            concepts: picture.ranked().count(),
        },
        concept: None,
        certainty,
        actions: Vec::new(),
    });
    sentence.into_iter().collect()
}

/// A group is for what a part of the class needs; what more than half need is for the whole class.
fn together(picture: &Picture) -> Vec<Sentence> {
    let reporting = picture.board.seats_reporting;
    let fit = |count: usize| count >= 2 && 2 * count < reporting;
    let groups = (picture.joining.iter()).filter(|joining| fit(joining.students.len()));
    groups
        .map(|joining| {
            let ask_first = picture
                .row(&joining.concept.id)
                .is_some_and(|row| row.ask_first);
            let certainty = match joining.need {
                _ if ask_first => Certainty::AskFirst,
                Some(need) => of_needs(need),
                None => Certainty::RatingsAlone,
            };
            let says = SentenceKind::Together {
                students: joining.students.clone(),
                estimated: picture.board.level_known,
            };
            let actions = [
                SentenceAction::Group,
                SentenceAction::Assign,
                SentenceAction::Print,
            ];
            sentence(says, &joining.concept, certainty, &actions)
        })
        .collect()
}

fn taught_again(picture: &Picture) -> Vec<Sentence> {
    let made = picture.taught_again.as_ref().map(|entry| {
        let says = SentenceKind::TaughtAgain {
            help: entry.help.says,
            since: entry.date,
            taught: entry.members.len(),
            next_on: (entry.help.next_on).filter(|_| entry.help.says == HelpSays::CannotTell),
        };
        // The verdict's own steps; its words say them.
        let certainty = match entry.help.says {
            HelpSays::RoseMore => Certainty::Clear,
            HelpSays::LikelyRoseMore | HelpSays::NoSign => Certainty::Likely,
            _ => Certainty::NotSure,
        };
        sentence(says, &entry.concept, certainty, &[])
    });
    made.into_iter().collect()
}

fn sure_but_wrong(picture: &Picture) -> Vec<Sentence> {
    contradicted(&picture.sure_but_wrong, |students| {
        SentenceKind::SureButWrong { students }
    })
}

fn unsure_but_right(picture: &Picture) -> Vec<Sentence> {
    contradicted(&picture.unsure_but_right, |students| {
        SentenceKind::UnsureButRight { students }
    })
}

fn contradicted(
    list: &[Contradicted],
    says: impl Fn(Vec<NamedSeat>) -> SentenceKind,
) -> Vec<Sentence> {
    let actions = [SentenceAction::Assign, SentenceAction::Show];
    list.iter()
        .map(|of| {
            let says = says(of.students.clone());
            sentence(says, &of.concept, Certainty::Counted, &actions)
        })
        .collect()
}

fn heads(row: &BoardRow, seats: usize) -> Option<Heads> {
    let of = u32::try_from(seats).ok()?;
    let count = |share: f64| whole(share * f64::from(of));
    Some(Heads {
        about: count(row.has_it?),
        low: count(row.low?),
        high: count(row.high?),
        of,
    })
}

/// Rounds halves up, as the screens do.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a number of students; a cast saturates"
)]
fn whole(value: f64) -> u32 {
    (value + 0.5).floor() as u32
}
