use super::*;
use crate::hang::overhead::{Bows, Track};
use proptest::prelude::*;

fn room(header: i64, bow: Option<i64>, slope: f64, radius: i64) -> Room {
    Room {
        height: Length::from_inches(90),
        header: Length::from_inches(header),
        bow: bow.map(Length::from_sixteenths),
        radius: Length::from_inches(radius),
        rise: Length::from_inches(1),
        slope,
        offset: Length::from_inches(1),
        thickness: Length::from_sixteenths(12),
        panel: Length::from_inches(12),
        gap: Length::from_sixteenths(4),
        bows: Bows::Anywhere,
        assumed: Vec::new(),
    }
}

fn left(swept: &Swept, against: Against) -> f64 {
    swept.tight.iter().find(|tight| tight.against == against).unwrap().left.to_mm()
}

/// On a level track the highest face is rise + radius + offset + thickness above the
/// header's underside, exactly.
#[test]
fn a_level_track_leaves_what_the_sum_says() {
    let swept = sweep(&room(9, Some(20), 0.0, 3));
    let above = (1.0 + 3.0 + 1.0 + 0.75) * 25.4;
    assert!((left(&swept, Against::Roof) - (9.0 * 25.4 - above)).abs() < 1e-3);
    assert!((left(&swept, Against::Bow) - (7.75 * 25.4 - above)).abs() < 1e-3);
    assert!((left(&swept, Against::Header) - 6.35).abs() < 1e-3);
    assert!(swept.moved < 0.1);
    assert_eq!(swept.fit(), Fit::Passes);
    assert_eq!(swept.tightest().unwrap().against, Against::Bow);
}

#[test]
fn below_the_header_its_corner_is_nearest_and_beside_it_its_face() {
    let room = room(9, None, 0.0, 3);
    let (face, underside) = (room.face(), room.height.to_mm());
    for (corner, left) in [
        (Place { x: face + 8.0, y: underside - 15.0 }, 17.0),
        (Place { x: face + 8.0, y: underside + 15.0 }, 8.0),
        // Within the header: less than nothing is left.
        (Place { x: face - 8.0, y: underside + 15.0 }, -8.0),
    ] {
        let mut seen = Seen::new(&room.curtain());
        seen.corner(&room, corner, 0.0);
        assert!((seen.header.left.to_mm() - left).abs() < 1e-6, "{:?}", seen.header);
        assert!((seen.deepest - (corner.x - face).max(0.0)).abs() < 1e-9);
    }
}

#[test]
fn the_tightest_of_several_is_found_wherever_it_stands_and_of_equals_the_first() {
    use Against::{Bow, Header, Roof};
    let swept = sweep(&room(9, Some(20), 0.0, 3));
    assert_eq!(
        swept.tight.iter().map(|tight| tight.against).collect::<Vec<_>>(),
        [Header, Roof, Bow]
    );
    for (lefts, against, least) in [
        // The header counts where it is struck.
        ([1, 2, 3], Roof, 2),
        ([1, 3, 2], Bow, 2),
        ([1, 2, 2], Roof, 2),
        ([0, 1, 2], Header, 0),
        ([-1, 1, 2], Header, -1),
        ([-1, -2, 1], Roof, -2),
        ([-1, -2, -3], Bow, -3),
        ([-1, -1, -1], Header, -1),
    ] {
        let tight = swept.tight.iter().zip(lefts);
        let tight = tight.map(|(tight, left)| Tight { left: Length::from_mm(left), ..*tight });
        let swept = Swept { tight: tight.collect(), ..swept.clone() };
        let tightest = swept.tightest().unwrap();
        assert_eq!((tightest.against, tightest.left), (against, Length::from_mm(least)));
    }
}

#[test]
fn what_is_left_is_told_on_the_careful_side() {
    let told = |nm| {
        let left = Length::from_nm(nm);
        let at = Place { x: 0.0, y: 0.0 };
        let tight = Tight { against: Against::Bow, left, at, lift: Length::ZERO };
        tight.told(Length::SIXTEENTH).nm() / Length::SIXTEENTH.nm()
    };
    let step = Length::SIXTEENTH.nm();
    let all = [4 * step, 4 * step - 1, 4 * step - 2000, step / 2, 0, -1, -step, -step - 2000];
    assert_eq!(all.map(told), [4, 4, 3, 0, -1, -1, -1, -2]);
}

/// A track that falls towards the rear rises into the body: the far end is tightest.
#[test]
fn a_sloping_track_is_tightest_where_the_open_door_ends() {
    let level = sweep(&room(9, None, 0.0, 3));
    let sloped = sweep(&room(9, None, 1.5, 3));
    let roof = |swept: &Swept| *swept.tight.iter().find(|t| t.against == Against::Roof).unwrap();
    assert!(roof(&sloped).left < roof(&level).left);
    assert_eq!(roof(&sloped).lift, Length::from_inches(90));
    let end = room(9, None, 1.5, 3).curtain().at(90.0 * 25.4).last().unwrap().outer[1];
    assert!((roof(&sloped).at.y - end.y).abs() < 1e-9);
}

