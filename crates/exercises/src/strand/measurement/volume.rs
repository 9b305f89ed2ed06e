//! Volume by unit cubes and by edges.

use crate::draw::cubes;
use crate::expr::{Expr, equal, num, product, quotient, sum};
use crate::figure::{CubeBox, Drawing, UnitCubes};
use crate::make::{Draft, Generator, Make, figure, keep, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-volume-unit-cube", 3, unit_cube),
    Generator::new("g5-volume-pack", 3, pack),
    Generator::new("g5-volume-count", 3, count),
    Generator::new("g5-volume-box", 3, box_volume),
    Generator::new("g5-volume-rules", 3, rules),
    Generator::new("g5-volume-add", 3, add),
];

fn unit_cube(m: &mut Make) -> Option<Draft> {
    let (length, cubic, square) = m.dice.pick(&[
        ("unit-cm", "unit-cubic-cm", "unit-square-cm"),
        ("unit-m", "unit-cubic-m", "unit-square-m"),
        ("unit-in", "unit-cubic-in", "unit-square-in"),
        ("unit-ft", "unit-cubic-ft", "unit-square-ft"),
    ]);
    let n = m.dice.from(m.level.pick(1..=9, 2..=9, 3..=12));
    let tower = m.dice.one_in(2);
    let measure = |amount: i64, unit: &'static str| crate::expr::measure(num(amount), unit);
    if m.level != crate::Level::Entry {
        // Larger cubes: how many unit cubes they make.
        let edge = m.level.pick(1, m.dice.from(2..=3), m.dice.from(2..=5));
        // No towers as high as houses.
        keep(n > 1 && (edge == 1 || length != "unit-m") && (length != "unit-ft" || edge <= 2))?;
        let each = edge * edge * edge;
        return Some(
            Draft::new(json!({"task": "larger_cubes", "cubes": n, "edge": edge}))
                .ask(
                    m.say(if tower {
                        "ask-larger-tower"
                    } else {
                        "ask-larger"
                    })
                    .count("n", n)
                    .math("edge", measure(edge, length)),
                )
                .whole_unit(n * each, cubic)
                .hint(m.say("hint-unit"))
                .hint(m.say("hint-fit"))
                .step(m.say("step-larger").count("edge", edge).math(
                    "work",
                    equal(product([num(edge), num(edge), num(edge)]), num(each)),
                ))
                .step(equal(product([num(n), num(each)]), num(n * each)))
                .misconception("larger-cubes-counted-as-unit", whole(n))
                .misconception("area-of-a-face-for-volume", whole(n * edge * edge)),
        );
    }
    Some(
        Draft::new(
            json!({"task": "row_of_unit_cubes", "cubes": n, "edge": 1, "unit": super::units::name(cubic)}),
        )
        .ask(if n == 1 {
            m.say("ask-one").math("side", measure(1, length))
        } else {
            m.say(if tower { "ask-tower" } else { "ask-row" })
                .count("n", n)
                .math("side", measure(1, length))
        })
        .ask(if tower {
            cubes(1, 1, n, true)
        } else {
            cubes(n, 1, 1, true)
        })
        .one_of(
            &mut m.dice,
            measure(n, cubic),
            vec![
                ("area-unit-for-volume", measure(n, square).into()),
                ("length-unit-for-volume", measure(n, length).into()),
                ("faces-counted-for-volume", measure(4 * n + 2, cubic).into()),
            ],
        )
        .hint(m.say("hint-unit"))
        .hint(m.say("hint-count"))
        .step(m.say("hint-unit"))
        .step(m.say("step-count").math("volume", measure(n, cubic))),
    )
}

