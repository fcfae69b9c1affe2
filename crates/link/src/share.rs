//! An order as text: one line for a message, a summary for a mail, addresses that open
//! the mail or message program.
//!
//! The one line is plain ASCII: a `¼` or a `″` would cut a text message from 160
//! characters to 70.

use hangtrue_core::check::{Report, Verdict};
use hangtrue_core::order::Order;
use hangtrue_core::say::{Speaker, capital};
use hangtrue_core::{Dimension, Length, Spot};

use crate::say;

/// `W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in`; `?` for a number that is missing. Where the frame
/// has to be built first that stands behind it, with what was found: nobody cuts a door to a number
/// that is nowhere yet without having been told.
#[must_use]
pub fn line(report: &Report, speaker: Speaker) -> String {
    let unit = speaker.unit.key();
    let words = say::lines(speaker.language);
    let told = |dimension, length: Option<Length>| {
        let mut told = [(words.short)(dimension), " "].concat();
        match length {
            Some(length) => {
                let text = length.text(speaker.unit);
                let bare = text.strip_suffix(unit).unwrap_or(&text).trim_end();
                // An ordered number is a whole number of steps; a mark for "about"
                // would only stand where a profile's step is none of the tape's.
                told.extend(bare.chars().filter(char::is_ascii));
            }
            None => told.push('?'),
        }
        told.push(' ');
        told
    };
    let ordered = |dimension| told(dimension, report.numbers.ordered(dimension));
    let mut line: String = Dimension::ALL.map(ordered).concat() + unit;
    if report.preparation.needed() {
        line.push_str(words.once_built);
        for dimension in Dimension::ALL {
            if report.preparation.change(dimension) != Length::ZERO {
                let found = report.numbers.get(dimension).map(|number| number.as_found);
                line.push_str(&told(dimension, found));
            }
        }
        line.push_str(unit);
        line.push_str(words.measure_again);
    }
    line
}

/// The line, then the link: the text of a message.
#[must_use]
pub fn message(report: &Report, link: &str, speaker: Speaker) -> String {
    [&line(report, speaker), " ", link].concat()
}

/// The whole order as plain text for a mail: numbers, what is to be built, findings,
/// readings as they were typed, the link.
#[must_use]
pub fn summary(order: &Order, report: &Report, link: &str, speaker: Speaker) -> String {
    let words = say::lines(speaker.language);
    let length = |length| speaker.length(length);
    let mut text = String::new();
    let mut put = |parts: &[&str]| {
        for part in parts {
            text.push_str(part);
        }
        text.push('\n');
    };
    put(&[words.heading]);
    for (name, value) in words.about.iter().zip([&order.vehicle, &order.contact, &order.note]) {
        if !value.is_empty() {
            put(&[name, words.colon, value]);
        }
    }
    if let Some(date) = order.date {
        put(&[words.date, words.colon, &date.text()]);
    }
    put(&[]);
    for dimension in Dimension::ALL {
        let name = capital(speaker.dimension(dimension));
        let number = match report.numbers.get(dimension) {
            None => words.not_read.to_owned(),
            Some(number) if report.preparation.change(dimension) != Length::ZERO => {
                (words.built)(&length(number.ordered), &length(number.as_found))
            }
            Some(number) => length(number.ordered),
        };
        put(&[&name, words.colon, &number]);
    }
    let build = &report.preparation;
    if build.needed() {
        put(&["\n", words.build]);
        for (what, by) in
            words.build_by.iter().zip([build.header_down, build.left_out, build.right_out])
        {
            if by != Length::ZERO {
                put(&["- ", what, " ", &length(by)]);
            }
        }
    }
    let [clear, recheck, stop] = words.verdict;
    put(&[
        "\n",
        match report.verdict {
            Verdict::Clear => clear,
            Verdict::Recheck => recheck,
            Verdict::Stop => stop,
        },
    ]);
    for finding in &report.findings {
        put(&["- ", &speaker.say(&finding.message)]);
    }
    put(&["\n", words.readings]);
    for spot in Spot::ALL {
        for entry in order.survey.entries(spot) {
            let replaced = if entry.struck { words.replaced } else { "" };
            put(&[&capital(speaker.spot(spot)), words.colon, &entry.text, replaced]);
        }
    }
    if !link.is_empty() {
        put(&["\n", link]);
    }
    text
}

/// A `mailto:` address (RFC 6068) with subject and text; `to` may be empty.
#[must_use]
pub fn mailto(to: &str, subject: &str, body: &str) -> String {
    let body = body.replace("\r\n", "\n").replace('\n', "\r\n");
    ["mailto:", &escape(to, "@"), "?subject=", &escape(subject, ""), "&body=", &escape(&body, "")]
        .concat()
}

/// An `sms:` address (RFC 5724) with a text; `to` may be empty.
///
/// The empty first field makes telephones of both large makes find the text: one reads
/// `?body=`, the other reads from the first `&`.
#[must_use]
pub fn sms(to: &str, body: &str) -> String {
    ["sms:", &escape(to, "+"), "?&body=", &escape(body, "")].concat()
}

/// Percent-encoded as a part of an address (RFC 3986): all but letters, digits,
/// `-._~` and `keep`.
fn escape(text: &str, keep: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for byte in text.bytes() {
        let letter = char::from(byte);
        if byte.is_ascii_alphanumeric() || "-._~".contains(letter) || keep.contains(letter) {
            escaped.push(letter);
        } else {
            escaped.push('%');
            for half in [byte >> 4, byte & 15] {
                escaped.extend(char::from_digit(half.into(), 16).map(|d| d.to_ascii_uppercase()));
            }
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The reader of another: percent signs undone.
    fn unescape(text: &str) -> String {
        let mut bytes = Vec::new();
        let mut rest = text.bytes();
        while let Some(byte) = rest.next() {
            if byte == b'%' {
                let hex = [rest.next().unwrap(), rest.next().unwrap()];
                bytes.push(u8::from_str_radix(core::str::from_utf8(&hex).unwrap(), 16).unwrap());
            } else {
                bytes.push(byte);
            }
        }
        String::from_utf8(bytes).unwrap()
    }

    proptest! {
        #[test]
        fn whatever_is_shared_arrives(text in "\\PC{0,60}", to in "[a-z]{1,9}@[a-z]{1,9}\\.example") {
            let address = mailto(&to, &text, &text);
            let (head, query) = address.split_once('?').unwrap();
            prop_assert_eq!(head, ["mailto:", &to].concat());
            let (subject, body) = query.split_once('&').unwrap();
            prop_assert_eq!(unescape(subject.strip_prefix("subject=").unwrap()), text.clone());
            prop_assert_eq!(unescape(body.strip_prefix("body=").unwrap()), text.clone());
            let address = sms("+1 555 0100", &text);
            let body = address.strip_prefix("sms:+1%20555%200100?&body=").unwrap();
            prop_assert_eq!(unescape(body), text);
            prop_assert!(address.bytes().all(|byte| byte.is_ascii_graphic()));
        }
    }

    #[test]
    fn nothing_in_a_text_ends_its_field() {
        assert_eq!(
            mailto("", "a&body=b", "#x\n?y"),
            "mailto:?subject=a%26body%3Db&body=%23x%0D%0A%3Fy"
        );
    }
}
