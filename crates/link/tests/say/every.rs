//! Everything that can be said of what comes in, as data.

use hangtrue_core::order::{Date, Order};
use hangtrue_core::profile::{NumberError, Poor};
use hangtrue_core::{Length, Spot, Survey, Unit};
use hangtrue_link::code::{HeardError, SmallError};
use hangtrue_link::json::profile::ProfileFault;
use hangtrue_link::json::text::Syntax;
use hangtrue_link::json::{Fault, NodeKind};
use hangtrue_link::{EncodeError, LinkError, csv};

/// Every way a link can be wrong; a new one has to be added here.
pub(crate) fn link_errors() -> Vec<LinkError> {
    const _: fn(LinkError) = |error| match error {
        LinkError::NotFound
        | LinkError::Several
        | LinkError::TooLong { .. }
        | LinkError::Letter { .. }
        | LinkError::TooShort
        | LinkError::Cut { .. }
        | LinkError::Grown { .. }
        | LinkError::Changed
        | LinkError::Newer { .. }
        | LinkError::Record
        | LinkError::Contents => (),
    };
    let mut all = vec![
        LinkError::NotFound,
        LinkError::Several,
        LinkError::TooLong { most: 4000 },
        LinkError::Letter { letter: 'ü', at: 17 },
        LinkError::TooShort,
        LinkError::Changed,
        LinkError::Newer { version: '9' },
        LinkError::Record,
        LinkError::Contents,
    ];
    for missing in [1, 2] {
        all.push(LinkError::Cut { found: 30, missing });
        all.push(LinkError::Grown { found: 30, extra: missing });
    }
    all
}

fn differs(ordered: Option<Length>) -> csv::Fault {
    csv::Fault::Differs { column: "B".into(), found: "96".into(), ordered, unit: Unit::Inch }
}

/// Every way a table can be wrong; a new one has to be added here.
pub(crate) fn table_faults() -> Vec<csv::Fault> {
    const _: fn(&csv::Fault) = |fault| match fault {
        csv::Fault::Empty
        | csv::Fault::Inside { .. }
        | csv::Fault::Behind { .. }
        | csv::Fault::Open { .. }
        | csv::Fault::Count { .. }
        | csv::Fault::Word { .. }
        | csv::Fault::Differs { .. }
        | csv::Fault::Link(_)
        | csv::Fault::NoReading => (),
    };
    let mut all = vec![
        csv::Fault::Empty,
        csv::Fault::Inside { column: 4 },
        csv::Fault::Behind { column: 4 },
        csv::Fault::Open { column: 4 },
        csv::Fault::Count { found: 3, expected: 11 },
        csv::Fault::Count { found: 1, expected: 4 },
        csv::Fault::Word { column: "unit".into(), found: "ft".into(), known: &["in", "mm"] },
        csv::Fault::NoReading,
        differs(Some(Length::from_inches(92))),
        differs(None),
    ];
    all.extend(link_errors().into_iter().map(csv::Fault::Link));
    all
}

/// Every way a file can be wrong; a new one has to be added here.
pub(crate) fn file_faults() -> Vec<Fault> {
    const _: fn(&Fault, Syntax, NodeKind) = |fault, syntax, kind| {
        match fault {
            Fault::NotJson { .. }
            | Fault::TooLong { .. }
            | Fault::Kind { .. }
            | Fault::NumberForText { .. }
            | Fault::Reading { .. }
            | Fault::Missing { .. }
            | Fault::Twice { .. }
            | Fault::Unknown { .. }
            | Fault::Choice { .. }
            | Fault::NotWhole { .. }
            | Fault::Date { .. }
            | Fault::Profile(_) => (),
        }
        match syntax {
            Syntax::Long { .. }
            | Syntax::Deep { .. }
            | Syntax::Value
            | Syntax::Key
            | Syntax::Colon
            | Syntax::Comma { .. }
            | Syntax::After
            | Syntax::Open
            | Syntax::Control
            | Syntax::Escape
            | Syntax::Surrogate
            | Syntax::Number => (),
        }
        match kind {
            NodeKind::Null
            | NodeKind::Bool
            | NodeKind::Number
            | NodeKind::Text
            | NodeKind::List
            | NodeKind::Object => (),
        }
    };
    let found = || "x7".to_owned();
    let mut all = vec![
        Fault::TooLong { most: 65_536 },
        Fault::NumberForText { number: "92.25".into() },
        Fault::Missing { key: "k" },
        Fault::Twice { key: found() },
        Fault::Unknown { key: found(), known: vec!["in", "mm"] },
        Fault::Choice { found: found(), known: vec!["in", "mm"] },
        Fault::NotWhole { number: "1.5".into() },
        Fault::Date { found: found() },
    ];
    // All but `Long`, which is said as `Fault::TooLong`.
    for what in [
        Syntax::Deep { most: 32 },
        Syntax::Value,
        Syntax::Key,
        Syntax::Colon,
        Syntax::Comma { end: ']' },
        Syntax::After,
        Syntax::Open,
        Syntax::Control,
        Syntax::Escape,
        Syntax::Surrogate,
        Syntax::Number,
    ] {
        all.push(Fault::NotJson { line: 3, column: 17, what });
    }
    let kinds = [
        NodeKind::Null,
        NodeKind::Bool,
        NodeKind::Number,
        NodeKind::Text,
        NodeKind::List,
        NodeKind::Object,
    ];
    for (kind, other) in kinds.into_iter().zip(kinds.into_iter().cycle().skip(1)) {
        all.push(Fault::Kind { expected: kind, found: other });
        // A number has a fault of its own, and a text is a reading.
        if !matches!(kind, NodeKind::Number | NodeKind::Text) {
            all.push(Fault::Reading { found: kind });
        }
    }
    all
}

