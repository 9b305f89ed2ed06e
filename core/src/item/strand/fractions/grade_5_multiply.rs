//! Multiplying fractions, and dividing with unit fractions.

use super::grade_5::proper;
use crate::item::Block;
use crate::item::draw::{fraction_grid, rectangle, strip, strips};
use crate::item::expr::{Expr, equal, frac, mixed as mixed_expr, num, product, quotient};
use crate::item::figure::PartShape;
use crate::item::make::{Draft, Generator, Make, keep, mixed, says, whole};
use crate::item::say::Say;
use num_integer::gcd;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-fraction-multiply", 1, multiply),
    Generator::new("g5-fraction-area", 1, area),
    Generator::new("g5-scaling-compare", 1, scaling),
    Generator::new("g5-scaling-reason", 1, scaling_reason),
    Generator::new("g5-fraction-multiply-stories", 1, multiply_stories),
    Generator::new("g5-unit-fraction-divided", 1, unit_divided),
    Generator::new("g5-divide-by-unit-fraction", 1, divide_by_unit),
    Generator::new("g5-unit-fraction-stories", 1, unit_stories),
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
            .mistake("multiplied-bottom", mixed(Ratio::new(a, b * c)))
            .mistake("multiplied-top-and-bottom", mixed(Ratio::new(a, b)))
    } else {
        draft
            .mistake("cross-multiplied", mixed(Ratio::new(a * d, b * c)))
            .mistake("added-tops-and-bottoms", mixed(Ratio::new(a + c, b + d)))
            .mistake_if(b == d, "kept-bottom", mixed(Ratio::new(a * c, b)))
    })
}

