//! Stories with times and divide.

use super::many_steps::three_steps;
use crate::draw::{array, tape, tape_bar, tape_parts};
use crate::expr::{Expr, difference, equal, num, product, quotient, sum};
use crate::make::{Draft, Generator, Make, keep, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-divide-share", 3, divide_share),
    Generator::new("g3-multiply-divide-stories", 3, one_step),
    Generator::new("g3-two-step-stories", 3, two_step),
    Generator::new("g4-times-as-many", 3, times_as_many),
    Generator::new("g4-comparison-stories", 3, comparison),
    Generator::new("g4-multi-step-stories", 3, multi_step),
];

fn divide_share(m: &mut Make) -> Option<Draft> {
    let (n, q) = (
        m.dice.from(m.level.pick(2..=5, 2..=10, 4..=10)),
        m.dice.from(m.level.pick(2..=6, 2..=10, 4..=10)),
    );
    keep(n != q)?;
    let total = n * q;
    // Stories 1 to 3 and 7 to 9 ask for the size of a share, the others for the number of shares.
    let story = m.dice.from(1..=12);
    let sharing = matches!(story, 1..=3 | 7..=9);
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .count("total", total)
        .count("n", n);
    let fact = m
        .say("hint-fact")
        .math("fact", equal(product([num(n), Expr::Blank]), num(total)));
    let draft = Draft::new(
        json!({"task": if sharing { "share_equally" } else { "how_many_fit" },
            "amount": total, (if sharing { "shares" } else { "part" }): n}),
    )
    .ask(ask)
    .whole(q)
    .hint(
        m.say(if sharing { "hint-share" } else { "hint-group" })
            .count("n", n),
    );
    let draft = if sharing {
        draft.hint_with(fact, tape_parts(n, 0, None, Some(num(total))))
    } else {
        draft.hint(fact)
    };
    Some(
        draft
            .step(
                m.say(if sharing { "hint-share" } else { "hint-group" })
                    .count("n", n),
            )
            .step(equal(quotient(num(total), num(n)), num(q)))
            .misconception("subtracted-instead-of-divided", whole(total - n))
            .misconception("fact-one-off", whole(q + 1))
            .misconception("multiplied-all-numbers", whole(total * n)),
    )
}

fn one_step(m: &mut Make) -> Option<Draft> {
    let (a, b) = (
        m.dice.from(m.level.pick(2..=5, 3..=9, 6..=10)),
        m.dice.from(m.level.pick(3..=6, 3..=10, 4..=10)),
    );
    keep(a != b && a * b <= 100 && a + b != a * b)?;
    let times = m.dice.one_in(2);
    // Stories 1 to 6 multiply, 7 to 12 divide.
    keep(times || b != 6 || m.dice.one_in(2))?;
    let story = m.dice.from(1..=6) + if times { 0 } else { 6 };
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .count("a", a);
    Some(if times {
        Draft::new(json!({"task": "equal_groups", "groups": a, "each": b}))
            .ask(ask.count("b", b))
            .whole(a * b)
            .hint(m.say("hint-times").count("a", a).count("b", b))
            .hint_with(m.say("hint-figure"), array(a, b))
            .step(m.say("hint-times").count("a", a).count("b", b))
            .step(equal(product([num(a), num(b)]), num(a * b)))
            .misconception("added-instead-of-multiplied", whole(a + b))
            .misconception("one-group-left-out", whole(a * b - b))
    } else {
        Draft::new(json!({"task": "share_equally", "amount": a * b, "shares": a}))
            .ask(ask.count("total", a * b))
            .whole(b)
            .hint(m.say("hint-divide").count("a", a))
            .hint(
                m.say("hint-fact")
                    .math("fact", equal(product([num(a), Expr::Blank]), num(a * b))),
            )
            .step(m.say("hint-divide").count("a", a))
            .step(equal(quotient(num(a * b), num(a)), num(b)))
            .misconception("subtracted-instead-of-divided", whole(a * b - a))
            .misconception("multiplied-all-numbers", whole(a * b * a))
    })
}

