//! Rectangles with fraction sides, covered with tiles of unit fractions.

use super::grade_5::proper;
use crate::draw::fraction_grid;
use crate::expr::{equal, frac, measure, num, product};
use crate::make::{Draft, Make, fraction, keep, whole};
use serde_json::json;

/// How many tiles cover the rectangle, or how large one tile is (5.NF.B.4.b).
pub(super) fn tiles(m: &mut Make) -> Option<Draft> {
    let (a, b) = proper(m, m.level.pick(5, 8, 10))?;
    let (c, d) = proper(m, m.level.pick(5, 8, 10))?;
    keep(a > 1 && c > 1 && b != d && a * c != a + c)?;
    let unit = m.dice.pick(&["unit-m", "unit-ft", "unit-yd"]);
    let ask = |m: &Make, id: &str| {
        m.say(id)
            .math("width", frac(a, b))
            .math("height", measure(frac(c, d), unit))
            .math("one", frac(1, b))
            .math("two", measure(frac(1, d), unit))
    };
    let draft = if m.dice.one_in(3) {
        Draft::new(json!({"task": "tile_area", "edges": [format!("1/{b}"), format!("1/{d}")]}))
            .ask(
                m.say("ask-one-tile")
                    .math("one", frac(1, b))
                    .math("two", measure(frac(1, d), unit)),
            )
            .fraction(1, b * d)
            .step(m.say("step-square").count("tiles", b * d))
            .step(equal(product([frac(1, b), frac(1, d)]), frac(1, b * d)))
            .misconception("added-tops-and-bottoms", fraction(1, b + d))
            .misconception_unless_same("kept-bottom", fraction(1, b.max(d)))
            .hint(m.say("hint-square"))
            .hint(m.say("hint-rows").count("rows", b).count("columns", d))
    } else {
        Draft::new(json!({
            "task": "tiles_to_cover", "edges": [format!("{a}/{b}"), format!("{c}/{d}")],
            "tile": [format!("1/{b}"), format!("1/{d}")],
        }))
        .ask(ask(m, "ask-tiles"))
        .whole(a * c)
        .step(m.say("step-rows").count("rows", a).count("columns", c))
        .step(equal(product([num(a), num(c)]), num(a * c)))
        .misconception("added-sides", whole(a + c))
        .misconception("counted-the-unit-square", whole(b * d))
        .hint(
            m.say("hint-along")
                .math("one", frac(1, b))
                .math("width", frac(a, b)),
        )
        .hint_with(m.say("hint-picture"), fraction_grid(b, d, a, c))
    };
    Some(draft)
}
