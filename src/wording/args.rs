//! The values that a message is said with.

/// Values by name, for [`Voice::say`](super::Voice::say).
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Args {
    values: Vec<(&'static str, Value)>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Value {
    Text(String),
    /// A number: a message can choose by its plural form, and it is written in the reader's way.
    Number(i64),
}

/// No values yet.
///
/// ```
/// use sowbell::wording::args;
/// let args = args().text("crop", "leek").number("n", 3);
/// # let _ = args;
/// ```
#[must_use]
pub fn args() -> Args {
    Args::default()
}

impl Args {
    /// With a text, ready to be read: a date, a list and a measure are texts.
    #[must_use]
    pub fn text(self, name: &'static str, text: impl Into<String>) -> Self {
        self.with(name, Value::Text(text.into()))
    }

    /// With a number, by which the message can choose the plural form.
    #[must_use]
    pub fn number(self, name: &'static str, number: i64) -> Self {
        self.with(name, Value::Number(number))
    }

    /// With how many there are of something; like [`Args::number`].
    #[must_use]
    pub fn count(self, name: &'static str, count: usize) -> Self {
        self.number(name, i64::try_from(count).unwrap_or(i64::MAX))
    }

    fn with(mut self, name: &'static str, value: Value) -> Self {
        self.values.retain(|(is, _)| *is != name);
        self.values.push((name, value));
        self
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = (&'static str, &Value)> {
        self.values.iter().map(|(name, value)| (*name, value))
    }
}
