//! Dividing fractions and many-digit numbers, decimals, factors and multiples.

use crate::decimal::Dec;
use crate::draw::strips;
use crate::expr::{Expr, equal, frac, group, num, product, quotient, sum};
use crate::figure::PartShape;
use crate::make::{Draft, Generator, Make, keep, mixed, whole};
use crate::say::Say;
use crate::strand::decimals::operations::{add_subtract_draft, divide_draft, multiply_draft};
use crate::strand::fractions::{in_cups, in_measures};
use crate::strand::multiplication::written::division_steps;
use num_integer::{gcd, lcm};
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-fraction-divide", 3, fraction_divide),
    Generator::new("g6-divide-multi-digit", 3, divide_multi_digit),
    Generator::new("g6-decimal-add-subtract", 3, decimal_add_subtract),
    Generator::new("g6-decimal-multiply", 3, decimal_multiply),
    Generator::new("g6-decimal-divide", 3, decimal_divide),
    Generator::new("g6-greatest-common-factor", 3, greatest_common_factor),
    Generator::new("g6-least-common-multiple", 3, least_common_multiple),
    Generator::new("g6-common-factor-sum", 3, common_factor_sum),
];

fn fraction_divide(m: &mut Make) -> Option<Draft> {
    let b = m.dice.from(2..=m.level.pick(6, 9, 12));
    let d = m.dice.from(2..=m.level.pick(6, 9, 12));
    let (a, c) = (m.dice.from(1..=b - 1), m.dice.from(1..=d - 1));
    keep(gcd(a, b) == 1 && gcd(c, d) == 1 && (a, b) != (c, d) && c != d)?;
    let value = Ratio::new(a * d, b * c);
    keep(m.level.pick(
        value.is_integer() || b == d,
        true,
        !value.is_integer() && b != d,
    ))?;
    let work = quotient(frac(a, b), frac(c, d));
    // Now and then a story: how many servings, or how long the other side is.
    let story = m.dice.from(0..=m.level.pick(4, 5, 6));
    // A rope makes more than one piece.
    keep(match story {
        1 => in_cups(b) && in_cups(d),
        2 => in_measures(b) && in_measures(d),
        3 => in_measures(b) && in_measures(d) && value > Ratio::from(1),
        _ => true,
    })?;
    let draft = Draft::new(
        json!({"task": "divide_fractions", "left": format!("{a}/{b}"), "right": format!("{c}/{d}")}),
    );
    let draft = if (1..=3).contains(&story) {
        draft.ask(
            m.say(&format!("ask-{story}"))
                .math("amount", frac(a, b))
                .math("part", frac(c, d)),
        )
    } else {
        draft
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
    };
    Some(
        draft
            .mixed(value)
            .hint_with(
                m.say("hint-fit")
                    .math("part", frac(c, d))
                    .math("amount", frac(a, b)),
                strips(PartShape::Bar, &[(b, a), (d, c)]),
            )
            .hint(m.say("hint-times").math("turned", frac(d, c)))
            .step(equal(work.clone(), product([frac(a, b), frac(d, c)])))
            .step(equal(product([frac(a, b), frac(d, c)]), frac(a * d, b * c)))
            .simplified(a * d, b * c)
            .misconception(
                "multiplied-instead-of-dividing-fractions",
                mixed(Ratio::new(a * c, b * d)),
            )
            .misconception("turned-first-fraction", mixed(Ratio::new(b * c, a * d))),
    )
}

fn divide_multi_digit(m: &mut Make) -> Option<Draft> {
    let by = m.dice.from(m.level.pick(12..=49, 23..=98, 112..=389));
    let q = m.dice.from(m.level.pick(23..=199, 104..=409, 102..=256));
    let total = by * q;
    keep(by % 10 != 0 && total <= 99_999 && by != q)?;
    let without_zero: i64 = q.to_string().replace('0', "").parse().ok()?;
    let mut draft = Draft::new(json!({"task": "divide", "total": total, "by": by}))
        .ask(Say::new("common-work-out"))
        .ask(equal(quotient(num(total), num(by)), Expr::Blank))
        .whole(q)
        .hint(
            m.say("hint-multiples")
                .numbers("multiples", (1..=4).map(|k| k * by)),
        )
        .hint(m.say("hint-first"))
        .step(m.say("hint-first"));
    for step in division_steps(total, by) {
        draft = draft.step(step);
    }
    Some(
        draft
            .step(equal(quotient(num(total), num(by)), num(q)))
            .misconception_if(
                without_zero != q,
                "zero-in-quotient-left-out",
                whole(without_zero),
            )
            .misconception("quotient-one-short", whole(q - 1))
            .misconception("quotient-place-wrong", whole(q * 10)),
    )
}

fn decimal_add_subtract(m: &mut Make) -> Option<Draft> {
    let (pa, pb) = m.level.pick(
        (2, 1),
        (3, 2),
        m.dice.pick(&[(1, 4), (4, 2), (0, 3), (3, 1)]),
    );
    let value = |m: &mut Make, places: u32| {
        Dec::new(
            m.dice
                .from(111..=m.level.pick(90, 400, 900) * 10_i64.pow(places)),
            places,
        )
    };
    let (a, b) = (value(m, pa), value(m, pb));
    keep((pa == 0 || a.units() % 10 != 0) && (pb == 0 || b.units() % 10 != 0))?;
    add_subtract_draft(m, a, b)
}

fn decimal_multiply(m: &mut Make) -> Option<Draft> {
    let a = Dec::new(
        m.dice.from(m.level.pick(12..=99, 112..=999, 112..=4_999)),
        m.dice.pick(&[1, 2]),
    );
    let b = Dec::new(
        m.dice.from(m.level.pick(2..=9, 12..=99, 12..=199)),
        m.dice.pick(&[1, 2, 3]),
    );
    keep(a.places() + b.places() <= m.level.pick(3, 4, 5))?;
    multiply_draft(a, b)
}

