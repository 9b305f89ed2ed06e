//! Tables for the terminal.

use crate::out::put_line;
use surefoot_desk::GroupsView;
use surefoot_desk::{Board, Trend};
use surefoot_desk::{TalkView, TalkWay};

/// Said while the level of a class is not known.
const ORDER_ALONE: &str =
    "Too few results and practice: the order of the concepts is known, the shares are not.";

/// A share in whole percent.
pub fn percent(share: Option<f64>) -> String {
    share.map_or_else(|| "-".to_owned(), |share| format!("{:.0}%", 100.0 * share))
}

fn trend(trend: Trend) -> &'static str {
    match trend {
        Trend::Rising => "rising",
        Trend::Falling => "falling",
        Trend::MaybeRising => "perhaps rising",
        Trend::MaybeFalling => "perhaps falling",
        Trend::NoClearChange => "no clear change",
        Trend::TooSoon => "too soon to say",
    }
}

/// The first rows of a board.
pub fn print_board(board: &Board, most: usize) {
    put_line!(
        "{}: {} of {} seats have reported, typically {} days ago. Weakest first:",
        board.class_title,
        board.seats_reporting,
        board.seats,
        board
            .typical_report_days
            .map_or_else(|| "-".to_owned(), |days| days.to_string())
    );
    put_line!(
        "{:>4}  {:<42} {:>6} {:>13} {:>9} {:>6}  {:<22} trend",
        "rank",
        "concept",
        "has it",
        "likely range",
        "reporters",
        "age",
        "Not yet/Help/Own/Teach"
    );
    if !board.level_known && board.seats_reporting > 0 {
        put_line!("{ORDER_ALONE}");
    }
    for row in board.rows.iter().take(most) {
        let range = match (row.low, row.high) {
            (Some(low), Some(high)) => format!("{:.0} to {:.0}%", 100.0 * low, 100.0 * high),
            _ => "-".to_owned(),
        };
        let latest = row.latest.map(|n| n.to_string()).join("/");
        put_line!(
            "{:>4}  {:<42} {:>6} {:>13} {:>9} {:>5}d  {:<22} {}",
            row.rank
                .map_or_else(|| "-".to_owned(), |rank| rank.to_string()),
            row.concept.title,
            percent(row.has_it),
            range,
            row.reporters,
            row.newest_days
                .map_or_else(|| "-".to_owned(), |days| days.to_string()),
            latest,
            if row.sure_and_wrong {
                "the class feels sure, and most answers are wrong"
            } else if row.ask_first {
                "few have reported: ask first"
            } else {
                trend(row.trend)
            }
        );
    }
}

/// Small groups.
pub fn print_groups(groups: &GroupsView) {
    if groups.level_known {
        put_line!("Small groups that would help most:");
    } else {
        put_line!("{ORDER_ALONE}");
        put_line!("Small groups of those who are weaker than the others:");
    }
    for group in &groups.groups {
        let members: Vec<String> = group
            .members
            .iter()
            .map(|m| m.name.clone().unwrap_or_else(|| format!("seat {}", m.seat)))
            .collect();
        put_line!(
            "  time {}, {}: {}",
            group.slot + 1,
            group.concept.title,
            members.join(", ")
        );
    }
    if groups.groups.is_empty() {
        put_line!("  none: too few reports, or nobody needs a group");
    }
}

/// A number of students, if there is one.
fn students(number: Option<f64>, decimals: usize) -> String {
    number.map_or_else(|| "-".to_owned(), |number| format!("{number:.decimals$}"))
}

/// A day's talk plan.
pub fn print_talk(talk: &TalkView) {
    let Some(day) = talk.day else {
        put_line!("{}: the school year is over.", talk.class_title);
        return;
    };
    put_line!(
        "{}, {} (day {day} of the rotation): {} of {} minutes.",
        talk.class_title,
        talk.date,
        talk.minutes_used,
        talk.minutes
    );
    if !talk.level_known {
        put_line!("{ORDER_ALONE}");
    }
    put_line!(
        "{:<6} {:<42} {:<12} {:>3} {:>6} {:>6} {:>6} {:>6}  trend",
        "",
        "concept",
        "way",
        "min",
        "worth",
        "has it",
        "wrong",
        "sure"
    );
    for row in &talk.concepts {
        put_line!(
            "{:<6} {:<42} {:<12} {:>3} {:>6} {:>6} {:>6} {:>6}  {}{}",
            if row.chosen { "talk" } else { "" },
            row.concept.title,
            match row.way {
                Some(TalkWay::TeachAgain) => "teach again",
                Some(TalkWay::PairTalk) => "pair talk",
                Some(TalkWay::ShortLook) => "short look",
                None => "-",
            },
            row.minutes,
            students(row.worth, 2),
            percent(row.has_it),
            students(row.expected_wrong, 1),
            students(row.sure_wrong, 1),
            trend(row.trend),
            if row.talked_lately {
                ", discussed lately"
            } else {
                ""
            }
        );
    }
    put_line!(
        "Worth: students expected to get it right afterwards. Sure: of the wrong ones, those whose last rating was On my own or Could teach it."
    );
}
