//! Equal groups, times and divide facts, and the properties behind them.

use crate::answer::{Answer, Entry};
use crate::draw::{array_with, groups, squares, tape_parts};
use crate::expr::{Expr, equal, group, num, product, quotient, sum};
use crate::make::{Draft, Generator, Make, keep, shows, whole};
use crate::say::Say;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-multiply-equal-groups", 4, equal_groups),
    Generator::new("g3-missing-factor", 3, missing_factor),
    Generator::new("g3-multiply-properties", 3, properties),
    Generator::new("g3-divide-as-missing-factor", 3, divide_as_missing),
    Generator::new("g3-facts-multiply", 3, facts_multiply),
    Generator::new("g3-facts-divide", 3, facts_divide),
    Generator::new("g3-multiply-by-tens", 3, by_tens),
];

fn equal_groups(m: &mut Make) -> Option<Draft> {
    let high = m.level.pick(6, 10, 10);
    let (n, each) = (
        m.dice.from(m.level.pick(2..=6, 2..=10, 4..=10)),
        m.dice.from(2..=high),
    );
    keep(n != each && n + each != n * each)?;
    if m.level != crate::Level::Stretch && n <= 7 && m.dice.one_in(4) {
        return Some(array_to_mark(m, n, each));
    }
    let (ask, _) = m.story(6);
    let mut draft = Draft::new(json!({"task": "equal_groups", "groups": n, "each": each}))
        .ask(ask.count("groups", n).count("each", each));
    if m.level == crate::Level::Entry {
        draft = draft.ask(groups(n, each, 0));
    }
    Some(
        draft
            .whole(n * each)
            .hint(m.say("hint-groups").count("groups", n).count("each", each))
            .hint_with(m.say("hint-count").count("each", each), groups(n, each, 0))
            .step(m.say("hint-groups").count("groups", n).count("each", each))
            .step(equal(product([num(n), num(each)]), num(n * each)))
            .misconception("added-instead-of-multiplied", whole(n + each))
            .misconception("one-group-left-out", whole((n - 1) * each))
            .misconception_unless_same("one-group-too-many", whole((n + 1) * each)),
    )
}

/// Rows to mark on a grid. A grid turned by a quarter is right too.
fn array_to_mark(m: &mut Make, n: i64, each: i64) -> Draft {
    let area = |rows: i64| Answer::GridArea {
        rows: rows as u32,
        columns: each as u32,
    };
    let work = product([num(n), num(each)]);
    Draft::new(json!({"task": "array_to_mark", "rows": n, "each": each}))
        .ask(m.say("ask-mark").math("work", work))
        .answer(
            Entry::GridArea {
                rows: 8,
                columns: 10,
            },
            area(n),
        )
        .hint(m.say("hint-rows").count("groups", n).count("each", each))
        .hint(m.say("hint-under").count("each", each))
        .step(m.say("hint-under").count("each", each))
        .step_with(m.say("step-rows").count("groups", n), squares(n, each))
        .misconception("one-group-left-out", area(n - 1))
        .misconception("one-group-too-many", area(n + 1))
}

/// A times fact that suits the level: (factor, factor).
fn fact(m: &mut Make) -> Option<(i64, i64)> {
    let a = m.level.pick(
        m.dice.pick(&[2, 3, 4, 5, 10]),
        m.dice.from(2..=9),
        m.dice.from(6..=9),
    );
    let b = m.dice.from(m.level.pick(2..=6, 3..=10, 4..=10));
    keep(a != b && a + b != a * b)?;
    Some((a, b))
}

