//! The readings of an order's file: groups, places, repeats, struck readings.

use super::write::{Write, written};
use crate::json::text::Node;
use hangtrue_core::{Entry, Spot, Survey};

/// A reading as it was typed.
#[derive(Clone, Debug)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(untagged))]
pub(super) enum Typed {
    /// One that counts.
    Counts(String),
    /// One that a later reading replaced.
    Struck(Struck),
}

/// What was read at one place.
#[derive(Clone, Debug)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(untagged))]
pub(super) enum Place {
    /// One reading.
    One(Typed),
    /// Repeats at the same marked spot, in the order they were taken.
    Repeats(Vec<Typed>),
}

written! {
    /// A reading that a later one replaced.
    pub(super) struct Struck {
        /// What was typed.
        text: String,
        /// Whether it was replaced.
        struck: bool,
    }
}

impl Write for Typed {
    fn node(&self) -> Option<Node<'_>> {
        match self {
            Self::Counts(text) => text.node(),
            Self::Struck(struck) => struck.node(),
        }
    }
}

impl Write for Place {
    fn node(&self) -> Option<Node<'_>> {
        match self {
            Self::One(typed) => typed.node(),
            Self::Repeats(list) => list.node(),
        }
    }
}

impl Place {
    fn of(survey: &Survey, spot: Spot) -> Option<Self> {
        let typed = |entry: &Entry| match entry.struck {
            false => Typed::Counts(entry.text.clone()),
            true => Typed::Struck(Struck { text: entry.text.clone(), struck: true }),
        };
        match survey.entries(spot) {
            [] => None,
            [only] => Some(Self::One(typed(only))),
            repeats => Some(Self::Repeats(repeats.iter().map(typed).collect())),
        }
    }
}

/// Declares a group with its places.
macro_rules! groups {
    ($($(#[$doc:meta])* $name:ident { $($(#[$place_doc:meta])* $place:ident: $spot:ident,)* })*) => {$(
        written! {
            $(#[$doc])*
            pub(super) struct $name {$($(#[$place_doc])* $place: Option<Place>,)*}
        }

        impl $name {
            fn of(survey: &Survey) -> Option<Self> {
                let group = Self { $($place: Place::of(survey, Spot::$spot),)* };
                let any = false $(|| group.$place.is_some())*;
                any.then_some(group)
            }
        }
    )*};
}

groups! {
    /// Post-to-post width.
    Width {
        /// Near the sill.
        low: WidthLow,
        /// Half-way up.
        middle: WidthMiddle,
        /// Near the header.
        high: WidthHigh,
    }
    /// Sill-to-header height, seen from behind the truck.
    Height {
        /// At the left post.
        left: HeightLeft,
        /// At the center.
        center: HeightCenter,
        /// At the right post.
        right: HeightRight,
    }
    /// Header depth.
    Header {
        /// At the left.
        left: HeaderLeft,
        /// At the center.
        center: HeaderCenter,
        /// At the right.
        right: HeaderRight,
    }
    /// Roof-bow depth.
    Bow {
        /// The first bow inside the door.
        first: BowFirst,
        /// The second.
        second: BowSecond,
        /// The third.
        third: BowThird,
    }
    /// The diagonals, seen from behind the truck.
    Diagonal {
        /// From low left to high right.
        rising: DiagonalRising,
        /// From high left to low right.
        falling: DiagonalFalling,
    }
    /// Straight up from the sill, past the header.
    Loop {
        /// To the roof skin.
        sill_to_roof: LoopSillToRoof,
        /// To the underside of the first bow.
        sill_to_bow: LoopSillToBow,
    }
    /// The widths of the door posts.
    Post {
        /// The left one.
        left: PostLeft,
        /// The right one.
        right: PostRight,
    }
}

written! {
    /// All readings.
    pub(super) struct Readings {
        width: Option<Width>,
        height: Option<Height>,
        header: Option<Header>,
        bow: Option<Bow>,
        diagonal: Option<Diagonal>,
        r#loop: Option<Loop>,
        post: Option<Post>,
    }
}

impl Readings {
    pub(super) fn of(survey: &Survey) -> Self {
        Self {
            width: Width::of(survey),
            height: Height::of(survey),
            header: Header::of(survey),
            bow: Bow::of(survey),
            diagonal: Diagonal::of(survey),
            r#loop: Loop::of(survey),
            post: Post::of(survey),
        }
    }
}
