//! Rooms overhead: what an opening door sweeps and where it comes nearest.

use crate::inches;
use hangtrue_core::hang::overhead::{Path, Room, Track, sweep};
use hangtrue_core::order::Numbers;
use hangtrue_core::profile::Profile;
use hangtrue_core::{Length, Spot, Survey, Unit};
use hangtrue_golden::golden;
use std::fmt::Write as _;

fn numbers(height: &str, header: &str, bow: &str) -> Numbers {
    let mut survey = Survey::new(Unit::Inch);
    survey.prepared = true;
    for (spot, text) in
        [(Spot::HeightCenter, height), (Spot::HeaderCenter, header), (Spot::BowFirst, bow)]
    {
        if !text.is_empty() {
            survey.add(spot, text);
        }
    }
    hangtrue_core::check(&survey, &Profile::default()).numbers
}

#[test]
fn what_a_door_leaves_overhead_is_what_it_left() {
    let mut text = String::new();
    let track = |radius, slope, panel| Track {
        radius: Some(inches(radius)),
        slope: Some(slope),
        panel: Some(inches(panel)),
        ..Track::default()
    };
    let bows = |first, spacing, width| {
        let given = |text: &str| (!text.is_empty()).then(|| inches(text));
        (given(first), given(spacing), given(width))
    };
    for (door, track, bows) in [
        (["90", "9 1/2", "1 1/4"], Track::default(), bows("", "", "")),
        (["90", "9 1/2", "1 1/4"], Track::default(), bows("20", "", "")),
        (["90", "9 1/2", "1 1/4"], Track::default(), bows("6", "24", "")),
        (["90", "9 1/2", "1 1/4"], Track::default(), bows("6", "24", "1")),
        (["90", "9 1/2", "1 1/4"], Track::default(), bows("24", "2", "2")),
        (["90", "9 1/2", ""], Track::default(), bows("", "", "")),
        (["96 3/16", "7", "1 1/2"], track("3", 2.0, "18"), bows("10", "19", "3")),
        (["96 3/16", "12", "2"], track("10", 1.0, "21"), bows("", "", "")),
        (["96", "12", "2"], track("0", 0.0, "12"), bows("", "", "")),
        (["78", "5 1/2", "3"], track("4", -1.0, "13"), bows("0", "30", "")),
        (["78", "9", "1"], track("15", 0.0, "40"), bows("", "", "")),
        (["236", "9", "1"], track("12", 0.0, "21"), bows("", "", "")),
        (["236 1/4", "9", "1"], track("12", 0.0, "21"), bows("", "", "")),
        (["78", "9", "1"], track("12", 0.0, "1 1/2"), bows("", "", "")),
        (["20", "9", "1"], track("12", 0.0, "20"), bows("", "", "")),
    ] {
        let [height, header, bow] = door;
        let _ = write!(text, "{door:?} {:?}", bows);
        let Some(room) = Room::of(&numbers(height, header, bow), track) else {
            text.push_str(": no door\n");
            continue;
        };
        let room = room.with_bows(bows.0, bows.1, bows.2);
        let swept = sweep(&room);
        let _ = writeln!(
            text,
            ": {:?}, reach {}, {} positions, moved {:.4}, {} panels, face {:.2}, assumed {:?}",
            swept.fit(),
            swept.reach.text(Unit::Millimetre),
            swept.positions,
            swept.moved,
            room.curtain().panels,
            room.face(),
            room.assumed,
        );
        for tight in &swept.tight {
            let _ = writeln!(
                text,
                "  {:?} left {:.3}, told {}, at {:.2} {:.2}, lifted {:.2}",
                tight.against,
                tight.left.to_mm(),
                tight.told(Length::SIXTEENTH).text(Unit::Inch),
                tight.at.x,
                tight.at.y,
                tight.lift.to_mm(),
            );
        }
        let outline = swept.outline.iter().step_by(12);
        let outline = outline.map(|place| format!("{:.2} {:.2}", place.x, place.y));
        let _ = writeln!(text, "  outline {}", outline.collect::<Vec<_>>().join(", "));
        let hanging = (0..=6).map(|at| {
            let lift = room.height.to_mm() * f64::from(at) / 6.0;
            format!("{:.4}", room.curtain().hanging(lift))
        });
        let _ = writeln!(text, "  hanging {}", hanging.collect::<Vec<_>>().join(" "));
    }
    golden("hang/rooms.txt", &text);
}

#[test]
fn the_way_of_the_rollers_is_what_it_was() {
    let mut text = String::new();
    for (begins, radius, slope) in [(2300.0, 76.2, 0.0), (2300.0, 304.8, 3.0), (900.0, 0.0, 1.5)] {
        let path = Path::new(begins, radius, slope);
        let _ = writeln!(text, "{begins} {radius} {slope}: arc to {:.3}", path.arc_end());
        for along in [-50.0, 0.0, 899.0, 900.0, 2299.0, 2310.0, 2400.0, 2600.0, 2900.0, 4000.0] {
            let (at, to) = (path.at(along), path.direction(along));
            let _ = writeln!(
                text,
                "  {along}: {:.3} {:.3}, towards {:.5} {:.5}, next {:.4} {:.4}",
                at.x,
                at.y,
                to.x,
                to.y,
                path.next(along, 300.0),
                path.next(along, 20.0),
            );
        }
    }
    golden("hang/path.txt", &text);
}
