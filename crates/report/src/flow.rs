//! Places slabs on pages. What does not fit goes to the next page; a group on two pages stays one
//! group for screen readers.

use crate::error::ReportError;
use crate::font::{Face, width};
use crate::inline::{Inline, Style, bold, lines, paragraph};
use crate::mark::Mark;
use crate::paper::{FOOT_LINE, MARGIN, PrintOptions};
use crate::pdf::{self, Bookmark, Content, Tree};
use crate::slab::{Part, Role, Sense, Slab};
use crate::table::Table;
use crate::words::Words;

/// A document that is filled from the top.
pub struct Document {
    options: PrintOptions,
    title: String,
    /// The lines at the foot of each page.
    foot: Vec<String>,
    pages: Vec<Vec<Content>>,
    /// Open groups, outermost first; the first is the document.
    open: Vec<(Role, Vec<Tree>)>,
    next_id: usize,
    y: f32,
    /// Headings with page and height.
    bookmarks: Vec<Bookmark>,
}

impl Document {
    /// An empty document. `foot` is printed at the foot of each page, beside its number.
    #[must_use]
    pub fn new(options: PrintOptions, title: impl Into<String>, foot: impl Into<String>) -> Self {
        let foot: String = foot.into();
        Self {
            options,
            title: title.into(),
            foot: foot_lines(&foot, options.width() - PAGE_NUMBER),
            pages: vec![Vec::new()],
            open: vec![(Role::Division, Vec::new())],
            next_id: 0,
            y: 0.0,
            bookmarks: Vec::new(),
        }
    }

    /// Width of the content in points.
    #[must_use]
    pub fn width(&self) -> f32 {
        self.options.width()
    }

    /// Height of the content of a page in points.
    #[must_use]
    pub fn height(&self) -> f32 {
        // There is space for one line at the foot.
        let more = self.foot.len().saturating_sub(1);
        self.options.height() - more as f32 * FOOT_LEADING
    }

    /// Height left on this page in points.
    #[must_use]
    pub fn left(&self) -> f32 {
        self.height() - self.y
    }

    /// Pages so far.
    #[must_use]
    pub fn page_count(&self) -> usize {
        self.pages.len()
    }

    /// Begins a group; what is placed until [`Document::close`] belongs to it.
    pub fn open(&mut self, role: Role) {
        self.open.push((role, Vec::new()));
    }

    /// Ends the group that was begun last.
    pub fn close(&mut self) {
        if self.open.len() > 1
            && let Some((role, trees)) = self.open.pop()
            && let Some((_, outer)) = self.open.last_mut()
            && !trees.is_empty()
        {
            outer.push(Tree::Group(role, trees));
        }
    }

    /// Continues on a new page, unless this one is empty.
    pub fn new_page(&mut self) {
        if self.y > 0.0 {
            self.pages.push(Vec::new());
            self.y = 0.0;
        }
    }

    /// Leaves space, unless at the top of a page.
    pub fn space(&mut self, height: f32) {
        if self.y > 0.0 {
            self.y += height;
        }
    }

    /// Continues on a new page if less than this height is left.
    pub fn need(&mut self, height: f32) {
        if self.left() < height {
            self.new_page();
        }
    }

    /// Places a slab below the one before. Scales down a slab that is larger than a page.
    pub fn place(&mut self, slab: &Slab) {
        let slab = slab
            .clone()
            .within(self.options.width() + 0.5, self.height());
        self.need(slab.height);
        let y = self.y;
        let trees: Vec<Tree> = slab
            .parts
            .iter()
            .filter_map(|part| self.take(part, MARGIN, MARGIN + y))
            .collect();
        if let Some((_, open)) = self.open.last_mut() {
            open.extend(trees);
        }
        self.y += slab.height;
    }

    fn take(&mut self, part: &Part, dx: f32, dy: f32) -> Option<Tree> {
        match part {
            Part::Content(sense, marks) => {
                let id = self.next_id;
                self.next_id += 1;
                let content = Content {
                    id,
                    sense: sense.clone(),
                    marks: marks.iter().map(|m| m.moved(1.0, dx, dy)).collect(),
                };
                if let Some(page) = self.pages.last_mut() {
                    page.push(content);
                }
                (*sense != Sense::Ornament).then_some(Tree::Leaf(id))
            }
            Part::Group(role, parts) => {
                let trees: Vec<Tree> = parts.iter().filter_map(|p| self.take(p, dx, dy)).collect();
                (!trees.is_empty()).then(|| Tree::Group(role.clone(), trees))
            }
        }
    }

    /// Adds a heading, with space for more on the same page.
    pub fn heading(&mut self, level: u16, text: &str) {
        let size = match level {
            1 => 19.0,
            2 => 13.5,
            _ => 11.5,
        };
        self.space(if level == 1 { 0.0 } else { 12.0 });
        let slab = paragraph(&bold(text), self.width(), Style::of(size))
            .under(Role::Heading(level, text.to_string()));
        self.need(slab.height + 70.0);
        self.bookmarks.push(Bookmark {
            title: text.to_string(),
            page: self.pages.len() - 1,
            y: MARGIN + self.y,
        });
        self.place(&slab);
        self.space(if level == 1 { 2.0 } else { 3.0 });
    }

