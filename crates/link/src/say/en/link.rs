//! What is wrong with a link, in English (US).

use crate::say::Advice;
use crate::{EncodeError, LinkError};

const AGAIN: &str = "Ask the sender to copy the whole link and send it again, or to read out the \
                     four numbers and the six check characters.";

pub(crate) fn read(error: LinkError) -> Advice {
    let what = match error {
        LinkError::NotFound => {
            return Advice {
                what: "There is no order link in this text.".to_owned(),
                ask: "Paste the whole message, or the link from “https” to its end.",
            };
        }
        LinkError::Several => {
            return Advice {
                what: "There are two order links in this text, and they differ.".to_owned(),
                ask: "Paste only the one that is meant.",
            };
        }
        LinkError::TooLong { most } => {
            return Advice {
                what: format!("This is longer than the {most} characters that are read."),
                ask: "Paste only the link.",
            };
        }
        LinkError::Letter { letter, at } => format!(
            "Character {at} of the link is “{}”, which no order link has.",
            letter.escape_debug()
        ),
        LinkError::TooShort => "Only the beginning of the link is here.".to_owned(),
        LinkError::Cut { found, missing } => format!(
            "The link is damaged: it has {found} characters after the # and {} to be missing.",
            counted(missing, "seems", "seem")
        ),
        LinkError::Grown { found, extra } => format!(
            "The link is damaged: it has {found} characters after the # and {} to be too many.",
            counted(extra, "seems", "seem")
        ),
        LinkError::Changed => {
            "The link is damaged: a character was changed, or two were exchanged.".to_owned()
        }
        LinkError::Newer { version } => {
            return Advice {
                what: format!(
                    "The link arrived whole, but a newer version of this page wrote it (version \
                     {version})."
                ),
                ask: "Reload this page to get the newest version, then open the link again.",
            };
        }
        LinkError::Record => {
            return Advice {
                what: "This is the record of a hung door, and no order.".to_owned(),
                ask: "Open it on the page that hangs the door: hang.html, beside this one.",
            };
        }
        LinkError::Contents => {
            "The link arrived whole, but what is in it is no order of this page.".to_owned()
        }
    };
    Advice { what, ask: AGAIN }
}

pub(crate) fn write(error: EncodeError) -> Advice {
    match error {
        EncodeError::TooLong { most } => Advice {
            what: format!(
                "The texts of this order need more than the {most} characters of a link."
            ),
            ask: "Shorten the note, or send the order as a file.",
        },
        EncodeError::Date => Advice {
            what: "The date of this order is not between 2000 and 2255.".to_owned(),
            ask: "Set the device's clock, or leave the date out.",
        },
    }
}

fn counted(n: usize, one: &str, more: &str) -> String {
    format!("{n} {}", if n == 1 { one } else { more })
}
