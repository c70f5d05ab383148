//! Finding a time zone by its name or by a city.

use chrono_tz::{TZ_VARIANTS, Tz};

/// What a text about a time zone came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ZoneMatch {
    /// Exactly one zone.
    Found(Tz),
    /// No exact hit; the nearest names, best first, at most five.
    Suggestions(Vec<Tz>),
}

/// Finds the zone meant by an IANA name, a city, or something near one.
///
/// Case, spaces and underscores do not matter. An exact name or city wins; otherwise the zones
/// whose name begins with or contains the text, or is spelled nearly like it, are suggested.
#[must_use]
pub fn find_zone(text: &str) -> ZoneMatch {
    let wanted = fold(text);
    if wanted.is_empty() {
        return ZoneMatch::Suggestions(Vec::new());
    }
    let city = |zone: Tz| fold(zone.name().rsplit('/').next().unwrap_or_default());
    if let Some(zone) = TZ_VARIANTS.iter().find(|zone| fold(zone.name()) == wanted) {
        return ZoneMatch::Found(*zone);
    }
    // "Etc" and the old national names are only reached by their full name.
    let places = || TZ_VARIANTS.iter().copied().filter(|zone| is_place(*zone));
    let hits: Vec<Tz> = places().filter(|zone| city(*zone) == wanted).collect();
    if let [only] = hits.as_slice() {
        return ZoneMatch::Found(*only);
    }
    if !hits.is_empty() {
        return ZoneMatch::Suggestions(hits.into_iter().take(5).collect());
    }
    let mut near: Vec<(f64, Tz)> = places()
        .filter_map(|zone| {
            let city = city(zone);
            let likeness = if city.starts_with(&wanted) || fold(zone.name()).contains(&wanted) {
                2.0
            } else {
                strsim::jaro_winkler(&city, &wanted)
            };
            (likeness >= 0.85).then_some((likeness, zone))
        })
        .collect();
    near.sort_by(|a, b| b.0.total_cmp(&a.0).then_with(|| a.1.name().cmp(b.1.name())));
    ZoneMatch::Suggestions(near.into_iter().take(5).map(|(_, zone)| zone).collect())
}

fn is_place(zone: Tz) -> bool {
    const CONTINENTS: [&str; 9] = [
        "Africa",
        "America",
        "Antarctica",
        "Asia",
        "Atlantic",
        "Australia",
        "Europe",
        "Indian",
        "Pacific",
    ];
    zone.name().split_once('/').is_some_and(|(head, _)| CONTINENTS.contains(&head))
}

fn fold(text: &str) -> String {
    use unicode_normalization::UnicodeNormalization;
    text.nfd()
        .filter(|c| c.is_alphanumeric() || matches!(c, '/' | '+' | '-'))
        .flat_map(char::to_lowercase)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_cities_and_misses() {
        assert_eq!(find_zone("America/Denver"), ZoneMatch::Found(Tz::America__Denver));
        assert_eq!(find_zone("utc"), ZoneMatch::Found(Tz::UTC));
        assert_eq!(find_zone(" new york "), ZoneMatch::Found(Tz::America__New_York));
        assert_eq!(find_zone("São Paulo"), ZoneMatch::Found(Tz::America__Sao_Paulo));
        let ZoneMatch::Suggestions(near) = find_zone("Helsinky") else { panic!("no exact zone") };
        assert_eq!(near.first(), Some(&Tz::Europe__Helsinki));
        assert_eq!(find_zone("qqqq"), ZoneMatch::Suggestions(vec![]));
        assert_eq!(find_zone(""), ZoneMatch::Suggestions(vec![]));
    }
}
