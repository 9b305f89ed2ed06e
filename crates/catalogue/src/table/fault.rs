//! Why a line or an item was not taken, and what would help.

use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// Why a line or an item of a file was not taken. Its words, with what
/// would help, are the message `line-fault-<code>`.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LineFault {
    /// The file is larger than is read.
    #[error("the file is larger than {most_bytes} bytes")]
    FileTooLarge {
        /// The greatest size.
        #[ts(type = "number")]
        most_bytes: u64,
    },
    /// More files than are read at once.
    #[error("more than {most} files at once")]
    TooManyFiles {
        /// The greatest number.
        most: u32,
    },
    /// Neither a table nor an item, or a zip that cannot be read.
    #[error("this is neither a CSV table nor a QTI 3 item")]
    NotKnown,
    /// Not text in UTF-8.
    #[error("this is not text in UTF-8; save the file as \"CSV UTF-8\"")]
    NotUtf8,
    /// A quotation mark is not closed, or is inside a cell without quotes.
    #[error("a quotation mark is not closed, or stands alone inside a cell")]
    LooseQuote,
    /// A record longer or wider than any exercise.
    #[error("this line is too long or has too many cells")]
    LineTooLong,
    /// Not as many cells as the heading has.
    #[error("this line has {found} cells, the heading has {wanted}")]
    WrongCells {
        /// Cells of the line.
        found: u32,
        /// Cells of the heading.
        wanted: u32,
    },
    /// The heading lacks a column.
    #[error("the heading has no column {column:?}")]
    MissingColumn {
        /// Its name.
        column: String,
    },
    /// The heading has a column we do not know.
    #[error("there is no column {column:?}; docs/question-bank.md lists them")]
    UnknownColumn {
        /// As written, cut to 40 characters.
        column: String,
    },
    /// The heading has a column twice.
    #[error("the column {column:?} stands twice")]
    ColumnTwice {
        /// Its name.
        column: String,
    },
    /// A cell that must be filled is empty.
    #[error("{column} is empty")]
    Empty {
        /// The column or the part.
        column: String,
    },
    /// No such concept in the class.
    #[error("there is no concept {text:?}")]
    UnknownConcept {
        /// As written, cut to 80 characters.
        text: String,
    },
    /// Several concepts have this title.
    #[error("{text:?} names more than one concept; write its id")]
    TwoConcepts {
        /// As written.
        text: String,
    },
    /// No such kind of answer.
    #[error("{text:?} is no kind of answer")]
    UnknownKind {
        /// As written.
        text: String,
    },
    /// A level other than 1, 2, 3.
    #[error("the level is 1, 2 or 3, not {text:?}")]
    BadLevel {
        /// As written.
        text: String,
    },
    /// No such rule of form, or one that does not go with the kind.
    #[error("the form {text:?} does not go with this kind of answer")]
    BadForm {
        /// As written.
        text: String,
    },
    /// The key breaks the rule of form it is given.
    #[error("the answer itself is not in the form asked for")]
    KeyBreaksForm,
    /// Longer than its place.
    #[error("{column} has {chars} characters, at most {most} fit")]
    TooLong {
        /// The column or the part.
        column: String,
        /// Its length.
        chars: u32,
        /// The greatest length.
        most: u32,
    },
    /// More of something than there is room for.
    #[error("there are {found} {column}, at most {most} fit")]
    TooMany {
        /// What: `choices`, `hints`, `steps`, `wrong`.
        column: String,
        /// How many.
        found: u32,
        /// The greatest number.
        most: u32,
    },
    /// A character that is no text: a control, or one that turns the direction of writing.
    #[error("{column} has a character that is no text")]
    BadCharacter {
        /// The column or the part.
        column: String,
    },
    /// Braces that hold no number.
    #[error("{text:?} in braces is no number; write {{3/4}}, {{2 3/4}} or {{0.5}}")]
    BadBraces {
        /// The text between them, cut to 40 characters.
        text: String,
    },
    /// The answer does not fit the kind.
    #[error("{text:?} is no answer of the kind {kind:?}")]
    BadAnswer {
        /// As written, cut to 80 characters.
        text: String,
        /// The kind.
        kind: String,
    },
    /// The answer is none of the choices.
    #[error("{text:?} is not one of the choices")]
    NotAChoice {
        /// As written, cut to 80 characters.
        text: String,
    },
    /// Fewer than two choices.
    #[error("a question to choose from needs two choices or more")]
    TooFewChoices,
    /// Two choices are alike.
    #[error("the choice {text:?} stands twice")]
    ChoicesAlike {
        /// Which.
        text: String,
    },
    /// Choices where the kind has none.
    #[error("this kind of answer has no choices")]
    NoChoicesHere,
    /// A translation with another number of parts.
    #[error("{column} does not have as many parts as the text it translates")]
    TranslationParts {
        /// The column.
        column: String,
    },
    /// A wrong answer that is right.
    #[error("the wrong answer {text:?} is right")]
    WrongIsRight {
        /// As written.
        text: String,
    },
    /// A wrong answer twice.
    #[error("the wrong answer {text:?} stands twice")]
    WrongTwice {
        /// As written.
        text: String,
    },
    /// Feedback without its wrong answer, or the other way round.
    #[error("{column} stands without its partner")]
    Alone {
        /// The column.
        column: String,
    },
    /// The same exercise comes earlier in the import.
    #[error("the same exercise stands in line {line} of {file}")]
    SameAsLine {
        /// The file.
        file: String,
        /// The line.
        line: u32,
    },
    /// The class has this exercise already.
    #[error("the class has this exercise already")]
    AlreadyThere,
    /// No more room in the class.
    #[error("a class has room for {most} own exercises")]
    BankFull {
        /// The greatest number.
        most: u32,
    },
    /// The exercises of the class are too long all together.
    #[error("the exercises of the class are longer than {most_bytes} bytes all together")]
    BankTooLong {
        /// The greatest size.
        most_bytes: u32,
    },
    /// Not well-formed XML.
    #[error("this is not well-formed XML: {detail}")]
    NotXml {
        /// What the reader says.
        detail: String,
    },
    /// A document type, which could name other files or expand without limit.
    #[error("a document type or an entity of its own is not taken")]
    Entities,
    /// Deeper, larger or more pieces than an item has.
    #[error("the item is too deep or too large")]
    XmlTooLarge,
    /// An item of an older QTI.
    #[error("this is an item of QTI 2, not of QTI 3")]
    OlderQti,
    /// XML, but no item.
    #[error("<{element}> is no item of QTI 3")]
    NotAnItem {
        /// The outermost element.
        element: String,
    },
    /// An element we do not show.
    #[error("<{element}> cannot be shown here")]
    UnknownElement {
        /// Its name.
        element: String,
    },
    /// None or several questions in one item.
    #[error("the item has {found} questions; one is taken")]
    NotOneQuestion {
        /// How many.
        found: u32,
    },
    /// No declaration of the response that the question names.
    #[error("there is no response declaration {text:?}")]
    NoDeclaration {
        /// The name.
        text: String,
    },
    /// The declaration does not go with the question.
    #[error("cardinality {cardinality:?} and base type {base_type:?} do not go with <{element}>")]
    DeclarationUnfit {
        /// The question's element.
        element: String,
        /// As written.
        cardinality: String,
        /// As written.
        base_type: String,
    },
    /// No correct response, or no mapping, where the processing needs one.
    #[error("the item does not say which answer is right")]
    NoKey,
    /// Another way of marking than the two templates.
    #[error("marking by {text:?} is not taken; use match_correct or map_response")]
    UnknownProcessing {
        /// The template, or the element in its place.
        text: String,
    },
    /// Several responses get the most, so none of them is the key.
    #[error("more than one response gets the most of the mapping")]
    SeveralBest,
    /// Nothing gets a value above zero.
    #[error("no response gets a value above zero")]
    NoneBest,
    /// The correct response is not the one with the highest value.
    #[error("the correct response is not the one with the highest value")]
    KeysDisagree,
    /// A number of the mapping that cannot be read.
    #[error("{text:?} is no number")]
    NotANumber {
        /// As written.
        text: String,
    },
    /// No such strand.
    #[error("there is no strand {text:?}")]
    UnknownStrand {
        /// As written.
        text: String,
    },
    /// A language that the program does not have.
    #[error("{text:?} is not a language of this program")]
    UnknownLanguage {
        /// Its tag as written.
        text: String,
    },
    /// A grade other than 1 to 12.
    #[error("the grade is 1 to 12, not {text:?}")]
    BadGrade {
        /// As written.
        text: String,
    },
    /// Not in the form of an id.
    #[error("{text:?} is no id: small letters and figures joined by single hyphens")]
    BadId {
        /// As written.
        text: String,
    },
    /// A concept with this id exists already.
    #[error("there is a concept {text:?} already")]
    ConceptThere {
        /// The id.
        text: String,
    },
    /// Concepts that come before each other in a circle.
    #[error("what comes before goes round in a circle: {text}")]
    Circle {
        /// The ids around it.
        text: String,
    },
    /// No more room for concepts.
    #[error("a class has room for {most} own concepts")]
    ConceptsFull {
        /// The greatest number.
        most: u32,
    },
    /// Not a package of the kind asked for.
    #[error("this is no CASE package: {detail}")]
    NotAPackage {
        /// What is missing or wrong.
        detail: String,
    },
    /// A concept was not chosen for an item.
    #[error("choose the concept that the items are for")]
    NoConceptChosen,
}

impl LineFault {
    /// [`LineFault::Empty`].
    pub fn empty(column: &str) -> Self {
        Self::Empty {
            column: column.into(),
        }
    }
}

/// The beginning of a text, at most `most_chars` characters, without control characters.
pub fn cut(text: &str, most_chars: usize) -> String {
    text.chars()
        .filter(|c| !c.is_control())
        .take(most_chars)
        .collect()
}

impl LineRefused {
    /// A line that was not taken.
    #[must_use]
    pub fn line(line: u32, fault: LineFault) -> Self {
        Self {
            line,
            at: String::new(),
            fault,
        }
    }

    /// A place of a file without lines that was not taken.
    #[must_use]
    pub fn at(at: impl Into<String>, fault: LineFault) -> Self {
        Self {
            line: 0,
            at: at.into(),
            fault,
        }
    }
}

/// A line or an item that was not taken.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct LineRefused {
    /// The line, from 1; 0 in a file without lines.
    pub line: u32,
    /// The place in a file without lines, such as `CFItems[3].fullStatement`; else empty.
    pub at: String,
    /// Why.
    pub fault: LineFault,
}
