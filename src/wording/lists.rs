//! Lists as the reader's language joins them.

use super::Voice;

impl Voice {
    /// All of them: "a, b, and c"; British English leaves the last comma out.
    #[must_use]
    pub fn list_and(&self, items: &[String]) -> String {
        self.tongue.formats.list_and.format(items.iter()).to_string()
    }

    /// One of them: "a, b, or c".
    #[must_use]
    pub fn list_or(&self, items: &[String]) -> String {
        self.tongue.formats.list_or.format(items.iter()).to_string()
    }
}

#[cfg(test)]
mod tests {
    use insta::assert_snapshot;

    use super::super::formats::Formats;
    use super::super::voice::tests::voice;

    #[test]
    fn lists_are_joined_as_the_region_joins_them() {
        let told = |tag: &str| {
            let voice = voice(tag);
            let crops = ["leek", "kale", "dill"].map(str::to_owned);
            let mut lines = Vec::new();
            for many in 0..=3 {
                lines.push(format!("[{}]", voice.list_and(&crops[..many])));
                lines.push(format!("[{}]", voice.list_or(&crops[..many])));
            }
            lines.join("\n")
        };
        assert_snapshot!(told("en-US"), @r"
        []
        []
        [leek]
        [leek]
        [leek and kale]
        [leek or kale]
        [leek, kale, and dill]
        [leek, kale, or dill]
        ");
        assert_eq!(told("en"), told("en-US"));
        assert_snapshot!(told("en-GB"), @r"
        []
        []
        [leek]
        [leek]
        [leek and kale]
        [leek or kale]
        [leek, kale and dill]
        [leek, kale or dill]
        ");
    }

    #[test]
    fn other_languages_join_lists_too() {
        for (tag, and, or) in [
            ("de", "a, b und c", "a, b oder c"),
            ("fr", "a, b et c", "a, b ou c"),
            ("es", "a, b y c", "a, b o c"),
        ] {
            let formats = Formats::new(tag).expect("formats");
            assert_eq!(formats.list_and.format(["a", "b", "c"].iter()).to_string(), and);
            assert_eq!(formats.list_or.format(["a", "b", "c"].iter()).to_string(), or);
        }
    }
}