fn pack(m: &mut Make) -> Option<Draft> {
    let a = m.dice.from(m.level.pick(8..=24, 18..=60, 36..=120));
    let b = m.dice.from(m.level.pick(2..=6, 4..=12, 6..=24));
    let gaps = m.dice.one_in(2);
    let name = m.dice.name();
    if m.level != crate::Level::Entry {
        // Cubes that stick out of the top, and room that is left.
        let c = m.dice.from(m.level.pick(2..=6, 2..=8, 4..=15));
        keep(b != c)?;
        return Some(
            Draft::new(json!({"task": "cover_with_both", "squares": a, "on_top": b, "gaps": c}))
                .ask(
                    m.say("ask-both")
                        .text("name", name)
                        .count("a", a)
                        .count("b", b)
                        .count("c", c),
                )
                .whole_unit(a - b + c, "unit-cubic-units")
                .hint(m.say("hint-rule"))
                .hint(m.say("hint-both"))
                .step(equal(crate::expr::difference(num(a), num(b)), num(a - b)))
                .step(equal(sum([num(a - b), num(c)]), num(a - b + c)))
                .misconception("gaps-not-counted", whole(a - b))
                .misconception("cubes-outside-counted", whole(a + c)),
        );
    }
    let draft = Draft::new(json!({"task": if gaps { "cover_with_gaps" } else { "pack_and_take_out" }, "squares": a, "other": b}))
        .ask(m.say(if gaps { "ask-gaps" } else { "ask-out" }).text("name", name).count("a", a).count("b", b))
        .whole_unit(if gaps { a + b } else { a - b }, "unit-cubic-units")
        .hint(m.say("hint-rule"))
        .hint(m.say(if gaps { "hint-gaps" } else { "hint-out" }))
        .step(m.say(if gaps { "hint-gaps" } else { "hint-out" }))
        .step(if gaps { equal(sum([num(a), num(b)]), num(a + b)) } else { equal(crate::expr::difference(num(a), num(b)), num(a - b)) });
    Some(if gaps {
        draft
            .misconception("gaps-not-counted", whole(a))
            .misconception("gaps-taken-away", whole(a - b))
    } else {
        draft
            .misconception("added-instead", whole(a + b))
            .misconception("first-amount-as-answer", whole(a))
    })
}

fn count(m: &mut Make) -> Option<Draft> {
    let (w, d, h) = (
        m.dice.from(m.level.pick(2..=5, 2..=6, 3..=7)),
        m.dice.from(m.level.pick(2..=4, 2..=5, 3..=6)),
        m.dice.from(m.level.pick(2..=4, 2..=5, 3..=6)),
    );
    keep(!(w == d && d == h))?;
    let visible = w * h + d * h + w * d;
    keep(visible != w * d * h)?;
    Some(
        Draft::new(json!({"task": "box_volume", "edges": [w, d, h]}))
            .ask(m.wording("ask", 2))
            .ask(cubes(w, d, h, true))
            .whole_unit(w * d * h, "unit-cubic-units")
            .hint(m.say("hint-layer"))
            .hint(m.say("hint-layers").count("layers", h))
            .step(
                m.say("step-layer")
                    .math("work", equal(product([num(w), num(d)]), num(w * d))),
            )
            .step(
                m.say("step-layers")
                    .math("work", equal(product([num(h), num(w * d)]), num(w * d * h))),
            )
            .misconception("counted-visible-faces", whole(visible))
            .misconception("one-layer-only", whole(w * d)),
    )
}

fn box_volume(m: &mut Make) -> Option<Draft> {
    let (w, d, h) = (
        m.dice.from(m.level.pick(2..=6, 3..=9, 4..=12)),
        m.dice.from(m.level.pick(2..=6, 2..=8, 3..=12)),
        m.dice.from(m.level.pick(2..=6, 2..=8, 3..=10)),
    );
    let surface = 2 * (w * d + d * h + w * h);
    keep(surface != w * d * h && w + d + h != w * d * h && !(w == d && d == h))?;
    Some(
        Draft::new(json!({"task": "box_volume", "edges": [w, d, h]}))
            .ask(m.say("ask"))
            .ask(cubes(w, d, h, false))
            .whole_unit(w * d * h, "unit-cubic-units")
            .hint(m.say("hint-base"))
            .hint(
                m.say("hint-work")
                    .math("work", product([num(w), num(d), num(h)])),
            )
            .step(
                m.say("step-base")
                    .math("work", equal(product([num(w), num(d)]), num(w * d))),
            )
            .step(
                m.say("step-height")
                    .math("work", equal(product([num(w * d), num(h)]), num(w * d * h))),
            )
            .misconception("added-edges", whole(w + d + h))
            .misconception("one-layer-only", whole(w * d))
            .misconception("surface-for-volume", whole(surface)),
    )
}

