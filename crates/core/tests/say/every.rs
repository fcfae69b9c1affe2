//! One of every message, for every place, slip and reason it can name.

use hangtrue_core::bounds::Reason;
use hangtrue_core::judge::{SlipKind, Why};
use hangtrue_core::length::{ReadErrorKind, read};
use hangtrue_core::profile::{Amiss, Words};
use hangtrue_core::say::{AnswerSays, Because, Hint, JudgeSays, Message, RuleSays, Subject};
use hangtrue_core::{Dimension, Length, Spot, Unit};

/// All of an enumeration; one that is missing here does not compile.
macro_rules! all {
    ($name:ident: $type:ident { $($variant:ident),* $(,)? }) => {
        pub(crate) const $name: &[$type] = &[$($type::$variant),*];
        const _: fn($type) = |one| match one { $($type::$variant => (),)* };
    };
}

all!(SLIPS: SlipKind {
    Digit, Transpose, DropAdd, FootTen, InchMark, HalfInch, WrongSide, SixteenthsEighths, Ticks,
    FractionDropped, Slash, Units, DecimalFeet, TapeCase, Sag, WrongEdge, Heard, Exchange,
    WrongField, Habit, Other,
});
all!(WHYS: Why { Missing, Settles, ChecksSeveral, ChecksOne, Again });
all!(REASONS: Reason {
    LegalWidth, LegalHeight, NoSuchOpening, UnusualOpening, HeaderRoom, UnusualHeader, PostRoom,
    UsualBow, RoomUnderBow, FrameShape, BentFrame,
});

/// A new kind of message has to be thought of here.
const _: fn(&Message, &RuleSays, &JudgeSays, &Hint, &Amiss) =
    |message, rule, judge, hint, amiss| {
        match message {
            Message::Unreadable { .. }
            | Message::Rule(_)
            | Message::Answer(_)
            | Message::Hint(_)
            | Message::Judge(_) => (),
        }
        match rule {
            RuleSays::Missing(_)
            | RuleSays::NotPositive { .. }
            | RuleSays::Beyond { .. }
            | RuleSays::BowFillsHeader { .. }
            | RuleSays::Spread { .. }
            | RuleSays::Repeats { .. }
            | RuleSays::Closing { .. }
            | RuleSays::Exchanged { .. }
            | RuleSays::HeaderToBow { .. }
            | RuleSays::ShallowHeader { .. }
            | RuleSays::NarrowPost { .. } => (),
        }
        match judge {
            JudgeSays::Doubtful { .. }
            | JudgeSays::DidYouMean { .. }
            | JudgeSays::ReadAgain { .. }
            | JudgeSays::OrReadAgain { .. }
            | JudgeSays::Next { .. }
            | JudgeSays::Unseen { .. } => (),
        }
        match hint {
            Hint::ReadAgain(_)
            | Hint::Read(_)
            | Hint::ReadSpot(_)
            | Hint::DidYouMean(_)
            | Hint::HowToRead(_)
            | Hint::PutBack { .. }
            | Hint::BuildDown(_)
            | Hint::BuildOut { .. }
            | Hint::Straighten => (),
        }
        match amiss {
            Amiss::Unanswered
            | Amiss::NotOffered
            | Amiss::Unreadable(_)
            | Amiss::Beyond { .. }
            | Amiss::TooLong { .. } => (),
        }
    };

/// Every message.
pub(crate) fn every() -> Vec<Message> {
    let mut all = unreadable();
    all.extend(rules().into_iter().map(Message::from));
    all.extend(hints().into_iter().map(Message::from));
    all.extend(judge().into_iter().map(Message::from));
    all.extend(answers());
    all
}

fn inches(sixteenths: i64) -> Length {
    Length::from_sixteenths(sixteenths)
}

fn unreadable() -> Vec<Message> {
    let error = read("", Unit::Inch).unwrap_err();
    let says = |kind| {
        let mut error = error.clone();
        error.kind = kind;
        Message::Unreadable { spot: Spot::WidthLow, text: "961/4".to_owned(), error }
    };
    ReadErrorKind::ALL.into_iter().map(says).collect()
}

fn becauses() -> Vec<Because> {
    let words = Words::plain("23 CFR");
    let dealer = Because::Dealer { name: "Boreal 7".to_owned(), reason: words.clone() };
    let known = REASONS.iter().map(|reason| Because::Known(*reason));
    known.chain([dealer, Because::Door(words)]).collect()
}

