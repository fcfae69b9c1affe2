//! What the screen is, and pictures of it.

use std::time::{Duration, Instant};

use anyhow::{Result, anyhow, ensure};
use fantoccini::wd::{PrintConfiguration, PrintMargins, PrintSize};
use serde_json::{Value, json};

use crate::browser::{Browser, DEADLINE};
use crate::command::devtools;
use crate::engine::Engine;
use crate::server::root;

/// A window's inner size, in CSS px.
#[derive(Clone, Copy, Debug)]
pub struct Screen {
    /// Across.
    pub width: u32,
    /// Down.
    pub height: u32,
    /// Whether it is touched (a phone) or has a mouse and a keyboard (a desk).
    pub touch: bool,
}

impl Screen {
    /// A common phone.
    pub const PHONE: Self = Self { width: 360, height: 640, touch: true };
    /// The smallest phone supported.
    pub const SMALL_PHONE: Self = Self { width: 320, height: 568, touch: true };
    /// A laptop.
    pub const DESK: Self = Self { width: 1280, height: 800, touch: false };
}

/// What media queries answer. The default: on a screen, light, nothing wished for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Media {
    /// `prefers-color-scheme: dark`.
    pub dark: bool,
    /// `print`: the styles for paper, on the screen.
    pub print: bool,
    /// `prefers-reduced-motion: reduce`.
    pub still: bool,
    /// `prefers-contrast: more`.
    pub contrast: bool,
    /// `forced-colors: active`.
    pub forced: bool,
}

impl Browser {
    /// Sets the window's inner size, and whether there is a finger.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn set_screen(&self, screen: Screen) -> Result<()> {
        self.drive.set_screen(&self.client, screen).await
    }

    /// Sets what media queries answer, and waits until they do.
    ///
    /// # Errors
    /// When the engine cannot be made to.
    pub async fn set_media(&self, media: Media) -> Result<()> {
        self.drive.set_media(&self.client, media).await?;
        self.media.set(media);
        let start = Instant::now();
        loop {
            let answers = self
                .value(
                    "['(prefers-color-scheme: dark)', 'print', '(prefers-reduced-motion: reduce)',
                      '(prefers-contrast: more)', '(forced-colors: active)']
                         .map(query => matchMedia(query).matches)",
                )
                .await?;
            let Media { dark, print, still, contrast, forced } = media;
            // Forced colours have a contrast of their own, which the engine makes out.
            let contrast = if forced { answers[3].clone() } else { json!(contrast) };
            // Paper is light in some engines, whatever the person prefers on a screen.
            let dark = if print { answers[0].clone() } else { json!(dark) };
            if answers == json!([dark, print, still, contrast, forced]) {
                return Ok(());
            }
            ensure!(start.elapsed() < DEADLINE, "{media:?} cannot be had: {answers}");
            tokio::time::sleep(Duration::from_millis(10)).await;
        }
    }

    /// What media queries were last set to answer.
    #[must_use]
    pub fn media(&self) -> Media {
        self.media.get()
    }

    /// Sets what `prefers-color-scheme` says.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn set_dark(&self, dark: bool) -> Result<()> {
        self.set_media(Media { dark, ..self.media.get() }).await
    }

    /// Sets the languages that the person wants, best first: `de-CH,fr-CA,en`.
    ///
    /// # Errors
    /// When the engine cannot be made to.
    pub async fn set_languages(&self, languages: &str) -> Result<()> {
        self.drive.set_languages(&self.client, languages).await
    }

    /// Saves the screen, light and dark, as `tests/shots/{engine}/{name}-{scheme}.png`.
    ///
    /// # Errors
    /// When the picture cannot be taken or written.
    pub async fn shoot(&self, name: &str) -> Result<()> {
        for (dark, scheme) in [(true, "dark"), (false, "light")] {
            self.set_dark(dark).await?;
            self.shoot_as_it_is(&format!("{name}-{scheme}")).await?;
        }
        Ok(())
    }

    /// Saves the screen as `tests/shots/{engine}/{name}.png`.
    ///
    /// # Errors
    /// When the picture cannot be taken or written.
    pub async fn shoot_as_it_is(&self, name: &str) -> Result<()> {
        let folder = root().join("tests/shots").join(self.engine().name());
        std::fs::create_dir_all(&folder)?;
        std::fs::write(folder.join(format!("{name}.png")), self.client.screenshot().await?)?;
        Ok(())
    }

    /// Prints the page on sheets of that size, in cm, as a person does from the menu; returns a PDF.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn print(&self, width: f64, height: f64) -> Result<Vec<u8>> {
        let how = PrintConfiguration::builder().size(PrintSize { width, height }).build();
        let how = how.map_err(|error| anyhow!("no such sheet: {error}"))?;
        Ok(self.client.print(how).await?)
    }

    /// Prints the page on sheets of that size, in cm, that it fills from edge to edge.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn print_edge_to_edge(&self, width: f64, height: f64) -> Result<Vec<u8>> {
        let none = PrintMargins { top: 0.0, left: 0.0, right: 0.0, bottom: 0.0 };
        let size = PrintSize { width, height };
        let how = PrintConfiguration::builder().size(size).margins(none).build();
        let how = how.map_err(|error| anyhow!("no such sheet: {error}"))?;
        Ok(self.client.print(how).await?)
    }

    /// Calls a method of Chromium's own protocol.
    ///
    /// # Errors
    /// When this is another engine, or it refuses.
    pub async fn devtools(&self, method: &str, parameters: Value) -> Result<Value> {
        let engine = self.engine();
        ensure!(engine == Engine::Chromium, "{method} is Chromium's, not {}'s", engine.name());
        devtools(&self.client, method, parameters).await
    }
}
