//! A link as a QR code (ISO/IEC 18004), drawn as SVG.
//!
//! Crate `qrcodegen`: measured in wasm on one link, it adds 8 KB gzip where `qrcode`
//! and `fast_qr` add 13 each, and it takes mixed segments: the address in bytes, with
//! its host in lower case as scanners open it, the payload in the alphanumeric set,
//! 5.5 bits a letter instead of 8.
//! Which mask it takes is weighed in `mask`: 2 KB more, two and a half times as fast.

mod mask;

use qrcodegen::{Mask, QrCode, QrCodeEcc, QrSegment, Version};

/// Where the picture is read from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surface {
    /// A screen: level M, 15 % of the code may be damaged.
    Screen,
    /// Paper, which gets dirty: level H, 30 %, while the code stays within
    /// [`PAPER_H_MOST`] modules a side; else level Q, 25 %.
    ///
    /// Measured with a round stain anywhere in the middle of the code: level Q stands
    /// 10 % of the area, level H 15 %. A stain spoils more codewords than its share of
    /// the area, because it cuts through those on its edge.
    Paper,
}

/// The largest version that is printed at level H.
const PAPER_H: u8 = 11;

/// Its modules on a side: 61 on 40 mm of paper are 0.6 mm each.
pub const PAPER_H_MOST: u32 = 17 + 4 * PAPER_H as u32;

/// The light border on each side that the standard asks for, in modules.
pub const QUIET_ZONE: u32 = 4;

/// A QR code.
#[derive(Clone)]
pub struct Qr {
    code: QrCode,
}

impl Qr {
    /// The code of `link`; [`None`] when it is longer than any QR code holds.
    ///
    /// The level is at least that of the surface, and higher where that costs no
    /// larger picture.
    #[must_use]
    pub fn new(link: &str, surface: Surface) -> Option<Self> {
        match surface {
            Surface::Screen => Self::at(link, QrCodeEcc::Medium, Version::MAX),
            Surface::Paper => Self::at(link, QrCodeEcc::High, Version::new(PAPER_H))
                .or_else(|| Self::at(link, QrCodeEcc::Quartile, Version::MAX)),
        }
    }

    /// The code of `link` at a level, if a version up to `most` holds it.
    fn at(link: &str, level: QrCodeEcc, most: Version) -> Option<Self> {
        let (address, payload) = link.split_at_checked(link.find('#')?.saturating_add(1))?;
        let mut segments = vec![QrSegment::make_bytes(address.as_bytes())];
        if QrSegment::is_alphanumeric(payload) {
            segments.push(QrSegment::make_alphanumeric(payload));
        } else {
            segments.push(QrSegment::make_bytes(payload.as_bytes()));
        }
        let least = Version::MIN;
        let masked =
            |mask| QrCode::encode_segments_advanced(&segments, level, least, most, mask, true).ok();
        let code = masked(Some(Mask::new(0)))?;
        // Where `best` does not know, none is given, and the library weighs them all.
        let code = match mask::best(&code) {
            Some(best) if best.value() == 0 => code,
            best => masked(best)?,
        };
        Some(Self { code })
    }

    /// Modules on a side, without the quiet zone: 21 to 177.
    #[must_use]
    pub fn size(&self) -> u32 {
        self.code.size().unsigned_abs()
    }

    /// Whether the module at column `x`, row `y` is dark; outside it is light.
    #[must_use]
    pub fn dark(&self, x: u32, y: u32) -> bool {
        let at = |v: u32| i32::try_from(v).unwrap_or(-1);
        self.code.get_module(at(x), at(y))
    }

    /// Black on white with the quiet zone, one user unit a module; `title` is what a
    /// screen reader says. It scales to whatever it stands in.
    #[must_use]
    pub fn svg(&self, title: &str) -> String {
        let side = self.size().saturating_add(2 * QUIET_ZONE).to_string();
        let mut svg = String::with_capacity(8 * 1024);
        for piece in [
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ",
            &side,
            " ",
            &side,
            "\" role=\"img\" shape-rendering=\"crispEdges\"><title>",
            &escape(title),
            "</title><rect width=\"",
            &side,
            "\" height=\"",
            &side,
            "\" fill=\"#fff\"/><path d=\"",
        ] {
            svg.push_str(piece);
        }
        for y in 0..self.size() {
            self.row(y, &mut svg);
        }
        svg.push_str("\"/></svg>");
        svg
    }

    /// The dark runs of one row as bars.
    fn row(&self, y: u32, svg: &mut String) {
        let mut x = 0_u32;
        while x < self.size() {
            let run = (x..self.size()).take_while(|&x| self.dark(x, y)).count();
            let run = u32::try_from(run).unwrap_or(0);
            if run > 0 {
                let [left, top] = [x, y].map(|at| at.saturating_add(QUIET_ZONE));
                for (before, number) in [("M", left), (" ", top), ("h", run), ("v1h-", run)] {
                    svg.push_str(before);
                    push_number(svg, number);
                }
                svg.push('z');
            }
            x = x.saturating_add(run.max(1));
        }
    }
}

/// Some thousands of numbers make a code: each without a text of its own.
fn push_number(svg: &mut String, number: u32) {
    if number >= 10 {
        push_number(svg, number / 10);
    }
    let digit = b'0'.wrapping_add((number % 10) as u8);
    svg.push(char::from(digit));
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
