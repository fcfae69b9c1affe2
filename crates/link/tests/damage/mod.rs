//! All that can happen to a payload in one place.

use hangtrue_link::alphabet;

/// Gives `tell` each damaged copy of `payload`, and says how many there were.
pub(crate) fn each(payload: &str, mut tell: impl FnMut(&str)) -> u64 {
    let mut told = 0;
    let letters: Vec<char> = payload.chars().collect();
    let mut damaged = |changed: &[char]| {
        told += 1;
        tell(&changed.iter().collect::<String>());
    };
    for at in 0..letters.len() {
        // Each other character in place of one, and each put in before it.
        for symbol in 0..32 {
            let other = alphabet::letter(symbol);
            let mut changed = letters.clone();
            changed[at] = other;
            if other != letters[at] {
                damaged(&changed);
            }
            changed[at] = letters[at];
            changed.insert(at, other);
            damaged(&changed);
        }
        // One left out; the beginning or the end cut off here.
        let mut changed = letters.clone();
        changed.remove(at);
        damaged(&changed);
        if at > 0 {
            damaged(&letters[at..]);
            damaged(&letters[..at]);
        }
        // Any two exchanged.
        for other in at + 1..letters.len().min(at + 200) {
            if letters[at] != letters[other] {
                let mut changed = letters.clone();
                changed.swap(at, other);
                damaged(&changed);
            }
        }
    }
    // One or two characters added at the end.
    for first in 0..32 {
        let mut changed = letters.clone();
        changed.push(alphabet::letter(first));
        damaged(&changed);
        for second in 0..32 {
            changed.push(alphabet::letter(second));
            damaged(&changed);
            changed.pop();
        }
    }
    told
}
