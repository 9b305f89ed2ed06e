//! What all shapes of a family have, and which family is inside which, grade 5.

use super::shapes::kind_of;
use crate::answer::{Answer, Choice, Entry};
use crate::make::{Draft, Generator, Make, keep, says};
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-shape-properties", 3, properties),
    Generator::new("g5-shape-tree", 3, tree),
];

/// Families of four-sided shapes, each with the properties that all its shapes have.
const FAMILIES: [(&str, &[&str]); 5] = [
    (
        "all-squares",
        &[
            "property-right-angles",
            "property-equal-sides",
            "property-parallel",
            "property-opposite-sides",
            "property-opposite-angles",
        ],
    ),
    (
        "all-rectangles",
        &[
            "property-right-angles",
            "property-parallel",
            "property-opposite-sides",
            "property-opposite-angles",
        ],
    ),
    (
        "all-rhombuses",
        &[
            "property-equal-sides",
            "property-parallel",
            "property-opposite-sides",
            "property-opposite-angles",
        ],
    ),
    (
        "all-parallelograms",
        &[
            "property-parallel",
            "property-opposite-sides",
            "property-opposite-angles",
        ],
    ),
    ("all-quadrilaterals", &[]),
];

const PROPERTIES: [&str; 7] = [
    "property-right-angles",
    "property-equal-sides",
    "property-parallel",
    "property-opposite-sides",
    "property-opposite-angles",
    "property-four-sides",
    "property-five-angles",
];

/// Whether every shape of the family has the property.
fn holds((_, own): (&str, &[&str]), property: &str) -> bool {
    property == "property-four-sides" || own.contains(&property)
}

/// Whether a choice fits a rule.
type Fits<'a> = &'a dyn Fn(&str) -> bool;

/// All choices that fit, in random order: the draft, and the answers of the choices that
/// fit a wrong rule.
fn chosen<'a>(
    draft: Draft,
    choices: &'a [&'static str],
    fits: impl Fn(&str) -> bool,
) -> (Draft, impl Fn(Fits<'_>) -> Answer + 'a) {
    let shown = choices.iter().map(|id| (fits(id), says(id))).collect();
    (draft.all_of(shown), move |wrong: Fits<'_>| {
        Answer::SeveralChoices {
            indexes: (0_u32..)
                .zip(choices)
                .filter(|(_, id)| wrong(id))
                .map(|(index, _)| index)
                .collect(),
        }
    })
}

fn properties(m: &mut Make) -> Option<Draft> {
    let step = |family: &str| match family {
        "all-squares" => "step-squares",
        "all-rectangles" => "step-rectangles",
        "all-rhombuses" => "step-rhombuses",
        "all-parallelograms" => "step-parallelograms",
        _ => "step-quadrilaterals",
    };
    if m.dice.one_in(2) {
        // What every shape of a family has.
        let family = m.dice.pick(&FAMILIES[..4]);
        let mut choices = PROPERTIES;
        m.dice.shuffle(&mut choices);
        let (choices, _) = choices.split_at_checked(4)?;
        let right = choices.iter().filter(|p| holds(family, p)).count();
        keep((1..=3).contains(&right))?;
        let names: Vec<&str> = choices.iter().map(|id| kind_of(id)).collect();
        let draft = Draft::new(
            json!({"task": "properties_of_all", "family": kind_of(family.0), "choices": names}),
        )
        .ask(m.say("ask-which").word("family", family.0));
        let (draft, wrong) = chosen(draft, choices, |p| holds(family, p));
        let square = FAMILIES[0];
        return Some(
            draft
                .hint(m.say("hint-family"))
                .hint(m.say("hint-example"))
                .step(m.say(step(family.0)))
                .step(m.say("step-check"))
                .misconception_unless_same("some-taken-for-all", wrong(&|p| holds(square, p)))
                // A part of the key, so that each one chosen holds.
                .misconception_unless_same("wider-family-property-forgotten", {
                    let first = choices.iter().find(|p| holds(family, p)).copied()?;
                    wrong(&|p| p == first)
                }),
        );
    }
    // Which families always have a property.
    let property = m.dice.pick(&PROPERTIES[..5]);
    let mut choices = FAMILIES.map(|(name, _)| name);
    m.dice.shuffle(&mut choices);
    let (choices, _) = choices.split_at_checked(4)?;
    let of = |name: &str| FAMILIES.into_iter().find(|(family, _)| *family == name);
    let fits = |name: &str| of(name).is_some_and(|family| holds(family, property));
    let right = choices.iter().filter(|name| fits(name)).count();
    keep((1..=3).contains(&right))?;
    let names: Vec<&str> = choices.iter().map(|id| kind_of(id)).collect();
    let draft = Draft::new(
        json!({"task": "families_with", "property": kind_of(property), "choices": names}),
    )
    .ask(m.say("ask-families").word("property", property));
    let (draft, wrong) = chosen(draft, choices, fits);
    let example = choices.iter().find(|name| fits(name)).copied()?;
    Some(
        draft
            .hint(m.say("hint-family"))
            .hint(m.say("hint-example"))
            .step(m.say(step(example)))
            .step(m.say("step-check"))
            .misconception_unless_same("some-taken-for-all", wrong(&|_| true))
            .misconception_unless_same(
                "wider-family-property-forgotten",
                wrong(&|name| name == example),
            ),
    )
}

