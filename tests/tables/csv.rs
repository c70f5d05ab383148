//! The published tables in `tests/fixtures`: comment lines, a header, and rows whose first field
//! names the crop. Each file's comment says where it comes from.

/// One row: the name of the crop and the other fields.
#[derive(Debug, Clone)]
pub struct Row {
    pub name: String,
    pub fields: Vec<String>,
}

impl Row {
    /// A whole number, or `None` where the field is empty or holds words.
    pub fn number(&self, index: usize) -> Option<i64> {
        self.fields.get(index)?.parse().ok()
    }
}

/// The rows of a table below its comment and its header.
pub fn rows(text: &str) -> Vec<Row> {
    let lines = text.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines
        .skip(1)
        .map(|line| {
            let mut fields = split(line).into_iter();
            Row { name: fields.next().expect("a name"), fields: fields.collect() }
        })
        .collect()
}

fn split(line: &str) -> Vec<String> {
    let mut fields = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => fields.push(String::new()),
            c => fields.last_mut().expect("a field").push(c),
        }
    }
    fields
}
