//! Patterns, factors, multiples, primes.

use crate::answer::Answer;
use crate::expr::{Expr, equal, num, product, sum};
use crate::make::{Draft, Generator, Make, keep, says, shows, whole};
use crate::say::Say;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-number-patterns", 4, number_patterns),
    Generator::new("g4-factor-pairs", 3, factor_pairs),
    Generator::new("g4-multiples", 3, multiples),
    Generator::new("g4-prime-composite", 3, prime_composite),
    Generator::new("g4-pattern-rule", 3, pattern_rule),
];

fn number_patterns(m: &mut Make) -> Option<Draft> {
    if m.level == crate::Level::Stretch || (m.level == crate::Level::Expected && m.dice.one_in(3)) {
        let (a, b) = (m.dice.from(2..=9), m.dice.from(11..=49));
        let times = m.dice.one_in(2);
        if m.third == 2 {
            return unknown_parity(m, a, b);
        }
        let value = if times { a * b } else { a + b };
        keep((value % 2 == 0) == (m.third == 0))?;
        let work = if times {
            product([num(a), num(b)])
        } else {
            sum([num(a), num(b)])
        };
        let even = value % 2 == 0;
        let even_a = a % 2 == 0;
        let even_b = b % 2 == 0;
        let rule = match (times, even_a, even_b) {
            (true, false, false) => "rule-odd-times-odd",
            (true, _, _) => "rule-even-times",
            (false, x, y) if x == y => "rule-same-plus",
            (false, _, _) => "rule-even-plus-odd",
        };
        return Some(
            Draft::new(json!({"task": "parity", "operation": if times { "times" } else { "plus" }, "numbers": [a, b]}))
                .ask(m.say("ask-parity").math("work", work.clone()))
                .one_of_listed(
                    vec![("even-odd-rule-mixed-up", says("parity-even")), ("even-odd-rule-mixed-up", says("parity-odd")), ("parity-cannot-be-known", says("parity-unknown"))],
                    usize::from(!even),
                )
                .hint(m.say("hint-pairs"))
                .hint(m.say("hint-last-digit"))
                .step(m.say(rule))
                .step(m.say("step-check").math("work", equal(work, num(value)))),
        );
    }
    let step = m.dice.from(m.level.pick(2..=10, 3..=12, 3..=12));
    let down = m.level.pick(false, m.dice.one_in(2), false);
    let start = m.dice.from(m.level.pick(1..=30, 1..=40, 1..=40)) + if down { 5 * step } else { 0 };
    let terms: Vec<i64> = (0..4)
        .map(|i| {
            if down {
                start - i * step
            } else {
                start + i * step
            }
        })
        .collect();
    if m.dice.one_in(3) {
        // The rule, not the next number.
        let way = |down: bool| if down { "hint-down" } else { "hint-up" };
        let rule = |m: &Make, down: bool, step: i64| m.say(way(down)).number("step", step);
        let (right, turned, near) = (
            rule(m, down, step),
            rule(m, !down, step),
            rule(m, down, step + 1),
        );
        return Some(
            Draft::new(json!({"task": "pattern_rule", "terms": terms}))
                .ask(m.say("ask-rule").numbers("terms", &terms))
                .one_of(
                    &mut m.dice,
                    right,
                    vec![
                        ("pattern-wrong-way", turned.into()),
                        ("rule-one-off", near.into()),
                    ],
                )
                .hint(Say::new("g3-number-patterns-hint-gap"))
                .hint(Say::new("g3-number-patterns-hint-each-gap"))
                .step(Say::new("g3-number-patterns-hint-gap"))
                .step(Say::new(format!("g3-number-patterns-{}", way(down))).number("step", step)),
        );
    }
    let next = if down {
        start - 4 * step
    } else {
        start + 4 * step
    };
    keep(next > 0 && step != 1)?;
    let last = *terms.last()?;
    let wrong_way = if down { last + step } else { last - step };
    Some(
        Draft::new(json!({"task": "next_in_pattern", "terms": terms}))
            .ask(m.say("ask-next").numbers("terms", &terms))
            .whole(next)
            .hint(m.say("hint-gap"))
            .hint(
                m.say(if down { "hint-down" } else { "hint-up" })
                    .count("step", step),
            )
            .step(
                m.say(if down { "hint-down" } else { "hint-up" })
                    .count("step", step),
            )
            .step(if down {
                equal(crate::expr::difference(num(last), num(step)), num(next))
            } else {
                equal(sum([num(last), num(step)]), num(next))
            })
            .misconception("pattern-wrong-way", whole(wrong_way))
            .misconception(
                "pattern-by-one",
                whole(if down { last - 1 } else { last + 1 }),
            ),
    )
}

