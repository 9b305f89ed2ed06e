//! The coordinate grid.

use crate::answer::Entry;
use crate::draw::{first_quadrant, frame, grid, outline};
use crate::expr::{difference, equal, group, num, pair, product, sum};
use crate::make::{Draft, Generator, Make, keep, point, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-coordinates", 4, coordinates),
    Generator::new("g5-coordinates-stories", 4, stories),
    Generator::new("g6-polygons-on-grid", 4, polygons),
];

fn coordinates(m: &mut Make) -> Option<Draft> {
    let (x, y) = (
        m.dice.from(1..=m.level.pick(9, 10, 10)),
        m.dice.from(1..=m.level.pick(9, 10, 10)),
    );
    keep(x != y)?;
    let kind = m
        .level
        .pick(m.dice.from(1..=2), m.dice.from(1..=3), m.dice.from(3..=3));
    let swapped = point(y, x);
    let mut end = (x, y);
    let draft = match kind {
        1 => Draft::new(json!({"task": "walk_to_point", "right": x, "up": y}))
            .ask(m.say("ask-walk").count("x", x).count("y", y))
            .answer(Entry::Coordinates { frame: None }, point(x, y))
            .misconception("coordinates-swapped", swapped)
            .misconception("walk-added", point(x + y, 0)),
        2 => Draft::new(json!({"task": "name_point", "x": x, "y": y}))
            .ask(m.say("ask-name"))
            .ask(grid(
                first_quadrant(10),
                &[("A", x, y)],
                Vec::new(),
                m.say("grid").number("x", x).number("y", y),
            ))
            .answer(Entry::Coordinates { frame: None }, point(x, y))
            .misconception("coordinates-swapped", swapped)
            .misconception("counted-points-not-steps", point(x + 1, y + 1)),
        _ => {
            let (dx, dy) = m
                .level
                .pick((0, 0), (0, 0), (m.dice.from(-3..=4), m.dice.from(-3..=4)));
            let (tx, ty) = (x + dx, y + dy);
            keep((0..=10).contains(&tx) && (0..=10).contains(&ty) && tx != ty)?;
            if dx == 0 && dy == 0 {
                keep(m.level != crate::Level::Stretch)?;
                Draft::new(json!({"task": "name_point", "x": x, "y": y}))
                    .ask(m.say("ask-mark").math("point", pair(num(x), num(y))))
                    .answer(
                        Entry::Coordinates {
                            frame: Some(first_quadrant(10)),
                        },
                        point(x, y),
                    )
                    .misconception("coordinates-swapped", swapped)
                    .misconception("counted-points-not-steps", point(x - 1, y - 1))
            } else {
                keep(
                    dx != 0
                        && dy != 0
                        && dx != dy
                        && (0..=10).contains(&(x + dy))
                        && (0..=10).contains(&(y + dx)),
                )?;
                end = (tx, ty);
                Draft::new(json!({"task": "move_point", "from": [x, y], "across": dx, "up": dy}))
                    .ask(
                        m.say(match (dx > 0, dy > 0) {
                            (true, true) => "ask-move-right-up",
                            (true, false) => "ask-move-right-down",
                            (false, true) => "ask-move-left-up",
                            (false, false) => "ask-move-left-down",
                        })
                        .math("point", pair(num(x), num(y)))
                        .count("dx", dx.abs())
                        .count("dy", dy.abs()),
                    )
                    .answer(
                        Entry::Coordinates {
                            frame: Some(first_quadrant(10)),
                        },
                        point(tx, ty),
                    )
                    .misconception("across-and-up-swapped-in-move", point(x + dy, y + dx))
                    .misconception("moved-wrong-way-on-grid", point(x - dx, y - dy))
            }
        }
    };
    Some(
        draft
            .hint(m.say("hint-first"))
            .hint(m.say("hint-zero"))
            .step(m.say("hint-first"))
            .step(m.say("step-second"))
            .step(pair(num(end.0), num(end.1))),
    )
}

