//! Ratio, rate and percent.

use super::ratio_pairs::{compare_ratios, plot_ratio};
use crate::decimal::Dec;
use crate::draw::{double_line, ratio_row, ratio_table, tape_parts};
use crate::expr::{Expr, equal, frac, measure, num, percent, product, quotient, ratio};
use crate::make::{Draft, Generator, Make, decimal, keep, several, whole};
use num_integer::gcd;
use num_rational::Ratio;
use serde_json::json;

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-ratio-language", 3, language),
    Generator::new("g6-unit-rate", 3, unit_rate),
    Generator::new("g6-ratio-table", 3, table),
    Generator::new("g6-rate-problems", 3, rate_problems),
    Generator::new("g6-percent-of", 3, percent_of),
    Generator::new("g6-percent-whole", 3, percent_whole),
    Generator::new("g6-ratio-convert", 3, convert),
];

fn language(m: &mut Make) -> Option<Draft> {
    let k = m.dice.from(m.level.pick(2..=4, 2..=8, 3..=9));
    let (x, y) = (m.dice.from(2..=9), m.dice.from(2..=9));
    let (a, b) = (k * x, k * y);
    keep(gcd(x, y) == 1 && x != y && a <= 60 && b <= 60)?;
    let story = m.dice.from(1..=6);
    // More flour than sugar.
    keep(story != 4 || a > b)?;
    let to_all = m.level == crate::Level::Stretch && m.dice.one_in(2);
    let all = a + b;
    let common = gcd(a, all);
    let (first, second) = if to_all {
        (a / common, all / common)
    } else {
        (x, y)
    };
    let fields = vec![
        m.say(&format!("field-{story}-first")),
        m.say(&if to_all {
            format!("field-{story}-all")
        } else {
            format!("field-{story}-second")
        }),
    ];
    let draft = Draft::new(json!({"task": if to_all { "ratio_to_all" } else { "simplest_ratio" }, "first": a, "second": b}))
        .ask(m.say(&format!("ask-{story}{}", if to_all { "-all" } else { "" })).count("a", a).count("b", b))
        .ask(m.say("ask-simplest"))
        .several(fields, [first, second])
        .hint(m.say("hint-order"))
        .hint(m.say("hint-divide"))
        .step(if to_all { crate::Block::from(equal(crate::expr::sum([num(a), num(b)]), num(all))) } else { m.say("hint-order").into() })
        .step(m.say("step-divide").count("k", if to_all { common } else { k }))
        .step(equal(ratio(num(a), num(if to_all { all } else { b })), ratio(num(first), num(second))));
    Some(
        draft
            .misconception("ratio-turned-round", several([second, first]))
            .misconception(
                "ratio-not-simplest",
                several([a, if to_all { all } else { b }]),
            )
            .misconception(
                if to_all {
                    "part-to-part-ratio"
                } else {
                    "part-to-whole-ratio"
                },
                if to_all {
                    several([x, y])
                } else {
                    several([a / gcd(a, all), all / gcd(a, all)])
                },
            ),
    )
}

fn unit_rate(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(2..=6, 2..=8, 4..=16));
    let rate = m.level.pick(
        Dec::new(m.dice.from(2..=60), 0),
        Dec::new(m.dice.from(3..=120) * 5, 1),
        Dec::new(m.dice.from(5..=240) * 25, 2),
    );
    let total = Dec::exact(rate.ratio() * n)?;
    let rate = rate.trimmed();
    // Stories with the rates that they may have.
    const STORIES: [(i64, i64); 6] = [(1, 6), (8, 24), (4, 20), (9, 25), (2, 9), (40, 60)];
    let story = m.dice.from(1..=6);
    let (low, high) = *STORIES.get((story - 1) as usize)?;
    keep(rate.ratio() >= Ratio::from(low) && rate.ratio() <= Ratio::from(high))?;
    keep(total.places() == 0 && total.units() != n && total.units() <= 900)?;
    let ask = m.say(&format!("ask-{story}"));
    let turned = Dec::exact(Ratio::new(n, total.units())).filter(|d| d.places() <= 3);
    let draft = Draft::new(json!({"task": "unit_rate", "amount": total.units(), "for": n}))
        .ask(
            ask.count("total", total.units())
                .count("n", n)
                .text("name", m.dice.name()),
        )
        .decimal(rate)
        .hint(m.say("hint-one"))
        .hint_with(
            m.say("hint-table"),
            ratio_table(
                vec![
                    ratio_row("ratio-amount", vec![num(total), Expr::Blank]),
                    ratio_row("ratio-for", vec![num(n), num(1)]),
                ],
                m.say("table").count("total", total.units()).count("n", n),
            ),
        )
        .step(m.say("hint-one"))
        .step(equal(quotient(num(total), num(n)), num(rate)))
        .misconception(
            "multiplied-instead-of-rate",
            decimal(Dec::new(total.units() * n, 0)),
        );
    Some(match turned {
        Some(t) if t.ratio() != rate.ratio() => {
            draft.misconception("rate-turned-round", decimal(t))
        }
        _ => draft.misconception(
            "subtracted-instead-of-divided",
            decimal(Dec::new((total.units() - n).abs(), 0)),
        ),
    })
}

