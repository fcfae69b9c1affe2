//! The names under which a host page's style sheet reaches what a survey shows:
//! `hangtrue-survey::part(button)`.

/// What is named, by how its markup begins. Text cannot begin so: the views escape it.
const PARTS: [(&str, &str); 5] = [
    ("<button class=\"primary", "<button part=\"primary button\" class=\"primary"),
    ("<button class", "<button part=\"button\" class"),
    ("<button type", "<button part=\"button\" type"),
    ("<h1 ", "<h1 part=\"heading\" "),
    ("<input ", "<input part=\"field\" "),
];

/// `markup` with its parts named.
pub(super) fn named(markup: &str) -> String {
    let mut named = String::with_capacity(markup.len().saturating_add(512));
    let mut rest = markup;
    while let Some(at) = rest.find('<') {
        let (text, tag) = rest.split_at(at);
        named.push_str(text);
        let part = PARTS.iter().find(|(begins, _)| tag.starts_with(begins));
        let (begins, becomes) = part.map_or(("<", "<"), |(begins, becomes)| (*begins, *becomes));
        named.push_str(becomes);
        rest = tag.get(begins.len()..).unwrap_or_default();
    }
    named.push_str(rest);
    named
}

#[cfg(test)]
mod tests {
    use super::named;

    #[test]
    fn only_tags_are_named_and_nothing_is_lost() {
        let markup = "<h1 id=\"heading\">&lt;h1 x</h1><button class=\"primary\" type=\"submit\">\
                      Go</button><button type=\"button\">B</button><input id=\"a\"> end";
        let expected = "<h1 part=\"heading\" id=\"heading\">&lt;h1 x</h1><button part=\"primary \
                        button\" class=\"primary\" type=\"submit\">Go</button><button \
                        part=\"button\" type=\"button\">B</button><input part=\"field\" id=\"a\"> \
                        end";
        assert_eq!(named(markup), expected);
        assert_eq!(named("plain"), "plain");
    }

    /// Every button, heading and field of the walk is reached.
    #[test]
    fn the_walk_has_its_parts() {
        let markup = named(&hangtrue_page::first_screen());
        for (tag, part) in [("<button", "part=\""), ("<h1", "part=\""), ("<input", "part=\"")] {
            assert!(markup.contains(tag));
            for at in markup.match_indices(tag).map(|(at, _)| at) {
                let end = at + markup[at..].find('>').unwrap();
                assert!(markup[at..end].contains(part), "{}", &markup[at..end]);
            }
        }
    }
}
