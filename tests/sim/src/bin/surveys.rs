//! An archive of invented surveys as JSON lines, for `cargo xtask bench archive`.
//!
//! Usage: `surveys COUNT [SEED]`. All sets of readings in turn, four to eleven readings each;
//! in one survey of ten something has slipped.

use std::io::{self, Write};

use hangtrue_sim::{LAYOUTS, Population, Rng, Simulated, Weights, World, clean, slipped};
use serde_json::{Map, Value, json};

fn main() -> io::Result<()> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let number = |word: &String| word.parse::<u64>().map_err(io::Error::other);
    let (count, seed) = match words.as_slice() {
        [count] => (number(count)?, 2026),
        [count, seed] => (number(count)?, number(seed)?),
        _ => return Err(io::Error::other("usage: surveys COUNT [SEED]")),
    };
    let mut out = io::BufWriter::new(io::stdout().lock());
    let world = World::default();
    for (index, layout) in (0..count).zip(LAYOUTS.iter().cycle()) {
        let mut rng = Rng::of(seed, 0, index);
        let survey = if index % 10 == 9 {
            slipped(layout, Population::Yard, &world, Weights::Assumed, &mut rng)
        } else {
            clean(layout, Population::Yard, &world, &mut rng)
        };
        writeln!(out, "{}", line(index, &survey))?;
    }
    out.flush()
}

/// The survey in the format of survey files, on one line.
fn line(index: u64, survey: &Simulated) -> Value {
    let mut readings = Map::new();
    for taken in &survey.readings {
        let (group, place) = taken.spot.split_once('.').unwrap_or((taken.spot, "middle"));
        let places = readings.entry(group).or_insert_with(|| json!({}));
        let text = Value::from(taken.written.text());
        if let Some(places) = places.as_object_mut() {
            match places.get_mut(place) {
                None => drop(places.insert(place.to_owned(), text)),
                Some(Value::Array(repeats)) => repeats.push(text),
                Some(one) => *one = json!([one.take(), text]),
            }
        }
    }
    json!({
        "format": "hangtrue-survey/1",
        "id": format!("order {index}"),
        "unit": if survey.metric { "mm" } else { "in" },
        "prepared": true,
        "readings": readings,
    })
}
