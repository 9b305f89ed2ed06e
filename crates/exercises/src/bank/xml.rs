//! XML from outside as a small tree with lines.
//!
//! No document type is taken, so no entity beyond the five of XML and no other
//! file can come in; depth, pieces and size are capped while reading.

use quick_xml::escape::resolve_predefined_entity;
use quick_xml::events::{BytesStart, Event};
use quick_xml::{Reader, XmlVersion};
use std::collections::BTreeMap;
use surefoot_catalogue::table::{LineFault, cut};

/// Elements inside each other at most.
const MOST_DEPTH: usize = 32;
/// Elements, attributes and texts at most.
const MOST_PIECES: usize = 20_000;

/// An element.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Element {
    /// Its name without a prefix.
    pub name: String,
    /// The line it starts on.
    pub line: u32,
    /// Its attributes by name without a prefix.
    pub attributes: BTreeMap<String, String>,
    /// Its content.
    pub children: Vec<Node>,
}

/// A piece of an element's content.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Node {
    /// An element.
    Element(Element),
    /// Text.
    Text(String),
}

impl Element {
    /// An attribute; empty without one.
    pub fn attribute(&self, name: &str) -> &str {
        self.attributes.get(name).map_or("", String::as_str)
    }

    /// The elements directly in it.
    pub fn elements(&self) -> impl Iterator<Item = &Element> {
        self.children.iter().filter_map(|node| match node {
            Node::Element(element) => Some(element),
            Node::Text(_) => None,
        })
    }

    /// The first element of this name directly in it.
    pub fn child(&self, name: &str) -> Option<&Element> {
        self.elements().find(|element| element.name == name)
    }

    /// All its text, elements passed over.
    pub fn text(&self) -> String {
        let mut text = String::new();
        for node in &self.children {
            match node {
                Node::Text(more) => text.push_str(more),
                Node::Element(element) => text.push_str(&element.text()),
            }
        }
        text
    }
}

/// Counts lines up to a place that only moves on.
struct Lines<'a> {
    bytes: &'a [u8],
    at: usize,
    line: u32,
}

impl Lines<'_> {
    fn upto(&mut self, place: u64) -> u32 {
        let place = usize::try_from(place)
            .unwrap_or(usize::MAX)
            .min(self.bytes.len());
        if let Some(passed) = self.bytes.get(self.at..place) {
            let ends = passed.iter().filter(|b| **b == b'\n').count();
            self.line = self
                .line
                .saturating_add(u32::try_from(ends).unwrap_or(u32::MAX));
            self.at = place;
        }
        self.line
    }
}

/// Reads the outermost element.
///
/// # Errors
/// The fault and its line.
pub(super) fn read_xml(bytes: &[u8]) -> Result<Element, (u32, LineFault)> {
    let text =
        std::str::from_utf8(surefoot_catalogue::table::without_mark(bytes)).map_err(|error| {
            let upto = bytes.get(..error.valid_up_to()).unwrap_or_default();
            let ends = upto.iter().filter(|b| **b == b'\n').count();
            (
                u32::try_from(ends).unwrap_or(u32::MAX).saturating_add(1),
                LineFault::NotUtf8,
            )
        })?;
    let mut lines = Lines {
        bytes: text.as_bytes(),
        at: 0,
        line: 1,
    };
    let mut reader = Reader::from_str(text);
    let mut open: Vec<Element> = Vec::new();
    let mut root: Option<Element> = None;
    let mut pieces = 0_usize;
    loop {
        let line = lines.upto(reader.buffer_position());
        let event = reader.read_event().map_err(|error| {
            (
                line,
                LineFault::NotXml {
                    detail: cut(&error.to_string(), 120),
                },
            )
        })?;
        pieces += 1;
        if pieces > MOST_PIECES || open.len() > MOST_DEPTH {
            return Err((line, LineFault::XmlTooLarge));
        }
        match event {
            Event::Start(start) => {
                let element = element_of(&start, line, &mut pieces)?;
                if root.is_some() {
                    return Err((line, second_root()));
                }
                open.push(element);
            }
            Event::Empty(start) => {
                let element = element_of(&start, line, &mut pieces)?;
                close(element, &mut open, &mut root).map_err(|fault| (line, fault))?;
            }
            Event::End(_) => {
                if let Some(element) = open.pop() {
                    close(element, &mut open, &mut root).map_err(|fault| (line, fault))?;
                }
            }
            Event::Text(text) => put_text(&mut open, &text.xml10_content()),
            Event::CData(text) => put_text(&mut open, &text.xml10_content()),
            Event::GeneralRef(name) => {
                let character = name.resolve_char_ref().map_err(|error| {
                    (
                        line,
                        LineFault::NotXml {
                            detail: cut(&error.to_string(), 120),
                        },
                    )
                })?;
                let name = name.into_inner();
                match (character, resolve_predefined_entity(&name)) {
                    (Some(character), _) => put_text(&mut open, &character.to_string()),
                    (None, Some(text)) => put_text(&mut open, text),
                    (None, None) => return Err((line, LineFault::Entities)),
                }
            }
            Event::DocType(_) => return Err((line, LineFault::Entities)),
            Event::Comment(_) | Event::Decl(_) | Event::PI(_) => {}
            Event::Eof => break,
        }
    }
    let line = lines.line;
    match root {
        Some(root) if open.is_empty() => Ok(root),
        _ => Err((
            line,
            LineFault::NotXml {
                detail: "an element is not closed".into(),
            },
        )),
    }
}

fn second_root() -> LineFault {
    LineFault::NotXml {
        detail: "a second outermost element".into(),
    }
}

fn close(
    element: Element,
    open: &mut [Element],
    root: &mut Option<Element>,
) -> Result<(), LineFault> {
    match open.last_mut() {
        Some(parent) => parent.children.push(Node::Element(element)),
        None if root.is_none() => *root = Some(element),
        None => return Err(second_root()),
    }
    Ok(())
}

fn put_text(open: &mut [Element], text: &str) {
    let Some(parent) = open.last_mut() else {
        return;
    };
    match parent.children.last_mut() {
        Some(Node::Text(before)) => before.push_str(text),
        _ => parent.children.push(Node::Text(text.to_owned())),
    }
}

fn local(name: &str) -> String {
    name.rsplit(':').next().unwrap_or(name).to_owned()
}

fn element_of(
    start: &BytesStart<'_>,
    line: u32,
    pieces: &mut usize,
) -> Result<Element, (u32, LineFault)> {
    let bad = |detail: String| {
        (
            line,
            LineFault::NotXml {
                detail: cut(&detail, 120),
            },
        )
    };
    let mut attributes = BTreeMap::new();
    for attribute in start.attributes() {
        let attribute = attribute.map_err(|error| bad(error.to_string()))?;
        *pieces += 1;
        let value = attribute
            .normalized_value(XmlVersion::Implicit1_0)
            .map_err(|error| bad(error.to_string()))?;
        attributes.insert(local(attribute.key.as_ref()), value.into_owned());
    }
    Ok(Element {
        name: local(start.name().as_ref()),
        line,
        attributes,
        children: Vec::new(),
    })
}
