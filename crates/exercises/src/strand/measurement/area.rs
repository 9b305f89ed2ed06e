//! Area by squares and by sides, perimeter.

use crate::answer::{Answer, Entry};
use crate::draw::{array_with, at, polygon, polygon_on_squares, rectangle, squares};
use crate::expr::{Expr, difference, equal, num, product, sum};
use crate::make::{Draft, Generator, Make, keep, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-area-unit-square", 3, unit_square),
    Generator::new("g3-area-cover", 3, cover),
    Generator::new("g3-area-count", 3, count),
    Generator::new("g3-area-tile", 3, tile),
    Generator::new("g3-area-rectangle", 3, rectangle_area),
    Generator::new("g3-area-split", 3, split),
    Generator::new("g3-area-l-shape", 3, l_shape),
];

pub(super) const LENGTHS: [(&str, &str); 4] = [
    ("unit-cm", "unit-square-cm"),
    ("unit-m", "unit-square-m"),
    ("unit-ft", "unit-square-ft"),
    ("unit-in", "unit-square-in"),
];

fn unit_square(m: &mut Make) -> Option<Draft> {
    let (length, square) = m.dice.pick(&LENGTHS);
    let n = m.dice.from(m.level.pick(1..=4, 2..=9, 4..=12));
    let measure = |amount: i64, unit: &'static str| crate::expr::measure(num(amount), unit);
    let name = super::units::name(square);
    if m.level != crate::Level::Entry {
        // Larger squares, or halves: how many unit squares they make.
        let (side, halves) =
            m.level
                .pick((1, 0), (1, 2 * m.dice.from(1..=4)), (m.dice.from(2..=3), 0));
        keep(n > 1 && n != halves)?;
        let area = n * side * side + halves / 2;
        let draft = if halves > 0 {
            Draft::new(
                json!({"task": "squares_and_halves", "squares": n, "halves": halves, "side": 1}),
            )
            .ask(
                m.say("ask-halves")
                    .count("n", n)
                    .count("halves", halves)
                    .math("side", measure(1, length)),
            )
            .misconception("half-squares-counted-whole", whole(n + halves))
            .misconception("half-squares-left-out", whole(n))
            .step(
                m.say("step-halves")
                    .count("halves", halves)
                    .count("wholes", halves / 2),
            )
            .step(equal(sum([num(n), num(halves / 2)]), num(area)))
        } else {
            Draft::new(json!({"task": "larger_squares", "squares": n, "side": side}))
                .ask(
                    m.say("ask-larger")
                        .count("n", n)
                        .math("side", measure(side, length)),
                )
                .misconception("larger-squares-counted-as-unit", whole(n))
                .misconception_unless_same("sides-counted-for-area", whole(n * side))
                .step(m.say("step-larger").count("side", side).math(
                    "work",
                    equal(product([num(side), num(side)]), num(side * side)),
                ))
                .step(equal(product([num(n), num(side * side)]), num(area)))
        };
        return Some(
            draft
                .whole_unit(area, square)
                .hint(m.say("hint-unit"))
                .hint(m.say("hint-fit")),
        );
    }
    let around = if n == 1 { 4 } else { 2 * n + 2 };
    Some(
        Draft::new(json!({"task": "row_of_unit_squares", "squares": n, "side": 1, "unit": name}))
            .ask(if n == 1 {
                m.say("ask-one").math("side", measure(1, length))
            } else {
                m.say("ask-row")
                    .count("n", n)
                    .math("side", measure(1, length))
            })
            .ask(squares(1, n))
            .one_of(
                &mut m.dice,
                measure(n, square),
                vec![
                    ("length-unit-for-area", measure(n, length).into()),
                    ("perimeter-for-area", measure(around, length).into()),
                    ("sides-counted-for-area", measure(4 * n, square).into()),
                ],
            )
            .hint(m.say("hint-unit"))
            .hint(m.say("hint-count"))
            .step(m.say("hint-unit"))
            .step(m.say("step-count").math("area", measure(n, square))),
    )
}