/// Even or odd with a number that is not known: it cannot be told.
fn unknown_parity(m: &mut Make, a: i64, b: i64) -> Option<Draft> {
    let times = m.dice.one_in(2);
    // An even factor would make the product even.
    keep(!times || a % 2 == 1)?;
    let number = if times { a } else { b };
    let work = if times {
        product([num(number), Expr::Blank])
    } else {
        sum([num(number), Expr::Blank])
    };
    Some(
        Draft::new(json!({"task": "parity_of_unknown", "operation": if times { "times" } else { "plus" }, "number": number}))
            .ask(m.say("ask-parity-box").math("work", work))
            .one_of_listed(
                vec![
                    ("guessed-parity-of-unknown", says("parity-even")),
                    ("guessed-parity-of-unknown", says("parity-odd")),
                    ("", says("parity-unknown")),
                ],
                2,
            )
            .hint(m.say("hint-pairs"))
            .hint(m.say("hint-try-both"))
            .step(m.say("hint-try-both"))
            .step(m.say("step-unknown")),
    )
}

fn factors_of(n: i64) -> Vec<i64> {
    (1..=n).filter(|d| n % d == 0).collect()
}

/// Choices of whole numbers, of which some fit, with the wrong sets and their codes.
fn choose_numbers(
    draft: Draft,
    numbers: &[i64],
    fits: impl Fn(i64) -> bool,
    misconceptions: Vec<(&'static str, Vec<i64>)>,
) -> Draft {
    let choices = numbers.iter().map(|n| (fits(*n), shows(num(n)))).collect();
    let mut draft = draft.all_of(choices);
    let right: Vec<i64> = numbers.iter().copied().filter(|n| fits(*n)).collect();
    for (code, chosen) in misconceptions {
        let indexes: Vec<u32> = (0_u32..)
            .zip(numbers)
            .filter(|(_, n)| chosen.contains(n))
            .map(|(i, _)| i)
            .collect();
        let present: Vec<i64> = numbers
            .iter()
            .copied()
            .filter(|n| chosen.contains(n))
            .collect();
        if !indexes.is_empty() && present != right {
            draft = draft.misconception_unless_same(code, Answer::SeveralChoices { indexes });
        }
    }
    draft
}

fn factor_pairs(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(6..=30, 12..=60, 24..=100));
    let factors = factors_of(n);
    keep(factors.len() >= 4)?;
    let pairs = (factors.len() as i64 + 1) / 2;
    let middle = *factors.get((factors.len() - 1) / 2)?;
    let list: Vec<i64> = factors.iter().copied().filter(|f| f * f <= n).collect();
    let draft = if m.level == crate::Level::Stretch {
        Draft::new(json!({"task": "count_factor_pairs", "number": n}))
            .ask(m.say("ask-count").count("n", n))
            .whole(pairs)
            .misconception("counted-factors-not-pairs", whole(factors.len() as i64))
            .misconception("left-out-one-and-itself", whole(pairs - 1))
    } else {
        let mut numbers: Vec<i64> = factors.iter().copied().filter(|f| *f != 1).collect();
        m.dice.shuffle(&mut numbers);
        numbers.truncate(3);
        let mut others = vec![n * 2, n + middle];
        others.extend(
            m.dice
                .different(6, 2..=n - 1)
                .into_iter()
                .filter(|x| n % x != 0)
                .take(2),
        );
        numbers.extend(others.iter().copied());
        numbers.sort_unstable();
        numbers.dedup();
        m.dice.shuffle(&mut numbers);
        keep(numbers.iter().filter(|x| n % **x == 0).count() >= 2 && numbers.len() >= 5)?;
        let right: Vec<i64> = numbers.iter().copied().filter(|x| n % x == 0).collect();
        let shown = numbers.clone();
        choose_numbers(
            Draft::new(json!({"task": "which_are_factors", "number": n, "choices": shown}))
                .ask(m.say("ask-which").count("n", n)),
            &numbers,
            |x| n % x == 0,
            vec![
                ("multiples-for-factors", vec![n * 2]),
                (
                    "factors-with-multiples",
                    right.iter().copied().chain([n * 2]).collect(),
                ),
                (
                    "only-one-factor-found",
                    vec![*right.iter().find(|factor| **factor != n)?],
                ),
            ],
        )
    };
    let mut draft = draft
        .hint(m.say("hint-rows").count("n", n))
        .hint(m.say("hint-try"));
    for f in &list {
        draft = draft.step(equal(product([num(f), num(n / f)]), num(n)));
    }
    Some(draft.step(m.say("step-all").count("pairs", pairs)))
}

