//! Shapes and angles to be made, and solids by their nets.

use crate::answer::{Answer, Entry};
use crate::draw::{at, first_quadrant, grid, outline, polygon_on_squares};
use crate::expr::{difference, equal, num, pair, sum};
use crate::figure::{Drawing, Net, NetFace, Point};
use crate::make::{Draft, Make, figure, keep, says};
use crate::say::Say;
use serde_json::json;

/// The corners of a shape on squares.
type Corners = [(i64, i64); 4];

fn points(corners: Corners) -> Vec<Point> {
    corners.into_iter().map(|(x, y)| at(x, y)).collect()
}

/// Which of three shapes is no rectangle and no rhombus (3.G.A.1).
pub(super) fn no_named_family(m: &mut Make) -> Option<Draft> {
    let (w, h, s) = (m.dice.from(3..=6), m.dice.from(2..=5), m.dice.from(1..=2));
    keep(w != h && w * w != s * s + h * h && h != s + 1)?;
    let plain: Corners = m.dice.pick(&[
        // A trapezoid, a kite, a parallelogram, and one without any of these names.
        [(0, 0), (w, 0), (w - 1, h), (1, h)],
        [(0, h), (s, 0), (2 * s, h), (s, h + w)],
        [(0, 0), (w, 0), (w + s, h), (s, h)],
        [(0, 0), (w, 0), (w - 1, h), (0, h - 1)],
    ]);
    let mut named: [Corners; 4] = [
        [(0, 0), (w, 0), (w, h), (0, h)],
        [(0, 0), (h, 0), (h, h), (0, h)],
        [(s, 0), (2 * s, h), (s, 2 * h), (0, h)],
        [
            (s + 1, 0),
            (2 * s + 2, s + 1),
            (s + 1, 2 * s + 2),
            (0, s + 1),
        ],
    ];
    keep(s != h)?;
    m.dice.shuffle(&mut named);
    let [one, two, ..] = named;
    let mut shapes = [(true, plain), (false, one), (false, two)];
    m.dice.shuffle(&mut shapes);
    let right = shapes.iter().position(|(is_right, _)| *is_right)?;
    let shown: Vec<Vec<[i64; 2]>> = shapes
        .iter()
        .map(|(_, corners)| corners.iter().map(|(x, y)| [*x, *y]).collect())
        .collect();
    let mut draft =
        Draft::new(json!({"task": "no_named_family", "shapes": shown})).ask(m.say("ask-no-name"));
    for (n, (_, corners)) in (1..).zip(shapes) {
        let [a, b, c, d] = corners.map(|(x, y)| pair(num(x), num(y)));
        draft = draft
            .ask(m.say("shape").count("n", n))
            .ask(polygon_on_squares(
                points(corners),
                m.say("corners")
                    .math("a", a)
                    .math("b", b)
                    .math("c", c)
                    .math("d", d),
            ));
    }
    let choices = (1..=3)
        .map(|n| ("named-shape-not-seen", m.say("shape").count("n", n).into()))
        .collect();
    Some(
        draft
            .one_of_listed(choices, right)
            .hint(m.say("hint-rectangle"))
            .hint(m.say("hint-rhombus"))
            .step(m.say("hint-rectangle"))
            .step(m.say("hint-rhombus"))
            .step(m.say("step-no-name").count("n", right as i64 + 1)),
    )
}

