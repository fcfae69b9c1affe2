//! Every law, for a fixed number of invented inputs and for every case ever kept.

// A panic here is a failed test.
#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing)]

use std::panic;

use hangtrue_hostile::forge::Random;
use hangtrue_hostile::seeds::{cases, seeds};
use hangtrue_hostile::{TARGETS, target};
use proptest::prelude::*;

/// Inputs a target, beside its cases.
const INVENTED: u32 = 3000;
/// The check judges each for as long as a hundred others are read.
const JUDGED: u32 = 300;

/// Good inputs of `name` with pieces cut, doubled, exchanged and put in.
fn damaged(seeds: &[Vec<u8>], random: &mut Random) -> Vec<u8> {
    let pick = |random: &mut Random, most: usize| random.below(most.max(1) as u32) as usize;
    let mut bytes = seeds[pick(random, seeds.len())].clone();
    for _ in 0..=random.below(4) {
        let at = pick(random, bytes.len() + 1);
        let end = (at + pick(random, 12)).min(bytes.len());
        let piece: Vec<u8> = match random.below(6) {
            0 => Vec::new(),
            1 => bytes[at..end].repeat(2),
            2 => bytes[at..end].iter().rev().copied().collect(),
            3 => (0..random.below(6)).map(|_| random.below(256) as u8).collect(),
            4 => b"0123456789/.,-'\" {}[]:\\\n\t=;"
                .iter()
                .copied()
                .filter(|_| random.below(8) == 0)
                .collect(),
            _ => {
                let other = &seeds[pick(random, seeds.len())];
                let from = pick(random, other.len());
                other[from..(from + pick(random, 40)).min(other.len())].to_vec()
            }
        };
        bytes.splice(at..end, piece);
    }
    bytes
}

/// `name`'s law for `bytes`; a failure says which bytes they were.
fn holds(name: &str, bytes: &[u8]) {
    let law = target(name);
    if let Err(cause) = panic::catch_unwind(|| law(bytes)) {
        eprintln!("{name}: broken by {:?}", String::from_utf8_lossy(bytes));
        panic::resume_unwind(cause);
    }
}

#[test]
fn every_case_that_was_kept_is_held() {
    for (name, law) in TARGETS {
        assert!(!seeds(name).is_empty(), "{name} has nothing to begin with");
        for (path, case) in cases(name) {
            assert!(panic::catch_unwind(|| law(&case)).is_ok(), "{path}");
        }
    }
}

macro_rules! laws {
    ($($name:ident $count:expr;)*) => {$(
        #[test]
        fn $name() {
            let seeds = seeds(stringify!($name));
            let mut random = Random(1);
            for _ in 0..$count {
                holds(stringify!($name), &damaged(&seeds, &mut random));
            }
            let config = ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases($count / 3) };
            proptest!(config, |(bytes in any::<Vec<u8>>(), text in ".{0,60}")| {
                holds(stringify!($name), &bytes);
                holds(stringify!($name), text.as_bytes());
            });
        }
    )*
    #[test]
    fn every_target_has_its_test() {
        let names = [$(stringify!($name)),*];
        assert_eq!(TARGETS.map(|(name, _)| name).as_slice(), names);
    }};
}

laws! {
    reading INVENTED;
    survey INVENTED;
    csv INVENTED;
    link INVENTED;
    code INVENTED;
    profile INVENTED;
    record INVENTED;
    json INVENTED;
    check JUDGED;
}
