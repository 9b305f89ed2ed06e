//! Equal fractions, comparing, and sums of like fractions.

use crate::draw::{strip, strips};
use crate::expr::{
    Expr, Sign, difference, equal, frac, mixed as mixed_expr, num, product, relation, sum,
};
use crate::figure::PartShape;
use crate::make::{Draft, Generator, Make, compare, fraction, keep, mixed, whole};
use crate::say::Say;
use num_integer::gcd;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-fraction-join-parts", 3, join_parts),
    Generator::new("g4-fraction-decompose", 3, decompose),
    Generator::new("g4-fraction-copies", 3, copies),
    Generator::new("g4-fraction-times-whole", 3, times_whole),
];

/// Denominators of grade 4 for sums.
pub(super) const BOTTOMS: [i64; 8] = [2, 3, 4, 5, 6, 8, 10, 12];

pub(super) fn equivalent(m: &mut Make) -> Option<Draft> {
    let bottom = m.dice.pick(&BOTTOMS);
    let factors: &[i64] = m
        .level
        .pick(&[2, 3], &[2, 3, 4, 5, 6], &[2, 3, 4, 5, 6, 10, 20, 25, 50]);
    let factor = m.dice.pick(factors);
    let large = bottom * factor;
    keep(BOTTOMS.contains(&large) || large == 100)?;
    let top = m.dice.from(1..=bottom - 1);
    keep(gcd(top, bottom) == 1)?;
    let down = m.level.pick(false, m.dice.one_in(3), m.dice.one_in(2));
    let (a, b, c, d) = if down {
        (top * factor, large, top, bottom)
    } else {
        (top, bottom, top * factor, large)
    };
    let shifted = a + d - b;
    keep(shifted > 0)?;
    let shown = |answer: Expr| equal(frac(a, b), frac(answer, d));
    Some(
        Draft::new(json!({"task": "equal_top", "fraction": format!("{a}/{b}"), "given": d}))
            .ask(Say::new("common-box"))
            .ask(shown(Expr::Blank))
            .whole(c)
            .hint(Say::new(if down {
                "fraction-hint-divide"
            } else {
                "fraction-hint-multiply"
            }))
            .hint(Say::new("fraction-hint-bottoms").math(
                "work",
                if down {
                    equal(crate::expr::quotient(num(b), Expr::Blank), num(d))
                } else {
                    equal(product([num(b), Expr::Blank]), num(d))
                },
            ))
            .step(
                Say::new(if down {
                    "fraction-step-divide"
                } else {
                    "fraction-step-multiply"
                })
                .count("factor", factor),
            )
            .step(shown(num(c)))
            .misconception("kept-the-number", whole(a))
            .misconception_if(!down, "same-difference", whole(shifted)),
    )
}

pub(super) fn compare_any(m: &mut Make) -> Option<Draft> {
    let wants_equal = m.equal;
    let (b, d) = (m.dice.pick(&BOTTOMS), m.dice.pick(&BOTTOMS));
    let (a, c) = (
        m.dice.from(1..=b + m.level.pick(-1, -1, 2)),
        m.dice.from(1..=d - 1),
    );
    let a = if wants_equal { c * b / d } else { a };
    keep(b != d && a != c && a > 0 && a < 2 * b && (a * d == c * b) == wants_equal)?;
    let close = Ratio::new(a, b) - Ratio::new(c, d);
    let size = if close < Ratio::from(0) {
        -close
    } else {
        close
    };
    keep(
        m.level
            .pick(d % b == 0 || b % d == 0, true, size < Ratio::new(1, 4)),
    )?;
    let equal_pair = a * d == c * b;
    let sign = Sign::of((a * d).cmp(&(c * b)));
    let common = b / gcd(b, d) * d;
    let (ta, tc) = (a * common / b, c * common / d);
    let draft = Draft::new(
        json!({"task": "compare", "left": format!("{a}/{b}"), "right": format!("{c}/{d}")}),
    )
    .ask(m.sign_ask())
    .ask(relation(frac(a, b), Sign::Blank, frac(c, d)))
    .compare(sign)
    .hint(m.say("hint-half"))
    .hint(m.say("hint-common").count("bottom", common))
    .step(m.say("step-common").count("bottom", common))
    .step_if(
        b != common,
        m.say("step-left")
            .math("work", equal(frac(a, b), frac(ta, common))),
    )
    .step_if(
        d != common,
        m.say("step-right")
            .math("work", equal(frac(c, d), frac(tc, common))),
    )
    .step(relation(frac(a, b), sign, frac(c, d)));
    Some(if equal_pair {
        let by_bottom = Sign::of(d.cmp(&b));
        draft
            .misconception("compared-tops-only", compare(Sign::of(a.cmp(&c))))
            .misconception_unless_same("compared-bottoms-only", compare(by_bottom))
    } else {
        let wrong = Sign::of((c * b).cmp(&(a * d)));
        let code = if Sign::of(a.cmp(&c)) == wrong {
            "compared-tops-only"
        } else if Sign::of(b.cmp(&d)) == wrong {
            "larger-bottom-larger-fraction"
        } else {
            "sign-turned-round"
        };
        draft
            .misconception(code, compare(wrong))
            .misconception("took-as-equal", compare(Sign::Equal))
    })
}