fn cover(m: &mut Make) -> Option<Draft> {
    let a = m.dice.from(m.level.pick(8..=20, 12..=40, 24..=60));
    let b = m.dice.from(m.level.pick(2..=5, 3..=9, 4..=12));
    let gaps = m.dice.one_in(2);
    let name = m.dice.name();
    if m.level != crate::Level::Entry {
        // Both: squares on top of others, and gaps.
        let c = m.dice.from(m.level.pick(2..=5, 2..=8, 3..=12));
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
                .whole_unit(a - b + c, "unit-square-units")
                .hint(m.say("hint-rule"))
                .hint(m.say("hint-both"))
                .step(m.say("hint-overlaps"))
                .step(equal(difference(num(a), num(b)), num(a - b)))
                .step(m.say("hint-gaps"))
                .step(equal(sum([num(a - b), num(c)]), num(a - b + c)))
                .misconception("gaps-not-counted", whole(a - b))
                .misconception("overlaps-counted", whole(a + c)),
        );
    }
    let draft = Draft::new(json!({"task": if gaps { "cover_with_gaps" } else { "cover_with_overlaps" }, "squares": a, "other": b}))
        .ask(m.say(if gaps { "ask-gaps" } else { "ask-overlaps" }).text("name", name).count("a", a).count("b", b))
        .whole_unit(if gaps { a + b } else { a - b }, "unit-square-units")
        .hint(m.say("hint-rule"))
        .hint(m.say(if gaps { "hint-gaps" } else { "hint-overlaps" }))
        .step(m.say(if gaps { "hint-gaps" } else { "hint-overlaps" }))
        .step(if gaps { equal(sum([num(a), num(b)]), num(a + b)) } else { equal(difference(num(a), num(b)), num(a - b)) });
    Some(if gaps {
        draft
            .misconception("gaps-not-counted", whole(a))
            .misconception("gaps-taken-away", whole(a - b))
    } else {
        draft
            .misconception("overlaps-counted", whole(a))
            .misconception("overlaps-added", whole(a + b))
    })
}

fn count(m: &mut Make) -> Option<Draft> {
    let rows = m
        .level
        .pick(m.dice.from(2..=3), m.dice.from(3..=4), m.dice.from(4..=5));
    let widths: Vec<i64> = (0..rows)
        .map(|_| m.dice.from(m.level.pick(2..=6, 2..=8, 3..=9)))
        .collect();
    keep(widths.iter().any(|width| Some(width) != widths.first()))?;
    // Rows from the top, all starting at the left.
    let mut corners = vec![at(0, 0)];
    for (row, width) in widths.iter().rev().enumerate() {
        corners.push(at(*width, row as i64));
        corners.push(at(*width, row as i64 + 1));
    }
    corners.push(at(0, rows));
    corners.dedup();
    let total: i64 = widths.iter().sum();
    let widest = widths.iter().copied().max().unwrap_or(0);
    let mut around = widest * 2 + rows * 2;
    // A row that is narrower between wider rows makes the way around longer.
    for three in widths.windows(3) {
        if let [above, width, below] = three {
            around += 2 * (above.min(below) - width).max(0);
        }
    }
    Some(
        Draft::new(json!({"task": "rows_of_squares", "rows": widths}))
            .ask(m.say("ask"))
            .ask(polygon_on_squares(
                corners,
                m.say("shape").numbers("rows", &widths),
            ))
            .whole_unit(total, "unit-square-units")
            .hint(m.say("hint-count"))
            .hint(m.say("hint-rows"))
            .step(m.say("step-rows").numbers("rows", &widths))
            .step(equal(sum(widths.iter().map(num)), num(total)))
            .misconception("row-left-out", whole(total - widths.first()?))
            .misconception("whole-box-counted", whole(widest * rows))
            .misconception_unless_same("perimeter-for-area", whole(around)),
    )
}

