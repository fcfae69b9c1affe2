//! What can happen to a link on its way, all of it, for every golden link and record:
//! refused, or understood as the same; never as another.

// A panic here is a failed test.
#![allow(clippy::unwrap_used, clippy::panic, clippy::print_stdout)]

use hangtrue_hostile::forge::sealed;
use hangtrue_hostile::seeds::golden;
use hangtrue_link::record::{Opened, decode};
use hangtrue_link::{alphabet, find};

/// Everything on a keyboard, the white space, and what mail and word processors make of
/// it; some letters that only look like ours.
fn characters() -> Vec<char> {
    let keys = (' '..='~').chain(['\t', '\n', '\r', '\u{a0}', '\u{200b}', '\u{ad}', '\u{feff}']);
    keys.chain("‐‑–—“”‘’…¼½×ÅéßİıſＡ０١АОІ０\u{301}😀\u{0}".chars()).collect()
}

/// What `text` is opened as: by itself, or found in what it is pasted with.
fn opened(text: &str) -> [Option<Opened>; 3] {
    let pasted = format!("See https://dealer.example/doors/#{text}");
    [
        decode(text).ok(),
        find(text).ok().and_then(|payload| decode(&payload).ok()),
        find(&pasted).ok().and_then(|payload| decode(&payload).ok()),
    ]
}

struct Damage {
    name: String,
    whole: Opened,
    tried: u64,
    same: u64,
}

impl Damage {
    fn done(&mut self, text: &str) {
        for opened in opened(text).into_iter() {
            self.tried += 1;
            if let Some(opened) = opened {
                assert_eq!(opened, self.whole, "{}: {text}", self.name);
                self.same += 1;
            }
        }
    }
}

#[test]
fn a_damaged_link_is_refused_or_is_the_same() {
    let characters = characters();
    for (name, payload) in [golden("link-v1.csv"), golden("record-v1.csv")].concat() {
        let letters: Vec<char> = payload.chars().collect();
        let mut damage = Damage { whole: decode(&payload).unwrap(), name, tried: 0, same: 0 };
        let text = |letters: &[char]| letters.iter().collect::<String>();
        for at in 0..letters.len() {
            for &other in &characters {
                let mut changed = letters.clone();
                changed[at] = other;
                damage.done(&text(&changed));
            }
            if at + 1 < letters.len() {
                let mut changed = letters.clone();
                changed.swap(at, at + 1);
                damage.done(&text(&changed));
            }
            damage.done(&text(&letters[..at]));
            damage.done(&text(&letters[at..]));
            damage.done(&text(&[&letters[..at], &letters[at + 1..]].concat()));
        }
        for &other in &characters {
            damage.done(&format!("{payload}{other}"));
            damage.done(&format!("{other}{payload}"));
        }
        println!("{}: {} tried, {} the same, none another", damage.name, damage.tried, damage.same);
        assert!(damage.same > 0, "another case of a letter is the same");
    }
}

#[test]
fn the_envelope_is_as_the_specification_says() {
    for (name, payload) in [golden("link-v1.csv"), golden("record-v1.csv")].concat() {
        let symbols: Vec<u8> = payload.chars().map(|c| alphabet::symbol(c).unwrap()).collect();
        let contents = &symbols[2..symbols.len() - 6];
        assert_eq!(sealed(symbols[0], contents), payload, "{name}");
    }
}
