//! The browser engines, and how each is started.

use std::env;

use anyhow::Result;
use serde_json::{Map, Value};

use crate::driver::Group;

mod chromium;

/// A browser engine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Blink.
    Chromium,
    /// Gecko.
    Firefox,
    /// WebKitGTK.
    WebKit,
}

impl Engine {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Chromium, Self::Firefox, Self::WebKit];

    /// The name printed beside a scenario.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Chromium => "chromium",
            Self::Firefox => "firefox",
            Self::WebKit => "webkit",
        }
    }

    /// Why the engine cannot be used here, if it cannot.
    #[must_use]
    pub fn lacks(self) -> Option<String> {
        let needed: &[&str] = match self {
            Self::Chromium => &["chromium", "chromedriver"],
            Self::Firefox | Self::WebKit => return Some("not driven by this suite yet".to_owned()),
        };
        let missing: Vec<&str> =
            needed.iter().copied().filter(|program| !is_installed(program)).collect();
        (!missing.is_empty()).then(|| format!("not installed: {}", missing.join(", ")))
    }

    /// Starts the engine's driver; returns it with its address.
    pub(crate) fn start(self) -> Result<(Group, String)> {
        match self {
            Self::Chromium => chromium::start(),
            Self::Firefox | Self::WebKit => anyhow::bail!("{} is not driven yet", self.name()),
        }
    }

    /// What the session is asked for.
    pub(crate) fn capabilities(self) -> Map<String, Value> {
        match self {
            Self::Chromium => chromium::capabilities(),
            Self::Firefox | Self::WebKit => Map::new(),
        }
    }
}

fn is_installed(program: &str) -> bool {
    let path = env::var_os("PATH").unwrap_or_default();
    env::split_paths(&path).any(|folder| folder.join(program).is_file())
}
