//! What a question comes to once it is clear which crop is meant.

use chrono::NaiveDate;

use crate::planning::CropId;

use super::understand::{Intent, Quantities, Understood};

impl Understood {
    /// The question whether a crop can be started on a day.
    #[must_use]
    pub fn can_start(crop: CropId, on: NaiveDate) -> Self {
        Self {
            intent: Intent::CanStart,
            crops: vec![crop],
            step: None,
            on,
            ambiguous: Vec::new(),
            unknown_words: Vec::new(),
            kind: None,
            asks_when: false,
            until: None,
            gone_by: None,
            ripe_by: None,
            date_given: false,
            date_trouble: None,
            quantities: Quantities::default(),
        }
    }

    /// The question what there is to start on a day.
    #[must_use]
    pub fn what_now(on: NaiveDate) -> Self {
        let start = Self::can_start(CropId::default(), on);
        Self { intent: Intent::WhatNow, crops: Vec::new(), ..start }
    }

    /// Settles that this crop was meant; a question that only lacked its crop is whether to
    /// start it.
    pub fn means(&mut self, crop: &CropId) {
        self.crops = vec![crop.clone()];
        self.ambiguous.clear();
        self.unknown_words.clear();
        if matches!(self.intent, Intent::Unknown | Intent::Help) {
            self.intent = Intent::CanStart;
        }
    }

    /// The crops to weigh: those named, and every one that a word of several meanings may mean.
    pub fn weighed_crops(&self) -> impl Iterator<Item = &CropId> {
        let named = self.crops.iter();
        let may_mean = self.ambiguous.iter().flat_map(|word| &word.means);
        named.chain(may_mean.filter(|id| !self.crops.contains(id)))
    }
}
