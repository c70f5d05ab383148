//! Plants that died: "the cucumbers died".

use super::line::{Item, ItemLine};
use super::pattern::matches_anywhere;
use super::{LIST_CHARACTERS, Understanding, sort};

impl Understanding {
    /// Whether a text tells that plants died: `Some(true)` where only some of them did, `None`
    /// where it tells no such thing. A question tells nothing.
    #[must_use]
    pub fn lost_in(&self, text: &str) -> Option<bool> {
        if text.contains('?') {
            return None;
        }
        let words = self.words(text, LIST_CHARACTERS);
        let mentions = self.names.mentions(&words, &self.phrases);
        let stretches: Vec<Item> = mentions
            .iter()
            .map(|m| Item { sort: sort(&m.named), from: m.from, to: m.to })
            .collect();
        let line = ItemLine::new(&words, &stretches);
        let length = line.items.len();
        let tells = |patterns: &[_]| matches_anywhere(patterns, &line, 0..length);
        let phrases = &self.phrases.sowing;
        if !tells(&phrases.lost) || tells(&phrases.lost_unless) {
            return None;
        }
        Some(tells(&phrases.lost_some))
    }
}

#[cfg(test)]
mod tests {
    #[test]
    fn plants_that_died_are_told_from_questions_and_from_some_of_them() {
        let knowledge = crate::chat::Knowledge::embedded().expect("the built-in data");
        let lost = |tag: &str, text: &str| {
            let tag = tag.parse().expect("a tag");
            knowledge.tongue(&tag).understanding.lost_in(text)
        };
        for (tag, text) in [
            ("en", "the cucumbers died"),
            ("en", "all my cucumbers died"),
            ("en", "my basil is dead"),
            ("en", "we lost all our tomatoes"),
            ("en", "the frost got my tomatoes"),
            ("en", "mice ate my peas"),
            ("en", "slugs ate my cucumbers after the rain"),
            ("en", "the seedlings damped off"),
            ("de", "alle eingegangen: Brokkoli"),
            ("de", "die Schnecken haben meinen Salat gefressen"),
            ("es", "perdí todo: brócoli"),
            ("es", "las babosas se comieron mis lechugas"),
            ("fr", "tout est mort : les brocolis"),
            ("fr", "les limaces ont mangé mes laitues"),
        ] {
            assert_eq!(lost(tag, text), Some(false), "{text}");
        }
        for (tag, text) in [
            ("en", "half of my cucumbers died"),
            ("en", "some of the tomatoes are dead"),
            ("en", "almost all died"),
            ("de", "einige Gurken sind eingegangen"),
            ("es", "se murieron algunos pepinos"),
            ("fr", "quelques concombres sont morts"),
        ] {
            assert_eq!(lost(tag, text), Some(true), "{text}");
        }
        for (tag, text) in [
            ("en", "are my cucumbers dead?"),
            ("en", "why did my cucumbers die"),
            ("en", "what if the basil died"),
            ("en", "we ate all our tomatoes"),
            ("en", "I lost my basil packet"),
            ("de", "warum sind die Gurken eingegangen"),
            ("fr", "j'ai mangé mes concombres"),
        ] {
            assert_eq!(lost(tag, text), None, "{text}");
        }
    }

    proptest::proptest! {
        #[test]
        fn no_text_upsets_it(text in ".{0,80}") {
            let _ = crate::chat::understand::tests::english().lost_in(&text);
        }
    }
}
