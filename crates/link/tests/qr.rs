//! The QR code, read back by an independent reader (crate `rqrr`): as drawn, blurred,
//! rotated, dirty.

#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::print_stdout,
    clippy::panic,
    reason = "a test may fail, and says what it measured"
)]

mod orders;

use hangtrue_link::qr::{PAPER_H_MOST, QUIET_ZONE, Qr, Surface};
use hangtrue_link::{PAYLOAD_MOST, url};
use proptest::prelude::*;
use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// A grey picture.
#[derive(Clone)]
struct Picture {
    side: usize,
    grey: Vec<f32>,
}

impl Picture {
    /// What the SVG's own bars draw, `scale` pixels a module.
    fn of_svg(svg: &str, scale: usize) -> Self {
        let modules: usize =
            svg.split("viewBox=\"0 0 ").nth(1).unwrap().split(' ').next().unwrap().parse().unwrap();
        let side = modules * scale;
        let mut picture = Self { side, grey: vec![255.0; side * side] };
        let path = svg.split("<path d=\"").nth(1).unwrap().split('"').next().unwrap();
        for bar in path.split('z').filter(|bar| !bar.is_empty()) {
            let numbers: Vec<usize> =
                bar.split(['M', ' ', 'h', 'v', '-']).filter_map(|n| n.parse().ok()).collect();
            let [x, y, width, height, _] = numbers[..] else { panic!("{bar}") };
            for row in y * scale..(y + height) * scale {
                picture.grey[row * side..][x * scale..(x + width) * scale].fill(0.0);
            }
        }
        picture
    }

    fn at(&self, x: isize, y: isize) -> f32 {
        let side = self.side.cast_signed();
        let inside = (0..side).contains(&x) && (0..side).contains(&y);
        if inside { self.grey[(y * side + x).cast_unsigned()] } else { 255.0 }
    }

    /// Three passes of a box: nearly a Gauss of deviation `radius`.
    fn blurred(mut self, radius: isize) -> Self {
        for _ in 0..3 {
            for (dx, dy) in [(1, 0), (0, 1)] {
                let mut next = self.clone();
                for y in 0..self.side.cast_signed() {
                    for x in 0..self.side.cast_signed() {
                        let sum: f32 =
                            (-radius..=radius).map(|d| self.at(x + d * dx, y + d * dy)).sum();
                        next.grey[y.cast_unsigned() * self.side + x.cast_unsigned()] =
                            sum / (2 * radius + 1) as f32;
                    }
                }
                self = next;
            }
        }
        self
    }

    /// Turned about its center, on a larger white sheet.
    fn rotated(&self, degrees: f32) -> Self {
        let side = self.side * 3 / 2;
        let (sin, cos) = degrees.to_radians().sin_cos();
        let (half, new_half) = (self.side as f32 / 2.0, side as f32 / 2.0);
        let mut grey = Vec::with_capacity(side * side);
        for y in 0..side {
            for x in 0..side {
                let (dx, dy) = (x as f32 - new_half, y as f32 - new_half);
                let (sx, sy) = (dx * cos + dy * sin + half, dy * cos - dx * sin + half);
                let (left, top) = (sx.floor(), sy.floor());
                let (fx, fy) = (sx - left, sy - top);
                let (left, top) = (left as isize, top as isize);
                let row = |y| self.at(left, y) * (1.0 - fx) + self.at(left + 1, y) * fx;
                grey.push(row(top) * (1.0 - fy) + row(top + 1) * fy);
            }
        }
        Self { side, grey }
    }

    /// A round stain over `share` of the code's area, in the middle of the code moved by
    /// `dx`, `dy` modules, painted over with `grey`.
    fn stained(mut self, scale: usize, share: f32, (dx, dy): (isize, isize), grey: f32) -> Self {
        let code = self.side - 2 * QUIET_ZONE as usize * scale;
        let middle = |d: isize| (self.side / 2).strict_add_signed(d * scale.cast_signed());
        let (cx, cy) = (middle(dx), middle(dy));
        let most = (share * (code * code) as f32 / core::f32::consts::PI).ceil() as usize;
        let mut painted = 0;
        for y in 0..self.side {
            for x in 0..self.side {
                if x.abs_diff(cx).pow(2) + y.abs_diff(cy).pow(2) <= most {
                    self.grey[y * self.side + x] = grey;
                    painted += 1;
                }
            }
        }
        assert!(painted as f32 >= 0.99 * share * (code * code) as f32);
        self
    }

    fn read(&self) -> Result<String, String> {
        let mut image =
            rqrr::PreparedImage::prepare_from_greyscale(self.side, self.side, |x, y| {
                self.grey[y * self.side + x] as u8
            });
        let grids = image.detect_grids();
        let grid = grids.first().ok_or("no code found")?;
        grid.decode().map(|(_, text)| text).map_err(|error| error.to_string())
    }
}

fn links() -> Vec<(&'static str, String)> {
    orders::golden()
        .into_iter()
        .map(|(name, order)| (name, url("https://doors.dealer.example/order/", &order).unwrap()))
        .collect()
}