fn join_parts(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&BOTTOMS[1..]);
    let plus = m.level.pick(true, m.dice.one_in(2), m.dice.one_in(3));
    let (a, c) = (m.dice.from(1..=b), m.dice.from(1..=b - 1));
    let from_one = !plus && m.level.pick(false, false, true);
    let a = if from_one { b } else { a };
    keep(if plus {
        a < b && (a + c < b || m.level.pick(false, false, true))
    } else {
        a > c
    })?;
    let result = if plus { a + c } else { a - c };
    keep(result != b && result != 0 && a != c)?;
    let left = if from_one { num(1) } else { frac(a, b) };
    let left_text = if from_one {
        "1".into()
    } else {
        format!("{a}/{b}")
    };
    let work = if plus {
        sum([left, frac(c, b)])
    } else {
        difference(left, frac(c, b))
    };
    let draft = Draft::new(json!({
        "task": if plus { "add_fractions" } else { "subtract_fractions" },
        "left": left_text, "right": format!("{c}/{b}")
    }))
    .ask(Say::new("common-work-out"))
    .ask(equal(work.clone(), Expr::Blank))
    .fraction(result, b)
    .hint(m.say("hint-same").math("part", frac(1, b)))
    .hint_with(
        m.say(if plus { "hint-count-on" } else { "hint-take" })
            .count("parts", c),
        strip(b, a),
    );
    let draft = if from_one {
        draft.step(m.say("step-one").math("one", equal(num(1), frac(b, b))))
    } else {
        draft.step(m.say("hint-same").math("part", frac(1, b)))
    };
    let tops = if plus {
        sum([num(a), num(c)])
    } else {
        difference(num(a), num(c))
    };
    let draft = draft
        .step(m.say("step-tops").math("work", equal(tops, num(result))))
        .step(equal(work, frac(result, b)));
    Some(if plus {
        draft
            .misconception("added-tops-and-bottoms", fraction(a + c, 2 * b))
            .misconception("subtracted-instead", fraction((a - c).abs(), b))
    } else {
        draft
            .misconception("added-instead", fraction(a + c, b))
            .misconception_if(from_one, "took-from-top-of-one", fraction(c, b))
            .misconception_if(!from_one, "kept-first-fraction", fraction(a, b))
    })
}

fn decompose(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&BOTTOMS[1..]);
    let total = m.level.pick(
        m.dice.from(3..=b),
        m.dice.from(4..=2 * b),
        m.dice.from(5..=3 * b),
    );
    let three = m.level.pick(false, false, m.dice.one_in(2));
    let first = m.dice.from(1..=total - 2);
    let second = if three { m.dice.from(1..=total - 2) } else { 0 };
    let missing = total - first - second;
    keep(missing >= 1 && missing != first && total != b)?;
    // Small numerators would come too often.
    keep(missing > 3 || m.dice.one_in(3))?;
    let left = if m.level.pick(false, false, !three) && total > b && total % b != 0 {
        mixed_expr(total / b, total % b, b)
    } else {
        frac(total, b)
    };
    let left_text = if matches!(left, Expr::Mixed { .. }) {
        format!("{} {}/{b}", total / b, total % b)
    } else {
        format!("{total}/{b}")
    };
    let mut parts = vec![frac(first, b)];
    let mut known = vec![format!("{first}/{b}")];
    if three {
        parts.push(frac(second, b));
        known.push(format!("{second}/{b}"));
    }
    let shown = |last: Expr| {
        let mut terms = parts.clone();
        terms.push(frac(last, b));
        equal(left.clone(), sum(terms))
    };
    let is_mixed = matches!(left, Expr::Mixed { .. });
    let draft = Draft::new(
        json!({"task": "missing_top_of_sum", "total": left_text, "known": known, "bottom": b}),
    );
    let plain = [Say::new("common-box").into(), shown(Expr::Blank).into()];
    // Stories of parts of one thing; the numerator is the number of its pieces.
    let stories = if three || total > b { 0 } else { 3 };
    Some(
        m.asked(draft, plain, stories, |say| {
            say.math("total", frac(total, b))
                .math("known", frac(first, b))
                .math("part", frac(1, b))
        })
        .whole(missing)
        .hint(m.say("hint-parts").math("part", frac(1, b)))
        .hint_with(m.say("hint-whole"), strip(b, total))
        .step(
            m.say("step-total")
                .count("total", total)
                .math("part", frac(1, b)),
        )
        .step(m.say("step-known").count("known", first + second))
        .step(shown(num(missing)))
        .misconception("added-all-numbers", whole(total + first + second))
        .misconception_if(three, "left-out-one-part", whole(total - first))
        .misconception_if(
            is_mixed,
            "ignored-the-whole",
            whole((total % b - first).abs()),
        )
        .misconception_if(!three && !is_mixed, "took-bottom-only", whole(b)),
    )
}

