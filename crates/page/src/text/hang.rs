//! The words of the page that hangs a door. They stand beside the page's own, not among
//! them: the walk must not carry them.

mod care;
mod spring;

pub use care::{Care, Guide};
pub use spring::{Balance, Spring};

use hangtrue_core::hang::delivery::Part;
use hangtrue_core::hang::inspection::Check;
use hangtrue_core::hang::overhead::{Against, Assumed, Fit};
use hangtrue_core::hang::record::Place;
use hangtrue_core::hang::tracks::upper::Station;
use hangtrue_core::say::Language;

/// The page in one language.
#[derive(Debug)]
pub struct Hang {
    /// The language these words are in.
    pub language: Language,
    /// The names of the screens, in their order.
    pub steps: [&'static str; 9],
    /// What the list of screens is called.
    pub list: &'static str,
    /// Buttons.
    pub next: &'static str,
    /// To the screen before.
    pub back: &'static str,
    /// Another door.
    pub restart: &'static str,
    /// A field that is not read as a length, a weight, a number, a day.
    pub unread: [&'static str; 4],
    /// A number that is out of reach: the least, the most.
    pub beyond: fn(&str, &str) -> String,
    /// In order, or not; for boxes and choices.
    pub yes_no: [&'static str; 2],
    /// There is no order yet.
    pub no_order: &'static str,
    /// Whose door.
    pub order: Order,
    /// What came.
    pub delivery: Delivery,
    /// The tracks.
    pub tracks: Tracks,
    /// Room overhead.
    pub overhead: Overhead,
    /// Turns and winding.
    pub spring: Spring,
    /// The balance.
    pub balance: Balance,
    /// Latch, shift, seals.
    pub fit: FitText,
    /// The last inspection.
    pub inspection: InspectionText,
    /// Care.
    pub care: Care,
    /// The record.
    pub record: RecordText,
}

impl Hang {
    /// The words of `language`.
    #[must_use]
    pub const fn of(language: Language) -> &'static Self {
        match language {
            Language::English => &super::en::hang::HANG,
            Language::Spanish => &super::es::hang::HANG,
            Language::French => &super::fr::hang::HANG,
        }
    }
}

/// Whose door.
#[derive(Debug)]
pub struct Order {
    /// Heading.
    pub heading: &'static str,
    /// What this page does.
    pub lede: &'static str,
    /// The order's link.
    pub paste: &'static str,
    /// What may be pasted.
    pub paste_hint: &'static str,
    /// Open it.
    pub open: &'static str,
    /// Without a link.
    pub type_them: &'static str,
    /// Which unit.
    pub unit: &'static str,
    /// Inches, millimetres.
    pub units: [&'static str; 2],
    /// Over the four numbers.
    pub numbers: &'static str,
    /// What this page does not replace.
    pub cautions: [&'static str; 4],
    /// Heading over them.
    pub caution_heading: &'static str,
    /// To the page that measures.
    pub measure: &'static str,
    /// Over the doors that were set aside.
    pub aside: &'static str,
    /// Go on with one of them.
    pub take_up: fn(&str) -> String,
    /// Throw one away.
    pub drop_aside: &'static str,
}

/// What came.
#[derive(Debug)]
pub struct Delivery {
    /// Heading.
    pub heading: &'static str,
    /// What to do.
    pub lede: &'static str,
    /// Before unloading.
    pub caution: &'static str,
    /// Over the list.
    pub parts: &'static str,
    /// A part, with what to look at; the count of rollers.
    pub part: fn(Part, u32) -> String,
    /// Only if it was ordered.
    pub option: &'static str,
    /// Heading over the answers to the dealer's questions.
    pub ordered: &'static str,
    /// How many are ticked, of how many.
    pub ticked: fn(usize, usize) -> String,
    /// Over the tools.
    pub tools_heading: &'static str,
    /// The tools.
    pub tools: [&'static str; 8],
    /// Over the readings.
    pub again: &'static str,
    /// Why.
    pub again_lede: &'static str,
    /// Room to spare at a place.
    pub spare: fn(&str) -> String,
    /// Too tight at a place.
    pub short: fn(&str) -> String,
    /// Much larger than ordered.
    pub far: fn(&str) -> String,
    /// Everything fits.
    pub fits: &'static str,
    /// Something does not.
    pub stop: &'static str,
    /// A clearly different opening.
    pub other: &'static str,
}

/// The tracks.
#[derive(Debug)]
pub struct Tracks {
    /// Heading.
    pub heading: &'static str,
    /// What to do.
    pub lede: &'static str,
    /// Before climbing.
    pub caution: &'static str,
    /// Over the vertical tracks.
    pub vertical: &'static str,
    /// How to read them.
    pub vertical_how: &'static str,
    /// Over the horizontal tracks.
    pub upper: &'static str,
    /// How to read them.
    pub upper_how: &'static str,
    /// The name of a reading.
    pub place: fn(Place) -> &'static str,
    /// As they stand, they are good.
    pub holds: &'static str,
    /// They are not.
    pub out: &'static str,
    /// Spacing differs by, diagonals differ by.
    pub stands: fn(&str, Option<&str>) -> String,
    /// Squareness is not known.
    pub no_diagonals: &'static str,
    /// The readings contradict each other.
    pub contradict: &'static str,
    /// Over the list of shims.
    pub shims: &'static str,
    /// A shim: side, height, thickness.
    pub shim: fn(usize, usize, &str) -> String,
    /// What it will be then: spacing differs by, diagonals differ by.
    pub result: fn(&str, Option<&str>) -> String,
    /// That it will be inside the limit, or not.
    pub result_holds: [&'static str; 2],
    /// The spacing it will have.
    pub target: fn(&str) -> String,
    /// A place of the upper tracks.
    pub station: fn(Station) -> &'static str,
    /// Both sides come in by, go out by; it stands as it should.
    pub inward: fn(&str, &str) -> String,
    /// Apart.
    pub outward: fn(&str, &str) -> String,
    /// As it should be.
    pub as_is: &'static str,
    /// How to check for 90°.
    pub square_how: &'static str,
    /// What was found on the left, on the right.
    pub on_side: fn(usize, &str) -> String,
    /// Off 90°, in degrees, upwards or not.
    pub off: fn(&str, bool) -> String,
    /// Too far off 90°, in degrees, to be true.
    pub off_far: fn(&str) -> String,
    /// Square.
    pub square: &'static str,
    /// No such triangle.
    pub no_triangle: &'static str,
    /// At least four fastenings.
    pub fastenings: &'static str,
    /// Where the tolerance comes from.
    pub source: &'static str,
}

/// Room overhead.
#[derive(Debug)]
pub struct Overhead {
    /// Heading.
    pub heading: &'static str,
    /// What it answers.
    pub lede: &'static str,
    /// Before a hand goes near.
    pub caution: &'static str,
    /// The slider.
    pub slider: &'static str,
    /// Closed, open.
    pub ends: [&'static str; 2],
    /// Whether it passes.
    pub fit: fn(Fit) -> &'static str,
    /// What is left to what, and with the door lifted by.
    pub left: fn(Against, &str, &str) -> String,
    /// By how much it strikes what.
    pub strikes: fn(Against, &str, &str) -> String,
    /// How far the open door reaches in.
    pub reach: fn(&str) -> String,
    /// Over where the bows hang.
    pub bows: &'static str,
    /// How it is measured, and what it is good for.
    pub bows_how: &'static str,
    /// The first, from one to the next, how wide.
    pub bow: [&'static str; 3],
    /// Where they were taken to hang: anywhere.
    pub bows_anywhere: &'static str,
    /// Anywhere from there on.
    pub bows_from: fn(&str) -> String,
    /// The first there, each next so much further in.
    pub bows_every: fn(&str, &str) -> String,
    /// Over the door's own figures.
    pub figures: &'static str,
    /// That they were assumed.
    pub assumed: &'static str,
    /// The name of a figure.
    pub figure: fn(Assumed) -> &'static str,
    /// The slope.
    pub slope: &'static str,
    /// Degrees.
    pub degrees: &'static str,
    /// In place of a reading: assumed so much.
    pub assumed_as: fn(&str) -> String,
    /// The figures are of no door.
    pub no_door: &'static str,
    /// How it is worked out.
    pub how: &'static str,
}

/// Latch, shift, seals.
#[derive(Debug)]
pub struct FitText {
    /// Heading.
    pub heading: &'static str,
    /// Before a hand goes between.
    pub caution: &'static str,
    /// The latch.
    pub latch: &'static str,
    /// Measure in so far from each post.
    pub half: fn(&str) -> String,
    /// Both agree.
    pub centered: &'static str,
    /// Move it by, to the right or not.
    pub move_by: fn(&str, bool) -> String,
    /// Side shift.
    pub shift: &'static str,
    /// How it is measured, and what it should be.
    pub shift_how: &'static str,
    /// A washer.
    pub washer: &'static str,
    /// Washers left, right: added or taken off; what is left then.
    pub washers: fn(i64, i64, &str) -> String,
    /// No washers.
    pub no_washers: &'static str,
    /// Seals.
    pub seals: &'static str,
    /// How they are cut.
    pub seals_how: &'static str,
    /// Which seal: left, right, header, and its length.
    pub seal: [&'static str; 3],
    /// The seal's stretch is assumed.
    pub source: &'static str,
}

/// The last inspection.
#[derive(Debug)]
pub struct InspectionText {
    /// Heading.
    pub heading: &'static str,
    /// What to do.
    pub lede: &'static str,
    /// Before the door moves.
    pub caution: &'static str,
    /// A point.
    pub check: fn(Check) -> &'static str,
    /// Its limit: between, at most, at least, turns.
    pub between: fn(&str, &str) -> String,
    /// At most.
    pub most: fn(&str) -> String,
    /// At least.
    pub least: fn(&str) -> String,
    /// As wound.
    pub as_wound: fn(&str) -> String,
    /// Holds, does not hold.
    pub finding: [&'static str; 2],
    /// Passed, open, failed.
    pub outcome: [&'static str; 3],
    /// How many are done, of how many.
    pub done: fn(usize, usize) -> String,
    /// Where the limits are from.
    pub source: &'static str,
}

/// The record.
#[derive(Debug)]
pub struct RecordText {
    /// Heading.
    pub heading: &'static str,
    /// What it is.
    pub lede: &'static str,
    /// The serial number.
    pub serial: &'static str,
    /// What is in it.
    pub holds: &'static str,
    /// Rows: vehicle, opening, turns, weight, hung, inspection, next due.
    pub rows: [&'static str; 7],
    /// Not noted.
    pub none: &'static str,
    /// Copy, share, print, file.
    pub copy: &'static str,
    /// Share.
    pub share: &'static str,
    /// The record as a file.
    pub file: &'static str,
    /// Print.
    pub print: &'static str,
    /// What is printed.
    pub what: &'static str,
    /// Sticker, card, sheet.
    pub forms: [&'static str; 3],
    /// It was copied, or not.
    pub copied: [&'static str; 2],
    /// Where to put it.
    pub stick: &'static str,
    /// A title of the code.
    pub code: &'static str,
    /// On the sticker.
    pub scan: &'static str,
    /// Warning on the sticker.
    pub warning: &'static str,
    /// Too long for a code.
    pub too_long: &'static str,
    /// Over the link.
    pub link: &'static str,
    /// The link is the lasting record.
    pub lasting: &'static str,
}
