//! A browser with the site in it: what a person does, and what a person sees.

use std::time::{Duration, Instant};

use anyhow::{Context as _, Result, anyhow, bail, ensure};
use fantoccini::actions::{
    InputSource as _, KeyAction, KeyActions, MOUSE_BUTTON_LEFT, PointerAction, TouchActions,
};
use fantoccini::elements::Element;
use fantoccini::wd::{PrintConfiguration, PrintMargins, PrintSize};
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};

use crate::command::Command;
use crate::driver::Group;
use crate::engine::Engine;
use crate::server::{Server, Site, root};

/// How long a condition may take to come true. Far more than it needs: a slow machine is no failure.
const DEADLINE: Duration = Duration::from_secs(20);

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

/// A browser session, its driver and the server its pages come from.
#[derive(Debug)]
pub struct Browser {
    engine: Engine,
    client: Client,
    /// Where pages come from. A scenario may stop it, or put another in its place.
    pub server: Server,
    console: Vec<String>,
    requests: Vec<String>,
    origins: Vec<String>,
    // Last: the driver must outlive the client that ends the session.
    driver: Group,
}

impl Browser {
    /// Starts the engine, with the built site behind it.
    ///
    /// # Errors
    /// When the driver or the session does not start, or `dist/` is not there.
    pub async fn start(engine: Engine) -> Result<Self> {
        let server = Server::start(Site::dist()?)?;
        let (driver, address) = engine.start()?;
        let client = ClientBuilder::new(HttpConnector::new())
            .capabilities(engine.capabilities())
            .connect(&address)
            .await
            .with_context(|| format!("no session with {}", engine.name()))?;
        let origins = vec![server.origin()];
        let (console, requests) = (Vec::new(), Vec::new());
        Ok(Self { engine, client, server, console, requests, origins, driver })
    }

    /// The engine this is.
    #[must_use]
    pub fn engine(&self) -> Engine {
        self.engine
    }

    /// Puts another site behind the browser, at another origin, and returns to an empty page.
    ///
    /// # Errors
    /// When no port can be had.
    pub async fn serve(&mut self, site: Site) -> Result<()> {
        self.client.goto("about:blank").await?;
        self.server = Server::start(site)?;
        self.origins.push(self.server.origin());
        Ok(())
    }

