//! Turns, angles and lines.

use super::drawn::angle_of_kind;
use crate::answer::{Answer, Entry};
use crate::draw::{angle, at, circle, protractor};
use crate::expr::{Expr, difference, equal, frac, num, product, quotient, sum};
use crate::figure::{Drawing, Lines, NamedPoint, Stroke, StrokeKind};
use crate::make::{Draft, Generator, Make, figure, keep, says};
use crate::say::Say;
use num_integer::gcd;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-angle-turn", 3, turn),
    Generator::new("g4-angle-degrees", 3, one_degree),
    Generator::new("g4-angle-measure", 4, measure),
    Generator::new("g4-angle-add", 3, add),
    Generator::new("g4-lines-angles", 3, lines),
];

fn degrees(value: i64) -> Answer {
    Answer::Angle {
        degrees: value,
        within: 0,
    }
}

fn turn(m: &mut Make) -> Option<Draft> {
    let bottom = m.dice.pick(m.level.pick(
        &[2, 3, 4][..],
        &[3, 4, 5, 6, 8][..],
        &[5, 6, 8, 10, 12][..],
    ));
    let top = m.dice.from(1..=bottom - 1);
    keep(gcd(top, bottom) == 1)?;
    let value = 360 * top / bottom;
    let back = m.level == crate::Level::Entry && m.dice.one_in(2)
        || m.level == crate::Level::Stretch && m.dice.one_in(3);
    if back {
        return Some(
            Draft::new(json!({"task": "part_of_turn", "degrees": value}))
                .ask(m.wording("ask-part", 2).count("degrees", value))
                .fraction(top, bottom)
                .hint(m.say("hint-full"))
                .hint(
                    m.say("hint-fraction")
                        .math("fraction", frac(Expr::Blank, 360)),
                )
                .step(m.say("hint-full"))
                .step(equal(frac(value, 360), frac(top, bottom)))
                .misconception("turn-out-of-180", crate::make::fraction(value, 180))
                .misconception("turn-out-of-100", crate::make::fraction(value, 100)),
        );
    }
    let story = m.dice.from(1..=6);
    Some(
        Draft::new(json!({"task": "degrees_of_turn", "part": format!("{top}/{bottom}")}))
            .ask(
                m.say(&format!("ask-{story}"))
                    .text("name", m.dice.name())
                    .math("part", frac(top, bottom)),
            )
            .answer(Entry::Angle { turned: false }, degrees(value))
            .hint(m.say("hint-full"))
            .hint_with(
                m.say("hint-one")
                    .math("work", quotient(num(360), num(bottom))),
                circle(bottom, top),
            )
            .step(m.say("hint-full"))
            .step(equal(quotient(num(360), num(bottom)), num(360 / bottom)))
            .step_if(
                top > 1,
                equal(product([num(top), num(360 / bottom)]), num(value)),
            )
            .misconception_if(
                180 * top % bottom == 0,
                "turn-out-of-180",
                degrees(180 * top / bottom),
            )
            .misconception_if(
                180 * top % bottom != 0,
                "other-part-of-turn",
                degrees(360 - value),
            )
            .misconception_if(
                top == 1 && 100 % bottom == 0,
                "turn-out-of-100",
                degrees(100 / bottom),
            )
            .misconception_if(
                top > 1 && 360 - value != 360 / bottom,
                "one-part-of-turn-only",
                degrees(360 / bottom),
            ),
    )
}