/// An angle to be turned, by its kind or against a right angle (4.G.A.1).
pub(super) fn angle_of_kind(m: &mut Make) -> Option<Draft> {
    let degrees = |degrees: i64| Answer::Angle { degrees, within: 0 };
    let entry = Entry::Angle { turned: true };
    let change = m.level.pick(
        m.dice.from(1..=6) * 10,
        m.dice.from(1..=14) * 5,
        m.dice.from(3..=78),
    );
    let draft = match m.dice.from(0..=5) {
        0 => {
            return Some(
                Draft::new(json!({"task": "angle_of_kind", "way": "none"}))
                    .ask(m.say("ask-turn-right"))
                    .answer(entry, degrees(90))
                    .hint(m.say("hint-corner"))
                    .hint(m.say("hint-turn"))
                    .step(m.say("hint-right"))
                    .step(m.say("step-turn").count("degrees", 90))
                    .misconception("near-right-taken-as-right", degrees(85))
                    .misconception("wrong-whole-angle", degrees(180)),
            );
        }
        1 | 2 => Draft::new(json!({"task": "angle_of_kind", "way": "less", "change": change}))
            .ask(m.say("ask-turn-less").count("change", change))
            .answer(entry, degrees(90 - change))
            .misconception("acute-and-obtuse-mixed-up", degrees(90 + change))
            .step(equal(difference(num(90), num(change)), num(90 - change)))
            .step(m.say("step-turn").count("degrees", 90 - change)),
        _ => Draft::new(json!({"task": "angle_of_kind", "way": "more", "change": change}))
            .ask(m.say("ask-turn-more").count("change", change))
            .answer(entry, degrees(90 + change))
            .misconception("acute-and-obtuse-mixed-up", degrees(90 - change))
            .step(equal(sum([num(90), num(change)]), num(90 + change)))
            .step(m.say("step-turn").count("degrees", 90 + change)),
    };
    keep(change != 45)?;
    Some(
        draft
            .hint(m.say("hint-right"))
            .hint(m.say("hint-turn"))
            .misconception_unless_same("change-for-the-angle", degrees(change)),
    )
}

/// Which lines through corners and middles of sides are lines of symmetry (4.G.A.3).
pub(super) fn symmetry_lines(m: &mut Make) -> Option<Draft> {
    let (x, y) = (m.dice.from(0..=3), m.dice.from(0..=3));
    let (a, b) = (m.dice.from(1..=3), m.dice.from(1..=3));
    let kind = m.dice.from(0..=4) as usize;
    keep(a != b)?;
    let corners: Corners = match kind {
        0 => [(0, 0), (2 * a, 0), (2 * a, 2 * a), (0, 2 * a)],
        1 => [(0, 0), (2 * a, 0), (2 * a, 2 * b), (0, 2 * b)],
        2 => [(a, 0), (2 * a, b), (a, 2 * b), (0, b)],
        3 => [(a, 0), (2 * a, b), (a, b + 2 * a + 1), (0, b)],
        _ => [(0, 0), (2 * a + 2, 0), (2 * a + 1, b), (1, b)],
    }
    .map(|(px, py)| (px + x, py + y));
    keep(corners.iter().all(|(px, py)| *px <= 10 && *py <= 10))?;
    // A kite whose two parts are alike is a rhombus.
    keep(kind != 3 || b != 2 * a + 1)?;
    let fits: [bool; 4] = match kind {
        0 => [true; 4],
        1 => [false, false, true, true],
        2 => [true, true, false, false],
        3 => [true, false, false, false],
        _ => [false, false, true, false],
    };
    let places = |wanted: &dyn Fn(u32, bool) -> bool| Answer::SeveralChoices {
        indexes: (0..)
            .zip(fits)
            .filter(|(at, fits)| wanted(*at, *fits))
            .map(|(at, _)| at)
            .collect(),
    };
    let first = (0..).zip(fits).find(|(_, fits)| *fits)?.0;
    let several = fits.iter().filter(|fits| **fits).count() > 1;
    let [pa, pb, pc, pd] = corners;
    let lines = ["line-ac", "line-bd", "line-ab-cd", "line-bc-da"];
    let shown: Vec<[i64; 2]> = corners.iter().map(|(x, y)| [*x, *y]).collect();
    let word = |(x, y): (i64, i64)| pair(num(x), num(y));
    Some(
        Draft::new(json!({"task": "symmetry_lines", "corners": shown}))
            .ask(m.say("ask-lines"))
            .ask(grid(
                first_quadrant(10),
                &[
                    ("A", pa.0, pa.1),
                    ("B", pb.0, pb.1),
                    ("C", pc.0, pc.1),
                    ("D", pd.0, pd.1),
                ],
                vec![outline(&corners)],
                m.say("grid")
                    .math("a", word(pa))
                    .math("b", word(pb))
                    .math("c", word(pc))
                    .math("d", word(pd)),
            ))
            .all_of(
                fits.into_iter()
                    .zip(lines)
                    .map(|(fits, id)| (fits, m.say(id).into()))
                    .collect(),
            )
            .hint(m.say("hint-fold"))
            .hint(m.say("hint-corner"))
            .step(m.say("hint-fold"))
            .step(m.say("step-line").word(
                "line",
                format!("{}-{}", m.concept, lines.get(first as usize)?),
            ))
            .misconception_if(several, "one-fold-line-only", places(&|at, _| at == first))
            .misconception_if(
                matches!(kind, 1 | 2),
                "cut-in-half-is-a-fold",
                places(&|_, _| true),
            )
            .misconception_if(
                !several,
                "corner-lines-taken-as-folds",
                places(&|at, _| at < 2),
            ),
    )
}

