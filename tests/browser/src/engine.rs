//! The browser engines: how each is started, told what to be, and listened to. A file an engine.

use std::env;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use anyhow::{Result, ensure};
use fantoccini::Client;
use futures::future::LocalBoxFuture;
use serde_json::{Map, Value, json};

use crate::browser::DEADLINE;
use crate::camera::Camera;
use crate::screen::{Media, Screen};
use crate::server::root;

mod chromium;
mod firefox;
mod webkit;

pub(crate) use firefox::frames;

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

/// What not every engine can be made to do from outside. A scenario states what it needs; an engine
/// that lacks it skips the scenario, and says so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Feature {
    /// A tap arrives as a touch, not as a mouse.
    Touch,
    /// A text is composed, as by an input method.
    Composition,
    /// The page is printed to a PDF.
    Print,
    /// The screen shows the styles for paper.
    PrintMedia,
    /// The colours are the person's, not the page's.
    ForcedColors,
    /// No script runs.
    NoScript,
    /// A page's own files are its own in an opaque origin too (`'self'` of its policy).
    OpaqueSelf,
    /// A page is told what moved in it by itself.
    LayoutShift,
    /// The languages that a person wants can be set.
    Languages,
    /// Every request of the page is told.
    Requests,
    /// There is a camera, and a test says whether a page may use it.
    Camera,
    /// The camera sees what a test gives it.
    Film,
    /// The module is compiled: it judges thousands of orders. Every engine does, but WebKitGTK only
    /// where it must: see the README.
    Compiler,
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

    /// Why the engine lacks the feature, if it does.
    #[must_use]
    pub fn lacks(self, feature: Feature) -> Option<&'static str> {
        match (self, feature) {
            (Self::WebKit, Feature::Touch) => Some("its driver sends a tap as a mouse"),
            (Self::Firefox | Self::WebKit, Feature::Composition) => {
                Some("its driver cannot compose")
            }
            (Self::WebKit, Feature::Print) => Some("its driver has no Print"),
            (Self::WebKit, Feature::PrintMedia) => Some("its driver sets no medium"),
            (Self::WebKit, Feature::ForcedColors) => Some("it has no forced colours"),
            (Self::Firefox | Self::WebKit, Feature::NoScript) => {
                Some("its driver cannot turn scripts off")
            }
            (Self::Firefox | Self::WebKit, Feature::LayoutShift) => Some("it measures no shifts"),
            (Self::WebKit, Feature::OpaqueSelf) => {
                Some("its policies know no `'self'` in an opaque origin, so no script runs there")
            }
            (Self::WebKit, Feature::Languages) => Some("its driver sets no languages"),
            (Self::WebKit, Feature::Requests) => Some("its driver tells no requests"),
            (Self::WebKit, Feature::Camera) => Some("its driver lets no page use a camera"),
            (Self::Firefox, Feature::Film) => Some("its camera sees only a pattern of its own"),
            (Self::WebKit, Feature::Film) => Some("its driver lets no page use a camera"),
            _ => None,
        }
    }

    /// Why the engine cannot be used here, if it cannot.
    #[must_use]
    pub fn is_missing(self) -> Option<String> {
        let needed: &[&str] = match self {
            Self::Chromium => &["chromium", "chromedriver"],
            Self::Firefox => &["firefox", firefox::DRIVER],
            Self::WebKit => &["WebKitWebDriver", "Xvfb", "xsettingsd"],
        };
        let missing: Vec<&str> =
            needed.iter().copied().filter(|program| find(program).is_none()).collect();
        (!missing.is_empty()).then(|| format!("not installed: {}", missing.join(", ")))
    }

    /// Starts the engine's driver for a scenario that needs that.
    pub(crate) fn start(self, needs: &[Feature]) -> Result<Box<dyn Drive>> {
        Ok(match self {
            Self::Chromium => Box::new(chromium::start()?),
            Self::Firefox => Box::new(firefox::start()?),
            Self::WebKit => Box::new(webkit::start(needs.contains(&Feature::Compiler))?),
        })
    }
}

/// What a page did that somebody should know.
#[derive(Debug)]
pub(crate) enum Seen {
    /// A warning or an error on the console.
    Line(String),
    /// The address of a request.
    Request(String),
}

/// A running driver: what WebDriver has no command for, or no engine the same.
pub(crate) trait Drive: std::fmt::Debug {
    /// Where it listens.
    fn address(&self) -> &str;

    /// The last lines that it and its browser said, to be told when a scenario fails.
    fn said(&self) -> String;

    /// What the session is asked for.
    fn capabilities(&self) -> Map<String, Value>;

    /// Done once, when the session has begun.
    fn begin<'a>(&'a self, _: &'a Client) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async { Ok(()) })
    }

    /// Sets the window's inner size, and whether there is a finger.
    fn set_screen<'a>(&'a self, at: &'a Client, to: Screen) -> LocalBoxFuture<'a, Result<()>>;

    /// Sets what media queries say.
    fn set_media<'a>(&'a self, at: &'a Client, to: Media) -> LocalBoxFuture<'a, Result<()>>;

    /// Sets the languages that the person wants, best first.
    fn set_languages<'a>(&'a self, at: &'a Client, to: &'a str) -> LocalBoxFuture<'a, Result<()>>;

    /// Sets what the camera sees.
    fn set_camera<'a>(&'a self, at: &'a Client, to: Camera<'a>) -> LocalBoxFuture<'a, Result<()>>;

    /// What was seen since the last call.
    fn take_seen<'a>(&'a self, at: &'a Client) -> LocalBoxFuture<'a, Result<Vec<Seen>>>;

    /// Whether the console can be heard only from inside the page, so that the server must put
    /// [`COLLECTOR`](crate::server::COLLECTOR) into it.
    fn needs_collector(&self) -> bool {
        false
    }
}

/// A window takes a moment to get its size.
async fn wait_for_size(client: &Client, screen: Screen) -> Result<()> {
    let size = json!([screen.width, screen.height]);
    let start = Instant::now();
    loop {
        let is = client.execute("return [innerWidth, innerHeight]", Vec::new()).await?;
        if is == size {
            return Ok(());
        }
        ensure!(start.elapsed() < DEADLINE, "the window is {is} instead of {size}");
        tokio::time::sleep(Duration::from_millis(10)).await;
    }
}

/// Where a program is: on the search path, or where `cargo xtask browser` puts what Debian lacks.
fn find(program: &str) -> Option<PathBuf> {
    let path = env::var_os("PATH").unwrap_or_default();
    env::split_paths(&path)
        .chain([root().join("target/drivers/bin")])
        .map(|folder| folder.join(program))
        .find(|file| file.is_file())
}
