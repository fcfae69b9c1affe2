//! Handing over, in English (US).

use crate::text::handover::{Handover, Paper, Picture, Replace, Voice};

pub(super) const HANDOVER: Handover = Handover {
    ways: "Hand it over",
    mail: "E-mail",
    sms: "Text message",
    hang: "Door is here? Hang it from these numbers",
    copy: "Copy the order",
    copy_link: "Copy the link alone",
    by_hand: "Copy this by hand: hold it, or mark it and press Ctrl+C.",
    save_file: "Save as a file",
    save: ["Save as a file", "Save for a spreadsheet", "Save as plain text"],
    scan: "Show a code to scan",
    say: "Read it over the phone",
    picture: Picture {
        heading: "Scan this code",
        lede: "The other phone's camera opens the whole order, without a message in between.",
        title: "QR code of the link to this order",
        too_long: "This order is too long for a code. Send the link, or shorten the note.",
    },
    voice: Voice {
        heading: "Read this aloud",
        lede: "Line by line, and wait until each is written down.",
        check: "Check characters",
        check_hint: "They tell the clerk which number was misheard, if one was.",
        small: "Or the numbers in thirty characters",
        small_hint: "Read or text these six groups instead. They hold the four numbers, the posts, \
                     the sill-to-bow reading, one diagonal and the date; not the other readings, \
                     the note or your name.",
        no_small: "This order does not fit into thirty characters. Read the lines above, or send \
                   the link.",
    },
    replace: Replace {
        question: "Replace what you typed on this device?",
        lost: |line| format!("Your own order, {line}, would be gone from this device."),
        yes: "Replace it",
        no: "Keep mine",
    },
};

pub(super) const PAPER: Paper = Paper {
    contact: |contact| format!("Reach the writer: {contact}"),
    columns: ["Dimension", "Order", "Read", "Slip unseen", "Re-measured"],
    unseen_below: |least| format!("under {least}"),
    unseen_any: "of any size",
    unseen: "A slip as small as the table says might not be noticed; of any size: nothing checks \
             that number.",
    as_found: |found| format!("as found {found}"),
    rows: ["Diagonals", "Sill upward", "Posts"],
    more_readings: |count| format!("and {count} more"),
    check: "Check characters",
    thirty: "In thirty characters",
    scan: "Scan the code for the whole order.",
    too_long: "Too long for a code: ask the sender for the link.",
    findings: "Findings",
    more_findings: |count| format!("{count} more: the link has them."),
    confirmed: "Confirmed by the writer.",
    build: "To be built first",
    build_by: [
        |by| format!("Header down by {by}"),
        |by| format!("Left post out by {by}"),
        |by| format!("Right post out by {by}"),
    ],
    build_then: "Then re-measure. Cutting and welding on a truck body is for licensed practice; \
                 local codes and the body maker's rules come first.",
    options: "Options",
    note: "Note",
    cut: "(cut short: the link has all of it)",
    profile: |name, revision| format!("Rules: {name}, revision {revision}."),
    built_in: "Rules: built in.",
    cautions: "Set the brake, chock the wheels, lock the tailgate. Never work under a door that \
               is not locked open. Springs and cables are under tension even with the door open \
               and can kill: for trained hands only.",
    signature: ["Re-measured by", "Signature", "Date"],
};
