//! `cargo xtask size`: what the site weighs on the wire, held to the budget.

use std::io::Write as _;

use anyhow::{Result, ensure};
use flate2::Compression;
use flate2::write::GzEncoder;

use crate::site::{File, Site};

/// All that the first screens need, from the cautions to the four dimensions: HTML, CSS,
/// JavaScript, the first module. Bytes, gzip level 9. `WEIGHT.md` says what the bytes are.
const FIRST_SCREENS: usize = 100 * 1024;
/// The same with the second module, which comes while the first screens are used: the whole walk
/// in three languages. What has been reached, so that nothing gets heavier unseen.
const WALK: usize = 255 * 1024;
/// How the names begin of what comes behind the first screens: the second module, the sheet for
/// its screens, which is asked for with it, and that for paper, which browsers bring behind.
const BEHIND: [&str; 3] = ["hangtrue-rest", "later-", "print-"];
/// What begins so is no part of the walk: the counter desk, hanging the door, the element for
/// other sites, the page by a dealer's rules, the builder of its profiles.
const APART: [&str; 9] = [
    "desk",
    "hangtrue-desk",
    "hang-",
    "hang.html",
    "hangtrue-hang",
    "embed/",
    "dealer",
    "builder",
    "hangtrue-builder",
];
/// The element's script: all that a host page loads until the element is near the
/// viewport or touched.
const ELEMENT: usize = 5 * 1024;
/// The element with its module, in which the style sheet is. Like the first walk it is
/// held to what has been reached.
const ELEMENT_ALL: usize = 285 * 1024;
/// HTML and CSS: readable and useful before any script. One first flight of packets.
const FIRST_VIEW: usize = 14 * 1024;

/// Prints each file's size and fails when the budget is exceeded.
///
/// # Errors
/// When the build fails or a sum is over its limit.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    crate::no_arguments(arguments)?;
    check(&Site::build()?)
}

/// Prints the table of sizes.
///
/// # Errors
/// When a sum is over its limit.
pub(crate) fn check(site: &Site) -> Result<()> {
    let mut table = format!("{:>9} {:>9}  file\n", "bytes", "gzip");
    let (mut first, mut walk) = (0, 0);
    let mut view = 0;
    let (mut element, mut element_all) = (0, 0);
    for file in site.files() {
        let gzip = gzip_length(&file.bytes)?;
        table += &format!("{:>9} {gzip:>9}  {}\n", file.bytes.len(), file.name);
        walk += if is_of_walk(file) { gzip } else { 0 };
        let is_behind = BEHIND.iter().any(|start| file.name.starts_with(start));
        first += if is_of_walk(file) && !is_behind { gzip } else { 0 };
        view += if is_of_first_view(file) { gzip } else { 0 };
        let of_element = file.name.starts_with("embed/hangtrue-survey");
        let is_script = file.extension() == "js" && !file.name.ends_with(".glue.js");
        element += if of_element && is_script { gzip } else { 0 };
        let loaded = matches!(file.extension(), "js" | "wasm");
        element_all += if of_element && loaded { gzip } else { 0 };
    }
    let sums = [
        ("first view (HTML, CSS)", view, FIRST_VIEW),
        ("first screens (HTML, CSS, JS, wasm)", first, FIRST_SCREENS),
        ("the whole walk", walk, WALK),
        ("element until it is near", element, ELEMENT),
        ("element, all of it", element_all, ELEMENT_ALL),
    ];
    for (what, sum, limit) in sums {
        table += &format!("{:>9} {sum:>9}  {what}, at most {limit}\n", "");
    }
    std::io::stdout().write_all(table.as_bytes())?;
    for (what, sum, limit) in sums {
        ensure!(
            sum <= limit,
            "{what}: {sum} bytes gzip, {} more than the budget of {limit}; `cargo xtask weight` lists \
             what they are",
            sum - limit
        );
    }
    Ok(())
}

fn is_of_first_view(file: &File) -> bool {
    matches!(file.extension(), "html" | "css") && !is_apart(file)
}

fn is_of_walk(file: &File) -> bool {
    is_of_first_view(file) || (matches!(file.extension(), "js" | "wasm") && !is_apart(file))
}

fn is_apart(file: &File) -> bool {
    APART.iter().any(|start| file.name.starts_with(start))
}

fn gzip_length(bytes: &[u8]) -> Result<usize> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(bytes)?;
    Ok(encoder.finish()?.len())
}
