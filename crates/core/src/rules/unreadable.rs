//! A text that is no reading stops the order: nobody knows what was on the tape.

use super::{Context, Rule};
use crate::finding::{Finding, Severity};
use crate::say::{Hint, Message};
use crate::spot::Spot;

pub(super) const RULE: Rule = Rule { code: "unreadable", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for spot in Spot::ALL {
        for entry in
            context.survey.entries(spot).iter().filter(|entry| !entry.struck && !entry.is_blank())
        {
            let Err(error) = &entry.read else { continue };
            let mut hints: Vec<Message> = error
                .suggestions
                .iter()
                .map(|suggestion| Hint::DidYouMean(suggestion.text.clone()).into())
                .collect();
            if hints.is_empty() {
                hints.push(Hint::ReadAgain(spot).into());
            }
            let message =
                Message::Unreadable { spot, text: entry.text.clone(), error: error.clone() };
            found.push(RULE.finds(Severity::Stop, vec![spot], message, hints));
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::{found, survey};

    #[test]
    fn a_word_stops_and_a_number_does_not() {
        let mut s = survey(&[]);
        assert!(found(&s, "unreadable").is_empty());
        s.add(crate::Spot::WidthLow, "about so");
        assert_eq!(found(&s, "unreadable"), ["stop width.low"]);
        s.entries_mut(crate::Spot::WidthLow).last_mut().unwrap().struck = true;
        assert!(found(&s, "unreadable").is_empty());
    }
}
