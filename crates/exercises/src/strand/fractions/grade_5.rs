//! Sums and differences of unlike fractions, and fractions as division.

use crate::draw::{strips, tape_parts};
use crate::expr::{
    Expr, difference, equal, frac, mixed as mixed_expr, num, quotient, rational, sum,
};
use crate::figure::PartShape;
use crate::make::{Draft, Generator, Make, keep, mixed};
use crate::say::Say;
use num_integer::{gcd, lcm};
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-fraction-add-unlike", 3, add_unlike),
    Generator::new("g5-fraction-subtract-unlike", 3, subtract_unlike),
    Generator::new("g5-fraction-stories", 3, stories),
    Generator::new("g5-fraction-as-division", 3, as_division),
];

/// Parts that a measuring cup has.
pub(in crate::strand) fn in_cups(bottom: i64) -> bool {
    matches!(bottom, 2 | 3 | 4 | 6 | 8)
}

/// Parts in which people measure: not elevenths of a yard.
pub(in crate::strand) fn in_measures(bottom: i64) -> bool {
    matches!(bottom, 2 | 3 | 4 | 5 | 6 | 8 | 10 | 12)
}

/// A fraction in lowest terms with a denominator of 2 to 12.
pub(super) fn proper(m: &mut Make, high: i64) -> Option<(i64, i64)> {
    let bottom = m.dice.from(2..=high);
    let top = m.dice.from(1..=bottom - 1);
    keep(gcd(top, bottom) == 1)?;
    Some((top, bottom))
}

/// Denominators that suit a level: one a multiple of the other, then sharing a
/// factor or none.
fn unlike(m: &mut Make) -> Option<((i64, i64), (i64, i64))> {
    let (a, b) = proper(m, m.level.pick(6, 8, 12))?;
    let (c, d) = proper(m, m.level.pick(12, 10, 12))?;
    let multiple = b % d == 0 || d % b == 0;
    keep(b != d && multiple == m.level.pick(true, false, false))?;
    keep(lcm(b, d) <= 60)?;
    Some(((a, b), (c, d)))
}

fn common_steps(draft: Draft, (a, b): (i64, i64), (c, d): (i64, i64)) -> Draft {
    let common = lcm(b, d);
    let mut draft = draft.step(Say::new("unlike-step-common").count("bottom", common));
    for (top, bottom) in [(a, b), (c, d)] {
        if bottom != common {
            draft = draft.step(equal(
                frac(top, bottom),
                frac(top * common / bottom, common),
            ));
        }
    }
    draft
}

fn text(whole: i64, top: i64, bottom: i64) -> String {
    if whole == 0 {
        format!("{top}/{bottom}")
    } else {
        format!("{whole} {top}/{bottom}")
    }
}

fn shown(whole: i64, top: i64, bottom: i64) -> Expr {
    if whole == 0 {
        frac(top, bottom)
    } else {
        mixed_expr(whole, top, bottom)
    }
}