fn tile(m: &mut Make) -> Option<Draft> {
    let (r, c) = (
        m.dice.from(m.level.pick(2..=6, 2..=8, 4..=10)),
        m.dice.from(m.level.pick(2..=9, 3..=10, 4..=10)),
    );
    keep(r != c && r * c != 2 * (r + c) && r + c != r * c)?;
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    let thing = m.dice.from(1..=4);
    let draft = match kind {
        1 => Draft::new(json!({"task": "equal_groups", "groups": r, "each": c}))
            .ask(
                m.say(&format!("ask-tiles-{thing}"))
                    .count("rows", r)
                    .count("each", c),
            )
            .ask(squares(r, c))
            .whole_unit(r * c, "unit-square-units")
            .misconception("perimeter-for-area", whole(2 * (r + c)))
            .misconception("added-sides", whole(r + c)),
        2 => {
            let area = |rows: i64, columns: i64| Answer::GridArea {
                rows: rows as u32,
                columns: columns as u32,
            };
            Draft::new(json!({"task": "rectangle_of_area", "area": r * c, "rows": r}))
                .ask(m.say("ask-mark").count("area", r * c).count("rows", r))
                .answer(
                    Entry::GridArea {
                        rows: 12,
                        columns: 12,
                    },
                    area(r, c),
                )
                .misconception("cuts-and-area-mixed-up", area(r, c - 1))
        }
        _ => Draft::new(json!({"task": "share_equally", "amount": r * c, "shares": r}))
            .ask(m.say("ask-missing").count("area", r * c).count("rows", r))
            .whole(c)
            .misconception("subtracted-instead-of-divided", whole(r * c - r))
            .misconception("fact-one-off", whole(c + 1)),
    };
    Some(
        draft
            .hint(m.say("hint-rows"))
            .hint(m.say("hint-fact").math(
                "fact",
                match kind {
                    1 => product([num(r), num(c)]),
                    _ => equal(product([num(r), Expr::Blank]), num(r * c)),
                },
            ))
            .step(m.say("step-rows").count("rows", r).count("each", c))
            .step(equal(product([num(r), num(c)]), num(r * c))),
    )
}

fn rectangle_area(m: &mut Make) -> Option<Draft> {
    let (w, h) = (
        m.dice.from(m.level.pick(2..=6, 3..=10, 6..=12)),
        m.dice.from(m.level.pick(2..=6, 3..=12, 5..=12)),
    );
    keep(w != h && w * h != 2 * (w + h))?;
    // The thing, and the units that its sides are measured in.
    let (thing, (length, square)) = m.dice.pick(&[
        (1, LENGTHS[2]),
        (2, LENGTHS[1]),
        (2, LENGTHS[2]),
        (3, LENGTHS[1]),
        (3, LENGTHS[2]),
        (4, LENGTHS[0]),
        (4, LENGTHS[3]),
        (5, LENGTHS[0]),
        (5, LENGTHS[3]),
        (6, LENGTHS[1]),
        (6, LENGTHS[2]),
    ]);
    // A card fits in a hand.
    keep(thing != 5 || length == "unit-cm" || w.max(h) <= 8)?;
    let ask = m.say(&format!("ask-{thing}"));
    let shape = rectangle(
        w,
        h,
        [Some(num(w)), Some(num(h))],
        m.say("shape").count("width", w).count("height", h),
    );
    let mut draft = Draft::new(json!({"task": "rectangle_area", "width": w, "height": h})).ask(
        ask.count("width", w)
            .math("height", crate::expr::measure(num(h), length)),
    );
    if m.level == crate::Level::Entry {
        draft = draft.ask(shape.clone());
    }
    Some(
        draft
            .whole_unit(w * h, square)
            .hint(m.say("hint-rows").count("width", w).count("height", h))
            .hint(shape)
            .step(m.say("step-multiply"))
            .step(equal(product([num(w), num(h)]), num(w * h)))
            .misconception("perimeter-for-area", whole(2 * (w + h)))
            .misconception("added-sides", whole(w + h)),
    )
}

