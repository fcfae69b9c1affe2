//! The page's style sheets as those of the element: inside a shadow root, in any width,
//! in the host page's colours.

/// What a host page may set, and the property of ours that it sets. A promise: a name
/// here stays.
pub(crate) const PROMISED: [(&str, &str, &str); 8] = [
    ("ink", "--hangtrue-ink", "Text and lines."),
    ("paper", "--hangtrue-paper", "What they stand on."),
    ("accent", "--hangtrue-accent", "Buttons that go on, and marks."),
    ("on-accent", "--hangtrue-on-accent", "Text on the accent."),
    ("stop", "--hangtrue-stop", "What stops an order."),
    ("radius", "--hangtrue-radius", "Corners of fields and buttons."),
    ("numerals", "--hangtrue-numerals", "Fonts of readings and numbers."),
    ("font", "--hangtrue-font", "Fonts of everything else."),
];

/// `source`, the page's sheets one after the other, for a shadow root.
///
/// `:root`, `html` and `body` become the element's inner box; the width that counts is
/// that box's; the scheme is the element's `theme` before it is the reader's own.
pub(crate) fn for_shadow(source: &str) -> String {
    let source = with_host_properties(source);
    let source = source
        .replace("@media (min-width:", "@container hangtrue (min-width:")
        .replace("@media (max-width:", "@container hangtrue (max-width:")
        .replace("100vw", "100cqi");
    let mut out = String::with_capacity(source.len() + 1024);
    let mut rest = source.as_str();
    while let Some(at) = rest.find(DARK) {
        let (before, dark) = rest.split_at(at);
        out.push_str(&rooted(before));
        let dark = dark.get(DARK.len()..).unwrap_or_default();
        let (block, after) = dark.split_at(end_of_block(dark));
        let block = block.trim_end_matches('}').replace(":root", "&");
        out.push_str(&format!(
            "@media (prefers-color-scheme: dark) {{ #app[data-theme=\"auto\"] {{ {block} }} }}\n\
             #app[data-theme=\"dark\"] {{ {block} }}\n"
        ));
        rest = after;
    }
    out.push_str(&rooted(rest));
    out
}

const DARK: &str = "@media (prefers-color-scheme: dark) {";

/// Bytes up to and with the brace that closes a block that is already open.
fn end_of_block(text: &str) -> usize {
    let mut depth = 1_usize;
    for (at, byte) in text.bytes().enumerate() {
        match byte {
            b'{' => depth += 1,
            b'}' => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return at + 1;
        }
    }
    text.len()
}

fn rooted(text: &str) -> String {
    let mut out = text.replace(":root", "#app");
    for whole in ["html", "body"] {
        out = out.replace(&format!("\n{whole} {{"), "\n#app {");
    }
    out
}

/// Every declaration of a promised property takes the host page's before its own.
fn with_host_properties(source: &str) -> String {
    let mut out = String::with_capacity(source.len() + 1024);
    for line in source.lines() {
        let declared = line.trim_start().strip_prefix("--").and_then(|rest| rest.split_once(": "));
        let promised = declared.and_then(|(name, value)| {
            let (_, host, _) = PROMISED.iter().find(|(own, ..)| *own == shown_as(name))?;
            Some(format!("  --{name}: var({host}, {});", value.trim_end_matches(';')))
        });
        out.push_str(promised.as_deref().unwrap_or(line));
        out.push('\n');
    }
    out
}

/// Soft ink is ink, a sheet is paper, for a host page that sets only these.
fn shown_as(name: &str) -> &str {
    match name {
        "ink-soft" => "ink",
        "sheet" | "stop-sheet" | "ask-sheet" => "paper",
        name => name,
    }
}

#[cfg(test)]
mod tests {
    use super::for_shadow;

    #[test]
    fn the_root_is_the_elements_box_and_the_scheme_its_own() {
        let source = ":root {\n  --ink: #14171a;\n  --rule: #ccc;\n}\n\nhtml {\n  color: red;\n}\n\
            @media (prefers-color-scheme: dark) {\n  :root {\n  --ink: #fff;\n  }\n  .a {\n  b: c;\n  }\n}\n\
            @media (min-width: 800px) {\n  .html body.b {\n    d: e;\n  }\n}\n";
        let made = for_shadow(source);
        assert!(
            made.starts_with("#app {\n  --ink: var(--hangtrue-ink, #14171a);\n  --rule: #ccc;\n}")
        );
        assert!(made.contains("\n#app {\n  color: red;\n}"), "{made}");
        assert_eq!(made.matches("--ink: var(--hangtrue-ink, #fff)").count(), 2);
        assert!(made.contains("#app[data-theme=\"auto\"] {"), "{made}");
        assert!(made.contains("#app[data-theme=\"dark\"] {"));
        assert!(made.contains("@container hangtrue (min-width: 800px) {"));
        assert!(made.contains(".html body.b"));
        assert_eq!(made.matches('{').count(), made.matches('}').count());
    }
}
