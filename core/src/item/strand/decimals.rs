//! Tenths, hundredths and thousandths; the four operations.

use crate::item::answer::{Answer, Entry};
use crate::item::decimal::Dec;
use crate::item::draw::{Line, base_ten_hundredths};
use crate::item::expr::{
    Expr, Sign, difference, equal, frac, num, product, quotient, relation, sum,
};
use crate::item::make::{Draft, Generator, Make, compare, decimal, fraction, keep, whole};
use crate::item::number::Rational;
use crate::item::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-tenths-hundredths", 1, tenths_hundredths),
    Generator::new("g4-decimal-write", 1, write),
    Generator::new("g4-decimal-on-line", 1, on_line),
    Generator::new("g4-decimal-compare", 1, compare_hundredths),
    Generator::new("g5-decimal-read-write", 1, read_write),
    Generator::new("g5-decimal-compare", 1, compare_thousandths),
    Generator::new("g5-decimal-round", 1, round),
    Generator::new("g5-decimal-add-subtract", 1, add_subtract),
    Generator::new("g5-decimal-multiply", 1, multiply),
    Generator::new("g5-decimal-divide", 1, divide),
];

fn tenths_hundredths(m: &mut Make) -> Option<Draft> {
    let tenths = m.dice.from(1..=9);
    if m.level == crate::item::Level::Entry {
        let shown = |x: Expr| equal(frac(tenths, 10), frac(x, 100));
        return Some(
            Draft::new(
                json!({"task": "equal_top", "fraction": format!("{tenths}/10"), "given": 100}),
            )
            .ask(Say::new("common-box"))
            .ask(shown(Expr::Blank))
            .whole(tenths * 10)
            .hint(m.say("hint-one"))
            .hint_with(m.say("hint-rods"), base_ten_hundredths(tenths * 10))
            .step(m.say("step-ten").count("tenths", tenths))
            .step(shown(num(tenths * 10)))
            .mistake("kept-the-number", whole(tenths))
            .mistake("same-difference", whole(tenths + 90)),
        );
    }
    let hundredths = m.dice.from(m.level.pick(1..=9, 1..=99, 11..=99));
    let (a, b) = (tenths, hundredths);
    let total = a * 10 + b;
    keep(
        total != 100
            && (total < 100) == m.level.pick(true, true, false)
            && b != 10 * a
            && b % 10 != 0,
    )?;
    let flipped = m.dice.one_in(2);
    let work = if flipped {
        sum([frac(b, 100), frac(a, 10)])
    } else {
        sum([frac(a, 10), frac(b, 100)])
    };
    Some(
        Draft::new(json!({"task": "add_fractions", "left": format!("{a}/10"), "right": format!("{b}/100")}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .fraction(total, 100)
            .hint(m.say("hint-one"))
            .hint_with(m.say("hint-blocks"), base_ten_hundredths(a * 10))
            .step(equal(frac(a, 10), frac(a * 10, 100)))
            .step(equal(work, frac(total, 100)))
            .mistake("added-tops-and-bottoms", fraction(a + b, 110))
            .mistake("changed-bottoms-only", fraction(a + b, 100)),
    )
}

fn write(m: &mut Make) -> Option<Draft> {
    let tenths_only = m.level.pick(m.dice.one_in(2), false, false);
    let ones = m.level.pick(0, 0, m.dice.from(1..=9));
    let part = if tenths_only {
        m.dice.from(1..=9)
    } else {
        m.dice.from(1..=99)
    };
    keep(tenths_only || part % 10 != 0)?;
    keep(m.level.pick(true, part < 10 || m.dice.one_in(2), true))?;
    let bottom = if tenths_only { 10 } else { 100 };
    let value = Dec::new(ones * bottom + part, if tenths_only { 1 } else { 2 });
    let shown = if ones == 0 {
        frac(part, bottom)
    } else {
        crate::item::expr::mixed(ones, part, bottom)
    };
    let text = if ones == 0 {
        format!("{part}/{bottom}")
    } else {
        format!("{ones} {part}/{bottom}")
    };
    Some(
        Draft::new(json!({"task": "value_of", "fraction": text}))
            .ask(m.say("ask"))
            .ask(equal(shown.clone(), Expr::Blank))
            .decimal(value)
            .hint(m.say(if tenths_only {
                "hint-tenths"
            } else {
                "hint-hundredths"
            }))
            .hint_with(
                m.say("hint-blocks"),
                base_ten_hundredths(value.units() * if tenths_only { 10 } else { 1 }),
            )
            .step(if tenths_only {
                m.say("step-tenths").count("tenths", part)
            } else {
                m.say("step-hundredths")
                    .count("tenths", part / 10)
                    .count("hundredths", part % 10)
            })
            .step(equal(shown, num(value)))
            .mistake_if(
                !tenths_only,
                "place-zero-left-out",
                decimal(if part < 10 {
                    Dec::new(ones * 10 + part, 1)
                } else {
                    Dec::new(ones * 1000 + part, 3)
                }),
            )
            .mistake_if(
                tenths_only,
                "tenths-as-hundredths",
                decimal(Dec::new(part, 2)),
            )
            .mistake(
                "top-point-bottom",
                decimal(Dec::new(
                    part * 10_i64.pow(if tenths_only { 2 } else { 3 }) + bottom,
                    if tenths_only { 2 } else { 3 },
                )),
            ),
    )
}

fn on_line(m: &mut Make) -> Option<Draft> {
    // Tenths over 0 to 2, hundredths over one tenth, hundredths across a whole.
    let (from, to, step) = m.level.pick(
        (
            Ratio::from(0),
            Ratio::from(m.dice.pick(&[1, 2])),
            Ratio::new(1, 10),
        ),
        {
            let t = m.dice.from(0..=19);
            (Ratio::new(t, 10), Ratio::new(t + 1, 10), Ratio::new(1, 100))
        },
        {
            let t = m.dice.from(1..=28);
            (Ratio::new(t, 10), Ratio::new(t + 2, 10), Ratio::new(1, 100))
        },
    );
    let count = ((to - from) / step).to_integer();
    let k = m.dice.from(1..=count - 1);
    keep(2 * k != count)?;
    let at = from + step * k;
    keep((at * 10).is_integer() == m.level.pick(true, false, false) && !at.is_integer())?;
    let value = Dec::exact(at)?;
    let label = |r: Ratio<i64>| Dec::exact(r).map(num);
    let line = || -> Option<Line> {
        let mut line = Line::new(from, to, step)
            .label(from, label(from)?)
            .label(to, label(to)?);
        if m_is_wide(from, to) {
            let middle = (from + to) / 2;
            line = line.label(middle, label(middle)?);
        }
        Some(line)
    };
    let alt = |line: Line, with_point: bool| {
        let say = Say::new(if with_point {
            "g4-decimal-on-line-line-point"
        } else {
            "g4-decimal-on-line-line"
        })
        .number(
            "from",
            Dec::exact(from).map_or_else(String::new, |d| d.to_string()),
        )
        .number(
            "to",
            Dec::exact(to).map_or_else(String::new, |d| d.to_string()),
        )
        .count("parts", count)
        .count("marks", k);
        line.figure_as(say)
    };
    let mirrored = from + step * (count - k);
    let spot = |r: Ratio<i64>| Answer::NumberLinePoint {
        at: Rational::from(r),
    };
    let draft = if m.dice.one_in(2) {
        Draft::new(json!({"task": "decimal_on_line", "from": Dec::exact(from)?.to_string(), "to": Dec::exact(to)?.to_string(), "parts": count, "steps": k}))
            .ask(m.say("ask-name").count("parts", count))
            .ask(alt(line()?.point(at, None), true))
            .decimal(value)
            .mistake("counted-marks-not-steps", decimal(Dec::exact(at + step)?))
            .mistake("step-taken-ten-times-too-large", decimal(Dec::exact(from + step * 10 * k)?))
    } else {
        Draft::new(json!({"task": "mark_decimal", "at": value.to_string(), "from": Dec::exact(from)?.to_string(), "to": Dec::exact(to)?.to_string()}))
            .ask(m.say("ask-mark").number("value", value))
            .answer(Entry::NumberLinePoint { line: line()?.into_line() }, spot(at))
            .mistake("counted-marks-not-steps", spot(at - step))
            .mistake("counted-from-wrong-end", spot(mirrored))
    };
    Some(
        draft
            .hint(m.say("hint-parts").count("parts", count))
            .hint_with(
                m.say("hint-jump"),
                alt(line()?.jump(from, from + step, None), false),
            )
            .step(m.say("step-size").number("step", Dec::exact(step)?))
            .step(
                m.say("step-count")
                    .count("marks", k)
                    .number("from", Dec::exact(from)?)
                    .number("value", value),
            ),
    )
}

fn m_is_wide(from: Ratio<i64>, to: Ratio<i64>) -> bool {
    to - from == Ratio::new(1, 5) || to - from == Ratio::from(2)
}

fn compare_hundredths(m: &mut Make) -> Option<Draft> {
    let (a, pa) = m.level.pick(
        (m.dice.from(1..=9), 1),
        (m.dice.from(1..=99), 2),
        (m.dice.from(1..=399), 2),
    );
    let (b, pb) = m.level.pick(
        (m.dice.from(1..=99), 2),
        (m.dice.from(1..=9), 1),
        (m.dice.from(1..=39), 1),
    );
    let (a, b) = (Dec::new(a, pa), Dec::new(b, pb));
    let gap = a.ratio() - b.ratio();
    keep(gap < Ratio::from(1) && gap > Ratio::from(-1))?;
    compare_draft(m, a, b)
}

fn compare_thousandths(m: &mut Make) -> Option<Draft> {
    let pa = m.level.pick(2, 3, 3);
    let pb = m
        .level
        .pick(3, m.dice.pick(&[1, 2]), m.dice.pick(&[1, 2, 3]));
    let high = m.level.pick(1, 1, 9);
    let a = Dec::new(m.dice.from(1..=high * 10_i64.pow(pa) - 1), pa);
    let b = Dec::new(m.dice.from(1..=high * 10_i64.pow(pb) - 1), pb);
    let gap = (a.ratio() - b.ratio()) * 10;
    keep(gap < Ratio::from(2) && gap > Ratio::from(-2))?;
    compare_draft(m, a, b)
}

fn compare_draft(m: &mut Make, a: Dec, b: Dec) -> Option<Draft> {
    keep(a.units() % 10 != 0 && b.units() % 10 != 0 || m.dice.one_in(6))?;
    let (a, b) = if m.dice.one_in(2) { (a, b) } else { (b, a) };
    let sign = Sign::of(a.ratio().cmp(&b.ratio()));
    let places = a.places().max(b.places());
    let even = |d: Dec| Dec::new(d.units() * 10_i64.pow(places - d.places()), places);
    // Read as whole numbers: 0.65 taken as larger than 0.7 because 65 is larger than 7.
    let part = |d: Dec| d.units() % 10_i64.pow(d.places());
    let ones = |d: Dec| d.units() / 10_i64.pow(d.places());
    let longer = Sign::of((ones(a), part(a)).cmp(&(ones(b), part(b))));
    let draft =
        Draft::new(json!({"task": "compare", "left": a.to_string(), "right": b.to_string()}))
            .ask(Say::new("common-sign"))
            .ask(relation(num(a), Sign::Blank, num(b)))
            .compare(sign)
            .hint(Say::new("decimal-hint-places"))
            .hint(
                Say::new("decimal-hint-even")
                    .math("left", num(even(a)))
                    .math("right", num(even(b))),
            )
            .step(
                Say::new("decimal-hint-even")
                    .math("left", num(even(a)))
                    .math("right", num(even(b))),
            )
            .step(relation(num(a), sign, num(b)));
    Some(if sign == Sign::Equal {
        let longer = Sign::of(a.places().cmp(&b.places()));
        keep(a.places() != b.places())?;
        draft
            .mistake("longer-decimal-larger", compare(longer))
            .mistake(
                "shorter-decimal-larger",
                compare(Sign::of(b.places().cmp(&a.places()))),
            )
    } else {
        let wrong = Sign::of(b.ratio().cmp(&a.ratio()));
        let code = if longer == wrong {
            "longer-decimal-larger"
        } else if Sign::of(b.places().cmp(&a.places())) == wrong {
            "shorter-decimal-larger"
        } else {
            "sign-turned-round"
        };
        draft
            .mistake(code, compare(wrong))
            .mistake("took-as-equal", compare(Sign::Equal))
    })
}

fn read_write(m: &mut Make) -> Option<Draft> {
    let ones = m.dice.from(m.level.pick(0..=9, 1..=99, 1..=999));
    let (t, h, th) = (m.dice.from(0..=9), m.dice.from(0..=9), m.dice.from(1..=9));
    keep(
        m.level
            .pick(t != 0 && h != 0, (t == 0) != (h == 0), t == 0 || h == 0)
            && t + h > 0,
    )?;
    let value = Dec::new(ones * 1000 + t * 100 + h * 10 + th, 3);
    let mut terms: Vec<(String, Expr)> = Vec::new();
    if ones > 0 {
        terms.push((ones.to_string(), num(ones)));
    }
    for (digit, bottom) in [(t, 10), (h, 100), (th, 1000)] {
        if digit > 0 {
            terms.push((format!("{digit}/{bottom}"), frac(digit, bottom)));
        }
    }
    keep(terms.len() >= 2)?;
    if m.level == crate::item::Level::Stretch {
        m.dice.shuffle(&mut terms);
    }
    let texts: Vec<&String> = terms.iter().map(|term| &term.0).collect();
    let squeezed: i64 = [t, h, th]
        .into_iter()
        .filter(|d| *d > 0)
        .fold(0, |n, d| n * 10 + d);
    let kept = [t, h, th].iter().filter(|d| **d > 0).count() as u32;
    let expanded = sum(terms.iter().map(|term| term.1.clone()));
    Some(
        Draft::new(json!({"task": "sum_of_parts", "parts": texts}))
            .ask(m.say("ask"))
            .ask(equal(expanded.clone(), Expr::Blank))
            .decimal(value)
            .hint(m.say("hint-places"))
            .hint(m.say("hint-zero"))
            .step(
                m.say("step-digits")
                    .count("tenths", t)
                    .count("hundredths", h)
                    .count("thousandths", th),
            )
            .step(equal(expanded, num(value)))
            .mistake_if(
                kept < 3,
                "zeros-left-out",
                decimal(Dec::new(ones * 10_i64.pow(kept) + squeezed, kept)),
            )
            .mistake(
                "place-gap-off-by-one",
                decimal(Dec::new(ones * 10_000 + value.units() % 1000, 4)),
            )
            .mistake(
                "digits-in-reverse-order",
                decimal(Dec::new(ones * 1000 + th * 100 + h * 10 + t, 3)),
            ),
    )
}

fn round(m: &mut Make) -> Option<Draft> {
    let keep_places = m.level.pick(
        m.dice.from(0..=1) as u32,
        m.dice.from(1..=2) as u32,
        m.dice.from(0..=2) as u32,
    );
    let places = m.level.pick(keep_places + 1, keep_places + 1, 3);
    let n = Dec::new(m.dice.from(1..=99 * 10_i64.pow(places)), places);
    keep(n.units() % 10 != 0 && places > keep_places)?;
    let unit = 10_i64.pow(places - keep_places);
    let down = n.units() / unit;
    let rest = n.units() % unit;
    keep(rest != 0 && down > 0)?;
    let goes_up = 2 * rest >= unit;
    let right = Dec::new(if goes_up { down + 1 } else { down }, keep_places);
    let wrong = Dec::new(if goes_up { down } else { down + 1 }, keep_places);
    let place = [
        "decimal-place-whole",
        "decimal-place-tenth",
        "decimal-place-hundredth",
    ][keep_places as usize];
    let unit_text = Dec::new(1, keep_places);
    let finer = Dec::new(1, keep_places).ratio();
    let other_places = if keep_places == 0 { 1 } else { keep_places - 1 };
    let other_unit = 10_i64.pow(places - other_places);
    let other = Dec::new(
        (2 * n.units() + other_unit) / (2 * other_unit),
        other_places,
    );
    let low = Dec::new(down, keep_places);
    let high = Dec::new(down + 1, keep_places);
    let line = Line::new(low.ratio(), high.ratio(), finer / 10)
        .label(low.ratio(), num(low))
        .label(high.ratio(), num(high))
        .point(n.ratio(), Some(num(n)))
        .figure_as(
            Say::new("round-line")
                .number("down", low)
                .number("up", high)
                .number("n", n),
        );
    Some(
        Draft::new(
            json!({"task": "round", "number": n.to_string(), "place": unit_text.to_string()}),
        )
        .ask(
            m.say("ask")
                .number("n", n)
                .word("place", place)
                .number("unit", unit_text),
        )
        .ask(Say::new("round-rule"))
        .decimal(right)
        .hint(
            Say::new("round-hint-between")
                .number("down", low)
                .number("up", high),
        )
        .hint_with(Say::new("round-hint-line"), line)
        .step(
            Say::new("round-hint-between")
                .number("down", low)
                .number("up", high),
        )
        .step(
            Say::new(if goes_up {
                "round-step-up"
            } else {
                "round-step-down"
            })
            .number("n", n)
            .number("right", right),
        )
        .mistake(
            if goes_up {
                "rounded-down"
            } else {
                "rounded-up"
            },
            decimal(wrong),
        )
        .mistake("rounded-to-other-place", decimal(other)),
    )
}

fn add_subtract(m: &mut Make) -> Option<Draft> {
    let (pa, pb) = m.level.pick(
        (1, 1),
        m.dice.pick(&[(1, 2), (2, 1), (2, 2)]),
        m.dice.pick(&[(0, 2), (1, 2), (2, 1), (2, 0)]),
    );
    let high = m.level.pick(20, 60, 200);
    let value =
        |m: &mut Make, places: u32| Dec::new(m.dice.from(11..=high * 10_i64.pow(places)), places);
    let (a, b) = (value(m, pa), value(m, pb));
    keep((pa == 0 || a.units() % 10 != 0) && (pb == 0 || b.units() % 10 != 0))?;
    add_subtract_draft(m, a, b)
}

/// A sum or difference of two decimals.
pub(super) fn add_subtract_draft(m: &mut Make, a: Dec, b: Dec) -> Option<Draft> {
    let plus = m.dice.one_in(2);
    let result = Dec::exact(if plus {
        a.ratio() + b.ratio()
    } else {
        a.ratio() - b.ratio()
    })?;
    keep(result.units() > 0)?;
    let places = a.places().max(b.places());
    let even = |d: Dec| Dec::new(d.units() * 10_i64.pow(places - d.places()), places);
    // Lined up at the right end instead of at the point.
    let right_aligned = if plus {
        a.units() + b.units()
    } else {
        (a.units() - b.units()).abs()
    };
    let work = if plus {
        sum([num(a), num(b)])
    } else {
        difference(num(a), num(b))
    };
    let lined = if plus {
        sum([num(even(a)), num(even(b))])
    } else {
        difference(num(even(a)), num(even(b)))
    };
    let draft = Draft::new(json!({"task": if plus { "add" } else { "subtract" },
        (if plus { "numbers" } else { "pair" }): [a.to_string(), b.to_string()]}))
    .ask(Say::new("common-work-out"))
    .ask(equal(work.clone(), Expr::Blank))
    .decimal(result)
    .hint(Say::new("decimal-hint-line-up"))
    .hint(Say::new("decimal-hint-zeros").math("work", lined.clone()))
    .step(Say::new("decimal-hint-line-up"))
    .step(Say::new("decimal-hint-zeros").math("work", lined))
    .step(equal(work, num(result)));
    let other = Dec::exact(if plus {
        a.ratio() - b.ratio()
    } else {
        a.ratio() + b.ratio()
    })?;
    let other = Dec::new(other.units().abs(), other.places());
    Some(
        draft
            .mistake_if(
                a.places() != b.places(),
                "decimals-lined-up-at-the-end",
                decimal(Dec::new(right_aligned, places)),
            )
            .mistake_if(
                a.places() == b.places(),
                "decimal-point-misplaced",
                decimal(Dec::new(
                    even(a).units()
                        + if plus {
                            even(b).units()
                        } else {
                            -even(b).units()
                        },
                    places + 1,
                )),
            )
            .mistake(
                if plus {
                    "subtracted-instead"
                } else {
                    "added-instead"
                },
                decimal(other),
            ),
    )
}

fn multiply(m: &mut Make) -> Option<Draft> {
    let a = Dec::new(
        m.dice.from(m.level.pick(2..=99, 12..=99, 12..=999)),
        m.level.pick(1, 1, m.dice.pick(&[1, 2])),
    );
    let b = m.level.pick(
        Dec::new(m.dice.from(2..=9), 0),
        Dec::new(m.dice.from(2..=9), 1),
        Dec::new(m.dice.from(12..=99), m.dice.pick(&[1, 2])),
    );
    multiply_draft(a, b)
}

/// A product of two decimals.
pub(super) fn multiply_draft(a: Dec, b: Dec) -> Option<Draft> {
    keep(a.units() % 10 != 0 && b.units() % 10 != 0 && a.units() != b.units() && b.units() > 1)?;
    let places = a.places() + b.places();
    let full = Dec::new(a.units() * b.units(), places);
    let result = full.trimmed();
    let work = product([num(a), num(b)]);
    let aligned = Dec::new(full.units(), a.places().max(b.places()));
    keep(places > 0)?;
    Some(
        Draft::new(json!({"task": "multiply", "numbers": [a.to_string(), b.to_string()]}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .decimal(result)
            .hint(
                Say::new("decimal-hint-as-wholes")
                    .math("work", product([num(a.units()), num(b.units())])),
            )
            .hint(Say::new("decimal-hint-places-together").count("places", i64::from(places)))
            .step(equal(
                product([num(a.units()), num(b.units())]),
                num(full.units()),
            ))
            .step(Say::new("decimal-hint-places-together").count("places", i64::from(places)))
            .step(equal(work, num(result)))
            .mistake_if(
                b.places() > 0,
                "decimal-point-as-in-adding",
                decimal(aligned),
            )
            .mistake("decimal-point-left-out", decimal(Dec::new(full.units(), 0)))
            .mistake(
                "decimal-point-misplaced",
                decimal(Dec::new(full.units(), places + 1)),
            ),
    )
}

fn divide(m: &mut Make) -> Option<Draft> {
    let q = Dec::new(
        m.dice.from(m.level.pick(11..=99, 11..=999, 12..=499)),
        m.level.pick(1, m.dice.pick(&[1, 2]), m.dice.pick(&[0, 1])),
    );
    let by = m.level.pick(
        Dec::new(m.dice.from(2..=9), 0),
        Dec::new(m.dice.from(2..=9), 0),
        Dec::new(m.dice.from(2..=25), m.dice.pick(&[1, 2])),
    );
    divide_draft(q, by, 2)
}

/// A quotient of two decimals: the quotient and the divisor are given, the
/// dividend has at most `most_places`.
pub(super) fn divide_draft(q: Dec, by: Dec, most_places: u32) -> Option<Draft> {
    let total = Dec::exact(q.ratio() * by.ratio())?;
    keep(
        total.places() <= most_places
            && by.units() % 10 != 0
            && q.units() % 10 != 0
            && total.ratio() != by.ratio()
            && by.ratio() != Ratio::from(1),
    )?;
    keep(total.places() > 0 || by.places() > 0)?;
    let shift = by.places();
    let factor = 10_i64.pow(shift);
    let (big, small) = (Dec::exact(total.ratio() * factor)?, Dec::new(by.units(), 0));
    let work = quotient(num(total), num(by));
    let mut draft =
        Draft::new(json!({"task": "divide", "total": total.to_string(), "by": by.to_string()}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .decimal(q)
            .hint(Say::new(if shift > 0 {
                "decimal-hint-whole-divisor"
            } else {
                "decimal-hint-point-up"
            }))
            .hint(
                Say::new("decimal-hint-check")
                    .math("work", equal(product([num(by), Expr::Blank]), num(total))),
            );
    draft = if shift > 0 {
        draft.step(
            Say::new("decimal-step-both")
                .number("factor", factor)
                .math("work", quotient(num(big), num(small))),
        )
    } else {
        draft.step(Say::new("decimal-hint-point-up"))
    };
    let left_alone = Dec::exact(q.ratio() / factor)?;
    Some(
        draft
            .step(equal(work, num(q)))
            .step(
                Say::new("common-check")
                    .math("work", equal(product([num(by), num(q)]), num(total))),
            )
            .mistake_if(
                shift > 0 || q.places() != 1,
                "decimal-point-misplaced",
                decimal(Dec::exact(q.ratio() * 10)?),
            )
            .mistake_if(
                q.places() == 1 && shift == 0,
                "divided-too-far",
                decimal(Dec::exact(q.ratio() / 10)?),
            )
            .mistake_if(
                shift > 0,
                "moved-point-in-divisor-only",
                decimal(left_alone),
            )
            .mistake_if(
                shift == 0,
                "decimal-point-left-out",
                decimal(Dec::new(q.units(), 0)),
            ),
    )
}