fn two_step(m: &mut Make) -> Option<Draft> {
    let (n, each) = (
        m.dice.from(m.level.pick(2..=5, 3..=8, 4..=9)),
        m.dice.from(m.level.pick(2..=6, 4..=12, 6..=12)),
    );
    let c = m.dice.from(m.level.pick(3..=20, 5..=40, 12..=90));
    let product_value = n * each;
    let name = m.dice.name();
    let story = m.dice.from(1..=4);
    let ask = m.say(&format!("ask-{story}")).text("name", name);
    let first = equal(product([num(n), num(each)]), num(product_value));
    keep(n != each && c != n && c != each)?;
    Some(match story {
        1 => {
            let have = product_value + c;
            Draft::new(json!({"task": "left_after_buying", "have": have, "count": n, "each": each}))
                .ask(ask.count("have", have).count("n", n).count("each", each))
                .whole(c)
                .hint(m.say("hint-cost"))
                .hint(m.say("hint-letter-left").math(
                    "equation",
                    equal(
                        difference(num(have), product([num(n), num(each)])),
                        crate::expr::var("m"),
                    ),
                ))
                .step_with(m.say("hint-cost"), first)
                .step_with(
                    m.say("step-left"),
                    equal(difference(num(have), num(product_value)), num(c)),
                )
                .misconception("stopped-after-one-step", whole(product_value))
                .misconception("second-step-turned-round", whole(have + product_value))
                .misconception("used-one-only", whole(have - each))
        }
        2 => Draft::new(json!({"task": "groups_and_more", "groups": n, "each": each, "more": c}))
            .ask(ask.count("n", n).count("each", each).count("more", c))
            .whole(product_value + c)
            .hint(m.say("hint-groups"))
            .hint(m.say("hint-letter-all").math(
                "equation",
                equal(
                    sum([product([num(n), num(each)]), num(c)]),
                    crate::expr::var("m"),
                ),
            ))
            .step_with(m.say("hint-groups"), first)
            .step_with(
                m.say("step-more"),
                equal(sum([num(product_value), num(c)]), num(product_value + c)),
            )
            .misconception("stopped-after-one-step", whole(product_value))
            .misconception("added-instead-of-multiplied", whole(n + each + c)),
        3 => {
            let one = m.dice.from(2..=(product_value - 2).max(2));
            let two = product_value - one;
            keep(two >= 2 && one != n && two != n && one % n != 0)?;
            Draft::new(json!({"task": "join_then_share", "one": one, "two": two, "shares": n}))
                .ask(ask.count("one", one).count("two", two).count("n", n))
                .whole(each)
                .hint(m.say("hint-join"))
                .hint(m.say("hint-share").count("n", n))
                .step_with(
                    m.say("hint-join"),
                    equal(sum([num(one), num(two)]), num(product_value)),
                )
                .step_with(
                    m.say("hint-share").count("n", n),
                    equal(quotient(num(product_value), num(n)), num(each)),
                )
                .misconception("stopped-after-one-step", whole(product_value))
                .misconception("multiplied-all-numbers", whole(product_value * n))
        }
        _ => {
            let used = m.dice.from(1..=each - 1);
            keep(used != n)?;
            Draft::new(json!({"task": "share_then_use", "amount": product_value, "shares": n, "used": used}))
                .ask(ask.count("total", product_value).count("n", n).count("used", used))
                .whole(each - used)
                .hint(m.say("hint-share").count("n", n))
                .hint(m.say("hint-use").count("used", used))
                .step_with(m.say("hint-share").count("n", n), equal(quotient(num(product_value), num(n)), num(each)))
                .step_with(m.say("hint-use").count("used", used), equal(difference(num(each), num(used)), num(each - used)))
                .misconception("stopped-after-one-step", whole(each))
                .misconception("second-step-turned-round", whole(each + used))
        }
    })
}

fn bars(n: i64, small: Option<i64>, large: Option<i64>, m: &Make) -> crate::Figure {
    let parts = (0..n)
        .map(|i| (1, if i == 0 { small.map(num) } else { None }, false))
        .collect();
    tape(
        vec![
            tape_bar(None, vec![(1, small.map(num), true)], None),
            tape_bar(None, parts, Some(large.map_or(Expr::Blank, num))),
        ],
        m.say("bars").count("n", n),
    )
}

fn times_as_many(m: &mut Make) -> Option<Draft> {
    let (n, small) = (
        m.dice.from(m.level.pick(2..=5, 3..=9, 4..=12)),
        m.dice.from(m.level.pick(2..=9, 4..=12, 6..=12)),
    );
    keep(n != small && n + small != n * small)?;
    let large = n * small;
    let form = m
        .level
        .pick(m.dice.from(1..=2), m.dice.from(1..=3), m.dice.from(1..=3));
    let fact = equal(product([num(n), num(small)]), num(large));
    let ask = m.say(&format!("ask-{form}"));
    let draft = match form {
        1 => Draft::new(json!({"task": "times_as_much", "large": large, "small": small}))
            .ask(ask.count("large", large).count("small", small))
            .whole(n)
            .misconception("subtracted-instead-of-compared", whole(large - small))
            .misconception("multiplied-all-numbers", whole(large * small)),
        2 => Draft::new(json!({"task": "scale_up", "small": small, "factor": n}))
            .ask(ask.count("n", n).count("small", small))
            .whole(large)
            .misconception("added-instead-of-multiplied", whole(small + n))
            .misconception("one-group-too-many", whole(large + small)),
        _ => Draft::new(json!({"task": "scale_down", "large": large, "factor": n}))
            .ask(ask.count("n", n).count("large", large))
            .whole(small)
            .misconception("multiplied-all-numbers", whole(large * n))
            .misconception("subtracted-instead-of-compared", whole(large - n)),
    };
    Some(
        draft
            .hint(m.say("hint-times"))
            .hint_with(
                m.say(if form == 1 { "hint-fact" } else { "hint-bars" }),
                if form == 1 {
                    equal(product([Expr::Blank, num(small)]), num(large)).into()
                } else {
                    crate::Block::from(bars(n, None, None, m))
                },
            )
            .step(m.say("step-fact").math("fact", fact))
            .step(
                m.say("step-answer")
                    .count("large", large)
                    .count("n", n)
                    .count("small", small),
            ),
    )
}

