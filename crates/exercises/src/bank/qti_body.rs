//! The body of a QTI item: its text, line by line, and the question in it.

use super::math::formula;
use super::xml::{Element, Node};
use surefoot_catalogue::table::LineFault;

/// Marks the place in a sentence where a number is typed.
const GAP: &str = "____";

/// What the body says.
#[derive(Default)]
pub(super) struct Body<'a> {
    /// Its text, a paragraph a line.
    pub text: String,
    /// The questions in it.
    pub questions: Vec<&'a Element>,
    /// Elements that were left out, by name.
    pub left_out: Vec<String>,
}

type Fault = (u32, LineFault);

/// Elements that only start a new line.
const LINES: [&str; 14] = [
    "p",
    "div",
    "li",
    "ul",
    "ol",
    "h1",
    "h2",
    "h3",
    "h4",
    "h5",
    "h6",
    "blockquote",
    "qti-prompt",
    "qti-content-body",
];

/// Elements whose text runs on.
const RUNS: [&str; 12] = [
    "span", "b", "strong", "i", "em", "u", "small", "code", "q", "dfn", "abbr", "label",
];

/// Elements that are no part of the question itself.
const LEFT_OUT: [&str; 5] = [
    "qti-rubric-block",
    "qti-feedback-inline",
    "qti-feedback-block",
    "qti-stylesheet",
    "qti-template-inline",
];

/// The questions we can ask.
pub(super) const QUESTIONS: [&str; 3] = [
    "qti-choice-interaction",
    "qti-text-entry-interaction",
    "qti-order-interaction",
];

/// Reads a body.
///
/// # Errors
/// The element that cannot be shown, and its line.
pub(super) fn read_body(body: &Element) -> Result<Body<'_>, Fault> {
    let mut found = Body::default();
    walk(body, &mut found)?;
    found.text = tidy(&found.text);
    // A gap without other words is the box itself.
    let lines: Vec<&str> = found.text.lines().filter(|line| *line != GAP).collect();
    found.text = lines.join("\n");
    if let Some(text) = found.text.strip_suffix(GAP) {
        found.text = text.trim_end().to_owned();
    }
    Ok(found)
}

/// The text of an element that holds no question, on one line.
///
/// # Errors
/// As [`read_body`].
pub(super) fn line_of(element: &Element) -> Result<String, Fault> {
    let mut found = Body::default();
    walk(element, &mut found)?;
    if let Some(question) = found.questions.first() {
        return Err(unknown(question));
    }
    Ok(tidy(&found.text).replace('\n', " "))
}

fn unknown(element: &Element) -> Fault {
    (
        element.line,
        LineFault::UnknownElement {
            element: element.name.clone(),
        },
    )
}

fn walk<'a>(element: &'a Element, found: &mut Body<'a>) -> Result<(), Fault> {
    for node in &element.children {
        let child = match node {
            Node::Text(text) => {
                push_words(&mut found.text, text);
                continue;
            }
            Node::Element(child) => child,
        };
        let name = child.name.as_str();
        if name == "br" {
            found.text.push('\n');
        } else if name == "math" {
            let text = formula(child)?;
            found.text.push(' ');
            found.text.push_str(&text);
            found.text.push(' ');
        } else if name == "qti-text-entry-interaction" {
            found.questions.push(child);
            found.text.push(' ');
            found.text.push_str(GAP);
        } else if QUESTIONS.contains(&name) {
            found.questions.push(child);
            if let Some(prompt) = child.child("qti-prompt") {
                found.text.push('\n');
                walk(prompt, found)?;
                found.text.push('\n');
            }
        } else if LEFT_OUT.contains(&name) {
            if !found.left_out.contains(&child.name) {
                found.left_out.push(child.name.clone());
            }
        } else if LINES.contains(&name) {
            found.text.push('\n');
            walk(child, found)?;
            found.text.push('\n');
        } else if RUNS.contains(&name) {
            walk(child, found)?;
        } else {
            return Err(unknown(child));
        }
    }
    Ok(())
}

/// Words with every run of white space as one space: line ends of the file are no line ends.
fn push_words(text: &mut String, words: &str) {
    if words.starts_with(char::is_whitespace) {
        text.push(' ');
    }
    text.push_str(&words.split_whitespace().collect::<Vec<_>>().join(" "));
    if words.ends_with(char::is_whitespace) {
        text.push(' ');
    }
}

fn tidy(text: &str) -> String {
    text.lines()
        .map(|line| {
            let line = line.split_whitespace().collect::<Vec<_>>().join(" ");
            let mut tidied = line;
            for sign in [".", ",", "?", "!", ";", ":"] {
                tidied = tidied.replace(&format!("}} {sign}"), &format!("}}{sign}"));
                tidied = tidied.replace(&format!("{GAP} {sign}"), &format!("{GAP}{sign}"));
            }
            tidied
        })
        .filter(|line| !line.is_empty())
        .collect::<Vec<_>>()
        .join("\n")
}