/// A point of a story, to be marked on the grid (5.G.A.2).
fn plot_story_point(m: &mut Make) -> Option<Draft> {
    let (each, start) = (
        m.dice.from(1..=4),
        m.dice.from(m.level.pick(0..=3, 0..=5, 1..=6)),
    );
    let x = m.dice.from(2..=m.level.pick(4, 5, 6));
    let y = start + each * x;
    keep(y <= 10 && y != x && (each > 1 || start > 0) && start + each != y)?;
    let story = m.dice.from(1..=4);
    Some(
        Draft::new(json!({"task": "plot_story_point", "start": start, "each": each, "x": x}))
            .ask(
                m.say(&format!("ask-plot-{story}"))
                    .count("start", start)
                    .count("each", each)
                    .count("x", x),
            )
            .answer(
                Entry::Coordinates {
                    frame: Some(first_quadrant(10)),
                },
                point(x, y),
            )
            .hint(m.say("hint-across"))
            .hint(m.say("hint-each"))
            .step(equal(
                sum([num(start), product([num(x), num(each)])]),
                num(y),
            ))
            .step(pair(num(x), num(y)))
            .misconception("coordinates-swapped", point(y, x))
            .misconception("pattern-rule-used-once", point(x, start + each)),
    )
}

fn stories(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(2) {
        return plot_story_point(m);
    }
    let k = m.dice.from(m.level.pick(1..=3, 2..=4, 2..=4));
    let b = m.level.pick(0, 0, m.dice.from(1..=4));
    let xs: Vec<i64> = (1..=4).collect();
    let y = |x: i64| k * x + b;
    keep(y(4) <= 20 && (k > 1 || b > 0 || m.level == crate::Level::Entry))?;
    let names = ["A", "B", "C", "D"];
    let points: Vec<(&'static str, i64, i64)> =
        xs.iter().zip(names).map(|(x, n)| (n, *x, y(*x))).collect();
    let at = m.dice.from(1..=4);
    keep(y(at) != at)?;
    let story = m.dice.from(1..=2);
    let pairs: Vec<[i64; 2]> = xs.iter().map(|x| [*x, y(*x)]).collect();
    let kind = m.level.pick(1, m.dice.from(1..=2), 2);
    let figure = grid(
        frame(0, 5, 0, 20, 1),
        &points,
        Vec::new(),
        ["y1", "y2", "y3", "y4"]
            .into_iter()
            .zip(1..)
            .fold(m.say("grid"), |say, (name, x)| say.number(name, y(x))),
    );
    let other = if at < 4 { at + 1 } else { at - 1 };
    let draft = if kind == 1 {
        Draft::new(json!({"task": "read_value_at", "points": pairs, "x": at}))
            .ask(m.say(&format!("ask-at-{story}")).count("x", at))
            .ask(figure)
            .step(m.say("hint-across"))
            .step(m.say("step-point").math("point", pair(num(at), num(y(at)))))
            .whole(y(at))
            .misconception("coordinates-swapped", whole(at))
            .misconception("read-the-point-beside", whole(y(other)))
    } else {
        let (from, to) = (1, m.dice.from(3..=4));
        keep(k * (to - from) != 6 || m.dice.one_in(2))?;
        Draft::new(json!({"task": "change_between", "points": pairs, "from": from, "to": to}))
            .ask(
                m.say(&format!("ask-change-{story}"))
                    .count("from", from)
                    .count("to", to),
            )
            .ask(figure)
            .step(
                m.say("step-points")
                    .math("from", pair(num(from), num(y(from))))
                    .math("to", pair(num(to), num(y(to)))),
            )
            .step(equal(
                difference(num(y(to)), num(y(from))),
                num(y(to) - y(from)),
            ))
            .whole(y(to) - y(from))
            .misconception("gave-the-last-value", whole(y(to)))
            // The sum may be the last value of the graph.
            .misconception_if(
                y(to) + y(from) != y(4),
                "added-instead",
                whole(y(to) + y(from)),
            )
    };
    Some(draft.hint(m.say("hint-across")).hint(m.say("hint-up")))
}

fn polygons(m: &mut Make) -> Option<Draft> {
    let (x, y) = m.level.pick(
        (m.dice.from(1..=4), m.dice.from(1..=4)),
        (m.dice.from(-8..=-1), m.dice.from(-8..=2)),
        (m.dice.from(-8..=-1), m.dice.from(-8..=-1)),
    );
    let (w, h) = (
        m.dice.from(m.level.pick(2..=5, 3..=9, 4..=12)),
        m.dice.from(m.level.pick(2..=5, 3..=9, 4..=12)),
    );
    keep(w != h && x + w <= 9 && y + h <= 9)?;
    let corners = [(x, y), (x + w, y), (x + w, y + h), (x, y + h)];
    let shown = |c: (i64, i64)| pair(num(c.0), num(c.1));
    let window = if x > 0 {
        first_quadrant(10)
    } else {
        frame(-10, 10, -10, 10, 1)
    };
    let figure = grid(
        window.clone(),
        &[
            ("A", corners[0].0, corners[0].1),
            ("B", corners[1].0, corners[1].1),
            ("C", corners[2].0, corners[2].1),
        ],
        Vec::new(),
        m.say("grid")
            .math("a", shown(corners[0]))
            .math("b", shown(corners[1]))
            .math("c", shown(corners[2])),
    );
    let kind = m.dice.from(m.level.pick(1..=2, 1..=3, 2..=3));
    let [given_a, given_b, given_c, _] = corners.map(|(x, y)| [x, y]);
    let given = [given_a, given_b, given_c];
    let full = grid(window, &[], vec![outline(&corners)], m.say("outline"));
    let ask = |m: &Make, id: &str| {
        m.say(id)
            .math("a", shown(corners[0]))
            .math("b", shown(corners[1]))
            .math("c", shown(corners[2]))
    };
    let draft = match kind {
        1 => Draft::new(json!({"task": "side_on_grid", "from": given_a, "to": given_b}))
            .ask(
                m.say("ask-side")
                    .math("a", shown(corners[0]))
                    .math("b", shown(corners[1])),
            )
            .ask(figure)
            .whole(w)
            .step(m.say("step-same"))
            .step(equal(
                difference(num(x + w), if x < 0 { group(num(x)) } else { num(x) }),
                num(w),
            ))
            .misconception("counted-points-not-steps", whole(w + 1))
            .misconception_unless_same(
                if x < 0 {
                    "signs-left-out-of-distance"
                } else {
                    "coordinates-added"
                },
                whole(if x < 0 {
                    ((x + w).abs() - x.abs()).abs()
                } else {
                    2 * x + w
                }),
            ),
        2 => Draft::new(json!({"task": "fourth_corner", "corners": given}))
            .ask(ask(m, "ask-corner"))
            .ask(figure)
            .answer(
                Entry::Coordinates { frame: None },
                point(corners[3].0, corners[3].1),
            )
            .step(m.say("step-left"))
            .step(shown(corners[3]))
            .misconception("coordinates-swapped", point(corners[3].1, corners[3].0))
            .misconception("corner-on-the-wrong-side", point(x + 2 * w, y + h)),
        _ => Draft::new(json!({"task": "rectangle_perimeter_on_grid", "corners": given}))
            .ask(ask(m, "ask-perimeter"))
            .ask(figure)
            .whole(2 * (w + h))
            .step(m.say("step-sides").count("w", w).count("h", h))
            .step(equal(
                sum([num(w), num(h), num(w), num(h)]),
                num(2 * (w + h)),
            ))
            .misconception("two-sides-only", whole(w + h))
            .misconception("area-for-perimeter", whole(w * h)),
    };
    Some(
        draft
            .hint(m.say("hint-straight"))
            .hint_with(m.say("hint-draw"), full),
    )
}
