//! WebDriver commands that the client library has no method for.

use anyhow::{Context as _, Result};
use fantoccini::Client;
use fantoccini::wd::WebDriverCompatibleCommand;
use http::Method;
use serde_json::{Value, json};
use url::{ParseError, Url};

/// A command on the session: what stands behind `/session/{id}/`, and its body (`None`: a GET).
#[derive(Debug)]
struct Command {
    path: String,
    body: Option<Value>,
}

impl WebDriverCompatibleCommand for Command {
    fn endpoint(&self, base: &Url, session: Option<&str>) -> Result<Url, ParseError> {
        base.join(&format!("session/{}/{}", session.unwrap_or_default(), self.path))
    }

    fn method_and_body(&self, _: &Url) -> (Method, Option<String>) {
        match &self.body {
            Some(body) => (Method::POST, Some(body.to_string())),
            None => (Method::GET, None),
        }
    }
}

/// Asks the session for something.
pub(crate) async fn get(client: &Client, path: &str) -> Result<Value> {
    let command = Command { path: path.to_owned(), body: None };
    client.issue_cmd(command).await.with_context(|| format!("GET {path} failed"))
}

/// Tells the session something.
pub(crate) async fn post(client: &Client, path: &str, body: Value) -> Result<Value> {
    let command = Command { path: path.to_owned(), body: Some(body) };
    client.issue_cmd(command).await.with_context(|| format!("POST {path} failed"))
}

/// Calls a method of Chromium's own protocol.
pub(crate) async fn devtools(client: &Client, method: &str, parameters: Value) -> Result<Value> {
    let body = json!({ "cmd": method, "params": parameters });
    post(client, "goog/cdp/execute", body).await.with_context(|| format!("{method} failed"))
}