fn one_degree(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(5..=90, 20..=180, 30..=300));
    let more = m.dice.from(m.level.pick(3..=20, 5..=60, 15..=59));
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    Some(match kind {
        1 => Draft::new(json!({"task": "turns_and_more", "turns": n, "more": more, "way": "same"}))
            .ask(m.say("ask-same").count("n", n).count("more", more))
            .answer(Entry::Angle { turned: false }, degrees(n + more))
            .hint(m.say("hint-one"))
            .hint(m.say("hint-on"))
            .step(m.say("hint-one"))
            .step(equal(sum([num(n), num(more)]), num(n + more)))
            .misconception("first-turn-only", degrees(n))
            .misconception("turned-back-instead", degrees((n - more).abs())),
        2 => {
            keep(n > more + 5)?;
            Draft::new(json!({"task": "turns_and_more", "turns": n, "more": more, "way": "back"}))
                .ask(m.say("ask-back").count("n", n).count("more", more))
                .answer(Entry::Angle { turned: false }, degrees(n - more))
                .hint(m.say("hint-one"))
                .hint(m.say("hint-back"))
                .step(m.say("hint-one"))
                .step(equal(difference(num(n), num(more)), num(n - more)))
                .misconception("first-turn-only", degrees(n))
                .misconception("turned-on-instead", degrees(n + more))
        }
        3 if m.dice.one_in(2) => {
            let back = m.dice.from(5..=more.max(6) - 1);
            keep(n + more <= 350 && back != more && n > back)?;
            Draft::new(json!({"task": "turns_on_and_back", "turns": n, "on": more, "back": back}))
                .ask(
                    m.say("ask-on-back")
                        .count("n", n)
                        .count("more", more)
                        .count("back", back),
                )
                .answer(Entry::Angle { turned: false }, degrees(n + more - back))
                .hint(m.say("hint-one"))
                .hint(m.say("hint-on-back"))
                .step(equal(sum([num(n), num(more)]), num(n + more)))
                .step(equal(
                    difference(num(n + more), num(back)),
                    num(n + more - back),
                ))
                .misconception("stopped-after-one-step", degrees(n + more))
                .misconception("turned-on-instead", degrees((n + more + back).min(360)))
        }
        _ => Draft::new(json!({"task": "turns_to_full", "turns": n}))
            .ask(m.say("ask-full").count("n", n))
            .answer(Entry::Angle { turned: false }, degrees(360 - n))
            .hint(m.say("hint-one"))
            .hint(m.say("hint-full"))
            .step(m.say("hint-full"))
            .step(equal(difference(num(360), num(n)), num(360 - n)))
            .misconception("first-turn-only", degrees(n))
            .misconception_if(n < 180, "turn-out-of-180", degrees(180 - n))
            .misconception_if(n >= 180, "half-turn-added", degrees((540 - n).min(360))),
    })
}

fn measure(m: &mut Make) -> Option<Draft> {
    let value = m.level.pick(
        m.dice.from(2..=16) * 10,
        m.dice.from(3..=34) * 5,
        m.dice.from(12..=168),
    );
    let from_right = m.dice.one_in(2);
    keep(value != 90 && (m.level != crate::Level::Stretch || value % 5 != 0))?;
    let kind_acute = value < 90;
    let ten_off = if value >= 160 { value - 10 } else { value + 10 };
    if m.dice.one_in(3) {
        return Some(
            Draft::new(json!({"task": "angle_to_make", "degrees": value}))
                .ask(m.say("ask-make").count("degrees", value))
                .answer(Entry::Angle { turned: true }, degrees(value))
                .hint(m.say("hint-make"))
                .hint(m.say(if kind_acute {
                    "hint-acute"
                } else {
                    "hint-obtuse"
                }))
                .step(m.say("step-right"))
                .step(m.say("step-make").count("degrees", value))
                .misconception("other-protractor-scale", degrees(180 - value))
                .misconception("protractor-read-by-ten-off", degrees(ten_off)),
        );
    }
    Some(
        Draft::new(json!({"task": "protractor_reading", "degrees": value}))
            .ask(m.wording("ask", 2))
            .ask(protractor(value, from_right))
            .answer(Entry::Angle { turned: false }, degrees(value))
            .hint(m.say("hint-zero"))
            .hint(m.say(if kind_acute {
                "hint-acute"
            } else {
                "hint-obtuse"
            }))
            .step(m.say(if from_right {
                "step-right"
            } else {
                "step-left"
            }))
            .step(m.say("step-read").count("degrees", value))
            .misconception("other-protractor-scale", degrees(180 - value))
            .misconception("protractor-read-by-ten-off", degrees(ten_off)),
    )
}

