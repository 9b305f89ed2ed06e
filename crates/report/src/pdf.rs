//! Writes pages as a tagged PDF (PDF/UA-1) with krilla.

use crate::error::ReportError;
use crate::font::{Face, FontOf, runs};
use crate::mark::{Mark, Pen, Step};
use crate::paper::PrintOptions;
use crate::slab::{Role, Sense};
use crate::system_fonts::{self, SystemFont};
use krilla::color::luma;
use krilla::configure::{Accessibility, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::{PathBuilder, Point};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, LineCap, LineJoin, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::tagging::{
    Artifact, ArtifactType, ContentTag, Identifier, ListNumbering, Node, SpanTag, TableHeaderScope,
    Tag, TagGroup, TagKind, TagTree,
};
use krilla::text::{Font, GlyphId, KrillaGlyph};
use krilla::{Document, SerializeSettings};
use std::collections::BTreeMap;
use std::num::NonZeroU16;

/// Marks on a page, with the id under which the structure refers to them.
pub(crate) struct Content {
    pub id: usize,
    pub sense: Sense,
    pub marks: Vec<Mark>,
}

/// The structure of a document.
pub(crate) enum Tree {
    Leaf(usize),
    Group(Role, Vec<Tree>),
}

/// A heading with its page and height.
pub(crate) struct Bookmark {
    pub title: String,
    pub page: usize,
    pub y: f32,
}

struct Fonts {
    regular: Font,
    bold: Font,
    signs: Font,
    system: BTreeMap<SystemFont, Font>,
}

impl Fonts {
    fn load() -> Result<Self, ReportError> {
        let load = |face: Face| {
            Font::new(face.bytes().to_vec().into(), 0)
                .ok_or_else(|| ReportError::Writer(format!("the font {face:?} cannot be read")))
        };
        Ok(Self {
            regular: load(Face::Regular)?,
            bold: load(Face::Bold)?,
            signs: load(Face::Signs)?,
            system: BTreeMap::new(),
        })
    }

    fn of(&mut self, font: FontOf) -> Option<Font> {
        match font {
            FontOf::BuiltIn(Face::Regular) => Some(self.regular.clone()),
            FontOf::BuiltIn(Face::Bold) => Some(self.bold.clone()),
            FontOf::BuiltIn(Face::Signs) => Some(self.signs.clone()),
            FontOf::System(id) => {
                if let Some(font) = self.system.get(&id) {
                    return Some(font.clone());
                }
                let (bytes, nth) = system_fonts::file(id)?;
                let font = Font::new(bytes.into(), nth)?;
                self.system.insert(id, font.clone());
                Some(font)
            }
        }
    }
}

/// Writes pages and their structure.
pub(crate) fn write(
    options: &PrintOptions,
    title: &str,
    pages: &[Vec<Content>],
    trees: Vec<Tree>,
    bookmarks: &[Bookmark],
) -> Result<Vec<u8>, ReportError> {
    let fault = |error: String| ReportError::Writer(error);
    let configuration = ConfigurationBuilder::new()
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|error| fault(format!("{error:?}")))?;
    let mut document = Document::new_with(SerializeSettings {
        configuration,
        ..SerializeSettings::default()
    });
    let language = options.locale.language.as_str().to_string();
    document.set_metadata(
        Metadata::new()
            .title(title.to_string())
            .language(language.clone())
            .creator("Surefoot".to_string()),
    );
    let mut fonts = Fonts::load()?;
    let (width, height) = options.paper.size();
    let settings =
        PageSettings::from_wh(width, height).ok_or_else(|| fault("no such paper".to_string()))?;
    let mut identifiers: BTreeMap<usize, Identifier> = BTreeMap::new();
    for contents in pages {
        let mut page = document.start_page_with(settings.clone());
        let mut surface = page.surface();
        for content in contents {
            let identifier = surface.start_tagged(match &content.sense {
                Sense::Text => ContentTag::Span(SpanTag::empty()),
                Sense::ReadAs(words) => {
                    ContentTag::Span(SpanTag::empty().with_actual_text(Some(words)))
                }
                Sense::Graphic => ContentTag::Other,
                Sense::Ornament => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Other)),
            });
            for mark in &content.marks {
                draw(&mut surface, &mut fonts, mark)?;
            }
            surface.end_tagged();
            if content.sense != Sense::Ornament {
                identifiers.insert(content.id, identifier);
            }
        }
        surface.finish();
        page.finish();
    }
    let mut tree = TagTree::new().with_lang(Some(language));
    for node in trees {
        if let Some(node) = tagged(node, &mut identifiers) {
            tree.push(node);
        }
    }
    document.set_tag_tree(tree);
    let mut outline = Outline::new();
    for mark in bookmarks {
        let place = XyzDestination::new(mark.page, Point::from_xy(0.0, mark.y));
        outline.push_child(OutlineNode::new(mark.title.clone(), place));
    }
    document.set_outline(outline);
    document
        .finish()
        .map_err(|error| fault(format!("{error:?}")))
}

