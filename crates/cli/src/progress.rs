//! How far a long input has come, on standard error, where a person sees it.

use std::io::IsTerminal as _;
use std::time::{Duration, Instant};

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

/// What takes less long needs no bar.
const PATIENCE: Duration = Duration::from_secs(1);

/// How far it is.
pub(crate) struct Progress {
    length: Option<u64>,
    started: Instant,
    seen: bool,
    bar: Option<ProgressBar>,
    target: fn() -> ProgressDrawTarget,
    bytes: u64,
}

impl Progress {
    /// Of an input of `length` bytes. There is none where the answers themselves show on
    /// the terminal.
    pub(crate) fn new(length: Option<u64>) -> Self {
        let seen = std::io::stderr().is_terminal() && !std::io::stdout().is_terminal();
        Self::with(length, seen, ProgressDrawTarget::stderr)
    }

    fn with(length: Option<u64>, seen: bool, target: fn() -> ProgressDrawTarget) -> Self {
        Self { length, started: Instant::now(), seen, bar: None, target, bytes: 0 }
    }

    /// `bytes` more, with `orders` checked in all.
    pub(crate) fn advance(&mut self, bytes: usize, orders: u64) {
        self.bytes += bytes as u64;
        if !self.seen || (self.bar.is_none() && self.started.elapsed() < PATIENCE) {
            return;
        }
        let (length, target) = (self.length, self.target);
        let bar = self.bar.get_or_insert_with(|| bar(length, target()));
        bar.set_position(self.bytes.min(length.unwrap_or(u64::MAX)));
        bar.set_message(format!("{orders} orders"));
    }

    /// Takes the bar away.
    pub(crate) fn finish(self) {
        if let Some(bar) = self.bar {
            bar.finish_and_clear();
        }
    }
}

fn bar(length: Option<u64>, target: ProgressDrawTarget) -> ProgressBar {
    let template = match length {
        Some(_) => "{bar:30} {percent:>3} %  {msg}  {eta} left",
        None => "{bytes} read  {msg}  {elapsed}",
    };
    let style = ProgressStyle::with_template(template)
        .unwrap_or_else(|_| ProgressStyle::default_bar())
        .progress_chars("█▌ ");
    ProgressBar::with_draw_target(length, target).with_style(style)
}

#[cfg(test)]
mod tests {
    use super::*;
    use indicatif::{InMemoryTerm, TermLike};
    use std::sync::LazyLock;

    static TERM: LazyLock<InMemoryTerm> = LazyLock::new(|| InMemoryTerm::new(2, 70));

    fn target() -> ProgressDrawTarget {
        ProgressDrawTarget::term_like(Box::new(TERM.clone()) as Box<dyn TermLike>)
    }

    #[test]
    fn a_bar_shows_after_a_while_and_goes_away() {
        let mut unseen = Progress::with(Some(1000), false, target);
        unseen.started -= 2 * PATIENCE;
        unseen.advance(500, 7);
        assert!(unseen.bar.is_none());
        let mut progress = Progress::with(Some(1000), true, target);
        progress.advance(100, 1);
        assert_eq!(TERM.contents(), "", "a short input needs none");
        progress.started -= 2 * PATIENCE;
        progress.advance(400, 7);
        if let Some(bar) = &progress.bar {
            bar.tick();
        }
        let shown = TERM.contents();
        assert!(shown.contains(" 50 %  7 orders"), "{shown}");
        progress.finish();
        assert_eq!(TERM.contents(), "");
    }
}
