//! Fractions as numbers: names, places on the line, equal fractions, comparing.

use super::which_equal::which_equal;
use crate::answer::{Answer, Entry};
use crate::draw::{circle, strip, strips};
use crate::expr::{Expr, Sign, equal, frac, num, relation, sum};
use crate::figure::PartShape;
use crate::make::{Draft, Generator, Make, compare, fraction, keep, shows, whole};
use crate::say::Say;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-fraction-name", 3, name),
    Generator::new("g3-fraction-same-size", 3, same_size),
    Generator::new("g3-fraction-equivalent", 3, equivalent),
    Generator::new("g3-fraction-whole-numbers", 3, whole_numbers),
    Generator::new("g3-fraction-compare", 3, compare_fractions),
];

/// Denominators of grade 3.
pub(super) const BOTTOMS: [i64; 5] = [2, 3, 4, 6, 8];

fn name(m: &mut Make) -> Option<Draft> {
    let parts = m.dice.pick(&BOTTOMS[1..]);
    let shaded = m.level.pick(
        m.dice.from(1..=parts - 1),
        m.dice.from(2..=parts - 1),
        m.dice.from(parts + 1..=2 * parts - 1),
    );
    keep(2 * shaded != parts)?;
    if m.level == crate::Level::Expected && m.dice.one_in(2) {
        return Some(shade(m, parts, shaded));
    }
    let round = m.dice.one_in(3) && shaded < parts;
    let figure = if round {
        circle(parts, shaded)
    } else {
        strip(parts, shaded)
    };
    let wholes = (shaded + parts - 1) / parts;
    let draft = Draft::new(json!({"task": "shaded_of_parts", "parts": parts, "shaded": shaded}));
    let draft = if wholes > 1 {
        draft.ask(m.wording("ask-wholes", 3))
    } else {
        let plain = [m.say("ask").into()];
        let kind = if round { "round" } else { "bar" };
        m.asked(draft, plain, 3, |say| Say {
            id: format!("{}-{kind}", say.id).into(),
            ..say
        })
    };
    let draft = draft
        .ask(figure)
        .fraction(shaded, parts)
        .hint(m.say("hint-bottom"))
        .hint(m.say("hint-top"))
        .step(m.say("step-bottom").count("parts", parts))
        .step(m.say("step-top").count("shaded", shaded))
        .step(m.say("step-name").math("fraction", frac(shaded, parts)))
        .misconception("fraction-turned-over", fraction(parts, shaded));
    Some(if wholes > 1 {
        draft.misconception(
            "counted-parts-of-all-wholes",
            fraction(shaded, wholes * parts),
        )
    } else {
        draft
            .misconception("part-to-part", fraction(shaded, parts - shaded))
            .misconception("counted-unshaded", fraction(parts - shaded, parts))
    })
}

fn shade(m: &mut Make, parts: i64, shaded: i64) -> Draft {
    let count = |n: i64| Answer::ShadedFraction { count: n as u32 };
    Draft::new(
        json!({"task": "parts_to_shade", "fraction": format!("{shaded}/{parts}"), "parts": parts}),
    )
    .ask(m.say("ask-shade").math("fraction", frac(shaded, parts)))
    .answer(
        Entry::ShadedFraction {
            shape: if m.dice.one_in(2) {
                PartShape::Bar
            } else {
                PartShape::Circle
            },
            wholes: 1,
            parts: parts as u32,
        },
        count(shaded),
    )
    .hint(m.say("hint-bottom"))
    .hint(m.say("hint-top"))
    .step(m.say("step-bottom").count("parts", parts))
    .step(m.say("step-shade").count("shaded", shaded))
    .misconception("counted-unshaded", count(parts - shaded))
    .misconception_unless_same("shaded-all-parts", count(parts))
}

/// Pairs of equal fractions with denominators of grade 3: (top, bottom, factor).
const EQUAL: [(i64, i64, i64); 9] = [
    (1, 2, 2),
    (1, 2, 3),
    (1, 2, 4),
    (1, 3, 2),
    (2, 3, 2),
    (1, 4, 2),
    (3, 4, 2),
    (3, 2, 2),
    (4, 3, 2),
];

