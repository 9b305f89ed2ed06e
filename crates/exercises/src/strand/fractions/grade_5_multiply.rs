//! Multiplying fractions, and dividing with unit fractions.

use super::grade_5::{in_cups, in_measures, proper};
use crate::Block;
use crate::draw::{fraction_grid, rectangle, strip};
use crate::expr::{Expr, equal, frac, mixed as mixed_expr, num, product};
use crate::make::{Draft, Generator, Make, keep, mixed, says};
use crate::say::Say;
use num_integer::gcd;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-fraction-multiply", 3, multiply),
    Generator::new("g5-fraction-area", 3, area),
    Generator::new("g5-scaling-compare", 3, scaling),
    Generator::new("g5-scaling-reason", 3, scaling_reason),
    Generator::new("g5-fraction-multiply-stories", 3, multiply_stories),
];

fn multiply(m: &mut Make) -> Option<Draft> {
    let (a, b) = proper(m, m.level.pick(6, 10, 12))?;
    let (c, d) = m.level.pick(
        // A part of a whole number.
        Some((m.dice.from(2..=12), 1)),
        proper(m, 10),
        proper(m, 12),
    )?;
    let value = Ratio::new(a * c, b * d);
    let right = if d == 1 { num(c) } else { frac(c, d) };
    let right_text = if d == 1 {
        c.to_string()
    } else {
        format!("{c}/{d}")
    };
    let work = product([frac(a, b), right]);
    let mut draft = Draft::new(
        json!({"task": "multiply_fractions", "left": format!("{a}/{b}"), "right": right_text}),
    )
    .ask(Say::new("common-work-out"))
    .ask(equal(work.clone(), Expr::Blank))
    .mixed(value)
    .hint(m.say("hint-parts").count("parts", b).count("take", a));
    draft = if d == 1 {
        draft.hint_with(m.say("hint-bar"), strip(b, a))
    } else {
        draft.hint_with(m.say("hint-square"), fraction_grid(b, d, a, c))
    };
    draft = draft
        .step(
            m.say("step-tops")
                .math("work", equal(product([num(a), num(c)]), num(a * c))),
        )
        .step(
            m.say("step-bottoms")
                .math("work", equal(product([num(b), num(d)]), num(b * d))),
        )
        .step(equal(work, frac(a * c, b * d)))
        .simplified(a * c, b * d);
    Some(if d == 1 {
        draft
            .misconception("multiplied-bottom", mixed(Ratio::new(a, b * c)))
            .misconception("multiplied-top-and-bottom", mixed(Ratio::new(a, b)))
    } else {
        draft
            .misconception("cross-multiplied", mixed(Ratio::new(a * d, b * c)))
            .misconception("added-tops-and-bottoms", mixed(Ratio::new(a + c, b + d)))
            .misconception_if(b == d, "kept-bottom", mixed(Ratio::new(a * c, b)))
    })
}

fn area(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(3) {
        return super::grade_5_tiles::tiles(m);
    }
    let (a, b) = proper(m, m.level.pick(5, 8, 8))?;
    let (c, d) = proper(m, m.level.pick(5, 8, 8))?;
    let w = m.level.pick(0, 0, m.dice.from(1..=3));
    let left_top = w * b + a;
    let value = Ratio::new(left_top * c, b * d);
    let left = if w == 0 {
        frac(a, b)
    } else {
        mixed_expr(w, a, b)
    };
    let left_text = if w == 0 {
        format!("{a}/{b}")
    } else {
        format!("{w} {a}/{b}")
    };
    keep(Ratio::new(left_top, b) != Ratio::new(c, d))?;
    let alt = m
        .say("rectangle")
        .math("width", left.clone())
        .math("height", frac(c, d));
    let unit = m.dice.pick(&["unit-m", "unit-ft", "unit-cm", "unit-in"]);
    let square = match unit {
        "unit-m" => "unit-square-m",
        "unit-ft" => "unit-square-ft",
        "unit-cm" => "unit-square-cm",
        _ => "unit-square-in",
    };
    let mut draft = Draft::new(
        json!({"task": "rectangle_area", "width": left_text, "height": format!("{c}/{d}")}),
    )
    .ask(
        m.say("ask")
            .math("width", left.clone())
            .math("height", crate::expr::measure(frac(c, d), unit)),
    )
    .ask(rectangle(
        left_top * d,
        c * b,
        [Some(left.clone()), Some(frac(c, d))],
        alt,
    ))
    .mixed_unit(value, square)
    .hint(m.say("hint-multiply"))
    .hint(
        m.say("hint-product")
            .math("work", product([left.clone(), frac(c, d)])),
    );
    if w > 0 {
        draft = draft.step(
            m.say("step-single")
                .math("work", equal(left.clone(), frac(left_top, b))),
        );
    } else {
        draft = draft.step(m.say("hint-multiply"));
    }
    let perimeter = (Ratio::new(left_top, b) + Ratio::new(c, d)) * 2;
    Some(
        draft
            .step(equal(
                product([frac(left_top, b), frac(c, d)]),
                frac(left_top * c, b * d),
            ))
            .simplified(left_top * c, b * d)
            .misconception("perimeter-for-area", mixed(perimeter))
            .misconception("added-sides", mixed(perimeter / 2))
            .misconception_if(
                w > 0,
                "multiplied-parts-only",
                mixed(Ratio::from(w) + Ratio::new(a * c, b * d)),
            ),
    )
}

