//! Clocks, elapsed time, mass and liquid volume.

use crate::answer::Entry;
use crate::draw::{Line, clock, scale};
use crate::expr::{Expr, difference, equal, num, product, sum};
use crate::figure::ScaleShape;
use crate::make::{Draft, Generator, Make, duration, keep, time, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-time-tell", 3, tell),
    Generator::new("g3-time-elapsed", 3, elapsed),
    Generator::new("g3-mass-volume", 3, mass_volume),
];

fn tell(m: &mut Make) -> Option<Draft> {
    let hour = m.dice.from(1..=12);
    let minute = m.level.pick(
        m.dice.from(1..=11) * 5,
        m.dice.from(1..=59),
        m.dice.from(36..=59),
    );
    keep(m.level == crate::Level::Entry || minute % 5 != 0)?;
    let swapped_hour = if minute / 5 == 0 { 12 } else { minute / 5 };
    keep(swapped_hour != hour)?;
    let (low, rest) = (minute / 5 * 5, minute % 5);
    let draft =
        Draft::new(json!({"task": "clock_time", "hour_hand_after": hour, "small_marks": minute}));
    let plain = [m.say("ask").into()];
    let draft = m
        .asked(draft, plain, 5, |say| say)
        .ask(clock(hour, minute))
        .answer(Entry::Time { half_day: false }, time(hour, minute))
        .hint(m.say("hint-short"))
        .hint(m.say("hint-long"))
        .step(
            m.say("step-hour")
                .count("hour", hour)
                .count("next", hour % 12 + 1),
        );
    let draft = if rest == 0 {
        draft.step(
            m.say("step-fives")
                .count("fives", minute / 5)
                .count("minute", minute),
        )
    } else if low == 0 {
        draft.step(m.say("step-few").count("minute", minute))
    } else {
        draft.step(
            m.say("step-minutes")
                .count("low", low)
                .count("rest", rest)
                .count("minute", minute),
        )
    };
    Some(
        draft
            .misconception("clock-hands-swapped", time(swapped_hour, hour * 5 % 60))
            .misconception("next-hour-taken", time(hour % 12 + 1, minute))
            .misconception_unless_same("minute-hand-read-as-hour-number", time(hour, minute / 5)),
    )
}

fn at(total: i64) -> Expr {
    let total = total.rem_euclid(720);
    Expr::Time {
        hour: (if total / 60 == 0 { 12 } else { total / 60 }) as u8,
        minute: (total % 60) as u8,
    }
}

/// The words before a time of day: Spanish says "a la 1:05" and "a las 2:05".
fn clock_word(total: i64) -> &'static str {
    if total.rem_euclid(720) / 60 == 1 {
        "clock-one"
    } else {
        "clock-many"
    }
}

fn clock_text(total: i64) -> String {
    let total = total.rem_euclid(720);
    format!(
        "{}:{:02}",
        if total / 60 == 0 { 12 } else { total / 60 },
        total % 60
    )
}

fn elapsed(m: &mut Make) -> Option<Draft> {
    let start = m.dice.from(1..=10) * 60 + m.dice.from(1..=59);
    let minutes = m.dice.from(m.level.pick(5..=40, 12..=59, 18..=59));
    let end = start + minutes;
    let crosses = end / 60 != start / 60 && end % 60 != 0;
    keep(
        crosses != m.level.pick(true, false, false) && (crosses || m.level == crate::Level::Entry),
    )?;
    let (sm, em) = (start % 60, end % 60);
    keep(sm != 0)?;
    let to_hour = 60 - sm;
    let name = m.dice.name();
    if m.level == crate::Level::Stretch {
        let clock_answer = |t: i64| {
            let t = t.rem_euclid(720);
            time(if t / 60 == 0 { 12 } else { t / 60 }, t % 60)
        };
        let before = m.dice.one_in(2);
        let (given, asked) = if before { (end, start) } else { (start, end) };
        return Some(
            Draft::new(json!({"task": if before { "start_time" } else { "end_time" }, "at": clock_text(given), "minutes": minutes}))
                .ask(m.say(if before { "ask-start" } else { "ask-end" }).text("name", name).math("at", at(given)).word("hour", clock_word(given)).count("minutes", minutes))
                .answer(Entry::Time { half_day: false }, clock_answer(asked))
                .hint(m.say("hint-hour"))
                .hint(m.say(if before { "hint-back" } else { "hint-on" }).count("minutes", minutes))
                .step(m.say(if before { "step-back-hour" } else { "step-to-hour" }).count("minutes", if before { em } else { to_hour }))
                .step(m.say(if before { "step-back-rest" } else { "step-rest" }).count("minutes", if before { minutes - em } else { minutes - to_hour }).math("at", at(asked)).word("hour", clock_word(asked)))
                .misconception("hour-not-changed", clock_answer(if before { start + 60 } else { end - 60 }))
                .misconception("time-counted-the-wrong-way", clock_answer(if before { end + minutes } else { start - minutes })),
        );
    }
    // Times read as plain numbers: 3:12 − 2:47 as 312 − 247.
    let as_hundreds = (end / 60 - start / 60) * 100 + em - sm;
    let line = Line::new(start - sm, start - sm + 120, 10)
        .label(start - sm, at(start - sm))
        .label(start - sm + 60, at(start - sm + 60))
        .label(start - sm + 120, at(start - sm + 120))
        .figure_as(
            m.say("line")
                .math("from", at(start - sm))
                .math("to", at(start - sm + 120)),
        );
    let draft = Draft::new(
        json!({"task": "minutes_between", "from": clock_text(start), "to": clock_text(end)}),
    )
    .ask(
        m.say(&format!("ask-{}", m.level.pick(1, 2, 2)))
            .text("name", name)
            .math("from", at(start))
            .math("to", at(end))
            .word("start", clock_word(start))
            .word("end", clock_word(end)),
    )
    .answer(Entry::Duration { hours: false }, duration(minutes))
    .hint(m.say("hint-hour"))
    .hint_with(m.say("hint-line"), line);
    Some(if crosses {
        draft
            .step(m.say("step-to-hour").count("minutes", to_hour))
            .step(m.say("step-past").count("minutes", em))
            .step(equal(sum([num(to_hour), num(em)]), num(minutes)))
            .misconception("hour-taken-as-hundred", duration(as_hundreds))
            .misconception_unless_same("minutes-subtracted-without-hour", duration((em - sm).abs()))
    } else {
        draft
            .step(m.say("step-same-hour"))
            .step(equal(difference(num(em), num(sm)), num(minutes)))
            .misconception("added-instead", duration(em + sm))
            .misconception("counted-to-the-next-hour", duration(to_hour))
    })
}

