//! Words beside a crop that may name a variety: "pepper King of the North".

use super::crops::as_written;
use super::sown::Role;
use super::words::Word;

/// What stands beside a crop's name like the name of a variety: directly behind it a stretch with
/// a word that is known nowhere ("pepper King of the North"), or directly before it such words
/// with capitals. `around` is where the piece begins, the crop's name, and where the piece ends.
pub(super) fn strange_beside(
    words: &[Word],
    roles: &[Role],
    (start, from, to, end): (usize, usize, usize, usize),
) -> Option<String> {
    let other = |at: &usize| roles.get(*at) == Some(&Role::Other);
    let capital = |word: &Word| word.written.starts_with(char::is_uppercase);
    let unknown = |word: &Word| word.id.is_none() && word.plain.chars().count() > 2;
    let behind: Vec<&Word> = (to..end).take_while(other).filter_map(|at| words.get(at)).collect();
    let length = behind.iter().rposition(|word| word.id.is_none() || capital(word));
    let behind = behind.get(..length.map_or(0, |last| last + 1)).unwrap_or_default();
    let begins = behind.first().is_some_and(|word| word.id.is_none() || capital(word));
    let before: Vec<&Word> = (start..from)
        .rev()
        .take_while(other)
        .filter_map(|at| words.get(at))
        .take_while(|word| word.id.is_none() && capital(word))
        .collect();
    let named: Vec<Word> = if begins && behind.iter().any(|word| unknown(word)) {
        behind.iter().map(|word| (*word).clone()).collect()
    } else {
        before.into_iter().rev().cloned().collect()
    };
    (!named.is_empty()).then(|| as_written(&named))
}

#[cfg(test)]
mod tests {
    use super::super::tests::english;
    use chrono::NaiveDate;

    #[test]
    fn a_name_beside_a_crop_is_told_from_small_words_days_and_places() {
        let strange = |text: &str| -> Vec<String> {
            let told = english().sown_in(text, NaiveDate::default());
            told.strange.into_iter().map(|(_, written)| written).collect()
        };
        assert_eq!(strange("pepper King of the North 8 on 10 March"), ["King of the North"]);
        assert_eq!(strange("8 pepper King of the North on 10 March"), ["King of the North"]);
        assert_eq!(strange("12 Purple Wren basil"), ["Purple Wren"]);
        assert_eq!(strange("6 tomatoes wobblefruit, 4 basil"), ["wobblefruit"]);
        for none in [
            "12 basil",
            "basil and 6 cucumbers indoors today",
            "12 basil in the green tray for grandma",
            "12 basil on 3 April in a room at 70 F",
            "My basil",
        ] {
            assert_eq!(strange(none), Vec::<String>::new(), "{none}");
        }
    }
}
