//! The sentences of the first screen say what the other screens show.

use super::{Desk, date, device_of};
use crate::{
    Board, BoardRow, Certainty, ClassNow, Comparison, Heads, HelpSays, Knowledge, MOST_SENTENCES,
    NewTaughtAgain, OpenClass, Sentence, SentenceAction, SentenceKind, TalkDay, TalkView,
    TaughtAgainEntry, TaughtAgainLog, TaughtFromWhere, USUAL_LATE_SCHOOL_DAYS, USUAL_TALK_MINUTES,
    board, class_now, comparison, concept_reports, concept_to_show, note_taught_again,
    set_closures, set_taught_from, talk, talk_on, taught_again, who_has_not,
};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::rotation::Phase;
use surefoot_catalogue::{ConceptId, Language};
use surefoot_record::{AnswerCount, CheckIn, Practice, Record, Said};
use surefoot_store::{DeskStore, Durability};

/// Simulated classes.
const CLASSES: u64 = 1000;

/// Seats of a simulated class at most.
const MOST_SEATS: usize = 10;

/// The limit of the sentences, written down once more.
const ENOUGH: f64 = 0.7;

/// SplitMix64 (Steele, Lea, Flood 2014; from memory).
struct Dice(u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    fn below(&mut self, n: usize) -> usize {
        usize::try_from(self.next() % u64::try_from(n).unwrap()).unwrap()
    }

    #[expect(clippy::cast_precision_loss, reason = "53 bits")]
    fn unit(&mut self) -> f64 {
        (self.next() >> 11) as f64 / 9_007_199_254_740_992.0
    }

    fn hits(&mut self, probability: f64) -> bool {
        self.unit() < probability
    }
}

/// What a simulated class does.
struct Habits {
    seats: usize,
    today: NaiveDate,
    /// School days with reports, up to today.
    days: usize,
    /// Probability that a student reports on a concept of a day, and marks the result.
    reports: f64,
    marks: f64,
    /// Practice answers of a student on a concept; 0 for none.
    practice: u32,
    /// Success of the class on all concepts, and how much the ratings exceed it.
    ability: f64,
    boast: f64,
    /// What was taught again: how many school days before the last of them, in which place of the
    /// review, and whether to every second student only.
    taught: Vec<(usize, usize, bool)>,
    /// What teaching again adds to the logit of success.
    lift: f64,
}

impl Habits {
    fn drawn(dice: &mut Dice) -> Self {
        let year: Vec<NaiveDate> = (date("2026-08-31").iter_days().take(240)).collect();
        Self {
            seats: 1 + dice.below(MOST_SEATS),
            today: year[dice.below(year.len())],
            days: [0, 3, 12, 25, 50][dice.below(5)],
            reports: [0.3, 0.9][dice.below(2)],
            marks: [0.0, 0.4, 0.9][dice.below(3)],
            practice: [0, 5, 40][dice.below(3)],
            ability: [-1.5, -0.3, 0.6, 2.5][dice.below(4)],
            boast: [-2.0, 0.0, 2.0][dice.below(3)],
            taught: (0..[0, 1, 3][dice.below(3)])
                .map(|_| (dice.below(45), dice.below(4), dice.hits(0.3)))
                .collect(),
            lift: [0.0, 2.5][dice.below(2)],
        }
    }
}