/// Things and what they weigh or hold: (message, unit of mass or volume, amounts of it that
/// are sensible, the other unit).
const THINGS: [(&str, &str, &[i64], &str); 10] = [
    ("thing-apple", "unit-g", &[150, 180, 200], "unit-kg"),
    ("thing-pencil", "unit-g", &[5, 6, 8], "unit-kg"),
    ("thing-cat", "unit-kg", &[3, 4, 5], "unit-g"),
    ("thing-bike", "unit-kg", &[9, 11, 14], "unit-g"),
    ("thing-melon", "unit-kg", &[3, 5, 6], "unit-g"),
    ("thing-letter", "unit-g", &[15, 20, 25], "unit-kg"),
    ("thing-spoon", "unit-ml", &[5, 10, 15], "unit-l"),
    ("thing-glass", "unit-ml", &[200, 250, 300], "unit-l"),
    ("thing-bucket", "unit-l", &[8, 10, 12], "unit-ml"),
    ("thing-tub", "unit-l", &[120, 150, 180], "unit-ml"),
];

/// Which amount is sensible: the same number with the other unit, or far more, is not.
fn sensible_amount(m: &mut Make) -> Option<Draft> {
    let (thing, unit, amounts, other) = m.dice.pick(&THINGS);
    let amount = m.dice.pick(amounts);
    // A hundred times as much, or a hundredth where that is a whole number.
    let off = if amount >= 100 && m.dice.one_in(2) {
        amount / 100
    } else {
        amount * 100
    };
    keep(off != amount && off > 0)?;
    let shown = |amount: i64, unit: &'static str| crate::expr::measure(num(amount), unit);
    Some(
        Draft::new(json!({
            "task": "sensible_amount", "thing": thing.trim_start_matches("thing-"),
            "choices": [[amount, super::units::name(unit)], [amount, super::units::name(other)], [off, super::units::name(unit)]]
        }))
        .ask(m.say(if matches!(unit, "unit-g" | "unit-kg") { "ask-mass" } else { "ask-holds" }).word("thing", thing))
        .one_of(
            &mut m.dice,
            shown(amount, unit),
            vec![
                ("other-unit-of-measure", shown(amount, other).into()),
                ("amount-out-of-range", shown(off, unit).into()),
            ],
        )
        .hint(m.say(if matches!(unit, "unit-g" | "unit-kg") { "hint-gram" } else { "hint-liter" }))
        .hint(m.say("hint-compare"))
        .step(m.say(if matches!(unit, "unit-g" | "unit-kg") { "hint-gram" } else { "hint-liter" }))
        .step(m.say("step-fits").math("amount", shown(amount, unit))),
    )
}

/// So many amounts of the same size.
fn equal_amounts(m: &Make, ask: &str, n: i64, each: i64, unit: &'static str) -> Draft {
    Draft::new(json!({"task": "equal_groups", "groups": n, "each": each}))
        .ask(m.say(ask).count("n", n).count("each", each))
        .whole_unit(n * each, unit)
        .hint(m.say("hint-times"))
        .hint(
            m.say("hint-work")
                .math("work", product([num(n), num(each)])),
        )
        .step(m.say("hint-times"))
        .step(equal(product([num(n), num(each)]), num(n * each)))
        .misconception("added-instead-of-multiplied", whole(n + each))
        .misconception("one-group-left-out", whole((n - 1) * each))
}

