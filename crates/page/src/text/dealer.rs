//! The words around a dealer's own rules.

/// What the page says of a dealer's rules, questions and door lines.
#[derive(Debug)]
pub struct Dealer {
    /// The rules could not be read; what is wrong with them follows.
    pub unread: &'static str,
    /// Whose rules these are.
    pub rules: fn(name: &str, revision: u32) -> String,
    /// An order that was made under other rules than those it is checked by.
    pub other_rules: fn(made_under: &str, checked_by: &str) -> String,
    /// The rules that come with the page.
    pub built_in: &'static str,
    /// Which door line.
    pub door: &'static str,
    /// None yet.
    pub no_door: &'static str,
    /// What a door line needs of the frame.
    pub needs: fn(header: Option<&str>, post: Option<&str>) -> String,
    /// Heading over the dealer's questions.
    pub questions: fn(name: &str) -> String,
    /// Beside a question that need not be answered.
    pub optional: &'static str,
    /// Heading over the answers.
    pub answers: &'static str,
    /// Why a number is what it is where the mean is taken.
    pub mean: fn(count: usize, mean: &str, place: &str, tightest: &str) -> String,
    /// The order's own number.
    pub number: fn(&str) -> String,
    /// To the dealer's page, with the order.
    pub page: fn(name: &str) -> String,
    /// The dealer's telephone.
    pub call: fn(&str) -> String,
    /// Over the ways to the dealer.
    pub send_to: fn(name: &str) -> String,
}
