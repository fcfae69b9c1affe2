//! A dealer's rules, as the page's JavaScript has fetched them.

use hangtrue_page::core::profile::Profile;
use hangtrue_page::core::say::Language;
use hangtrue_page::link;

/// The rules in this JSON, or what is wrong with it; else what kept the dealer's away; neither
/// where the page goes by no dealer's rules.
pub(crate) fn read(
    language: Language,
    json: Option<String>,
    fault: Option<String>,
) -> Option<Result<Profile, String>> {
    let read = |json: String| {
        link::json::profile::parse(&json).map_err(|error| link::say::profile(language, &error))
    };
    json.map(read).or(fault.map(Err))
}