fn table(m: &mut Make) -> Option<Draft> {
    match m.dice.from(0..=5) {
        0 => return plot_ratio(m),
        1 | 2 if m.level != crate::Level::Entry => return compare_ratios(m),
        _ => {}
    }
    let (a, b) = (
        m.dice.from(m.level.pick(1..=4, 2..=7, 3..=9)),
        m.dice.from(m.level.pick(2..=5, 2..=9, 4..=12)),
    );
    let (k, second) = (
        m.dice.from(m.level.pick(3..=5, 4..=9, 5..=12)),
        m.dice.from(2..=3),
    );
    keep(a != b && k != second)?;
    let top_blank = m.dice.one_in(2);
    let (given, right) = if top_blank {
        (b * k, a * k)
    } else {
        (a * k, b * k)
    };
    let added = if top_blank {
        a + given - b
    } else {
        b + given - a
    };
    keep(added > 0)?;
    let (story, first_row, second_row) = m.dice.pick(&[
        (1, "ratio-red", "ratio-blue"),
        (2, "ratio-cups-rice", "ratio-cups-water"),
        (3, "ratio-boats", "ratio-people"),
    ]);
    let cells = |base: i64, blank: bool| {
        vec![
            num(base),
            num(base * second),
            if blank { Expr::Blank } else { num(base * k) },
        ]
    };
    let picture_alt = m
        .say("table")
        .count("a", a)
        .count("b", b)
        .count("a2", a * second)
        .count("b2", b * second)
        .count("given", given);
    let rows = (
        ratio_row(first_row, cells(a, top_blank)),
        ratio_row(second_row, cells(b, !top_blank)),
    );
    let figure = if m.level == crate::Level::Stretch && m.dice.one_in(2) {
        double_line(rows.0, rows.1, picture_alt)
    } else {
        ratio_table(vec![rows.0, rows.1], picture_alt)
    };
    Some(
        Draft::new(json!({"task": "equal_ratio", "ratio": [a, b], "given": given, "given_is": if top_blank { "lower" } else { "upper" }}))
            .ask(m.say(&format!("ask-{story}")))
            .ask(figure)
            .whole(right)
            .hint(m.say("hint-times"))
            .hint(m.say("hint-factor").math("work", equal(product([num(if top_blank { b } else { a }), Expr::Blank]), num(given))))
            .step(m.say("step-factor").math("work", equal(product([num(if top_blank { b } else { a }), num(k)]), num(given))))
            .step(m.say("step-same").math("work", equal(product([num(if top_blank { a } else { b }), num(k)]), num(right))))
            .misconception("same-difference-in-ratio", whole(added))
            .misconception_unless_same("factor-for-ratio-answer", whole(k))
            .misconception_unless_same("kept-the-number", whole(if top_blank { a } else { b })),
    )
}

/// Two packs of the same: which one costs less for one.
fn better_buy(m: &mut Make) -> Option<Draft> {
    let (n, k) = (m.dice.from(3..=8), m.dice.from(4..=12));
    // Each of the three answers is as likely.
    let right = m.third;
    let (one, gap) = (m.dice.from(30..=90), m.dice.from(1..=12));
    let two = match right {
        0 => one + gap,
        1 => one - gap,
        _ => one,
    };
    keep(n != k)?;
    let codes = match right {
        2 => ["took-as-different", "took-as-different", ""],
        _ => [
            "compared-prices-of-packs",
            "compared-prices-of-packs",
            "took-as-equal",
        ],
    };
    let choices = ["buy-first", "buy-second", "buy-same"];
    Some(
        Draft::new(json!({"task": "better_buy", "packs": [[n, n * one], [k, k * two]]}))
            .ask(
                m.say("ask-buy")
                    .count("n", n)
                    .count("first", n * one)
                    .count("k", k)
                    .count("second", k * two),
            )
            .one_of_listed(
                codes
                    .into_iter()
                    .zip(choices.map(crate::make::says))
                    .collect(),
                right,
            )
            .hint(m.say("hint-one"))
            .hint(
                m.say("hint-work")
                    .math("work", quotient(num(n * one), num(n))),
            )
            .step(equal(quotient(num(n * one), num(n)), num(one)))
            .step(equal(quotient(num(k * two), num(k)), num(two))),
    )
}

