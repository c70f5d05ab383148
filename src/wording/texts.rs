//! The texts of one language: a parsed Fluent file and what is known of its messages.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use fluent_bundle::FluentResource;
use fluent_syntax::ast::{CallArguments, Entry, Expression, InlineExpression, Pattern};
use fluent_syntax::ast::{PatternElement, Variant};

use super::WordingError;
use crate::club::LanguageTag;

/// One language's texts.
pub(super) struct Texts {
    pub(super) tag: LanguageTag,
    pub(super) resource: Arc<FluentResource>,
    /// Each message with the variables it reads, also through the messages and terms it uses.
    pub(super) variables: BTreeMap<String, BTreeSet<String>>,
}

/// What a message or term reads and uses itself; the name of a term begins with `-`.
#[derive(Default)]
struct Reads {
    variables: BTreeSet<String>,
    uses: BTreeSet<String>,
}

impl Texts {
    /// Reads the file of the language `locale`.
    ///
    /// # Errors
    /// The first thing that is wrong: syntax, a key that comes twice, a message without a text,
    /// a use of something that does not exist.
    pub(super) fn parse(locale: &str, source: &str) -> Result<Self, WordingError> {
        let tag = locale.parse().map_err(|_| WordingError::Tag { locale: locale.to_owned() })?;
        let resource = FluentResource::try_new(source.to_owned()).map_err(|(_, errors)| {
            let first = errors.first();
            WordingError::Syntax {
                locale: locale.to_owned(),
                line: line_at(source, first.map_or(0, |error| error.pos.start)),
                message: first.map_or_else(String::new, |error| error.kind.to_string()),
            }
        })?;
        let wrong = |key: &str, message: &str| WordingError::Message {
            locale: locale.to_owned(),
            line: line_of(source, key),
            key: key.to_owned(),
            message: message.to_owned(),
        };
        let mut all: BTreeMap<String, Reads> = BTreeMap::new();
        for entry in resource.entries() {
            let (name, pattern) = match entry {
                Entry::Message(message) => {
                    let name = message.id.name.to_owned();
                    (
                        name.clone(),
                        message.value.as_ref().ok_or_else(|| wrong(&name, "has no text"))?,
                    )
                }
                Entry::Term(term) => (format!("-{}", term.id.name), &term.value),
                _ => continue,
            };
            let mut reads = Reads::default();
            reads.pattern(pattern);
            if all.insert(name.clone(), reads).is_some() {
                return Err(wrong(&name, "comes twice"));
            }
        }
        for (name, reads) in &all {
            if let Some(absent) = reads.uses.iter().find(|used| !all.contains_key(*used)) {
                return Err(wrong(name, &format!("uses {absent}, which does not exist")));
            }
        }
        let keys = all.keys().filter(|name| !name.starts_with('-'));
        let variables = keys.map(|key| (key.clone(), variables_of(&all, key))).collect();
        Ok(Self { tag, resource: Arc::new(resource), variables })
    }
}

/// The variables of `key` and of all that it uses, however deep.
fn variables_of(all: &BTreeMap<String, Reads>, key: &str) -> BTreeSet<String> {
    let mut variables = BTreeSet::new();
    let mut seen = BTreeSet::new();
    let mut next = vec![key];
    while let Some(name) = next.pop() {
        if let Some(reads) = all.get(name)
            && seen.insert(name)
        {
            // A term sees only what it is called with, so its own variables are not the message's.
            if !name.starts_with('-') {
                variables.extend(reads.variables.iter().cloned());
            }
            next.extend(reads.uses.iter().map(String::as_str));
        }
    }
    variables
}

impl Reads {
    fn pattern(&mut self, pattern: &Pattern<&str>) {
        for element in &pattern.elements {
            if let PatternElement::Placeable { expression } = element {
                self.expression(expression);
            }
        }
    }

    fn expression(&mut self, expression: &Expression<&str>) {
        match expression {
            Expression::Select { selector, variants } => {
                self.inline(selector);
                for Variant { value, .. } in variants {
                    self.pattern(value);
                }
            }
            Expression::Inline(inline) => self.inline(inline),
        }
    }

    fn inline(&mut self, inline: &InlineExpression<&str>) {
        match inline {
            InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
            InlineExpression::VariableReference { id } => {
                self.variables.insert(id.name.to_owned());
            }
            InlineExpression::MessageReference { id, .. } => {
                self.uses.insert(id.name.to_owned());
            }
            InlineExpression::TermReference { id, arguments, .. } => {
                self.uses.insert(format!("-{}", id.name));
                if let Some(arguments) = arguments {
                    self.arguments(arguments);
                }
            }
            InlineExpression::FunctionReference { arguments, .. } => self.arguments(arguments),
            InlineExpression::Placeable { expression } => self.expression(expression),
        }
    }

    fn arguments(&mut self, arguments: &CallArguments<&str>) {
        let named = arguments.named.iter().map(|argument| &argument.value);
        for argument in arguments.positional.iter().chain(named) {
            self.inline(argument);
        }
    }
}

/// The line, from 1, of the byte `at`.
fn line_at(source: &str, at: usize) -> usize {
    source.bytes().take(at).filter(|byte| *byte == b'\n').count() + 1
}

/// The line, from 1, on which `key` stands last; a key that comes twice is told by its second.
fn line_of(source: &str, key: &str) -> usize {
    let defines =
        |line: &str| line.strip_prefix(key).is_some_and(|rest| rest.trim_start().starts_with('='));
    source.lines().enumerate().filter(|(_, line)| defines(line)).last().map_or(1, |(at, _)| at + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fault(source: &str) -> String {
        Texts::parse("en", source).err().map(|error| error.to_string()).unwrap_or_default()
    }

    #[test]
    fn a_broken_file_is_told_by_language_line_and_message() {
        let told = fault("good = Good\n\nbad { $n }\n");
        assert!(told.starts_with("locales/en/messages.ftl, line 3: "), "{told}");
        assert_eq!(
            fault("a = A\nb = B\na = C\n"),
            "locales/en/messages.ftl, line 3: the message a comes twice"
        );
        assert_eq!(
            fault("a = A\nb = { c }\n"),
            "locales/en/messages.ftl, line 2: the message b uses c, which does not exist"
        );
        assert_eq!(
            fault("a =\n    .title = A\n"),
            "locales/en/messages.ftl, line 1: the message a has no text"
        );
        assert!(Texts::parse("e n", "a = A").is_err());
    }

    #[test]
    fn variables_are_found_in_choices_and_through_other_messages() {
        let texts = Texts::parse(
            "en",
            "-name = Bot { $case }\n\
             a = { $n ->\n    [one] { $crop }\n   *[other] { b }\n }\n\
             b = { NUMBER($m) } { -name } { \"{ $not }\" } { a }\n",
        )
        .expect("texts");
        let of = |key: &str| texts.variables[key].iter().cloned().collect::<Vec<_>>().join(" ");
        assert_eq!(of("a"), "crop m n");
        assert_eq!(of("b"), "crop m n");
        assert_eq!(texts.variables.len(), 2);
    }
}
