//! How an order's own number is made. There is no server that counts, so it is made
//! from what the order holds: its day, its check characters, the truck.

use crate::order::{Date, Order};

/// A number's parts, in their order.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Numbering(Vec<Part>);

/// One part of a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Part {
    /// As it stands.
    Text(String),
    /// `{date}`: the day, as 20240131; nothing where the device did not say.
    Date,
    /// `{check}`: the order's check characters, which change with every number in it.
    Check,
    /// `{vehicle}`: what the writer calls the truck, letters and digits of it.
    Vehicle,
}

/// What is wrong with a format.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NumberError {
    /// A `{` without its `}`, or the other way round.
    Brace,
    /// A name in braces that means nothing.
    Unknown(String),
    /// Without `{check}` two orders of one day would have the same number.
    NoCheck,
    /// Longer than 40 characters, or a character that is none of letters, digits, `-./ `.
    Text,
}

/// The most characters of a format.
const MOST: usize = 40;

impl Numbering {
    /// The parts' names, as they stand in braces.
    pub const NAMES: [&'static str; 3] = ["date", "check", "vehicle"];

    /// The parts of a format such as `PD-{date}-{check}`.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(format: &str) -> Result<Self, NumberError> {
        if format.chars().count() > MOST {
            return Err(NumberError::Text);
        }
        let mut parts = Vec::new();
        let mut rest = format;
        while !rest.is_empty() {
            let (text, after) = rest.split_once('{').map_or((rest, None), |(a, b)| (a, Some(b)));
            if text.contains('}') {
                return Err(NumberError::Brace);
            }
            let plain = |c: char| c.is_ascii_alphanumeric() || "-./ ".contains(c);
            if !text.chars().all(plain) {
                return Err(NumberError::Text);
            }
            if !text.is_empty() {
                parts.push(Part::Text(text.to_owned()));
            }
            let Some(after) = after else { break };
            let (name, next) = after.split_once('}').ok_or(NumberError::Brace)?;
            parts.push(match name {
                "date" => Part::Date,
                "check" => Part::Check,
                "vehicle" => Part::Vehicle,
                other => return Err(NumberError::Unknown(other.to_owned())),
            });
            rest = next;
        }
        if !parts.contains(&Part::Check) {
            return Err(NumberError::NoCheck);
        }
        Ok(Self(parts))
    }

    /// The number of `order`, whose check characters are `check`.
    #[must_use]
    pub fn number(&self, order: &Order, check: &str) -> String {
        let mut number = String::new();
        for part in &self.0 {
            match part {
                Part::Text(text) => number += text,
                Part::Date => number += &order.date.map(day).unwrap_or_default(),
                Part::Check => number.extend(check.chars().filter(char::is_ascii_alphanumeric)),
                Part::Vehicle => {
                    number.extend(order.vehicle.chars().filter(|c| c.is_alphanumeric()).take(16));
                }
            }
        }
        number
    }
}

/// 20240131.
fn day(date: Date) -> String {
    let whole = u32::from(date.year).saturating_mul(100).saturating_add(u32::from(date.month));
    whole.saturating_mul(100).saturating_add(u32::from(date.day)).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_is_made_of_what_the_order_holds() {
        let numbering = Numbering::parse("PD-{date}-{vehicle}-{check}").unwrap();
        let mut order = Order {
            date: Some(Date { year: 2031, month: 4, day: 9 }),
            vehicle: "Unit 7/b".into(),
            ..Order::default()
        };
        assert_eq!(numbering.number(&order, "K7P 2QX"), "PD-20310409-Unit7b-K7P2QX");
        order.date = None;
        assert_eq!(numbering.number(&order, "K7P2QX"), "PD--Unit7b-K7P2QX");
    }

    #[test]
    fn a_format_is_read_strictly() {
        for (format, error) in [
            ("{check", NumberError::Brace),
            ("check}", NumberError::Brace),
            ("{count}-{check}", NumberError::Unknown("count".into())),
            ("PD-{date}", NumberError::NoCheck),
            ("", NumberError::NoCheck),
            ("<b>{check}", NumberError::Text),
            ("{check}\n", NumberError::Text),
        ] {
            assert_eq!(Numbering::parse(format), Err(error), "{format}");
        }
        assert_eq!(Numbering::parse(&"x".repeat(41)), Err(NumberError::Text));
    }
}