fn area(m: &mut Make) -> Option<Draft> {
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
            .math("height", frac(c, d))
            .word("unit", unit),
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
            .mistake("perimeter-for-area", mixed(perimeter))
            .mistake("added-sides", mixed(perimeter / 2))
            .mistake_if(
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
) -> Vec<(&'static str, crate::item::Block)> {
    vec![
        (code_for_less, says("scaling-less")),
        (code_for_equal, says("scaling-equal")),
        (code_for_more, says("scaling-more")),
    ]
}

fn scaling(m: &mut Make) -> Option<Draft> {
    let b = m.dice.from(2..=12);
    let a = m.dice.from(1..=2 * b);
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
            .one_of_listed(size_choices("thought-product-is-less", "thought-product-stays-equal", "multiplying-always-makes-bigger"), right)
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
    let b = m.dice.from(3..=12);
    let a = m.dice.from(1..=2 * b - 1);
    keep(gcd(a, b) == 1 && a != b && a != 1)?;
    let n = m.dice.from(5..=m.level.pick(20, 50, 90));
    let grows = a > b;
    let which = |grow: bool, because: &str| -> Block {
        m.say(&format!("{}-{because}", if grow { "more" } else { "less" }))
            .math("factor", frac(a, b))
            .math("number", num(n))
            .into()
    };
    let right = which(grows, if grows { "above" } else { "below" });
    let wrong = vec![
        ("multiplying-always-makes-bigger", which(true, "always")),
        ("fractions-always-make-smaller", which(false, "always")),
        (
            "compared-factor-to-wrong-number",
            which(!grows, if grows { "above" } else { "below" }),
        ),
    ];
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
    // Stories 1 and 2 take a part of an amount; 3 and 4 take several of an amount.
    let story = m.dice.from(1..=2) + if w == 0 { 0 } else { 2 };
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .math("one", shown(w, a, b))
        .math("two", shown(x, c, d));
    let mut draft = Draft::new(
        json!({"task": "part_of_amount", "part": text(w, a, b), "amount": text(x, c, d)}),
    )
    .ask(ask)
    .mixed(value)
    .hint(m.say("hint-of"))
    .hint(
        m.say("hint-work")
            .math("work", product([shown(w, a, b), shown(x, c, d)])),
    )
    .step(m.say("hint-of"));
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
        .mistake(
            "added-instead-of-multiplied",
            mixed(Ratio::new(ta, b) + Ratio::new(tc, d)),
        );
    Some(if w > 0 {
        draft.mistake(
            "multiplied-wholes-and-parts-apart",
            mixed(Ratio::from(w * x) + Ratio::new(a * c, b * d)),
        )
    } else if x > 0 {
        draft.mistake(
            "multiplied-parts-only",
            mixed(Ratio::from(x) + Ratio::new(a * c, b * d)),
        )
    } else {
        draft.mistake("added-tops-and-bottoms", mixed(Ratio::new(a + c, b + d)))
    })
}

fn unit_divided(m: &mut Make) -> Option<Draft> {
    let (b, n) = (
        m.dice.from(2..=m.level.pick(6, 9, 12)),
        m.dice.from(2..=m.level.pick(5, 9, 12)),
    );
    keep(b != n)?;
    let missing = m.level.pick(false, false, m.dice.one_in(2));
    if missing {
        // The number of shares is asked for.
        return Some(
            Draft::new(json!({"task": "shares_of_unit", "unit": format!("1/{b}"), "share": format!("1/{}", b * n)}))
                .ask(Say::new("common-box"))
                .ask(equal(quotient(frac(1, b), Expr::Blank), frac(1, b * n)))
                .whole(n)
                .hint(m.say("hint-cut"))
                .hint(m.say("hint-how-many").math("small", frac(1, b * n)).math("large", frac(1, b)))
                .step(m.say("step-times").math("work", equal(product([num(b), num(n)]), num(b * n))))
                .step(equal(quotient(frac(1, b), num(n)), frac(1, b * n)))
                .mistake("subtracted-bottoms", whole(b * n - b))
                .mistake("took-bottom-only", whole(b * n)),
        );
    }
    Some(
        Draft::new(json!({"task": "divide_fractions", "left": format!("1/{b}"), "right": n}))
            .ask(Say::new("common-work-out"))
            .ask(equal(quotient(frac(1, b), num(n)), Expr::Blank))
            .fraction(1, b * n)
            .hint(m.say("hint-cut"))
            .hint_with(
                m.say("hint-share").count("n", n).math("part", frac(1, b)),
                strip(b, 1),
            )
            .step(m.say("step-each").count("n", n).count("parts", b))
            .step(
                m.say("step-times")
                    .math("work", equal(product([num(b), num(n)]), num(b * n))),
            )
            .step(equal(quotient(frac(1, b), num(n)), frac(1, b * n)))
            .mistake(
                "multiplied-instead-of-divided",
                crate::item::make::fraction(n, b),
            )
            .mistake(
                "multiplied-instead-of-shared",
                crate::item::make::fraction(b * n, 1),
            )
            .mistake(
                "divided-bottom",
                crate::item::make::fraction(1, (b - n).abs().max(1)),
            ),
    )
}

fn divide_by_unit(m: &mut Make) -> Option<Draft> {
    let (b, n) = (
        m.dice.from(2..=m.level.pick(5, 9, 12)),
        m.dice.from(2..=m.level.pick(6, 10, 12)),
    );
    keep(b != n)?;
    let right = n * b;
    let missing = m.level.pick(false, false, m.dice.one_in(2));
    let shown = |answer: Expr| {
        if missing {
            equal(quotient(answer, frac(1, b)), num(right))
        } else {
            equal(quotient(num(n), frac(1, b)), answer)
        }
    };
    let draft = if missing {
        Draft::new(
            json!({"task": "dividend_for_unit", "unit": format!("1/{b}"), "quotient": right}),
        )
        .ask(Say::new("common-box"))
        .ask(shown(Expr::Blank))
        .whole(n)
        .mistake("multiplied-instead-of-divided", whole(right * b))
        .mistake("took-bottom-only", whole(b))
    } else {
        Draft::new(json!({"task": "divide_fractions", "left": n, "right": format!("1/{b}")}))
            .ask(Say::new("common-work-out"))
            .ask(shown(Expr::Blank))
            .mixed(Ratio::from(right))
            .mistake("divided-by-bottom", mixed(Ratio::new(n, b)))
            .mistake("divided-the-other-way", mixed(Ratio::new(1, n * b)))
    };
    Some(
        draft
            .hint(m.say("hint-how-many").math("part", frac(1, b)))
            .hint_with(
                m.say("hint-one").count("parts", b),
                strips(PartShape::Bar, &[(b, 1)]),
            )
            .step(m.say("step-one").count("parts", b).math("part", frac(1, b)))
            .step(
                m.say("step-all")
                    .math("work", equal(product([num(n), num(b)]), num(right))),
            )
            .step(shown(num(if missing { n } else { right }))),
    )
}

fn unit_stories(m: &mut Make) -> Option<Draft> {
    let (b, n) = (
        m.dice.from(2..=m.level.pick(5, 8, 12)),
        m.dice.from(2..=m.level.pick(6, 10, 12)),
    );
    keep(b != n)?;
    // Stories 1 to 3 ask how many parts; 4 to 6 share a part.
    let share = m.level.pick(false, m.dice.one_in(2), m.dice.one_in(2));
    let story = m.dice.from(1..=3) + if share { 3 } else { 0 };
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .count("n", n)
        .math("part", frac(1, b));
    Some(if share {
        Draft::new(json!({"task": "share_equally", "amount": format!("1/{b}"), "shares": n}))
            .ask(ask)
            .mixed(Ratio::new(1, b * n))
            .hint(m.say("hint-share"))
            .hint_with(m.say("hint-cut").count("n", n), strip(b, 1))
            .step(m.say("hint-share"))
            .step(equal(quotient(frac(1, b), num(n)), frac(1, b * n)))
            .mistake("multiplied-instead-of-divided", mixed(Ratio::new(n, b)))
            .mistake("divided-the-other-way", mixed(Ratio::from(n * b)))
    } else {
        Draft::new(json!({"task": "how_many_fit", "part": format!("1/{b}"), "amount": n}))
            .ask(ask)
            .mixed(Ratio::from(n * b))
            .hint(m.say("hint-fit"))
            .hint_with(m.say("hint-one").math("part", frac(1, b)), strip(b, 1))
            .step(m.say("step-one").count("parts", b))
            .step(equal(quotient(num(n), frac(1, b)), num(n * b)))
            .mistake("divided-by-bottom", mixed(Ratio::new(n, b)))
            .mistake("added-instead-of-multiplied", mixed(Ratio::from(n + b)))
    })
}
