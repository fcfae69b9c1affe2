//! Small tools for short lists and small numbers. Their twins in the standard library
//! are made for long lists and say more when they fail; in the page's WebAssembly they
//! weigh some 12 KB gzip together, more than all that uses them here.

/// Sorts a short list in place: stable, by insertion, quadratic. `before` says whether
/// its first argument belongs before its second.
pub fn sort<T>(list: &mut [T], before: impl Fn(&T, &T) -> bool) {
    for end in 1..list.len() {
        let mut at = end;
        while let Some(previous) = at.checked_sub(1) {
            let (Some(left), Some(right)) = (list.get(previous), list.get(at)) else { break };
            if !before(right, left) {
                break;
            }
            list.swap(previous, at);
            at = previous;
        }
    }
}

/// `value`, or the end of `least..=most` it is beyond. Not a number stays what it is.
/// `f64::clamp` can panic, and its message brings the printing of floats with it.
#[must_use]
pub fn within(value: f64, least: f64, most: f64) -> f64 {
    match value {
        low if low < least => least,
        high if high > most => most,
        inside => inside,
    }
}

/// Whether an ASCII mark is in the text. `str::contains` brings the same searcher as [`cut_first`]
/// does without, even for a character.
#[must_use]
pub fn holds(text: &str, mark: u8) -> bool {
    text.bytes().any(|byte| byte == mark)
}

/// The text before and behind the first `mark`. `str::split_once` brings a searcher for long texts.
#[must_use]
pub fn cut_first<'a>(text: &'a str, mark: &str) -> Option<(&'a str, &'a str)> {
    cut(text, mark, 0..=text.len())
}

/// The text before and behind the last `mark`.
#[must_use]
pub fn cut_last<'a>(text: &'a str, mark: &str) -> Option<(&'a str, &'a str)> {
    cut(text, mark, (0..=text.len()).rev())
}

/// `template` with the parts in place of its `{}`, in their order. `format!` brings the formatter.
#[must_use]
pub fn fill(template: &str, parts: &[&str]) -> String {
    let mut text = String::new();
    let (mut rest, mut parts) = (template, parts.iter());
    while let Some((before, behind)) = cut_first(rest, "{}") {
        text.push_str(before);
        let part = parts.next();
        debug_assert!(part.is_some(), "fewer parts than places: {template}");
        text.push_str(part.copied().unwrap_or_default());
        rest = behind;
    }
    debug_assert!(parts.next().is_none(), "more parts than places: {template}");
    text.push_str(rest);
    text
}

/// `value` in digits. `to_string` brings a printer of its own for each width of number, and views
/// that write a number bring the formatter.
#[must_use]
pub fn digits(value: impl Into<u64>) -> String {
    let mut text = String::new();
    push_digits(&mut text, value.into());
    text
}

/// The same with a sign before what is less than nought.
#[must_use]
pub fn signed(value: i64) -> String {
    let mut text = String::new();
    if value < 0 {
        text.push('-');
    }
    push_digits(&mut text, value.unsigned_abs());
    text
}

fn push_digits(text: &mut String, value: u64) {
    if value > 9 {
        push_digits(text, value / 10);
    }
    text.extend(char::from_digit((value % 10) as u32, 10));
}

fn cut<'a>(
    text: &'a str,
    mark: &str,
    mut places: impl Iterator<Item = usize>,
) -> Option<(&'a str, &'a str)> {
    places.find_map(|at| {
        let (before, behind) = text.split_at_checked(at)?;
        Some((before, behind.strip_prefix(mark)?))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn it_sorts_as_the_standard_library_does(list in prop::collection::vec((0_u8..9, 0_u8..9), 0..40)) {
            let mut ours: Vec<(usize, (u8, u8))> = list.iter().copied().enumerate().collect();
            let mut theirs = ours.clone();
            sort(&mut ours, |a, b| a.1.0 > b.1.0);
            theirs.sort_by_key(|one| core::cmp::Reverse(one.1.0));
            prop_assert_eq!(ours, theirs);
        }

        #[test]
        fn it_cuts_as_the_standard_library_does(text in "[a. 'é]{0,9}", mark in "[a. 'é]{0,2}") {
            prop_assert_eq!(cut_first(&text, &mark), text.split_once(&mark));
            prop_assert_eq!(cut_last(&text, &mark), text.rsplit_once(&mark));
            prop_assert_eq!(holds(&text, b'.'), text.contains('.'));
        }

        #[test]
        fn it_writes_numbers_as_the_standard_library_does(
            value: u64, number: i64, small in -200_i64..200,
        ) {
            prop_assert_eq!(digits(value), value.to_string());
            prop_assert_eq!(signed(number), number.to_string());
            prop_assert_eq!(signed(small), small.to_string());
        }

        #[test]
        fn it_fills_as_format_does(a in "[a{}é]{0,4}", b in "[a{}é]{0,4}", c in "[a{}é]{0,4}") {
            prop_assert_eq!(fill("{} é {}{}.", &[&a, &b, &c]), format!("{a} é {b}{c}."));
        }

        #[test]
        fn braces_that_are_no_place_stay(text in "[a}é]{0,3}[a{é]{0,3}") {
            prop_assert_eq!(fill(&text, &[]), text);
        }

        #[test]
        fn it_keeps_within_as_clamp_does(value in -9.0_f64..9.0, least in -5.0_f64..0.0, most in 0.0_f64..5.0) {
            prop_assert_eq!(within(value, least, most).to_bits(), value.clamp(least, most).to_bits());
        }
    }
}
