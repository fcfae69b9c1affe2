//! WebDriver commands that the client library has no method for.

use fantoccini::wd::WebDriverCompatibleCommand;
use http::Method;
use serde_json::Value;
use url::{ParseError, Url};

/// A command on the session: what stands behind `/session/{id}/`, and its body (`None`: a GET).
#[derive(Debug)]
pub(crate) struct Command {
    pub(crate) path: String,
    pub(crate) body: Option<Value>,
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
