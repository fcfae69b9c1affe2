//! The style sheets as one, without comments and needless white space.
//!
//! Only what cannot change the meaning goes: comments; runs of white space become one space; the
//! space beside `{ } ;` and after `,` and `:`. White space before `:` (a selector), around `+ - * /`
//! (inside `calc`) and around combinators stays, and strings are copied as they are.

/// Minifies a style sheet.
pub(crate) fn minify(source: &str) -> String {
    let mut out = String::with_capacity(source.len());
    let mut rest = source;
    while let Some(first) = rest.chars().next() {
        let length = match first {
            '/' if rest.starts_with("/*") => {
                // A comment separates words as a space does.
                space(&mut out);
                rest.find("*/").map_or(rest.len(), |end| end + 2)
            }
            '"' | '\'' => {
                let length = string_length(rest, first);
                out.extend(rest.get(..length));
                length
            }
            _ if first.is_ascii_whitespace() => {
                space(&mut out);
                1
            }
            '{' | '}' | ';' => {
                if out.ends_with(' ') {
                    out.pop();
                }
                if first == '}' && out.ends_with(';') {
                    out.pop();
                }
                out.push(first);
                1
            }
            _ => {
                out.push(first);
                first.len_utf8()
            }
        };
        rest = rest.get(length..).unwrap_or_default();
    }
    out.truncate(out.trim_end().len());
    out
}

fn space(out: &mut String) {
    if !out.is_empty() && !out.ends_with([' ', '{', '}', ';', ',', ':']) {
        out.push(' ');
    }
}

/// Bytes of the string that `text` begins with, both quotes included.
fn string_length(text: &str, quote: char) -> usize {
    let mut escaped = false;
    for (at, letter) in text.char_indices().skip(1) {
        if letter == quote && !escaped {
            return at + letter.len_utf8();
        }
        escaped = letter == '\\' && !escaped;
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::minify;

    #[test]
    fn only_what_has_no_meaning_goes() {
        for (source, expected) in [
            ("a { color : red ; }\n\nb{}", "a{color :red}b{}"),
            ("/* one */ a /* two */ b { x: y }", "a b{x:y}"),
            (
                "nav :hover > a + b { top: calc(1px + 2px) }",
                "nav :hover > a + b{top:calc(1px + 2px)}",
            ),
            ("a::before { content: \" ; /* \\\" } \" }", "a::before{content:\" ; /* \\\" } \"}"),
            (
                "@media (min-width: 30em) and (hover) {\n  a { b: c; }\n}",
                "@media (min-width:30em) and (hover){a{b:c}}",
            ),
            ("a, b { --empty: ; }", "a,b{--empty:}"),
            ("/* never closed", ""),
        ] {
            assert_eq!(minify(source), expected);
        }
    }

    #[test]
    fn again_changes_nothing() {
        let once = minify("a { b : c ; /* d */ }  e > f , g { h : 'i  j' }");
        assert_eq!(minify(&once), once);
    }
}
