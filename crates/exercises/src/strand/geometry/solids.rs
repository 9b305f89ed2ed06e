//! Area of triangles and other polygons, volume with fraction edges, surface area.

use crate::decimal::Dec;
use crate::draw::{at, polygon_with_lines};
use crate::expr::{equal, frac, mixed as mixed_expr, num, product, quotient, sum};
use crate::figure::{Drawing, InnerLine, Net, NetFace};
use crate::make::{Draft, Generator, Make, decimal, figure, keep, mixed, whole};
use num_integer::gcd;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-area-triangle", 3, triangle),
    Generator::new("g6-area-polygons", 3, polygons),
    Generator::new("g6-volume-fraction-edges", 3, fraction_volume),
    Generator::new("g6-surface-area", 3, surface),
];

fn triangle(m: &mut Make) -> Option<Draft> {
    let (b, h) = (
        m.dice.from(m.level.pick(2..=8, 3..=15, 5..=24)),
        m.dice.from(m.level.pick(2..=8, 3..=12, 4..=20)),
    );
    let lean = m.dice.from(1..=b - 1);
    keep(b != h && m.level.pick((b * h) % 2 == 0, true, (b * h) % 2 == 1) && b + h != b * h)?;
    let area = Dec::exact(Ratio::new(b * h, 2))?;
    let find_height = m.level == crate::Level::Stretch && m.dice.one_in(2);
    let line = InnerLine {
        from: at(lean, 0),
        to: at(lean, h),
        label: (!find_height).then(|| num(h)),
        dashed: true,
    };
    let figure = polygon_with_lines(
        vec![at(0, 0), at(b, 0), at(lean, h)],
        vec![Some(num(b)), None, None],
        vec![line],
        if find_height {
            m.say("triangle-base").count("b", b)
        } else {
            m.say("triangle").count("b", b).count("h", h)
        },
    );
    let draft = if find_height {
        Draft::new(json!({"task": "triangle_height", "area": area.to_string(), "base": b}))
            .ask(m.say("ask-height").number("area", area).count("b", b))
            .ask(figure)
            .decimal(Dec::new(h, 0))
            .step(equal(product([num(2), num(area)]), num(b * h)))
            .step(equal(quotient(num(b * h), num(b)), num(h)))
            .misconception(
                "triangle-not-halved",
                decimal(Dec::exact(area.ratio() / b)?),
            )
            .misconception(
                "multiplied-all-numbers",
                decimal(Dec::exact(area.ratio() * b)?),
            )
    } else {
        Draft::new(json!({"task": "triangle_area", "base": b, "height": h}))
            .ask(m.say("ask"))
            .ask(figure)
            .decimal_unit(area, "unit-square-units")
            .step(equal(product([num(b), num(h)]), num(b * h)))
            .step(equal(quotient(num(b * h), num(2)), num(area)))
            .misconception("triangle-not-halved", decimal(Dec::new(b * h, 0)))
            .misconception("added-sides", decimal(Dec::new(b + h, 0)))
    };
    Some(draft.hint(m.say("hint-half")).hint(m.say("hint-rule")))
}

