//! Many orders at once, in English (US).

use crate::desk::many::Counts;
use crate::text::desk::many::Many;
use crate::text::en::kept::KEPT;
use hangtrue_core::finding::RuleCode;

pub(super) const MANY: Many = Many {
    screens: "What to check",
    one: "One order",
    many: "Many at once",
    paste: "Paste the list",
    paste_hint: "a table (CSV), JSON lines, or one link a line; or drop the file anywhere on this \
                 page",
    open: "Read the list",
    nothing: "There is no list of orders in this. A list is a table with a row of names, JSON lines, \
              or one link a line.",
    pasted: "Pasted list",
    columns: "Is each column what it says? Put right what is not, then check the orders.",
    column: "Column",
    holds: "Holds",
    measured: "In",
    as_the_rest: "not said",
    row: |number| format!("Row {number}"),
    others: [
        "not used",
        "order number or name",
        "unit of the row",
        "frame is built (yes or no)",
        "truck",
        "note",
        "contact",
        "link with the whole order",
    ],
    bare: "Where nothing else says, numbers are in",
    missing: |names| {
        format!("No column holds the {}. Without it no order is complete.", names.join(", the "))
    },
    check: "Check the orders",
    another: "Another list",
    change: "Change the columns",
    progress: "Checking",
    checked: |count, percent| match count {
        1 => format!("1 order checked, {percent} % of the list"),
        _ => format!("{count} orders checked, {percent} % of the list"),
    },
    stop: "Stop checking",
    stopped: |percent| format!("Stopped at {percent} % of the list. Below is what was checked."),
    resume: "Go on checking",
    summary,
    so_many: |count| match count {
        1 => "1 order shown".to_owned(),
        _ => format!("{count} orders shown"),
    },
    verdicts: "Verdict",
    all: "All",
    unread: "Not an order",
    findings: "What was found",
    find: "Order or truck",
    none: "No order of the list is like this. Press All, or empty the field.",
    table: "Orders that were checked",
    heads: ["Line", "Order", "Verdict"],
    numbers: KEPT.numbers,
    first_finding: "First finding",
    line: |number| format!("line {number}"),
    rows: |first, last, all| format!("{first} to {last} of {all}"),
    previous: "Previous rows",
    next: "Next rows",
    save: ["Save as CSV", "Save as JSON lines"],
    writing: "Writing the file",
    rule,
};

fn summary(counts: &Counts) -> String {
    let [stop, unread, recheck, clear] = counts.verdicts;
    let mut text = match counts.all() {
        1 => "1 order checked: ".to_owned(),
        all => format!("{all} orders checked: "),
    };
    text += &format!("{stop} stop, {recheck} recheck, {clear} clear");
    match unread {
        0 => {}
        1 => text += ", 1 is not an order",
        _ => text += &format!(", {unread} are not orders"),
    }
    text + "."
}

fn rule(code: RuleCode) -> &'static str {
    match code {
        "unreadable" => "not a reading",
        "missing" => "number missing",
        "closing" => "closing reading missing",
        "not-positive" => "zero or less",
        "exchanged-width-height" => "width and height exchanged",
        "exchanged-header-bow" => "header and bow exchanged",
        "too-wide" => "too wide",
        "too-tall" => "too tall",
        "no-such-opening" => "no such opening",
        "bow-fills-header" => "bow fills the header",
        "spread" => "places far apart",
        "repeats" => "repeats disagree",
        "header-to-bow" => "header measured to the bow",
        "room-under-bow" => "little room under the bow",
        "unusual-opening" => "unusual opening",
        "unusual-bow" => "unusual bow",
        "shallow-header" => "header to be built down",
        "narrow-post" => "post to be built out",
        "wide-post" => "post wider than a body has room for",
        "slip" => "likely slip",
        "answer" => "dealer’s question",
        _ => "",
    }
}
