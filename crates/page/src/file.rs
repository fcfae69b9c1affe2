//! An order as a file to keep, to send along, to put into a spreadsheet.

use crate::effect::Effect;
use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::say::Speaker;
use hangtrue_link::json::Id;
use hangtrue_link::json::order::OrderFile;
use hangtrue_link::json::text::pretty;
use hangtrue_link::{csv, share, url};

/// How an order is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    /// `hangtrue-order/1`, which opens here again, whole.
    Json,
    /// A row of a table under its names.
    Csv,
    /// For people: what goes into a mail.
    Text,
}

impl Format {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 3] = [Self::Json, Self::Csv, Self::Text];

    /// Its name, which ends the file's.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Json => "json",
            Self::Csv => "csv",
            Self::Text => "txt",
        }
    }

    /// The format of a name.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|format| format.key() == key)
    }

    pub(crate) const fn media(self) -> &'static str {
        match self {
            Self::Json => "application/json",
            Self::Csv => "text/csv;charset=utf-8",
            Self::Text => "text/plain;charset=utf-8",
        }
    }
}

/// Hands `order` over as a file; `base` is the address that its link begins with, `id`
/// what it is called.
#[must_use]
pub fn download(
    format: Format,
    id: &str,
    (order, report): (&Order, &Report),
    base: &str,
    speaker: Speaker,
) -> Effect {
    let link = url(base, order).unwrap_or_default();
    let text = match format {
        Format::Json => {
            let id = if id.is_empty() { Id::None } else { Id::Text(id.to_owned()) };
            let file = OrderFile::new(id, order, report);
            [&pretty(&file.tree()), "\n"].concat()
        }
        // The mark tells a spreadsheet that it is UTF-8.
        Format::Csv => {
            let row = csv::order(id, order, report, &link);
            ["\u{feff}", &csv::line(&csv::ORDER_COLUMNS), &csv::line(&row)].concat()
        }
        Format::Text => share::summary(order, report, &link, speaker).replace('\n', "\r\n"),
    };
    let called = if order.vehicle.is_empty() { id } else { &order.vehicle };
    Effect::Download { name: name(called, format), media: format.media(), text }
}

/// `order-unit-7.json`: plain letters and digits, for any device.
pub(crate) fn name(called: &str, format: Format) -> String {
    let mut name = "order".to_owned();
    let plain = called.split(|letter: char| !letter.is_ascii_alphanumeric());
    for word in plain.filter(|word| !word.is_empty()).take(6) {
        name.push('-');
        name.extend(word.chars().take(20).map(|letter| letter.to_ascii_lowercase()));
    }
    [&name, ".", format.key()].concat()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_files_name_is_plain() {
        assert_eq!(name("Unit 7, blue box", Format::Json), "order-unit-7-blue-box.json");
        assert_eq!(name("", Format::Csv), "order.csv");
        assert_eq!(name("../../é\u{202e}x", Format::Text), "order-x.txt");
        for format in Format::ALL {
            assert_eq!(Format::from_key(format.key()), Some(format));
        }
    }
}
