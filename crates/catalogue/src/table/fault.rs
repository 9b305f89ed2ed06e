//! Why a line or an item of a file is refused.

use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// Why a line or an item of a file is refused. The message `line-fault-<code>` also says
/// what helps.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LineFault {
    /// The file is too large.
    #[error("the file is larger than {most_bytes} bytes")]
    FileTooLarge {
        /// The greatest size.
        #[ts(type = "number")]
        most_bytes: u64,
    },
    /// Too many files in one import.
    #[error("more than {most} files in one import")]
    TooManyFiles {
        /// The greatest number.
        most: u32,
    },
    /// The file is neither a table nor an item, or it is a zip that cannot be read.
    #[error("this is neither a CSV table nor a QTI 3 item")]
    NotKnown,
    /// The file or the line is not in UTF-8.
    #[error("this is not text in UTF-8; save the file as \"CSV UTF-8\"")]
    NotUtf8,
    /// A quotation mark is not closed, or is inside a cell without quotes.
    #[error("a quotation mark is not closed, or is inside a cell without quotes")]
    LooseQuote,
    /// The line has more bytes or cells than any exercise needs.
    #[error("this line is too long or has too many cells")]
    LineTooLong,
    /// The line has more or fewer cells than the heading.
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
    /// The heading has an unknown column.
    #[error(
        "there is no column {column:?}; docs/question-bank.md and docs/own-catalogue.md list them"
    )]
    UnknownColumn {
        /// As written, cut to 40 characters.
        column: String,
    },
    /// The heading has a column twice.
    #[error("the heading has the column {column:?} twice")]
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
    /// The class has no such concept.
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
    /// There is no such kind of answer.
    #[error("there is no kind of answer {text:?}")]
    UnknownKind {
        /// As written.
        text: String,
    },
    /// The level is not 1, 2 or 3.
    #[error("the level is 1, 2 or 3, not {text:?}")]
    BadLevel {
        /// As written.
        text: String,
    },
    /// There is no such form, or it does not go with the kind of answer.
    #[error("the form {text:?} does not go with this kind of answer")]
    BadForm {
        /// As written.
        text: String,
    },
    /// The key is not in the form that the exercise asks for.
    #[error("the answer is not in the form that the line asks for")]
    KeyBreaksForm,
    /// The text is too long.
    #[error("{column} has {chars} characters, the limit is {most}")]
    TooLong {
        /// The column or the part.
        column: String,
        /// Its length.
        chars: u32,
        /// The greatest length.
        most: u32,
    },
    /// The line has too many of something.
    #[error("there are {found} {column}, the limit is {most}")]
    TooMany {
        /// What: for example `choices`, `hints` or `CFItems`.
        column: String,
        /// How many.
        found: u32,
        /// The greatest number.
        most: u32,
    },
    /// The text has a control character, a private one, or one that turns the direction of
    /// writing.
    #[error("{column} has a character that a text must not have")]
    BadCharacter {
        /// The column or the part.
        column: String,
    },
    /// There is no number in the braces.
    #[error("{text:?} in braces is not a number; write {{3/4}}, {{2 3/4}} or {{0.5}}")]
    BadBraces {
        /// The text between them, cut to 40 characters.
        text: String,
    },
    /// The answer does not fit the kind.
    #[error("{text:?} is not an answer of the kind {kind:?}")]
    BadAnswer {
        /// As written, cut to 80 characters.
        text: String,
        /// The kind.
        kind: String,
    },
    /// The answer is not one of the choices.
    #[error("{text:?} is not one of the choices")]
    NotAChoice {
        /// As written, cut to 80 characters.
        text: String,
    },
    /// There are fewer than two choices.
    #[error("this kind of answer needs two choices or more")]
    TooFewChoices,
    /// Two choices are the same.
    #[error("the choice {text:?} is there twice")]
    ChoicesAlike {
        /// The choice.
        text: String,
    },
    /// There are choices, but this kind of answer has none.
    #[error("this kind of answer has no choices")]
    NoChoicesHere,
    /// A translation has more or fewer parts than the text.
    #[error("{column} does not have as many parts as the text it translates")]
    TranslationParts {
        /// The column.
        column: String,
    },
    /// A wrong answer is right.
    #[error("the wrong answer {text:?} is right")]
    WrongIsRight {
        /// As written.
        text: String,
    },
    /// A wrong answer is there twice.
    #[error("the wrong answer {text:?} is there twice")]
    WrongTwice {
        /// As written.
        text: String,
    },
    /// There is a wrong answer without feedback, or feedback without a wrong answer.
    #[error("{column} is alone: a wrong answer and its feedback belong together")]
    Alone {
        /// The column.
        column: String,
    },
    /// The import has the same exercise earlier.
    #[error("the same exercise is in line {line} of {file}")]
    SameAsLine {
        /// The file.
        file: String,
        /// The line.
        line: u32,
    },
    /// The class already has this exercise.
    #[error("the class has this exercise already")]
    AlreadyThere,
    /// The class has no room for more exercises.
    #[error("a class has room for {most} own exercises")]
    BankFull {
        /// The greatest number.
        most: u32,
    },
    /// All exercises of the class together are too long.
    #[error("all exercises of the class together are longer than {most_bytes} bytes")]
    BankTooLong {
        /// The greatest size.
        most_bytes: u32,
    },
    /// The file is not well-formed XML.
    #[error("this is not well-formed XML: {detail}")]
    NotXml {
        /// The message of the reader.
        detail: String,
    },
    /// The file has a document type, which could name other files or expand without limit.
    #[error("a document type or an entity beyond those of XML is refused")]
    Entities,
    /// The item is nested too deep or has too many parts.
    #[error("the item is nested too deep or has too many parts")]
    XmlTooLarge,
    /// The item is of an older version of QTI.
    #[error("this is an item of QTI 2, not of QTI 3")]
    OlderQti,
    /// The file is XML, but not an item.
    #[error("<{element}> is not an item of QTI 3")]
    NotAnItem {
        /// The outermost element.
        element: String,
    },
    /// The program cannot show an element.
    #[error("<{element}> cannot be shown here")]
    UnknownElement {
        /// Its name.
        element: String,
    },
    /// The item has no question or several.
    #[error("the item has {found} questions instead of one")]
    NotOneQuestion {
        /// How many.
        found: u32,
    },
    /// The item does not declare the response that the question names.
    #[error("there is no response declaration {text:?}")]
    NoDeclaration {
        /// The name.
        text: String,
    },
    /// The response declaration does not go with the question.
    #[error("cardinality {cardinality:?} and base type {base_type:?} do not go with <{element}>")]
    DeclarationUnfit {
        /// The question's element.
        element: String,
        /// As written.
        cardinality: String,
        /// As written.
        base_type: String,
    },
    /// The response processing needs a correct response or a mapping, and there is none.
    #[error("the item does not say which answer is right")]
    NoKey,
    /// The item is marked in another way than by the two templates.
    #[error("marking by {text:?} is not supported; use match_correct or map_response")]
    UnknownProcessing {
        /// The template, or the element used instead.
        text: String,
    },
    /// Several responses have the highest value, so the key is unknown.
    #[error("more than one response has the highest value of the mapping")]
    SeveralBest,
    /// No response has a value above zero.
    #[error("no response has a value above zero")]
    NoneBest,
    /// The correct response does not have the highest value.
    #[error("the correct response does not have the highest value")]
    KeysDisagree,
    /// A number of the mapping cannot be read.
    #[error("{text:?} is not a number")]
    NotANumber {
        /// As written.
        text: String,
    },
    /// There is no such strand.
    #[error("there is no strand {text:?}")]
    UnknownStrand {
        /// As written.
        text: String,
    },
    /// The program does not have this language.
    #[error("{text:?} is not a language of this program")]
    UnknownLanguage {
        /// The tag as written.
        text: String,
    },
    /// The grade is not 1 to 12.
    #[error("the grade is 1 to 12, not {text:?}")]
    BadGrade {
        /// As written.
        text: String,
    },
    /// The text is not an id.
    #[error("{text:?} is not an id: lower-case letters and digits joined by single hyphens")]
    BadId {
        /// As written.
        text: String,
    },
    /// There is a concept with this id already.
    #[error("there is a concept {text:?} already")]
    ConceptThere {
        /// The id.
        text: String,
    },
    /// The concept is a prerequisite of itself, directly or through others.
    #[error("{text} is a prerequisite of itself, directly or through others")]
    Circle {
        /// The id of the concept.
        text: String,
    },
    /// The class has no room for more own concepts.
    #[error("a class has room for {most} own concepts")]
    ConceptsFull {
        /// The greatest number.
        most: u32,
    },
    /// The file is not a CASE package.
    #[error("this is not a CASE package: {detail}")]
    NotAPackage {
        /// What is missing or wrong.
        detail: String,
    },
    /// No concept was chosen for an item that names none.
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

/// Returns the first `most_chars` characters of a text, without control characters.
pub fn cut(text: &str, most_chars: usize) -> String {
    text.chars()
        .filter(|c| !c.is_control())
        .take(most_chars)
        .collect()
}

impl LineRefused {
    /// Refuses a line.
    #[must_use]
    pub fn line(line: u32, fault: LineFault) -> Self {
        Self {
            line,
            at: String::new(),
            fault,
        }
    }

    /// Refuses a place in a file without lines.
    #[must_use]
    pub fn at(at: impl Into<String>, fault: LineFault) -> Self {
        Self {
            line: 0,
            at: at.into(),
            fault,
        }
    }
}

/// A line or an item that is refused.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct LineRefused {
    /// The line, from 1; 0 in a file without lines.
    pub line: u32,
    /// The place in a file without lines, such as `CFItems[3].fullStatement`; empty for a
    /// table.
    pub at: String,
    /// Why.
    pub fault: LineFault,
}
