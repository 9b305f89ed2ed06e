//! Laid-out content with a size and roles for screen readers, before it is placed on a page.

use crate::mark::Mark;

/// The role of a part in the structure of the document.
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
    /// Parts that belong together.
    Division,
}

/// The meaning of marks for a screen reader.
#[derive(Clone, Debug, PartialEq)]
pub enum Sense {
    /// Text, read as it is.
    Text,
    /// Text with other words for a screen reader.
    ReadAs(String),
    /// Part of a figure.
    Graphic,
    /// Not read, such as lines of a table and page numbers.
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

/// Laid-out content: a size, and parts in reading order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Slab {
    /// Width in points.
    pub width: f32,
    /// Height in points.
    pub height: f32,
    /// Its parts.
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

    /// Puts another slab onto this one, which grows if needed.
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

    /// The same, scaled down if it is wider or higher than this.
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
