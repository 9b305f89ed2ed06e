//! Number expressions, two patterns, powers, and putting in a value.

use super::read::{plot_paired_terms, read_expression};
use crate::FormRule;
use crate::answer::Entry;
use crate::decimal::Dec;
use crate::draw::{cell, table};
use crate::expr::{
    Expr, difference, equal, group, num, pair, power, product, side_by_side, sum, var,
};
use crate::make::{Draft, Generator, Make, decimal, expression, keep, point, several, whole};
use crate::say::Say;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-brackets", 3, brackets),
    Generator::new("g5-write-expressions", 3, write_number_expression),
    Generator::new("g5-two-patterns", 3, two_patterns),
    Generator::new("g6-powers", 4, powers),
    Generator::new("g6-evaluate", 3, evaluate),
];

fn brackets(m: &mut Make) -> Option<Draft> {
    let (a, b, c) = (m.dice.from(2..=9), m.dice.from(2..=12), m.dice.from(2..=9));
    let d = m.dice.from(1..=12);
    keep(a != b && b != c && a != c)?;
    let minus = m.dice.one_in(2);
    keep(!minus || b > c + 1)?;
    let inner = if minus { b - c } else { b + c };
    let inside = if minus {
        difference(num(b), num(c))
    } else {
        sum([num(b), num(c)])
    };
    let inside_text = if minus {
        format!("({b} - {c})")
    } else {
        format!("({b} + {c})")
    };
    // The product that comes if the brackets are not seen.
    let flat = if minus { a * b - c } else { a * b + c };
    let kind = m.level.pick(1, m.dice.from(2..=3), m.dice.from(3..=4));
    let subtracts_product = kind == 3;
    let (work, text, value, wrong) = match kind {
        1 => (
            product([num(a), group(inside.clone())]),
            format!("{a} * {inside_text}"),
            a * inner,
            flat,
        ),
        2 => (
            sum([product([num(a), group(inside.clone())]), num(d)]),
            format!("{a} * {inside_text} + {d}"),
            a * inner + d,
            flat + d,
        ),
        3 => (
            difference(num(a * inner + d), product([num(a), group(inside.clone())])),
            format!("{} - {a} * {inside_text}", a * inner + d),
            d,
            (a * inner + d - a) * inner,
        ),
        _ => (
            product([group(sum([num(a), num(d)])), group(inside.clone())]),
            format!("({a} + {d}) * {inside_text}"),
            (a + d) * inner,
            a + d * b + if minus { -c } else { c },
        ),
    };
    keep(wrong != value && wrong > 0 && value > 0)?;
    Some(
        Draft::new(json!({"task": "evaluate", "expression": text}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .whole(value)
            .hint(m.say("hint-first"))
            .hint(m.say("hint-inside").math("work", inside.clone()))
            .step(m.say("step-inside").math("work", equal(inside, num(inner))))
            .step(m.say("step-times"))
            .step(equal(work, num(value)))
            .misconception(
                if subtracts_product {
                    "subtracted-before-times"
                } else {
                    "brackets-not-seen"
                },
                whole(wrong),
            )
            .misconception("stopped-after-brackets", whole(inner)),
    )
}

fn write_number_expression(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(3) {
        return read_expression(m);
    }
    let (a, b, c) = (m.dice.from(2..=12), m.dice.from(2..=12), m.dice.from(2..=9));
    keep(a != b && a != c && b != c)?;
    let story = m.dice.from(m.level.pick(1..=2, 1..=4, 3..=6));
    let (big, small) = (a.max(b), a.min(b));
    // Words, right expression, without brackets, turned round.
    let (first, second, text, flat, turned) = match story {
        1 => (
            a,
            b,
            format!("{c}*({a}+{b})"),
            format!("{c}*{a}+{b}"),
            format!("{c}+{a}*{b}"),
        ),
        2 => (
            big,
            small,
            format!("{c}*({big}-{small})"),
            format!("{c}*{big}-{small}"),
            format!("{c}*({small}-{big})"),
        ),
        3 => (
            a,
            b,
            format!("{a}*{b}+{c}"),
            format!("{a}*({b}+{c})"),
            format!("{a}+{b}*{c}"),
        ),
        4 => (
            a * c,
            b,
            format!("({}+{})/{c}", a * c, b * c),
            format!("{}+{}/{c}", a * c, b * c),
            format!("{c}/({}+{})", a * c, b * c),
        ),
        5 => (
            a * b + c,
            b,
            format!("{}-{a}*{b}", a * b + c),
            format!("({}-{a})*{b}", a * b + c),
            format!("{a}*{b}-{}", a * b + c),
        ),
        _ => (
            a * b,
            b,
            format!("{}/{b}+{c}", a * b),
            format!("{}/({b}+{c})", a * b),
            format!("{b}/{}+{c}", a * b),
        ),
    };
    let ask = m.say(&format!("ask-{story}"));
    let (ask, statement) = match story {
        1 | 2 => (
            ask.count("a", first).count("b", second).count("c", c),
            json!({"task": if story == 1 { "add_then_times" } else { "subtract_then_times" }, "a": first, "b": second, "c": c}),
        ),
        3 => (
            ask.count("a", a).count("b", b).count("c", c),
            json!({"task": "times_then_add", "a": a, "b": b, "c": c}),
        ),
        4 => (
            ask.count("a", a * c).count("b", b * c).count("c", c),
            json!({"task": "add_then_divide", "a": a * c, "b": b * c, "c": c}),
        ),
        5 => (
            ask.count("a", a * b + c).count("b", a).count("c", b),
            json!({"task": "take_product_from", "from": a * b + c, "b": a, "c": b}),
        ),
        _ => (
            ask.count("a", a * b).count("b", b).count("c", c),
            json!({"task": "divide_then_add", "a": a * b, "b": b, "c": c}),
        ),
    };
    Some(
        Draft::new(statement)
            .ask(ask)
            .ask(m.say("rule"))
            .expression(text.clone(), &[])
            .form(FormRule::SameSteps)
            .hint(m.say("hint-order"))
            .hint(m.say("hint-brackets"))
            .step(m.say(if text.contains('(') {
                "step-brackets"
            } else {
                "step-no-brackets"
            }))
            .step(
                m.say("step-answer").text(
                    "text",
                    text.replace('*', " × ")
                        .replace('/', " ÷ ")
                        .replace('+', " + ")
                        .replace('-', " − "),
                ),
            )
            .misconception(
                if text.contains('(') {
                    "brackets-left-out"
                } else {
                    "brackets-not-needed"
                },
                expression(flat),
            )
            .misconception(
                if matches!(story, 1 | 3) {
                    "operations-swapped"
                } else {
                    "operation-order-turned-round"
                },
                expression(turned),
            ),
    )
}

fn two_patterns(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(2) {
        return plot_paired_terms(m);
    }
    let (a, b) = (
        m.dice.from(1..=m.level.pick(4, 6, 9)),
        m.dice.from(2..=m.level.pick(6, 9, 12)),
    );
    let start = m.level.pick(0, 0, m.dice.from(0..=5));
    if m.level == crate::Level::Stretch && m.dice.one_in(2) {
        return related_patterns(m);
    }
    let n = m.dice.from(m.level.pick(4..=5, 4..=6, 5..=7));
    keep(a != b && (start + a * (n - 1)) <= 60 && a != 0)?;
    let at = |k: i64| (start + a * (k - 1), start + b * (k - 1));
    let (x, y) = at(n);
    let header = [
        "g5-two-patterns-head-place",
        "g5-two-patterns-head-x",
        "g5-two-patterns-head-y",
    ];
    let rows = (1..=2)
        .map(|k| vec![cell(num(k)), cell(num(at(k).0)), cell(num(at(k).1))])
        .collect();
    let figure = table(
        &header,
        rows,
        m.say("table").count("x1", at(2).0).count("y1", at(2).1),
    );
    Some(
        Draft::new(json!({"task": "paired_terms", "start": start, "add": [a, b], "place": n}))
            .ask(
                m.say("ask")
                    .count("start", start)
                    .count("a", a)
                    .count("b", b),
            )
            .ask(m.say("ask-pair").count("n", n))
            .answer(Entry::Coordinates { frame: None }, point(x, y))
            .hint(
                m.say("hint-first")
                    .math("pair", pair(num(start), num(start))),
            )
            .hint(figure)
            .step(m.say("step-x").numbers("terms", (1..=n).map(|k| at(k).0)))
            .step(m.say("step-y").numbers("terms", (1..=n).map(|k| at(k).1)))
            .step(pair(num(x), num(y)))
            .misconception("pattern-one-step-too-far", point(at(n + 1).0, at(n + 1).1))
            .misconception("coordinates-swapped", point(y, x)),
    )
}

/// Two patterns from 0: how many times as much the second is.
fn related_patterns(m: &mut Make) -> Option<Draft> {
    let (a, k) = (m.dice.from(2..=9), m.dice.from(2..=6));
    let b = a * k;
    keep(a != k && b <= 48 && b - a != k)?;
    let terms = |by: i64| (0..4).map(move |n| n * by);
    Some(
        Draft::new(json!({"task": "patterns_relation", "first": terms(a).collect::<Vec<_>>(), "second": terms(b).collect::<Vec<_>>()}))
            .ask(m.say("ask-lists").numbers("first", terms(a)).numbers("second", terms(b)))
            .ask(m.say("ask-relation"))
            .whole(k)
            .hint(m.say("hint-beside"))
            .hint(m.say("hint-times").math("work", equal(product([num(a), Expr::Blank]), num(b))))
            .step(equal(product([num(a), num(k)]), num(b)))
            .step(equal(product([num(2 * a), num(k)]), num(2 * b)))
            .misconception("subtracted-instead-of-compared", whole(b - a))
            .misconception_unless_same("gave-the-rule-of-a-pattern", whole(b)),
    )
}

fn powers(m: &mut Make) -> Option<Draft> {
    let exponent = m.dice.from(m.level.pick(2..=3, 2..=4, 2..=4));
    let base = m.dice.from(m.level.pick(
        if exponent == 2 { 2..=12 } else { 2..=9 },
        2..=10,
        2..=12,
    ));
    keep(!(base == 2 && exponent == 2) && base.pow(exponent as u32) <= 20_000)?;
    let value = base.pow(exponent as u32);
    let outer = m.level.pick(1, 1, m.dice.from(2..=9));
    let work = if outer == 1 {
        power(base, exponent)
    } else {
        product([num(outer), power(base, exponent)])
    };
    let text = if outer == 1 {
        format!("{base}^{exponent}")
    } else {
        format!("{outer} * {base}^{exponent}")
    };
    let long = product((0..exponent).map(|_| num(base)));
    if m.dice.one_in(3) {
        // A product written as a power.
        keep(base != exponent)?;
        return Some(
            Draft::new(
                json!({"task": "power_of_product", "factors": vec![base; exponent as usize]}),
            )
            .ask(m.say("ask-power"))
            .ask(long.clone())
            .several(
                vec![m.say("field-base"), m.say("field-exponent")],
                [base, exponent],
            )
            .hint(m.say("hint-factor"))
            .hint(m.say("hint-count"))
            .step(m.say("hint-count"))
            .step(equal(long, power(base, exponent)))
            .misconception("base-and-exponent-exchanged", several([exponent, base]))
            .misconception("exponent-one-short", several([base, exponent - 1])),
        );
    }
    let draft = Draft::new(json!({"task": "evaluate", "expression": text}));
    let plain = [
        Say::new("common-work-out").into(),
        equal(work.clone(), Expr::Blank).into(),
    ];
    // A square and a cube, and things in things.
    let stories = if outer == 1 && exponent < 4 { 3 } else { 0 };
    let draft = m
        .asked(draft, plain, stories, |say| {
            Say {
                id: format!("{}-{exponent}", say.id).into(),
                ..say
            }
            .count("base", base)
            .math("work", power(base, exponent))
        })
        .whole(outer * value)
        .hint(
            m.say("hint-repeat")
                .count("base", base)
                .count("exponent", exponent),
        )
        .hint(m.say("hint-long").math("long", long.clone()))
        .step(equal(power(base, exponent), long))
        .step(equal(power(base, exponent), num(value)));
    let draft = if outer == 1 {
        draft
    } else {
        draft.step(equal(work, num(outer * value)))
    };
    Some(
        draft
            .misconception("base-times-exponent", whole(outer * base * exponent))
            .misconception_if(
                outer == 1,
                "base-and-exponent-swapped",
                whole(exponent.pow(base as u32).min(1_000_000)),
            )
            .misconception_if(
                outer > 1,
                "multiplied-before-power",
                whole((outer * base).pow(exponent as u32)),
            ),
    )
}

fn evaluate(m: &mut Make) -> Option<Draft> {
    let letter = m.dice.pick(&["x", "n", "k", "t"]);
    let (a, b) = (m.dice.from(2..=9), m.dice.from(1..=20));
    match m.level.pick(1, m.dice.from(2..=3), m.dice.from(3..=4)) {
        4 => {
            // A formula with a decimal: perimeter 2(a + b) of a rectangle.
            let (l, w) = (
                Dec::new(m.dice.from(11..=99), 1),
                Dec::new(m.dice.from(11..=99), 1),
            );
            keep(l.units() % 10 != 0 && w.units() % 10 != 0 && l != w)?;
            let total = Dec::exact((l.ratio() + w.ratio()) * 2)?;
            let formula = side_by_side([num(2), group(sum([var("a"), var("b")]))]);
            Some(
                Draft::new(json!({"task": "evaluate_at", "expression": "2 * (a + b)", "values": {"a": l.to_string(), "b": w.to_string()}}))
                    .ask(m.say("ask-two").math("expression", formula).number("a", l).number("b", w))
                    .decimal(total)
                    .hint(m.say("hint-put-two"))
                    .hint(m.say("hint-brackets"))
                    .step(m.say("step-put-two").math("work", product([num(2), group(sum([num(l), num(w)]))])))
                    .step(equal(product([num(2), group(sum([num(l), num(w)]))]), num(total)))
                    .misconception("factor-taken-to-first-only", decimal(Dec::exact(l.ratio() * 2 + w.ratio())?))
                    .misconception("factor-left-out", decimal(Dec::exact(l.ratio() + w.ratio())?)),
            )
        }
        kind => {
            let v = m.dice.from(2..=m.level.pick(10, 10, 9));
            keep(v != a && v != b)?;
            let (shown, with, text, value) = match kind {
                1 => (
                    sum([side_by_side([num(a), var(letter)]), num(b)]),
                    sum([product([num(a), num(v)]), num(b)]),
                    format!("{a} * x + {b}"),
                    a * v + b,
                ),
                2 => (
                    side_by_side([num(a), group(sum([var(letter), num(b)]))]),
                    product([num(a), group(sum([num(v), num(b)]))]),
                    format!("{a} * (x + {b})"),
                    a * (v + b),
                ),
                _ => (
                    difference(side_by_side([num(a), power(var(letter), 2)]), num(b)),
                    difference(product([num(a), power(num(v), 2)]), num(b)),
                    format!("{a} * x^2 - {b}"),
                    a * v * v - b,
                ),
            };
            let (code, wrong) = match kind {
                1 => ("factor-and-letter-side-by-side", a * 10 + v + b),
                2 => ("factor-taken-to-first-only", a * v + b),
                _ => ("multiplied-before-power", (a * v) * (a * v) - b),
            };
            let (code2, wrong2) = match kind {
                1 => ("added-instead-of-multiplied", a + v + b),
                2 => ("added-instead-of-multiplied", a + v + b),
                _ => ("base-times-exponent", a * v * 2 - b),
            };
            keep(value > 0 && wrong2 > 0)?;
            Some(
                Draft::new(json!({"task": "evaluate_at", "expression": text, "values": {"x": v}}))
                    .ask(
                        m.say("ask")
                            .math("expression", shown)
                            .math("value", equal(var(letter), num(v))),
                    )
                    .whole(value)
                    .hint(m.say("hint-put"))
                    .hint(m.say(if kind == 3 {
                        "hint-power"
                    } else {
                        "hint-beside"
                    }))
                    .step(m.say("step-put").math("work", with.clone()))
                    .step(equal(with, num(value)))
                    .misconception(code, whole(wrong))
                    .misconception(code2, whole(wrong2)),
            )
        }
    }
}
