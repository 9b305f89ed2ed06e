//! Families of shapes, equal parts, fold lines.

use super::drawn::{no_named_family, symmetry_lines};
use crate::draw::{at, circle, polygon, polygon_with_lines, strip};
use crate::expr::{equal, frac, num, product, quotient};
use crate::figure::{Figure, Point};
use crate::make::{Draft, Generator, Make, fraction, keep, says, several, whole};
use crate::say::Say;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-shape-families", 3, families),
    Generator::new("g3-shape-equal-parts", 5, equal_parts),
    Generator::new("g4-classify-shapes", 3, classify),
    Generator::new("g4-symmetry", 3, symmetry),
];

/// Four-sided shapes: name, equal sides all round, four right angles, pairs of parallel sides.
const QUADS: [(&str, bool, bool, u8); 5] = [
    ("shape-square", true, true, 2),
    ("shape-rectangle", false, true, 2),
    ("shape-rhombus", true, false, 2),
    ("shape-parallelogram", false, false, 2),
    ("shape-trapezoid", false, false, 1),
];

fn quad(name: &str, size: i64) -> Vec<Point> {
    let n = size;
    match name {
        "shape-square" => vec![at(0, 0), at(2 * n, 0), at(2 * n, 2 * n), at(0, 2 * n)],
        "shape-rectangle" => vec![at(0, 0), at(3 * n, 0), at(3 * n, 2 * n), at(0, 2 * n)],
        // Sides (3, 4)·n and 5·n long: all five.
        "shape-rhombus" => vec![at(0, 0), at(5 * n, 0), at(8 * n, 4 * n), at(3 * n, 4 * n)],
        "shape-parallelogram" => vec![at(0, 0), at(5 * n, 0), at(6 * n, 2 * n), at(n, 2 * n)],
        _ => vec![at(0, 0), at(6 * n, 0), at(4 * n, 2 * n), at(n, 2 * n)],
    }
}

fn figure(name: &'static str, size: i64) -> Figure {
    polygon(
        quad(name, size),
        vec![None; 4],
        if matches!(name, "shape-square" | "shape-rectangle") {
            vec![0, 1, 2, 3]
        } else {
            Vec::new()
        },
        Say::new("shape-figure").word("shape", name),
    )
}

/// A message id without its first word: `shape-square` is a `square`.
pub(super) fn kind_of(id: &str) -> &str {
    id.split_once('-').map_or(id, |(_, kind)| kind)
}

/// What can be said of a four-sided shape, as (message id, holds).
fn facts(quad: (&'static str, bool, bool, u8)) -> [(&'static str, bool); 4] {
    [
        ("fact-equal-sides", quad.1),
        ("fact-right-angles", quad.2),
        ("fact-two-parallel-pairs", quad.3 == 2),
        ("fact-one-parallel-pair", quad.3 == 1),
    ]
}

/// Shapes laid with sticks, a stick for each side.
fn sticks_for_shapes(m: &mut Make) -> Option<Draft> {
    let (name, sides) = m.dice.pick(&[
        ("shape-triangle", 3),
        ("shape-quadrilateral", 4),
        ("shape-pentagon", 5),
        ("shape-hexagon", 6),
        ("shape-octagon", 8),
        ("shape-rhombus", 4),
    ]);
    let n = m.dice.from(2..=6);
    keep(n != sides)?;
    Some(
        Draft::new(json!({"task": "sticks_for_shapes", "shape": kind_of(name), "count": n}))
            .ask(
                m.say("ask-sticks")
                    .text("name", m.dice.name())
                    .word("shape", name)
                    .count("n", n),
            )
            .whole(n * sides)
            .hint(m.say("hint-walk"))
            .hint(m.say("hint-sticks"))
            .step(m.say("step-count").word("shape", name).count("n", sides))
            .step(equal(product([num(n), num(sides)]), num(n * sides)))
            .misconception("one-side-too-few", whole(n * (sides - 1)))
            .misconception_unless_same("added-instead-of-multiplied", whole(n + sides)),
    )
}