fn missing_factor(m: &mut Make) -> Option<Draft> {
    let (a, b) = fact(m)?;
    let c = a * b;
    let form = m
        .level
        .pick(m.dice.from(1..=2), m.dice.from(1..=3), m.dice.from(2..=4));
    // The number asked for, the equation, and the numbers shown in it.
    let (right, shown, text): (i64, Box<dyn Fn(Expr) -> Expr>, String) = match form {
        1 => (
            b,
            Box::new(move |x| equal(product([num(a), x]), num(c))),
            format!("{a} * x = {c}"),
        ),
        2 => (
            b,
            Box::new(move |x| equal(product([x, num(a)]), num(c))),
            format!("x * {a} = {c}"),
        ),
        3 => (
            b,
            Box::new(move |x| equal(quotient(num(c), x), num(a))),
            format!("{c} / x = {a}"),
        ),
        _ => (
            c,
            Box::new(move |x| equal(quotient(x, num(a)), num(b))),
            format!("x / {a} = {b}"),
        ),
    };
    let plain = [Say::new("common-box").into(), shown(Expr::Blank).into()];
    // Stories for an unknown number in each group, and for an unknown number of groups.
    let stories = if form <= 2 { 3 } else { 0 };
    let ending = if form == 2 { "-groups" } else { "" };
    let draft = Draft::new(json!({"task": "solve_for_x", "equation": text}));
    let draft = m
        .asked(draft, plain, stories, |say| {
            Say {
                id: format!("{}{ending}", say.id).into(),
                ..say
            }
            .count("a", a)
            .count("c", c)
            .math("equation", shown(Expr::Blank))
        })
        .whole(right)
        .hint(m.say("hint-family"));
    // Equal parts that make the product, where the number of parts is known.
    let draft = if form == 1 {
        draft.hint_with(m.say("hint-figure"), tape_parts(a, 0, None, Some(num(c))))
    } else {
        draft.hint(m.say("hint-figure"))
    };
    let draft = draft
        .step(
            m.say("step-family")
                .math("fact", equal(product([num(a), num(b)]), num(c))),
        )
        .step(shown(num(right)));
    Some(if right == c {
        draft
            .misconception_if(
                a.max(b) % a.min(b) == 0,
                "divided-instead-of-multiplied",
                whole(a.max(b) / a.min(b)),
            )
            .misconception("added-instead-of-multiplied", whole(a + b))
            .misconception_unless_same("answer-given-again", whole(b))
    } else {
        draft
            .misconception("subtracted-instead-of-divided", whole(c - a))
            .misconception("fact-one-off", whole(b + 1))
            .misconception_unless_same("multiplied-all-numbers", whole(c * a))
    })
}

fn properties(m: &mut Make) -> Option<Draft> {
    let a = m.dice.from(m.level.pick(2..=6, 3..=9, 4..=9));
    if m.level != crate::Level::Stretch && m.dice.one_in(3) {
        return turned_fact(m, a);
    }
    if m.level == crate::Level::Stretch && m.dice.one_in(2) {
        let (b, c) = (m.dice.from(2..=5), m.dice.from(2..=5));
        keep(a * b <= 40 && a != b && b != c && a + b != a * b && a != c && a * b * c <= 100)?;
        let shown = |x: Expr| {
            equal(
                product([num(a), group(product([num(b), num(c)]))]),
                product([x, num(c)]),
            )
        };
        return Some(
            Draft::new(
                json!({"task": "solve_for_x", "equation": format!("{a} * ({b} * {c}) = x * {c}")}),
            )
            .ask(Say::new("common-box"))
            .ask(shown(Expr::Blank))
            .whole(a * b)
            .hint(m.say("hint-any-order"))
            .hint(m.say("hint-first-two"))
            .step(
                m.say("step-first-two")
                    .math("work", equal(product([num(a), num(b)]), num(a * b))),
            )
            .step(shown(num(a * b)))
            .misconception("added-instead-of-multiplied", whole(a + b))
            .misconception("kept-the-number", whole(a)),
        );
    }
    let b = m.dice.from(6..=m.level.pick(9, 12, 15));
    let first = if b > 12 { 10 } else { m.dice.from(2..=b - 2) };
    let second = b - first;
    keep(a != b && first != second && second >= 2)?;
    let shown = |x: Expr| {
        equal(
            product([num(a), num(b)]),
            sum([product([num(a), num(first)]), product([num(a), x])]),
        )
    };
    Some(
        Draft::new(json!({"task": "solve_for_x", "equation": format!("{a} * {b} = {a} * {first} + {a} * x")}))
            .ask(Say::new("common-box"))
            .ask(shown(Expr::Blank))
            .whole(second)
            .hint(m.say("hint-split").count("rows", a))
            .hint_with(
                m.say("hint-cut").count("first", first),
                array_with(a, b, Some(first), false),
            )
            .step(m.say("step-split").math("work", equal(num(b), sum([num(first), num(second)]))))
            .step(shown(num(second)))
            .misconception("kept-the-number", whole(b))
            .misconception("added-all-numbers", whole(b + first))
            .misconception_unless_same("split-factor-repeated", whole(first)),
    )
}

