//! What was read from the tape, as it was typed.

use crate::length::{Length, ReadError, Unit, read};
use crate::spot::{Dimension, Spot};

/// One reading: what was typed, and what it means or why it means nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// What the person typed, verbatim.
    pub text: String,
    /// What it says.
    pub read: Result<Length, ReadError>,
    /// Replaced by a later reading at the same spot: kept, but no longer counted.
    pub struck: bool,
}

/// All readings of one opening.
///
/// A spot holds a list: repeats at the same marked spot, in the order they were
/// taken. Unreadable text is kept as it is; it is data, not an early exit.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Survey {
    /// The unit a bare number was typed in, and in which the order is written.
    pub unit: Unit,
    /// The frame is as it will stay: header and posts have been built to their
    /// minimum, or needed no building.
    pub prepared: bool,
    entries: [Vec<Entry>; 18],
}

impl Survey {
    /// An empty survey in `unit`, of a frame not yet prepared.
    #[must_use]
    pub fn new(unit: Unit) -> Self {
        Self { unit, ..Self::default() }
    }

    /// Adds one more reading at `spot`, read in the survey's unit.
    pub fn add(&mut self, spot: Spot, text: &str) {
        let entry = Entry { text: text.to_owned(), read: read(text, self.unit), struck: false };
        self.push(spot, entry);
    }

    /// Adds an entry as it is.
    pub fn push(&mut self, spot: Spot, entry: Entry) {
        if let Some(entries) = self.entries.get_mut(spot.index()) {
            entries.push(entry);
        }
    }

    /// Everything typed at `spot`, struck readings with it.
    #[must_use]
    pub fn entries(&self, spot: Spot) -> &[Entry] {
        self.entries.get(spot.index()).map_or(&[], Vec::as_slice)
    }

    /// The list at `spot`, to change.
    pub fn entries_mut(&mut self, spot: Spot) -> &mut Vec<Entry> {
        // Eighteen spots, eighteen lists; `index` cannot be outside.
        #[expect(clippy::indexing_slicing, reason = "Spot::index is below 18 by construction")]
        &mut self.entries[spot.index()]
    }

    /// The lengths that count at `spot`: read, and not struck.
    pub fn lengths(&self, spot: Spot) -> impl Iterator<Item = Length> + '_ {
        self.entries(spot)
            .iter()
            .filter(|e| !e.struck)
            .filter_map(|e| e.read.as_ref().ok().copied())
    }

    /// Every spot and length that counts, in the order of [`Spot::ALL`].
    pub fn readings(&self) -> impl Iterator<Item = (Spot, Length)> + '_ {
        Spot::ALL.into_iter().flat_map(|spot| self.lengths(spot).map(move |length| (spot, length)))
    }

    /// Every spot and length of one ordered dimension that counts.
    pub fn of(&self, dimension: Dimension) -> impl Iterator<Item = (Spot, Length)> + '_ {
        dimension
            .spots()
            .into_iter()
            .flat_map(|spot| self.lengths(spot).map(move |length| (spot, length)))
    }

    /// The reading the door must fit: the smallest width, height and header
    /// depth, the largest roof-bow depth (a lower bow leaves less room).
    #[must_use]
    pub fn tightest(&self, dimension: Dimension) -> Option<(Spot, Length)> {
        let readings = self.of(dimension);
        match dimension {
            Dimension::Bow => {
                readings.reduce(|best, next| if next.1 > best.1 { next } else { best })
            }
            _ => readings.reduce(|best, next| if next.1 < best.1 { next } else { best }),
        }
    }
}