fn families(m: &mut Make) -> Option<Draft> {
    if m.level != crate::Level::Entry && m.dice.one_in(4) {
        return no_named_family(m);
    }
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    if kind == 1 && m.dice.one_in(2) {
        return sticks_for_shapes(m);
    }
    if kind == 1 {
        // How many sides or corners a shape has.
        let (name, sides) = m.dice.pick(&[
            ("shape-triangle", 3),
            ("shape-quadrilateral", 4),
            ("shape-pentagon", 5),
            ("shape-hexagon", 6),
            ("shape-octagon", 8),
            ("shape-square", 4),
            ("shape-rectangle", 4),
            ("shape-rhombus", 4),
        ]);
        let corners = m.dice.one_in(2);
        return Some(
            Draft::new(json!({"task": "side_count", "shape": kind_of(name), "count": if corners { "corners" } else { "sides" }}))
                .ask(m.say(if corners { "ask-corners" } else { "ask-sides" }).word("shape", name))
                .whole(sides)
                .hint(m.say("hint-walk"))
                .hint(m.say("hint-same"))
                .step(m.say("hint-same"))
                .step(m.say("step-count").word("shape", name).count("n", sides))
                .misconception("one-side-too-few", whole(sides - 1))
                .misconception("one-side-too-many", whole(sides + 1)),
        );
    }
    let shape = m.dice.pick(&QUADS);
    if kind == 2 {
        let families: [(&'static str, bool); 4] = [
            ("family-quadrilateral", true),
            ("family-rectangle", shape.2),
            ("family-rhombus", shape.1),
            ("family-triangle", false),
        ];
        let right = families.iter().filter(|(_, fits)| *fits).count();
        let size = m.dice.from(1..=3);
        let answer = |chosen: &dyn Fn(u32, bool) -> bool| crate::Answer::SeveralChoices {
            indexes: (0..)
                .zip(families)
                .filter(|(i, (_, fits))| chosen(*i, *fits))
                .map(|(i, _)| i)
                .collect(),
        };
        let draft = Draft::new(json!({"task": "families_of", "shape": kind_of(shape.0)}))
            .ask(m.say("ask-families").word("shape", shape.0))
            .ask(figure(shape.0, size))
            .all_of(
                families
                    .iter()
                    .map(|(id, fits)| (*fits, says(id)))
                    .collect(),
            )
            .hint(m.say("hint-rectangle"))
            .hint(m.say("hint-rhombus"))
            .step(m.say("hint-rectangle"))
            .step(m.say("hint-rhombus"))
            .step(m.say("step-quadrilateral"));
        return Some(
            draft
                .misconception_if(right > 1, "only-one-family", answer(&|i, _| i == 0))
                .misconception_if(
                    right == 1,
                    "all-four-sided-shapes-are-rectangles",
                    answer(&|i, _| i <= 1),
                )
                .misconception(
                    "family-of-four-sides-left-out",
                    if right > 1 {
                        answer(&|i, fits| i > 0 && fits)
                    } else {
                        answer(&|i, _| i == 3)
                    },
                ),
        );
    }
    // All, some or none of a family's shapes belong to another family.
    let (inside, outside, right) = m.dice.pick(&[
        ("shape-square", "family-rectangle", 0),
        ("shape-square", "family-rhombus", 0),
        ("shape-square", "family-quadrilateral", 0),
        ("shape-rhombus", "family-quadrilateral", 0),
        ("shape-rectangle", "family-quadrilateral", 0),
        ("shape-rhombus", "family-rectangle", 1),
        ("shape-rectangle", "family-rhombus", 1),
        ("shape-parallelogram", "family-rectangle", 1),
        ("shape-parallelogram", "family-rhombus", 1),
        ("shape-quadrilateral", "family-rectangle", 1),
        ("shape-triangle", "family-rectangle", 2),
        ("shape-triangle", "family-quadrilateral", 2),
        ("shape-pentagon", "family-rhombus", 2),
        ("shape-hexagon", "family-quadrilateral", 2),
        ("shape-square", "family-triangle", 2),
    ]);
    let codes = match right {
        0 => ["", "square-left-out-of-family", "square-left-out-of-family"],
        1 => ["family-too-wide", "", "family-too-narrow"],
        _ => [
            "number-of-sides-not-checked",
            "number-of-sides-not-checked",
            "",
        ],
    };
    let choices = ["shape-all", "shape-some", "shape-none"];
    Some(
        Draft::new(
            json!({"task": "how_many_in_family", "shape": kind_of(inside), "family": kind_of(outside)}),
        )
        .ask(
            m.wording("ask-belongs", 2)
                .word("shape", inside)
                .word("family", outside),
        )
        .one_of_listed(codes.into_iter().zip(choices.map(says)).collect(), right)
        .hint(m.say("hint-rectangle"))
        .hint(m.say("hint-rhombus"))
        .step(m.say("step-quadrilateral"))
        .step(m.say(["step-belongs", "step-some", "step-not"].get(right)?)),
    )
}

/// Where to cut a bar of squares into equal parts.
fn cut_positions(m: &mut Make) -> Option<Draft> {
    let parts = m.level.pick(
        m.dice.pick(&[2, 3]),
        m.dice.pick(&[3, 4]),
        m.dice.pick(&[3, 4, 6]),
    );
    let each = m.dice.from(2..=m.level.pick(6, 6, 4));
    let length = parts * each;
    let cuts = |size: i64| (1..parts).map(|n| n * size).collect::<Vec<_>>();
    let fields = (1..parts)
        .map(|n| m.say("field-cut").count("n", n))
        .collect();
    keep(each != parts)?;
    Some(
        Draft::new(json!({"task": "cut_positions", "length": length, "parts": parts}))
            .ask(
                m.say("ask-cut")
                    .count("length", length)
                    .count("parts", parts),
            )
            .ask(strip(length, 0))
            .several(fields, cuts(each))
            .hint(m.say("hint-share").count("parts", parts))
            .hint(m.say("hint-cut-on"))
            .step(equal(quotient(num(length), num(parts)), num(each)))
            .step(m.say("step-cuts").numbers("cuts", cuts(each)))
            .misconception("number-of-parts-as-size", several(cuts(parts)))
            .misconception("cut-parts-not-equal", several(cuts(each - 1))),
    )
}

fn equal_parts(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(3) {
        return cut_positions(m);
    }
    let parts = m.dice.pick(&[2, 3, 4, 6, 8]);
    let round = m.dice.one_in(2);
    let figure = if round {
        circle(parts, 1)
    } else {
        strip(parts, 1)
    };
    let kind = m
        .level
        .pick(m.dice.from(1..=2), m.dice.from(1..=2), m.dice.from(2..=3));
    let shape = if round { "shape-circle" } else { "shape-bar" };
    let mut all = parts;
    let part_ask = m.wording("ask-part", 3);
    let again_ask = m.wording("ask-again", 2);
    let many_ask = m.wording("ask-how-many", 3);
    let draft = match kind {
        1 => Draft::new(json!({"task": "shaded_of_parts", "parts": parts, "shaded": 1}))
            .ask(part_ask)
            .ask(figure)
            .fraction(1, parts)
            .misconception("fraction-turned-over", fraction(parts, 1))
            .misconception("part-to-part", fraction(1, parts - 1)),
        2 => Draft::new(json!({"task": "parts_for_unit", "fraction": format!("1/{parts}"), "shape": kind_of(shape)}))
            .ask(many_ask.math("fraction", frac(1, parts)).word("shape", shape))
            .whole(parts)
            .misconception("cuts-counted-not-parts", whole(parts - 1))
            .misconception("parts-doubled", whole(parts * 2)),
        _ => {
            let first = m.dice.pick(&[2, 3, 4]);
            let again = 2;
            let total = first * again;
            keep([4, 6, 8].contains(&total))?;
            all = total;
            Draft::new(json!({"task": "parts_cut_again", "parts": first, "each_into": again, "shape": kind_of(shape)}))
                .ask(again_ask.count("parts", first).count("again", again).word("shape", shape))
                .fraction(1, total)
                .misconception_if(
                    first + again != total,
                    "cut-parts-added",
                    fraction(1, first + again),
                )
                .misconception("second-cut-only", fraction(1, again))
        }
    };
    keep(kind != 1 || parts > 2)?;
    Some(
        draft
            .hint(m.say("hint-equal"))
            .hint(m.say("hint-one"))
            .step(m.say("hint-equal"))
            .step(
                m.say("step-one")
                    .count("parts", all)
                    .math("fraction", frac(1, all)),
            ),
    )
}

fn classify(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(2) {
        // A triangle by its angles.
        let kind = m.dice.from(0..=2) as usize;
        let a = m.dice.from(20..=70);
        let (b, c) = match kind {
            0 => (90, 90 - a),
            1 => {
                let b = m.dice.from(95..=130);
                (b, 180 - a - b)
            }
            _ => {
                let b = m.dice.from(91 - a..=89);
                (b, 180 - a - b)
            }
        };
        keep(c > 9 && b > 0 && (kind != 2 || (c < 90 && a < 90)))?;
        let mut angles = vec![a, b, c];
        m.dice.shuffle(&mut angles);
        return Some(
            Draft::new(json!({"task": "triangle_by_angles", "angles": angles}))
                .ask(m.say("ask-triangle").numbers("angles", &angles))
                .one_of_listed(
                    vec![
                        ("largest-angle-misjudged", says("triangle-right")),
                        ("largest-angle-misjudged", says("triangle-obtuse")),
                        ("small-angles-decide", says("triangle-acute")),
                    ],
                    kind,
                )
                .hint(m.say("hint-largest"))
                .hint(m.say("hint-ninety"))
                .step(
                    m.say("step-largest")
                        .count("angle", angles.iter().copied().max()?),
                )
                .step(m.say(["step-right", "step-obtuse", "step-acute"].get(kind)?)),
        );
    }
    let shape = m.dice.pick(&QUADS);
    let size = m.dice.from(1..=3);
    let all = facts(shape);
    keep(m.level != crate::Level::Entry || shape.3 == 2)?;
    let answer = |chosen: &dyn Fn(u32, bool) -> bool| crate::Answer::SeveralChoices {
        indexes: (0..)
            .zip(all)
            .filter(|(i, (_, holds))| chosen(*i, *holds))
            .map(|(i, _)| i)
            .collect(),
    };
    let right = all.iter().filter(|(_, holds)| *holds).count();
    let (first_right, _) = (0..).zip(all).find(|(_, (_, holds))| *holds)?;
    let mut draft = Draft::new(json!({"task": "facts_of_shape", "shape": kind_of(shape.0)}))
        .ask(m.say("ask-facts").word("shape", shape.0))
        .ask(figure(shape.0, size))
        .all_of(all.iter().map(|(id, holds)| (*holds, says(id))).collect())
        .hint(m.say("hint-parallel"))
        .hint(m.say("hint-sides"))
        .step(m.say("hint-parallel"))
        .step(m.say("step-shape").word("shape", shape.0));
    for (id, _) in all.into_iter().filter(|(_, holds)| *holds) {
        draft = draft.step(m.say("step-true").word("fact", id));
    }
    Some(
        draft
            .misconception_if(
                right > 1,
                "one-property-only",
                answer(&|i, _| i == first_right),
            )
            .misconception_if(
                right == 1,
                "slanted-sides-taken-as-equal",
                answer(&|i, _| i == first_right || i == 0),
            )
            .misconception(
                "parallel-pairs-miscounted",
                // The last two properties count the parallel pairs.
                answer(&|i, holds| if i >= 2 { !holds } else { holds }),
            ),
    )
}

/// Shapes with their number of lines of symmetry.
const FOLDS: [(&str, i64); 8] = [
    ("shape-square", 4),
    ("shape-rectangle", 2),
    ("shape-rhombus", 2),
    ("shape-parallelogram", 0),
    ("fold-equilateral", 3),
    ("fold-isosceles", 1),
    ("fold-pentagon", 5),
    ("fold-hexagon", 6),
];

fn fold_corners(name: &str) -> Vec<Point> {
    match name {
        // Coordinates in hundredths of the radius, near enough for a drawing.
        "fold-equilateral" => vec![at(0, 100), at(-87, -50), at(87, -50)],
        "fold-isosceles" => vec![at(0, 120), at(-50, -60), at(50, -60)],
        "fold-pentagon" => vec![
            at(0, 100),
            at(-95, 31),
            at(-59, -81),
            at(59, -81),
            at(95, 31),
        ],
        "fold-hexagon" => vec![
            at(100, 0),
            at(50, 87),
            at(-50, 87),
            at(-100, 0),
            at(-50, -87),
            at(50, -87),
        ],
        quad_name => quad(quad_name, 1),
    }
}

fn symmetry(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(2) {
        return symmetry_lines(m);
    }
    let shapes = m.level.pick(&FOLDS[..6], &FOLDS[..], &FOLDS[3..]);
    let (name, lines) = m.dice.pick(shapes);
    let corners = fold_corners(name);
    let sides = corners.len() as i64;
    let figure = polygon_with_lines(
        corners.clone(),
        vec![None; corners.len()],
        Vec::new(),
        Say::new("shape-figure").word("shape", name),
    );
    let short = kind_of(name);
    let ask = m.dice.one_in(2);
    Some(
        Draft::new(json!({"task": "fold_lines", "shape": short, "asked": if ask { "count" } else { "folds" }}))
            .ask(m.wording(if ask { "ask-count" } else { "ask-folds" }, 1).word("shape", name))
            .ask(figure)
            .whole(lines)
            .hint(m.say("hint-fold"))
            .hint(m.say("hint-corner"))
            .step(m.say("hint-fold"))
            .step(m.say("step-count").count("lines", lines))
            .misconception_if(lines != sides, "fold-line-for-each-side", whole(sides))
            .misconception_if(lines == sides, "fold-line-for-each-end", whole(2 * sides))
            .misconception_if(lines > 1, "one-fold-line-only", whole(1))
            .misconception_if(lines == 0, "cut-in-half-is-a-fold", whole(2))
            .misconception_if(lines == 1, "all-triangles-fold-the-same", whole(2)),
    )
}