fn add_unlike(m: &mut Make) -> Option<Draft> {
    let ((a, b), (c, d)) = unlike(m)?;
    let (w, x) = m
        .level
        .pick((0, 0), (0, 0), (m.dice.from(0..=5), m.dice.from(1..=5)));
    let common = lcm(b, d);
    let tops = a * common / b + c * common / d;
    let value = Ratio::from(w + x) + Ratio::new(tops, common);
    let work = sum([shown(w, a, b), shown(x, c, d)]);
    let draft =
        Draft::new(json!({"task": "add_fractions", "left": text(w, a, b), "right": text(x, c, d)}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .mixed(value)
            .hint(Say::new("unlike-hint-same"))
            .hint_with(
                Say::new("unlike-hint-common").count("bottom", common),
                strips(PartShape::Bar, &[(b, a), (d, c)]),
            );
    Some(
        common_steps(draft, (a, b), (c, d))
            .step(Say::new("unlike-step-add").math(
                "work",
                equal(
                    sum([frac(a * common / b, common), frac(c * common / d, common)]),
                    frac(tops, common),
                ),
            ))
            .step(equal(work, rational(value, true)))
            .misconception(
                "added-tops-and-bottoms",
                mixed(Ratio::from(w + x) + Ratio::new(a + c, b + d)),
            )
            .misconception(
                "changed-bottoms-only",
                mixed(Ratio::from(w + x) + Ratio::new(a + c, common)),
            ),
    )
}

fn subtract_unlike(m: &mut Make) -> Option<Draft> {
    let ((a, b), (c, d)) = unlike(m)?;
    let (w, x) = m
        .level
        .pick((0, 0), (0, 0), (m.dice.from(3..=9), m.dice.from(1..=2)));
    let common = lcm(b, d);
    let (ta, tc) = (a * common / b, c * common / d);
    let value = Ratio::from(w - x) + Ratio::new(ta - tc, common);
    keep(ta != tc && (w > 0) == (w > x) && value > Ratio::from(0) && (w > 0 || ta > tc) && a != c)?;
    let work = difference(shown(w, a, b), shown(x, c, d));
    let draft = Draft::new(
        json!({"task": "subtract_fractions", "left": text(w, a, b), "right": text(x, c, d)}),
    );
    let plain = [
        Say::new("common-work-out").into(),
        equal(work.clone(), Expr::Blank).into(),
    ];
    // Stories only of parts of one thing, in which people measure.
    let told = w == 0 && in_measures(b) && in_measures(d);
    let mut draft = m
        .asked(draft, plain, if told { 3 } else { 0 }, |say| {
            say.math("left", shown(w, a, b))
                .math("right", shown(x, c, d))
        })
        .mixed(value)
        .hint(Say::new("unlike-hint-same"))
        .hint_with(
            Say::new("unlike-hint-common").count("bottom", common),
            strips(PartShape::Bar, &[(b, a), (d, c)]),
        );
    draft = common_steps(draft, (a, b), (c, d));
    if ta < tc {
        draft = draft.step(
            Say::new("mixed-step-open")
                .math("work", frac(ta + common, common))
                .count("whole", w - 1),
        );
    }
    let ta_open = if ta < tc { ta + common } else { ta };
    draft = draft
        .step(Say::new("unlike-step-subtract").math(
            "work",
            equal(
                difference(frac(ta_open, common), frac(tc, common)),
                frac(ta_open - tc, common),
            ),
        ))
        .step(equal(work, rational(value, true)));
    if w > 0 {
        Some(
            draft
                .misconception_if(
                    ta < tc,
                    "smaller-fraction-from-larger",
                    mixed(Ratio::from(w - x) + Ratio::new(tc - ta, common)),
                )
                .misconception_if(ta < tc, "traded-whole-not-taken-away", mixed(value + 1))
                .misconception_if(
                    ta > tc,
                    "changed-bottoms-only",
                    mixed(Ratio::from(w - x) + Ratio::new((a - c).abs(), common)),
                )
                .misconception_if(
                    ta > tc,
                    "subtracted-wholes-only",
                    mixed(Ratio::from(w - x) + Ratio::new(a, b)),
                ),
        )
    } else {
        Some(
            draft
                .misconception_if(
                    b != d,
                    "subtracted-tops-and-bottoms",
                    mixed(Ratio::new((a - c).abs(), (b - d).abs())),
                )
                .misconception(
                    "changed-bottoms-only",
                    mixed(Ratio::new((a - c).abs(), common)),
                ),
        )
    }
}

/// Which of 1/2, 1 and 1 1/2 a sum is closest to, without working it out.
fn benchmark(m: &mut Make) -> Option<Draft> {
    let ((a, b), (c, d)) = unlike(m)?;
    let value = Ratio::new(a, b) + Ratio::new(c, d);
    let marks = [Ratio::new(1, 2), Ratio::from(1), Ratio::new(3, 2)];
    let far = |mark: Ratio<i64>| {
        if value > mark {
            value - mark
        } else {
            mark - value
        }
    };
    let right = (0..3_usize).min_by_key(|at| marks.get(*at).map(|mark| far(*mark)))?;
    keep(far(*marks.get(right)?) < Ratio::new(1, 6))?;
    // Each answer is as likely.
    keep(right == m.dice.from(0..=2) as usize)?;
    let codes = |at: usize| {
        if at < right {
            "estimate-too-small"
        } else {
            "estimate-too-large"
        }
    };
    Some(
        Draft::new(json!({"task": "closest_estimate", "inner": {"task": "add_fractions", "left": format!("{a}/{b}"), "right": format!("{c}/{d}")}, "choices": ["1/2", "1", "1 1/2"]}))
            .ask(m.say("ask-closest").math("work", sum([frac(a, b), frac(c, d)])))
            .one_of_listed(
                marks
                    .into_iter()
                    .enumerate()
                    .map(|(at, mark)| (codes(at), crate::make::shows(rational(mark, true))))
                    .collect(),
                right,
            )
            .hint(m.say("hint-closest"))
            .hint_with(m.say("hint-bars"), strips(PartShape::Bar, &[(b, a), (d, c)]))
            .step(m.say("hint-closest"))
            .step(equal(sum([frac(a, b), frac(c, d)]), rational(value, true))),
    )
}

fn stories(m: &mut Make) -> Option<Draft> {
    if m.level != crate::Level::Entry && m.dice.one_in(5) {
        return benchmark(m);
    }
    let ((a, b), (c, d)) = unlike(m)?;
    let plus = m.dice.one_in(2);
    let common = lcm(b, d);
    let (ta, tc) = (a * common / b, c * common / d);
    let top = if plus { ta + tc } else { ta - tc };
    keep(top > 0 && a != c)?;
    let value = Ratio::new(top, common);
    keep(m.level.pick(value < Ratio::from(1), true, true))?;
    // Stories 1 to 6 join, 7 to 12 take away or compare. What is measured has the parts that
    // its measure has; a bottle (story 9) may be cut in any number of parts.
    let story = m.dice.from(1..=6) + if plus { 0 } else { 6 };
    let measured: fn(i64) -> bool = match story {
        2 => in_cups,
        9 => |_| true,
        _ => in_measures,
    };
    keep(measured(b) && measured(d))?;
    let (one, two) = m.dice.two_names();
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", one)
        .text("other", two)
        .math("one", frac(a, b))
        .math("two", frac(c, d));
    let work = if plus {
        sum([frac(a, b), frac(c, d)])
    } else {
        difference(frac(a, b), frac(c, d))
    };
    let draft = Draft::new(json!({
        "task": if plus { "join_parts" } else { "take_part" },
        "one": format!("{a}/{b}"), "two": format!("{c}/{d}")
    }))
    .ask(ask)
    .mixed(value)
    .hint(m.say(if plus { "hint-join" } else { "hint-take" }))
    .hint_with(
        Say::new("unlike-hint-common").count("bottom", common),
        strips(PartShape::Bar, &[(b, a), (d, c)]),
    );
    let draft = common_steps(draft, (a, b), (c, d)).step(equal(work, rational(value, true)));
    Some(if plus {
        draft
            .misconception("added-tops-and-bottoms", mixed(Ratio::new(a + c, b + d)))
            .misconception("changed-bottoms-only", mixed(Ratio::new(a + c, common)))
            .misconception(
                "subtracted-instead",
                mixed(Ratio::new((ta - tc).abs(), common)),
            )
    } else {
        draft
            .misconception("added-instead", mixed(Ratio::new(ta + tc, common)))
            .misconception(
                "changed-bottoms-only",
                mixed(Ratio::new((a - c).abs(), common)),
            )
    })
}

fn as_division(m: &mut Make) -> Option<Draft> {
    let (shared, people) = m.level.pick(
        (m.dice.from(1..=5), m.dice.from(2..=8)),
        (m.dice.from(2..=15), m.dice.from(2..=9)),
        (m.dice.from(7..=50), m.dice.from(3..=12)),
    );
    keep(shared != people && shared % people != 0)?;
    keep(m.level.pick(shared < people, true, shared > people))?;
    let value = Ratio::new(shared, people);
    if shared > people && m.dice.one_in(3) {
        // Between which two whole numbers a share lies.
        let low = shared / people;
        let (ask, _) = m.story(6);
        return Some(
            Draft::new(json!({"task": "share_between", "amount": shared, "shares": people}))
                .ask(ask.count("amount", shared).count("shares", people))
                .ask(m.say("ask-between"))
                .several(
                    vec![m.say("field-low"), m.say("field-high")],
                    [low, low + 1],
                )
                .hint(m.say("hint-divide"))
                .hint(m.say("hint-whole"))
                .step(equal(
                    quotient(num(shared), num(people)),
                    rational(value, true),
                ))
                .step(
                    m.say("step-between")
                        .count("low", low)
                        .count("high", low + 1),
                )
                .misconception(
                    "gave-amount-and-shares",
                    crate::make::several([people, shared]),
                )
                .misconception("one-whole-too-few", crate::make::several([low - 1, low])),
        );
    }
    let (ask, _) = m.story(6);
    Some(
        Draft::new(json!({"task": "share_equally", "amount": shared, "shares": people}))
            .ask(ask.count("amount", shared).count("shares", people))
            .mixed(value)
            .hint(m.say("hint-divide"))
            .hint_with(
                // The share of one whole is the answer where one whole is shared.
                if shared == 1 {
                    m.say("hint-cut").count("shares", people)
                } else {
                    m.say("hint-one").math("part", frac(1, people))
                },
                tape_parts(people, 1, None, Some(num(1))),
            )
            .step(
                m.say("step-each")
                    .math("part", frac(1, people))
                    .count("amount", shared),
            )
            .step(equal(
                quotient(num(shared), num(people)),
                frac(shared, people),
            ))
            .simplified(shared, people)
            .misconception("divided-the-other-way", mixed(Ratio::new(people, shared)))
            .misconception_if(
                shared > people,
                "remainder-left-out",
                mixed(Ratio::from(shared / people)),
            )
            .misconception_if(
                shared > people,
                "remainder-as-tenths",
                mixed(Ratio::from(shared / people) + Ratio::new(shared % people, 10)),
            ),
    )
}
