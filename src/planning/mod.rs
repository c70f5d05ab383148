//! The shared planning rules: pure functions of a crop, a garden and a date.
//!
//! Nothing here reads a clock, speaks a language, knows a database or a chat platform. A caller
//! passes a [`Crop`], a [`Garden`] and a date; out come the [`windows`] of a [`Season`], the
//! [`Assessment`] of one step on one day, and the dated [`Job`]s of a season.
//!
//! Two zeros are kept apart. An *age* counts weeks from sowing to setting out; an *offset* counts
//! weeks from the average last frost. A sowing date is a setting-out date minus an age.

mod after_sowing;
mod assess;
mod coming_up;
mod crop;
mod daylength;
mod emergence;
mod frost_free;
mod garden;
mod germination_rate;
mod germination_test;
mod harvest;
mod hold;
mod jobs;
mod month_day;
mod months;
mod packet;
mod place;
mod ripe_in_time;
mod ripening;
mod season;
mod seed_count;
mod soil;
mod sowing;
mod start_again;
mod succession;
mod too_early;
mod trays;
mod windows;

pub use assess::{Assessment, Reason, Verdict, assess, best_ways};
pub use coming_up::{ComingUp, Outlook, USUAL_ROOM_C, coming_up, resow_margin_days};
pub use crop::{
    Autumn, Bolting, Caution, CellSize, CellStay, Class, CountedFrom, Crop, CropId, DirectSowing,
    Disturbance, Harvest, HarvestKind, Indoors, Kind, LifeCycle, Light, Outdoors, PlantAge,
    PreTreatment, Rhythm, Seed, SoilTemperature, Sourced, Sources, Spacing, Span, StartFrom,
    Treatment, Vigour, Way,
};
pub use daylength::{OnionClass, onion_classes};
pub use emergence::{
    Emergence, EmergenceRow, LONGEST_EMERGENCE_DAYS, ReadBetween, Side, days_to_emerge,
    too_slow_side,
};
pub use frost_free::DrySeason;
pub use garden::{Basis, Frost, FrostDates, FrostError, Garden, RISK_MARGIN_DAYS};
pub use germination_rate::{
    ASSUMED_FRESH_RATE, GerminationRate, LOWEST_RATE, RateBasis, estimated_rate, standard_rate,
};
pub use germination_test::{
    ENOUGH_TESTED, GerminationTest, GerminationTestError, MOST_TESTED, REPLACE_BELOW, SeedAdvice,
};
pub use harvest::{autumn_count_back, harvest_end, slowed_by_autumn};
pub use hold::{Hold, HoldError, Wait};
pub use jobs::{Job, JobBasis, JobKey, JobKeyError, jobs, planned_jobs};
pub use month_day::{MonthDay, MonthDayError};
pub use months::{HotAndWet, Months, MonthsError};
pub use packet::{Packet, PacketError, PacketLeftOut, PacketOutdoors};
pub use place::{Cover, Place, PlaceError, oldest_weeks};
pub use ripe_in_time::{FrostCover, Helps, what_helps};
pub use ripening::{Ripening, Ripens, ripening, ripening_of, ripening_of_sowing};
pub use season::Season;
pub use seed_count::{
    CellCount, MOST_PER_CELL, MOST_PLANTS, Odds, SeedCount, SeedCountError, USUAL_LOSSES,
    WANTED_CHANCE, chance_of_at_least,
};
pub use soil::{
    Believe, SoilAdvice, SoilVerdict, below_the_least, fit_soil_c, soil_verdict, which_to_believe,
};
pub use sowing::{SowingPlan, Sown, sowing_place, sowing_plan};
pub use start_again::{StartAgain, better_start, start_again};
pub use succession::{cut_short_by_heat, repeat_after};
pub use too_early::sown_too_early;
pub use trays::{
    CELL_TRAYS, CellTray, Common, DAYS_AHEAD, DAYS_APART, LeftOut, MOST_CELLS, NoTray, PotUp,
    Seedling, Standing, Tray, TrayPlan, USUAL_CELLS, Wanted, lay_out, may_share_a_tray,
};
pub use windows::{Label, Step, Window, Windows, treatments, windows};