    /// Sets the screen, light, and opens a path of the site.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn open(&mut self, screen: Screen, path: &str) -> Result<()> {
        self.set_screen(screen).await?;
        self.goto(path).await
    }

    /// Opens a path of the site.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn goto(&self, path: &str) -> Result<()> {
        self.client.goto(&format!("{}{path}", self.server.origin())).await?;
        Ok(())
    }

    /// Sets the window's inner size, and whether there is a finger.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn set_screen(&self, screen: Screen) -> Result<()> {
        let Screen { width, height, touch } = screen;
        self.devtools(
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": touch }),
        )
        .await?;
        self.devtools("Emulation.setTouchEmulationEnabled", json!({ "enabled": touch })).await?;
        Ok(())
    }

    /// Sets what `prefers-color-scheme` says.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn set_dark(&self, dark: bool) -> Result<()> {
        let value = if dark { "dark" } else { "light" };
        let features = json!([{ "name": "prefers-color-scheme", "value": value }]);
        self.devtools("Emulation.setEmulatedMedia", json!({ "features": features })).await?;
        Ok(())
    }

    /// Runs a script body in the page and returns what it returns.
    ///
    /// # Errors
    /// When it throws.
    pub async fn run(&self, script: &str, arguments: Vec<Value>) -> Result<Value> {
        Ok(self.client.execute(script, arguments).await?)
    }

    /// The value of a JavaScript expression.
    ///
    /// # Errors
    /// When it throws.
    pub async fn value(&self, expression: &str) -> Result<Value> {
        self.run(&format!("return ({expression});"), Vec::new()).await
    }

    /// Waits until a JavaScript expression is truthy, and returns its value.
    ///
    /// # Errors
    /// After the deadline, with what the page shows.
    pub async fn until(&self, expression: &str) -> Result<Value> {
        let start = Instant::now();
        loop {
            let value = self.value(expression).await?;
            let is_falsy = matches!(&value, Value::Null | Value::Bool(false))
                || value == json!(0)
                || value == json!("");
            if !is_falsy {
                return Ok(value);
            }
            if start.elapsed() > DEADLINE {
                let shown = self.value("location.href + '\\n' + document.body.innerText").await?;
                bail!(
                    "still not true after {DEADLINE:?}: {expression}\nthe page shows: {}",
                    shown.as_str().unwrap_or_default()
                );
            }
            tokio::time::sleep(Duration::from_millis(15)).await;
        }
    }

    /// The element of a CSS selector, waited for.
    ///
    /// # Errors
    /// When there is none before the deadline.
    pub async fn find(&self, css: &str) -> Result<Element> {
        self.until(&format!("document.querySelector({})", json!(css))).await?;
        Ok(self.client.find(Locator::Css(css)).await?)
    }

    /// The text an element shows.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn text(&self, css: &str) -> Result<String> {
        Ok(self.find(css).await?.text().await?)
    }

    /// Touches the middle of an element.
    ///
    /// # Errors
    /// When there is no such element, or something else lies over its middle.
    pub async fn tap(&self, css: &str) -> Result<()> {
        self.find(css).await?;
        let place = self
            .run(
                "const element = document.querySelector(arguments[0]);
                 element.scrollIntoView({ block: 'center', behavior: 'instant' });
                 const box = element.getBoundingClientRect();
                 const x = box.x + box.width / 2, y = box.y + box.height / 2;
                 const over = document.elementFromPoint(x, y);
                 if (!over || !element.contains(over) && !over.contains(element))
                     return over ? over.outerHTML.slice(0, 200) : 'nothing';
                 return [x, y];",
                vec![json!(css)],
            )
            .await?;
        let (Some(x), Some(y)) = (place[0].as_f64(), place[1].as_f64()) else {
            bail!("`{css}` cannot be tapped: over its middle lies {place}");
        };
        let finger = TouchActions::new("finger".to_owned())
            .then(PointerAction::MoveTo { duration: None, x, y })
            .then(PointerAction::Down { button: MOUSE_BUTTON_LEFT })
            .then(PointerAction::Up { button: MOUSE_BUTTON_LEFT });
        self.client.perform_actions(finger).await?;
        Ok(())
    }

    /// Types on the keyboard, into whatever has the focus. WebDriver's code points stand for keys
    /// that write nothing: see [`fantoccini::key::Key`].
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn type_keys(&self, keys: &str) -> Result<()> {
        let mut keyboard = KeyActions::new("keyboard".to_owned());
        for value in keys.chars() {
            keyboard = keyboard.then(KeyAction::Down { value }).then(KeyAction::Up { value });
        }
        self.client.perform_actions(keyboard).await?;
        Ok(())
    }

    /// The role a screen reader is given.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn role(&self, css: &str) -> Result<String> {
        self.computed(css, "computedrole").await
    }

    /// The name a screen reader is given.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn label(&self, css: &str) -> Result<String> {
        self.computed(css, "computedlabel").await
    }

    async fn computed(&self, css: &str, what: &str) -> Result<String> {
        let element = self.find(css).await?;
        let path = format!("element/{}/{what}", element.element_id().as_ref());
        let value = self.client.issue_cmd(Command { path, body: None }).await?;
        value.as_str().map(str::to_owned).ok_or_else(|| anyhow!("{what} of `{css}` is {value}"))
    }

    /// Goes back, as by the browser's button.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn back(&self) -> Result<()> {
        Ok(self.client.back().await?)
    }

    /// Reloads from inside the page: unlike the driver's own command, this works without a server.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn reload(&self) -> Result<()> {
        self.run("window.isOld = true; location.reload();", Vec::new()).await?;
        self.until("!window.isOld && document.readyState === 'complete'").await?;
        Ok(())
    }

    /// Saves the screen, light and dark, as `tests/shots/{engine}/{name}-{scheme}.png`.
    ///
    /// # Errors
    /// When the picture cannot be taken or written.
    pub async fn shoot(&self, name: &str) -> Result<()> {
        let folder = root().join("tests/shots").join(self.engine.name());
        std::fs::create_dir_all(&folder)?;
        for (dark, scheme) in [(true, "dark"), (false, "light")] {
            self.set_dark(dark).await?;
            let picture = self.client.screenshot().await?;
            std::fs::write(folder.join(format!("{name}-{scheme}.png")), picture)?;
        }
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

    /// Calls a method of the browser's own protocol (Chromium only).
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn devtools(&self, method: &str, parameters: Value) -> Result<Value> {
        let body = Some(json!({ "cmd": method, "params": parameters }));
        let path = "goog/cdp/execute".to_owned();
        self.client
            .issue_cmd(Command { path, body })
            .await
            .with_context(|| format!("{method} failed"))
    }

    /// Takes the lines the console has at this moment: a scenario that means to cause some takes
    /// them; whatever is left at the end fails it.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn take_console(&mut self) -> Result<Vec<String>> {
        self.read_logs().await?;
        Ok(std::mem::take(&mut self.console))
    }

    /// Takes the addresses of the requests made since they were last taken; at the end of a
    /// scenario those left must all be of the site's own origin.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn take_requests(&mut self) -> Result<Vec<String>> {
        self.read_logs().await?;
        Ok(std::mem::take(&mut self.requests))
    }

    async fn read_logs(&mut self) -> Result<()> {
        for line in self.read_log("browser").await? {
            if matches!(line["level"].as_str(), Some("SEVERE" | "WARNING")) {
                self.console.push(line["message"].as_str().unwrap_or_default().to_owned());
            }
        }
        for line in self.read_log("performance").await? {
            let message = line["message"].as_str().unwrap_or_default();
            let event: Value = serde_json::from_str(message)?;
            let event = &event["message"];
            if event["method"] == "Network.requestWillBeSent" {
                let address = event["params"]["request"]["url"].as_str().unwrap_or_default();
                self.requests.push(address.to_owned());
            }
        }
        Ok(())
    }

    async fn read_log(&self, kind: &str) -> Result<Vec<Value>> {
        let body = Some(json!({ "type": kind }));
        let lines = self.client.issue_cmd(Command { path: "se/log".to_owned(), body }).await?;
        Ok(lines.as_array().cloned().unwrap_or_default())
    }

    /// What holds at the end of every scenario: nothing on the console, nothing from elsewhere.
    ///
    /// # Errors
    /// When it does not hold.
    pub async fn check(&mut self) -> Result<()> {
        self.read_logs().await?;
        let lines = self.console.join("\n");
        ensure!(lines.is_empty(), "lines left on the console:\n{lines}");
        let own = |address: &&String| {
            let inner = ["data:", "blob:", "about:"];
            inner.iter().any(|start| address.starts_with(start))
                || self.origins.iter().any(|origin| address.starts_with(&format!("{origin}/")))
        };
        let foreign: Vec<&String> = self.requests.iter().filter(|address| !own(address)).collect();
        ensure!(foreign.is_empty(), "requests to other origins: {foreign:?}");
        Ok(())
    }

    /// Ends the session. Dropping the browser would do it too, less politely.
    pub async fn close(self) {
        let _ = self.client.close().await;
        drop(self.driver);
    }
}
