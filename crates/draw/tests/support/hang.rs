//! Doors being hung, for the pictures of them.

use hangtrue_core::Length;
use hangtrue_core::hang::Weight;
use hangtrue_core::hang::overhead::{Bows, Room, sweep};
use hangtrue_core::hang::spring::{Balance, Turns};
use hangtrue_core::hang::tracks::Pair;
use hangtrue_draw::Sheet;
use hangtrue_draw::hang::{balance, overhead, pair};

/// A door of `height` under a header of `header`, on a level or sloping track; inches.
pub fn room(height: i64, header: i64, slope: f64) -> Room {
    Room {
        height: Length::from_inches(height),
        header: Length::from_inches(header),
        bow: Some(Length::from_sixteenths(20)),
        radius: Length::from_inches(4),
        rise: Length::from_sixteenths(8),
        slope,
        offset: Length::from_inches(1),
        thickness: Length::from_sixteenths(12),
        panel: Length::from_inches(12),
        gap: Length::from_sixteenths(4),
        bows: Bows::Anywhere,
        assumed: Vec::new(),
    }
}

/// A door on a rising track, under bows whose places are known, all or the first.
pub fn bows(all: bool) -> Room {
    let inch = Length::from_inches;
    room(90, 9, 2.0).with_bows(Some(inch(14)), all.then_some(inch(24)), None)
}

/// The side view, opened by a share of the height.
pub fn side(sheet: Sheet<'_>, room: &Room, open: f64) -> String {
    let lift = Length::from_mm_f64(room.height.to_mm() * open);
    overhead(sheet, room, &sweep(room), lift)
}

/// The tracks, by their places in sixteenths from where they should be.
pub fn tracks(sheet: Sheet<'_>, left: [i64; 3], right: [i64; 3]) -> String {
    let (wide, tall) = (92 * 16, 96 * 16);
    let right = right.map(|by| wide + by);
    let inch = Length::from_sixteenths;
    let ([ll, lm, lh], [rl, rm, rh]) = (left, right);
    let diagonal =
        |across: i64| Length::from_mm_f64(inch(across).to_mm().hypot(inch(tall).to_mm()));
    let solved = Pair {
        spacing: [vec![inch(rl - ll)], vec![inch(rm - lm)], vec![inch(rh - lh)]],
        diagonal: [vec![diagonal(rh - ll)], vec![diagonal(rl - lh)]],
        rise: Some(inch(tall)),
    }
    .solve()
    .unwrap();
    pair(sheet, &solved)
}

/// The balance of a door of `kg`, wound by `more` turns than it should be.
pub fn forces(sheet: Sheet<'_>, kg: i64, more: f64) -> String {
    let room = room(90, 9, 0.0);
    let turns = Turns::of(room.height, None);
    let ideal = Balance::ideal(Weight::from_grams(kg * 1000), turns);
    balance(sheet, &ideal.wound(ideal.wound + more).points(&room.curtain(), 48))
}
