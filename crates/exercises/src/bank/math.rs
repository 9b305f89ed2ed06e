//! The little of MathML that our texts carry: numbers, signs, fractions.

use super::xml::{Element, Node};
use surefoot_catalogue::table::LineFault;

fn unknown(element: &Element) -> (u32, LineFault) {
    (
        element.line,
        LineFault::UnknownElement {
            element: element.name.clone(),
        },
    )
}

fn leaf(element: &Element) -> String {
    element.text().trim().to_owned()
}

fn is_digits(text: &str) -> bool {
    !text.is_empty() && text.len() <= 12 && text.bytes().all(|b| b.is_ascii_digit())
}

/// A fraction of two whole numbers as `top/bottom`.
fn fraction(element: &Element) -> Result<String, (u32, LineFault)> {
    let parts: Vec<&Element> = element.elements().collect();
    match parts.as_slice() {
        [top, bottom] if top.name == "mn" && bottom.name == "mn" => {
            let (top, bottom) = (leaf(top), leaf(bottom));
            if is_digits(&top) && is_digits(&bottom) {
                Ok(format!("{top}/{bottom}"))
            } else {
                Err(unknown(element))
            }
        }
        _ => Err(unknown(element)),
    }
}

/// A formula as text with fractions in braces; a whole number right before a
/// fraction makes a mixed number.
pub(super) fn formula(element: &Element) -> Result<String, (u32, LineFault)> {
    let mut pieces: Vec<(bool, String)> = Vec::new();
    for child in element.elements() {
        match child.name.as_str() {
            "mn" => pieces.push((true, leaf(child))),
            "mi" | "mo" | "mtext" => pieces.push((false, leaf(child))),
            "mrow" | "mstyle" | "semantics" => pieces.push((false, formula(child)?)),
            "mspace" | "annotation" | "annotation-xml" => {}
            "mfrac" => {
                let fraction = fraction(child)?;
                match pieces.pop() {
                    Some((true, whole)) if is_digits(&whole) => {
                        pieces.push((false, format!("{{{whole} {fraction}}}")));
                    }
                    other => {
                        pieces.extend(other);
                        pieces.push((false, format!("{{{fraction}}}")));
                    }
                }
            }
            _ => return Err(unknown(child)),
        }
    }
    let stray = element.children.iter().any(|node| match node {
        Node::Text(text) => !text.trim().is_empty(),
        Node::Element(_) => false,
    });
    if stray {
        return Err(unknown(element));
    }
    Ok(pieces
        .into_iter()
        .map(|(_, text)| text)
        .filter(|text| !text.is_empty())
        .collect::<Vec<_>>()
        .join(" "))
}
