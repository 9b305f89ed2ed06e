//! Laid-out things with a size, not yet on a page, with their roles for screen readers.

use crate::mark::Mark;

/// What a part is in the document's structure.
#[derive(Clone, Debug, PartialEq)]
pub enum Role {
    /// A heading; 1 is the document's title.
    Heading(u16, String),
    /// A paragraph.
    Paragraph,
    /// A numbered list.
    List,
    /// A list without numbers.
    Bullets,
    /// An item of a list: a label and a body.
    Item,
    /// The number of an item.
    ItemLabel,
    /// The content after the number.
    ItemBody,
    /// A figure with its text alternative.
    Figure(String),
    /// A table with its summary.
    Table(String),
    /// A row of a table.
    Row,
    /// A cell that names a column.
    ColumnHead,
    /// A cell that names a row.
    RowHead,
    /// A cell.
    Cell,
    /// Things that belong together.
    Division,
}

/// What marks are for a screen reader.
#[derive(Clone, Debug, PartialEq)]
pub enum Sense {
    /// Text, read as it is.
    Text,
    /// Text that is read as these words instead.
    ReadAs(String),
    /// Part of a figure.
    Graphic,
    /// Ornament: lines of a table, page numbers.
    Ornament,
}

/// A part of a slab.
#[derive(Clone, Debug, PartialEq)]
pub enum Part {
    /// Marks.
    Content(Sense, Vec<Mark>),
    /// Parts under a role.
    Group(Role, Vec<Part>),
}

impl Part {
    fn moved(&self, scale: f32, dx: f32, dy: f32) -> Self {
        match self {
            Part::Content(sense, marks) => Part::Content(
                sense.clone(),
                marks.iter().map(|mark| mark.moved(scale, dx, dy)).collect(),
            ),
            Part::Group(role, parts) => Part::Group(
                role.clone(),
                parts.iter().map(|p| p.moved(scale, dx, dy)).collect(),
            ),
        }
    }
}

/// Something with a size and its parts in reading order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Slab {
    /// Width in points.
    pub width: f32,
    /// Height in points.
    pub height: f32,
    /// What is on it.
    pub parts: Vec<Part>,
}

impl Slab {
    /// Empty space.
    #[must_use]
    pub fn space(width: f32, height: f32) -> Self {
        Self {
            width,
            height,
            parts: Vec::new(),
        }
    }

    /// Puts another slab onto this one and grows to hold it.
    pub fn put(&mut self, other: &Slab, dx: f32, dy: f32) {
        self.parts
            .extend(other.parts.iter().map(|part| part.moved(1.0, dx, dy)));
        self.width = self.width.max(dx + other.width);
        self.height = self.height.max(dy + other.height);
    }

    /// Slabs one below the other.
    #[must_use]
    pub fn stacked(slabs: &[Slab], gap: f32) -> Self {
        let mut all = Slab::default();
        for slab in slabs {
            let y = if all.height > 0.0 {
                all.height + gap
            } else {
                0.0
            };
            all.put(slab, 0.0, y);
        }
        all
    }

    /// The same under a role.
    #[must_use]
    pub fn under(mut self, role: Role) -> Self {
        self.parts = vec![Part::Group(role, self.parts)];
        self
    }

    /// The same in another size.
    #[must_use]
    pub fn scaled(&self, scale: f32) -> Self {
        Self {
            width: self.width * scale,
            height: self.height * scale,
            parts: self
                .parts
                .iter()
                .map(|part| part.moved(scale, 0.0, 0.0))
                .collect(),
        }
    }

    /// The same no wider and no higher than that.
    #[must_use]
    pub fn within(self, width: f32, height: f32) -> Self {
        let scale = (width / self.width.max(0.01)).min(height / self.height.max(0.01));
        if scale < 1.0 {
            self.scaled(scale)
        } else {
            self
        }
    }
}
