//! The tables, as text.

use std::io::{Result, Write};

use hangtrue_sim::Layout;
use hangtrue_sim::baseline::Limits;
use hangtrue_sim::mark::Marked;
use hangtrue_sim::row::{Condition, Row, Size};
use hangtrue_sim::share::Share;
use hangtrue_sim::survey::{HABIT, slip_name};

const INCH: f64 = 25.4;
/// Sizes of slips, by the damage they do: from so many inches on.
const SIZES: [(f64, &str); 6] = [
    (0.25, "1/4 to 3/8 in"),
    (0.375, "3/8 to 1/2 in"),
    (0.5, "1/2 to 1 in"),
    (1.0, "1 to 3 in"),
    (3.0, "3 in to 1 ft"),
    (12.0, "a foot and more"),
];

pub(crate) fn head(
    out: &mut impl Write,
    condition: &Condition,
    seed: u64,
    size: Size,
) -> Result<()> {
    let Size { clean, slipped, .. } = size;
    writeln!(out, "\n{}: {clean} clean and {slipped} slipped a row, seed {seed}", condition.name)?;
    writeln!(
        out,
        "{:38} {:>18} {:>18} {:>18} {:>18} {:>18} {:>18} {:>18} {:>18}",
        "readings",
        "false alarms",
        "found",
        "range alone",
        "range, scatter",
        "range, w",
        "named first",
        "judge's suspect",
        "value right"
    )
}

fn share(share: Share) -> String {
    let (least, most) = share.interval();
    format!("{:6.2} {:>11}", share.percent(), format!("{least:.1}–{most:.1}"))
}

pub(crate) fn line(
    out: &mut impl Write,
    layout: &Layout,
    row: &Row,
    limits: &Limits,
) -> Result<()> {
    writeln!(
        out,
        "{:38} {} {} {} {} {} {} {} {}",
        layout.name,
        share(row.false_alarms()),
        share(row.found()),
        share(row.by_range()),
        share(Share::of(&row.slipped, |one| one.baseline.by_scatter(limits))),
        share(Share::of(&row.slipped, |one| one.baseline.by_w(limits))),
        share(row.named()),
        share(row.suspected()),
        share(row.value_right()),
    )?;
    writeln!(
        out,
        "{:38} {} {:18} {} {} {}",
        "  false alarms of the simpler checks",
        " ".repeat(18),
        "",
        share(Share::of(&row.clean, |one| one.baseline.range)),
        share(Share::of(&row.clean, |one| one.baseline.by_scatter(limits))),
        share(Share::of(&row.clean, |one| one.baseline.by_w(limits))),
    )
}

/// What happens when the person takes what is asked for until nothing is.
pub(crate) fn further(out: &mut impl Write, rows: &[(Layout, Row)]) -> Result<()> {
    writeln!(out, "\nfurther readings, taken as they are asked for until none is")?;
    writeln!(
        out,
        "{:38} {:>14} {:>10} {:>18} {:>14} {:>18} {:>18} {:>18}",
        "readings",
        "asked, clean",
        "1 in 100",
        "doubted, clean",
        "asked, slipped",
        "doubted, slipped",
        "right in the end",
        "still doubted"
    )?;
    for (layout, row) in rows {
        let extra = |walks: &[hangtrue_sim::walk::Walked]| {
            let sum: usize = walks.iter().map(|walk| walk.extra).sum();
            real(sum) / real(walks.len().max(1))
        };
        // What the one in a hundred who is asked for most is asked for.
        let most = |walks: &[hangtrue_sim::walk::Walked]| {
            let mut all: Vec<usize> = walks.iter().map(|walk| walk.extra).collect();
            all.sort_unstable();
            all.get(all.len().saturating_sub(all.len() / 100 + 1)).copied().unwrap_or(0)
        };
        let (clean, slipped) = (&row.clean_walks, &row.slipped_walks);
        writeln!(
            out,
            "{:38} {:14.2} {:>10} {} {:14.2} {} {} {}",
            layout.name,
            extra(clean),
            most(clean),
            share(Share::of(clean, |walk| walk.doubted)),
            extra(slipped),
            share(Share::of(slipped, |walk| walk.doubted)),
            share(Share::of(slipped, |walk| walk.damage < 0.25 * INCH - 1e-9)),
            share(Share::of(slipped, |walk| walk.confirmed)),
        )?;
    }
    Ok(())
}

/// Found and named, in percent, of each slip.
pub(crate) fn by_slip(out: &mut impl Write, rows: &[(Layout, Row)]) -> Result<()> {
    writeln!(out, "\nby slip: found / named, of how many")?;
    columns(out, rows)?;
    for slip in 0..=HABIT {
        cells(out, slip_name(slip), rows, |one| one.slip == Some(slip))?;
    }
    Ok(())
}

/// Found and named, in percent, by how far the ordered number is off.
pub(crate) fn by_size(out: &mut impl Write, rows: &[(Layout, Row)]) -> Result<()> {
    writeln!(out, "\nby size: found / named, of how many")?;
    columns(out, rows)?;
    for (place, (least, name)) in SIZES.iter().enumerate() {
        let most = SIZES.get(place + 1).map_or(f64::INFINITY, |(next, _)| *next);
        cells(out, name, rows, |one| {
            let inches = one.damage / INCH + 1e-9;
            inches >= *least && inches < most
        })?;
    }
    Ok(())
}

fn columns(out: &mut impl Write, rows: &[(Layout, Row)]) -> Result<()> {
    for (place, (layout, _)) in rows.iter().enumerate() {
        writeln!(out, "  {}: {}", place + 1, layout.name)?;
    }
    write!(out, "{:20}", "")?;
    for place in 0..rows.len() {
        write!(out, " {:>17}", place + 1)?;
    }
    writeln!(out)
}

fn cells(
    out: &mut impl Write,
    name: &str,
    rows: &[(Layout, Row)],
    which: impl Fn(&Marked) -> bool,
) -> Result<()> {
    write!(out, "{name:20}")?;
    for (_, row) in rows {
        let of: Vec<Marked> = row.slipped.iter().filter(|one| which(one)).copied().collect();
        let found = Share::of(&of, |one| one.alarm);
        let named = Share::of(of.iter().filter(|one| one.alarm), |one| one.named);
        let cell = format!("{:.0} / {:.0} {:>5}", found.percent(), named.percent(), found.of);
        write!(out, " {cell:>17}")?;
    }
    writeln!(out)
}

#[expect(clippy::cast_precision_loss, reason = "counts of a few thousand")]
fn real(count: usize) -> f64 {
    count as f64
}
