//! The survey's markup as it is in another's page: with the names under which the host's
//! style sheet reaches it, `hangtrue-survey::part(button)`, and without the landmarks of a
//! page. Those are the host's: it has its own main part, head, foot and ways.

/// What becomes what, by how the markup begins. Text cannot begin so: the views escape it.
const PARTS: [(&str, &str); 13] = [
    ("<main id=\"main\" class=\"", "<div id=\"main\" class=\"screen "),
    ("</main>", "</div>"),
    ("<header ", "<div "),
    ("</header>", "</div>"),
    ("<footer ", "<div "),
    ("</footer>", "</div>"),
    ("<nav ", "<div role=\"group\" "),
    ("</nav>", "</div>"),
    ("<button class=\"primary", "<button part=\"primary button\" class=\"primary"),
    ("<button class", "<button part=\"button\" class"),
    ("<button type", "<button part=\"button\" type"),
    ("<h1 ", "<h1 part=\"heading\" "),
    ("<input ", "<input part=\"field\" "),
];

/// `markup` as a guest.
pub(super) fn as_guest(markup: &str) -> String {
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
    use super::as_guest;

    #[test]
    fn only_tags_are_named_and_nothing_is_lost() {
        let markup = "<h1 id=\"heading\">&lt;h1 x</h1><button class=\"primary\" type=\"submit\">\
                      Go</button><button type=\"button\">B</button><input id=\"a\"> end";
        let expected = "<h1 part=\"heading\" id=\"heading\">&lt;h1 x</h1><button part=\"primary \
                        button\" class=\"primary\" type=\"submit\">Go</button><button \
                        part=\"button\" type=\"button\">B</button><input part=\"field\" id=\"a\"> \
                        end";
        assert_eq!(as_guest(markup), expected);
        assert_eq!(as_guest("plain"), "plain");
        let page = "<header class=\"top\"></header><main id=\"main\" class=\"step-start\">a</main>\
                    <footer class=\"foot\"></footer>";
        let guest = "<div class=\"top\"></div><div id=\"main\" class=\"screen step-start\">a</div>\
                     <div class=\"foot\"></div>";
        assert_eq!(as_guest(page), guest);
    }

    /// Every button, heading and field of the walk is reached.
    #[test]
    fn the_walk_has_its_parts() {
        let markup = as_guest(&hangtrue_page::first_screen());
        for landmark in ["main", "header", "footer", "nav"] {
            assert!(!markup.contains(&["<", landmark].concat()), "{landmark} is the host's");
        }
        for (tag, part) in [("<button", "part=\""), ("<h1", "part=\""), ("<input", "part=\"")] {
            assert!(markup.contains(tag));
            for at in markup.match_indices(tag).map(|(at, _)| at) {
                let end = at + markup[at..].find('>').unwrap();
                assert!(markup[at..end].contains(part), "{}", &markup[at..end]);
            }
        }
    }
}