fn copies(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&BOTTOMS);
    let a = m.level.pick(
        m.dice.from(2..=b.max(3) - 1),
        m.dice.from(2..=2 * b),
        m.dice.from(3..=3 * b),
    );
    keep(a != b && a != 1)?;
    let blank_bottom = m.level.pick(false, m.dice.one_in(2), m.dice.one_in(2));
    let shown = |answer: Expr| {
        if blank_bottom {
            equal(frac(a, b), product([num(a), frac(1, answer)]))
        } else {
            equal(frac(a, b), product([answer, frac(1, b)]))
        }
    };
    let (right, other) = if blank_bottom { (b, a) } else { (a, b) };
    if m.level != crate::Level::Entry && m.dice.one_in(2) {
        return more_copies(m, a, b);
    }
    // The answer is mostly not the greater of the two numbers.
    keep(right < other || m.dice.one_in(5))?;
    let draft = Draft::new(json!({
        "task": if blank_bottom { "unit_fraction_bottom" } else { "copies_of_unit" },
        "fraction": format!("{a}/{b}")
    }));
    let plain = [Say::new("common-box").into(), shown(Expr::Blank).into()];
    let stories = if blank_bottom || a > b { 0 } else { 3 };
    Some(
        m.asked(draft, plain, stories, |say| {
            say.math("fraction", frac(a, b)).math("unit", frac(1, b))
        })
        .whole(right)
        .hint(m.say("hint-copies"))
        .hint_with(m.say("hint-figure"), strip(b, a))
        .step(m.say("step-part").count("parts", b))
        .step(m.say("step-count").count("copies", a))
        .step(shown(num(right)))
        .misconception("top-and-bottom-swapped", whole(other))
        .misconception("subtracted-top-and-bottom", whole((a - b).abs())),
    )
}

/// How many more copies of a unit fraction make a whole number.
fn more_copies(m: &mut Make, a: i64, b: i64) -> Option<Draft> {
    let whole_number = a / b + 1;
    let right = whole_number * b - a;
    keep(right > 1 && right != a && b > 2)?;
    Some(
        Draft::new(json!({"task": "copies_to_whole", "fraction": format!("{a}/{b}"), "unit": format!("1/{b}"), "whole": whole_number}))
            .ask(
                m.say("ask-more")
                    .math("fraction", frac(a, b))
                    .math("unit", frac(1, b))
                    .count("whole", whole_number),
            )
            .whole(right)
            .hint(m.say("hint-whole").math("unit", frac(1, b)))
            .hint_with(m.say("hint-figure"), strip(b, a))
            .step(
                m.say("step-whole")
                    .count("whole", whole_number)
                    .count("copies", whole_number * b)
                    .math("unit", frac(1, b)),
            )
            .step(equal(
                difference(num(whole_number * b), num(a)),
                num(right),
            ))
            .misconception("counted-the-copies-there", whole(a))
            .misconception_unless_same("took-bottom-only", whole(b)),
    )
}

fn times_whole(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&BOTTOMS);
    let a = m.level.pick(
        1,
        m.dice.from(2..=b.max(3) - 1),
        m.dice.from(2..=b.max(3) - 1),
    );
    let n = m.dice.from(2..=m.level.pick(12, 12, 15));
    keep(a < b && n != b && gcd(a, b) == 1)?;
    let flipped = m.level.pick(false, false, m.dice.one_in(2));
    let work = if flipped {
        product([frac(a, b), num(n)])
    } else {
        product([num(n), frac(a, b)])
    };
    let value = Ratio::new(n * a, b);
    Some(
        Draft::new(json!({"task": "multiply_fractions", "left": n, "right": format!("{a}/{b}")}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .mixed(value)
            .hint(
                m.say("hint-groups")
                    .count("n", n)
                    .math("fraction", frac(a, b)),
            )
            .hint_with(
                m.say("hint-figure").count("n", n),
                strips(PartShape::Bar, &[(b, a)]),
            )
            .step(
                m.say("step-tops")
                    .math("work", equal(product([num(n), num(a)]), num(n * a))),
            )
            .step(m.say("step-bottom").count("bottom", b))
            .step(equal(work, frac(n * a, b)))
            .simplified(n * a, b)
            .misconception("multiplied-top-and-bottom", mixed(Ratio::new(n * a, n * b)))
            .misconception("multiplied-bottom", mixed(Ratio::new(a, n * b)))
            .misconception_unless_same("added-instead-of-multiplied", mixed(Ratio::new(n + a, b))),
    )
}
