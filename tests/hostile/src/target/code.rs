//! What a clerk types of a code that is read out.

use hangtrue_core::say::Language;
use hangtrue_core::{Length, Unit};
use hangtrue_link::alphabet;
use hangtrue_link::code::{
    CHECK, Misheard, Outcome, Said, characters, compare, heard, read_small, small, spaced, spell,
};

/// The first nine bytes are four numbers in steps, unit and frame; the rest is what was
/// heard. A proposal for thirty characters is an order that has them; one for six names
/// what differs, so that with it put right they agree.
pub(crate) fn holds(bytes: &[u8]) {
    let (head, rest) = bytes.split_at(bytes.len().min(9));
    let text = &super::text(rest);
    if let Ok(read) = read_small(text) {
        assert_eq!(small(&read.order).as_deref(), Some(read.letters.as_str()), "{text}");
        let again = read_small(&spaced(&read.letters)).expect("a good code is read");
        assert_eq!((&again.order, again.corrected.len()), (&read.order, 0), "{text}");
        differs_only_there(text, &read.letters, &read.corrected);
    }
    let said = typed(head);
    if let Some(own) = characters(&said) {
        assert_eq!(compare(&said, &own), Ok(Outcome::Agrees));
        for language in Language::ALL {
            let words = spell(&own, language).join(" ");
            assert_eq!(compare(&said, &words), Ok(Outcome::Agrees), "{words}");
        }
    }
    match compare(&said, text) {
        Ok(Outcome::Agrees) => {
            let own = characters(&said).map(|own| heard(&own, CHECK));
            assert_eq!(Some(heard(text, CHECK)), own, "{text}");
        }
        Ok(Outcome::Differs(misheard)) => put_right(said, text, &misheard),
        Ok(Outcome::Refused) | Err(_) => {}
    }
}

fn typed(head: &[u8]) -> Said {
    let flags = head.first().copied().unwrap_or_default();
    let unit = if flags & 1 == 1 { Unit::Millimetre } else { Unit::Inch };
    let step = if flags & 4 == 4 { Length::SIXTY_FOURTH } else { unit.step() };
    let mut numbers = [None; 4];
    for (number, pair) in numbers.iter_mut().zip(head.get(1..).unwrap_or_default().chunks(2)) {
        let &[low, high] = pair else { continue };
        let steps = i64::from(u16::from_le_bytes([low, high]));
        *number = (steps != 0).then(|| step.times(steps));
    }
    Said { unit, build: flags & 2 == 2, numbers }
}

fn differs_only_there(text: &str, letters: &str, corrected: &[usize]) {
    let symbols = heard(text, letters.len()).expect("it was read");
    for (at, (heard, letter)) in symbols.into_iter().zip(letters.chars()).enumerate() {
        let same = heard == alphabet::symbol(letter);
        assert_eq!(same, !corrected.contains(&(at + 1)), "{text} {letters} {corrected:?}");
    }
}

/// With every number that differs replaced by what it probably was, and every character
/// too, the two agree.
fn put_right(mut said: Said, text: &str, misheard: &[Misheard]) {
    let mut symbols = heard(text, CHECK).expect("it was compared");
    for one in misheard {
        match one {
            Misheard::Number { dimension, likely, .. } => {
                said.numbers[dimension.index()] = likely.first().copied();
            }
            Misheard::Frame { unit, build } => (said.unit, said.build) = (*unit, *build),
            Misheard::Character { at, likely } => symbols[at - 1] = alphabet::symbol(*likely),
        }
    }
    let letters: String =
        symbols.into_iter().map(|symbol| symbol.map_or('?', alphabet::letter)).collect();
    // Numbers of another unit are no whole steps of the one that was said: no law there.
    if characters(&said).is_some() {
        assert_eq!(compare(&said, &letters), Ok(Outcome::Agrees), "{text} {misheard:?}");
    }
}