/// Every way a profile can be wrong; a new one has to be added here.
pub(crate) fn profile_faults() -> Vec<ProfileFault> {
    const _: fn(&ProfileFault) = |fault| match fault {
        ProfileFault::TooMany { .. }
        | ProfileFault::Empty
        | ProfileFault::TextTooLong { .. }
        | ProfileFault::Letter { .. }
        | ProfileFault::Range { .. }
        | ProfileFault::Length { .. }
        | ProfileFault::Weight { .. }
        | ProfileFault::UpsideDown { .. }
        | ProfileFault::NoEnd
        | ProfileFault::NoInterval
        | ProfileFault::Key { .. }
        | ProfileFault::SameKey { .. }
        | ProfileFault::Taken { .. }
        | ProfileFault::OtherKind { .. }
        | ProfileFault::FewChoices
        | ProfileFault::Email { .. }
        | ProfileFault::Phone { .. }
        | ProfileFault::Page { .. }
        | ProfileFault::Colour { .. }
        | ProfileFault::Contrast(_)
        | ProfileFault::NumberFormat(_) => (),
    };
    let found = || "x7".to_owned();
    let (least, most) = (Length::from_sixteenths(37), Length::from_inches(1));
    let poor = Poor { text: "#123456", ground: "#654321", contrast: 3.217 };
    let numbers = [
        NumberError::Brace,
        NumberError::Unknown(found()),
        NumberError::NoCheck,
        NumberError::Text,
    ];
    let mut all = vec![
        ProfileFault::TooMany { most: 12 },
        ProfileFault::Empty,
        ProfileFault::TextTooLong { most: 200 },
        ProfileFault::Letter { letter: '\u{200b}' },
        ProfileFault::Range { found: found(), least: 1, most: 9 },
        ProfileFault::Length { found: found() },
        ProfileFault::Weight { found: found() },
        ProfileFault::UpsideDown { least, most },
        ProfileFault::NoEnd,
        ProfileFault::NoInterval,
        ProfileFault::Key { found: found() },
        ProfileFault::SameKey { list: "x", key: found() },
        ProfileFault::Taken { key: found() },
        ProfileFault::OtherKind { key: "x" },
        ProfileFault::FewChoices,
        ProfileFault::Email { found: found() },
        ProfileFault::Phone { found: found() },
        ProfileFault::Page { found: found() },
        ProfileFault::Colour { found: found() },
        ProfileFault::Contrast(poor),
    ];
    all.extend(numbers.map(ProfileFault::NumberFormat));
    all
}

pub(crate) fn order(unit: Unit) -> Order {
    let mut survey = Survey::new(unit);
    survey.prepared = false;
    for (spot, text) in [
        (Spot::WidthLow, "92 1/4 in"),
        (Spot::HeightLeft, "101 1/2 in"),
        (Spot::HeaderLeft, "9 1/2 in"),
        (Spot::HeaderCenter, "5 in"),
        (Spot::PostLeft, "1 1/2 in"),
    ] {
        survey.add(spot, text);
    }
    let mut order =
        Order { survey, date: Some(Date { year: 2026, month: 3, day: 9 }), ..Order::default() };
    order.vehicle = "Unit 12".to_owned();
    order.note = "7".to_owned();
    order.contact = "+1 555 010 0199".to_owned();
    order
}

/// Every way that characters read out can be no order.
pub(crate) fn small_errors() -> Vec<SmallError> {
    const _: fn(&SmallError, &HeardError) = |small, heard| {
        match small {
            SmallError::Heard(_) | SmallError::Refused | SmallError::Contents => (),
        }
        match heard {
            HeardError::Piece(_) | HeardError::Count { .. } => (),
        }
    };
    let heard = [
        HeardError::Piece("x7".into()),
        HeardError::Count { found: 1, expected: 6 },
        HeardError::Count { found: 2, expected: 6 },
    ];
    let mut all = heard.map(SmallError::Heard).to_vec();
    all.extend([SmallError::Refused, SmallError::Contents]);
    all
}

/// Every reason why there is no link.
pub(crate) const NO_LINK: [EncodeError; 2] =
    [EncodeError::TooLong { most: 2000 }, EncodeError::Date];