    /// Adds a paragraph. Its lines may continue on the next page.
    pub fn paragraph(&mut self, inlines: &[Inline], style: Style) {
        let set = lines(inlines, self.width(), style);
        // At least two lines are at the foot of a page.
        self.need(set.iter().take(2).map(|l| l.height).sum());
        self.open(Role::Paragraph);
        for line in &set {
            self.place(line);
        }
        self.close();
    }

    /// Adds a table. Its head is repeated at the top of each page.
    pub fn table(&mut self, table: &Table) {
        let (head, rows) = table.laid_out(self.width());
        let head_height = head.as_ref().map_or(0.0, |h| h.height);
        self.need(head_height + rows.first().map_or(0.0, |r| r.height));
        self.open(Role::Table(table.summary.clone()));
        if let Some(head) = &head {
            self.place(head);
        }
        let again = head.as_ref().map(as_ornament);
        for row in &rows {
            if self.left() < row.height {
                self.new_page();
                if let Some(again) = &again {
                    self.place(again);
                }
            }
            self.place(row);
        }
        self.close();
    }

    /// Writes the document.
    pub fn finish(mut self) -> Result<Vec<u8>, ReportError> {
        while self.open.len() > 1 {
            self.close();
        }
        if self.pages.len() > 1 && self.pages.last().is_some_and(Vec::is_empty) {
            self.pages.pop();
        }
        let words = Words::new(self.options.locale);
        let (across, high) = self.options.paper.size();
        let count = self.pages.len();
        for (place, page) in self.pages.iter_mut().enumerate() {
            let number = words.say(
                "report-page",
                &[("page", (place + 1).into()), ("pages", count.into())],
            )?;
            let text = |x: f32, above: f32, text: String| Mark::Text {
                x,
                y: high - FOOT_LINE - above,
                size: FOOT_SIZE,
                face: Face::Regular,
                text,
            };
            let right = across - MARGIN - width(&number, Face::Regular, FOOT_SIZE);
            let lines = self.foot.iter().rev().enumerate();
            let mut marks: Vec<Mark> = lines
                .map(|(nth, line)| text(MARGIN, nth as f32 * FOOT_LEADING, line.clone()))
                .collect();
            marks.push(text(right, 0.0, number));
            page.push(Content {
                id: usize::MAX,
                sense: Sense::Ornament,
                marks,
            });
        }
        let trees = self.open.pop().map(|(_, trees)| trees).unwrap_or_default();
        pdf::write(
            &self.options,
            &self.title,
            &self.pages,
            trees,
            &self.bookmarks,
        )
    }
}

/// The width kept for the number of the page at its foot, in points.
const PAGE_NUMBER: f32 = 80.0;
/// The size of the foot, and the distance of its lines, in points.
const FOOT_SIZE: f32 = 8.5;
const FOOT_LEADING: f32 = 10.5;

/// Breaks the words at the foot into lines. Parts with three spaces between them stay whole if
/// they fit on a line.
fn foot_lines(foot: &str, most: f32) -> Vec<String> {
    let wide = |text: &str| width(text, Face::Regular, FOOT_SIZE);
    let mut lines = vec![String::new()];
    let mut put = |piece: &str, between: &str| {
        if let Some(line) = lines.last_mut() {
            let longer = match line.is_empty() {
                true => piece.to_owned(),
                false => format!("{line}{between}{piece}"),
            };
            if line.is_empty() || wide(&longer) <= most {
                *line = longer;
            } else {
                lines.push(piece.to_owned());
            }
        }
    };
    for part in foot.split(BETWEEN_PARTS).filter(|part| !part.is_empty()) {
        if wide(part) <= most {
            put(part, BETWEEN_PARTS);
        } else {
            for word in part.split(' ') {
                put(word, " ");
            }
        }
    }
    lines
}

/// Between the parts of a foot.
pub(crate) const BETWEEN_PARTS: &str = "   ";

/// The same marks, hidden from screen readers.
pub(crate) fn as_ornament(slab: &Slab) -> Slab {
    fn marks(parts: &[Part], all: &mut Vec<Mark>) {
        for part in parts {
            match part {
                Part::Content(_, more) => all.extend(more.iter().cloned()),
                Part::Group(_, parts) => marks(parts, all),
            }
        }
    }
    let mut all = Vec::new();
    marks(&slab.parts, &mut all);
    Slab {
        parts: vec![Part::Content(Sense::Ornament, all)],
        ..slab.clone()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_foot_is_whole_on_several_lines() {
        let parts: Vec<String> = (0..12)
            .map(|n| format!("g4-some-concept-{n} · 2 · 123456 · v1"))
            .collect();
        let foot = parts.join(BETWEEN_PARTS);
        let options = PrintOptions::default();
        let page = Document::new(options, "x", foot.clone());
        assert!(page.foot.len() > 3);
        assert_eq!(page.foot.join(BETWEEN_PARTS), foot);
        assert!(page.height() < options.height());
        let sentence = "Die Klasse hat einen langen Namen ".repeat(6);
        let lines = foot_lines(sentence.trim(), 400.0);
        assert_eq!(lines.join(" "), sentence.trim());
        assert!(
            lines
                .iter()
                .all(|line| width(line, Face::Regular, FOOT_SIZE) <= 400.0)
        );
        assert_eq!(foot_lines("", 400.0), [""]);
    }
}
