//! Stories with like fractions, and with a fraction times a whole number.

use super::grade_4::BOTTOMS;
use crate::draw::strip;
use crate::expr::{Expr, difference, equal, frac, num, product, sum};
use crate::make::{Draft, Generator, Make, keep, mixed};
use num_integer::gcd;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-fraction-add-like", 3, add_like),
    Generator::new("g4-fraction-times-stories", 3, times_stories),
];

fn add_like(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&BOTTOMS[1..]);
    let (a, c) = (m.dice.from(1..=b - 1), m.dice.from(1..=b - 1));
    let plus = m.level.pick(true, m.dice.one_in(2), m.dice.one_in(2));
    // Joining: at stretch only what may be more than one whole (1 to 3).
    let story = match (plus, m.level) {
        (true, crate::Level::Stretch) => m.dice.from(1..=3),
        (true, _) => m.dice.from(1..=6),
        (false, _) => m.dice.from(7..=12),
    };
    let result = if plus { a + c } else { a - c };
    keep(result > 0 && a != c && result != b)?;
    keep(!plus || m.level.pick(result < b, result < b, result > b))?;
    let work = if plus {
        sum([frac(a, b), frac(c, b)])
    } else {
        difference(frac(a, b), frac(c, b))
    };
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .math("one", frac(a, b))
        .math("two", frac(c, b));
    let draft = Draft::new(json!({
        "task": if plus { "join_parts" } else { "take_part" },
        "one": format!("{a}/{b}"), "two": format!("{c}/{b}")
    }))
    .ask(ask)
    .mixed(Ratio::new(result, b))
    .hint(m.say(if plus { "hint-join" } else { "hint-take" }))
    .hint_with(m.say("hint-parts").math("part", frac(1, b)), strip(b, a))
    .step(m.say(if plus { "hint-join" } else { "hint-take" }))
    .step(equal(work, frac(result, b)))
    .simplified(result, b);
    Some(if plus {
        draft
            .misconception("added-tops-and-bottoms", mixed(Ratio::new(a + c, 2 * b)))
            .misconception("subtracted-instead", mixed(Ratio::new((a - c).abs(), b)))
    } else {
        draft
            .misconception("added-instead", mixed(Ratio::new(a + c, b)))
            .misconception("kept-first-fraction", mixed(Ratio::new(a, b)))
    })
}

fn times_stories(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&[2, 3, 4, 5, 6, 8]);
    let a = m
        .level
        .pick(1, m.dice.from(1..=b - 1), m.dice.from(2..=b.max(3) - 1));
    let n = m.dice.from(3..=m.level.pick(6, 9, 12));
    keep(a < b && gcd(a, b) == 1 && n != b)?;
    let value = Ratio::new(n * a, b);
    let (ask, _) = m.story(6);
    let name = m.dice.name();
    let draft = Draft::new(json!({"task": "copies_of", "count": n, "each": format!("{a}/{b}")}))
        .ask(
            ask.text("name", name)
                .count("n", n)
                .math("each", frac(a, b)),
        )
        .mixed(value)
        .hint_with(m.say("hint-each").math("each", frac(a, b)), strip(b, a))
        .hint_with(
            m.say("hint-times"),
            equal(product([num(n), frac(a, b)]), Expr::Blank),
        )
        .step(m.say("hint-times"))
        .step(equal(product([num(n), frac(a, b)]), frac(n * a, b)))
        .simplified(n * a, b);
    let draft = if value > Ratio::from(1) && !value.is_integer() {
        draft.step(
            m.say("step-between")
                .number("low", value.to_integer())
                .number("high", value.to_integer() + 1),
        )
    } else {
        draft
    };
    Some(
        draft
            .misconception("multiplied-bottom", mixed(Ratio::new(a, n * b)))
            .misconception(
                "added-instead-of-multiplied",
                mixed(Ratio::from(n) + Ratio::new(a, b)),
            ),
    )
}
