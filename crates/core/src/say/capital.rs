//! A sentence begins with a capital.

/// `text` with its first letter in upper case: the letters of English, Spanish and
/// French, without the tables for every script there is.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let Some(first) = letters.next() else { return String::new() };
    let upper = match first {
        'à'..='þ' if first != '÷' => {
            // In Latin-1 the capitals stand 32 before the small letters.
            char::from_u32(u32::from(first).saturating_sub(32)).unwrap_or(first)
        }
        'œ' => 'Œ',
        _ => first.to_ascii_uppercase(),
    };
    let mut capital = String::from(upper);
    capital.push_str(letters.as_str());
    capital
}

#[cfg(test)]
mod tests {
    use super::capital;

    #[test]
    fn it_does_what_the_standard_tables_do() {
        for first in ('a'..='z').chain('à'..='þ').chain(['œ', '1', 'Ä', '“']) {
            let text = format!("{first}ße");
            let upper: String = first.to_uppercase().collect();
            assert_eq!(capital(&text), format!("{upper}ße"));
        }
        assert_eq!(capital(""), "");
    }
}
