//! Two orders for one truck: what differs, and which slip would explain it.

use crate::check::Report;
use crate::judge::{SlipKind, Way, between};
use crate::length::{Length, Unit};
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

/// What is compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Item {
    /// An ordered number.
    Number(Dimension),
    /// The reading at a spot; repeats count up from 0.
    Reading(Spot, usize),
}

/// One item of both.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Row {
    /// What is compared.
    pub item: Item,
    /// What the first has; none where it has nothing.
    pub first: Option<Length>,
    /// What the second has.
    pub second: Option<Length>,
    /// How they stand to each other.
    pub standing: Standing,
    /// The slip that would make the first out of the second, or the reverse.
    pub slip: Option<SlipKind>,
}

/// How two values stand to each other, the most pressing last.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// The same.
    Same,
    /// No further apart than two careful readings, or than rounding in two units.
    Close,
    /// One of the two has nothing.
    OneOnly,
    /// Apart.
    Apart,
}

impl Row {
    /// First less second.
    #[must_use]
    pub fn difference(&self) -> Option<Length> {
        Some(self.first? - self.second?)
    }
}

/// Two careful readings of one spot lie within this. Common practice, no source.
const CAREFUL: Length = Length::from_sixteenths(2);

/// What was said against what was sent: the ordered numbers. Every difference counts,
/// but for rounding where the two are in different units.
#[must_use]
pub fn numbers(said: (&Report, Unit), sent: (&Report, Unit)) -> Vec<Row> {
    let of = |report: &Report| Dimension::ALL.map(|dimension| report.numbers.ordered(dimension));
    values((of(said.0), said.1), (of(sent.0), sent.1))
}

/// The same for four numbers of each, in the order of [`Dimension::ALL`], whatever they
/// were taken from.
#[must_use]
pub fn values(said: ([Option<Length>; 4], Unit), sent: ([Option<Length>; 4], Unit)) -> Vec<Row> {
    let ((said, said_unit), (sent, sent_unit)) = (said, sent);
    let close = if said_unit == sent_unit { Length::ZERO } else { Unit::Millimetre.step() };
    let bow = sent.get(Dimension::Bow.index()).copied().flatten();
    let mut rows: Vec<Row> = Dimension::ALL
        .into_iter()
        .zip(said.into_iter().zip(sent))
        .map(|(dimension, values)| {
            row(Item::Number(dimension), values, close, (said_unit, bow, Way::Said))
        })
        .collect();
    exchanged(&mut rows);
    worst_first(&mut rows);
    rows
}

/// Two surveys of one truck, reading by reading; what was struck does not count.
#[must_use]
pub fn readings(first: &Survey, second: &Survey) -> Vec<Row> {
    let mut rows = Vec::new();
    let bow = second.tightest(Dimension::Bow).map(|(_, bow)| bow);
    for spot in Spot::ALL {
        let (mut a, mut b) = (first.lengths(spot), second.lengths(spot));
        let mut index = 0_usize;
        loop {
            let values = (a.next(), b.next());
            if values == (None, None) {
                break;
            }
            let how = (first.unit, bow, Way::Read);
            rows.push(row(Item::Reading(spot, index), values, CAREFUL, how));
            index = index.saturating_add(1);
        }
    }
    exchanged(&mut rows);
    worst_first(&mut rows);
    rows
}

fn row(
    item: Item,
    (first, second): (Option<Length>, Option<Length>),
    close: Length,
    (unit, bow, way): (Unit, Option<Length>, Way),
) -> Row {
    let standing = match (first, second) {
        (Some(a), Some(b)) if a == b => Standing::Same,
        (Some(a), Some(b)) if (a - b).abs() <= close => Standing::Close,
        (Some(_), Some(_)) => Standing::Apart,
        _ => Standing::OneOnly,
    };
    let group = match item {
        Item::Number(dimension) => dimension.group(),
        Item::Reading(spot, _) => spot.group(),
    };
    let slip = match (first, second, standing) {
        (Some(a), Some(b), Standing::Apart) => {
            between(a, b, group, unit, bow, way).or_else(|| between(b, a, group, unit, bow, way))
        }
        _ => None,
    };
    Row { item, first, second, standing, slip }
}

/// Two items that are apart and hold each other's values were exchanged.
fn exchanged(rows: &mut [Row]) {
    let before = rows.to_vec();
    for row in rows.iter_mut().filter(|row| row.standing == Standing::Apart) {
        let swapped = |other: &Row| {
            other.item != row.item && other.first == row.second && other.second == row.first
        };
        if before.iter().any(swapped) {
            row.slip = Some(SlipKind::Exchange);
        }
    }
}