fn decimal_divide(m: &mut Make) -> Option<Draft> {
    let q = Dec::new(
        m.dice.from(m.level.pick(11..=199, 21..=999, 101..=2_499)),
        m.dice.from(0..=2) as u32,
    );
    let by = Dec::new(
        m.dice.from(m.level.pick(2..=12, 12..=48, 12..=125)),
        m.dice.from(1..=2) as u32,
    );
    divide_draft(q, by, 4)
}

fn factors(n: i64) -> Vec<i64> {
    (1..=n).filter(|d| n % d == 0).collect()
}

fn greatest_common_factor(m: &mut Make) -> Option<Draft> {
    let g = m.dice.from(m.level.pick(2..=9, 3..=15, 6..=24));
    let (a, b) = (g * m.dice.from(2..=9), g * m.dice.from(2..=9));
    let right = gcd(a, b);
    keep(a < b && b <= m.level.pick(40, 80, 100) && b % a != 0)?;
    let common: Vec<i64> = factors(right);
    let [.., smaller_common, _] = *common.as_slice() else {
        return None;
    };
    Some(
        Draft::new(json!({"task": "greatest_common_factor", "numbers": [a, b]}))
            .ask(m.say("ask").count("a", a).count("b", b))
            .whole(right)
            .hint(m.say("hint-both"))
            .hint(m.say("hint-common"))
            .step(
                m.say("step-list")
                    .count("n", a)
                    .numbers("factors", factors(a)),
            )
            .step(
                m.say("step-list")
                    .count("n", b)
                    .numbers("factors", factors(b)),
            )
            .step(
                m.say("step-common")
                    .numbers("common", &common)
                    .count("right", right),
            )
            .misconception("multiple-for-factor", whole(lcm(a, b)))
            .misconception("not-the-greatest-factor", whole(smaller_common))
            .misconception_unless_same("difference-for-common-factor", whole(b - a)),
    )
}

fn least_common_multiple(m: &mut Make) -> Option<Draft> {
    let (a, b) = (
        m.dice.from(2..=m.level.pick(6, 10, 12)),
        m.dice.from(3..=m.level.pick(8, 12, 12)),
    );
    let right = lcm(a, b);
    keep(
        a < b && b % a != 0 && right > 2 * b && (m.level != crate::Level::Stretch || gcd(a, b) > 1),
    )?;
    // Few numbers are common multiples of many pairs.
    keep(!matches!(right, 12 | 24 | 30) || m.dice.one_in(2))?;
    // Plain, or a story about two things that come round together.
    let story = ["", "-1", "-2", "-3", "-4", "-5"].get(m.dice.from(0..=5) as usize)?;
    let list = |n: i64| (1..=right / n).map(|k| k * n).collect::<Vec<_>>();
    Some(
        Draft::new(json!({"task": "least_common_multiple", "numbers": [a, b]}))
            .ask(
                m.say(&format!("ask{story}"))
                    .text("name", m.dice.name())
                    .count("a", a)
                    .count("b", b),
            )
            .whole(right)
            .hint(
                m.say("hint-list")
                    .count("n", b)
                    .numbers("multiples", (1..=2).map(|k| k * b)),
            )
            .hint(m.say("hint-first").count("n", a))
            .step(
                m.say("step-list")
                    .count("n", a)
                    .numbers("multiples", list(a)),
            )
            .step(
                m.say("step-list")
                    .count("n", b)
                    .numbers("multiples", list(b)),
            )
            .step(m.say("step-first").count("right", right))
            .misconception("factor-for-multiple", whole(gcd(a, b)))
            .misconception_if(a * b != right, "product-for-least-multiple", whole(a * b))
            .misconception_if(a * b == right, "not-the-least-multiple", whole(2 * right)),
    )
}

fn common_factor_sum(m: &mut Make) -> Option<Draft> {
    let g = m.dice.from(m.level.pick(2..=6, 3..=9, 4..=12));
    let (x, y) = (m.dice.from(2..=9), m.dice.from(2..=9));
    let (a, b) = (g * x, g * y);
    keep(gcd(x, y) == 1 && x != y && b <= 100 && a <= 100 && a != b && a % b != 0 && b % a != 0)?;
    let other = factors(g).into_iter().rev().find(|f| *f < g && *f > 1);
    let draft = Draft::new(json!({"task": "factor_out", "numbers": [a, b]}))
        .ask(m.wording("ask", 2))
        .ask(sum([num(a), num(b)]))
        .expression(format!("{g}({x}+{y})"), &[])
        .form(crate::FormRule::SameSteps)
        .hint(m.say("hint-factor").count("a", a).count("b", b))
        .hint(m.say("hint-form").math(
            "form",
            product([Expr::Blank, group(sum([Expr::Blank, Expr::Blank]))]),
        ))
        .step(m.say("step-factor").count("g", g))
        .step(equal(num(a), product([num(g), num(x)])))
        .step(equal(num(b), product([num(g), num(y)])))
        .step(equal(
            sum([num(a), num(b)]),
            product([num(g), group(sum([num(x), num(y)]))]),
        ))
        .misconception(
            "factor-taken-from-first-only",
            crate::make::expression(format!("{g}({x}+{b})")),
        );
    Some(match other {
        Some(f) => draft.misconception(
            "not-the-greatest-factor",
            crate::make::expression(format!("{f}({}+{})", a / f, b / f)),
        ),
        None => draft.misconception(
            "factor-left-inside",
            crate::make::expression(format!("{g}({a}+{b})")),
        ),
    })
}