/// Less, equal or greater in words, as a list of choices.
fn size_choices(
    code_for_less: &'static str,
    code_for_equal: &'static str,
    code_for_more: &'static str,
) -> Vec<(&'static str, crate::Block)> {
    vec![
        (code_for_less, says("scaling-less")),
        (code_for_equal, says("scaling-equal")),
        (code_for_more, says("scaling-more")),
    ]
}

fn scaling(m: &mut Make) -> Option<Draft> {
    let b = m.dice.from(2..=12);
    // Each of the three answers is as likely.
    let a = match m.third {
        0 => m.dice.from(1..=b - 1),
        1 => b,
        _ => m.dice.from(b + 1..=2 * b),
    };
    let other_is_fraction = m.level.pick(false, false, true);
    let n = m.dice.from(6..=60);
    let (c, d) = if other_is_fraction {
        proper(m, 9)?
    } else {
        (n, 1)
    };
    let other = if d == 1 { num(c) } else { frac(c, d) };
    let other_text = if d == 1 {
        c.to_string()
    } else {
        format!("{c}/{d}")
    };
    let unit_form = a == b;
    keep(unit_form || gcd(a, b) == 1)?;
    keep(a % b != 0 || unit_form)?;
    let right = match a.cmp(&b) {
        std::cmp::Ordering::Less => 0,
        std::cmp::Ordering::Equal => 1,
        std::cmp::Ordering::Greater => 2,
    };
    Some(
        Draft::new(json!({"task": "product_against_factor", "factor": format!("{a}/{b}"), "number": other_text}))
            .ask(m.say("ask").math("work", product([frac(a, b), other.clone()])).math("number", other.clone()))
            .one_of_listed(
                match right {
                    0 => size_choices("", "thought-product-stays-equal", "multiplying-always-makes-bigger"),
                    1 => size_choices("thought-product-is-less", "", "thought-product-is-more"),
                    _ => size_choices("fractions-always-make-smaller", "thought-product-stays-equal", ""),
                },
                right,
            )
            .hint(m.say("hint-look").math("factor", frac(a, b)))
            .hint(m.say("hint-one"))
            .step(m.say(match right {
                0 => "step-less",
                1 => "step-equal",
                _ => "step-more",
            }).math("factor", frac(a, b)))
            .step(m.say(match right {
                0 => "step-shrinks",
                1 => "step-stays",
                _ => "step-grows",
            }).math("number", other)),
    )
}

