//! The spots a tape is laid at, by their names in survey files, and the sets of
//! readings that are compared.

/// The four ordered numbers, by the first part of a spot's name.
pub const ORDERED: [&str; 4] = ["width", "height", "header", "bow"];

/// A set of readings: each spot, and how often it is read.
#[derive(Clone, Copy, Debug)]
pub struct Layout {
    /// What it is called in tables.
    pub name: &'static str,
    /// (spot, times), in the order they are read.
    pub spots: &'static [(&'static str, usize)],
}

/// Four numbers, each read once.
pub const FOUR: Layout = Layout {
    name: "four numbers",
    spots: &[("width.middle", 1), ("height.center", 1), ("header.center", 1), ("bow.first", 1)],
};

/// Three widths, three heights, two headers, two bows.
pub const PLACES: Layout = Layout {
    name: "3 widths, 3 heights, 2 headers, 2 bows",
    spots: &[
        ("width.low", 1),
        ("width.middle", 1),
        ("width.high", 1),
        ("height.left", 1),
        ("height.center", 1),
        ("height.right", 1),
        ("header.left", 1),
        ("header.right", 1),
        ("bow.first", 1),
        ("bow.second", 1),
    ],
};

/// Four, one diagonal, sill to bow.
pub const CLOSED: Layout = Layout {
    name: "four + diagonal + sill to bow",
    spots: &[
        ("width.middle", 1),
        ("height.center", 1),
        ("header.center", 1),
        ("bow.first", 1),
        ("diagonal.rising", 1),
        ("loop.sill_to_bow", 1),
    ],
};

/// Each of the four twice at the same spot, one diagonal, sill to bow.
pub const TWICE: Layout = Layout {
    name: "each twice + diagonal + sill to bow",
    spots: &[
        ("width.middle", 2),
        ("height.center", 2),
        ("header.center", 2),
        ("bow.first", 2),
        ("diagonal.rising", 1),
        ("loop.sill_to_bow", 1),
    ],
};

/// Three widths, three heights, header, bow, two diagonals, sill to bow.
pub const ELEVEN: Layout = Layout {
    name: "3 + 3 + two diagonals + sill to bow",
    spots: &[
        ("width.low", 1),
        ("width.middle", 1),
        ("width.high", 1),
        ("height.left", 1),
        ("height.center", 1),
        ("height.right", 1),
        ("header.center", 1),
        ("bow.first", 1),
        ("diagonal.rising", 1),
        ("diagonal.falling", 1),
        ("loop.sill_to_bow", 1),
    ],
};

/// All of them, in the order of the table.
pub const LAYOUTS: [Layout; 5] = [FOUR, PLACES, CLOSED, TWICE, ELEVEN];