fn rules() -> Vec<RuleSays> {
    let (least, most, bound) = (inches(1531), inches(1547), inches(8));
    let mut all = Vec::new();
    for dimension in Dimension::ALL {
        let (first, second) = (Dimension::Width, dimension);
        let (first_value, second_value) = (least, most);
        all.push(RuleSays::Missing(dimension));
        all.push(RuleSays::Exchanged { first, first_value, second, second_value });
        for because in becauses() {
            all.push(RuleSays::Spread { dimension, least, most, bound, because });
        }
    }
    for spot in Spot::ALL {
        all.push(RuleSays::NotPositive { spot, value: Length::ZERO });
        all.push(RuleSays::Closing { spot, dealer: "Boreal 7".to_owned() });
        all.push(RuleSays::HeaderToBow { spot, value: least, expected: most, bow: inches(20) });
        for because in becauses() {
            for subject in [Subject::Reading(spot), Subject::HeightAndHeader, Subject::UnderBow] {
                for above in [false, true] {
                    let because = because.clone();
                    all.push(RuleSays::Beyond { subject, value: least, bound, above, because });
                }
            }
            let again = because.clone();
            all.push(RuleSays::Repeats { spot, least, most, bound, because: again });
            let again = because.clone();
            all.push(RuleSays::ShallowHeader { value: bound, least, because: again });
            all.push(RuleSays::NarrowPost { spot, value: bound, least, because });
        }
    }
    all.push(RuleSays::BowFillsHeader { header: bound, bow: inches(20) });
    all
}

fn hints() -> Vec<Hint> {
    let by = inches(37);
    let mut all = vec![
        Hint::DidYouMean("96 1/4 in".to_owned()),
        Hint::DidYouMean("8 ft 6 in".to_owned()),
        Hint::BuildDown(by),
        Hint::Straighten,
    ];
    for dimension in Dimension::ALL {
        let (first, second) = (Dimension::Width, dimension);
        let (first_value, second_value) = (by, inches(1531));
        all.extend([Hint::Read(dimension), Hint::HowToRead(dimension)]);
        all.push(Hint::PutBack { first, first_value, second, second_value });
    }
    for spot in Spot::ALL {
        all.extend([Hint::ReadAgain(spot), Hint::ReadSpot(spot)]);
    }
    for spot in [Spot::PostLeft, Spot::PostRight] {
        all.push(Hint::BuildOut { spot, by });
    }
    all
}

fn judge() -> Vec<JudgeSays> {
    let value = inches(1531);
    let mut all = Vec::new();
    for spot in Spot::ALL {
        all.push(JudgeSays::DidYouMean { spot, meant: value });
        all.push(JudgeSays::OrReadAgain { spot });
        for spots in [vec![spot], vec![spot, Spot::BowFirst]] {
            all.push(JudgeSays::ReadAgain { spots: spots.clone() });
            for slip in SLIPS.iter().map(|slip| Some(*slip)).chain([None]) {
                for alone in [false, true] {
                    all.push(JudgeSays::Doubtful { spots: spots.clone(), value, slip, alone });
                }
            }
        }
        for why in WHYS {
            for count in 1..=4 {
                let checks = Dimension::ALL.into_iter().take(count).collect();
                all.push(JudgeSays::Next { spot, why: *why, checks });
            }
        }
    }
    for dimension in Dimension::ALL {
        for readings in [1, 2, 5] {
            for least in [Some(value), None] {
                all.push(JudgeSays::Unseen { dimension, least, readings });
            }
        }
    }
    all
}

fn answers() -> Vec<Message> {
    let error = read("961/4", Unit::Inch).unwrap_err();
    let amiss = [
        Amiss::Unanswered,
        Amiss::NotOffered,
        Amiss::Unreadable(error),
        Amiss::Beyond { value: inches(1531), bound: inches(16), above: true },
        Amiss::Beyond { value: inches(1531), bound: inches(1600), above: false },
        Amiss::TooLong { most: 120 },
    ];
    let says = |amiss| {
        let (ask, answer) = (Words::plain("Ral 9010"), "12 3/16".to_owned());
        Message::from(AnswerSays { key: "colour".to_owned(), ask, answer, amiss })
    };
    amiss.into_iter().map(says).collect()
}
