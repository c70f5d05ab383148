//! The crops: loading, validation, the numbers' sources, and the names people use.
//!
//! `crops.toml` beside this file holds every crop with the source of each of its numbers; its
//! header comment says what each line means. A [`Catalogue`] is that file after it has passed its
//! checks. [`Names`] hold what one language calls the crops.

mod check;
mod load;
mod names;
mod sources;
mod word_index;

use std::collections::HashMap;
use std::sync::Arc;

use indexmap::IndexMap;

pub use names::{AmbiguousWord, Meaning, Names, normalise};
pub use sources::Source;

use crate::planning::Crop;

/// The crops that the program knows, in the order of `crops.toml`: vegetables, herbs, flowers.
#[derive(Debug, Clone)]
pub struct Catalogue {
    crops: IndexMap<String, Arc<Crop>>,
    sources: Arc<IndexMap<String, Source>>,
    /// How somebody grows their crops, where that differs.
    grown: Option<Arc<Grown>>,
}

/// How somebody grows their crops.
#[derive(Debug, Default)]
struct Grown {
    /// Each crop as its variety of a name is grown, by the crop and the plain form of the name.
    varieties: HashMap<(String, String), Arc<Crop>>,
    /// What the catalogue lists of the crops that are grown otherwise.
    listed: HashMap<String, Arc<Crop>>,
}

/// What is wrong with the catalogue or its names: one line for each fault, naming the entry and
/// its line and saying what to do.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct CatalogueError(pub String);

impl Catalogue {
    /// The catalogue that is built into the program. It is parsed anew at each call: callers keep
    /// it and share it.
    ///
    /// ```
    /// use sowbell::catalogue::Catalogue;
    /// let catalogue = Catalogue::embedded()?;
    /// let tomato = catalogue.get("tomato").ok_or("listed")?;
    /// assert_eq!(tomato.id.as_str(), "tomato");
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    /// As [`Catalogue::from_toml`].
    pub fn embedded() -> Result<Self, CatalogueError> {
        Self::from_toml(include_str!("crops.toml"))
    }

    /// A catalogue from text in the form of `crops.toml`.
    ///
    /// # Errors
    /// A [`CatalogueError`] that names each broken entry with its line and says what to do: the
    /// text is no TOML, a line is missing or unknown, a range is the wrong way round or outside
    /// its bounds, or a number names a source that is not listed.
    pub fn from_toml(text: &str) -> Result<Self, CatalogueError> {
        load::load(text)
    }

    /// The crop with this id.
    #[must_use]
    pub fn get(&self, id: &str) -> Option<&Crop> {
        self.crops.get(id).map(Arc::as_ref)
    }

    /// The same catalogue with some crops as the varieties of somebody grow, beside the name of
    /// each, where it has one. The last variety of a crop takes its place, and the others are found
    /// by their names; a crop that is not listed is left out. Cheap: the crops are shared.
    #[must_use]
    pub fn with(&self, grown: impl IntoIterator<Item = (Option<String>, Crop)>) -> Self {
        let mut all = self.clone();
        let mut kept = Grown::default();
        for (name, crop) in grown {
            let id = crop.id.as_str().to_owned();
            let Some(place) = all.crops.get_mut(&id) else { continue };
            let crop = Arc::new(crop);
            if let Some(name) = name {
                kept.varieties.insert((id.clone(), normalise(&name)), Arc::clone(&crop));
            }
            let before = std::mem::replace(place, crop);
            kept.listed.entry(id).or_insert(before);
        }
        all.grown = Some(Arc::new(kept));
        all
    }

    /// The crop as the variety of this name is grown: by that variety's packet or, where the
    /// catalogue knows no such variety, as it is listed. Without a name it is [`Catalogue::get`].
    #[must_use]
    pub fn variety(&self, id: &str, name: Option<&str>) -> Option<&Crop> {
        let Some((name, grown)) = name.zip(self.grown.as_deref()) else { return self.get(id) };
        let variety = grown.varieties.get(&(id.to_owned(), normalise(name)));
        variety.or_else(|| grown.listed.get(id)).map(Arc::as_ref).or_else(|| self.get(id))
    }

    /// All crops, in the order of the file.
    pub fn iter(&self) -> impl Iterator<Item = &Crop> {
        self.crops.values().map(Arc::as_ref)
    }

    /// How many crops there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.crops.len()
    }

    /// Whether there are none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.crops.is_empty()
    }

    /// The publication behind a source id.
    #[must_use]
    pub fn source(&self, id: &str) -> Option<&Source> {
        self.sources.get(id)
    }

    /// All sources with their ids, in the order of the file.
    pub fn sources(&self) -> impl Iterator<Item = (&str, &Source)> {
        self.sources.iter().map(|(id, source)| (id.as_str(), source))
    }

    /// The ids of the sources that an entry cites, in the order of its lines, each once.
    #[must_use]
    pub fn cited_by(crop: &Crop) -> Vec<&str> {
        let mut ids: Vec<&str> = Vec::new();
        for (_, cited) in sources::citations(crop) {
            for id in cited.ids() {
                if !ids.contains(&id) {
                    ids.push(id);
                }
            }
        }
        ids
    }
}
