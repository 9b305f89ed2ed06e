//! Tenths, hundredths and thousandths: write them and place them on a line.

use crate::answer::{Answer, Entry};
use crate::decimal::Dec;
use crate::draw::{Line, base_ten_hundredths};
use crate::expr::{Expr, equal, frac, num, product, sum};
use crate::make::{Draft, Generator, Make, decimal, fraction, keep, whole};
use crate::number::Rational;
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-tenths-hundredths", 3, tenths_hundredths),
    Generator::new("g4-decimal-write", 3, write),
    Generator::new("g4-decimal-on-line", 3, on_line),
    Generator::new("g5-decimal-read-write", 3, read_write),
];

fn tenths_hundredths(m: &mut Make) -> Option<Draft> {
    let tenths = m.dice.from(1..=9);
    if m.level == crate::Level::Entry {
        let shown = |x: Expr| equal(frac(tenths, 10), frac(x, 100));
        let draft = Draft::new(
            json!({"task": "equal_top", "fraction": format!("{tenths}/10"), "given": 100}),
        );
        let plain = [Say::new("common-box").into(), shown(Expr::Blank).into()];
        return Some(
            m.asked(draft, plain, 4, |say| {
                say.math("fraction", frac(tenths, 10)).count("given", 100)
            })
            .whole(tenths * 10)
            .hint(m.say("hint-one"))
            .hint_with(m.say("hint-rods"), base_ten_hundredths(tenths * 10))
            .step(m.say("step-ten").math(
                "work",
                equal(product([num(tenths), num(10)]), num(tenths * 10)),
            ))
            .step(shown(num(tenths * 10)))
            .misconception("kept-the-number", whole(tenths))
            .misconception("same-difference", whole(tenths + 90)),
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
            .misconception("added-tops-and-bottoms", fraction(a + b, 110))
            .misconception("changed-bottoms-only", fraction(a + b, 100)),
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
        crate::expr::mixed(ones, part, bottom)
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
            .misconception_if(
                !tenths_only,
                "place-zero-left-out",
                decimal(if part < 10 {
                    Dec::new(ones * 10 + part, 1)
                } else {
                    Dec::new(ones * 1000 + part, 3)
                }),
            )
            .misconception_if(
                tenths_only,
                "tenths-as-hundredths",
                decimal(Dec::new(part, 2)),
            )
            .misconception(
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
        let draft = Draft::new(
            json!({"task": "decimal_on_line", "from": Dec::exact(from)?.to_string(), "to": Dec::exact(to)?.to_string(), "parts": count, "steps": k}),
        );
        let plain = [m.say("ask-name").count("parts", count).into()];
        m.asked(draft, plain, 3, |say| say.count("parts", count))
            .ask(alt(line()?.point(at, None), true))
            .decimal(value)
            .misconception("counted-marks-not-steps", decimal(Dec::exact(at + step)?))
            .misconception(
                "step-taken-ten-times-too-large",
                decimal(Dec::exact(from + step * 10 * k)?),
            )
    } else {
        let draft = Draft::new(
            json!({"task": "mark_decimal", "at": value.to_string(), "from": Dec::exact(from)?.to_string(), "to": Dec::exact(to)?.to_string()}),
        );
        let plain = [m.say("ask-mark").number("value", value).into()];
        m.asked(draft, plain, 3, |say| {
            Say {
                id: format!("{}-mark", say.id).into(),
                ..say
            }
            .number("value", value)
        })
        .answer(
            Entry::NumberLinePoint {
                line: line()?.into_line(),
            },
            spot(at),
        )
        .misconception("counted-marks-not-steps", spot(at - step))
        .misconception("counted-from-wrong-end", spot(mirrored))
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

fn read_write(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(3) {
        return super::words::in_words(m);
    }
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
    if m.level == crate::Level::Stretch {
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
            .misconception_if(
                kept < 3,
                "zeros-left-out",
                decimal(Dec::new(ones * 10_i64.pow(kept) + squeezed, kept)),
            )
            .misconception(
                "place-gap-off-by-one",
                decimal(Dec::new(ones * 10_000 + value.units() % 1000, 4)),
            )
            .misconception(
                "digits-in-reverse-order",
                decimal(Dec::new(ones * 1000 + th * 100 + h * 10 + t, 3)),
            ),
    )
}
