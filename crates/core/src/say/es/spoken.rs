//! A reading said aloud, in Spanish as spoken in Mexico.

use crate::say::spoken::{Aloud, Parts, Rest};

/// What is counted: `una pulgada`, `un milímetro`.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Gender {
    Feminine,
    Masculine,
}

pub(crate) fn aloud(parts: Parts, aloud: Aloud) -> String {
    let gender = match parts.rest {
        Rest::Inch(..) => Gender::Feminine,
        Rest::Tenths(_) => Gender::Masculine,
    };
    let whole = match aloud {
        Aloud::InFull => cardinal(parts.whole, gender),
        Aloud::ByDigits => by_digits(parts.whole),
    };
    let inches =
        if parts.whole == 1 { "una pulgada".to_owned() } else { [&whole, " pulgadas"].concat() };
    let said = match parts.rest {
        Rest::Inch(0, _) => inches,
        Rest::Inch(1, 2) if parts.whole == 0 => "media pulgada".to_owned(),
        Rest::Inch(1, 2) => [&inches, " y media"].concat(),
        Rest::Inch(over, under) => {
            let part = [&cardinal(over, Gender::Masculine), " ", part(under, over > 1)].concat();
            match parts.whole {
                0 => [&part, " de pulgada"].concat(),
                _ => [&inches, " y ", &part].concat(),
            }
        }
        Rest::Tenths(0) if parts.whole == 1 => "un milímetro".to_owned(),
        Rest::Tenths(0) => [&whole, " milímetros"].concat(),
        Rest::Tenths(tenths) => {
            [&figured(&whole), " punto ", one(tenths, None), " milímetros"].concat()
        }
    };
    let about = if parts.about { "aproximadamente " } else { "" };
    let minus = if parts.negative { "menos " } else { "" };
    [about, minus, &said].concat()
}

/// Before `punto` a number stands alone: `uno`, not `un`.
fn figured(whole: &str) -> String {
    match whole.strip_suffix("veintiún") {
        Some(head) => [head, "veintiuno"].concat(),
        None if whole == "un" || whole.ends_with(" un") => [whole, "o"].concat(),
        None => whole.to_owned(),
    }
}

/// Up to 999 999 in full; more than that digit by digit.
fn cardinal(n: u64, gender: Gender) -> String {
    let with = |head: &str, rest: u64| {
        if rest == 0 { head.to_owned() } else { [head, " ", &cardinal(rest, gender)].concat() }
    };
    match n {
        0..30 => one(n, Some(gender)).to_owned(),
        30..100 if n.is_multiple_of(10) => tens(n).to_owned(),
        30..100 => [tens(n), " y ", one(n % 10, Some(gender))].concat(),
        100 => "cien".to_owned(),
        101..200 => with("ciento", n % 100),
        200..1000 => with(&hundreds(n, gender), n % 100),
        1000..2000 => with("mil", n % 1000),
        2000..1_000_000 => with(&[&cardinal(n / 1000, gender), " mil"].concat(), n % 1000),
        _ => by_digits(n),
    }
}

fn by_digits(n: u64) -> String {
    let digits = n.to_string();
    let words: Vec<_> =
        digits.bytes().map(|digit| one(u64::from(digit.saturating_sub(b'0')), None)).collect();
    words.join(" ")
}

fn hundreds(n: u64, gender: Gender) -> String {
    let stem = match n / 100 {
        2 => "dosc",
        3 => "tresc",
        4 => "cuatroc",
        5 => "quin",
        6 => "seisc",
        7 => "setec",
        8 => "ochoc",
        _ => "novec",
    };
    let end = match gender {
        Gender::Feminine => "ientas",
        Gender::Masculine => "ientos",
    };
    [stem, end].concat()
}

/// 0 to 29; before what is counted, or alone.
fn one(n: u64, before: Option<Gender>) -> &'static str {
    const WORDS: [&str; 30] = [
        "cero",
        "uno",
        "dos",
        "tres",
        "cuatro",
        "cinco",
        "seis",
        "siete",
        "ocho",
        "nueve",
        "diez",
        "once",
        "doce",
        "trece",
        "catorce",
        "quince",
        "dieciséis",
        "diecisiete",
        "dieciocho",
        "diecinueve",
        "veinte",
        "veintiuno",
        "veintidós",
        "veintitrés",
        "veinticuatro",
        "veinticinco",
        "veintiséis",
        "veintisiete",
        "veintiocho",
        "veintinueve",
    ];
    match (n, before) {
        (1, Some(Gender::Feminine)) => "una",
        (1, Some(Gender::Masculine)) => "un",
        (21, Some(Gender::Feminine)) => "veintiuna",
        (21, Some(Gender::Masculine)) => "veintiún",
        _ => usize::try_from(n).ok().and_then(|n| WORDS.get(n)).copied().unwrap_or_default(),
    }
}

/// The tens in `n`, from 30.
const fn tens(n: u64) -> &'static str {
    match n / 10 {
        3 => "treinta",
        4 => "cuarenta",
        5 => "cincuenta",
        6 => "sesenta",
        7 => "setenta",
        8 => "ochenta",
        _ => "noventa",
    }
}

/// The name of a mark of the tape.
const fn part(under: u64, plural: bool) -> &'static str {
    match (under, plural) {
        (2, _) => "medio",
        (4, false) => "cuarto",
        (4, true) => "cuartos",
        (8, false) => "octavo",
        (8, true) => "octavos",
        (16, false) => "dieciseisavo",
        (16, true) => "dieciseisavos",
        (32, false) => "treintaidosavo",
        (32, true) => "treintaidosavos",
        (_, false) => "sesentaicuatroavo",
        (_, true) => "sesentaicuatroavos",
    }
}