fn same_size(m: &mut Make) -> Option<Draft> {
    let (top, bottom, factor) = m.dice.pick(&EQUAL[..7]);
    let down = m.level.pick(false, m.dice.one_in(2), m.dice.one_in(2));
    let (a, b, c, d) = if down {
        (top * factor, bottom * factor, top, bottom)
    } else {
        (top, bottom, top * factor, bottom * factor)
    };
    let mut wrong = vec![("same-top-number", a, d)];
    if c > 1 {
        wrong.push(("one-part-off", c - 1, d));
    }
    wrong.push(("one-part-off", c + 1, d));
    let shifted = a + d - b;
    if !down && shifted > 0 {
        wrong.push(("same-difference", shifted, d));
    }
    // One wrong choice for each misconception; none equals the right one.
    let mut chosen: Vec<(&'static str, i64)> = Vec::new();
    for (code, t, _) in &wrong {
        if *t != c && chosen.iter().all(|(k, other)| k != code && other != t) {
            chosen.push((code, *t));
        }
    }
    keep(chosen.len() >= 2)?;
    let wrong = chosen
        .iter()
        .map(|(code, t)| (*code, shows(frac(*t, d))))
        .collect();
    let tops: Vec<String> = chosen
        .iter()
        .map(|(_, t)| format!("{t}/{d}"))
        .chain([format!("{c}/{d}")])
        .collect();
    Some(
        Draft::new(
            json!({"task": "same_size_of", "fraction": format!("{a}/{b}"), "choices": tops}),
        )
        .ask(m.wording("ask", 2).math("fraction", frac(a, b)))
        .ask(strip(b, a))
        .one_of(&mut m.dice, shows(frac(c, d)), wrong)
        .hint(m.say("hint-length"))
        .hint_with(
            m.say("hint-cut").count("parts", d),
            strips(PartShape::Bar, &[(b, a), (d, 0)]),
        )
        .step(m.say("step-cut").count("parts", d))
        .step_with(
            m.say("step-same")
                .math("one", frac(a, b))
                .math("two", frac(c, d)),
            strips(PartShape::Bar, &[(b, a), (d, c)]),
        ),
    )
}

fn equivalent(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(4) {
        return which_equal(m, &BOTTOMS);
    }
    let (top, bottom, factor) = m
        .dice
        .pick(m.level.pick(&EQUAL[..7], &EQUAL[..9], &EQUAL[..9]));
    let down = m.level.pick(false, m.dice.one_in(2), m.dice.one_in(2));
    let blank_bottom = m.level.pick(false, false, m.dice.one_in(2));
    let (a, b, c, d) = if down {
        (top * factor, bottom * factor, top, bottom)
    } else {
        (top, bottom, top * factor, bottom * factor)
    };
    // Fractions greater than 1 need more than one bar.
    keep(a <= b)?;
    let (right, given) = if blank_bottom { (d, c) } else { (c, d) };
    let kept = if blank_bottom { b } else { a };
    let shifted = if blank_bottom { b + c - a } else { a + d - b };
    keep(shifted > 0 && (right > 3 || m.dice.one_in(2)))?;
    let shown = |answer: Expr| {
        let other = if blank_bottom {
            frac(given, answer)
        } else {
            frac(answer, given)
        };
        equal(frac(a, b), other)
    };
    let draft = Draft::new(json!({
        "task": if blank_bottom { "equal_bottom" } else { "equal_top" },
        "fraction": format!("{a}/{b}"), "given": given
    }));
    let plain = [Say::new("common-box").into(), shown(Expr::Blank).into()];
    let stories = if blank_bottom { 0 } else { 3 };
    Some(
        m.asked(draft, plain, stories, |say| {
            say.math("fraction", frac(a, b)).count("given", given)
        })
        .whole(right)
        .hint(Say::new("fraction-hint-same"))
        .hint_with(
            m.say(if down { "hint-join" } else { "hint-cut" }),
            strip(b, a),
        )
        .step(
            m.say(if down { "step-join" } else { "step-cut" })
                .count("factor", factor),
        )
        .step_with(
            m.say("step-bars"),
            strips(PartShape::Bar, &[(b, a), (d, c)]),
        )
        .step(shown(num(right)))
        .misconception("kept-the-number", whole(kept))
        .misconception_if(!down, "same-difference", whole(shifted)),
    )
}

fn whole_numbers(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(2..=10);
    let bottom = m.level.pick(
        m.dice.pick(&[1, 2, 2, 3, 3, 4, 4]),
        m.dice.pick(&BOTTOMS),
        m.dice.pick(&BOTTOMS),
    );
    let top = n * bottom;
    let find_whole = m.level.pick(false, m.dice.one_in(3), m.dice.one_in(2));
    let draft = if find_whole {
        let draft = Draft::new(json!({"task": "value_of", "fraction": format!("{top}/{bottom}")}));
        let plain = [
            Say::new("common-box").into(),
            equal(frac(top, bottom), Expr::Blank).into(),
        ];
        m.asked(draft, plain, 2, |say| {
            Say {
                id: format!("{}-back", say.id).into(),
                ..say
            }
            .math("fraction", frac(top, bottom))
        })
        .whole(n)
        .misconception("subtracted-instead-of-divided", whole(top - bottom))
        .misconception("took-top-only", whole(top))
    } else {
        let draft = Draft::new(json!({"task": "top_for_whole", "whole": n, "bottom": bottom}));
        let plain = [
            Say::new("common-box").into(),
            equal(num(n), frac(Expr::Blank, bottom)).into(),
        ];
        // One part of a whole that is not cut would be no story.
        let stories = if bottom > 1 { 3 } else { 0 };
        m.asked(draft, plain, stories, |say| {
            say.count("whole", n)
                .count("bottom", bottom)
                .math("part", frac(1, bottom))
        })
        .whole(top)
        .misconception_unless_same("whole-number-as-numerator", whole(n))
        .misconception("added-instead-of-multiplied", whole(n + bottom))
        .misconception_unless_same("took-bottom-only", whole(bottom))
    };
    let one = m
        .say("hint-one")
        .math("one", equal(num(1), frac(bottom, bottom)));
    let draft = if bottom == 1 {
        draft.hint(one)
    } else {
        draft.hint_with(one, strip(bottom, bottom))
    };
    Some(
        draft
            .hint(
                m.say(if find_whole {
                    "hint-how-many"
                } else {
                    "hint-many"
                })
                .count("whole", if find_whole { top } else { n }),
            )
            .step(m.say("step-one").count("parts", bottom))
            .step(m.say("step-many").count("whole", n).count("parts", top))
            .step(equal(num(n), frac(top, bottom))),
    )
}

fn compare_fractions(m: &mut Make) -> Option<Draft> {
    let same_top = m.level.pick(false, m.dice.one_in(2), true);
    let (a, b, c, d) = if same_top {
        let (b, d) = (m.dice.pick(&BOTTOMS), m.dice.pick(&BOTTOMS));
        let top = m.dice.from(1..=m.level.pick(1, 5, 7));
        (top, b, top, d)
    } else {
        let b = m.dice.pick(&BOTTOMS[1..]);
        let top = m.level.pick(b, b + 2, b + 2);
        (m.dice.from(1..=top), b, m.dice.from(1..=top), b)
    };
    if m.equal {
        return Some(equal_fractions(m));
    }
    keep((a, b) != (c, d))?;
    let sign = Sign::of((a * d).cmp(&(c * b)));
    let wrong = Sign::of((c * b).cmp(&(a * d)));
    Some(
        Draft::new(
            json!({"task": "compare", "left": format!("{a}/{b}"), "right": format!("{c}/{d}")}),
        )
        .ask(Say::new("common-sign"))
        .ask(relation(frac(a, b), Sign::Blank, frac(c, d)))
        .compare(sign)
        .hint(m.say(if same_top {
            "hint-same-top"
        } else {
            "hint-same-bottom"
        }))
        .hint_with(
            m.say("hint-figure"),
            strips(PartShape::Bar, &[(b, a), (d, c)]),
        )
        .step(m.say(if same_top {
            "step-same-top"
        } else {
            "step-same-bottom"
        }))
        .step(relation(frac(a, b), sign, frac(c, d)))
        .misconception(
            if same_top {
                "larger-bottom-larger-fraction"
            } else {
                "sign-turned-round"
            },
            compare(wrong),
        )
        .misconception("took-as-equal", compare(Sign::Equal)),
    )
}

/// Equal fractions with the same numerator or denominator: a whole number of wholes, such as
/// 4/4 and 3/3, or the same fraction as parts of a sum.
fn equal_fractions(m: &mut Make) -> Draft {
    let b = m.dice.pick(&BOTTOMS[1..]);
    let top = m.dice.from(2..=b);
    let part = m.dice.from(1..=top - 1);
    let flipped = m.dice.one_in(2);
    let parts = || sum([frac(part, b), frac(top - part, b)]);
    let shown = |sign: Sign| {
        if flipped {
            relation(parts(), sign, frac(top, b))
        } else {
            relation(frac(top, b), sign, parts())
        }
    };
    Draft::new(json!({"task": "compare_with_sum", "fraction": format!("{top}/{b}"), "parts": [format!("{part}/{b}"), format!("{}/{b}", top - part)]}))
        .ask(Say::new("common-sign"))
        .ask(shown(Sign::Blank))
        .compare(Sign::Equal)
        .hint(m.say("hint-same-bottom"))
        .hint_with(m.say("hint-figure"), strips(PartShape::Bar, &[(b, top), (b, part)]))
        .step(m.say("step-count").count("parts", top))
        .step(shown(Sign::Equal))
        .misconception("sign-turned-round", compare(Sign::Less))
        .misconception("took-as-different", compare(Sign::Greater))
}