/// A fact that is known gives the fact with its factors in the other order.
fn turned_fact(m: &mut Make, a: i64) -> Option<Draft> {
    let b = m.dice.from(m.level.pick(3..=9, 11..=19, 11..=19));
    keep(a != b && a * b != a + b)?;
    let known = equal(product([num(a), num(b)]), num(a * b));
    if !m.dice.one_in(5) {
        // The same fact, with a box for one of its factors.
        let (right, shown) = if m.dice.one_in(2) {
            (a, product([num(b), Expr::Blank]))
        } else {
            (b, product([Expr::Blank, num(a)]))
        };
        let kept = a + b - right;
        return Some(
            Draft::new(
                json!({"task": "solve_for_x", "equation": format!("{kept} * x = {}", a * b)}),
            )
            .ask(
                m.say("ask-turned-box")
                    .math("known", known)
                    .math("asked", equal(shown, num(a * b))),
            )
            .whole(right)
            .hint(m.say("hint-turned"))
            .hint(m.say("hint-any-order"))
            .step(m.say("hint-any-order"))
            .step(equal(product([num(b), num(a)]), num(a * b)))
            .misconception("kept-the-number", whole(kept))
            .misconception("answer-given-again", whole(a * b)),
        );
    }
    Some(
        Draft::new(json!({"task": "turned_fact", "fact": [a, b, a * b], "asked": [b, a]}))
            .ask(
                m.say("ask-turned")
                    .math("known", known.clone())
                    .math("asked", product([num(b), num(a)])),
            )
            .whole(a * b)
            .hint(m.say("hint-turned"))
            .hint(m.say("hint-any-order"))
            .step(m.say("hint-any-order"))
            .step(equal(product([num(b), num(a)]), num(a * b)))
            .misconception("added-instead-of-multiplied", whole(a + b))
            .misconception(
                "thought-order-changes-product",
                whole(a * b + (b - a).abs()),
            ),
    )
}

fn divide_as_missing(m: &mut Make) -> Option<Draft> {
    let (a, b) = fact(m)?;
    let c = a * b;
    if m.dice.one_in(4) {
        return same_missing_number(m, a, b);
    }
    let times = equal(product([num(a), Expr::Blank]), num(c));
    let plain = [m
        .say("ask")
        .math("divide", quotient(num(c), num(a)))
        .math("times", times.clone())
        .into()];
    let draft = Draft::new(json!({"task": "divide", "total": c, "by": a}));
    Some(
        m.asked(draft, plain, 3, |say| {
            say.count("total", c).count("by", a).math("times", times)
        })
        .whole(b)
        .hint_with(
            m.say("hint-think")
                .math("times", equal(product([num(a), Expr::Blank]), num(c))),
            tape_parts(a, 0, None, Some(num(c))),
        )
        .hint(m.say("hint-rows").count("rows", a).count("total", c))
        .step(
            m.say("step-fact")
                .math("fact", equal(product([num(a), num(b)]), num(c))),
        )
        .step(equal(quotient(num(c), num(a)), num(b)))
        .misconception("subtracted-instead-of-divided", whole(c - a))
        .misconception("fact-one-off", whole(b + 1))
        .misconception("fact-one-short", whole(b - 1)),
    )
}