fn comparison(m: &mut Make) -> Option<Draft> {
    let (n, small) = (
        m.dice.from(m.level.pick(2..=5, 3..=9, 4..=9)),
        m.dice.from(m.level.pick(3..=9, 4..=12, 6..=15)),
    );
    let large = n * small;
    let (one, two) = m.dice.two_names();
    // 1 and 2: times as many, larger asked. 3: times, smaller asked. 4: how many times. 5: how many more.
    let story = m.dice.from(m.level.pick(1..=4, 1..=5, 2..=5));
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", one)
        .text("other", two);
    keep(n != small && large - small != n)?;
    let draft = match story {
        1 | 2 => Draft::new(json!({"task": "scale_up", "small": small, "factor": n}))
            .ask(ask.count("n", n).count("small", small))
            .whole(large)
            .step(equal(product([num(n), num(small)]), num(large)))
            .misconception("added-instead-of-multiplied", whole(small + n))
            .misconception("one-group-too-many", whole(large + small)),
        3 => Draft::new(json!({"task": "scale_down", "large": large, "factor": n}))
            .ask(ask.count("n", n).count("large", large))
            .whole(small)
            .step(equal(quotient(num(large), num(n)), num(small)))
            .misconception("multiplied-all-numbers", whole(large * n))
            .misconception("subtracted-instead-of-compared", whole(large - n)),
        4 => Draft::new(json!({"task": "times_as_much", "large": large, "small": small}))
            .ask(ask.count("large", large).count("small", small))
            .whole(n)
            .step(equal(quotient(num(large), num(small)), num(n)))
            .misconception("subtracted-instead-of-compared", whole(large - small))
            .misconception("added-instead-of-compared", whole(large + small)),
        _ => Draft::new(json!({"task": "how_many_more", "large": large, "small": small}))
            .ask(ask.count("large", large).count("small", small))
            .whole(large - small)
            .step(equal(
                difference(num(large), num(small)),
                num(large - small),
            ))
            .misconception("times-for-how-many-more", whole(n))
            .misconception("added-instead", whole(large + small)),
    };
    let more = story == 5;
    let draft = draft.step(m.say(if more { "step-more" } else { "step-times" }));
    let mut draft = draft
        .hint(m.say(if more { "hint-more" } else { "hint-times" }))
        .hint_with(
            m.say(match story {
                4 => "hint-fact",
                5 => "hint-gap",
                _ => "hint-bars",
            }),
            match story {
                4 => equal(product([Expr::Blank, num(small)]), num(large)).into(),
                5 => equal(sum([num(small), Expr::Blank]), num(large)).into(),
                _ => crate::Block::from(bars(n, None, None, m)),
            },
        );
    draft.steps.reverse();
    Some(draft)
}

fn multi_step(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(2) {
        return three_steps(m);
    }
    let by = m.dice.from(m.level.pick(3..=6, 4..=9, 6..=9));
    let total = m.dice.from(m.level.pick(20..=60, 30..=120, 90..=400));
    let (q, r) = (total / by, total % by);
    keep(r != 0 && r != q && r != q + 1 && q > 2)?;
    let split = true;
    let one = m.dice.from(total / 3..=total * 2 / 3);
    let two = total - one;
    keep(one != by && two != by)?;
    // 1 rounds up, 2 drops the rest, 3 reports the rest.
    let story = m.dice.from(1..=3);
    let ask = m
        .say(&format!("ask-{story}{}", if split { "-two" } else { "" }))
        .text("name", m.dice.name())
        .count("by", by);
    let (ask, amounts) = if split {
        (ask.count("one", one).count("two", two), vec![one, two])
    } else {
        (ask.count("total", total), vec![total])
    };
    let (task, right) = match story {
        1 => ("groups_for_all", q + 1),
        2 => ("full_groups", q),
        _ => ("left_over", r),
    };
    let mut draft = Draft::new(json!({"task": task, "amounts": amounts, "size": by}))
        .ask(ask)
        .whole(right)
        .hint(m.say("hint-divide").count("by", by))
        .hint(m.say(&format!("hint-rest-{story}")));
    if split {
        draft = draft.step_with(
            m.say("step-join"),
            equal(sum([num(one), num(two)]), num(total)),
        );
    }
    draft = draft
        .step(
            m.say("step-divide")
                .math("work", quotient(num(total), num(by)))
                .count("quotient", q)
                .count("rest", r),
        )
        .step(
            m.say(&format!("step-rest-{story}"))
                .count("answer", right)
                .count("rest", r),
        );
    Some(match story {
        1 => draft
            .misconception("dropped-the-remainder", whole(q))
            .misconception("gave-the-remainder", whole(r)),
        2 => draft
            .misconception("rounded-up-the-quotient", whole(q + 1))
            .misconception("gave-the-remainder", whole(r)),
        _ => draft
            .misconception("gave-the-quotient", whole(q))
            .misconception("rounded-up-the-quotient", whole(q + 1)),
    })
}