fn add(m: &mut Make) -> Option<Draft> {
    let (total, name) = m.level.pick(
        (90, "right"),
        m.dice.pick(&[(90, "right"), (180, "straight")]),
        m.dice
            .pick(&[(180, "straight"), (0, "given"), (360, "full")]),
    );
    let total = if total == 0 {
        m.dice.from(100..=170)
    } else {
        total
    };
    let three = m.level == crate::Level::Stretch;
    let a = m.dice.from(12..=if three { total / 2 } else { total - 10 });
    let b = if three {
        m.dice.from(10..=total / 3)
    } else {
        0
    };
    let right = total - a - b;
    keep(right >= 8 && right != a && right != b && a != b)?;
    let written = |size: i64| Some(crate::expr::degrees(num(size)));
    let mut parts = vec![(a, written(a))];
    if three {
        parts.push((b, written(b)));
    }
    parts.push((right, Some(Expr::Blank)));
    let alt = m
        .say(if three { "angle-three" } else { "angle-two" })
        .count("a", a)
        .count("b", b)
        .count("total", total);
    let known: Vec<i64> = if three { vec![a, b] } else { vec![a] };
    let statement = if name == "given" {
        json!({"task": "missing_angle_of", "total": total, "known": known})
    } else {
        json!({"task": "missing_angle", "whole": name, "known": known})
    };
    let mut ask = m.say(&format!("ask-{name}"));
    if name == "given" {
        ask = ask.count("total", total);
    }
    let mut draft = Draft::new(statement)
        .ask(ask)
        .ask(angle(
            parts,
            (name == "given").then(|| written(total)).flatten(),
            alt,
        ))
        .answer(Entry::Angle { turned: false }, degrees(right))
        .hint(m.say(&format!("hint-{name}")).count("total", total))
        .hint(m.say("hint-parts"));
    if three {
        draft = draft.step(equal(sum([num(a), num(b)]), num(a + b)));
    } else {
        draft = draft.step(m.say(&format!("hint-{name}")).count("total", total));
    }
    let other_total = if total == 90 { 180 } else { 90 };
    let wrong = other_total - a - b;
    Some(
        draft
            .step(equal(difference(num(total), num(a + b)), num(right)))
            .misconception_if(wrong > 0, "wrong-whole-angle", degrees(wrong))
            .misconception_if(
                wrong <= 0,
                "stopped-after-one-step",
                degrees((a + b).min(360)),
            )
            .misconception_if(three, "left-out-one-part", degrees(total - a))
            .misconception_if(!three, "kept-the-number", degrees(a)),
    )
}

