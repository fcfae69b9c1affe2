//! What is typed in named fields, as it was typed.

/// Texts by the names of their fields. A field that was left blank is not there.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Fields(Vec<(String, String)>);

/// The most fields that are kept, and the longest text: a draft is bounded.
const MOST: usize = 200;
const LONGEST: usize = 400;
/// What the names of the readings that the record keeps begin with.
pub(super) const BUILT: &str = "built.";
/// A whole message with a link, or a whole file, is pasted here.
pub(super) const PASTE: &str = "paste";
pub(super) const PASTE_MOST: usize = 32 * 1024;

impl Fields {
    /// What is typed in `name`.
    #[must_use]
    pub fn get(&self, name: &str) -> &str {
        self.0.iter().find(|(known, _)| known == name).map_or("", |(_, text)| text)
    }

    /// Whether a box of that name is ticked.
    #[must_use]
    pub fn ticked(&self, name: &str) -> bool {
        self.get(name) == "yes"
    }

    /// Types `text` in `name`.
    pub fn set(&mut self, name: &str, text: &str) {
        let most = if name == PASTE { PASTE_MOST } else { LONGEST };
        let text: String = text.chars().filter(|c| !c.is_control()).take(most).collect();
        let at = self.0.iter().position(|(known, _)| known == name);
        match (at, text.is_empty()) {
            (Some(at), true) => {
                self.0.remove(at);
            }
            (Some(at), false) => {
                if let Some((_, kept)) = self.0.get_mut(at) {
                    *kept = text;
                }
            }
            (None, true) => {}
            (None, false) if self.0.len() < MOST => self.0.push((name.to_owned(), text)),
            (None, false) => {}
        }
    }

    /// Puts what `text` makes of each text in its place.
    pub(super) fn change(&mut self, text: impl Fn(&str, &str) -> String) {
        for (name, kept) in &mut self.0 {
            *kept = text(name, kept);
        }
    }

    /// Ticks a box, or takes the tick away.
    pub fn tick(&mut self, name: &str) {
        let now = if self.ticked(name) { "" } else { "yes" };
        self.set(name, now);
    }

    /// One line a field; what was pasted is not kept.
    #[must_use]
    pub fn text(&self) -> String {
        let kept = self.0.iter().filter(|(name, _)| name != PASTE);
        let lines = kept.flat_map(|(name, text)| [name, "\t", text, "\n"]);
        lines.collect()
    }

    /// The fields of such lines; anything else in them is left out.
    #[must_use]
    pub fn from_text(text: &str) -> Self {
        let mut fields = Self::default();
        for (name, value) in text.lines().filter_map(|line| line.split_once('\t')) {
            let name: String = name.chars().filter(|c| !c.is_control()).take(40).collect();
            fields.set(&name, value);
        }
        fields
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_typed_is_kept_and_comes_back_from_its_text() {
        let mut fields = Fields::default();
        fields.set("weight", "132 lb");
        fields.set("note", "two\tlines\nin one");
        fields.tick("part.0");
        fields.tick("part.1");
        fields.tick("part.1");
        assert_eq!(fields.get("note"), "twolinesin one");
        assert!(fields.ticked("part.0") && !fields.ticked("part.1"));
        assert_eq!(Fields::from_text(&fields.text()), fields);
        fields.set("weight", "");
        assert_eq!(fields.get("weight"), "");
        assert_eq!(Fields::from_text("no tab here\n\t\n"), Fields::default());
    }

    #[test]
    fn a_draft_is_bounded() {
        let mut fields = Fields::default();
        for n in 0..1000 {
            fields.set(&n.to_string(), &"x".repeat(1000));
        }
        assert!(fields.text().len() <= MOST * (LONGEST + 10));
    }
}
