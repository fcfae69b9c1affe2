//! Tracks: where a pair stands, what goes behind it, how it then stands.

use crate::{inches, list};
use hangtrue_core::Unit;
use hangtrue_core::hang::tracks::{Level, Pair, Shims, Side, Stand, upper};
use hangtrue_golden::golden;
use std::fmt::Write as _;

fn stand(stand: Stand) -> String {
    let diagonals = stand.diagonals.map(|by| format!("{:.3}", by.to_mm()));
    let holds = if stand.holds() { ", holds" } else { "" };
    format!("spread {:.3}, diagonals {diagonals:?}{holds}", stand.spread.to_mm())
}

#[test]
fn what_goes_behind_a_pair_of_tracks_is_what_went() {
    let mut text = String::new();
    for (spacing, diagonal, rise) in [
        (["92", "92", "92"], ["", ""], ""),
        (["92", "92 1/8", "92 1/4"], ["", ""], ""),
        (["92 1/4", "", "92"], ["", ""], ""),
        (["", "92", ""], ["", ""], ""),
        (["92", "92", "92"], ["131", "131 1/4"], ""),
        (["92", "92", "92"], ["131 1/4", "131"], "93 1/8"),
        (["92", "91 7/8", "92"], ["131", ""], "93 1/8"),
        (["92", "91 7/8", "92"], ["131", ""], ""),
        (["92 3/16|92 1/4", "92 1/8", "92 5/16|92 5/16|92 3/8"], ["131 5/8", "131 1/8"], "93 1/4"),
        (["92 3/16", "92 1/8", "92 5/16"], ["131 5/8|131 9/16", "131 1/8"], "95"),
        (["90", "92", "91"], ["129 1/2", "131"], ""),
        (["92 1/2", "92", "92 1/2"], ["130 7/8", "131 7/8"], "93"),
        (["92", "92", "92"], ["80", ""], ""),
        (["92 1/64", "92 3/64", "91 31/32"], ["", ""], ""),
        (["92 1/32", "92", "92 3/64"], ["131 1/16", "131 3/32"], ""),
        (["92 5/64", "92 1/64", "92 9/64"], ["131 1/8", "131"], "93 1/8"),
        (["91 63/64", "92 3/32", "92 7/64"], ["131", "131 5/32"], ""),
        (["92.03", "92.11", "92.02"], ["131.2", "131.05"], ""),
    ] {
        let pair = Pair {
            spacing: spacing.map(list),
            diagonal: diagonal.map(list),
            rise: list(rise).first().copied(),
        };
        let _ = write!(text, "{spacing:?} {diagonal:?} {rise}: ");
        let Some(solved) = pair.solve() else {
            text.push_str("too little\n");
            continue;
        };
        let _ = writeln!(
            text,
            "{}, lean {:?}, w {:.3}; {}; shims {:?}{}; {}; to {}",
            solved.spacing.map(|one| format!("{:.3}", one.to_mm())).join(" "),
            solved.lean.map(|lean| format!("{:.3}", lean.to_mm())),
            solved.worst,
            stand(solved.found),
            solved.shims.0,
            if solved.shims.is_none() { ", none" } else { "" },
            stand(solved.result),
            solved.target.text(Unit::Inch),
        );
    }
    let shims = Shims([[0, 1, 2], [3, 4, 5]]);
    for side in Side::ALL {
        let behind = Level::ALL.map(|level| shims.at(side, level).text(Unit::Inch));
        let _ = writeln!(text, "{side:?} {}", behind.join(", "));
    }
    let at = |text: &str| (!text.is_empty()).then(|| inches(text));
    for spacing in [["92", "92 1/8", "92 3/16"], ["91 7/8", "", "91 13/16"], ["92 1/16", "", ""]] {
        let moves = upper::moves(spacing.map(at), inches("92"));
        let moves = moves.iter().map(|it| {
            let each = it.each.map(|one| one.text(Unit::Inch)).join(" ");
            format!("{:?} {each}{}", it.station, if it.holds { ", holds" } else { "" })
        });
        let _ = writeln!(text, "upper {spacing:?}: {}", moves.collect::<Vec<_>>().join("; "));
    }
    for across in ["60", "60 1/8", "59 3/4", "12", "11 7/8", "84", "84 1/8", "0"] {
        let off = upper::off_square(inches(across)).map(|off| format!("{off:.5}"));
        let _ = writeln!(text, "across {across}: {off:?}");
    }
    golden("hang/tracks.txt", &text);
}
