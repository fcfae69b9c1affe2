//! The payload in whatever a person pastes: a link, a sentence, a quoted mail.

use crate::LinkError;
use crate::alphabet;
use crate::envelope::{MOST, OVERHEAD, Scanner};

/// The most bytes of a text that are searched.
pub const SEARCHED: usize = 32 * 1024;
/// The least letters of an order's payload: what is shorter is a number or a hash tag.
const LINK: usize = 20;
/// The most pieces that a mail program may have cut a payload into.
const PIECES: usize = 128;

/// The payload in `text`, in upper case.
///
/// Read as the same: `%23` for `#`; a path or a query in place of the fragment; a
/// payload alone; lower case; white space, line ends and the `>` of quoted mail inside
/// it; anything but a letter or digit after it.
///
/// # Errors
/// [`LinkError::NotFound`] when there is nothing like a payload; [`LinkError::Several`]
/// when there are two that differ, or one beside a damaged one that is no piece of it, for
/// nobody can know which one is meant; else what is wrong with the likeliest candidate.
pub fn find(text: &str) -> Result<String, LinkError> {
    if text.len() > SEARCHED {
        return Err(LinkError::TooLong { most: SEARCHED });
    }
    let mut likeliest: Option<Candidate<'_>> = None;
    let mut found: Option<String> = None;
    let mut behind = text.len();
    let mut damaged: Vec<&str> = Vec::new();
    for candidate in candidates(text) {
        if candidate.text.len() > behind {
            continue; // A piece of the one that was found.
        }
        if let Some((payload, rest)) = candidate.whole() {
            behind = rest;
            // A mail and its quotation have the same twice.
            if found.get_or_insert_with(|| payload.clone()) != &payload {
                return Err(LinkError::Several);
            }
        } else if candidate.marked && candidate.piece().len() >= LINK {
            damaged.push(candidate.piece());
        }
        if found.is_some() {
            continue;
        }
        if likeliest.is_none_or(|best| candidate.rank() > best.rank()) {
            likeliest = Some(candidate);
        }
    }
    if let Some(payload) = &found
        && damaged.into_iter().any(|piece| is_another(piece, payload))
    {
        return Err(LinkError::Several);
    }
    found.ok_or_else(|| likeliest.map_or(LinkError::NotFound, |candidate| candidate.error()))
}

/// Whether `piece` was another link's payload than the one that is whole: of its version, and no
/// beginning of it, as mail programs show long addresses.
fn is_another(piece: &str, payload: &str) -> bool {
    let begins = payload.get(..piece.len()).is_some_and(|head| head.eq_ignore_ascii_case(piece));
    piece.as_bytes().first() == payload.as_bytes().first() && !begins
}

/// Whether there is a whole payload in `text`, be it one too many.
#[must_use]
pub fn holds(text: &str) -> bool {
    matches!(find(text), Ok(_) | Err(LinkError::Several))
}

/// A place where a payload may begin.
#[derive(Clone, Copy)]
struct Candidate<'a> {
    /// The text from there on.
    text: &'a str,
    /// Whether a `#` or `%23` stands before it.
    marked: bool,
}

/// Every run of letters and digits.
fn candidates(text: &str) -> impl Iterator<Item = Candidate<'_>> {
    text.char_indices().filter_map(move |(at, letter)| {
        let (head, rest) = text.split_at_checked(at)?;
        let escaped = ends_with_escape(head);
        let starts = escaped || !head.chars().next_back().is_some_and(char::is_alphanumeric);
        // The digits of an escape are no candidate themselves.
        if !starts || head.ends_with('%') || !letter.is_ascii_alphanumeric() {
            return None;
        }
        let marked = head.ends_with('#') || escaped && head.ends_with("23");
        Some(Candidate { text: rest, marked })
    })
}

/// Whether `head` ends with `%23` or another percent escape, escaped once more or not.
fn ends_with_escape(head: &str) -> bool {
    let mut last = head.bytes().rev();
    let (low, high) = (last.next(), last.next());
    let hex = |byte: Option<u8>| byte.is_some_and(|byte| byte.is_ascii_hexdigit());
    hex(low) && hex(high) && (last.next() == Some(b'%') || head.ends_with("%2523"))
}

/// What a mail program puts inside a long word.
fn is_break(letter: char) -> bool {
    letter.is_whitespace()
        || matches!(letter, '>' | '\u{ad}' | '\u{200b}' | '\u{2060}' | '\u{feff}')
}

impl<'a> Candidate<'a> {
    /// The shortest run of whole pieces from here that is a payload, and how much of the text
    /// stands behind it.
    fn whole(&self) -> Option<(String, usize)> {
        let mut scanner = Scanner::new();
        let mut symbols = Vec::new();
        let mut pieces = 0_usize;
        let mut letters = self.text.chars().peekable();
        let mut rest = self.text.len();
        while let Some(letter) = letters.next() {
            rest = rest.saturating_sub(letter.len_utf8());
            // Quoted-printable mail ends a line that goes on with `=`.
            let soft = letter == '=' && letters.peek().is_some_and(|next| is_break(*next));
            if soft || is_break(letter) {
                continue;
            }
            let symbol = alphabet::symbol(letter)?;
            scanner.push(symbol);
            symbols.push(symbol);
            let ends = letters.peek().is_none_or(|next| !next.is_alphanumeric());
            if ends && scanner.whole() {
                return Some((alphabet::letters(&symbols), rest));
            }
            pieces = pieces.saturating_add(usize::from(ends));
            if pieces > PIECES || symbols.len() == MOST {
                return None;
            }
        }
        None
    }