/// What differs stands first, the widest apart before the others; equals keep their order.
fn worst_first(rows: &mut [Row]) {
    let rank = |row: &Row| {
        let apart = row.difference().map_or(Length::ZERO, Length::abs);
        core::cmp::Reverse((row.standing, apart))
    };
    rows.sort_by_key(rank);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::check;
    use crate::profile::Profile;
    use proptest::prelude::*;

    fn survey(unit: Unit, texts: &[(Spot, &str)]) -> Survey {
        let mut survey = Survey::new(unit);
        survey.prepared = true;
        for (spot, text) in texts {
            survey.add(*spot, text);
        }
        survey
    }

    fn four(unit: Unit, numbers: [&str; 4]) -> Survey {
        let spots = [Spot::WidthMiddle, Spot::HeightCenter, Spot::HeaderCenter, Spot::BowFirst];
        let texts: Vec<_> = spots.into_iter().zip(numbers).collect();
        survey(unit, &texts)
    }

    fn compared(said: &Survey, sent: &Survey) -> Vec<Row> {
        let report = |survey| check(survey, &Profile::default());
        numbers((&report(said), said.unit), (&report(sent), sent.unit))
    }

    const SOUND: [&str; 4] = ["92 3/16", "101 1/2", "9 1/2", "1 1/4"];

    #[test]
    fn what_was_heard_wrong_stands_first_with_its_slip() {
        let sent = four(Unit::Inch, SOUND);
        let said = four(Unit::Inch, ["92 3/16", "105 1/2", "5 1/2", "1 1/4"]);
        let rows = compared(&said, &sent);
        assert_eq!(rows[0].item, Item::Number(Dimension::Height));
        assert_eq!(rows[0].slip, Some(SlipKind::Digit));
        assert_eq!(rows[1].item, Item::Number(Dimension::Header));
        assert_eq!(rows[1].slip, Some(SlipKind::Heard));
        assert_eq!(rows[1].difference(), Some(Length::from_inches(-4)));
        let standing: Vec<_> = rows.iter().map(|row| row.standing).collect();
        assert_eq!(standing, [Standing::Apart, Standing::Apart, Standing::Same, Standing::Same]);
    }

    #[test]
    fn exchanged_numbers_are_an_exchange() {
        let sent = four(Unit::Inch, SOUND);
        let said = four(Unit::Inch, ["101 1/2", "92 3/16", "9 1/2", "1 1/4"]);
        let rows = compared(&said, &sent);
        assert_eq!([rows[0].slip, rows[1].slip], [Some(SlipKind::Exchange); 2]);
    }

    #[test]
    fn another_unit_is_close_and_a_missing_number_is_told() {
        let sent = four(Unit::Inch, SOUND);
        let mut said = four(Unit::Millimetre, ["2341", "2578", "241", "32"]);
        let standings = |rows: Vec<Row>| rows.iter().map(|row| row.standing).collect::<Vec<_>>();
        assert_eq!(standings(compared(&said, &sent)), [Standing::Close; 4]);
        said.entries_mut(Spot::BowFirst).clear();
        assert_eq!(compared(&said, &sent)[0].standing, Standing::OneOnly);
    }

    #[test]
    fn two_surveys_are_compared_reading_by_reading() {
        let first = survey(
            Unit::Inch,
            &[
                (Spot::WidthLow, "92 3/16"),
                (Spot::WidthLow, "92 1/4"),
                (Spot::WidthHigh, "92 1/4"),
                (Spot::HeaderLeft, "8 1/4"),
                (Spot::BowFirst, "1 1/4"),
            ],
        );
        let mut second = survey(
            Unit::Inch,
            &[
                (Spot::WidthLow, "93 3/16"),
                (Spot::WidthHigh, "92 3/16"),
                (Spot::HeaderLeft, "9 1/2"),
                (Spot::BowFirst, "2"),
                (Spot::BowFirst, "1 1/4"),
            ],
        );
        second.entries_mut(Spot::BowFirst)[0].struck = true;
        let rows = readings(&first, &second);
        let items: Vec<_> = rows.iter().map(|row| (row.item, row.standing, row.slip)).collect();
        let at = |spot, index| Item::Reading(spot, index);
        assert_eq!(
            items,
            [
                (at(Spot::HeaderLeft, 0), Standing::Apart, Some(SlipKind::WrongEdge)),
                (at(Spot::WidthLow, 0), Standing::Apart, Some(SlipKind::InchMark)),
                (at(Spot::WidthLow, 1), Standing::OneOnly, None),
                (at(Spot::WidthHigh, 0), Standing::Close, None),
                (at(Spot::BowFirst, 0), Standing::Same, None),
            ]
        );
    }

    proptest! {
        /// The same against itself is all the same; and who is first changes only signs.
        #[test]
        fn a_comparison_is_symmetric(
            a in prop::array::uniform4(1_i64..2000), b in prop::array::uniform4(1_i64..2000),
        ) {
            let survey = |numbers: [i64; 4]| {
                let texts = numbers.map(|n| Length::from_sixteenths(n).text(Unit::Inch));
                four(Unit::Inch, [&texts[0], &texts[1], &texts[2], &texts[3]])
            };
            let (a, b) = (survey(a), survey(b));
            let same = compared(&a, &a);
            prop_assert!(same.len() >= 4 && same.iter().all(|row| row.standing == Standing::Same));
            let standing = |rows: Vec<Row>| -> Vec<_> {
                rows.iter().map(|row| (row.item, row.standing, row.difference().map(Length::abs)))
                    .collect()
            };
            prop_assert_eq!(standing(compared(&a, &b)), standing(compared(&b, &a)));
        }
    }
}
