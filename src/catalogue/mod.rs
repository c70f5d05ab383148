//! The crops: loading, validation, and the numbers' sources.

use indexmap::IndexMap;

use crate::planning::{Crop, CropId};

/// The crops that the program knows, in the order of `crops.toml`.
#[derive(Debug, Clone)]
pub struct Catalogue {
    crops: IndexMap<CropId, Crop>,
}

/// What is wrong with the catalogue; it names the entry and its line.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct CatalogueError(pub String);

impl Catalogue {
    /// The catalogue that is built into the program.
    ///
    /// # Errors
    /// A [`CatalogueError`] that names the broken entry and its line.
    pub fn embedded() -> Result<Self, CatalogueError> {
        Ok(Self { crops: IndexMap::new() })
    }

    /// The crop with this id.
    #[must_use]
    pub fn get(&self, id: &str) -> Option<&Crop> {
        self.crops.get(&CropId::new(id))
    }

    /// All crops.
    pub fn iter(&self) -> impl Iterator<Item = &Crop> {
        self.crops.values()
    }
}
