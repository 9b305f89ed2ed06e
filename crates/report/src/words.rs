//! The words of printed pages, from the same Fluent files as the screens.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::borrow::Cow;
use std::sync::OnceLock;
use surefoot_catalogue::Language;
use surefoot_catalogue::Locale;
use surefoot_exercises::messages::{MessageError, format_number};

/// English and Spanish text of the files read here.
const FILES: &[(&str, &str)] = &[
    (
        include_str!("../../../shared/messages/en/reports.ftl"),
        include_str!("../../../shared/messages/es/reports.ftl"),
    ),
    (
        include_str!("../../../shared/messages/en/screens-common.ftl"),
        include_str!("../../../shared/messages/es/screens-common.ftl"),
    ),
    (
        include_str!("../../../shared/messages/en/strands.ftl"),
        include_str!("../../../shared/messages/es/strands.ftl"),
    ),
];

type Bundle = FluentBundle<FluentResource>;

/// An argument of a message.
#[derive(Clone, Debug)]
pub enum Value {
    /// A whole number: chooses the plural form.
    Count(usize),
    /// Words.
    Text(String),
}

impl From<usize> for Value {
    fn from(count: usize) -> Self {
        Value::Count(count)
    }
}

impl From<u32> for Value {
    fn from(count: u32) -> Self {
        Value::Count(count as usize)
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Value::Text(text)
    }
}

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Value::Text(text.to_string())
    }
}

/// The words in one language.
#[derive(Clone, Copy)]
pub struct Words {
    bundle: &'static Bundle,
    /// Language and way of writing numbers.
    pub locale: Locale,
}

impl Words {
    /// The words of a language.
    ///
    /// # Errors
    /// When a message file cannot be read, which tests rule out.
    pub fn new(locale: Locale) -> Result<Self, MessageError> {
        static SLOTS: [OnceLock<Result<Bundle, MessageError>>; 2] =
            [OnceLock::new(), OnceLock::new()];
        let place = usize::from(locale.language == Language::Es);
        SLOTS[place]
            .get_or_init(|| load(locale.language))
            .as_ref()
            .map(|bundle| Self { bundle, locale })
            .map_err(Clone::clone)
    }

    /// A message with its arguments.
    ///
    /// # Errors
    /// When the message is missing or lacks an argument.
    pub fn say(&self, id: &str, args: &[(&'static str, Value)]) -> Result<String, MessageError> {
        let missing = || MessageError::Missing {
            id: id.to_string(),
            language: self.locale.language,
        };
        let message = self.bundle.get_message(id).ok_or_else(missing)?;
        let pattern = message.value().ok_or_else(missing)?;
        let mut given = FluentArgs::new();
        for (name, value) in args {
            match value {
                Value::Count(count) => given.set(Cow::Borrowed(*name), *count),
                Value::Text(text) => {
                    given.set(Cow::Borrowed(*name), FluentValue::from(text.clone()));
                }
            }
        }
        let mut errors = Vec::new();
        let text = self
            .bundle
            .format_pattern(pattern, Some(&given), &mut errors);
        match errors.first() {
            None => Ok(text.into_owned()),
            Some(trouble) => Err(MessageError::Unresolved {
                id: id.to_string(),
                language: self.locale.language,
                trouble: trouble.to_string(),
            }),
        }
    }

    /// A message without arguments.
    ///
    /// # Errors
    /// When it is missing.
    pub fn get(&self, id: &str) -> Result<String, MessageError> {
        self.say(id, &[])
    }

    /// A number written for the place.
    #[must_use]
    pub fn number(&self, number: impl ToString) -> String {
        format_number(self.locale, &number.to_string())
    }
}

fn load(language: Language) -> Result<Bundle, MessageError> {
    let unreadable = |trouble: String| MessageError::Unreadable { language, trouble };
    let tag = match language {
        Language::En => "en-US",
        Language::Es => "es-US",
    };
    let tag = tag
        .parse()
        .map_err(|error| unreadable(format!("{error:?}")))?;
    let mut bundle = Bundle::new_concurrent(vec![tag]);
    bundle.set_use_isolating(false);
    for (en, es) in FILES {
        let text = match language {
            Language::En => en,
            Language::Es => es,
        };
        let resource = FluentResource::try_new((*text).to_string())
            .map_err(|(_, errors)| unreadable(format!("{:?}", errors.first())))?;
        bundle
            .add_resource(resource)
            .map_err(|errors| unreadable(format!("{:?}", errors.first())))?;
    }
    Ok(bundle)
}