fn mass_volume(m: &mut Make) -> Option<Draft> {
    let kind = m.level.pick(
        m.dice.pick(&[1, 1, 5]),
        m.dice.from(1..=6),
        m.dice.from(3..=7),
    );
    Some(match kind {
        5 => sensible_amount(m)?,
        // Whole kilograms and liters: one step.
        6 => {
            let (unit, story) = m.dice.pick(&[("unit-kg", 1), ("unit-l", 2)]);
            let (n, each) = (m.dice.from(3..=9), m.dice.from(2..=10));
            keep(n != each)?;
            equal_amounts(m, &format!("ask-large-{story}"), n, each, unit)
        }
        // What is missing to a total of kilograms or liters.
        7 => {
            let (unit, story) = m.dice.pick(&[("unit-kg", 1), ("unit-l", 2)]);
            let (n, each) = (m.dice.from(3..=6), m.dice.from(3..=9));
            let most = n * each + m.dice.from(4..=15);
            keep(n != each && most != 2 * n * each)?;
            Draft::new(json!({"task": "left_after_buying", "have": most, "count": n, "each": each}))
                .ask(
                    m.say(&format!("ask-room-{story}"))
                        .count("most", most)
                        .count("n", n)
                        .count("each", each),
                )
                .whole_unit(most - n * each, unit)
                .hint(m.say("hint-first"))
                .hint(
                    m.say("hint-work")
                        .math("work", product([num(n), num(each)])),
                )
                .step(equal(product([num(n), num(each)]), num(n * each)))
                .step(equal(
                    difference(num(most), num(n * each)),
                    num(most - n * each),
                ))
                .misconception("stopped-after-one-step", whole(n * each))
                .misconception("used-one-only", whole(most - each))
        }
        1 => {
            let jug = m.dice.one_in(2);
            let (to, label_step, step) = m.dice.pick(&[
                (1000, 200, 50),
                (500, 100, 20),
                (1000, 100, 50),
                (500, 100, 25),
            ]);
            let value = m.dice.step(step..=to - step, step);
            keep(value % label_step != 0)?;
            let unit = if jug { "unit-ml" } else { "unit-g" };
            let below = value / label_step * label_step;
            let marks = (value - below) / step;
            Draft::new(json!({"task": "read_scale", "below": below, "marks": marks, "label_step": label_step, "parts": label_step / step}))
                .ask(m.say(if jug { "ask-jug" } else { "ask-dial" }))
                .ask(scale(if jug { ScaleShape::Jug } else { ScaleShape::Dial }, to, step, label_step, value, unit))
                .whole_unit(value, unit)
                .hint(m.say("hint-between").number("low", below).number("high", below + label_step))
                .hint(m.say("hint-mark").count("parts", label_step / step))
                .step(m.say("step-mark").count("step", step))
                .step(m.say("step-count").count("marks", marks).number("low", below).number("value", value))
                .misconception("mark-taken-as-one", whole(below + marks))
                .misconception("mark-taken-as-ten", whole(below + marks * if step == 10 { 100 } else { 10 }))
        }
        2 => {
            let (n, each) = (m.dice.from(2..=6), m.dice.step(50..=400, 50));
            let (unit, story) = m.dice.pick(&[("unit-g", 1), ("unit-ml", 2)]);
            keep(n * each <= 2000)?;
            equal_amounts(m, &format!("ask-times-{story}"), n, each, unit)
        }
        3 => {
            let (a, b) = (m.dice.step(300..=900, 10), m.dice.step(50..=400, 10));
            keep(a > b + 40)?;
            let (unit, story) = m.dice.pick(&[("unit-g", 1), ("unit-ml", 2)]);
            Draft::new(json!({"task": "subtract", "from": a, "take": b}))
                .ask(
                    m.say(&format!("ask-less-{story}"))
                        .text("name", m.dice.name())
                        .count("a", a)
                        .count("b", b),
                )
                .whole_unit(a - b, unit)
                .hint(m.say("hint-less"))
                .hint(m.say("hint-work").math("work", difference(num(a), num(b))))
                .step(m.say("hint-less"))
                .step(equal(difference(num(a), num(b)), num(a - b)))
                .misconception("added-instead", whole(a + b))
                .misconception("second-amount-as-answer", whole(b))
        }
        _ => {
            let (n, each) = (m.dice.from(3..=9), m.dice.step(20..=90, 10));
            let (unit, story) = m.dice.pick(&[("unit-g", 1), ("unit-ml", 2)]);
            Draft::new(json!({"task": "share_equally", "amount": n * each, "shares": n}))
                .ask(
                    m.say(&format!("ask-share-{story}"))
                        .count("total", n * each)
                        .count("n", n),
                )
                .whole_unit(each, unit)
                .hint(m.say("hint-share"))
                .hint(
                    m.say("hint-work")
                        .math("work", crate::expr::quotient(num(n * each), num(n))),
                )
                .step(m.say("hint-share"))
                .step(equal(
                    crate::expr::quotient(num(n * each), num(n)),
                    num(each),
                ))
                .misconception("subtracted-instead-of-divided", whole(n * each - n))
                .misconception("multiplied-all-numbers", whole(n * each * n))
        }
    })
}