fn tagged(tree: Tree, identifiers: &mut BTreeMap<usize, Identifier>) -> Option<Node> {
    match tree {
        Tree::Leaf(id) => identifiers.remove(&id).map(Node::Leaf),
        Tree::Group(role, trees) => {
            let mut group = TagGroup::new(tag(role));
            for tree in trees {
                if let Some(node) = tagged(tree, identifiers) {
                    group.push(node);
                }
            }
            Some(Node::Group(group))
        }
    }
}

fn tag(role: Role) -> TagKind {
    match role {
        Role::Heading(level, title) => Tag::Hn(
            NonZeroU16::new(level).unwrap_or(NonZeroU16::MIN),
            Some(title),
        )
        .into(),
        Role::Paragraph => Tag::P.into(),
        Role::List => Tag::L(ListNumbering::Decimal).into(),
        Role::Bullets => Tag::L(ListNumbering::None).into(),
        Role::Item => Tag::LI.into(),
        Role::ItemLabel => Tag::Lbl.into(),
        Role::ItemBody => Tag::LBody.into(),
        Role::Figure(alt) => Tag::Figure(Some(alt)).into(),
        Role::Table(summary) => Tag::Table.with_summary(Some(summary)).into(),
        Role::Row => Tag::TR.into(),
        Role::ColumnHead => Tag::TH(TableHeaderScope::Column).into(),
        Role::RowHead => Tag::TH(TableHeaderScope::Row).into(),
        Role::Cell => Tag::TD.into(),
        Role::Division => Tag::Div.into(),
    }
}

fn draw(surface: &mut Surface, fonts: &mut Fonts, mark: &Mark) -> Result<(), ReportError> {
    match mark {
        Mark::Text {
            x,
            y,
            size,
            face,
            text,
        } => draw_text(surface, fonts, (*x, *y), *size, *face, text)?,
        Mark::Shape { path, fill, pen } => {
            let mut outline = PathBuilder::new();
            for step in path {
                match *step {
                    Step::Move(x, y) => outline.move_to(x, y),
                    Step::Line(x, y) => outline.line_to(x, y),
                    Step::Curve(a, b, c, d, x, y) => outline.cubic_to(a, b, c, d, x, y),
                    Step::Close => outline.close(),
                }
            }
            if let Some(outline) = outline.finish() {
                surface.set_fill(fill.map(area));
                surface.set_stroke(pen.map(line));
                if fill.is_some() || pen.is_some() {
                    surface.draw_path(&outline);
                }
            }
        }
    }
    Ok(())
}

fn area(grey: u8) -> Fill {
    Fill {
        paint: luma::Color::new(grey).into(),
        ..Fill::default()
    }
}

fn line(pen: Pen) -> Stroke {
    Stroke {
        paint: luma::Color::new(pen.grey).into(),
        width: pen.width,
        line_cap: if pen.dash.is_some() {
            LineCap::Butt
        } else {
            LineCap::Round
        },
        line_join: LineJoin::Round,
        opacity: NormalizedF32::ONE,
        dash: pen.dash.map(|(stroke, gap)| StrokeDash {
            array: vec![stroke, gap],
            offset: 0.0,
        }),
        ..Stroke::default()
    }
}

/// Draws text in runs of one font.
fn draw_text(
    surface: &mut Surface,
    fonts: &mut Fonts,
    (mut x, y): (f32, f32),
    size: f32,
    face: Face,
    text: &str,
) -> Result<(), ReportError> {
    surface.set_stroke(None);
    surface.set_fill(Some(area(0)));
    for run in runs(text, face) {
        let font = (fonts.of(run.font))
            .ok_or_else(|| ReportError::Writer("a font of the system cannot be read".into()))?;
        let glyphs: Vec<KrillaGlyph> = (run.glyphs.iter())
            .map(|glyph| {
                KrillaGlyph::new(
                    GlyphId::new(glyph.id),
                    glyph.advance,
                    glyph.right,
                    glyph.up,
                    0.0,
                    glyph.text.clone(),
                    None,
                )
            })
            .collect();
        surface.draw_glyphs(Point::from_xy(x, y), &glyphs, font, text, size, false);
        x += run.width() * size;
    }
    Ok(())
}
