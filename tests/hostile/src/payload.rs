//! Random payloads: what each costs.

use std::time::Duration;

use allocation_counter::measure;
use cpu_time::ThreadTime;

use crate::forge::{self, Random};
use hangtrue_core::Spot;
use hangtrue_core::order::{Answer, Confirmed, Order};

/// The most bytes at once, and the most time of one processor, that opening a payload may
/// take, whatever is in it. `crates/link/SPEC.md` promises the first.
pub const BYTES_MOST: u64 = 1 << 20;
/// See [`BYTES_MOST`].
pub const TIME_MOST: Duration = Duration::from_millis(1);

/// What was seen.
#[derive(Clone, Debug, Default)]
pub struct Seen {
    /// Payloads tried.
    pub tried: u64,
    /// Orders and records among them.
    pub opened: u64,
    /// The most bytes that were held at once for one of them.
    pub bytes: u64,
    /// The longest that one of them took, of processor time.
    pub time: Duration,
}

impl Seen {
    fn take(&mut self, payload: &str, timed: bool) {
        let open = || {
            let order = hangtrue_link::decode(payload).is_ok();
            let record = hangtrue_link::record::decode(payload).is_ok();
            u64::from(order || record)
        };
        let mut opened = 0;
        let held = measure(|| opened = open());
        self.tried += 1;
        self.opened += opened;
        self.bytes = self.bytes.max(held.bytes_max);
        if timed {
            // Whatever interrupts the machine is counted to us: the fastest of three is
            // the payload's own time.
            let mut time = timed_once(&open);
            for _ in 0..2 {
                if time > self.time {
                    time = time.min(timed_once(&open));
                }
            }
            self.time = self.time.max(time);
        }
    }
}

fn timed_once(open: &impl Fn() -> u64) -> Duration {
    let start = ThreadTime::now();
    core::hint::black_box(open());
    start.elapsed()
}

/// Opens `count` payloads by seed, as an order and as a record: half of them random
/// letters, half random contents behind a sound envelope, of which every other is a
/// golden one with a few symbols changed, so that it is read far.
///
/// # Panics
/// When the golden payloads are not there.
#[must_use]
pub fn random(count: u64, seed: u64, timed: bool) -> Seen {
    let mut random = Random(seed);
    let mut seen = Seen::default();
    let golden: Vec<(u8, Vec<u8>)> =
        [("link-v1.csv", forge::ORDER), ("record-v1.csv", forge::RECORD)]
            .into_iter()
            .flat_map(|(file, version)| {
                crate::seeds::golden(file).into_iter().map(move |(_, payload)| (version, payload))
            })
            .map(|(version, payload)| {
                let symbols: Vec<u8> =
                    payload.chars().filter_map(hangtrue_link::alphabet::symbol).collect();
                (version, symbols[2..symbols.len() - 6].to_vec())
            })
            .collect();
    for round in 0..count {
        let length = random.below(if round % 64 < 4 { 4089 } else { 160 });
        let mut symbols = || -> Vec<u8> { (0..length).map(|_| random.below(32) as u8).collect() };
        let payload = match round % 4 {
            0 | 1 => hangtrue_link::alphabet::letters(&symbols()),
            2 => {
                let version = if round % 8 == 2 { forge::ORDER } else { forge::RECORD };
                forge::sealed(version, &symbols())
            }
            _ => {
                let (version, contents) = &golden[random.below(golden.len() as u32) as usize];
                let mut contents = contents.clone();
                for _ in 0..=random.below(3) {
                    let at = random.below(contents.len() as u32) as usize;
                    contents[at] = random.below(32) as u8;
                }
                forge::sealed(*version, &contents)
            }
        };
        seen.take(&payload, timed);
    }
    seen
}

/// The payloads that cost most: as many readings of one text, confirmed findings or
/// answers as fit. Made on purpose, so held to the memory and not to the time.
#[must_use]
pub fn dense(timed: bool) -> Seen {
    let mut seen = Seen::default();
    let mut fullest = |fill: &dyn Fn(&mut Order, usize)| {
        let with = |count: usize| {
            let mut order = Order::default();
            (0..count).for_each(|at| fill(&mut order, at));
            hangtrue_link::encode(&order).ok()
        };
        // The most that fit, by halves.
        let (mut least, mut most) = (0, 8192);
        while most - least > 1 {
            let count = usize::midpoint(least, most);
            if with(count).is_some() { least = count } else { most = count }
        }
        seen.take(&with(least).unwrap_or_default(), timed);
    };
    for text in DEAREST {
        fullest(&|order, _| order.survey.add(Spot::WidthLow, text));
        fullest(&|order, at| order.survey.add(Spot::ALL[at % Spot::ALL.len()], text));
        fullest(&|order, _| order.note.push_str(text));
        fullest(&|order, _| {
            order.confirmed.push(Confirmed { rule: text.to_owned(), spot: None });
        });
        fullest(&|order, _| {
            order.answers.push(Answer { question: text.to_owned(), answer: String::new() });
        });
    }
    fullest(&|order, _| order.confirmed.push(Confirmed { rule: "spread".to_owned(), spot: None }));
    seen
}

/// Texts that take few bits, and texts whose reading is dear.
const DEAREST: [&str; 12] = [
    "",
    "5",
    "96",
    "1/2",
    "961/4",
    "1,234",
    "96 5/4",
    "8.6'",
    "96 1/3",
    "nine",
    "ninety six and a quarter",
    "quatre-vingt-seize et un quart",
];
