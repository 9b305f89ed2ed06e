//! Stories of several steps with a change of units (5.MD.A.1).

use crate::decimal::Dec;
use crate::expr::{difference, equal, num, product, quotient};
use crate::make::{Draft, Make, decimal, keep, whole};
use serde_json::json;

/// An amount in a large unit, from which parts in the small unit are taken; or many small
/// amounts, together in the large unit.
pub(super) fn convert_stories(m: &mut Make) -> Option<Draft> {
    let name = m.dice.name();
    let story = m.dice.from(1..=3);
    if m.dice.one_in(2) {
        // What is left, in the small unit: rope, path, juice.
        let (factor, smalls): (i64, &[i64]) = match story {
            1 => (100, &[15, 20, 25, 30, 35, 40, 45, 60]),
            2 => (1000, &[150, 200, 250, 300, 400, 450]),
            _ => (1000, &[125, 150, 200, 250, 300, 350]),
        };
        let small = m.dice.pick(smalls);
        let large = m.dice.from(m.level.pick(1..=3, 2..=6, 3..=9));
        let n = m.dice.from(m.level.pick(2..=4, 3..=9, 6..=15));
        let (all, used) = (large * factor, n * small);
        let right = all - used;
        keep(right > 0 && n != large && small != right && used != right)?;
        let off = if all / 10 > used {
            all / 10 - used
        } else {
            all * 10 - used
        };
        let unit = ["m", "km", "l"].get(story as usize - 1)?;
        return Some(
            Draft::new(json!({
                "task": "parts_taken_from", "large": large, "unit": unit,
                "parts": n, "each": small,
            }))
            .ask(
                m.say(&format!("ask-left-{story}"))
                    .text("name", name)
                    .count("large", large)
                    .count("n", n)
                    .count("small", small),
            )
            .whole_unit(
                right,
                ["unit-cm", "unit-m", "unit-ml"].get(story as usize - 1)?,
            )
            .hint(m.say("hint-same-unit"))
            .hint(m.say("hint-all-parts").count("n", n))
            .step(equal(product([num(large), num(factor)]), num(all)))
            .step(equal(product([num(n), num(small)]), num(used)))
            .step(equal(difference(num(all), num(used)), num(right)))
            .misconception("used-one-only", whole(all - small))
            .misconception_unless_same("wrong-unit-factor", whole(off))
            .misconception_unless_same("second-amount-as-answer", whole(used)),
        );
    }
    // Together, in the large unit: bags, laps, cups.
    let small = m.dice.from(m.level.pick(2..=9, 3..=19, 3..=39)) * 50;
    let n = m.dice.from(m.level.pick(2..=6, 4..=9, 6..=15));
    let all = n * small;
    let right = Dec::exact(num_rational::Ratio::new(all, 1000))?;
    keep(right.places() > 0 && all > 1000 && n != small)?;
    let unit = ["g", "m", "ml"].get(story as usize - 1)?;
    Some(
        Draft::new(json!({
            "task": "many_in_large_unit", "parts": n, "each": small,
            "unit": unit,
        }))
        .ask(
            m.say(&format!("ask-all-{story}"))
                .text("name", name)
                .count("n", n)
                .count("small", small),
        )
        .decimal_unit(
            right,
            ["unit-kg", "unit-km", "unit-l"].get(story as usize - 1)?,
        )
        .hint(m.say("hint-first-all"))
        .hint(m.say("hint-divide"))
        .step(equal(product([num(n), num(small)]), num(all)))
        .step(equal(quotient(num(all), num(1000)), num(right)))
        .misconception("units-not-changed", decimal(Dec::new(all, 0)))
        .misconception(
            "wrong-unit-factor",
            decimal(Dec::exact(num_rational::Ratio::new(all, 100))?),
        ),
    )
}
