//! What was measured: medians between quartiles, as text and as `target/bench.json`.

use std::fs;

use anyhow::Result;
use serde_json::{Value, json};

use crate::sh::{self, say};

/// One thing, done by one of those that are compared.
struct Row {
    section: &'static str,
    what: String,
    who: String,
    unit: &'static str,
    /// In order of size.
    values: Vec<f64>,
}

/// All rows of a run.
pub(super) struct Table {
    date: String,
    rows: Vec<Row>,
}

impl Table {
    /// Nothing measured yet.
    ///
    /// # Errors
    /// When nobody says what day it is.
    pub(super) fn new() -> Result<Self> {
        let date = sh::output(&mut sh::command("date", &["+%F"]))?.trim().to_owned();
        Ok(Self { date, rows: Vec::new() })
    }

    /// Adds a row. Rows of one section, thing and unit are compared, with the first of them.
    pub(super) fn add(
        &mut self,
        section: &'static str,
        what: &str,
        who: &str,
        unit: &'static str,
        mut values: Vec<f64>,
    ) {
        values.sort_by(f64::total_cmp);
        self.rows.push(Row { section, what: what.into(), who: who.into(), unit, values });
    }

    /// Prints the table, and writes it beside what an earlier run wrote of other sections.
    ///
    /// # Errors
    /// When it cannot be written.
    pub(super) fn write(&self) -> Result<()> {
        if self.rows.is_empty() {
            return Ok(());
        }
        for line in self.lines() {
            say!("{line}");
        }
        let file = sh::target_folder()?.join("bench.json");
        let old: Value = fs::read(&file)
            .ok()
            .and_then(|text| serde_json::from_slice(&text).ok())
            .unwrap_or_default();
        let new = |row: &Value| {
            let section = row.get("section").and_then(Value::as_str);
            self.rows.iter().any(|mine| Some(mine.section) == section)
        };
        let kept = old.get("rows").and_then(Value::as_array).into_iter().flatten();
        let kept = kept.filter(|row| !new(row)).cloned();
        let rows: Vec<Value> = kept.chain(self.rows.iter().map(|row| self.json(row))).collect();
        fs::write(&file, format!("{:#}\n", json!({ "rows": rows })))?;
        say!("written to {}", file.file_name().unwrap_or_default().to_string_lossy());
        Ok(())
    }

    fn lines(&self) -> Vec<String> {
        let mut lines = vec![format!("{}: median (quartiles), and how often the first", self.date)];
        let mut above = None;
        for row in &self.rows {
            let heading = (row.section, row.what.as_str(), row.unit);
            if above != Some(heading) {
                lines.push(format!("{}, {}, {}", row.section, row.what, row.unit));
                above = Some(heading);
            }
            let [low, middle, high] = quartiles(&row.values).map(figure);
            let span = format!("({low}–{high})");
            let times = format!("{:.2}", self.times(row));
            lines.push(format!("  {:52} {middle:>9} {span:>19} {times:>8}", row.who));
        }
        lines
    }

    /// How often the median of the first row that this one is compared with goes into its own.
    fn times(&self, row: &Row) -> f64 {
        let key = |row: &Row| (row.section, row.what.clone(), row.unit);
        let first = self.rows.iter().find(|other| key(other) == key(row)).unwrap_or(row);
        quartiles(&row.values)[1] / quartiles(&first.values)[1]
    }

    fn json(&self, row: &Row) -> Value {
        let [low, middle, high] = quartiles(&row.values);
        json!({
            "date": self.date,
            "section": row.section,
            "what": row.what,
            "who": row.who,
            "unit": row.unit,
            "median": middle,
            "quartiles": [low, high],
            "values": row.values.len(),
            "times_the_first": self.times(row),
        })
    }
}

/// First quartile, median, third quartile of what stands in order of size, nearest rank.
fn quartiles(sorted: &[f64]) -> [f64; 3] {
    [1, 2, 3].map(|quarter| {
        let rank = (sorted.len() * quarter).div_ceil(4).saturating_sub(1);
        sorted.get(rank).copied().unwrap_or(f64::NAN)
    })
}

/// Three digits that say something.
fn figure(value: f64) -> String {
    match value {
        v if v >= 100.0 => format!("{v:.0}"),
        v if v >= 10.0 => format!("{v:.1}"),
        v => format!("{v:.3}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quartiles_are_values_that_were_measured() {
        assert_eq!(quartiles(&[4.0]), [4.0; 3]);
        assert_eq!(quartiles(&[1.0, 2.0, 3.0, 4.0]), [1.0, 2.0, 3.0]);
        assert_eq!(quartiles(&[1.0, 2.0, 3.0, 4.0, 5.0]), [2.0, 3.0, 4.0]);
    }

    #[test]
    fn a_row_is_compared_with_the_first_of_its_kind() {
        let mut table = Table { date: "2026-01-01".into(), rows: Vec::new() };
        table.add("s", "w", "ours", "ms", vec![2.0]);
        table.add("s", "w", "theirs", "ms", vec![9.0, 5.0, 6.0]);
        table.add("s", "w", "ours", "MB", vec![1.0]);
        let times: Vec<f64> = table.rows.iter().map(|row| table.times(row)).collect();
        assert_eq!(times, [1.0, 3.0, 1.0]);
    }
}