fn split(m: &mut Make) -> Option<Draft> {
    let h = m.dice.from(m.level.pick(2..=6, 3..=8, 4..=9));
    let (a, b) = (
        m.dice.from(m.level.pick(3..=7, 4..=10, 8..=11)),
        m.dice.from(m.level.pick(2..=6, 2..=9, 2..=9)),
    );
    keep(a != b && a != h && b != h)?;
    let total = h * (a + b);
    Some(
        Draft::new(json!({"task": "two_part_area", "height": h, "widths": [a, b]}))
            .ask(m.say("ask").count("height", h).count("a", a).count("b", b))
            .ask(array_with(h, a + b, Some(a), true))
            .whole_unit(total, "unit-square-units")
            .hint(m.say("hint-parts"))
            .hint(m.say("hint-first").math("work", product([num(h), num(a)])))
            .step(equal(product([num(h), num(a)]), num(h * a)))
            .step(equal(product([num(h), num(b)]), num(h * b)))
            .step(equal(sum([num(h * a), num(h * b)]), num(total)))
            .misconception("one-part-only", whole(h * a))
            .misconception("factor-taken-to-first-only-area", whole(h * a + b))
            .misconception_unless_same("perimeter-for-area", whole(2 * (h + a + b))),
    )
}

fn l_shape(m: &mut Make) -> Option<Draft> {
    // A wide low part and a narrow high part on its left end.
    let (w, h) = (
        m.dice.from(m.level.pick(5..=8, 6..=10, 7..=12)),
        m.dice.from(m.level.pick(2..=4, 2..=5, 3..=6)),
    );
    let (w2, h2) = (
        m.dice.from(2..=w - 2),
        m.dice.from(m.level.pick(2..=4, 2..=6, 3..=7)),
    );
    keep(w2 != h2 && w2 != h && w != h)?;
    let corners = vec![
        at(0, 0),
        at(w, 0),
        at(w, h),
        at(w2, h),
        at(w2, h + h2),
        at(0, h + h2),
    ];
    // At stretch the lower part's height and the left side are given, one side must be found.
    let hard = m.level == crate::Level::Stretch;
    let labels = vec![
        Some(num(w)),
        Some(num(h)),
        None,
        (!hard).then(|| num(h2)),
        Some(num(w2)),
        hard.then(|| num(h + h2)),
    ];
    let total = w * h + w2 * h2;
    let shape = polygon(
        corners,
        labels,
        vec![0, 1, 2, 4, 5],
        if hard {
            m.say("shape-left")
                .count("w", w)
                .count("h", h)
                .count("left", h + h2)
                .count("top", w2)
        } else {
            m.say("shape")
                .count("w", w)
                .count("h", h)
                .count("up", h2)
                .count("top", w2)
        },
    );
    let statement = if hard {
        json!({"task": "l_shape_from_left", "bottom": w, "right": h, "left": h + h2, "top": w2})
    } else {
        json!({"task": "l_shape", "bottom": w, "right": h, "step_up": h2, "top": w2})
    };
    Some(
        Draft::new(statement)
            .ask(m.say("ask"))
            .ask(shape)
            .whole_unit(total, "unit-square-units")
            .hint(m.say("hint-cut"))
            .hint(m.say("hint-low").math("work", product([num(w), num(h)])))
            .step(
                m.say("step-low")
                    .math("work", equal(product([num(w), num(h)]), num(w * h))),
            )
            .step(
                m.say("step-high")
                    .math("work", equal(product([num(w2), num(h2)]), num(w2 * h2))),
            )
            .step(equal(sum([num(w * h), num(w2 * h2)]), num(total)))
            .misconception("whole-box-counted", whole(w * (h + h2)))
            .misconception("one-part-only", whole(w * h))
            .misconception_unless_same("perimeter-for-area", whole(2 * (w + h + h2))),
    )
}
