//! A door's record, as a link and as a file.

use hangtrue_core::say::Language;
use hangtrue_link::json::record as file;
use hangtrue_link::record::{Opened, decode, encode};
use hangtrue_link::{LinkError, PAYLOAD_MOST};

use crate::forge;

/// A record that is read is written and read as the same, by link and by file.
pub(crate) fn holds(bytes: &[u8]) {
    let text = &super::text(bytes);
    match file::parse(text) {
        Ok(record) => {
            assert_eq!(file::parse(&file::text(&record)).as_ref(), Ok(&record), "{text}");
            if let Ok(payload) = encode(&record) {
                assert_eq!(decode(&payload), Ok(Opened::Record(Box::new(record))), "{text}");
            }
        }
        Err(error) => {
            for language in Language::ALL {
                assert!(hangtrue_link::say::file(language, &error).len() < 600, "{text}");
            }
        }
    }
    let _ = decode(text);
    let symbols: Vec<u8> = bytes.iter().map(|byte| byte & 31).collect();
    let forged = forge::sealed(forge::RECORD, &symbols);
    if forged.len() > PAYLOAD_MOST {
        return;
    }
    match decode(&forged) {
        Ok(Opened::Record(record)) => {
            assert_eq!(file::parse(&file::text(&record)).as_ref(), Ok(&*record));
            assert_eq!(encode(&record), Ok(forged));
        }
        Ok(Opened::Order(_)) => panic!("{forged} is no order"),
        Err(error) => assert_eq!(error, LinkError::Contents),
    }
}