fn polygons(m: &mut Make) -> Option<Draft> {
    let (b, h) = (
        m.dice.from(m.level.pick(4..=10, 5..=14, 6..=20)),
        m.dice.from(m.level.pick(2..=7, 3..=10, 4..=12)),
    );
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    let slant = m.dice.from(1..=3);
    keep(b != h && b > slant + 2)?;
    let height = |x: i64| InnerLine {
        from: at(x, 0),
        to: at(x, h),
        label: Some(num(h)),
        dashed: true,
    };
    Some(match kind {
        1 => {
            // A side of a known length: slant and height of a 3-4-5 shape, or just drawn.
            let side = h + slant;
            Draft::new(json!({"task": "parallelogram_area", "base": b, "height": h, "side": side}))
                .ask(m.say("ask"))
                .ask(polygon_with_lines(
                    vec![at(0, 0), at(b, 0), at(b + slant, h), at(slant, h)],
                    vec![Some(num(b)), Some(num(side)), None, None],
                    vec![height(slant)],
                    m.say("parallelogram")
                        .count("b", b)
                        .count("h", h)
                        .count("side", side),
                ))
                .whole_unit(b * h, "unit-square-units")
                .hint(m.say("hint-move"))
                .hint(m.say("hint-upright"))
                .step(m.say("hint-move"))
                .step(equal(product([num(b), num(h)]), num(b * h)))
                .misconception("slanted-side-for-height", whole(b * side))
                .misconception("perimeter-for-area", whole(2 * (b + side)))
        }
        2 => {
            let top = m.dice.from(2..=b - slant);
            keep((b + top) * h % 2 == 0 && top != b)?;
            let area = (b + top) * h / 2;
            Draft::new(json!({"task": "trapezoid_area", "bases": [b, top], "height": h}))
                .ask(m.say("ask"))
                .ask(polygon_with_lines(
                    vec![at(0, 0), at(b, 0), at(slant + top, h), at(slant, h)],
                    vec![Some(num(b)), None, Some(num(top)), None],
                    vec![height(slant)],
                    m.say("trapezoid")
                        .count("b", b)
                        .count("top", top)
                        .count("h", h),
                ))
                .whole_unit(area, "unit-square-units")
                .hint(m.say("hint-two-triangles"))
                .hint(m.say("hint-trapezoid"))
                .step(equal(sum([num(b), num(top)]), num(b + top)))
                .step(equal(
                    quotient(product([num(b + top), num(h)]), num(2)),
                    num(area),
                ))
                .misconception("trapezoid-not-halved", whole((b + top) * h))
                .misconception("one-base-only", whole(b * h))
        }
        _ => {
            // A rectangle with a triangle on top.
            let roof = m.dice.from(2..=8);
            keep(b * roof % 2 == 0 && roof != h)?;
            let area = b * h + b * roof / 2;
            Draft::new(json!({"task": "house_area", "width": b, "wall": h, "roof": roof}))
                .ask(m.say("ask"))
                .ask(polygon_with_lines(
                    vec![at(0, 0), at(b, 0), at(b, h), at(b / 2, h + roof), at(0, h)],
                    vec![Some(num(b)), Some(num(h)), None, None, None],
                    vec![
                        InnerLine {
                            from: at(0, h),
                            to: at(b, h),
                            label: None,
                            dashed: true,
                        },
                        InnerLine {
                            from: at(b / 2, h),
                            to: at(b / 2, h + roof),
                            label: Some(num(roof)),
                            dashed: true,
                        },
                    ],
                    m.say("house")
                        .count("b", b)
                        .count("h", h)
                        .count("roof", roof),
                ))
                .whole_unit(area, "unit-square-units")
                .hint(m.say("hint-parts"))
                .hint(m.say("hint-roof"))
                .step(equal(product([num(b), num(h)]), num(b * h)))
                .step(equal(
                    quotient(product([num(b), num(roof)]), num(2)),
                    num(b * roof / 2),
                ))
                .step(equal(sum([num(b * h), num(b * roof / 2)]), num(area)))
                .misconception("triangle-not-halved", whole(b * h + b * roof))
                .misconception("one-part-only", whole(b * h))
        }
    })
}

fn fraction_volume(m: &mut Make) -> Option<Draft> {
    let edge = |m: &mut Make, whole_part: i64| -> Option<(i64, i64, i64)> {
        let bottom = m.dice.from(2..=m.level.pick(4, 6, 8));
        let top = m.dice.from(1..=bottom - 1);
        keep(gcd(top, bottom) == 1)?;
        Some((whole_part, top, bottom))
    };
    let (w1, w2) = m.level.pick(
        (0, 0),
        (0, m.dice.from(0..=2)),
        (m.dice.from(1..=2), m.dice.from(1..=3)),
    );
    let (a, b) = (edge(m, w1)?, edge(m, w2)?);
    let c = m.dice.from(2..=m.level.pick(6, 8, 9));
    let ratio = |e: (i64, i64, i64)| Ratio::from(e.0) + Ratio::new(e.1, e.2);
    let shown = |e: (i64, i64, i64)| {
        if e.0 == 0 {
            frac(e.1, e.2)
        } else {
            mixed_expr(e.0, e.1, e.2)
        }
    };
    let text = |e: (i64, i64, i64)| {
        if e.0 == 0 {
            format!("{}/{}", e.1, e.2)
        } else {
            format!("{} {}/{}", e.0, e.1, e.2)
        }
    };
    let value = ratio(a) * ratio(b) * c;
    let added = ratio(a) + ratio(b) + c;
    Some(
        Draft::new(json!({"task": "fraction_box", "edges": [text(a), text(b), c.to_string()]}))
            .ask(
                m.say("ask")
                    .math("a", shown(a))
                    .math("b", shown(b))
                    .count("c", c),
            )
            .mixed(value)
            .hint(m.say("hint-multiply"))
            .hint(
                m.say("hint-work")
                    .math("work", product([shown(a), shown(b), num(c)])),
            )
            .step(equal(
                product([shown(a), shown(b)]),
                crate::expr::rational(ratio(a) * ratio(b), true),
            ))
            .step(equal(
                product([crate::expr::rational(ratio(a) * ratio(b), true), num(c)]),
                crate::expr::rational(value, true),
            ))
            .misconception("added-edges", mixed(added))
            .misconception("base-area-for-volume", mixed(ratio(a) * ratio(b))),
    )
}

