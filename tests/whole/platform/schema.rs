//! The published schema of the Bot API, and requests held against it.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;
use serde_json::{Map, Value};

/// The schema of the version that the bot is written for.
pub(crate) static SCHEMA: LazyLock<Schema> = LazyLock::new(|| {
    serde_json::from_str(include_str!("../../fixtures/bot_api_10.3.json"))
        .unwrap_or_else(|error| panic!("the schema fixture cannot be read: {error}"))
});

#[derive(Deserialize)]
pub(crate) struct Schema {
    methods: BTreeMap<String, Fields>,
    types: BTreeMap<String, Fields>,
}

pub(crate) type Fields = BTreeMap<String, Field>;

#[derive(Deserialize)]
pub(crate) struct Field {
    #[serde(rename = "type")]
    pub(crate) kind: String,
    required: bool,
}

impl Schema {
    /// The method's proper name and parameters; names match in any case.
    pub(crate) fn method(&self, name: &str) -> Option<(&str, &Fields)> {
        self.methods
            .iter()
            .find(|(known, _)| known.eq_ignore_ascii_case(name))
            .map(|(known, fields)| (known.as_str(), fields))
    }

    /// What is wrong with a method's parameters.
    pub(crate) fn faults_of_call(
        &self,
        fields: &Fields,
        params: &Map<String, Value>,
    ) -> Vec<String> {
        let mut faults = Vec::new();
        self.check_fields(fields, params, "", &mut faults);
        faults
    }

    /// What is wrong with a value that should be of the named type.
    pub(crate) fn faults_of_value(&self, kind: &str, value: &Value) -> Vec<String> {
        let mut faults = Vec::new();
        self.check(kind, value, kind, &mut faults);
        faults
    }

    fn check_fields(
        &self,
        fields: &Fields,
        given: &Map<String, Value>,
        path: &str,
        faults: &mut Vec<String>,
    ) {
        let dot = if path.is_empty() { "" } else { "." };
        for (name, field) in fields {
            if field.required && !given.contains_key(name) {
                faults.push(format!("`{path}{dot}{name}` is missing"));
            }
        }
        for (name, value) in given {
            match fields.get(name) {
                Some(field) => {
                    self.check(&field.kind, value, &format!("{path}{dot}{name}"), faults);
                }
                None => faults.push(format!("`{path}{dot}{name}` is unknown")),
            }
        }
    }

    fn check(&self, kind: &str, value: &Value, path: &str, faults: &mut Vec<String>) {
        if let Some(item) = kind.strip_prefix("Array of ") {
            match value.as_array() {
                Some(values) => {
                    for (index, value) in values.iter().enumerate() {
                        self.check(item, value, &format!("{path}[{index}]"), faults);
                    }
                }
                None => faults.push(format!("`{path}` should be a list of {item}")),
            }
            return;
        }
        let choices = self.choices(kind);
        if choices.is_empty() {
            self.check_one(kind, value, path, faults);
            return;
        }
        // The choice that fits best is the one that was meant.
        let fewest = choices
            .into_iter()
            .map(|choice| {
                let mut faults = Vec::new();
                self.check(choice, value, path, &mut faults);
                faults
            })
            .min_by_key(Vec::len);
        faults.extend(fewest.unwrap_or_default());
    }

    /// The types that a union may be: listed in words ("A, B and C", "A or B"),
    /// or, for a named union, the types whose names begin with its name.
    fn choices<'a>(&'a self, kind: &'a str) -> Vec<&'a str> {
        if kind == "MaybeInaccessibleMessage" {
            return vec!["Message", "InaccessibleMessage"];
        }
        if kind.contains(' ') {
            return kind
                .split(" or ")
                .flat_map(|part| part.split(" and "))
                .flat_map(|part| part.split(", "))
                .collect();
        }
        if self.types.get(kind).is_none_or(|fields| !fields.is_empty()) {
            return Vec::new();
        }
        self.types
            .iter()
            .filter(|(name, fields)| {
                name.len() > kind.len() && name.starts_with(kind) && !fields.is_empty()
            })
            .map(|(name, _)| name.as_str())
            .collect()
    }

    fn check_one(&self, kind: &str, value: &Value, path: &str, faults: &mut Vec<String>) {
        let plausible = match kind {
            "Integer" => value.is_i64() || value.is_u64(),
            "Float" => value.is_number(),
            // A file is named: uploaded beside the parameters, or known already.
            "String" | "InputFile" => value.is_string(),
            "Boolean" => value.is_boolean(),
            "True" => value == &Value::Bool(true),
            // Formatted text is a string, a list or an object, all the way down.
            "RichText" => true,
            _ => match (self.types.get(kind), value.as_object()) {
                (Some(fields), Some(_)) if fields.is_empty() => true,
                (Some(fields), Some(given)) => {
                    self.check_fields(fields, given, path, faults);
                    true
                }
                _ => false,
            },
        };
        if !plausible {
            faults.push(format!("`{path}` should be {kind}, is {value}"));
        }
    }
}

/// Reads a form's text as the JSON value that the named type calls for; text
/// that does not fit stays text, for the check to complain about.
pub(crate) fn value_of_text(kind: &str, text: &str) -> Value {
    let parsed: Option<Value> = match kind {
        "String" | "InputFile" | "InputFile or String" => None,
        "Integer or String" => text.parse::<i64>().ok().map(Value::from),
        _ => serde_json::from_str(text).ok(),
    };
    parsed.unwrap_or_else(|| Value::from(text))
}
