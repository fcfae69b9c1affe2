//! A reading said aloud, in English (US).

use crate::say::spoken::{Aloud, Parts, Rest};

pub(crate) fn aloud(parts: Parts, aloud: Aloud) -> String {
    let whole = match aloud {
        Aloud::InFull => cardinal(parts.whole),
        Aloud::ByDigits => by_digits(parts.whole),
    };
    let said = match parts.rest {
        Rest::Inch(0, _) if parts.whole == 1 => "one inch".to_owned(),
        Rest::Inch(0, _) => [&whole, " inches"].concat(),
        Rest::Inch(1, 2) if parts.whole == 0 => "half an inch".to_owned(),
        Rest::Inch(over, under) => {
            let part = [&cardinal(over), " ", part(under, over > 1)].concat();
            match parts.whole {
                0 => [&part, " of an inch"].concat(),
                _ => [&whole, " and ", &part, " inches"].concat(),
            }
        }
        Rest::Tenths(0) if parts.whole == 1 => "one millimeter".to_owned(),
        Rest::Tenths(0) => [&whole, " millimeters"].concat(),
        Rest::Tenths(tenths) => [&whole, " point ", &cardinal(tenths), " millimeters"].concat(),
    };
    let about = if parts.about { "about " } else { "" };
    let minus = if parts.negative { "minus " } else { "" };
    [about, minus, &said].concat()
}

/// Up to 999 999 in full; more than that digit by digit.
fn cardinal(n: u64) -> String {
    let with = |many: u64, word: &str, rest: u64| {
        let head = [&cardinal(many), word].concat();
        if rest == 0 { head } else { [&head, " ", &cardinal(rest)].concat() }
    };
    match n {
        0..20 => one(n).to_owned(),
        20..100 if n.is_multiple_of(10) => tens(n).to_owned(),
        20..100 => [tens(n), "-", one(n % 10)].concat(),
        100..1000 => with(n / 100, " hundred", n % 100),
        1000..1_000_000 => with(n / 1000, " thousand", n % 1000),
        _ => by_digits(n),
    }
}

fn by_digits(n: u64) -> String {
    let digits = n.to_string();
    let words: Vec<_> =
        digits.bytes().map(|digit| one(u64::from(digit.saturating_sub(b'0')))).collect();
    words.join(" ")
}

/// 0 to 19.
fn one(n: u64) -> &'static str {
    const WORDS: [&str; 20] = [
        "zero",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen",
    ];
    usize::try_from(n).ok().and_then(|n| WORDS.get(n)).copied().unwrap_or_default()
}

/// The tens in `n`, from 20.
const fn tens(n: u64) -> &'static str {
    match n / 10 {
        2 => "twenty",
        3 => "thirty",
        4 => "forty",
        5 => "fifty",
        6 => "sixty",
        7 => "seventy",
        8 => "eighty",
        _ => "ninety",
    }
}

/// The name of a mark of the tape.
const fn part(under: u64, plural: bool) -> &'static str {
    match (under, plural) {
        (2, _) => "half",
        (4, false) => "quarter",
        (4, true) => "quarters",
        (8, false) => "eighth",
        (8, true) => "eighths",
        (16, false) => "sixteenth",
        (16, true) => "sixteenths",
        (32, false) => "thirty-second",
        (32, true) => "thirty-seconds",
        (_, false) => "sixty-fourth",
        (_, true) => "sixty-fourths",
    }
}