fn scaling_reason(m: &mut Make) -> Option<Draft> {
    let grows = m.dice.one_in(2);
    let b = m.dice.from(3..=12);
    let a = m.dice.from(1..=2 * b - 1);
    keep(gcd(a, b) == 1 && a != b && a != 1 && (a > b) == grows)?;
    let n = m.dice.from(5..=m.level.pick(20, 50, 90));
    let which = |grow: bool, because: &str| -> Block {
        m.say(&format!("{}-{because}", if grow { "more" } else { "less" }))
            .math("factor", frac(a, b))
            .math("number", num(n))
            .into()
    };
    let right = which(grows, if grows { "above" } else { "below" });
    // Answer and reason: each of the four pairs is sometimes right.
    let misread = "compared-factor-to-wrong-number";
    let wrong = if grows {
        vec![
            ("fractions-always-make-smaller", which(false, "above")),
            (misread, which(false, "below")),
            (misread, which(true, "below")),
        ]
    } else {
        vec![
            ("multiplying-always-makes-bigger", which(true, "below")),
            (misread, which(true, "above")),
            (misread, which(false, "above")),
        ]
    };
    Some(
        Draft::new(
            json!({"task": "why_product_changes", "factor": format!("{a}/{b}"), "number": n}),
        )
        .ask(m.say("ask").math("work", product([frac(a, b), num(n)])))
        .one_of(&mut m.dice, right, wrong)
        .hint(m.say("hint-one").math("factor", frac(a, b)))
        .hint_with(m.say("hint-bar"), strip(b, a))
        .step(
            m.say(if grows { "step-above" } else { "step-below" })
                .math("factor", frac(a, b)),
        )
        .step(
            m.say(if grows { "step-grows" } else { "step-shrinks" })
                .math("number", num(n)),
        ),
    )
}

fn multiply_stories(m: &mut Make) -> Option<Draft> {
    let (a, b) = proper(m, m.level.pick(6, 8, 8))?;
    let (c, d) = proper(m, m.level.pick(6, 8, 6))?;
    let (w, x) = m.level.pick(
        (0, 0),
        (0, m.dice.from(1..=4)),
        (m.dice.from(1..=3), m.dice.from(1..=3)),
    );
    let (ta, tc) = (w * b + a, x * d + c);
    let value = Ratio::new(ta * tc, b * d);
    let shown = |whole: i64, top: i64, bottom: i64| {
        if whole == 0 {
            frac(top, bottom)
        } else {
            mixed_expr(whole, top, bottom)
        }
    };
    let text = |whole: i64, top: i64, bottom: i64| {
        if whole == 0 {
            format!("{top}/{bottom}")
        } else {
            format!("{whole} {top}/{bottom}")
        }
    };
    // Stories 1 to 4 take a part of an amount; 5 to 8 take several of an amount.
    let story = m.dice.from(1..=4) + if w == 0 { 0 } else { 4 };
    let unit = [
        "unit-lb", "unit-mi", "unit-yd", "unit-gal", "unit-kg", "unit-cup", "unit-ft", "unit-h",
    ]
    .get((story - 1) as usize)?;
    keep(if story == 6 {
        in_cups(d)
    } else {
        in_measures(d)
    })?;
    // Nobody buys 2 1/7 bags or makes 1 3/8 trips.
    keep(w == 0 || matches!(b, 2 | 4))?;
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .math("one", shown(w, a, b))
        .math("two", crate::expr::measure(shown(x, c, d), unit));
    let mut draft = Draft::new(
        json!({"task": "part_of_amount", "part": text(w, a, b), "amount": text(x, c, d)}),
    )
    .ask(ask)
    .mixed(value)
    .hint(m.say(if w == 0 { "hint-part" } else { "hint-several" }))
    .hint(
        m.say("hint-work")
            .math("work", product([shown(w, a, b), shown(x, c, d)])),
    )
    .step(m.say(if w == 0 { "hint-part" } else { "hint-several" }));
    for (whole_part, top, bottom) in [(w, a, b), (x, c, d)] {
        if whole_part > 0 {
            draft = draft.step(equal(
                shown(whole_part, top, bottom),
                frac(whole_part * bottom + top, bottom),
            ));
        }
    }
    draft = draft
        .step(equal(
            product([frac(ta, b), frac(tc, d)]),
            frac(ta * tc, b * d),
        ))
        .simplified(ta * tc, b * d)
        .misconception(
            "added-instead-of-multiplied",
            mixed(Ratio::new(ta, b) + Ratio::new(tc, d)),
        );
    Some(if w > 0 {
        draft.misconception(
            "multiplied-wholes-and-parts-apart",
            mixed(Ratio::from(w * x) + Ratio::new(a * c, b * d)),
        )
    } else if x > 0 {
        draft.misconception(
            "multiplied-parts-only",
            mixed(Ratio::from(x) + Ratio::new(a * c, b * d)),
        )
    } else {
        draft.misconception("added-tops-and-bottoms", mixed(Ratio::new(a + c, b + d)))
    })
}
