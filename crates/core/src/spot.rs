//! Where a tape can lie: eighteen spots, in seven groups, four of which are ordered.

use crate::short::cut_first;

/// One of the four numbers a door is cut to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Dimension {
    /// Post-to-post width: the clear opening between the door posts.
    Width,
    /// Sill-to-header height: from where the closed door rests to the underside of the header.
    Height,
    /// Header depth: from the underside of the header to the roof skin or lining.
    Header,
    /// Roof-bow depth: from the underside of a roof bow to the roof skin.
    Bow,
}

impl Dimension {
    /// All four, in the order they are asked and said.
    pub const ALL: [Self; 4] = [Self::Width, Self::Height, Self::Header, Self::Bow];

    /// The group of its readings.
    #[must_use]
    pub const fn group(self) -> Group {
        match self {
            Self::Width => Group::Width,
            Self::Height => Group::Height,
            Self::Header => Group::Header,
            Self::Bow => Group::Bow,
        }
    }
    /// Its three spots.
    #[must_use]
    pub const fn spots(self) -> [Spot; 3] {
        match self {
            Self::Width => [Spot::WidthLow, Spot::WidthMiddle, Spot::WidthHigh],
            Self::Height => [Spot::HeightLeft, Spot::HeightCenter, Spot::HeightRight],
            Self::Header => [Spot::HeaderLeft, Spot::HeaderCenter, Spot::HeaderRight],
            Self::Bow => [Spot::BowFirst, Spot::BowSecond, Spot::BowThird],
        }
    }
    /// The spot that is always taken, and where a number stands that is said without a place: the
    /// middle, or the first bow.
    #[must_use]
    pub const fn main_spot(self) -> Spot {
        let [first, middle, _] = self.spots();
        match self {
            Self::Bow => first,
            Self::Width | Self::Height | Self::Header => middle,
        }
    }
    /// Its name in files: `width`, `height`, `header`, `bow`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        self.group().key()
    }
    /// 0 to 3.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// What a spot's reading is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    /// Post-to-post width, at three heights.
    Width,
    /// Sill-to-header height, at three places.
    Height,
    /// Header depth, at three places.
    Header,
    /// Roof-bow depth, at the first bows inside the door.
    Bow,
    /// The two diagonals of the opening.
    Diagonal,
    /// From the sill straight up, past the header: closes height, header and bow.
    Loop,
    /// The widths of the two door posts.
    Post,
}

impl Group {
    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Width => "width",
            Self::Height => "height",
            Self::Header => "header",
            Self::Bow => "bow",
            Self::Diagonal => "diagonal",
            Self::Loop => "loop",
            Self::Post => "post",
        }
    }
}

macro_rules! spots {
    ($($(#[$doc:meta])* $spot:ident $group:ident $place:literal;)*) => {
        /// A spot where a tape can lie.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Spot { $($(#[$doc])* $spot,)* }

        impl Spot {
            /// All of them, in the order of the walk and of the files.
            pub const ALL: [Self; 18] = [$(Self::$spot,)*];

            /// Its group.
            #[must_use]
            pub const fn group(self) -> Group {
                match self { $(Self::$spot => Group::$group,)* }
            }
            /// Its place within the group: `low`, `left`, `first`, …
            #[must_use]
            pub const fn place(self) -> &'static str {
                match self { $(Self::$spot => $place,)* }
            }
        }
    };
}

spots! {
    /// Width near the sill.
    WidthLow Width "low";
    /// Width half-way up.
    WidthMiddle Width "middle";
    /// Width near the header.
    WidthHigh Width "high";
    /// Height at the left post, seen from behind the truck.
    HeightLeft Height "left";
    /// Height at the center.
    HeightCenter Height "center";
    /// Height at the right post.
    HeightRight Height "right";
    /// Header depth at the left.
    HeaderLeft Header "left";
    /// Header depth at the center.
    HeaderCenter Header "center";
    /// Header depth at the right.
    HeaderRight Header "right";
    /// The first roof bow inside the door.
    BowFirst Bow "first";
    /// The second roof bow.
    BowSecond Bow "second";
    /// The third roof bow.
    BowThird Bow "third";
    /// From low left to high right, seen from behind the truck.
    DiagonalRising Diagonal "rising";
    /// From high left to low right.
    DiagonalFalling Diagonal "falling";
    /// From the sill straight up to the roof skin: height + header.
    LoopSillToRoof Loop "sill_to_roof";
    /// From the sill straight up to the underside of the first bow: height + header − bow.
    LoopSillToBow Loop "sill_to_bow";
    /// Width of the left post.
    PostLeft Post "left";
    /// Width of the right post.
    PostRight Post "right";
}

impl Spot {
    /// The ordered number this is a direct reading of, if any.
    #[must_use]
    pub const fn dimension(self) -> Option<Dimension> {
        match self.group() {
            Group::Width => Some(Dimension::Width),
            Group::Height => Some(Dimension::Height),
            Group::Header => Some(Dimension::Header),
            Group::Bow => Some(Dimension::Bow),
            Group::Diagonal | Group::Loop | Group::Post => None,
        }
    }
    /// 0 to 17.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }
    /// Its name in files: `width.low`, `loop.sill_to_bow`.
    #[must_use]
    pub fn key(self) -> String {
        [self.group().key(), ".", self.place()].concat()
    }
    /// The spot of a name in files.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        let (group, place) = cut_first(key, ".")?;
        Self::ALL.into_iter().find(|spot| spot.group().key() == group && spot.place() == place)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_spot_is_found_again_by_its_key_and_index() {
        for (index, spot) in Spot::ALL.into_iter().enumerate() {
            assert_eq!(spot.index(), index);
            assert_eq!(Spot::from_key(&spot.key()), Some(spot));
            if let Some(dimension) = spot.dimension() {
                assert!(dimension.spots().contains(&spot));
            }
        }
        assert_eq!(Spot::from_key("width.left"), None);
        assert_eq!(Spot::from_key("width"), None);
    }
}