/// Which equation has the missing number of a division?
fn same_missing_number(m: &mut Make, a: i64, b: i64) -> Option<Draft> {
    let c = a * b;
    let division = equal(quotient(num(c), num(a)), Expr::Blank);
    let times = if m.dice.one_in(2) {
        product([num(a), Expr::Blank])
    } else {
        product([Expr::Blank, num(a)])
    };
    let right = equal(times, num(c));
    let plus = equal(sum([num(a), Expr::Blank]), num(c));
    let turned = equal(product([num(c), Expr::Blank]), num(a));
    let text =
        |expr: &Expr| crate::text::expr_text(surefoot_catalogue::Locale::default(), expr).ok();
    let choices = [text(&right)?, text(&plus)?, text(&turned)?];
    Some(
        Draft::new(json!({"task": "same_missing_number", "divide": [c, a], "choices": choices}))
            .ask(m.say("ask-same").math("divide", division))
            .one_of(
                &mut m.dice,
                shows(right),
                vec![
                    ("subtracted-instead-of-divided", shows(plus)),
                    ("divided-the-other-way", shows(turned)),
                ],
            )
            .hint(m.say("hint-same"))
            .hint(m.say("hint-rows").count("rows", a).count("total", c))
            .step(
                m.say("step-fact")
                    .math("fact", equal(product([num(a), num(b)]), num(c))),
            )
            .step(equal(quotient(num(c), num(a)), num(b))),
    )
}

fn facts_multiply(m: &mut Make) -> Option<Draft> {
    let a = m.level.pick(
        m.dice.pick(&[0, 1, 2, 5, 10]),
        m.dice.from(2..=10),
        m.dice.from(6..=9),
    );
    let b = m.dice.from(m.level.pick(1..=10, 3..=10, 3..=10));
    let (x, y) = if m.dice.one_in(2) { (a, b) } else { (b, a) };
    keep((a, b) != (2, 2) && (a > 1 || b != 1) && (a != 1 || m.dice.one_in(3)))?;
    let shown = |answer: Expr| equal(product([num(x), num(y)]), answer);
    let draft = Draft::new(json!({"task": "multiply", "numbers": [x, y]}))
        .ask(Say::new("common-work-out"))
        .ask(shown(Expr::Blank))
        .whole(a * b);
    if a <= 1 {
        let draft = draft
            .hint(m.say("hint-groups").count("groups", x).count("each", y))
            .hint(m.say(if a == 0 { "hint-zero" } else { "hint-one" }))
            .step(m.say(if a == 0 { "hint-zero" } else { "hint-one" }))
            .step(shown(num(a * b)));
        return Some(if a == 0 {
            draft
                .misconception("times-zero-keeps-number", whole(b))
                .misconception_unless_same("times-zero-is-one", whole(1))
        } else {
            draft
                .misconception("added-instead-of-multiplied", whole(b + 1))
                .misconception("times-one-is-one", whole(1))
        });
    }
    let near = if b > 5 { 5 } else { b - 1 };
    let rest = b - near;
    let turned = if (x, y) == (a, b) {
        "hint-rows"
    } else {
        "hint-rows-turned"
    };
    let mut draft = draft.hint(m.say("hint-near")).hint_with(
        m.say(turned).count("rows", a).count("each", b),
        array_with(a, b, Some(near), false),
    );
    draft = if near > 0 && rest > 0 && near != b {
        draft
            .step(
                m.say("step-near")
                    .math("work", equal(product([num(a), num(near)]), num(a * near))),
            )
            .step(
                m.say("step-rest")
                    .math("work", equal(product([num(a), num(rest)]), num(a * rest))),
            )
    } else {
        draft.step(m.say("hint-near"))
    };
    Some(
        draft
            .step(shown(num(a * b)))
            .misconception("added-instead-of-multiplied", whole(a + b))
            .misconception("one-group-left-out", whole(a * (b - 1)))
            .misconception_unless_same("one-group-too-many", whole(a * (b + 1))),
    )
}

