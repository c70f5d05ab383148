//! The flats and cells that seedlings are raised in.

/// Inside length of a standard 1020 flat in millimetres; outside it is about 540 mm.
const FLAT_LENGTH_MM: i64 = 510;

/// Inside width of a standard 1020 flat in millimetres; outside it is about 280 mm.
const FLAT_WIDTH_MM: i64 = 250;

/// A standard 1020 flat (540 × 280 mm outside) filled with inserts of one size of cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct CellTray {
    /// Width of a cell in millimetres, on its narrower side.
    pub cell_mm: i64,
    /// Cells along the flat's short side.
    across: u32,
    /// Cells along its long side.
    along: u32,
}

/// The inserts that the trade sells for a 1020 flat, the smallest cells first: a sheet of 200
/// plugs, twelve four-cell packs, six six-cell packs, eight larger four-cell packs, eighteen pots
/// of 8 cm and ten of 10 cm.
///
/// Common practice with no publication behind it; the cells of the four-cell and six-cell packs
/// are oblong, and what counts here is their narrower side.
pub const CELL_TRAYS: [CellTray; 6] = [
    CellTray { cell_mm: 25, across: 10, along: 20 },
    FOUR_CELL_PACKS,
    CellTray { cell_mm: 50, across: 4, along: 9 },
    CellTray { cell_mm: 60, across: 4, along: 8 },
    CellTray { cell_mm: 80, across: 3, along: 6 },
    LARGEST,
];

/// Small four-cell packs, which carry a quick upright crop about four to seven weeks.
const FOUR_CELL_PACKS: CellTray = CellTray { cell_mm: 40, across: 4, along: 12 };

const LARGEST: CellTray = CellTray { cell_mm: 100, across: 2, along: 5 };

impl CellTray {
    /// How many cells the flat holds.
    #[must_use]
    pub fn cells(self) -> u32 {
        self.across * self.along
    }

    /// The flat for a crop that wants cells of `crop_cell_mm`: the smallest cell that is not
    /// smaller. A crop that wants more than the largest pot gets the largest.
    #[must_use]
    pub fn carrying(crop_cell_mm: i64) -> Self {
        CELL_TRAYS.into_iter().find(|tray| tray.cell_mm >= crop_cell_mm).unwrap_or(LARGEST)
    }

    /// Whether the cells lie within the flat.
    #[must_use]
    pub fn fits_the_flat(self) -> bool {
        let reach = |cells: u32| self.cell_mm * i64::from(cells);
        reach(self.across) <= FLAT_WIDTH_MM && reach(self.along) <= FLAT_LENGTH_MM
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_insert_fits_the_flat_and_larger_cells_are_fewer() {
        assert!(CELL_TRAYS.iter().all(|tray| tray.fits_the_flat()));
        assert!(!CellTray { cell_mm: 65, across: 4, along: 8 }.fits_the_flat());
        assert!(CELL_TRAYS.windows(2).all(|pair| {
            matches!(pair, [small, large]
                if small.cell_mm < large.cell_mm && small.cells() > large.cells())
        }));
    }

    #[test]
    fn a_crop_gets_the_smallest_cell_that_is_not_smaller_than_its_own() {
        for (crop_cell, cell, cells) in
            [(25, 25, 200), (38, 40, 48), (40, 40, 48), (45, 50, 36), (75, 80, 18), (90, 100, 10)]
        {
            let tray = CellTray::carrying(crop_cell);
            assert_eq!((tray.cell_mm, tray.cells()), (cell, cells), "{crop_cell} mm");
        }
        assert_eq!(CellTray::carrying(400).cell_mm, 100);
    }
}
