//! Color, for whoever sees it; every word stands without it.

use anstyle::{AnsiColor, Style};
use hangtrue_core::Severity;
use hangtrue_core::check::Verdict;

/// As the terminal writes.
pub(crate) const PLAIN: Style = Style::new();
/// What stands out.
pub(crate) const STRONG: Style = Style::new().bold();
/// What may be read over.
pub(crate) const FAINT: Style = Style::new().dimmed();
/// What is no order.
pub(crate) const REFUSED: Style = AnsiColor::Magenta.on_default();

/// A verdict's.
pub(crate) const fn of(verdict: Verdict) -> Style {
    match verdict {
        Verdict::Clear => AnsiColor::Green.on_default(),
        Verdict::Recheck => AnsiColor::Yellow.on_default(),
        Verdict::Stop => AnsiColor::Red.on_default().bold(),
    }
}

/// A finding's.
pub(crate) const fn severity(severity: Severity) -> Style {
    match severity {
        Severity::Note => FAINT,
        Severity::Recheck => of(Verdict::Recheck),
        Severity::Stop => of(Verdict::Stop),
    }
}