/// A face with four corners.
fn four((x, y): (i64, i64), across: i64, up: i64) -> NetFace {
    NetFace {
        corners: vec![
            at(x, y),
            at(x + across, y),
            at(x + across, y + up),
            at(x, y + up),
        ],
        side_labels: vec![None; 4],
    }
}

fn three(corners: [(i64, i64); 3]) -> NetFace {
    NetFace {
        corners: corners.into_iter().map(|(x, y)| at(x, y)).collect(),
        side_labels: vec![None; 3],
    }
}

/// Which solid a net makes (6.G.A.4).
pub(super) fn solid_of_net(m: &mut Make) -> Option<Draft> {
    let kind = m.dice.from(0..=3) as usize;
    let (w, d, h) = (m.dice.from(2..=7), m.dice.from(2..=7), m.dice.from(2..=7));
    let faces = match kind {
        0 | 1 => {
            let (d, h) = if kind == 0 { (w, w) } else { (d, h) };
            keep(kind == 0 || !(w == d && d == h))?;
            vec![
                four((d, d), w, h),
                four((d, 0), w, d),
                four((d, d + h), w, d),
                four((0, d), d, h),
                four((d + w, d), d, h),
                four((2 * d + w, d), w, h),
            ]
        }
        2 => {
            let (b, s) = (2 * w, w + h);
            vec![
                four((0, 0), b, b),
                three([(0, 0), (b, 0), (w, -s)]),
                three([(b, 0), (b, b), (b + s, w)]),
                three([(b, b), (0, b), (w, b + s)]),
                three([(0, b), (0, 0), (-s, w)]),
            ]
        }
        _ => {
            // Triangles with two equal sides: side, base, height.
            let (a, b, t) = m
                .dice
                .pick(&[(5, 6, 4), (5, 8, 3), (10, 12, 8), (13, 10, 12)]);
            let long = w + 2;
            vec![
                four((0, 0), a, long),
                four((a, 0), b, long),
                four((a + b, 0), a, long),
                three([(a, long), (a + b, long), (a + b / 2, long + t)]),
                three([(a, 0), (a + b, 0), (a + b / 2, -t)]),
            ]
        }
    };
    let corners: Vec<Vec<[i64; 2]>> = faces
        .iter()
        .map(|face| {
            let whole = |value: crate::number::Rational| value.ratio().to_integer();
            face.corners
                .iter()
                .map(|corner| [whole(corner.x), whole(corner.y)])
                .collect()
        })
        .collect();
    let names = ["cube", "box", "pyramid", "prism"];
    let name = *names.get(kind)?;
    let solids = ["solid-cube", "solid-box", "solid-pyramid", "solid-prism"];
    Some(
        Draft::new(json!({"task": "solid_of_net", "faces": corners}))
            .ask(m.say("ask-net"))
            .ask(figure(
                Drawing::Net(Net { faces }),
                m.say(&format!("faces-{name}")),
            ))
            .one_of_listed(
                solids
                    .into_iter()
                    .map(|id| ("faces-of-net-not-matched", says(id)))
                    .collect(),
                kind,
            )
            .hint(m.say("hint-kinds"))
            .hint(m.say("hint-fold"))
            .step(m.say(&format!("faces-{name}")))
            .step(Say::new("solid-step").word("solid", *solids.get(kind)?)),
    )
}