fn rules(m: &mut Make) -> Option<Draft> {
    let base = m.dice.from(m.level.pick(6..=30, 12..=60, 18..=90));
    let h = m.dice.from(m.level.pick(2..=9, 3..=12, 4..=15));
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    Some(match kind {
        1 => Draft::new(json!({"task": "volume_from_base", "base_area": base, "height": h}))
            .ask(m.say("ask-volume").count("base", base).count("height", h))
            .whole_unit(base * h, "unit-cubic-cm")
            .hint(m.say("hint-base"))
            .hint(
                m.say("hint-work")
                    .math("work", product([num(base), num(h)])),
            )
            .step(m.say("hint-base"))
            .step(equal(product([num(base), num(h)]), num(base * h)))
            .misconception("added-instead-of-multiplied", whole(base + h))
            .misconception("height-squared", whole(base * h * h)),
        2 => {
            Draft::new(json!({"task": "height_from_volume", "volume": base * h, "base_area": base}))
                .ask(
                    m.say("ask-height")
                        .count("volume", base * h)
                        .count("base", base),
                )
                .whole_unit(h, "unit-cm")
                .hint(m.say("hint-base"))
                .hint(m.say("hint-work").math(
                    "work",
                    equal(product([num(base), Expr::Blank]), num(base * h)),
                ))
                .step(m.say("step-divide"))
                .step(equal(quotient(num(base * h), num(base)), num(h)))
                .misconception("subtracted-instead-of-divided", whole(base * h - base))
                .misconception("fact-one-off", whole(h + 1))
        }
        _ => {
            let (w, d) = (m.dice.from(3..=12), m.dice.from(2..=9));
            keep(w != d && h != w)?;
            Draft::new(json!({"task": "edge_from_volume", "volume": w * d * h, "edges": [w, d]}))
                .ask(
                    m.say("ask-edge")
                        .count("volume", w * d * h)
                        .count("width", w)
                        .count("depth", d),
                )
                .whole_unit(h, "unit-cm")
                .hint(m.say("hint-base"))
                .hint(m.say("hint-work").math(
                    "work",
                    equal(product([num(w), num(d), Expr::Blank]), num(w * d * h)),
                ))
                .step(equal(product([num(w), num(d)]), num(w * d)))
                .step(equal(quotient(num(w * d * h), num(w * d)), num(h)))
                .misconception("divided-by-one-edge-only", whole(d * h))
                .misconception("stopped-after-one-step", whole(w * d))
        }
    })
}

fn add(m: &mut Make) -> Option<Draft> {
    let (w, d, h) = (
        m.dice.from(m.level.pick(3..=5, 4..=8, 5..=10)),
        m.dice.from(m.level.pick(2..=3, 2..=5, 3..=6)),
        m.dice.from(m.level.pick(1..=2, 2..=4, 2..=5)),
    );
    let (w2, h2) = (
        m.dice.from(1..=w - 2),
        m.dice.from(m.level.pick(1..=3, 2..=4, 2..=6)),
    );
    keep(w2 != w && w2 * d * h2 != w * d * h && h2 + h != h * w2)?;
    let (one, two) = (w * d * h, w2 * d * h2);
    let big = |x: u32, width: i64, z: i64, height: i64| CubeBox {
        x,
        y: 0,
        z: z as u32,
        width: width as u32,
        depth: d as u32,
        height: height as u32,
    };
    let solid = figure(
        Drawing::UnitCubes(UnitCubes {
            boxes: vec![big(0, w, 0, h), big(0, w2, h, h2)],
            show_cubes: false,
            labels: vec![
                [Some(num(w)), Some(num(d)), Some(num(h))],
                [Some(num(w2)), None, Some(num(h2))],
            ],
        }),
        m.say("solid")
            .count("w", w)
            .count("d", d)
            .count("h", h)
            .count("w2", w2)
            .count("h2", h2),
    );
    Some(
        Draft::new(json!({"task": "two_boxes", "lower": [w, d, h], "upper": [w2, d, h2]}))
            .ask(m.say("ask"))
            .ask(solid)
            .whole_unit(one + two, "unit-cubic-units")
            .hint(m.say("hint-two"))
            .hint(
                m.say("hint-lower")
                    .math("work", product([num(w), num(d), num(h)])),
            )
            .step(
                m.say("step-lower")
                    .math("work", equal(product([num(w), num(d), num(h)]), num(one))),
            )
            .step(
                m.say("step-upper")
                    .math("work", equal(product([num(w2), num(d), num(h2)]), num(two))),
            )
            .step(equal(sum([num(one), num(two)]), num(one + two)))
            .misconception("one-part-only", whole(one))
            .misconception("whole-box-counted", whole(w * d * (h + h2))),
    )
}