#[test]
fn a_code_reads_as_its_link_on_screen_and_paper() {
    for (name, link) in links() {
        for surface in [Surface::Screen, Surface::Paper] {
            let qr = Qr::new(&link, surface).unwrap();
            println!("{name} {surface:?}: {} modules a side", qr.size());
            assert_eq!(Picture::of_svg(&qr.svg(name), 4).read().as_ref(), Ok(&link), "{name}");
        }
    }
}

#[test]
fn the_payload_is_alphanumeric() {
    // 63 bytes are more than version 4-M (33 modules) holds, which is 62.
    let (_, link) = links().into_iter().find(|(name, _)| *name == "four-numbers").unwrap();
    assert_eq!(link.len(), 63);
    let size = Qr::new(&link, Surface::Screen).unwrap().size();
    assert!(size <= 17 + 4 * 4, "{size}");
}

#[test]
fn a_code_is_drawn_with_its_border_and_no_empty_bar() {
    for (name, link) in links() {
        let qr = Qr::new(&link, Surface::Screen).unwrap();
        let svg = qr.svg(name);
        let side = qr.size() + 2 * QUIET_ZONE;
        assert!(svg.contains(&format!(" viewBox=\"0 0 {side} {side}\"")), "{name}");
        assert!(svg.contains(&format!("<rect width=\"{side}\" height=\"{side}\"")), "{name}");
        assert!(!svg.contains("h0"), "{name}");
        // Outside it is light; its corner is dark.
        assert!(qr.dark(0, 0) && qr.dark(1, 0));
        assert!(!qr.dark(qr.size(), 0) && !qr.dark(u32::MAX, 0) && !qr.dark(0, u32::MAX));
    }
}

proptest! {
    /// Which mask is taken is weighed here, as it is faster; what is drawn is what the library
    /// draws that weighs them itself.
    #[test]
    fn a_code_is_drawn_in_the_mask_that_the_library_takes(payload in "[0-9A-Z+/:.-]{1,400}") {
        let address = "https://doors.dealer.example/#";
        let ours = Qr::new(&[address, &payload].concat(), Surface::Screen).unwrap();
        let segments =
            [QrSegment::make_bytes(address.as_bytes()), QrSegment::make_alphanumeric(&payload)];
        let (least, most) = (Version::MIN, Version::MAX);
        let level = QrCodeEcc::Medium;
        let theirs =
            QrCode::encode_segments_advanced(&segments, level, least, most, None, true).unwrap();
        prop_assert_eq!(ours.size(), theirs.size().unsigned_abs());
        for (x, y) in (0..theirs.size()).flat_map(|y| (0..theirs.size()).map(move |x| (x, y))) {
            let dark = ours.dark(x.unsigned_abs(), y.unsigned_abs());
            prop_assert_eq!(dark, theirs.get_module(x, y), "{} {}", x, y);
        }
    }
}

#[test]
fn blur_does_no_harm() {
    for (name, link) in links() {
        let svg = Qr::new(&link, Surface::Screen).unwrap().svg("");
        let picture = Picture::of_svg(&svg, 8).blurred(2);
        assert_eq!(picture.read().as_ref(), Ok(&link), "{name}");
    }
}

/// Turned and a little blurred, as a hand-held camera sees it, at multiples of 15°. The
/// longest code (61 modules) is left out: the reader does not find it at every angle.
#[test]
fn rotation_does_no_harm() {
    for (name, link) in links().into_iter().filter(|(name, _)| *name != "every-field") {
        let svg = Qr::new(&link, Surface::Screen).unwrap().svg("");
        let picture = Picture::of_svg(&svg, 8);
        for degrees in [15.0, 30.0, 45.0, 60.0, 90.0, 135.0, 180.0, 210.0, 300.0] {
            let turned = picture.rotated(degrees).blurred(1);
            assert_eq!(turned.read().as_ref(), Ok(&link), "{name} {degrees}");
        }
    }
}

/// A stain over 15 % of the printed code (10 % for one too long for level H), black,
/// white, or as dark as paper gets, where it spoils data and not the marks that a reader
/// finds the code by.
#[test]
fn a_stain_over_fifteen_percent_does_no_harm_on_paper() {
    let mut tried = 0;
    for (name, link) in links() {
        let qr = Qr::new(&link, Surface::Paper).unwrap();
        let svg = qr.svg("");
        let share = if qr.size() <= PAPER_H_MOST { 0.15 } else { 0.10 };
        assert_eq!(share < 0.15, name == "every-field");
        for (dx, dy) in (-3..=3).flat_map(|dx| (-3..=3).map(move |dy| (dx, dy))) {
            for grey in [0.0, 90.0, 255.0] {
                let picture = Picture::of_svg(&svg, 4).stained(4, share, (dx, dy), grey);
                assert_eq!(picture.read().as_ref(), Ok(&link), "{name} {dx} {dy} {grey}");
                tried += 1;
            }
        }
    }
    println!("{tried} stained codes read");
}

#[test]
fn what_no_code_holds_is_told() {
    let long = format!("https://dealer.example/#{}", "1".repeat(PAYLOAD_MOST));
    assert!(Qr::new(&long, Surface::Paper).is_none());
    assert!(Qr::new("no link", Surface::Screen).is_none());
    let title = Qr::new("https://a.example/#1", Surface::Screen).unwrap().svg("<b>&");
    assert!(title.contains("<title>&lt;b&gt;&amp;</title>"));
}