fn surface(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(5) {
        return super::drawn::solid_of_net(m);
    }
    let (w, d, h) = (
        m.dice.from(m.level.pick(2..=6, 2..=7, 3..=9)),
        m.dice.from(m.level.pick(2..=5, 2..=6, 2..=8)),
        m.dice.from(m.level.pick(2..=6, 2..=8, 3..=10)),
    );
    if m.level == crate::Level::Stretch && m.dice.one_in(2) {
        // A pyramid on a square base: base and four triangles.
        let (b, s) = (2 * m.dice.from(2..=6), m.dice.from(4..=12));
        keep(s > b / 2 && s != b)?;
        let tri = |corners| NetFace {
            corners,
            side_labels: vec![None; 3],
        };
        let net = Net {
            faces: vec![
                NetFace {
                    corners: vec![at(0, 0), at(b, 0), at(b, b), at(0, b)],
                    side_labels: vec![Some(num(b)), None, None, None],
                },
                tri(vec![at(0, 0), at(b, 0), at(b / 2, -s)]),
                tri(vec![at(b, 0), at(b, b), at(b + s, b / 2)]),
                tri(vec![at(b, b), at(0, b), at(b / 2, b + s)]),
                tri(vec![at(0, b), at(0, 0), at(-s, b / 2)]),
            ],
        };
        let value = b * b + 2 * b * s;
        return Some(
            Draft::new(json!({"task": "pyramid_surface", "base_edge": b, "triangle_height": s}))
                .ask(m.say("ask-pyramid").count("b", b).count("s", s))
                .ask(figure(
                    Drawing::Net(net),
                    m.say("net-pyramid").count("b", b),
                ))
                .whole_unit(value, "unit-square-units")
                .hint(m.say("hint-faces"))
                .hint(m.say("hint-triangles"))
                .step(
                    m.say("step-base")
                        .math("work", equal(product([num(b), num(b)]), num(b * b))),
                )
                .step(m.say("step-triangles").math(
                    "work",
                    equal(
                        product([num(4), quotient(product([num(b), num(s)]), num(2))]),
                        num(2 * b * s),
                    ),
                ))
                .step(equal(sum([num(b * b), num(2 * b * s)]), num(value)))
                .misconception("triangle-not-halved", whole(b * b + 4 * b * s))
                .misconception("one-triangle-only", whole(b * b + b * s / 2)),
        );
    }
    keep(!(w == d && d == h))?;
    let value = 2 * (w * d + w * h + d * h);
    keep(value != w * d * h && w * d + w * h + d * h != w * d * h)?;
    let rect = |x: i64, y: i64, across: i64, up: i64, labels: [bool; 2]| NetFace {
        corners: vec![
            at(x, y),
            at(x + across, y),
            at(x + across, y + up),
            at(x, y + up),
        ],
        side_labels: vec![
            labels[0].then(|| num(across)),
            labels[1].then(|| num(up)),
            None,
            None,
        ],
    };
    let net = Net {
        faces: vec![
            rect(d, d, w, h, [false, false]),
            rect(d, 0, w, d, [true, true]),
            rect(d, d + h, w, d, [false, false]),
            rect(0, d, d, h, [false, false]),
            rect(d + w, d, d, h, [false, false]),
            rect(2 * d + w, d, w, h, [false, true]),
        ],
    };
    Some(
        Draft::new(json!({"task": "box_surface", "edges": [w, d, h]}))
            .ask(m.say("ask-box").count("w", w).count("d", d).count("h", h))
            .ask(figure(
                Drawing::Net(net),
                m.say("net-box").count("w", w).count("d", d).count("h", h),
            ))
            .whole_unit(value, "unit-square-units")
            .hint(m.say("hint-faces"))
            .hint(m.say("hint-pairs"))
            .step(equal(product([num(2), num(w), num(d)]), num(2 * w * d)))
            .step(equal(product([num(2), num(w), num(h)]), num(2 * w * h)))
            .step(equal(product([num(2), num(d), num(h)]), num(2 * d * h)))
            .step(equal(
                sum([num(2 * w * d), num(2 * w * h), num(2 * d * h)]),
                num(value),
            ))
            .misconception("volume-for-surface", whole(w * d * h))
            .misconception("three-faces-only", whole(value / 2)),
    )
}
