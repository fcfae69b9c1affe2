//! What the rules say, in English (US).

use super::{capital, names};
use crate::bounds::Reason;
use crate::length::Unit;
use crate::say::{Because, Hint, RuleSays, Subject};
use crate::short::fill;
use crate::spot::Dimension;

pub(crate) fn say(says: &RuleSays, unit: Unit) -> String {
    match says {
        RuleSays::Missing(dimension) => {
            fill("The {} has not been read.", &[names::dimension(*dimension)])
        }
        RuleSays::NotPositive { spot, value } => fill(
            "{} reads {}. A reading must be more than 0.",
            &[&capital(names::spot(*spot)), &value.text(unit)],
        ),
        RuleSays::Beyond { subject, value, bound, above, because } => fill(
            "{} {} {}, {} than {}: {}.",
            &[
                &self::subject(*subject),
                if matches!(subject, Subject::Reading(_)) { "reads" } else { "comes to" },
                &value.text(unit),
                if *above { "more" } else { "less" },
                &bound.text(unit),
                &self::because(because),
            ],
        ),
        RuleSays::BowFillsHeader { header, bow } => fill(
            "The header depth of {} is not more than the roof-bow depth of {}: \
             the bow would hang below the header.",
            &[&header.text(unit), &bow.text(unit)],
        ),
        RuleSays::Spread { dimension, least, most, bound, because } => fill(
            "The {} readings run from {} to {}, {} apart. At most {} is expected: {}.",
            &[
                names::dimension(*dimension),
                &least.text(unit),
                &most.text(unit),
                &(*most - *least).text(unit),
                &bound.text(unit),
                &self::because(because),
            ],
        ),
        RuleSays::Repeats { spot, least, most, bound, because } => fill(
            "{} was read as {} and as {} at the same spot, {} apart. \
             The same spot gives the same reading within {}{}.",
            &[
                &capital(names::spot(*spot)),
                &least.text(unit),
                &most.text(unit),
                &(*most - *least).text(unit),
                &bound.text(unit),
                &theirs(because),
            ],
        ),
        RuleSays::Closing { spot, dealer } => {
            [dealer, " asks for one more reading: ", names::spot(*spot), "."].concat()
        }
        RuleSays::Exchanged { first, first_value, second, second_value } => fill(
            "The {} of {} and the {} of {} look exchanged.",
            &[
                names::dimension(*first),
                &first_value.text(unit),
                names::dimension(*second),
                &second_value.text(unit),
            ],
        ),
        RuleSays::HeaderToBow { spot, value, expected, bow } => fill(
            "{} reads {}. The other readings make it {}, and the difference is the roof-bow \
             depth of {}: the tape may have stopped at the bow, not at the roof skin.",
            &[
                &capital(names::spot(*spot)),
                &value.text(unit),
                &expected.text(unit),
                &bow.text(unit),
            ],
        ),
        RuleSays::ShallowHeader { value, least, because } => fill(
            "The header depth is {}, less than the {} a door needs above the opening{}.",
            &[&value.text(unit), &least.text(unit), &theirs(because)],
        ),
        RuleSays::NarrowPost { spot, value, least, because } => fill(
            "The {} is {}, less than the {} a vertical track needs{}.",
            &[names::spot(*spot), &value.text(unit), &least.text(unit), &theirs(because)],
        ),
    }
}

pub(crate) fn hint(hint: &Hint, unit: Unit) -> String {
    match hint {
        Hint::ReadAgain(spot) => fill("Read the {} again.", &[names::spot(*spot)]),
        Hint::Read(dimension) => {
            fill("Read the {} in at least one place.", &[names::dimension(*dimension)])
        }
        Hint::ReadSpot(spot) => ["Read ", names::spot(*spot), "."].concat(),
        Hint::DidYouMean(text) => fill("If it was meant, type {}.", &[text]),
        Hint::HowToRead(dimension) => how_to_read(*dimension).to_owned(),
        Hint::PutBack { first, first_value, second, second_value } => fill(
            "If so, type {} as the {} and {} as the {}.",
            &[
                &first_value.text(unit),
                names::dimension(*first),
                &second_value.text(unit),
                names::dimension(*second),
            ],
        ),
        Hint::BuildDown(by) => {
            let by = by.text(unit);
            fill(
                "Build the header down by {} with a channel or formed sheet. That lowers the \
                 sill-to-header height by {} and raises the header depth by {}. Re-measure \
                 after the frame is built.",
                &[&by, &by, &by],
            )
        }
        Hint::BuildOut { spot, by } => {
            let by = by.text(unit);
            fill(
                "Build the {} out by {}. That narrows the post-to-post width by {}. \
                 Re-measure after the frame is built.",
                &[names::place(*spot), &by, &by],
            )
        }
        Hint::Straighten => {
            "If it reads the same again, the frame is bent: have it straightened before a door \
             is ordered."
                .to_owned()
        }
    }
}

const fn how_to_read(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => {
            "Read between the inner faces of the posts, not over the outside of the body."
        }
        Dimension::Height => {
            "Read from where the closed door rests up to the underside of the header."
        }
        Dimension::Header => {
            "Read from the underside of the header up to the roof skin, not to a bow."
        }
        Dimension::Bow => "Read from the underside of the bow up to the roof skin.",
    }
}

fn subject(subject: Subject) -> String {
    match subject {
        Subject::Reading(spot) => capital(names::spot(spot)),
        Subject::HeightAndHeader => "Height and header depth together".to_owned(),
        Subject::UnderBow => "The room between the header's underside and the bow".to_owned(),
        Subject::Built(dimension) => {
            [&capital(names::dimension(dimension)), " once the frame is built"].concat()
        }
    }
}

/// Why a limit is there, as a clause.
fn because(because: &Because) -> String {
    match because {
        Because::Known(reason) => self::reason(*reason).to_owned(),
        Because::Dealer { name, reason } => {
            [name, " says: ", reason.in_language("en").trim_end_matches('.')].concat()
        }
        Because::Door(name) => [name.in_language("en"), " needs it"].concat(),
    }
}

/// The same behind a colon, where the sentence already holds our own reason.
fn theirs(because: &Because) -> String {
    match because {
        Because::Known(_) => String::new(),
        theirs => [": ", &self::because(theirs)].concat(),
    }
}

pub(crate) const fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::LegalWidth => {
            "a body may be 102 in or 2.6 m wide at most (23 CFR 658.15), and a post stands on \
             each side"
        }
        Reason::LegalHeight => {
            "with a floor under it, the vehicle would stand above every legal height limit"
        }
        Reason::NoSuchOpening => "no truck body or trailer is built so",
        Reason::UnusualOpening => "few truck bodies are built so",
        Reason::HeaderRoom => "the upper track and the spring need that room",
        Reason::UnusualHeader => "few headers are built so deep",
        Reason::PostRoom => "the vertical track is fastened there",
        Reason::UsualBow => "roof bows run from 3/4 to 2 in deep (19 to 51 mm)",
        Reason::RoomUnderBow => "the door runs there when it is open",
        Reason::FrameShape => "a frame that takes a door is no further out of true",
        Reason::BentFrame => "no frame that can take a door is so far out of true",
    }
}