fn rate_problems(m: &mut Make) -> Option<Draft> {
    if m.level != crate::Level::Entry && m.dice.one_in(4) {
        return better_buy(m);
    }
    let story = m.dice.from(1..=6);
    // Stories with the rates that they may have.
    const STORIES: [(i64, i64); 6] = [(40, 70), (25, 95), (5, 60), (9, 20), (20, 45), (3, 12)];
    let (low, high) = *STORIES.get((story - 1) as usize)?;
    let rate = m.dice.from(low..=high);
    keep(m.level != crate::Level::Entry || rate <= 12 || rate % 5 == 0)?;
    let (n, k) = (
        m.dice.from(2..=m.level.pick(5, 8, 9)),
        m.dice.from(2..=m.level.pick(9, 12, 15)),
    );
    keep(n != k && rate != n && rate != k)?;
    let find_time = m.level.pick(false, m.dice.one_in(3), m.dice.one_in(2));
    let id = format!("ask-{story}{}", if find_time { "-time" } else { "" });
    let (given, right) = if find_time {
        (rate * k, k)
    } else {
        (k, rate * k)
    };
    let draft = Draft::new(json!({"task": if find_time { "same_rate_time" } else { "same_rate_amount" }, "amount": rate * n, "for": n, "given": given}))
        .ask(m.say(&id).text("name", m.dice.name()).count("total", rate * n).count("n", n).count("given", given))
        .whole(right)
        .hint(m.say("hint-one"))
        .hint(m.say("hint-work").math("work", quotient(num(rate * n), num(n))))
        .step(m.say("step-one").math("work", equal(quotient(num(rate * n), num(n)), num(rate))))
        .step(if find_time { equal(quotient(num(given), num(rate)), num(k)) } else { equal(product([num(rate), num(k)]), num(rate * k)) });
    Some(if find_time {
        let added = given - rate * n + n;
        draft
            .misconception("stopped-after-one-step", whole(rate))
            .misconception_if(added > 0, "same-difference-in-ratio", whole(added))
            .misconception_if(added <= 0, "multiplied-all-numbers", whole(given * n))
    } else {
        let added = rate * n + k - n;
        draft
            .misconception("stopped-after-one-step", whole(rate))
            .misconception("same-difference-in-ratio", whole(added))
            .misconception_unless_same("multiplied-without-unit-rate", whole(rate * n * k))
    })
}

fn percent_of(m: &mut Make) -> Option<Draft> {
    let p = m.level.pick(
        m.dice.pick(&[10, 20, 25, 50, 75]),
        m.dice.from(1..=19) * 5,
        m.dice.from(1..=149),
    );
    let story = m.dice.from(1..=6);
    // Amounts that suit the stories; a percentage above 100 only of a number.
    let n = match story {
        1 => m.dice.from(2..=m.level.pick(20, 40, 60)) * 20,
        2 => m.dice.from(4..=40) * 20,
        3 => m.dice.from(2..=8) * 5,
        4 => m.dice.from(2..=20) * 10,
        5 => m.dice.from(8..=20) * 5,
        _ => m.dice.from(5..=40) * 20,
    };
    keep(p <= 100 || story == 1)?;
    let value = Dec::exact(Ratio::new(p * n, 100))?;
    keep(
        p != 100
            && value.places() <= if matches!(story, 1 | 3) { 1 } else { 0 }
            && n != 100
            && value.units() != p,
    )?;
    let as_fraction = frac(p, 100);
    let whole_parts = if p % 25 == 0 && p < 100 {
        (4, p / 25)
    } else if p % 10 == 0 && p < 100 {
        (10, p / 10)
    } else {
        (0, 0)
    };
    let mut draft = Draft::new(json!({"task": "percent_of", "percent": p, "amount": n}))
        .ask(
            m.say(&format!("ask-{story}"))
                .math("percent", percent(num(p)))
                .count("n", n),
        )
        .decimal(value)
        .hint(
            m.say("hint-hundred")
                .math("percent", percent(num(p)))
                .math("fraction", as_fraction.clone()),
        );
    draft = if whole_parts.0 > 0 {
        draft.hint_with(
            m.say("hint-bar"),
            tape_parts(whole_parts.0, whole_parts.1, None, Some(num(n))),
        )
    } else {
        draft.hint(m.say("hint-one").math("work", quotient(num(n), num(100))))
    };
    Some(
        draft
            .step(m.say("step-one").math(
                "work",
                equal(
                    quotient(num(n), num(100)),
                    num(Dec::exact(Ratio::new(n, 100))?),
                ),
            ))
            .step(equal(product([as_fraction, num(n)]), num(value)))
            .misconception("percent-taken-away", decimal(Dec::new((n - p).abs(), 0)))
            .misconception("percent-as-the-amount", decimal(Dec::new(p, 0)))
            .misconception_unless_same(
                "percent-of-ten",
                decimal(Dec::exact(Ratio::new(p * n, 10))?),
            ),
    )
}

