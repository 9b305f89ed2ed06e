//! What all shapes of a family have, and which family is inside which, grade 5.

use super::shapes::kind_of;
use crate::Block;
use crate::make::{Draft, Generator, Make, says};
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-shape-properties", 1, properties),
    Generator::new("g5-shape-tree", 1, tree),
];

/// A family, a property, and whether all of the family have it.
const PROPERTIES: [(&str, &str, bool); 12] = [
    ("all-squares", "property-right-angles", true),
    ("all-squares", "property-equal-sides", true),
    ("all-rectangles", "property-right-angles", true),
    ("all-rectangles", "property-equal-sides", false),
    ("all-rectangles", "property-parallel", true),
    ("all-rhombuses", "property-equal-sides", true),
    ("all-rhombuses", "property-right-angles", false),
    ("all-rhombuses", "property-parallel", true),
    ("all-parallelograms", "property-parallel", true),
    ("all-parallelograms", "property-right-angles", false),
    ("all-parallelograms", "property-equal-sides", false),
    ("all-squares", "property-parallel", true),
];

fn properties(m: &mut Make) -> Option<Draft> {
    let (family, property, holds) = m.dice.pick(&PROPERTIES);
    Some(
        Draft::new(
            json!({"task": "all_have", "family": kind_of(family), "property": kind_of(property)}),
        )
        .ask(
            m.say("ask")
                .word("family", family)
                .word("property", property),
        )
        .one_of_listed(
            vec![
                ("some-taken-for-all", says("common-yes")),
                ("wider-family-property-forgotten", says("common-no")),
                ("depends-on-size", says("property-size")),
            ],
            usize::from(!holds),
        )
        .hint(m.say("hint-family"))
        .hint(m.say("hint-example"))
        .step(m.say(match family {
            "all-squares" => "step-squares",
            "all-rectangles" => "step-rectangles",
            "all-rhombuses" => "step-rhombuses",
            _ => "step-parallelograms",
        }))
        .step(m.say(if holds { "step-yes" } else { "step-no" })),
    )
}

/// (narrower, wider) pairs of families.
const INSIDE: [(&str, &str); 8] = [
    ("all-squares", "all-rectangles"),
    ("all-squares", "all-rhombuses"),
    ("all-rectangles", "all-parallelograms"),
    ("all-rhombuses", "all-parallelograms"),
    ("all-parallelograms", "all-quadrilaterals"),
    ("all-rectangles", "all-quadrilaterals"),
    ("all-squares", "all-parallelograms"),
    ("all-rhombuses", "all-quadrilaterals"),
];

fn tree(m: &mut Make) -> Option<Draft> {
    let (narrow, wide) = m.dice.pick(&INSIDE);
    let flipped = m.dice.one_in(2);
    let pair = if flipped {
        (wide, narrow)
    } else {
        (narrow, wide)
    };
    let statement = json!({"task": "wider_family", "pair": [kind_of(pair.0), kind_of(pair.1)]});
    let choice = |family: &'static str| -> Block { says(family) };
    let right = if flipped { 0 } else { 1 };
    Some(
        Draft::new(statement)
            .ask(m.say("ask").word("one", pair.0).word("two", pair.1))
            .one_of_listed(
                vec![
                    ("family-tree-turned-round", choice(pair.0)),
                    ("family-tree-turned-round", choice(pair.1)),
                    ("families-thought-apart", says("tree-neither")),
                ],
                right,
            )
            .hint(m.say("hint-rules"))
            .hint(m.say("hint-more"))
            .step(
                m.say("step-every")
                    .word("narrow", narrow)
                    .word("wide", wide),
            )
            .step(m.say("step-so").word("wide", wide)),
    )
}
