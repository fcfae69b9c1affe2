//! WebKitGTK by WebKitWebDriver, on a display of its own: it has no headless mode.
//!
//! Media queries follow the desktop's settings, which `xsettingsd` gives and changes. The console
//! is heard only in the page. Its requests are not: a proxy that counts them needs exceptions, and
//! with exceptions MiniBrowser ends at its start about once in a hundred times (2.50: a text at no
//! address is read).

use std::fs;
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::ops::Range;
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

use anyhow::{Context as _, Result, bail, ensure};
use fantoccini::Client;
use futures::future::LocalBoxFuture;
use rustix::process::{Pid, Signal, kill_process};
use serde_json::{Map, Value, json};

use super::{Drive, Seen};
use crate::camera::Camera;
use crate::driver::{Group, pid, wait_for_line};
use crate::screen::{Media, Screen};
use crate::server::TAKE_COLLECTED;

/// The window's frame shall not hold its width above that of a small phone.
const FRAME: &str =
    "* { padding: 0; margin: 0; border-width: 0; min-width: 0; min-height: 0; font-size: 1px; }";

/// A port is looked for and taken by one driver at a time: the last that was taken here, from the
/// first. They lie below those that the system gives to whoever asks for any (from 32,768), where
/// another program would take it before the driver does; processes begin at different ones.
static PORT: Mutex<u16> = Mutex::new(0);
const PORTS: Range<u16> = 10_000..30_000;

#[derive(Debug)]
pub(super) struct WebKit {
    address: String,
    settings: PathBuf,
    desktop: Pid,
    group: Group,
}

pub(super) fn start(compiled: bool) -> Result<WebKit> {
    let mut group = Group::new()?;
    let settings = group.folder().join("xsettings");
    fs::write(&settings, settings_for(Media::default()))?;
    let style = group.folder().join(".config/gtk-3.0");
    fs::create_dir_all(&style)?;
    fs::write(style.join("gtk.css"), FRAME)?;
    for theme in THEMES {
        let folder = group.folder().join(".themes").join(theme).join("gtk-3.0");
        fs::create_dir_all(&folder)?;
        fs::write(folder.join("gtk.css"), THEME)?;
    }

    let mut command = Command::new("Xvfb");
    command.args(["-displayfd", "1", "-screen", "0", "1600x1200x24", "-nolisten", "tcp"]);
    command.stdout(Stdio::piped()).stderr(Stdio::null());
    let display = wait_for_line(group.start(command)?.stdout.take(), |line| Some(line.to_owned()));
    let display = format!(":{}", display.context("Xvfb")?);

    let mut command = Command::new("xsettingsd");
    command.arg("-c").arg(&settings).env("DISPLAY", &display);
    command.stdout(Stdio::null()).stderr(Stdio::piped());
    let child = group.start(command)?;
    let desktop = pid(child)?;
    // Whoever starts before it would go by other settings.
    let is_up = |line: &str| line.contains("Took ownership").then_some(());
    wait_for_line(child.stderr.take(), is_up).context("xsettingsd")?;

    let mut taken = PORT.lock().unwrap_or_else(PoisonError::into_inner);
    let port = free_port(&mut taken)?;
    let mut command = Command::new("WebKitWebDriver");
    command.arg(format!("--port={port}")).stdout(Stdio::null()).stderr(group.ear()?);
    command.env("DISPLAY", &display).env("LANG", "en_US.UTF-8");
    // That compiler stops the page by signals, thousands of times, and on its return from a call the
    // interpreter reads what a signal may have written over: see the README.
    if !compiled {
        command.env("JSC_useBBQJIT", "0");
    }
    group.start(command)?;
    let start = Instant::now();
    while TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_err() {
        ensure!(start.elapsed() < Duration::from_secs(20), "WebKitWebDriver does not listen");
        std::thread::sleep(Duration::from_millis(10));
    }
    drop(taken);
    let address = format!("http://127.0.0.1:{port}");
    Ok(WebKit { address, settings, desktop, group })
}

/// The next that nobody listens at.
fn free_port(taken: &mut u16) -> Result<u16> {
    let count = PORTS.end - PORTS.start;
    let first = u16::try_from(std::process::id() * 97 % u32::from(count))?;
    for _ in PORTS {
        *taken = (*taken + 1) % count;
        let port = PORTS.start + (first + *taken) % count;
        if TcpListener::bind((Ipv4Addr::LOCALHOST, port)).is_ok() {
            return Ok(port);
        }
    }
    bail!("each port of {PORTS:?} is taken")
}

/// Themes of a line each, by the ends of whose names an engine tells light from dark. The page's
/// process reads a theme anew at each change, while its collector stops it by signals; then GTK takes
/// a number for none, and has ended the process over one of the thousands in its own theme.
const THEMES: [&str; 2] = ["Hangtrue", "Hangtrue-dark"];
const THEME: &str = "* { color: gray; }";

/// The settings by which WebKitGTK answers the media queries.
fn settings_for(media: Media) -> String {
    let [light, dark] = THEMES;
    let theme = match (media.contrast, media.dark) {
        (true, false) => "HighContrast",
        (true, true) => "HighContrast-dark",
        (false, false) => light,
        (false, true) => dark,
    };
    let moves = u8::from(!media.still);
    format!("Net/ThemeName \"{theme}\"\nGtk/EnableAnimations {moves}\n")
}

impl Drive for WebKit {
    fn address(&self) -> &str {
        &self.address
    }

    fn said(&self) -> String {
        self.group.said()
    }

    fn capabilities(&self) -> Map<String, Value> {
        let wanted = json!({
            "browserName": "MiniBrowser",
            "webkitgtk:browserOptions": {
                "binary": "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser",
                "args": ["--automation", "--full-screen", "--features=+WebShare"],
            },
        });
        wanted.as_object().cloned().unwrap_or_default()
    }

    fn set_screen<'a>(&'a self, at: &'a Client, to: Screen) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async move {
            at.set_window_rect(0, 0, to.width, to.height).await?;
            super::wait_for_size(at, to).await
        })
    }

    fn set_media<'a>(&'a self, _: &'a Client, to: Media) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async move {
            ensure!(!to.print && !to.forced, "WebKitGTK cannot be made to show {to:?}");
            fs::write(&self.settings, settings_for(to))?;
            Ok(kill_process(self.desktop, Signal::HUP)?)
        })
    }

    fn set_languages<'a>(&'a self, _: &'a Client, to: &'a str) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async move { bail!("WebKitGTK's driver cannot set the languages {to}") })
    }

    fn set_camera<'a>(&'a self, _: &'a Client, to: Camera<'a>) -> LocalBoxFuture<'a, Result<()>> {
        Box::pin(async move { bail!("WebKitGTK's driver cannot set what the camera sees: {to:?}") })
    }

    fn take_seen<'a>(&'a self, at: &'a Client) -> LocalBoxFuture<'a, Result<Vec<Seen>>> {
        Box::pin(async move {
            let lines = at.execute(TAKE_COLLECTED, Vec::new()).await?;
            let lines = lines.as_array().into_iter().flatten().filter_map(Value::as_str);
            Ok(lines.map(|line| Seen::Line(line.to_owned())).collect())
        })
    }

    fn needs_collector(&self) -> bool {
        true
    }
}