/// Families from the narrowest to the widest, each inside the next.
const CHAINS: [[&str; 4]; 2] = [
    [
        "all-squares",
        "all-rectangles",
        "all-parallelograms",
        "all-quadrilaterals",
    ],
    [
        "all-squares",
        "all-rhombuses",
        "all-parallelograms",
        "all-quadrilaterals",
    ],
];

fn tree(m: &mut Make) -> Option<Draft> {
    let chain = m.dice.pick(&CHAINS);
    if m.level != crate::Level::Entry || m.dice.one_in(2) {
        // From the narrowest to the widest.
        let left_out = m.dice.from(0..=m.level.pick(3, 3, 4)) as usize;
        let ordered: Vec<&'static str> = chain
            .into_iter()
            .enumerate()
            .filter(|(at, _)| *at != left_out)
            .map(|(_, family)| family)
            .collect();
        let mut things = ordered.clone();
        m.dice.shuffle(&mut things);
        let place = |family: &&'static str| {
            (0_u32..)
                .zip(&things)
                .find(|(_, thing)| *thing == family)
                .map(|(index, _)| index)
        };
        let order: Vec<u32> = ordered.iter().filter_map(place).collect();
        let mut turned = order.clone();
        turned.reverse();
        let mut swapped = order.clone();
        swapped.swap(0, 1);
        let names: Vec<&str> = things.iter().map(|family| kind_of(family)).collect();
        let (narrow, wide) = (*ordered.first()?, *ordered.get(1)?);
        return Some(
            Draft::new(json!({"task": "families_in_order", "choices": names}))
                .ask(m.wording("ask-order", 2))
                .answer(
                    Entry::Ordering {
                        things: things.iter().map(|f| Choice { shows: says(f) }).collect(),
                        first: m.say("narrowest"),
                        last: m.say("widest"),
                    },
                    Answer::Ordering { order },
                )
                .hint(m.say("hint-rules"))
                .hint(m.say("hint-more"))
                .step(
                    m.say("step-every")
                        .word("narrow", narrow)
                        .word("wide", wide),
                )
                .step(m.say("step-chain"))
                .misconception(
                    "family-tree-turned-round",
                    Answer::Ordering { order: turned },
                )
                .misconception(
                    "neighbor-families-swapped",
                    Answer::Ordering { order: swapped },
                ),
        );
    }
    // Two families: one inside the other, or neither.
    let apart = m.dice.one_in(3);
    let (one, two) = if apart {
        ("all-rectangles", "all-rhombuses")
    } else {
        let at = m.dice.from(0..=2) as usize;
        (*chain.get(at)?, *chain.get(at + 1)?)
    };
    let flipped = m.dice.one_in(2);
    let pair = if flipped { (two, one) } else { (one, two) };
    let right = if apart { 2 } else { usize::from(!flipped) };
    Some(
        Draft::new(json!({"task": "wider_family", "pair": [kind_of(pair.0), kind_of(pair.1)]}))
            .ask(m.wording("ask", 2).word("one", pair.0).word("two", pair.1))
            .one_of_listed(
                vec![
                    (
                        if apart {
                            "families-overlap-only"
                        } else {
                            "family-tree-turned-round"
                        },
                        says(pair.0),
                    ),
                    (
                        if apart {
                            "families-overlap-only"
                        } else {
                            "family-tree-turned-round"
                        },
                        says(pair.1),
                    ),
                    (
                        if apart { "" } else { "families-thought-apart" },
                        says("tree-neither"),
                    ),
                ],
                right,
            )
            .hint(m.say("hint-rules"))
            .hint(m.say("hint-more"))
            .step(if apart {
                m.say("step-overlap").word("one", one).word("two", two)
            } else {
                m.say("step-every").word("narrow", one).word("wide", two)
            })
            .step(if apart {
                m.say("step-neither")
            } else {
                m.say("step-so").word("wide", two)
            }),
    )
}
