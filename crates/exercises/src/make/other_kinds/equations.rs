//! Which equation fits a story; and then its answer.

use super::parts::two_parts;
use super::sentence::as_text;
use crate::answer::{Answer, Choice, Entry};
use crate::dice::Dice;
use crate::expr::{Expr, difference, equal, group, num, product, quotient, sum, var};
use crate::make::{Draft, choice, keep};
use crate::say::Say;
use serde_json::json;

/// The letter for the unknown number.
const LETTER: &str = "n";

/// The same story: first its equation, then its answer.
pub(super) fn equation_then_answer(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    let Answer::WholeNumber { value } = key else {
        return None;
    };
    if !matches!(entry, Entry::WholeNumber { .. }) || draft.prompt.iter().any(shows_a_sentence) {
        return None;
    }
    let mut sides = sides_of(draft)?;
    let right = sides.first()?.clone();
    // Each equation is solved by another number, so that just one fits.
    let values: Vec<_> = sides.iter().map(crate::mark::known_value).collect();
    let wanted = Some(num_rational::Ratio::from(*value));
    keep(values.first()? == &wanted)?;
    keep(values.iter().filter(|other| **other == wanted).count() == 1)?;
    dice.shuffle(&mut sides);
    let at = sides.iter().position(|side| *side == right)?;
    let equations: Vec<Expr> = sides
        .into_iter()
        .map(|side| equal(side, var(LETTER)))
        .collect();
    let statement = json!({
        "task": "equation_of_words", "inner": draft.statement,
        "choices": equations.iter().map(as_text).collect::<Option<Vec<_>>>()?,
    });
    let wrong = (0..equations.len() as u32)
        .filter(|place| *place as usize != at)
        .map(|place| ("equation-of-another-story", choice(place)))
        .collect();
    let choices = equations
        .into_iter()
        .map(|expr| Choice { shows: expr.into() })
        .collect();
    let mut new = draft.clone().ask(Say::new("equation-ask"));
    new.hints
        .insert(0, vec![Say::new("equation-hint-story").into()]);
    Some(two_parts(
        new,
        statement,
        (Entry::OneChoice { choices }, choice(at as u32), wrong),
        Say::new("equation-solve"),
        (entry.clone(), key.clone(), draft.misconceptions.clone()),
    ))
}

fn shows_a_sentence(block: &crate::Block) -> bool {
    matches!(block, crate::Block::Math { .. })
}

/// The side of the equation that fits first, then others.
fn sides_of(draft: &Draft) -> Option<Vec<Expr>> {
    let field = |name: &str| draft.statement.get(name);
    let whole = |name: &str| field(name).and_then(serde_json::Value::as_i64);
    let n = |name: &str| whole(name).map(num);
    // The larger number comes first where the order matters: a story shares 200, not 6.
    let two = |a: i64, b: i64, right: usize| {
        let (a, b) = (num(a.max(b)), num(a.min(b)));
        let mut all = vec![
            product([a.clone(), b.clone()]),
            sum([a.clone(), b.clone()]),
            quotient(a.clone(), b.clone()),
            difference(a, b),
        ];
        all.swap(0, right);
        all
    };
    Some(match field("task")?.as_str()? {
        "equal_groups" => two(whole("groups")?, whole("each")?, 0),
        "scale_up" => two(whole("factor")?, whole("small")?, 0),
        "scale_down" => two(whole("large")?, whole("factor")?, 2),
        "times_as_much" => two(whole("large")?, whole("small")?, 2),
        "how_many_more" => two(whole("large")?, whole("small")?, 3),
        "share_equally" => two(whole("amount")?, whole("shares")?, 2),
        "subtract" => two(whole("from")?, whole("take")?, 3),
        "left_after_buying" => {
            let (have, count, each) = (n("have")?, n("count")?, n("each")?);
            vec![
                difference(have.clone(), product([count.clone(), each.clone()])),
                product([group(difference(have.clone(), count.clone())), each.clone()]),
                sum([have.clone(), product([count.clone(), each.clone()])]),
                difference(difference(have, count), each),
            ]
        }
        "groups_and_more" => {
            let (groups, each, more) = (n("groups")?, n("each")?, n("more")?);
            vec![
                sum([product([groups.clone(), each.clone()]), more.clone()]),
                product([groups.clone(), group(sum([each.clone(), more.clone()]))]),
                difference(product([groups.clone(), each.clone()]), more.clone()),
                sum([groups, each, more]),
            ]
        }
        "join_then_share" => {
            let (one, more, shares) = (n("one")?, n("two")?, n("shares")?);
            vec![
                quotient(group(sum([one.clone(), more.clone()])), shares.clone()),
                sum([one.clone(), quotient(more.clone(), shares.clone())]),
                product([group(sum([one.clone(), more.clone()])), shares.clone()]),
                difference(group(sum([one, more])), shares),
            ]
        }
        "share_then_use" => {
            let (amount, shares, used) = (n("amount")?, n("shares")?, n("used")?);
            vec![
                difference(quotient(amount.clone(), shares.clone()), used.clone()),
                quotient(
                    group(difference(amount.clone(), used.clone())),
                    shares.clone(),
                ),
                sum([quotient(amount.clone(), shares.clone()), used.clone()]),
                difference(difference(amount, shares), used),
            ]
        }
        "make_use_share" => {
            let (groups, each, used, shares) = (n("groups")?, n("each")?, n("used")?, n("shares")?);
            let all = || product([groups.clone(), each.clone()]);
            vec![
                quotient(group(difference(all(), used.clone())), shares.clone()),
                difference(all(), quotient(used.clone(), shares.clone())),
                quotient(group(sum([all(), used.clone()])), shares.clone()),
                product([group(difference(all(), used)), shares]),
            ]
        }
        "start_earn_spend" => {
            let (start, weeks, each, spent) = (n("start")?, n("weeks")?, n("each")?, n("spent")?);
            let earned = || product([weeks.clone(), each.clone()]);
            vec![
                difference(sum([start.clone(), earned()]), spent.clone()),
                sum([start.clone(), earned(), spent.clone()]),
                difference(difference(start.clone(), earned()), spent.clone()),
                difference(
                    product([group(sum([start.clone(), weeks.clone()])), each.clone()]),
                    spent,
                ),
            ]
        }
        _ => return None,
    })
}