fn facts_divide(m: &mut Make) -> Option<Draft> {
    let by = m.level.pick(
        m.dice.pick(&[1, 2, 5, 10]),
        m.dice.from(2..=10),
        m.dice.from(6..=9),
    );
    let q = m.dice.from(m.level.pick(2..=10, 2..=10, 3..=10));
    let total = by * q;
    keep(total != by && q != by && (by != 1 || m.dice.one_in(3)))?;
    let shown = |answer: Expr| equal(quotient(num(total), num(by)), answer);
    let draft = Draft::new(json!({"task": "divide", "total": total, "by": by}))
        .ask(Say::new("common-work-out"))
        .ask(shown(Expr::Blank))
        .whole(q)
        .hint(m.say("hint-times"));
    let fact = m
        .say("hint-fact")
        .math("fact", equal(product([num(by), Expr::Blank]), num(total)));
    let draft = if by == 1 {
        draft.hint(fact)
    } else {
        draft.hint_with(fact, tape_parts(by, 0, None, Some(num(total))))
    };
    let draft = draft
        .step(
            m.say("step-fact")
                .math("fact", equal(product([num(by), num(q)]), num(total))),
        )
        .step(shown(num(q)));
    Some(if by == 1 {
        draft
            .misconception("divided-by-one-is-one", whole(1))
            .misconception("subtracted-instead-of-divided", whole(total - 1))
    } else {
        draft
            .misconception("subtracted-instead-of-divided", whole(total - by))
            .misconception("fact-one-off", whole(q + 1))
            .misconception_unless_same("fact-one-short", whole(q - 1))
    })
}

fn by_tens(m: &mut Make) -> Option<Draft> {
    let a = m.dice.from(m.level.pick(2..=5, 2..=9, 4..=9));
    let tens = m.dice.from(m.level.pick(1..=5, 2..=9, 4..=9));
    let n = tens * 10;
    let flipped = m.dice.one_in(2);
    let missing = m.level == crate::Level::Stretch && m.dice.one_in(2);
    let shown = |answer: Expr| {
        if missing {
            equal(product([num(a), answer]), num(a * n))
        } else if flipped {
            equal(product([num(n), num(a)]), answer)
        } else {
            equal(product([num(a), num(n)]), answer)
        }
    };
    keep(a != tens && a * n != a + n)?;
    let draft = if missing {
        let plain = [Say::new("common-box").into(), shown(Expr::Blank).into()];
        let draft =
            Draft::new(json!({"task": "solve_for_x", "equation": format!("{a} * x = {}", a * n)}));
        m.asked(draft, plain, 2, |say| {
            Say {
                id: format!("{}-missing", say.id).into(),
                ..say
            }
            .count("a", a)
            .count("total", a * n)
        })
        .whole(n)
        .misconception("zero-left-out", whole(tens))
        .misconception("zero-too-many", whole(n * 10))
    } else {
        let plain = [
            Say::new("common-work-out").into(),
            shown(Expr::Blank).into(),
        ];
        let draft = Draft::new(json!({"task": "multiply", "numbers": [a, n]}));
        m.asked(draft, plain, 4, |say| say.count("a", a).count("n", n))
            .whole(a * n)
            .misconception("zero-left-out", whole(a * tens))
            .misconception("zero-too-many", whole(a * n * 10))
            .misconception("added-instead-of-multiplied", whole(a + n))
    };
    Some(
        draft
            .hint(if missing {
                m.say("hint-missing").count("total", a * tens)
            } else {
                m.say("hint-tens").count("n", n).count("tens", tens)
            })
            .hint(
                m.say(if missing {
                    "hint-missing-fact"
                } else {
                    "hint-fact"
                })
                .math(
                    "fact",
                    if missing {
                        equal(product([num(a), Expr::Blank]), num(a * tens))
                    } else {
                        product([num(a), num(tens)])
                    },
                ),
            )
            .step(
                m.say("step-fact")
                    .math("fact", equal(product([num(a), num(tens)]), num(a * tens))),
            )
            .step(m.say("step-tens").count("tens", a * tens).count("n", a * n))
            .step(shown(num(if missing { n } else { a * n }))),
    )
}