fn percent_whole(m: &mut Make) -> Option<Draft> {
    let p = m.level.pick(
        m.dice.pick(&[10, 20, 25, 50]),
        m.dice.from(1..=19) * 5,
        m.dice.from(2..=39) * 5,
    );
    let whole_amount = m.dice.from(m.level.pick(2..=20, 2..=40, 4..=60)) * m.level.pick(20, 20, 10);
    let part = Dec::exact(Ratio::new(p * whole_amount, 100))?;
    keep(p != 100 && part.places() == 0 && part.units() != p && part.units() != whole_amount)?;
    let again = Dec::exact(part.ratio() * p / 100)?;
    keep(again.places() <= 3)?;
    let story = m.dice.from(1..=6);
    keep(p < 100 || story == 1)?;
    // A school, a theater and an orchard are not small.
    keep(matches!(story, 1 | 3 | 4) || whole_amount >= 100)?;
    let draft =
        Draft::new(json!({"task": "whole_from_percent", "part": part.units(), "percent": p}))
            .ask(
                m.say(&format!("ask-{story}"))
                    .count("part", part.units())
                    .math("percent", percent(num(p))),
            )
            .decimal(Dec::new(whole_amount, 0));
    let of_hundred = m
        .say("hint-part")
        .math("percent", percent(num(p)))
        .count("part", part.units());
    let draft = if p % 10 == 0 && p < 100 {
        draft.hint_with(of_hundred, tape_parts(10, p / 10, None, None))
    } else {
        draft.hint(of_hundred)
    };
    Some(
        draft
            .hint(
                m.say("hint-one")
                    .math("work", quotient(num(part), num(p)))
                    .math("one", percent(num(1))),
            )
            .step(
                m.say("step-one")
                    .math(
                        "work",
                        equal(
                            quotient(num(part), num(p)),
                            num(Dec::exact(part.ratio() / p)?),
                        ),
                    )
                    .math("one", percent(num(1))),
            )
            .step(
                m.say("step-hundred")
                    .math("all", percent(num(100)))
                    .count("whole", whole_amount),
            )
            .misconception("percent-of-the-part", decimal(again))
            .misconception(
                "percent-added-to-part",
                decimal(Dec::new(part.units() + p, 0)),
            ),
    )
}

fn convert(m: &mut Make) -> Option<Draft> {
    // Rates as stated in the question; 2.54, 1.6, 0.45 and 3.8 are the usual school figures.
    let (large, small, rate) = m.dice.pick(&[
        ("unit-in", "unit-cm", 254),
        ("unit-mi", "unit-km", 160),
        ("unit-kg", "unit-lb", 220),
        ("unit-gal", "unit-l", 380),
    ]);
    let rate = Dec::new(rate, 2).trimmed();
    let n = m.dice.from(m.level.pick(2..=20, 4..=30, 6..=60));
    let back = m.level.pick(false, m.dice.one_in(2), true);
    let small_amount = Dec::exact(rate.ratio() * n)?;
    let (given, right) = if back {
        (small_amount, Dec::new(n, 0))
    } else {
        (Dec::new(n, 0), small_amount)
    };
    let wrong = Dec::exact(if back {
        given.ratio() * rate.ratio()
    } else {
        given.ratio() / rate.ratio()
    });
    let (from, to) = if back { (small, large) } else { (large, small) };
    let draft = Draft::new(json!({"task": "convert_with_rate", "rate": rate.to_string(), "amount": given.to_string(), "direction": if back { "back" } else { "forth" }}))
        .ask(m.say("ask-rate").math("rate", equal(measure(num(1), large), measure(num(rate), small))))
        .ask(m.say("ask").math("given", measure(num(given), from)).word("to", to))
        .decimal_unit(right, to)
        .hint(m.say("hint-table"))
        .hint(ratio_table(vec![ratio_row(large, vec![num(1), if back { Expr::Blank } else { num(n) }]), ratio_row(small, vec![num(rate), if back { num(given) } else { Expr::Blank }])], m.say("table").math("rate", equal(measure(num(1), large), measure(num(rate), small))).math("given", measure(num(given), from))))
        .step(m.say(if back { "step-divide" } else { "step-multiply" }))
        .step(if back { equal(quotient(num(given), num(rate)), num(right)) } else { equal(product([num(given), num(rate)]), num(right)) })
        .misconception("rate-added", decimal(Dec::exact(given.ratio() + rate.ratio())?));
    Some(match wrong {
        Some(w) if w.places() <= 4 => draft.misconception("converted-the-wrong-way", decimal(w)),
        _ => draft.misconception("rate-left-out", decimal(given)),
    })
}