fn multiples(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(2..=6, 3..=9, 6..=9));
    let mut numbers: Vec<i64> = m
        .dice
        .different(3, 1..=m.level.pick(9, 11, 11))
        .into_iter()
        .map(|k| k * n)
        .collect();
    let factor = (2..n).rev().find(|f| n % f == 0).unwrap_or(1);
    numbers.push(factor);
    let near: Vec<i64> = m
        .dice
        .different(8, n + 1..=100.min(n * 12))
        .into_iter()
        .filter(|x| x % n != 0)
        .take(2)
        .collect();
    numbers.extend(near);
    numbers.sort_unstable();
    numbers.dedup();
    m.dice.shuffle(&mut numbers);
    let mut right: Vec<i64> = numbers.iter().copied().filter(|x| x % n == 0).collect();
    right.sort_unstable();
    keep(right.len() == 3 && numbers.len() >= 5 && numbers.iter().all(|x| *x <= 100))?;
    let same_end: Vec<i64> = numbers
        .iter()
        .copied()
        .filter(|x| x % 10 == n % 10 || x % n == 0)
        .collect();
    let draft = choose_numbers(
        Draft::new(json!({"task": "which_are_multiples", "number": n, "choices": numbers.clone()}))
            .ask(m.say("ask").count("n", n)),
        &numbers,
        |x| x % n == 0,
        vec![
            ("factors-for-multiples", factors_of(n)),
            (
                "factors-with-multiples",
                right.iter().copied().chain([factor]).collect(),
            ),
            ("same-last-digit-as-multiple", same_end),
            (
                "largest-multiple-left-out",
                right.iter().copied().take(2).collect(),
            ),
        ],
    );
    let count: Vec<i64> = (1..=4).map(|k| k * n).collect();
    let mut draft = draft
        .hint(m.say("hint-count").count("n", n).numbers("count", &count))
        .hint(m.say("hint-divide").count("n", n))
        .step(m.say("hint-divide").count("n", n));
    for x in right {
        draft = draft.step(equal(product([num(x / n), num(n)]), num(x)));
    }
    Some(draft)
}

fn is_prime(n: i64) -> bool {
    n > 1 && factors_of(n).len() == 2
}