    /// The first piece: up to anything that is neither letter nor digit.
    fn piece(&self) -> &'a str {
        let end = self.text.find(|letter: char| !letter.is_alphanumeric());
        self.text.get(..end.unwrap_or(self.text.len())).unwrap_or_default()
    }

    /// The likelier to be a payload, the higher; the first of equals stands.
    fn rank(&self) -> (bool, usize) {
        (self.marked, self.piece().len())
    }

    /// Why it is none.
    fn error(&self) -> LinkError {
        let piece = self.piece();
        // A word of a sentence, a step of the page or a hash tag is no damaged link.
        let digits = piece.bytes().any(|byte| byte.is_ascii_digit());
        if !digits || !self.marked && piece.len() < OVERHEAD {
            return LinkError::NotFound;
        }
        crate::decode(piece).err().unwrap_or(LinkError::NotFound)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::envelope::seal;

    /// A payload of so many letters.
    fn payload(letters: usize) -> String {
        let contents: Vec<u8> = (0..letters - OVERHEAD).map(|at| (at * 7 % 32) as u8).collect();
        alphabet::letters(&seal(1, &contents).unwrap())
    }

    #[test]
    fn a_payload_begins_where_a_word_does() {
        let payload = payload(40);
        for before in ["", " ", "#", "%23", "%20", "%2523", "x=", "\u{201c}"] {
            assert_eq!(find(&[before, &payload].concat()).as_ref(), Ok(&payload), "{before}");
        }
        for before in ["x", "42", "\u{e9}", "%", "%2", "1%2"] {
            assert!(find(&[before, &payload].concat()).is_err(), "{before}");
        }
    }

    #[test]
    fn a_word_is_no_damaged_link() {
        for text in ["documentation", "#sold", "step%20b1", "A1B2C3D", "meet at 10:30"] {
            assert_eq!(find(text), Err(LinkError::NotFound), "{text}");
        }
        for text in ["A1B2C3D4", "#A1", "%23A1"] {
            assert_ne!(find(text), Err(LinkError::NotFound), "{text}");
        }
    }

    /// Of two that are as likely the first is told of.
    #[test]
    fn the_first_of_equals_is_told() {
        let payload = payload(40);
        let changed = payload.replacen(|letter| letter == payload.as_bytes()[9] as char, "9", 1);
        let of_no_alphabet = [&payload[..39], "U"].concat();
        assert_ne!(changed, payload);
        let both = [changed.as_str(), &of_no_alphabet].join(" and ");
        assert_eq!(find(&both), Err(LinkError::Changed));
        let both = [of_no_alphabet.as_str(), &changed].join(" and ");
        assert!(matches!(find(&both), Err(LinkError::Letter { letter: 'U', .. })));
    }

    #[test]
    fn two_that_differ_are_refused_and_the_same_twice_is_one() {
        let (first, second) = (payload(40), payload(48));
        let both = |first: &str, second: &str| {
            format!("Wrong: https://a.example/#{first}, corrected:\nhttps://a.example/#{second}.")
        };
        assert_eq!(find(&both(&first, &second)), Err(LinkError::Several));
        assert_eq!(find(&both(&second, &first)), Err(LinkError::Several));
        let quoted: String = [&first[..20], "\n> ", &first[20..]].concat();
        for again in [&first, &first.to_lowercase(), &quoted, &first[..30]] {
            assert_eq!(find(&both(&first, again)).as_ref(), Ok(&first), "{again}");
            assert!(holds(&both(&first, again)));
        }
        assert_eq!(find(&both(&quoted, &second)), Err(LinkError::Several));
        assert!(holds(&both(&first, &second)));
        assert!(!holds("https://a.example/#A1"));
    }

    /// Someone corrected the order, and one of the two links was damaged on its way: the other may
    /// be the wrong one.
    #[test]
    fn a_damaged_one_beside_a_whole_one_is_refused_and_a_shortened_one_is_not() {
        let (whole, other) = (payload(40), payload(48));
        let changed = other.replacen(|letter| letter == other.as_bytes()[9] as char, "9", 1);
        let both = |first: &str, second: &str| {
            find(&format!("https://a.example/#{first} and\nhttps://a.example/%23{second}"))
        };
        for damaged in [&changed, &changed.to_lowercase(), &other[..47], &[&whole, "7"].concat()] {
            assert_eq!(both(&whole, damaged), Err(LinkError::Several), "{damaged}");
            assert_eq!(both(damaged, &whole), Err(LinkError::Several), "{damaged}");
        }
        // As mail programs show it; no link of ours; an order's number.
        for beside in
            [&whole[..30], &whole[..30].to_lowercase(), "9A8B7C6D5E4F3G2H1J0K9M", "1234567"]
        {
            assert_eq!(both(&whole, beside).as_ref(), Ok(&whole), "{beside}");
            assert_eq!(both(beside, &whole).as_ref(), Ok(&whole), "{beside}");
        }
    }

    #[test]
    fn it_ends_somewhere() {
        let padded = |length: usize| format!("{:>length$}", payload(40));
        assert!(find(&padded(SEARCHED)).is_ok());
        assert_eq!(find(&padded(SEARCHED + 1)), Err(LinkError::TooLong { most: SEARCHED }));

        let longest = payload(MOST);
        assert_eq!(find(&longest).as_ref(), Ok(&longest));

        let in_pieces = |pieces: usize| {
            let payload = payload(pieces);
            (find(&payload.chars().flat_map(|letter| [letter, ' ']).collect::<String>()), payload)
        };
        let (found, payload) = in_pieces(PIECES + 1);
        assert_eq!(found, Ok(payload));
        assert!(in_pieces(PIECES + 2).0.is_err());
    }
}