fn lines(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(4) {
        return angle_of_kind(m);
    }
    if m.dice
        .one_in(if m.level == crate::Level::Entry { 3 } else { 2 })
    {
        // Right angles now and then; acute and obtuse ones as often as each other.
        let value = match m.dice.from(0..=9) {
            0 | 1 => 90,
            2..=5 => m.dice.from(10..=85),
            _ => m.dice.from(95..=170),
        };
        let kind = match value {
            0..=89 => 0,
            90 => 1,
            _ => 2,
        };
        return Some(
            Draft::new(json!({"task": "angle_kind", "degrees": value}))
                .ask(m.say("ask-angle").count("degrees", value))
                .ask(angle(
                    vec![(value, None)],
                    None,
                    m.say("angle").count("degrees", value),
                ))
                .one_of_listed(
                    vec![
                        ("acute-and-obtuse-mixed-up", says("angle-acute")),
                        ("near-right-taken-as-right", says("angle-right")),
                        ("acute-and-obtuse-mixed-up", says("angle-obtuse")),
                    ],
                    kind,
                )
                .hint(m.say("hint-right"))
                .hint(m.say("hint-corner"))
                .step(m.say("hint-right"))
                .step(m.say(["step-acute", "step-right-angle", "step-obtuse"].get(kind)?)),
        );
    }
    let pair = m.level != crate::Level::Entry;
    let n = m.dice.from(1..=4);
    let letters = m
        .dice
        .pick(&[("A", "B"), ("C", "D"), ("P", "Q"), ("R", "S")]);
    if !pair {
        let kind = m.dice.from(0..=2) as usize;
        let stroke = *[StrokeKind::Segment, StrokeKind::Ray, StrokeKind::Line].get(kind)?;
        let (from, to) = (at(0, 0), at(4, n));
        let drawing = Drawing::Lines(Lines {
            strokes: vec![Stroke { stroke, from, to }],
            points: vec![
                NamedPoint {
                    at: from,
                    name: letters.0.into(),
                },
                NamedPoint {
                    at: to,
                    name: letters.1.into(),
                },
            ],
            right_angles: Vec::new(),
        });
        return Some(
            Draft::new(
                json!({"task": "stroke_kind", "ends": 2 - kind, "points": [letters.0, letters.1]}),
            )
            .ask(
                m.say("ask-stroke")
                    .text("a", letters.0)
                    .text("b", letters.1),
            )
            .ask(figure(
                drawing,
                m.say("stroke")
                    .count("ends", 2 - kind as i64)
                    .count("arrows", kind as i64)
                    .text("a", letters.0)
                    .text("b", letters.1),
            ))
            .one_of_listed(
                ["stroke-segment", "stroke-ray", "stroke-line"]
                    .into_iter()
                    .enumerate()
                    .map(|(taken, name)| (mixed_up(kind, taken), says(name)))
                    .collect(),
                kind,
            )
            .hint(m.say("hint-arrows"))
            .hint(m.say("hint-ends"))
            .step(m.say("hint-ends"))
            .step(m.say(["step-segment", "step-ray", "step-line"].get(kind)?)),
        );
    }
    let kind = m.dice.from(0..=2) as usize;
    let x = m.dice.from(2..=5);
    // Directions of two lines: parallel, perpendicular, or just crossing.
    let (dx, dy) = (x, n);
    let (ex, ey) = match kind {
        0 => (dx, dy),
        1 => (-dy, dx),
        _ => (dx, dy + m.dice.from(2..=4)),
    };
    let start = if kind == 0 { at(0, 3) } else { at(0, 0) };
    let end = if kind == 0 {
        at(ex, ey + 3)
    } else {
        at(ex, ey)
    };
    let back = if kind == 0 { start } else { at(-ex, -ey) };
    let drawing = Drawing::Lines(Lines {
        strokes: vec![
            Stroke {
                stroke: StrokeKind::Line,
                from: at(-dx, -dy),
                to: at(dx, dy),
            },
            Stroke {
                stroke: StrokeKind::Line,
                from: back,
                to: end,
            },
        ],
        points: Vec::new(),
        right_angles: if kind == 1 {
            vec![at(0, 0)]
        } else {
            Vec::new()
        },
    });
    Some(
        Draft::new(json!({"task": "line_pair", "directions": [[dx, dy], [ex, ey]]}))
            .ask(m.say("ask-pair"))
            .ask(figure(
                drawing,
                Say::new(
                    *[
                        "g4-lines-angles-pair-parallel",
                        "g4-lines-angles-pair-square",
                        "g4-lines-angles-pair-crossing",
                    ]
                    .get(kind)?,
                )
                .count("x1", dx)
                .count("y1", dy)
                .count("x2", ex)
                .count("y2", ey),
            ))
            .one_of_listed(
                vec![
                    ("parallel-and-perpendicular-mixed-up", says("pair-parallel")),
                    (
                        "parallel-and-perpendicular-mixed-up",
                        says("pair-perpendicular"),
                    ),
                    ("right-angle-or-gap-not-seen", says("pair-neither")),
                ],
                kind,
            )
            .hint(m.say("hint-parallel"))
            .hint(m.say("hint-perpendicular"))
            .step(m.say("hint-parallel"))
            .step(m.say(["step-parallel", "step-perpendicular", "step-crossing"].get(kind)?)),
    )
}

/// The name of the pair of strokes that are mixed up: 0 is a segment, 1 a ray, 2 a line.
const fn mixed_up(kind: usize, taken: usize) -> &'static str {
    match (kind, taken) {
        (0, 1) | (1, 0) => "ray-and-segment-mixed-up",
        (1, 2) | (2, 1) => "ray-and-line-mixed-up",
        _ => "line-and-segment-mixed-up",
    }
}
