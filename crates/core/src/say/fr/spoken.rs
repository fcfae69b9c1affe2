//! A reading said aloud, in French as spoken in Canada.

use crate::say::spoken::{Aloud, Parts, Rest};

pub(crate) fn aloud(parts: Parts, aloud: Aloud) -> String {
    let whole = match aloud {
        Aloud::InFull => cardinal(parts.whole, true),
        Aloud::ByDigits => by_digits(parts.whole),
    };
    // Nought and one take the singular.
    let inches = [whole.as_str(), if parts.whole < 2 { " pouce" } else { " pouces" }].concat();
    let said = match parts.rest {
        Rest::Inch(0, _) => inches,
        Rest::Inch(1, 2) if parts.whole == 0 => "un demi-pouce".to_owned(),
        Rest::Inch(1, 2) => [&inches, " et demi"].concat(),
        Rest::Inch(over, under) => {
            let part = [&cardinal(over, true), " ", part(under, over > 1)].concat();
            match parts.whole {
                0 => [&part, " de pouce"].concat(),
                _ => [&inches, " et ", &part].concat(),
            }
        }
        Rest::Tenths(0) if parts.whole < 2 => [&whole, " millimètre"].concat(),
        Rest::Tenths(0) => [&whole, " millimètres"].concat(),
        Rest::Tenths(tenths) => [
            whole.as_str(),
            " virgule ",
            one(tenths),
            if parts.whole < 2 { " millimètre" } else { " millimètres" },
        ]
        .concat(),
    };
    let about = if parts.about { "environ " } else { "" };
    let minus = if parts.negative { "moins " } else { "" };
    [about, minus, &said].concat()
}

/// Up to 999 999 in full; more than that digit by digit. `vingts` and `cents` have their s
/// at the end of a number only.
fn cardinal(n: u64, ends: bool) -> String {
    let with = |head: &str, rest: u64| {
        if rest == 0 { head.to_owned() } else { [head, " ", &cardinal(rest, ends)].concat() }
    };
    match n {
        0..17 => one(n).to_owned(),
        17..20 => ["dix-", one(n % 10)].concat(),
        20..70 => joined(tens(n), n % 10, " et "),
        // By scores: `soixante et onze`, `quatre-vingt-onze`.
        70..80 => joined("soixante", n.saturating_sub(60), " et "),
        80 if ends => "quatre-vingts".to_owned(),
        80..100 => joined("quatre-vingt", n.saturating_sub(80), "-"),
        100..200 => with("cent", n % 100),
        200..1000 => {
            let plural = ends && n.is_multiple_of(100);
            let head = [one(n / 100), if plural { " cents" } else { " cent" }].concat();
            with(&head, n % 100)
        }
        1000..2000 => with("mille", n % 1000),
        2000..1_000_000 => with(&[&cardinal(n / 1000, false), " mille"].concat(), n % 1000),
        _ => by_digits(n),
    }
}

/// Tens, or scores, and what is over, up to nineteen.
fn joined(tens: &str, over: u64, before_one: &str) -> String {
    match over {
        0 => tens.to_owned(),
        1 | 11 => [tens, before_one, one(over)].concat(),
        _ => [tens, "-", &cardinal(over, false)].concat(),
    }
}

fn by_digits(n: u64) -> String {
    let digits = n.to_string();
    let words: Vec<_> =
        digits.bytes().map(|digit| one(u64::from(digit.saturating_sub(b'0')))).collect();
    words.join(" ")
}

/// 0 to 16.
fn one(n: u64) -> &'static str {
    const WORDS: [&str; 17] = [
        "zéro", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix",
        "onze", "douze", "treize", "quatorze", "quinze", "seize",
    ];
    usize::try_from(n).ok().and_then(|n| WORDS.get(n)).copied().unwrap_or_default()
}

/// The tens in `n`, from 20 to 60.
const fn tens(n: u64) -> &'static str {
    match n / 10 {
        2 => "vingt",
        3 => "trente",
        4 => "quarante",
        5 => "cinquante",
        _ => "soixante",
    }
}

/// The name of a mark of the tape.
const fn part(under: u64, plural: bool) -> &'static str {
    match (under, plural) {
        (2, _) => "demi",
        (4, false) => "quart",
        (4, true) => "quarts",
        (8, false) => "huitième",
        (8, true) => "huitièmes",
        (16, false) => "seizième",
        (16, true) => "seizièmes",
        (32, false) => "trente-deuxième",
        (32, true) => "trente-deuxièmes",
        (_, false) => "soixante-quatrième",
        (_, true) => "soixante-quatrièmes",
    }
}
