//! Chromium by chromedriver.

use std::path::PathBuf;
use std::process::{Command, Stdio};

use anyhow::{Context as _, Result};
use fantoccini::Client;
use futures::future::LocalBoxFuture;
use serde_json::{Map, Value, json};

use super::{Drive, Seen};
use crate::camera::{Camera, Frame, write_film};
use crate::command::{devtools, post};
use crate::driver::{Group, wait_for_line};
use crate::screen::{Media, Screen};

/// Background services are off, so that every request seen is one the page made.
const FLAGS: [&str; 11] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-dev-shm-usage",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-breakpad",
    "--use-fake-device-for-media-stream",
];

#[derive(Debug)]
pub(super) struct Chromium {
    address: String,
    group: Group,
}

/// How many ports in a row may be taken.
const PORTS: usize = 20;

/// It takes a free port of IPv6 and the same of IPv4, and ends when somebody has that one.
const PORT_IS_TAKEN: &str = "port not available";

pub(super) fn start() -> Result<Chromium> {
    let mut started = start_once();
    for _ in 1..PORTS {
        match started {
            Err(error) if format!("{error:#}").contains(PORT_IS_TAKEN) => started = start_once(),
            _ => break,
        }
    }
    started.context("chromedriver")
}

fn start_once() -> Result<Chromium> {
    let mut group = Group::new()?;
    let mut command = Command::new("chromedriver");
    command.arg("--port=0").stdout(Stdio::piped()).stderr(group.ear()?);
    let port = wait_for_line(group.start(command)?.stdout.take(), |line| {
        let (_, port) = line.split_once("successfully on port ")?;
        port.trim_end_matches('.').parse::<u16>().ok()
    })?;
    Ok(Chromium { address: format!("http://127.0.0.1:{port}"), group })
}

impl Chromium {
    /// What the camera sees.
    fn film(&self) -> PathBuf {
        self.group.folder().join("camera.y4m")
    }
}

impl Drive for Chromium {
    fn address(&self) -> &str {
        &self.address
    }

    fn said(&self) -> String {
        self.group.said()
    }

    fn capabilities(&self) -> Map<String, Value> {
        // Read each time the camera is asked for; until a scenario writes it, there is no camera.
        let film = format!("--use-file-for-fake-video-capture={}", self.film().display());
        let flags: Vec<&str> = FLAGS.into_iter().chain([film.as_str()]).collect();
        let wanted = json!({
            "browserName": "chrome",
            "goog:chromeOptions": { "args": flags },
            "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
        });
        wanted.as_object().cloned().unwrap_or_default()
    }

    fn set_screen<'a>(&'a self, at: &'a Client, to: Screen) -> LocalBoxFuture<'a, Result<()>> {
        let Screen { width, height, touch } = to;
        let size =
            json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": touch });
        Box::pin(async move {
            devtools(at, "Emulation.setDeviceMetricsOverride", size).await?;
            let touch = json!({ "enabled": touch });
            devtools(at, "Emulation.setTouchEmulationEnabled", touch).await?;
            Ok(())
        })
    }

    fn set_media<'a>(&'a self, at: &'a Client, to: Media) -> LocalBoxFuture<'a, Result<()>> {
        let pick = |is: bool, yes: &'static str, no: &'static str| if is { yes } else { no };
        let features: Vec<Value> = [
            ("prefers-color-scheme", pick(to.dark, "dark", "light")),
            ("prefers-reduced-motion", pick(to.still, "reduce", "no-preference")),
            ("prefers-contrast", pick(to.contrast, "more", "no-preference")),
            ("forced-colors", pick(to.forced, "active", "none")),
        ]
        .map(|(name, value)| json!({ "name": name, "value": value }))
        .into();
        let media = json!({ "media": pick(to.print, "print", ""), "features": features });
        Box::pin(async move {
            devtools(at, "Emulation.setEmulatedMedia", media).await?;
            Ok(())
        })
    }

    fn set_languages<'a>(&'a self, at: &'a Client, to: &'a str) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async move {
            let agent = at.execute("return navigator.userAgent", Vec::new()).await?;
            let languages = json!({ "userAgent": agent, "acceptLanguage": to });
            devtools(at, "Emulation.setUserAgentOverride", languages).await?;
            Ok(())
        })
    }

    fn set_camera<'a>(&'a self, at: &'a Client, to: Camera<'a>) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async move {
            match to {
                Camera::Missing => write_film(&self.film(), &[])?,
                Camera::Refused | Camera::Anything => write_film(&self.film(), &[stripes()])?,
                Camera::Sees(frames) => write_film(&self.film(), frames)?,
            }
            let setting = if matches!(to, Camera::Refused) { "denied" } else { "granted" };
            let permission = json!({ "permission": { "name": "camera" }, "setting": setting });
            devtools(at, "Browser.setPermission", permission).await?;
            Ok(())
        })
    }

    fn take_seen<'a>(&'a self, at: &'a Client) -> LocalBoxFuture<'a, Result<Vec<Seen>>> {
        Box::pin(async move {
            let mut seen = Vec::new();
            for line in log(at, "browser").await? {
                if matches!(line["level"].as_str(), Some("SEVERE" | "WARNING")) {
                    let text = line["message"].as_str().unwrap_or_default();
                    seen.push(Seen::Line(text.to_owned()));
                }
            }
            for line in log(at, "performance").await? {
                let message = line["message"].as_str().unwrap_or_default();
                let event: Value = serde_json::from_str(message)?;
                let event = &event["message"];
                if event["method"] == "Network.requestWillBeSent" {
                    let address = event["params"]["request"]["url"].as_str().unwrap_or_default();
                    seen.push(Seen::Request(address.to_owned()));
                }
            }
            Ok(seen)
        })
    }
}

/// A picture without a code.
fn stripes() -> Frame {
    let (width, height) = (640, 480);
    let row = (0..=u8::MAX).cycle().take(width);
    Frame { width, height, dots: row.cycle().take(width * height).collect() }
}

async fn log(at: &Client, kind: &str) -> Result<Vec<Value>> {
    let lines = post(at, "se/log", json!({ "type": kind })).await?;
    Ok(lines.as_array().cloned().unwrap_or_default())
}
