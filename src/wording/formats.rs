//! The formatters of one locale, built once: building them is slow.

use icu_calendar::Gregorian;
use icu_datetime::fieldsets::{E, M, MD, MDE, T, YMD};
use icu_datetime::{FixedCalendarDateTimeFormatter, NoCalendarFormatter};
use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_decimal::options::DecimalFormatterOptions;
use icu_list::ListFormatter;
use icu_list::options::ListFormatterOptions;
use icu_locale::Locale;

type Dates<Fields> = FixedCalendarDateTimeFormatter<Gregorian, Fields>;

/// Everything that writes dates, times, numbers and lists for one locale.
///
/// Dates are Gregorian in every locale: a frost date is a month and a day of that calendar.
#[derive(Debug)]
pub(super) struct Formats {
    pub(super) date: Dates<MD>,
    pub(super) date_with_weekday: Dates<MDE>,
    pub(super) date_with_year: Dates<YMD>,
    pub(super) month: Dates<M>,
    pub(super) weekday: Dates<E>,
    pub(super) time: NoCalendarFormatter<T>,
    pub(super) list_and: ListFormatter,
    pub(super) list_or: ListFormatter,
    pub(super) numerals: Numerals,
}

/// Writes numbers.
#[derive(Debug)]
pub(super) struct Numerals(DecimalFormatter);

impl Formats {
    /// The formats of the locale `tag`; regions that CLDR does not know get their language's.
    ///
    /// # Errors
    /// What the formatting library says, should its data be lacking.
    pub(super) fn new(tag: &str) -> Result<Self, String> {
        let locale: Locale = tag.parse().map_err(told)?;
        Ok(Self {
            date: Dates::try_new((&locale).into(), MD::long()).map_err(told)?,
            date_with_weekday: Dates::try_new((&locale).into(), MDE::long()).map_err(told)?,
            date_with_year: Dates::try_new((&locale).into(), YMD::long()).map_err(told)?,
            month: Dates::try_new((&locale).into(), M::long()).map_err(told)?,
            weekday: Dates::try_new((&locale).into(), E::long()).map_err(told)?,
            time: NoCalendarFormatter::try_new((&locale).into(), T::hm()).map_err(told)?,
            list_and: ListFormatter::try_new_and((&locale).into(), ListFormatterOptions::default())
                .map_err(told)?,
            list_or: ListFormatter::try_new_or((&locale).into(), ListFormatterOptions::default())
                .map_err(told)?,
            numerals: Numerals::new(&locale)?,
        })
    }
}

impl Numerals {
    fn new(locale: &Locale) -> Result<Self, String> {
        DecimalFormatter::try_new(locale.into(), DecimalFormatterOptions::default())
            .map(Self)
            .map_err(told)
    }

    pub(super) fn whole(&self, number: i64) -> String {
        self.0.format(&Decimal::from(number)).to_string()
    }

    /// A number of tenths, with a decimal only where it is not zero.
    pub(super) fn tenths(&self, tenths: i64) -> String {
        let mut decimal = Decimal::from(tenths);
        decimal.multiply_pow10(-1);
        decimal.absolute.trim_end();
        self.0.format(&decimal).to_string()
    }
}

impl intl_memoizer::Memoizable for Numerals {
    type Args = ();
    type Error = String;

    fn construct(language: unic_langid::LanguageIdentifier, (): ()) -> Result<Self, String> {
        Self::new(&language.to_string().parse().map_err(told)?)
    }
}

#[expect(clippy::needless_pass_by_value, reason = "it is what map_err hands over")]
fn told(error: impl ToString) -> String {
    error.to_string()
}
