//! What a caller reads aloud: the numbers in words, digit by digit, then the characters.

use hangtrue_core::{Dimension, Length, Unit};

use super::check::{Said, characters};
use super::words::{Tongue, spell};

/// The script, a line a breath.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Script {
    /// The six check characters, to show beside it.
    pub characters: String,
    /// What to say.
    pub lines: Vec<String>,
}

/// The script for `said`; [`None`] while there are no check characters.
#[must_use]
pub fn script(said: &Said, tongue: Tongue) -> Option<Script> {
    let characters = characters(said)?;
    let words = tongue.words();
    let mut lines = vec![words.unit(said.unit).to_owned()];
    if said.build {
        lines.push(words.build.to_owned());
    }
    for (dimension, number) in Dimension::ALL.into_iter().zip(said.numbers) {
        let name = words.names.get(dimension.index()).copied().unwrap_or_default();
        lines.push([name, ": ", &number_in_words(number?, said.unit, tongue), "."].concat());
    }
    let spelled = spell(&characters, tongue).join(", ");
    lines.push([words.check, ": ", &spelled, "."].concat());
    Some(Script { characters, lines })
}

/// `nine two and three sixteenths`.
fn number_in_words(number: Length, unit: Unit, tongue: Tongue) -> String {
    let step = match unit {
        Unit::Inch => Length::INCH,
        Unit::Millimetre => Length::MILLIMETRE,
    };
    let whole = number.nm().checked_div(step.nm()).unwrap_or_default();
    let rest = number - step.times(whole);
    let sixteenths = rest.nm().checked_div(Length::SIXTEENTH.nm()).unwrap_or_default();
    let figures: Vec<&str> =
        whole.to_string().bytes().map(|figure| tongue.figure(figure.wrapping_sub(b'0'))).collect();
    let figures = figures.join(" ");
    match (fraction(sixteenths, tongue), whole) {
        (None, _) => figures,
        (Some(fraction), 0) => fraction,
        (Some(fraction), _) => [&figures, tongue.words().and, &fraction].join(" "),
    }
}

/// `three sixteenths`; [`None`] for no sixteenths.
fn fraction(sixteenths: i64, tongue: Tongue) -> Option<String> {
    let sixteenths = u32::try_from(sixteenths).ok().filter(|n| (1..16).contains(n))?;
    let shift = sixteenths.trailing_zeros();
    let upper = (sixteenths >> shift) as usize;
    let words = tongue.words();
    // 16, 8, 4, 2 parts for a shift of 0, 1, 2, 3.
    let (one, more) = words.parts.get(shift as usize).copied()?;
    let count = words.counts.get(upper).copied()?;
    Some([count, if upper == 1 { one } else { more }].join(" "))
}

struct Words {
    inches: &'static str,
    millimetres: &'static str,
    build: &'static str,
    names: [&'static str; 4],
    check: &'static str,
    and: &'static str,
    /// Sixteenth, eighth, quarter, half: one and more.
    parts: [(&'static str, &'static str); 4],
    /// 0 to 15 before a fraction.
    counts: [&'static str; 16],
}

impl Words {
    const fn unit(&self, unit: Unit) -> &'static str {
        match unit {
            Unit::Inch => self.inches,
            Unit::Millimetre => self.millimetres,
        }
    }
}

impl Tongue {
    const fn words(self) -> &'static Words {
        match self {
            Self::English => &ENGLISH,
            Self::Spanish => &SPANISH,
            Self::French => &FRENCH,
        }
    }
}

static ENGLISH: Words = Words {
    inches: "A rear door order, in inches. I say the numbers digit by digit.",
    millimetres: "A rear door order, in millimeters. I say the numbers digit by digit.",
    build: "The numbers are for the frame after it is built.",
    names: ["Post-to-post width", "Sill-to-header height", "Header depth", "Roof-bow depth"],
    check: "The six check characters",
    and: "and",
    parts: [
        ("sixteenth", "sixteenths"),
        ("eighth", "eighths"),
        ("quarter", "quarters"),
        ("half", "halves"),
    ],
    counts: [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve", "thirteen", "fourteen", "fifteen",
    ],
};

static SPANISH: Words = Words {
    inches: "Un pedido de puerta trasera, en pulgadas. Digo los números cifra por cifra.",
    millimetres: "Un pedido de puerta trasera, en milímetros. Digo los números cifra por cifra.",
    build: "Los números son del marco ya preparado.",
    names: [
        "Ancho de poste a poste",
        "Altura del umbral al dintel",
        "Profundidad del dintel",
        "Profundidad del arco del techo",
    ],
    check: "Los seis caracteres de control",
    and: "y",
    parts: [
        ("dieciseisavo", "dieciseisavos"),
        ("octavo", "octavos"),
        ("cuarto", "cuartos"),
        ("medio", "medios"),
    ],
    counts: [
        "cero", "un", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez",
        "once", "doce", "trece", "catorce", "quince",
    ],
};

static FRENCH: Words = Words {
    inches: "Une commande de porte arrière, en pouces. Je dis les nombres chiffre par chiffre.",
    millimetres: "Une commande de porte arrière, en millimètres. Je dis les nombres chiffre par \
                  chiffre.",
    build: "Les nombres sont ceux du cadre une fois préparé.",
    names: [
        "Largeur de poteau à poteau",
        "Hauteur du seuil au linteau",
        "Profondeur du linteau",
        "Profondeur de l’arceau du toit",
    ],
    check: "Les six caractères de contrôle",
    and: "et",
    parts: [
        ("seizième", "seizièmes"),
        ("huitième", "huitièmes"),
        ("quart", "quarts"),
        ("demi", "demis"),
    ],
    counts: [
        "zéro", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix",
        "onze", "douze", "treize", "quatorze", "quinze",
    ],
};

#[cfg(test)]
mod tests {
    use super::*;

    fn said(unit: Unit, build: bool, steps: [i64; 4]) -> Said {
        Said { unit, build, numbers: steps.map(|n| Some(unit.step().times(n))) }
    }

    #[test]
    fn the_script_is_read_as_people_speak() {
        let script = script(&said(Unit::Inch, true, [1475, 1624, 152, 12]), Tongue::English);
        let script = script.unwrap();
        let expected = [
            "A rear door order, in inches. I say the numbers digit by digit.",
            "The numbers are for the frame after it is built.",
            "Post-to-post width: nine two and three sixteenths.",
            "Sill-to-header height: one zero one and one half.",
            "Header depth: nine and one half.",
            "Roof-bow depth: three quarters.",
        ];
        assert_eq!(script.lines[..6], expected);
        let spelled = spell(&script.characters, Tongue::English).join(", ");
        assert_eq!(script.lines[6], format!("The six check characters: {spelled}."));
    }

    #[test]
    fn the_other_languages_say_the_same() {
        let inches = said(Unit::Inch, false, [1475, 1624, 152, 20]);
        let millimetres = said(Unit::Millimetre, false, [2286, 2261, 242, 32]);
        let line = |said: &Said, tongue, at: usize| script(said, tongue).unwrap().lines[at].clone();
        assert_eq!(
            line(&inches, Tongue::Spanish, 1),
            "Ancho de poste a poste: nueve dos y tres dieciseisavos."
        );
        assert_eq!(
            line(&inches, Tongue::French, 4),
            "Profondeur de l’arceau du toit: un et un quart."
        );
        assert_eq!(
            line(&millimetres, Tongue::French, 1),
            "Largeur de poteau à poteau: deux deux huit six."
        );
        assert_eq!(script(&Said::default(), Tongue::English), None);
    }
}