fn prime_composite(m: &mut Make) -> Option<Draft> {
    if m.level == crate::Level::Entry {
        // As often prime as composite.
        let prime = m.dice.one_in(2);
        let numbers: Vec<i64> = (2..=80).filter(|n| is_prime(*n) == prime).collect();
        let n = m.dice.pick(&numbers);
        let code_prime = if n % 2 == 1 {
            "odd-means-prime"
        } else {
            "prime-and-composite-mixed-up"
        };
        let code_composite = if n == 2 {
            "even-means-composite"
        } else {
            "prime-and-composite-mixed-up"
        };
        let least = factors_of(n).get(1).copied().unwrap_or(n);
        let draft = Draft::new(json!({"task": "prime_or_composite", "number": n}))
            .ask(m.wording("ask-one", 2).count("n", n))
            .one_of_listed(
                vec![
                    (code_prime, says("number-prime")),
                    (code_composite, says("number-composite")),
                ],
                usize::from(!prime),
            )
            .hint(m.say("hint-rows"))
            .hint(m.say("hint-two"));
        return Some(if prime {
            draft
                .step(m.say("step-try").count("n", n))
                .step(m.say("step-prime").count("n", n))
        } else {
            draft
                .step(equal(product([num(least), num(n / least)]), num(n)))
                .step(m.say("step-composite").count("n", n))
        });
    }
    let high = m.level.pick(30, 50, 100);
    let mut numbers = m.dice.different(5, 3..=high);
    numbers.push(m.dice.pick(&[1, 2]));
    // One odd number that is no prime, to tell odd from prime.
    numbers.push(m.dice.pick(&[9, 15, 21, 25, 27, 33, 39, 49]));
    if m.level == crate::Level::Stretch {
        numbers.push(m.dice.pick(&[51, 57, 87, 91, 93]));
    }
    numbers.sort_unstable();
    numbers.dedup();
    let right: Vec<i64> = numbers.iter().copied().filter(|n| is_prime(*n)).collect();
    keep((2..=4).contains(&right.len()))?;
    let odd: Vec<i64> = numbers.iter().copied().filter(|n| n % 2 == 1).collect();
    let draft = choose_numbers(
        Draft::new(json!({"task": "which_are_prime", "choices": numbers.clone()}))
            .ask(m.say("ask-which")),
        &numbers,
        is_prime,
        vec![
            ("odd-means-prime", odd),
            (
                "one-taken-as-prime",
                right.iter().copied().chain([1]).collect(),
            ),
            (
                "two-left-out-of-primes",
                right.iter().copied().filter(|n| *n != 2).collect(),
            ),
            (
                "prime-and-composite-mixed-up",
                numbers
                    .iter()
                    .copied()
                    .filter(|n| !is_prime(*n) && *n > 1)
                    .collect(),
            ),
        ],
    );
    let mut draft = draft
        .hint(m.say("hint-two"))
        .hint(m.say("hint-rows"))
        .step(m.say("hint-two"));
    for n in numbers.iter().filter(|n| !is_prime(**n) && **n > 1) {
        let least = *factors_of(*n).get(1)?;
        draft = draft.step(
            m.say("step-not")
                .count("n", *n)
                .math("work", equal(product([num(least), num(n / least)]), num(n))),
        );
    }
    Some(draft.step(m.say("step-primes").numbers("primes", &right)))
}

fn pattern_rule(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(2) {
        return super::many_steps::feature(m);
    }
    let times = m.level == crate::Level::Stretch && m.dice.one_in(2);
    let start = m.dice.from(m.level.pick(1..=9, 2..=20, 2..=6));
    let by = if times {
        m.dice.from(2..=3)
    } else {
        m.dice.from(m.level.pick(2..=9, 4..=15, 6..=25))
    };
    let which = m.dice.from(m.level.pick(4..=5, 5..=6, 5..=7));
    let term = |k: i64| {
        if times {
            start * by.pow((k - 1) as u32)
        } else {
            start + by * (k - 1)
        }
    };
    keep(start != by && (!times || term(which) <= 1000))?;
    let ordinal = match which {
        4 => "ordinal-4",
        5 => "ordinal-5",
        6 => "ordinal-6",
        7 => "ordinal-7",
        _ => return None,
    };
    let all: Vec<i64> = (1..=which).map(term).collect();
    let draft = Draft::new(json!({"task": "pattern_term", "start": start, "rule": if times { "times" } else { "add" }, "by": by, "place": which}))
        .ask(m.say(if times { "ask-times" } else { "ask-add" }).count("start", start).count("by", by).count("place", which).word("ordinal", ordinal))
        .whole(term(which))
        .hint(m.say("hint-first").count("start", start))
        .hint(m.say("hint-next").math("work", if times { equal(product([num(start), num(by)]), Expr::Blank) } else { equal(sum([num(start), num(by)]), Expr::Blank) }))
        .step(m.say("hint-first").count("start", start))
        .step(m.say("step-list").numbers("terms", &all))
        .misconception("pattern-one-step-too-far", whole(term(which + 1)))
        .misconception("pattern-one-step-short", whole(term(which - 1)));
    Some(draft.misconception_unless_same("pattern-rule-used-once", whole(term(2))))
}
