//! The names of things.

use hangtrue_core::hang::delivery::Part;
use hangtrue_core::hang::inspection::Check;
use hangtrue_core::hang::overhead::{Against, Assumed, Fit};
use hangtrue_core::hang::record::Place;
use hangtrue_core::hang::tracks::upper::Station;

pub(super) fn part(part: Part, rollers: u32) -> String {
    match part {
        Part::UpperHalf => "Upper half of the door: edges straight, hinges tight",
        Part::LowerHalf => "Lower half of the door, with the latch",
        Part::SpringAssembly => "Spring assembly: spring, shaft, two drums, anchor bracket",
        Part::VerticalTracks => "Two vertical tracks, with brackets and bearings",
        Part::HorizontalTracks => "Two horizontal tracks, with their curves",
        Part::Hangers => "Hangers of the horizontal tracks",
        Part::Rollers => return format!("Rollers: {rollers}, all turning"),
        Part::Cables => "Two cables of the same length, no broken wires",
        Part::Hardware => "Bolts, screws, washers",
        Part::LatchPlate => "Latch plate for the sill",
        Part::SideSeals => "Side seals",
        Part::HeaderSeal => "Header seal",
    }
    .to_owned()
}

pub(super) fn place(place: Place) -> &'static str {
    match place {
        Place::TrackLow => "Spacing, low",
        Place::TrackMiddle => "Spacing, middle",
        Place::TrackHigh => "Spacing, high",
        Place::TrackRising => "Diagonal from low left to high right",
        Place::TrackFalling => "Diagonal from high left to low right",
        Place::TrackMarks => "Height from the low to the high marks",
        Place::UpperFront => "Spacing, front of the body",
        Place::UpperMiddle => "Spacing, half-way",
        Place::UpperRear => "Spacing, at the door",
        Place::SquareLeft => "Across the marks, left",
        Place::SquareRight => "Across the marks, right",
        Place::LatchLeft => "Left post to the center mark",
        Place::LatchRight => "Right post to the center mark",
        Place::Shift => "Whole side shift",
    }
}

pub(super) fn station(station: Station) -> &'static str {
    match station {
        Station::Front => "Front",
        Station::Middle => "Middle",
        Station::Rear => "At the door",
    }
}

pub(super) fn fit(fit: Fit) -> &'static str {
    match fit {
        Fit::Passes => "The door passes.",
        Fit::Tight => "The door passes, with less than 1/2 in to spare. Panels bounce: recheck.",
        Fit::Strikes => "Stop: the door strikes.",
    }
}

pub(super) fn against(against: Against) -> &'static str {
    match against {
        Against::Header => "Header",
        Against::Roof => "Roof skin",
        Against::Bow => "Roof bow",
    }
}

pub(super) fn figure(figure: Assumed) -> &'static str {
    match figure {
        Assumed::Radius => "Radius of the curve, to the roller's middle",
        Assumed::Rise => "Header's underside up to where the curve begins",
        Assumed::Offset => "Roller's middle to the panel's inner face",
        Assumed::Thickness => "Panel thickness",
        Assumed::Panel => "Panel height, hinge to hinge",
        Assumed::Gap => "Closed door to the header, filled by the seal",
        Assumed::BowWidth => "Width of a bow",
    }
}

pub(super) fn check(check: Check) -> &'static str {
    match check {
        Check::Spacing => "Vertical tracks: spacing differs by",
        Check::Diagonals => "Vertical tracks: diagonals differ by",
        Check::Shift => "Whole side shift",
        Check::GapLeft => "Gap between panels and left post",
        Check::GapRight => "Gap between panels and right post",
        Check::GapHeader => "Gap at the header",
        Check::HingeLeft => "End hinge to the left post",
        Check::HingeRight => "End hinge to the right post",
        Check::Pull => "Pull that starts the closed door",
        Check::Stripes => "Turns by the stripes on the spring",
        Check::Fastenings => "Fastenings of the upper track, on the side with fewer",
        Check::Cables => "Both cables lie in their drums, equally tight",
        Check::SetScrews => "Set screws of drums and winding cone are tight",
        Check::Anchor => {
            "Anchor bracket 6 1/2 in from the roadside bracket (common practice), shaft ends equal"
        }
        Check::Latch => "The latch falls in by itself and holds",
        Check::Runs => "The door runs through, by hand, without striking",
        Check::Seals => "No daylight round the closed door",
        Check::Labels => "Warning labels can be read",
    }
}
