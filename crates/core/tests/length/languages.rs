//! Readings in Spanish and French, as typed and as dictated; read without being told
//! the language.

use hangtrue_core::length::{Length, Unit, read};

fn check(cases: &[(&str, Length)]) {
    let wrong: Vec<String> = cases
        .iter()
        .flat_map(|case| [(case, Unit::Inch), (case, Unit::Millimetre)])
        .filter(|((text, length), unit)| read(text, *unit) != Ok(*length))
        .map(|((text, _), unit)| format!("{text:?}: {:?}", read(text, unit)))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[expect(clippy::unwrap_used, reason = "a test fails by panicking")]
fn refused(unit: Unit, cases: &[(&str, &str, &[&str])]) {
    for (text, code, offers) in cases {
        let error = read(text, unit).unwrap_err();
        let found: Vec<&str> = error.suggestions.iter().map(|s| s.text.as_str()).collect();
        assert_eq!((error.kind.code(), &*found), (*code, *offers), "{text}");
    }
}

fn inches(whole: i64, sixty_fourths: i64) -> Length {
    Length::from_sixty_fourths(whole * 64 + sixty_fourths)
}

fn feet(feet: i64, inches: i64, sixty_fourths: i64) -> Length {
    self::inches(feet * 12 + inches, sixty_fourths)
}

/// An accent too much, or on another letter, is no other word.
#[test]
fn accents_do_not_count() {
    check(&[
        ("96 pulgÁdàs", inches(96, 0)),
        ("çinq pouces", inches(5, 0)),
        ("ÇINQ pouces", inches(5, 0)),
        ("oñce pulgadas", inches(11, 0)),
        ("OÑCE pulgadas", inches(11, 0)),
        ("ünÅ pulgada", inches(1, 0)),
        ("ÙNA pulgada", inches(1, 0)),
    ]);
}

#[test]
fn spanish() {
    check(&[
        ("noventa y seis pulgadas", inches(96, 0)),
        ("noventa y seis y un cuarto pulgadas", inches(96, 16)),
        ("noventa y seis pulgadas y un cuarto", inches(96, 16)),
        ("noventa y seis pulgadas con tres octavos", inches(96, 24)),
        ("noventa y seis y tres dieciseisavos pulgadas", inches(96, 12)),
        ("noventa y seis y tres dieciséis avos de pulgada", inches(96, 12)),
        ("noventa y tres octavos pulgadas", inches(90, 24)),
        ("noventa y media pulgadas", inches(90, 32)),
        ("noventa y seis pulgadas y media", inches(96, 32)),
        ("ciento una y tres cuartos de pulgada", inches(101, 48)),
        ("cien y medio pulgadas", inches(100, 32)),
        ("una pulgada", inches(1, 0)),
        ("una pulgada y media", inches(1, 32)),
        ("media pulgada", inches(0, 32)),
        ("tres cuartos de pulgada", inches(0, 48)),
        ("un cuarto de una pulgada", inches(0, 16)),
        ("un treintaidosavo de pulgada", inches(0, 2)),
        ("tres treinta y dosavos de pulgada", inches(0, 6)),
        ("tres treinta y dos avos de pulgada", inches(0, 6)),
        ("treinta y un treintaidosavos de pulgada", inches(0, 62)),
        ("siete sesentaicuatroavos de pulgada", inches(0, 7)),
        ("siete sesenta y cuatro avos de pulgada", inches(0, 7)),
        ("siete sesenta y cuatroavos de pulgada", inches(0, 7)),
        ("96 pulg. y 3/16", inches(96, 12)),
        ("96 3/16 avos pulg", inches(96, 12)),
        ("96 y un cuarto pulgadas", inches(96, 16)),
        ("96 ¼ Pulgadas", inches(96, 16)),
        ("ocho pies", feet(8, 0, 0)),
        ("ocho pies seis pulgadas", feet(8, 6, 0)),
        ("ocho pies con seis pulgadas y media", feet(8, 6, 32)),
        ("ocho pies y un cuarto de pulgada", feet(8, 0, 16)),
        ("8 pies 0 1/4 pulgadas", feet(8, 0, 16)),
        ("dos mil cuatrocientos cuarenta y cinco milímetros", Length::from_mm(2445)),
        ("veinticuatro cuarenta y cinco milímetros", Length::from_mm(2445)),
        ("dos cuatro cuatro cinco mili\u{301}metros", Length::from_mm(2445)),
        ("dos punto cuatro cuatro cinco metros", Length::from_mm(2445)),
        ("dos coma cuatro cuatro cinco metros", Length::from_mm(2445)),
        ("dos coma cuatrocientos cuarenta y cinco metros", Length::from_mm(2445)),
        ("dos metros y medio", Length::from_mm(2500)),
        ("doscientos cuarenta y cuatro coma cinco centímetros", Length::from_mm(2445)),
    ]);
    assert_eq!(read("noventa y seis y un cuarto", Unit::Inch), Ok(inches(96, 16)));
    refused(
        Unit::Inch,
        &[
            ("ocho seis", "two-meanings", &["86 in", "8 ft 6 in"]),
            ("veinte y tres treintaidosavos", "two-meanings", &["20 3/32 in", "23/32 in"]),
            ("noventa y seis y un tercio", "not-on-tape", &["96 5/16 in", "96 3/8 in"]),
            ("ocho pies y medio", "fraction-of-foot", &["8 ft 6 in", "8 ft 0 1/2 in"]),
            ("casi noventa y seis", "approximate", &["96 in"]),
            ("96 por 84", "two-readings", &[]),
            ("menos cuatro", "negative", &["4 in"]),
            ("noventa y seis y", "unknown", &[]),
        ],
    );
}

#[test]
fn french() {
    check(&[
        ("quatre-vingt-seize pouces", inches(96, 0)),
        ("quatre-vingt-seize et un quart pouces", inches(96, 16)),
        ("quatre-vingt-seize pouces et un quart", inches(96, 16)),
        ("quatre vingt seize pouces et trois seizièmes", inches(96, 12)),
        ("quatre-vingt-seize et trois seizièmes de pouce", inches(96, 12)),
        ("quatre-vingt-dix et demi pouces", inches(90, 32)),
        ("cent et un quart pouces", inches(100, 16)),
        ("cent un pouces et demi", inches(101, 32)),
        ("cent deux pouces trois quarts", inches(102, 48)),
        ("vingt et un quart pouces", inches(20, 16)),
        ("vingt et un pouces", inches(21, 0)),
        ("vingt et un trente-deuxièmes de pouce", inches(0, 42)),
        ("un pouce", inches(1, 0)),
        ("un pouce et demi", inches(1, 32)),
        ("un demi-pouce", inches(0, 32)),
        ("trois quarts de pouce", inches(0, 48)),
        ("un quart d’un pouce", inches(0, 16)),
        ("un quart d'un pouce", inches(0, 16)),
        ("sept soixante-quatrièmes de pouce", inches(0, 7)),
        ("96 po et quart", inches(96, 16)),
        ("96 po 3/16", inches(96, 12)),
        ("96 3/16e po", inches(96, 12)),
        ("96 3/16ièmes de pouce", inches(96, 12)),
        ("huit pieds", feet(8, 0, 0)),
        ("huit pieds six pouces", feet(8, 6, 0)),
        ("huit pieds et six pouces et demi", feet(8, 6, 32)),
        ("huit pieds et un quart de pouce", feet(8, 0, 16)),
        ("8 pi 0 1/4 po", feet(8, 0, 16)),
        ("deux mille quatre cent quarante-cinq millimètres", Length::from_mm(2445)),
        ("vingt-quatre quarante-cinq millimètres", Length::from_mm(2445)),
        ("deux quatre quatre cinq MILLIMÈTRES", Length::from_mm(2445)),
        ("deux virgule quatre cent quarante-cinq mètres", Length::from_mm(2445)),
        ("deux virgule zéro cinq mètres", Length::from_mm(2050)),
        ("deux virgule quatre quatre cinq mètres", Length::from_mm(2445)),
        ("deux mètres et demi", Length::from_mm(2500)),
        ("soixante-dix-sept centimètres", Length::from_mm(770)),
        ("nonante-six centimètres", Length::from_mm(960)),
    ]);
    assert_eq!(read("quatre-vingt-seize et un quart", Unit::Inch), Ok(inches(96, 16)));
    refused(
        Unit::Inch,
        &[
            ("huit six", "two-meanings", &["86 in", "8 ft 6 in"]),
            ("quatre-vingt trois quarts", "two-meanings", &["80 3/4 in"]),
            ("quatre-vingt-seize et un tiers", "not-on-tape", &["96 5/16 in", "96 3/8 in"]),
            ("huit pieds et demi", "fraction-of-foot", &["8 ft 6 in", "8 ft 0 1/2 in"]),
            ("environ quatre-vingt-seize", "approximate", &["96 in"]),
            ("moins quatre", "negative", &["4 in"]),
        ],
    );
}

/// Numbers up to 9999 as the grammars of both languages write them.
#[expect(clippy::indexing_slicing, reason = "each index is bounded by its arm")]
mod numbers {
    pub(super) fn spanish(n: usize) -> String {
        const SMALL: [&str; 30] = [
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
        const TENS: [&str; 7] =
            ["treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa"];
        const HUNDREDS: [&str; 9] = [
            "ciento",
            "doscientos",
            "trescientos",
            "cuatrocientos",
            "quinientos",
            "seiscientos",
            "setecientos",
            "ochocientos",
            "novecientos",
        ];
        let behind = |head: String, rest| match rest {
            0 => head,
            rest => format!("{head} {}", spanish(rest)),
        };
        match n {
            0..30 => SMALL[n].to_owned(),
            30..100 if n.is_multiple_of(10) => TENS[n / 10 - 3].to_owned(),
            30..100 => format!("{} y {}", TENS[n / 10 - 3], SMALL[n % 10]),
            100 => "cien".to_owned(),
            101..1000 => behind(HUNDREDS[n / 100 - 1].to_owned(), n % 100),
            1000..2000 => behind("mil".to_owned(), n % 1000),
            _ => behind(format!("{} mil", spanish(n / 1000)), n % 1000),
        }
    }

    pub(super) fn french(n: usize) -> String {
        const SMALL: [&str; 17] = [
            "zéro", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix",
            "onze", "douze", "treize", "quatorze", "quinze", "seize",
        ];
        const TENS: [&str; 5] = ["vingt", "trente", "quarante", "cinquante", "soixante"];
        let behind = |head: String, rest| match rest {
            0 => head,
            rest => format!("{head} {}", french(rest)),
        };
        match n {
            0..17 => SMALL[n].to_owned(),
            17..20 => format!("dix-{}", SMALL[n - 10]),
            80 => "quatre-vingts".to_owned(),
            81..100 => format!("quatre-vingt-{}", french(n - 80)),
            71 => "soixante et onze".to_owned(),
            70..80 => format!("soixante-{}", french(n - 60)),
            20..70 => match n % 10 {
                0 => TENS[n / 10 - 2].to_owned(),
                1 => format!("{} et un", TENS[n / 10 - 2]),
                one => format!("{}-{}", TENS[n / 10 - 2], SMALL[one]),
            },
            100..200 => behind("cent".to_owned(), n % 100),
            200..1000 if n.is_multiple_of(100) => format!("{} cents", SMALL[n / 100]),
            200..1000 => behind(format!("{} cent", SMALL[n / 100]), n % 100),
            1000..2000 => behind("mille".to_owned(), n % 1000),
            _ => behind(format!("{} mille", french(n / 1000)), n % 1000),
        }
    }
}

#[test]
fn every_number_to_9999() {
    for n in 0..10_000 {
        let length = Length::from_mm(i64::try_from(n).unwrap());
        for text in [
            format!("{} milímetros", numbers::spanish(n)),
            format!("{} millimètres", numbers::french(n)),
        ] {
            assert_eq!(read(&text, Unit::Inch), Ok(length), "{text}");
        }
        // Halves, quarters and sixteenths behind it: what is heard is right, or asked.
        for (text, sixty_fourths) in [
            (format!("{} y medio pulgadas", numbers::spanish(n)), 32),
            (format!("{} y un cuarto pulgadas", numbers::spanish(n)), 16),
            (format!("{} y tres dieciseisavos pulgadas", numbers::spanish(n)), 12),
            (format!("{} et demi pouces", numbers::french(n)), 32),
            (format!("{} et un quart pouces", numbers::french(n)), 16),
            (format!("{} et trois seizièmes pouces", numbers::french(n)), 12),
        ] {
            let right = inches(i64::try_from(n).unwrap(), sixty_fourths);
            assert_eq!(read(&text, Unit::Millimetre), Ok(right), "{text}");
        }
    }
}

/// Two numbers of two digits, said one after the other. Not in French, where
/// `soixante douze` is 72 and nothing else.
#[test]
fn every_number_said_in_pairs() {
    for n in 1010..10_000_usize {
        if n % 100 < 10 {
            continue;
        }
        let length = Length::from_mm(i64::try_from(n).unwrap());
        let spanish = [numbers::spanish(n / 100), numbers::spanish(n % 100)].join(" ");
        assert_eq!(read(&spanish, Unit::Millimetre), Ok(length), "{spanish}");
    }
}

/// `noventa con cinco` is 90.5 or 90 5/8 to who says it, and a comma or a full stop may be a `coma`
/// or a `punto` that was dictated: inside a number neither adds ones to tens.
#[test]
fn what_joins_a_fraction_is_inside_no_number() {
    for unit in [Unit::Inch, Unit::Millimetre] {
        refused(
            unit,
            &[
                ("noventa con cinco", "unknown", &[]),
                ("noventa con cinco pulgadas", "unknown", &[]),
                ("noventa y seis con cinco", "unknown", &[]),
                ("ochenta con seis y medio", "unknown", &[]),
                ("dos mil trescientos cuarenta con cinco", "unknown", &[]),
                ("noventa, cinco", "unknown", &[]),
                ("noventa. cinco", "unknown", &[]),
                ("noventa. y cinco milímetros", "unknown", &[]),
                ("noventa. cinco y un cuarto pulgadas", "unknown", &[]),
                ("noventa, cinco punto dos", "unknown", &[]),
                ("quatre-vingt, cinq", "unknown", &[]),
                ("Quatre. Vingt pouces.", "unknown", &[]),
                ("soixante, douze", "unknown", &[]),
                ("ninety, five", "unknown", &[]),
                ("one, half", "unknown", &[]),
                ("two, four, four, five", "unknown", &[]),
            ],
        );
    }
    check(&[
        ("noventa con cinco octavos pulgadas", inches(90, 40)),
        ("veinte con tres treintaidosavos pulgadas", inches(20, 6)),
        ("96 con 1/4 pulgadas", inches(96, 16)),
        ("noventa y seis con media pulgadas", inches(96, 32)),
        ("noventa y seis, con un cuarto pulgadas", inches(96, 16)),
        ("ocho pies con seis", feet(8, 6, 0)),
        ("Ninety six. And a quarter inches.", inches(96, 16)),
        ("Ninety six. Inches.", inches(96, 0)),
        ("Ninety six. 1/4 inches", inches(96, 16)),
        ("ninety six, three sixteenths. inches", inches(96, 12)),
        ("ninety six, inches", inches(96, 0)),
        ("96 pulg. y 3/16", inches(96, 12)),
    ]);
}
