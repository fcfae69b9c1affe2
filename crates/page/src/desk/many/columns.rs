//! What the columns of a table hold: guessed, to be put right by hand.

use super::Kind;
use super::source::Source;
use hangtrue_core::{Dimension, Unit};
use hangtrue_link::csv::{Column, Sheet, What};

/// The dimensions of which no column has a reading; none where a column holds whole orders.
#[must_use]
pub fn missing(sheet: &Sheet) -> Vec<Dimension> {
    let holds = |what: &dyn Fn(What) -> bool| sheet.columns.iter().any(|column| what(column.what));
    if holds(&|what| what == What::Link) {
        return Vec::new();
    }
    let of = |dimension: Dimension| {
        holds(&|what| matches!(what, What::Reading(spot) if spot.dimension() == Some(dimension)))
    };
    Dimension::ALL.into_iter().filter(|dimension| !of(*dimension)).collect()
}

/// Sets what the column `at` holds.
pub fn column(source: &mut Source, at: usize, what: What) {
    change(source, at, |column| column.what = what);
}

/// Changes the column `at`, where there is one.
pub fn change(source: &mut Source, at: usize, change: impl FnOnce(&mut Column)) {
    if let Kind::Table(sheet) = &mut source.kind
        && let Some(column) = sheet.columns.get_mut(at)
    {
        change(column);
    }
}

/// Sets the unit of bare numbers of which nothing else tells the unit.
pub fn unit(source: &mut Source, unit: Unit) {
    if let Kind::Table(sheet) = &mut source.kind {
        sheet.unit = unit;
    }
}
