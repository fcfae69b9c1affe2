//! Codes in a picture, to their texts: by `rqrr`.
//!
//! A photograph is larger than the reader needs, and a code may be light on dark: the
//! picture is tried as it is, then smaller, then reversed.

use rqrr::PreparedImage;

/// A picture in shades of grey, a byte a dot, row by row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Grey {
    width: usize,
    height: usize,
    dots: Vec<u8>,
}

/// Below this there is no code in a picture: 21 modules of a dot. The reader panics at one
/// without dots.
const LEAST_SIDE: usize = 21;
/// A picture that is smaller than this is not tried at half its size.
const HALVED_FROM: usize = 400;

impl Grey {
    /// The picture of red, green, blue and opacity, four bytes a dot; what is not opaque
    /// stands on white. [`None`] when there are not four bytes for each dot.
    #[must_use]
    pub fn of_rgba(width: usize, height: usize, rgba: &[u8]) -> Option<Self> {
        let bytes = width.checked_mul(height)?.checked_mul(4)?;
        if rgba.len() != bytes {
            return None;
        }
        let (dots, _) = rgba.as_chunks::<4>();
        let dots = dots.iter().map(|&[red, green, blue, opacity]| {
            // Luma by ITU-R BT.601, in 256ths.
            let weigh = |part: u8, weight: u32| u32::from(part).saturating_mul(weight);
            let luma =
                weigh(red, 77).saturating_add(weigh(green, 150)).saturating_add(weigh(blue, 29));
            let opaque = (luma >> 8).saturating_mul(u32::from(opacity));
            let on_white = opaque.saturating_add(weigh(!opacity, 255)) / 255;
            u8::try_from(on_white).unwrap_or(u8::MAX)
        });
        Some(Self { width, height, dots: dots.collect() })
    }

    /// The texts of all codes in it; those that can be seen but not read are left out.
    #[must_use]
    pub fn codes(&self) -> Vec<String> {
        if self.width.min(self.height) < LEAST_SIDE {
            return Vec::new();
        }
        let mut small = self.clone();
        loop {
            for reversed in [false, true] {
                let found = small.read(reversed);
                if !found.is_empty() {
                    return found;
                }
            }
            if small.width.min(small.height) < HALVED_FROM {
                return Vec::new();
            }
            small = small.halved();
        }
    }

    fn read(&self, reversed: bool) -> Vec<String> {
        let dot = |x: usize, y: usize| {
            let dot = self.dot(x, y);
            if reversed { !dot } else { dot }
        };
        let mut picture = PreparedImage::prepare_from_greyscale(self.width, self.height, dot);
        let grids = picture.detect_grids();
        grids.iter().filter_map(|grid| grid.decode().ok()).map(|(_, text)| text).collect()
    }

    fn dot(&self, x: usize, y: usize) -> u8 {
        let at = y.saturating_mul(self.width).saturating_add(x);
        self.dots.get(at).copied().unwrap_or(u8::MAX)
    }

    /// Half as wide and high: the mean of four dots.
    fn halved(&self) -> Self {
        let [width, height] = [self.width, self.height].map(|side| side / 2);
        let mut dots = Vec::with_capacity(width.saturating_mul(height));
        for y in 0..height {
            for x in 0..width {
                let (left, top) = (x.saturating_mul(2), y.saturating_mul(2));
                let (right, bottom) = (left.saturating_add(1), top.saturating_add(1));
                let four = [(left, top), (right, top), (left, bottom), (right, bottom)]
                    .map(|(x, y)| u16::from(self.dot(x, y)));
                dots.push(u8::try_from(four.iter().sum::<u16>() / 4).unwrap_or(u8::MAX));
            }
        }
        Self { width, height, dots }
    }
}
