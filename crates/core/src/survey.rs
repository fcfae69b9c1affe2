//! What was read from the tape, as it was typed.

use crate::length::{Length, ReadError, ReadErrorKind, Unit, is_plain, read};
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

impl Entry {
    /// `text` as it reads in `unit`.
    #[must_use]
    pub fn new(text: &str, unit: Unit) -> Self {
        Self { text: text.to_owned(), read: read(text, unit), struck: false }
    }
    /// `text` as it was typed, and not read yet: see [`Survey::read_again`].
    #[must_use]
    pub fn unread(text: &str) -> Self {
        let unread = ReadError { kind: ReadErrorKind::Unknown, suggestions: Vec::new() };
        Self { text: text.to_owned(), read: Err(unread), struck: false }
    }
    /// Whether its text is `length` in a field of `unit`.
    #[inline(never)]
    fn says(&self, length: Length, unit: Unit) -> bool {
        read(&self.text, unit).is_ok_and(|read| read == length)
    }
    /// Changes the unit of its field from `was` to `unit`: see [`Survey::set_unit`].
    pub fn set_unit(&mut self, was: Unit, unit: Unit) {
        let Ok(length) = self.read else {
            self.read = read(&self.text, unit);
            return;
        };
        if !self.says(length, unit) {
            self.text = [self.text.trim_end(), was.key()].join(" ");
        }
        if !self.says(length, unit) {
            self.text = length.canonical(was);
        }
    }
    /// `text`, typed in a field of `was`, as it means the same in one of `unit`.
    #[must_use]
    pub fn kept(text: &str, was: Unit, unit: Unit) -> String {
        let mut entry = Self::new(text, was);
        entry.set_unit(was, unit);
        entry.text
    }
    /// Whether nothing was typed: a field left alone is not an unreadable reading.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }
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
        self.push(spot, Entry::new(text, self.unit));
    }

    /// Puts `text` in place of entry `index` at `spot`, as a person types. Blank
    /// entries at the end of the list fall away; a list grows as far as `index`.
    pub fn set(&mut self, spot: Spot, index: usize, text: &str) {
        self.put(spot, index, Entry::new(text, self.unit));
    }

    /// The same with what `typed` says, struck if what was there is.
    pub fn put(&mut self, spot: Spot, index: usize, typed: Entry) {
        let unit = self.unit;
        let entries = self.entries_mut(spot);
        while entries.len() <= index {
            entries.push(Entry::new("", unit));
        }
        if let Some(entry) = entries.get_mut(index) {
            *entry = Entry { struck: entry.struck, ..typed };
        }
        while entries.last().is_some_and(Entry::is_blank) {
            entries.pop();
        }
    }

    /// Changes the unit of the fields. No reading changes its meaning: where a bare
    /// number would, the unit it was typed in is written behind it; where the text takes none, the
    /// length stands there canonically.
    pub fn set_unit(&mut self, unit: Unit) {
        let was = core::mem::replace(&mut self.unit, unit);
        for entry in self.entries.iter_mut().flatten() {
            entry.set_unit(was, unit);
        }
    }

    /// Whether there is a text with anything in it but figures: see [`is_plain`].
    #[must_use]
    pub fn has_words(&self) -> bool {
        self.entries.iter().flatten().any(|entry| !is_plain(&entry.text))
    }

    /// Reads what may not have been read yet: every text with anything in it but figures.
    pub fn read_again(&mut self) {
        for entry in self.entries.iter_mut().flatten().filter(|entry| !is_plain(&entry.text)) {
            entry.read = read(&entry.text, self.unit);
        }
    }

    /// Adds an entry as it is.
    pub fn push(&mut self, spot: Spot, entry: Entry) {
        if let Some(entries) = self.entries.get_mut(spot.index()) {
            entries.push(entry);
        }
    }

    /// Everything typed at `spot`, struck and blank entries with it.
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

    /// The mean of the places of `dimension` that were read, each place being the mean of
    /// its repeats: a place read twice has no more say than one read once.
    #[must_use]
    pub fn mean(&self, dimension: Dimension) -> Option<Length> {
        let place = |spot| mean(self.lengths(spot));
        mean(dimension.spots().into_iter().filter_map(place))
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

/// The mean, to the nanometre; towards the smaller where that does not go in.
fn mean(lengths: impl Iterator<Item = Length>) -> Option<Length> {
    let (sum, count) = lengths.fold((0_i64, 0_i64), |(sum, count), length| {
        (sum.saturating_add(length.nm()), count.saturating_add(1))
    });
    sum.checked_div_euclid(count).map(Length::from_nm)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_read_twice_has_no_more_say_than_one_read_once() {
        let mut survey = Survey::new(Unit::Millimetre);
        let mut put = |spot, mm| {
            let read = Ok(Length::from_mm(mm));
            survey.push(spot, Entry { text: String::new(), read, struck: false });
        };
        put(Spot::WidthLow, 2300);
        put(Spot::WidthLow, 2304);
        put(Spot::WidthHigh, 2312);
        assert_eq!(survey.mean(Dimension::Width), Some(Length::from_mm(2307)));
        assert_eq!(survey.mean(Dimension::Bow), None);
    }

    fn texts(survey: &Survey, spot: Spot) -> Vec<&str> {
        survey.entries(spot).iter().map(|entry| entry.text.as_str()).collect()
    }

    #[test]
    fn a_text_is_put_at_its_place_and_blanks_fall_off_the_end() {
        let (mut survey, spot) = (Survey::new(Unit::Inch), Spot::BowSecond);
        survey.set(spot, 2, "1 1/4");
        assert_eq!(texts(&survey, spot), ["", "", "1 1/4"]);
        survey.entries_mut(spot)[2].struck = true;
        survey.set(spot, 2, "1 3/8");
        assert_eq!(survey.entries(spot)[2].read, Ok(Length::from_sixteenths(22)));
        assert!(survey.entries(spot)[2].struck, "what is struck stays so");
        survey.set(spot, 0, "1");
        assert_eq!(texts(&survey, spot), ["1", "", "1 3/8"]);
        survey.set(spot, 2, " ");
        assert_eq!(texts(&survey, spot), ["1"]);
        survey.set(spot, 0, "");
        assert!(survey.entries(spot).is_empty());
    }

    #[test]
    fn another_unit_changes_no_reading() {
        let mut survey = Survey::new(Unit::Inch);
        for text in ["9 1/2 ", "240 mm", "wide"] {
            survey.add(Spot::HeaderLeft, text);
        }
        let before: Vec<Length> = survey.lengths(Spot::HeaderLeft).collect();
        survey.set_unit(Unit::Millimetre);
        assert_eq!(survey.unit, Unit::Millimetre);
        assert_eq!(texts(&survey, Spot::HeaderLeft), ["9 1/2 in", "240 mm", "wide"]);
        assert_eq!(survey.lengths(Spot::HeaderLeft).collect::<Vec<_>>(), before);
    }

    #[test]
    fn a_text_that_takes_no_unit_gives_way_to_its_length() {
        let (mut survey, spot) = (Survey::new(Unit::Inch), Spot::HeaderLeft);
        // The full stop of a telephone's keyboard; as long as a text may be.
        survey.add(spot, "9 1/4.");
        survey.add(spot, &format!("{:0>200}", "9 1/2"));
        survey.set_unit(Unit::Millimetre);
        assert_eq!(texts(&survey, spot), ["9 1/4. in", "9 1/2 in"]);
        let sixteenths = [9 * 16 + 4, 9 * 16 + 8].map(Length::from_sixteenths);
        for unit in [Unit::Millimetre, Unit::Inch] {
            survey.set_unit(unit);
            survey.read_again();
            assert_eq!(survey.lengths(spot).collect::<Vec<_>>(), sixteenths);
            assert!(survey.entries(spot).iter().all(|entry| read(&entry.text, unit) == entry.read));
        }
    }

    #[test]
    fn a_text_kept_in_another_unit_means_the_same_there() {
        let kept = |text| Entry::kept(text, Unit::Inch, Unit::Millimetre);
        assert_eq!(["9 1/2 ", "240 mm", "wide"].map(kept), ["9 1/2 in", "240 mm", "wide"]);
        assert_eq!(Entry::kept("240", Unit::Millimetre, Unit::Inch), "240 mm");
    }

    #[test]
    fn of_readings_that_are_as_tight_the_first_counts() {
        let mut survey = Survey::new(Unit::Inch);
        for (spot, text) in [
            (Spot::WidthLow, "93"),
            (Spot::WidthMiddle, "92"),
            (Spot::WidthHigh, "92"),
            (Spot::BowFirst, "1"),
            (Spot::BowSecond, "1 1/4"),
            (Spot::BowThird, "1 1/4"),
        ] {
            survey.add(spot, text);
        }
        let tightest = |dimension| survey.tightest(dimension).map(|(spot, _)| spot);
        assert_eq!(tightest(Dimension::Width), Some(Spot::WidthMiddle));
        assert_eq!(tightest(Dimension::Bow), Some(Spot::BowSecond));
        assert_eq!(tightest(Dimension::Height), None);
    }

    #[test]
    fn words_may_be_read_later() {
        let (mut survey, spot) = (Survey::new(Unit::Inch), Spot::HeaderLeft);
        survey.put(spot, 0, Entry::unread("nine and a half"));
        survey.set(spot, 1, "9 1/2 in");
        assert!(survey.has_words());
        assert_eq!(survey.lengths(spot).count(), 1);
        survey.read_again();
        let read: Vec<Length> = survey.lengths(spot).collect();
        assert_eq!(read, [Length::from_sixteenths(9 * 16 + 8); 2]);
        survey.set(spot, 0, "");
        assert!(!survey.has_words());
    }
}