fn sigma(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

fn said<V>(at: u32, value: V) -> Option<Said<V>> {
    Some(Said {
        at,
        value: Some(value),
    })
}

/// A copy of a desk. To derive the seat codes of a new class takes far longer.
fn copy_of(desk: &Desk) -> Desk {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("desk.sqlite");
    desk.store.copy_into(&path).unwrap();
    Desk {
        store: DeskStore::open(&path, Durability::Relaxed).unwrap(),
        class: desk.class.clone(),
        folder,
    }
}

/// Fills the class with reports.
fn live(desk: &Desk, class: &OpenClass, dice: &mut Dice, habits: &Habits) {
    let facts = &class.facts;
    let hard: BTreeMap<&str, f64> = (facts.by_strand().into_iter())
        .map(|concept| (concept, 3.0 * dice.unit() - 1.5))
        .collect();
    let mut days: Vec<NaiveDate> = facts.year.school_days().collect();
    days.retain(|day| *day <= habits.today);
    let mut taught: BTreeMap<&str, NaiveDate> = BTreeMap::new();
    for (before, place, some) in &habits.taught {
        let Some(on) = days.len().checked_sub(before + 1).map(|at| days[at]) else {
            continue;
        };
        let of_day = facts.rotation.concepts_on(&facts.year, on);
        let Some(concept) = of_day.get(*place) else {
            continue;
        };
        let seats = 1..=u32::try_from(habits.seats).unwrap();
        let entry = NewTaughtAgain {
            replaces: None,
            date: on,
            concept: concept.as_str().to_owned(),
            came_from: TaughtFromWhere::Hand,
            seats: seats.filter(|seat| *some && seat % 2 == 1).collect(),
            note: None,
        };
        note_taught_again(&desk.store, class, &entry, habits.today).unwrap();
        taught.insert(concept.as_str(), on);
    }
    let days = &days[days.len().saturating_sub(habits.days)..];
    for seat in 1..=u32::try_from(habits.seats).unwrap() {
        let own = 2.0 * dice.unit() - 1.0;
        let (mut check_ins, mut practice) = (Vec::new(), Vec::new());
        for day in days {
            for concept in facts.rotation.concepts_on(&facts.year, *day) {
                if !dice.hits(habits.reports) {
                    continue;
                }
                let lifted = taught.get(concept.as_str()).is_some_and(|on| on < day);
                let lift = if lifted { habits.lift } else { 0.0 };
                let logit = habits.ability + own - hard[concept.as_str()] + lift;
                let feels = (4.0 * sigma(logit + habits.boast + dice.unit() - 0.5)).floor();
                let rating = [0, 1, 2, 3]
                    .into_iter()
                    .rev()
                    .find(|r| f64::from(*r) <= feels)
                    .unwrap();
                let confidence: Confidence = rating.try_into().unwrap();
                let outcome = dice.hits(habits.marks).then(|| {
                    if dice.hits(sigma(logit)) {
                        Outcome::Right
                    } else {
                        Outcome::Wrong
                    }
                });
                check_ins.push(CheckIn {
                    device: device_of(seat),
                    date: *day,
                    concept: ConceptId::new(concept).unwrap(),
                    confidence: said(1, confidence),
                    outcome: outcome.and_then(|outcome| said(2, outcome)),
                });
                if habits.practice == 0 {
                    continue;
                }
                let right = (0..habits.practice)
                    .filter(|_| dice.hits(sigma(logit)))
                    .count();
                let alone = u32::try_from(right).unwrap();
                practice.push(Practice {
                    device: device_of(seat),
                    date: *day,
                    concept: ConceptId::new(concept).unwrap(),
                    sequence: 3,
                    answers: vec![AnswerCount {
                        confidence: Some(confidence),
                        alone,
                        with_help: 0,
                        wrong: habits.practice - alone,
                    }],
                    misconceptions: BTreeMap::new(),
                });
            }
        }
        if !check_ins.is_empty() {
            let record = Record::from_entries(check_ins, practice);
            desk.writer(seat).write(&record).unwrap();
        }
    }
}

fn now(desk: &Desk, today: NaiveDate) -> ClassNow {
    class_now(&desk.store, &desk.open(), Language::first(), today).unwrap()
}

fn place(says: &SentenceKind) -> (usize, &'static str) {
    match says {
        SentenceKind::Talk { .. } => (0, "talk"),
        SentenceKind::SureAndWrong { .. } => (1, "sure and wrong"),
        SentenceKind::Weak { .. } => (2, "weak"),
        SentenceKind::NothingWeak { .. } => (2, "nothing weak"),
        SentenceKind::Together { .. } => (3, "together"),
        SentenceKind::TaughtAgain { .. } => (4, "taught again"),
        SentenceKind::SureButWrong { .. } => (5, "sure but wrong"),
        SentenceKind::UnsureButRight { .. } => (6, "unsure but right"),
    }
}

fn step(from_limit: f64, to_end: f64) -> Certainty {
    if from_limit >= to_end {
        Certainty::Clear
    } else if from_limit >= to_end / 2.0 {
        Certainty::Likely
    } else {
        Certainty::NotSure
    }
}

/// The steps of a row for "weak" and for "in hand".
fn steps(row: &BoardRow) -> [Certainty; 2] {
    let Some(share) = row.has_it.filter(|_| !row.ask_first) else {
        let step = if row.ask_first {
            Certainty::AskFirst
        } else {
            Certainty::RatingsAlone
        };
        return [step; 2];
    };
    [
        step(ENOUGH - share, row.high.unwrap() - share),
        step(share - ENOUGH, share - row.low.unwrap()),
    ]
}

fn is_rounded(count: u32, share: f64, of: u32) -> bool {
    (f64::from(count) - share * f64::from(of)).abs() <= 0.5 + 1e-9
}

/// The screens of a class. Each reads and estimates the class itself.
struct Screens {
    /// Opened once.
    class: OpenClass,
    board: Board,
    talks: [TalkView; 2],
    comparison: Comparison,
    taught: TaughtAgainLog,
}

impl Screens {
    fn of(desk: &Desk, class: OpenClass, today: NaiveDate) -> Self {
        let (store, language) = (&desk.store, Language::first());
        let minutes = USUAL_TALK_MINUTES;
        Self {
            board: board(store, &class, &[], language, today).unwrap(),
            talks: [
                talk(store, &class, language, today, minutes).unwrap(),
                talk_on(store, &class, language, today, minutes, TalkDay::Second).unwrap(),
            ],
            comparison: comparison(store, &class, language, today).unwrap(),
            taught: taught_again(store, &class, language, today).unwrap(),
            class,
        }
    }
}

/// The verdict that the first screen should say, by the list of what was taught again.
fn verdict_to_say(screens: &Screens, today: NaiveDate) -> Option<&TaughtAgainEntry> {
    let days: Vec<NaiveDate> = screens.class.facts.year.school_days().collect();
    let two_passes = 2 * screens.class.facts.rotation.days().len();
    let news = |entry: &&TaughtAgainEntry| {
        let until = entry.help.until;
        until.is_some_and(|until| {
            let since = days.iter().filter(|day| until <= **day && **day < today);
            since.count() <= two_passes
        })
    };
    let entries: Vec<&TaughtAgainEntry> =
        screens.taught.entries.iter().filter(news).take(6).collect();
    let newest = |says: &[HelpSays]| {
        let mut of = entries.iter().copied();
        of.find(|entry| says.contains(&entry.help.says))
    };
    newest(&[
        HelpSays::RoseMore,
        HelpSays::LikelyRoseMore,
        HelpSays::NoSign,
    ])
    .or_else(|| newest(&[HelpSays::CannotTell]))
}

/// Compares the sentences with the screens.
fn agrees(desk: &Desk, screens: &Screens, today: NaiveDate, found: &ClassNow) {
    let class = &screens.class;
    let shown = &screens.board;
    assert_eq!(found.seats_reporting, shown.seats_reporting);
    assert_eq!(
        found.knowledge,
        match (shown.seats_reporting, shown.level_known) {
            (0, _) => Knowledge::Nothing,
            (_, known) if known => Knowledge::Level,
            _ => Knowledge::Order,
        }
    );
    let missing = who_has_not(&desk.store, class, USUAL_LATE_SCHOOL_DAYS, today).unwrap();
    assert_eq!(found.lacking, missing.count());
    assert!(found.sentences.len() <= MOST_SENTENCES);
    let order: Vec<usize> = (found.sentences.iter())
        .map(|sentence| place(&sentence.says).0)
        .collect();
    assert!(order.is_sorted(), "{order:?}");
    let text = serde_json::to_string(found).unwrap();
    for number in ["has_it", "probability", "need"] {
        assert!(!text.contains(&format!("\"{number}\"")), "{number}");
    }

    let verdicts = (found.sentences.iter()).filter(|sentence| place(&sentence.says).0 == 4);
    let expected = usize::from(verdict_to_say(screens, today).is_some());
    assert_eq!(verdicts.count(), expected);

    let mut of_class: BTreeSet<&str> = BTreeSet::new();
    let mut ranks = Vec::new();
    for sentence in &found.sentences {
        let row = sentence.concept.as_ref().map(|concept| {
            let mut rows = shown.rows.iter();
            rows.find(|row| row.concept == *concept).unwrap()
        });
        agrees_one(desk, screens, sentence, row, today);
        let weak = matches!(sentence.says, SentenceKind::Weak { .. });
        if let Some(row) = row.filter(|_| place(&sentence.says).0 <= 2) {
            let new = of_class.insert(&row.concept.id);
            assert!(new || !weak, "{} is called weak twice", row.concept.id);
            if weak {
                ranks.push(row.rank.unwrap());
            }
        }
    }
    assert!(ranks.is_sorted());
    days_agree(screens, found);
}

fn agrees_one(
    desk: &Desk,
    screens: &Screens,
    sentence: &Sentence,
    row: Option<&BoardRow>,
    today: NaiveDate,
) {
    let (class, language) = (&screens.class, Language::first());
    let own = || row.unwrap().concept.id.as_str();
    let shown = &screens.board;
    let estimated = shown.level_known;
    match &sentence.says {
        SentenceKind::Talk {
            date,
            is_today,
            way,
            minutes,
            wrong,
        } => {
            let view = &screens.talks[0];
            assert_eq!((view.date, view.is_today), (*date, *is_today));
            let mut chosen = view.concepts.iter().filter(|one| one.chosen);
            let one = chosen.find(|one| one.concept.id == own()).unwrap();
            assert_eq!((one.way, one.minutes), (Some(*way), *minutes));
            assert_eq!(wrong.is_some(), estimated);
            if let (Some(wrong), Some(expected)) = (wrong, one.expected_wrong) {
                assert!((f64::from(*wrong) - expected).abs() <= 0.5 + 1e-9);
            }
            let [weak, in_hand] = steps(row.unwrap());
            let short = *way == crate::TalkWay::ShortLook;
            assert_eq!(sentence.certainty, if short { in_hand } else { weak });
        }
        SentenceKind::SureAndWrong { sure, rated } => {
            let row = row.unwrap();
            assert!(row.sure_and_wrong);
            assert_eq!(*sure, row.latest[2] + row.latest[3]);
            assert_eq!(*rated, row.latest.iter().sum::<u32>());
            assert_eq!(sentence.certainty == Certainty::AskFirst, row.ask_first);
        }
        SentenceKind::Weak { heads, low, rated } => {
            let row = row.unwrap();
            assert_eq!(*low, row.latest[0] + row.latest[1]);
            assert_eq!(*rated, row.latest.iter().sum::<u32>());
            assert_eq!(heads.is_some(), estimated);
            if let Some(Heads {
                about,
                low,
                high,
                of,
            }) = heads
            {
                assert_eq!(*of as usize, shown.seats);
                assert!(row.has_it.unwrap() < ENOUGH);
                assert!(low <= about && about <= high && high <= of);
                assert!(is_rounded(*about, row.has_it.unwrap(), *of));
                assert!(is_rounded(*low, row.low.unwrap(), *of));
                assert!(is_rounded(*high, row.high.unwrap(), *of));
            } else {
                assert!(*low > 0);
            }
            assert_eq!(sentence.certainty, steps(row)[0]);
        }
        SentenceKind::NothingWeak { concepts } => {
            let ranked: Vec<&BoardRow> =
                shown.rows.iter().filter(|row| row.rank.is_some()).collect();
            assert_eq!(*concepts, ranked.len());
            assert!(ranked.iter().all(|row| row.has_it.unwrap() >= ENOUGH));
        }
        SentenceKind::Together {
            students,
            estimated: told,
        } => {
            assert_eq!(*told, estimated);
            assert!(students.len() >= 2 && students.len() * 2 < shown.seats_reporting);
            assert_ne!(row.unwrap().phase, Phase::Preview);
            let page = concept_reports(&desk.store, class, own(), language, today).unwrap();
            let named: BTreeSet<u32> = students.iter().map(|student| student.seat).collect();
            assert_eq!(named.len(), students.len());
            for student in &page.students {
                let here = named.contains(&student.seat);
                let rating = student.history.iter().rev().find_map(|on| on.confidence);
                match student.has_it {
                    // Need is one half or more only if success is at most .6 probable.
                    Some(has_it) if estimated => assert!(!here || has_it <= 0.6),
                    _ if estimated => {}
                    _ => assert_eq!(here, rating.is_some_and(Confidence::needs_help)),
                }
            }
            assert_eq!(
                sentence.certainty == Certainty::RatingsAlone,
                !estimated && !row.unwrap().ask_first
            );
        }
        SentenceKind::TaughtAgain {
            help,
            since,
            taught,
            next_on,
        } => {
            let entry = verdict_to_say(screens, today).unwrap();
            assert_eq!(sentence.concept.as_ref(), Some(&entry.concept));
            assert_eq!((*help, *since), (entry.help.says, entry.date));
            assert_eq!(*taught, entry.members.len());
            let again = (entry.help.next_on).filter(|_| *help == HelpSays::CannotTell);
            assert_eq!(*next_on, again);
            assert_eq!(
                sentence.certainty == Certainty::NotSure,
                *help == HelpSays::CannotTell
            );
            let clear = sentence.certainty == Certainty::Clear;
            assert_eq!(clear, *help == HelpSays::RoseMore);
            assert!(sentence.actions.is_empty());
        }
        SentenceKind::SureButWrong { students } | SentenceKind::UnsureButRight { students } => {
            let list = if matches!(sentence.says, SentenceKind::SureButWrong { .. }) {
                &screens.comparison.sure_but_wrong
            } else {
                &screens.comparison.unsure_but_right
            };
            let seats = |of: &str| -> BTreeSet<u32> {
                let here = list.iter().filter(|one| one.concept.id == of);
                here.map(|one| one.student.seat).collect()
            };
            let said: BTreeSet<u32> = students.iter().map(|student| student.seat).collect();
            assert_eq!(said, seats(own()));
            assert_eq!(sentence.certainty, Certainty::Counted);
        }
    }
}

fn days_agree(screens: &Screens, found: &ClassNow) {
    let class = &screens.class;
    let (year, rotation) = (&class.facts.year, &class.facts.rotation);
    for (plan, view) in found.days.iter().zip(&screens.talks) {
        let concepts: Vec<&str> = (plan.concepts.iter())
            .map(|one| one.concept.id.as_str())
            .collect();
        assert_eq!(concepts, rotation.concepts_on(year, plan.date));
        assert_eq!((view.date, view.day), (plan.date, Some(plan.day)));
        let chosen = |id: &str| {
            let mut of = view.concepts.iter().filter(|one| one.chosen);
            of.find(|one| one.concept.id == id).and_then(|one| one.way)
        };
        for one in &plan.concepts {
            assert_eq!(one.talk, chosen(&one.concept.id));
        }
    }
    let [first, second] = &found.days[..] else {
        assert!(found.days.is_empty() || year.next_school_day(found.days[0].date).is_none());
        return;
    };
    assert_eq!(year.next_school_day(first.date), Some(second.date));
    assert_eq!(first.is_today, year.is_school_day(found.today));
}

#[test]
fn in_a_thousand_classes_no_sentence_differs_from_the_screens() {
    let mut dice = Dice(18);
    let mut seen: BTreeMap<(&str, String), usize> = BTreeMap::new();
    let mut knowledge: BTreeMap<String, usize> = BTreeMap::new();
    let mut verdicts: BTreeMap<String, usize> = BTreeMap::new();
    let empty: Vec<Desk> = (1..=MOST_SEATS).map(Desk::with_seats).collect();
    for _ in 0..CLASSES {
        let habits = Habits::drawn(&mut dice);
        let desk = copy_of(&empty[habits.seats - 1]);
        let class = desk.open();
        live(&desk, &class, &mut dice, &habits);
        let (store, today) = (&desk.store, habits.today);
        let found = class_now(store, &class, Language::first(), today).unwrap();
        let screens = Screens::of(&desk, class, today);
        agrees(&desk, &screens, today, &found);
        *knowledge
            .entry(format!("{:?}", found.knowledge))
            .or_default() += 1;
        for sentence in &found.sentences {
            let step = format!("{:?}", sentence.certainty);
            *seen.entry((place(&sentence.says).1, step)).or_default() += 1;
            if let SentenceKind::TaughtAgain { help, .. } = sentence.says {
                *verdicts.entry(format!("{help:?}")).or_default() += 1;
            }
        }
    }
    // A rare kind would be compared with nothing.
    let of = |kind: &str| -> usize {
        let own = seen.iter().filter(|((k, _), _)| *k == kind);
        own.map(|(_, count)| count).sum()
    };
    for kind in [
        "talk",
        "sure and wrong",
        "weak",
        "nothing weak",
        "together",
        "taught again",
        "sure but wrong",
        "unsure but right",
    ] {
        assert!(of(kind) >= 10, "{kind}: {seen:?}");
    }
    for step in [
        "Counted",
        "Clear",
        "Likely",
        "NotSure",
        "RatingsAlone",
        "AskFirst",
    ] {
        assert!(seen.keys().any(|(_, s)| s == step), "{step}: {seen:?}");
    }
    assert_eq!(verdicts.len(), 4, "{verdicts:?}");
    assert!(
        knowledge.values().all(|n| *n >= 50) && knowledge.len() == 3,
        "{knowledge:?}"
    );
}

/// The first Monday of pass 3.
const TODAY: &str = "2026-09-28";

#[test]
fn before_any_report_nothing_is_said_but_the_days_stand_there() {
    let desk = Desk::with_seats(8);
    let found = now(&desk, date(TODAY));
    assert_eq!(found.knowledge, Knowledge::Nothing);
    assert!(found.sentences.is_empty());
    assert_eq!(found.days.len(), 2);
    assert!(found.days[0].is_today && !found.days[1].is_today);
    assert_eq!((found.days[0].day, found.days[1].day), (1, 2));
    // On a day without school, the next two.
    set_closures(&desk.store, &desk.class, [date(TODAY)].into()).unwrap();
    let found = now(&desk, date(TODAY));
    assert_eq!(found.days[0].date, date("2026-09-29"));
    assert_eq!((found.days[0].day, found.days[0].is_today), (1, false));
    assert!(now(&desk, date("2027-06-01")).days.is_empty());
}

#[test]
fn ratings_alone_count_students_and_give_no_level() {
    let desk = Desk::with_seats(10);
    let concept = desk.concept(3);
    set_taught_from(&desk.store, &desk.class, &concept, Some(date("2026-08-31"))).unwrap();
    for seat in 1..=10 {
        desk.rate(seat, "2026-09-17", &concept, if seat <= 4 { 0 } else { 3 });
    }
    let found = now(&desk, date(TODAY));
    assert_eq!(found.knowledge, Knowledge::Order);
    let says: Vec<&SentenceKind> = found.sentences.iter().map(|s| &s.says).collect();
    let weak = SentenceKind::Weak {
        heads: None,
        low: 4,
        rated: 10,
    };
    assert_eq!(says[0], &weak);
    let SentenceKind::Together { students, .. } = says[1] else {
        panic!("{says:?}");
    };
    let seats: Vec<u32> = students.iter().map(|student| student.seat).collect();
    assert_eq!(seats, [1, 2, 3, 4]);
    assert!(
        (found.sentences.iter()).all(|sentence| sentence.certainty == Certainty::RatingsAlone),
        "{:?}",
        found.sentences
    );
}

#[test]
fn a_weak_prerequisite_is_named_before_the_first_lesson() {
    let desk = Desk::with_seats(8);
    let class = desk.open();
    let facts = &class.facts;
    // A pair of concepts of the rotation, where one builds on the other.
    let (before, after) = facts
        .by_strand()
        .into_iter()
        .find_map(|id| {
            let known = facts.concepts.get(id)?;
            let before = known
                .prerequisites
                .iter()
                .find(|p| facts.concepts.contains_key(p.as_str()))?;
            Some((before.as_str().to_owned(), id.to_owned()))
        })
        .unwrap();
    let day = facts.rotation.day_of(&after).unwrap();
    let on = facts.year.school_days().nth(20 + day).unwrap();
    set_taught_from(&desk.store, &desk.class, &before, Some(date("2026-08-31"))).unwrap();
    for seat in 1..=8 {
        desk.rate(seat, "2026-09-01", &before, 0);
    }
    let lacking = |first: NaiveDate| {
        set_taught_from(&desk.store, &desk.class, &after, Some(first)).unwrap();
        let found = now(&desk, on);
        let mut concepts = found.days[0].concepts.clone().into_iter();
        let one = concepts.find(|one| one.concept.id == after).unwrap();
        let weak: Vec<String> = one.weak_before.into_iter().map(|c| c.id).collect();
        (one.first_lesson, weak)
    };
    assert_eq!(lacking(on), (true, vec![before.clone()]));
    let days: Vec<NaiveDate> = facts.year.school_days().collect();
    let at = days.iter().position(|day| *day == on).unwrap();
    assert_eq!(lacking(days[at + 10]), (false, vec![before]));
    assert_eq!(lacking(days[at + 11]), (false, vec![]));
}

#[test]
fn a_concept_without_exercises_cannot_be_shown_assigned_or_printed() {
    let desk = Desk::with_seats(10);
    let class = desk.open();
    let facts = &class.facts;
    for concept in facts.by_strand() {
        set_taught_from(&desk.store, &desk.class, concept, Some(date("2026-08-31"))).unwrap();
        for seat in 1..=10 {
            desk.rate(seat, "2026-09-17", concept, u8::from(seat > 4) * 3);
        }
    }
    let found = now(&desk, date(TODAY));
    assert_eq!(found.sentences.len(), MOST_SENTENCES);
    for sentence in &found.sentences {
        let concept = sentence.concept.as_ref().unwrap();
        let exercise = |action: &SentenceAction| *action != SentenceAction::Group;
        let possible = sentence.actions.iter().any(exercise);
        assert_eq!(possible, concept.has_exercises);
        let shown = concept_to_show(
            &desk.store,
            &class,
            &concept.id,
            Language::first(),
            date(TODAY),
        );
        assert_eq!(shown.unwrap().exercise.is_some(), concept.has_exercises);
    }
    let unknown = concept_to_show(&desk.store, &class, "none", Language::first(), date(TODAY));
    assert!(unknown.is_err());
}
