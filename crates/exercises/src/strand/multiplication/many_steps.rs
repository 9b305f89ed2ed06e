//! Stories of several steps, and what is true of all numbers of a pattern.

use crate::expr::{difference, equal, num, product, quotient, sum};
use crate::make::{Draft, Make, keep, says, whole};
use serde_json::json;

/// Stories of three steps without a remainder (4.OA.A.3).
pub(super) fn three_steps(m: &mut Make) -> Option<Draft> {
    let (n, each) = (
        m.dice.from(m.level.pick(2..=5, 3..=9, 6..=12)),
        m.dice.from(m.level.pick(5..=10, 6..=12, 12..=25)),
    );
    let all = n * each;
    let story = m.dice.from(1..=3);
    let name = m.dice.name();
    if m.dice.one_in(2) {
        let used = m.dice.from(3..=all / 2);
        let shares = m.dice.from(m.level.pick(2..=4, 2..=6, 3..=9));
        let rest = all - used;
        let right = rest / shares;
        keep(rest % shares == 0 && right > 2 && used % shares != 0)?;
        keep(![n, each, used, shares].contains(&right) && n != each && n != shares)?;
        return Some(
            Draft::new(json!({
                "task": "make_use_share", "groups": n, "each": each, "used": used,
                "shares": shares,
            }))
            .ask(
                m.say(&format!("ask-share-{story}"))
                    .text("name", name)
                    .count("n", n)
                    .count("each", each)
                    .count("used", used)
                    .count("shares", shares),
            )
            .whole(right)
            .hint(m.say("hint-all"))
            .hint(m.say("hint-then-share").count("shares", shares))
            .step(equal(product([num(n), num(each)]), num(all)))
            .step(equal(difference(num(all), num(used)), num(rest)))
            .step(equal(quotient(num(rest), num(shares)), num(right)))
            .misconception("first-amount-as-answer", whole(rest))
            .misconception("added-instead", whole((all + used) / shares))
            .misconception_unless_same("multiplied-all-numbers", whole(rest * shares)),
        );
    }
    let (start, spent) = (
        m.dice.from(m.level.pick(10..=40, 30..=150, 200..=900)),
        m.dice.from(m.level.pick(5..=30, 20..=90, 50..=300)),
    );
    let right = start + all - spent;
    keep(right > 4 && spent != all && n != each && ![start, all, spent].contains(&right))?;
    Some(
        Draft::new(json!({
            "task": "start_earn_spend", "start": start, "weeks": n, "each": each, "spent": spent,
        }))
        .ask(
            m.say(&format!("ask-earn-{story}"))
                .text("name", name)
                .count("start", start)
                .count("n", n)
                .count("each", each)
                .count("spent", spent),
        )
        .whole(right)
        .hint(m.say("hint-more"))
        .hint(m.say("hint-then-less"))
        .step(equal(product([num(n), num(each)]), num(all)))
        .step(equal(sum([num(start), num(all)]), num(start + all)))
        .step(equal(difference(num(start + all), num(spent)), num(right)))
        .misconception("first-amount-as-answer", whole(start + all))
        .misconception("added-instead", whole(start + all + spent))
        .misconception_unless_same("used-one-only", whole((start + each - spent).abs())),
    )
}

/// Whether the numbers of a pattern are even, odd, or take turns (4.OA.C.5).
pub(super) fn feature(m: &mut Make) -> Option<Draft> {
    // Each of the three is as likely.
    let right = m.third;
    let start = m.dice.from(m.level.pick(1..=20, 2..=60, 20..=200));
    let by = m.dice.from(m.level.pick(2..=9, 3..=15, 6..=40));
    // An odd rule makes them take turns; else all are like the first.
    let by = by + i64::from((by % 2 == 1) != (right == 2));
    let start = start + i64::from(right != 2 && (start % 2 == 1) != (right == 1));
    keep(start != by)?;
    let terms: Vec<i64> = (0..5).map(|k| start + k * by).collect();
    Some(
        Draft::new(json!({"task": "pattern_feature", "start": start, "by": by}))
            .ask(m.say("ask-feature").count("start", start).count("by", by))
            .one_of_listed(
                ["feature-even", "feature-odd", "feature-turns"]
                    .into_iter()
                    .map(|id| ("feature-not-checked", says(id)))
                    .collect(),
                right,
            )
            .hint(m.say("hint-write"))
            .hint(m.say("hint-digit"))
            .step(m.say("step-list").numbers("terms", &terms))
            .step(m.say(["step-even", "step-odd", "step-turns"].get(right)?)),
    )
}
