//! The builder: a dealer's profile filled in by form, with the survey it makes beside it.
//!
//! The form is made from the profile's published JSON Schema, so a new key of the format
//! appears by itself. What is wrong is what the profile's own reader says, at its place.
//! The file is kept as a tree: keys stay in their order, and what no field shows stays.

mod schema;
mod text;
mod tree;
mod update;
mod view;

pub use update::update;
pub use view::view;

use crate::language::title;
use crate::model::Environment;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_link::json::FileError;
use hangtrue_link::json::profile::{FORMAT, parse};
use hangtrue_link::json::text::{self as json, Node, print};

/// The name under which the profile is downloaded.
const PROFILE: &str = "profile.json";

/// What the builder asks of the browser.
#[derive(Clone, Debug, PartialEq)]
pub enum Effect {
    /// What the walk asks for too.
    Page(crate::Effect),
    /// Let the survey beside the form go by this profile.
    Show(String),
    /// Whether the browser is to ask before this page is left.
    AskBeforeLeaving(bool),
}

/// What the page gives the builder to work with.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Given {
    /// The profile's JSON Schema.
    pub schema: String,
    /// The lines for a webmaster, with the hashes of this build.
    pub snippet: String,
}

/// Everything the screen shows, and nothing else.
#[derive(Clone, Debug, PartialEq)]
pub struct Model {
    /// What the page is told of its surroundings.
    pub environment: Environment,
    schema: Node<'static>,
    tree: Node<'static>,
    /// The profile as it was last opened or downloaded, and before that as it was at first.
    saved: Node<'static>,
    /// Whether the browser asks before the page is left.
    asks_before_leaving: bool,
    profile: Result<Profile, FileError>,
    /// What is wrong with the file that was to be opened.
    unread: Option<String>,
    /// The groups that are unfolded.
    open: Vec<String>,
    snippet: String,
    /// Whether anything has been typed, chosen or opened. Before that nothing is wrong.
    begun: bool,
}

impl Default for Model {
    fn default() -> Self {
        Self::new(Environment::default(), &Given::default())
    }
}

impl Model {
    /// A profile with nothing in it but what the format itself says.
    #[must_use]
    pub fn new(environment: Environment, given: &Given) -> Self {
        let schema = json::parse(&given.schema).map_or_else(|_| Node::object(), Node::into_owned);
        let tree = blank();
        let profile = parse(&print(&tree));
        let snippet = given.snippet.clone();
        Self {
            environment,
            schema,
            saved: tree.clone(),
            tree,
            asks_before_leaving: false,
            profile,
            unread: None,
            open: Vec::new(),
            snippet,
            begun: false,
        }
    }

    /// The language the page speaks.
    #[must_use]
    pub const fn language(&self) -> Language {
        self.environment.language
    }

    const fn words(&self) -> &'static text::Words {
        text::of(self.language())
    }

    /// Marks the document as what it is, where that is not what it came as: English.
    #[must_use]
    pub fn greeting(&self) -> Option<Effect> {
        (self.language() != Language::English).then(|| self.speak())
    }

    fn speak(&self) -> Effect {
        let title = title(self.language(), self.words().heading);
        Effect::Page(crate::Effect::Speak(self.language(), title))
    }

    /// The profile as a file.
    #[must_use]
    pub fn file(&self) -> String {
        json::pretty(&self.tree) + "\n"
    }

    /// What is wrong with it.
    #[must_use]
    pub fn fault(&self) -> Option<&FileError> {
        self.profile.as_ref().err()
    }

    /// The lines for a webmaster, with the address this page was opened at.
    #[must_use]
    pub fn snippet(&self) -> String {
        let (folder, _) = self.environment.base.rsplit_once('/').unwrap_or_default();
        let origin = folder.split('/').take(3).collect::<Vec<_>>().join("/");
        let script = ["src=\"", folder, "/embed/"].concat();
        self.snippet.replace("src=\"embed/", &script).replace("HOST", &origin)
    }
}

/// A profile with nothing in it but what the format itself says.
fn blank() -> Node<'static> {
    let mut tree = Node::object();
    tree::set(&mut tree, "format", Some(Node::text(FORMAT)));
    tree::set(&mut tree, "revision", Some(json::Value::Number(1_u64.into()).into()));
    tree
}

#[cfg(test)]
mod tests;
