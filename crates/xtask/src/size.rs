//! `cargo xtask size`: what the site weighs on the wire, held to the budget.

use std::io::Write as _;

use anyhow::{Result, ensure};
use flate2::Compression;
use flate2::write::GzEncoder;

use crate::site::{File, Site};

/// All that the first walk needs: HTML, CSS, JavaScript, wasm. Bytes, gzip level 9.
/// The goal is 100 KiB; until it is reached this is what has been reached, so that
/// nothing gets heavier unseen. DEVELOPERS.md says what the bytes are.
const FIRST_WALK: usize = 204 * 1024;
/// The counter desk's own files begin so: they are no part of the walk.
const DESK: [&str; 2] = ["desk", "hangtrue-desk"];
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
    let mut walk = 0;
    let mut view = 0;
    for file in site.files() {
        let gzip = gzip_length(&file.bytes)?;
        table += &format!("{:>9} {gzip:>9}  {}\n", file.bytes.len(), file.name);
        walk += if is_of_first_walk(file) { gzip } else { 0 };
        view += if is_of_first_view(file) { gzip } else { 0 };
    }
    let sums = [
        ("first view (HTML, CSS)", view, FIRST_VIEW),
        ("first walk (HTML, CSS, JS, wasm)", walk, FIRST_WALK),
    ];
    for (what, sum, limit) in sums {
        table += &format!("{:>9} {sum:>9}  {what}, at most {limit}\n", "");
    }
    std::io::stdout().write_all(table.as_bytes())?;
    for (what, sum, limit) in sums {
        ensure!(sum <= limit, "{what} weighs {sum} bytes gzip; the budget is {limit}");
    }
    Ok(())
}

fn is_of_first_view(file: &File) -> bool {
    matches!(file.extension(), "html" | "css") && !is_of_desk(file)
}

fn is_of_first_walk(file: &File) -> bool {
    is_of_first_view(file) || (matches!(file.extension(), "js" | "wasm") && !is_of_desk(file))
}

fn is_of_desk(file: &File) -> bool {
    DESK.iter().any(|start| file.name.starts_with(start))
}

fn gzip_length(bytes: &[u8]) -> Result<usize> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(bytes)?;
    Ok(encoder.finish()?.len())
}
