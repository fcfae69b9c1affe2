//! What a caller reads aloud: the numbers in words, digit by digit, then the characters.

use hangtrue_core::{Dimension, Length, Unit};

use super::check::{Said, characters};
use super::words::{figure, spell};
use crate::say::script_words;
use hangtrue_core::say::Language;

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
pub fn script(said: &Said, language: Language) -> Option<Script> {
    let characters = characters(said)?;
    let words = script_words(language);
    let mut lines = vec![match said.unit {
        Unit::Inch => words.inches.to_owned(),
        Unit::Millimetre => words.millimetres.to_owned(),
    }];
    if said.build {
        lines.push(words.build.to_owned());
    }
    for (dimension, number) in Dimension::ALL.into_iter().zip(said.numbers) {
        let name = words.names.get(dimension.index()).copied().unwrap_or_default();
        lines.push(
            [name, words.colon, &number_in_words(number?, said.unit, language), "."].concat(),
        );
    }
    let spelled = spell(&characters, language).join(", ");
    lines.push([words.check, words.colon, &spelled, "."].concat());
    Some(Script { characters, lines })
}

/// `nine two and three sixteenths`.
fn number_in_words(number: Length, unit: Unit, language: Language) -> String {
    let step = match unit {
        Unit::Inch => Length::INCH,
        Unit::Millimetre => Length::MILLIMETRE,
    };
    let whole = number.units(step);
    let rest = number - step.times(whole);
    let sixteenths = rest.units(Length::SIXTEENTH);
    let figures: Vec<&str> =
        whole.to_string().bytes().map(|digit| figure(digit.wrapping_sub(b'0'), language)).collect();
    let figures = figures.join(" ");
    match (fraction(sixteenths, language), whole) {
        (None, _) => figures,
        (Some(fraction), 0) => fraction,
        (Some(fraction), _) => [&figures, script_words(language).and, &fraction].join(" "),
    }
}

/// `three sixteenths`; [`None`] for no sixteenths.
fn fraction(sixteenths: i64, language: Language) -> Option<String> {
    let sixteenths = u32::try_from(sixteenths).ok().filter(|n| (1..16).contains(n))?;
    let shift = sixteenths.trailing_zeros();
    let upper = (sixteenths >> shift) as usize;
    let words = script_words(language);
    // 16, 8, 4, 2 parts for a shift of 0, 1, 2, 3.
    let (one, more) = words.parts.get(shift as usize).copied()?;
    let count = words.counts.get(upper).copied()?;
    Some([count, if upper == 1 { one } else { more }].join(" "))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(unit: Unit, build: bool, steps: [i64; 4]) -> Said {
        Said { unit, build, numbers: steps.map(|n| Some(unit.step().times(n))) }
    }

    #[test]
    fn the_script_is_read_as_people_speak() {
        let script = script(&said(Unit::Inch, true, [1475, 1624, 152, 12]), Language::English);
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
        let spelled = spell(&script.characters, Language::English).join(", ");
        assert_eq!(script.lines[6], format!("The six check characters: {spelled}."));
    }

    #[test]
    fn the_other_languages_say_the_same() {
        let inches = said(Unit::Inch, false, [1475, 1624, 152, 20]);
        let millimetres = said(Unit::Millimetre, false, [2286, 2261, 242, 32]);
        let line =
            |said: &Said, language, at: usize| script(said, language).unwrap().lines[at].clone();
        assert_eq!(
            line(&inches, Language::Spanish, 1),
            "Ancho de poste a poste: nueve dos y tres dieciseisavos."
        );
        assert_eq!(
            line(&inches, Language::French, 4),
            "Profondeur de l’arceau du toit\u{a0}: un et un quart."
        );
        assert_eq!(
            line(&millimetres, Language::French, 1),
            "Largeur de poteau à poteau\u{a0}: deux deux huit six."
        );
        assert_eq!(script(&Said::default(), Language::English), None);
    }
}
