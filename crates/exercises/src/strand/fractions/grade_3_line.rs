//! Fractions on a number line, grade 3.

use super::grade_3::BOTTOMS;
use crate::answer::{Answer, Entry};
use crate::draw::Line;
use crate::expr::frac;
use crate::make::{Draft, Generator, Make, fraction, keep};
use crate::number::Rational;
use num_rational::Ratio;
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-fraction-unit-on-line", 3, unit_on_line),
    Generator::new("g3-fraction-on-line", 3, on_line),
];

fn unit_on_line(m: &mut Make) -> Option<Draft> {
    let parts = m.dice.pick(&BOTTOMS);
    // At stretch, the line has more marks than the fraction needs.
    let finer = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=4));
    let marks = parts * finer;
    keep(BOTTOMS.contains(&marks))?;
    let line = || {
        Line::new(0, 1, Ratio::new(1, marks))
            .label(0, 0)
            .label(1, 1)
    };
    let kind = m.dice.pick(&[1, 3]);
    let draft = match kind {
        // The parts are counted on the line, which may have more marks.
        1 => Draft::new(json!({"task": "point_on_line", "from": 0, "to": 1, "parts_in_one": marks, "steps": finer}))
            .ask(m.wording("ask-first", 3))
            .ask(
                line().point(Ratio::new(1, parts), None).figure_as(
                    m.say("line").count("parts", marks).count("steps", finer),
                ),
            )
            .fraction(1, parts)
            .misconception("counted-marks-not-parts", fraction(finer, marks + 1))
            .misconception("fraction-turned-over", fraction(marks, finer)),
        _ => {
            keep(parts > 2 || finer > 1)?;
            Draft::new(json!({"task": "mark_at", "at": format!("1/{parts}"), "from": 0, "to": 1}))
                .ask(m.wording("ask-mark", 3).math("fraction", frac(1, parts)))
                .answer(
                    Entry::NumberLinePoint {
                        line: line().into_line(),
                    },
                    Answer::NumberLinePoint {
                        at: Rational::from(Ratio::new(1, parts)),
                    },
                )
                .misconception(
                    if finer > 1 {
                        "took-first-mark-for-any-fraction"
                    } else {
                        "counted-from-one"
                    },
                    Answer::NumberLinePoint {
                        at: Rational::from(Ratio::new(if finer > 1 { 1 } else { parts - 1 }, marks)),
                    },
                )
                .misconception(
                    "took-one-whole",
                    Answer::NumberLinePoint {
                        at: Rational::from(1),
                    },
                )
        }
    };
    Some(
        draft
            .hint(m.say("hint-equal"))
            .hint_with(m.say("hint-count"), line().figure())
            .step(m.say("step-parts").count("parts", marks))
            .step(if finer > 1 {
                m.say("step-share")
                    .count("marks", marks)
                    .count("parts", parts)
                    .count("each", finer)
            } else {
                m.say("step-first").math("fraction", frac(1, parts))
            }),
    )
}

fn on_line(m: &mut Make) -> Option<Draft> {
    let bottom = m.dice.pick(&BOTTOMS[1..]);
    let to = m.level.pick(1, 2, 2);
    let top = m.level.pick(
        m.dice.from(2..=bottom - 1),
        m.dice.from(2..=2 * bottom - 1),
        m.dice.from(bottom + 1..=2 * bottom - 1),
    );
    keep(top % bottom != 0)?;
    let at = Ratio::new(top, bottom);
    let line = || Line::new(0, to, Ratio::new(1, bottom)).label_wholes();
    let text = format!("{top}/{bottom}");
    let spot = |n: i64| Answer::NumberLinePoint {
        at: Rational::from(Ratio::new(n, bottom)),
    };
    let draft = match m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3)) {
        1 => Draft::new(json!({"task": "point_on_line", "from": 0, "to": to, "parts_in_one": bottom, "steps": top}))
            .ask(m.wording("ask-name", 3))
            .ask(line().point(at, None).figure_as(
                m.say("line")
                    .count("to", to)
                    .count("parts", bottom)
                    .count("steps", top),
            ))
            .fraction(top, bottom)
            .misconception("counted-marks-not-steps", fraction(top + 1, bottom))
            .misconception_if(to > 1, "counted-parts-of-all-wholes", fraction(top, to * bottom))
            .misconception_if(to == 1, "fraction-turned-over", fraction(bottom, top)),
        2 => Draft::new(json!({"task": "mark_at", "at": text, "from": 0, "to": to}))
            .ask(m.wording("ask-mark", 3).math("fraction", frac(top, bottom)))
            .answer(
                Entry::NumberLinePoint {
                    line: line().into_line(),
                },
                spot(top),
            )
            .misconception("counted-marks-not-steps", spot(top - 1))
            .misconception_unless_same("counted-from-one", spot(if top < bottom { bottom - top } else { 2 * bottom - top })),
        _ => Draft::new(json!({"task": "steps_of", "steps": top, "step": format!("1/{bottom}")}))
            .ask(m.say("ask-steps").count("steps", top).math("step", frac(1, bottom)))
            .fraction(top, bottom)
            .misconception("counted-marks-not-steps", fraction(top + 1, bottom))
            .misconception("counted-parts-of-all-wholes", fraction(top, 2 * bottom)),
    };
    Some(
        draft
            .hint(m.say("hint-part").count("parts", bottom))
            .hint_with(
                m.say("hint-jump"),
                line()
                    .jump(0, Ratio::new(1, bottom), Some(frac(1, bottom)))
                    .figure(),
            )
            .step(m.say("step-part").math("step", frac(1, bottom)))
            .step(
                m.say("step-jumps")
                    .count("steps", top)
                    .math("fraction", frac(top, bottom)),
            ),
    )
}