/// Wholly on the arc, a panel's corners run on a circle about the arc's center with
/// radius² = (R − sagitta + offset + thickness)² + (chord / 2)², and the sagitta of the
/// chord is R − √(R² − (chord / 2)²).
#[test]
fn on_a_wide_arc_the_outline_is_the_circle_of_the_corners() {
    let room = Room { radius: Length::from_inches(40), ..room(60, None, 0.0, 40) };
    let swept = sweep(&room);
    let (radius, half) = (40.0 * 25.4, room.curtain().panel() / 2.0);
    let sagitta = radius - (radius * radius - half * half).sqrt();
    let depth = radius - sagitta + 1.75 * 25.4;
    let circle = (depth * depth + half * half).sqrt();
    let center = Place { x: radius, y: 91.0 * 25.4 };
    let middle: Vec<f64> = swept
        .outline
        .iter()
        .map(|place| place.less(center))
        .filter(|out| {
            let angle = libm::atan2(out.y, -out.x).to_degrees();
            (30.0..60.0).contains(&angle)
        })
        .map(Place::length)
        .collect();
    assert!(middle.len() > 5);
    for out in middle {
        assert!((out - circle).abs() < 0.1, "{out} {circle}");
    }
}

#[test]
fn a_roof_too_low_is_struck_and_a_narrow_one_is_tight() {
    assert_eq!(sweep(&room(5, None, 0.0, 3)).fit(), Fit::Strikes);
    assert_eq!(sweep(&room(6, None, 0.0, 3)).fit(), Fit::Tight);
    assert_eq!(sweep(&room(7, Some(20), 0.0, 3)).fit(), Fit::Strikes);
}

/// The usual figures pass under the least header with the usual bow.
#[test]
fn the_assumed_door_passes_under_the_least_header() {
    let mut room = room(7, Some(20), 0.0, 3);
    room.rise = super::super::RISE;
    let track = Track::default();
    assert_eq!(track.under(Track { rise: Some(room.rise), ..track }).rise, Some(room.rise));
    assert_eq!(sweep(&room).fit(), Fit::Passes);
}

/// On a track that rises into the body the open door's end is highest: bows anywhere stop
/// it, the same bows pass where none hangs there, and do not where one does.
#[test]
fn bows_clear_of_the_way_let_a_door_pass_that_bows_anywhere_would_stop() {
    let bare = sweep(&room(10, None, 2.0, 3));
    // 1/10 in more than what is left to the roof.
    let bow = Length::from_mm_f64(left(&bare, Against::Roof) + 2.54);
    let room = Room { bow: Some(bow), ..room(10, None, 2.0, 3) };
    let anywhere = sweep(&room);
    assert!((left(&anywhere, Against::Bow) - -2.54).abs() < 1e-3);
    assert_eq!(anywhere.fit(), Fit::Strikes);
    let inches = Length::from_inches;
    let swept = |short: i64, spacing: Option<Length>| {
        let first = Some(bare.reach - inches(short));
        sweep(&room.clone().with_bows(first, spacing, None))
    };
    // The last bow over the door ends 18 in before the door does: 18 in × tan 2° = 0.63 in
    // lower there.
    let clear = swept(20, Some(inches(30)));
    let expected = 18.0 * 25.4 * 2.0_f64.to_radians().tan() - 2.54;
    assert!((left(&clear, Against::Bow) - expected).abs() < 0.1, "{:?}", clear.tight);
    assert_eq!(clear.fit(), Fit::Passes);
    assert_eq!(swept(2, Some(inches(30))).fit(), Fit::Strikes);
    // No word of the others: there may be one at the end.
    assert_eq!(swept(20, None).fit(), Fit::Strikes);
    assert_eq!(swept(-10, None).fit(), Fit::Passes);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    /// Knowing where the bows hang never makes the answer worse, and never passes what a
    /// finer look would not.
    #[test]
    fn placed_bows_leave_at_least_what_bows_anywhere_leave(
        header in 7_i64..14, bow in 0_i64..64, slope in 0.0_f64..4.0, radius in 2_i64..8,
        first in 0_i64..900, spacing in 1_i64..900,
    ) {
        let careful = room(header, Some(bow), slope, radius);
        let mm = |mm| Some(Length::from_mm(mm));
        let known = careful.clone().with_bows(mm(first), mm(spacing), None);
        let partly = careful.clone().with_bows(mm(first), None, None);
        let [anywhere, from, placed] = [&careful, &partly, &known].map(sweep);
        let bow = |swept: &Swept| left(swept, Against::Bow);
        prop_assert!(bow(&from) >= bow(&anywhere) - 0.1 && bow(&placed) >= bow(&from) - 0.1);
        if anywhere.fit() == Fit::Passes {
            prop_assert!(placed.fit() != Fit::Strikes || bow(&placed) > -0.1);
        }
        // What is told is what a look eight times as fine sees.
        for (room, swept) in [(&careful, &anywhere), (&known, &placed)] {
            let finer = Seen::of(room, swept.positions * 8);
            let finer = finer.swept(room, 0, 0.0);
            for (one, fine) in swept.tight.iter().zip(&finer.tight) {
                let off = (one.left - fine.left).abs().to_mm();
                prop_assert!(off < 0.1, "{off} {one:?} {fine:?} {}", swept.positions);
            }
        }
    }
}

/// The outline runs from the sill to where the open door ends, and no further.
#[test]
fn the_outline_ends_where_the_open_door_does() {
    for slope in [0.0, 2.0] {
        let room = room(12, None, slope, 3);
        let swept = sweep(&room);
        let (first, last) = (swept.outline.first().unwrap(), swept.outline.last().unwrap());
        assert!(first.y.abs() < 1.0, "{first:?}");
        let end = room.face() + swept.reach.to_mm();
        assert!((last.x - end).abs() < 1.0, "{last:?} and not {end}");
    }
}
