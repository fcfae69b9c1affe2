//! English (US).

use super::Words;
use hangtrue_core::hang::overhead::Against;

pub(super) static WORDS: Words = Words {
    overhead_title: "The door on its track, seen from the side",
    overhead: "The header is at the left, the inside of the body at the right, the roof above. \
               The chain line is the room that the door sweeps as it opens.",
    lifted: |value| ["The door is lifted by ", value, "."].concat(),
    left: |against, value| [name(against), ": ", value, " left."].concat(),
    through: |against, value| [name(against), ": the door strikes it by ", value, "."].concat(),
    roof: "roof skin",
    rear: "rear",
    inside: "inside",
    pair_title: "The two vertical tracks, seen from behind",
    pair: "Each track with its three fastenings. Dashed: where it will stand.",
    shim: |side, level, value| [side, ", ", level, ": shim ", value, "."].concat(),
    no_shim: "No shim is needed.",
    sides: ["left", "right"],
    levels: ["low", "middle", "high"],
    exaggerated: |times| ["bends drawn ", times, " times too big"].concat(),
    balance_title: "The balance from closed to open",
    balance: "What hangs on the cables, what the spring lifts, and the pull that is left for \
              the hand.",
    most: |pull, push| {
        let up = [", and the spring pulls up with ", push, " more than hangs there."].concat();
        ["At most the hand lifts ", pull, &up].concat()
    },
    hangs: "hangs",
    lifts: "spring",
    hand: "hand",
    closed: "closed",
    open: "open",
};

fn name(against: Against) -> &'static str {
    match against {
        Against::Header => "Header",
        Against::Roof => "Roof skin",
        Against::Bow => "Bow",
    }
}
