//! Payloads that no program of ours writes.

use hangtrue_link::alphabet;

/// The version of an order's link.
pub const ORDER: u8 = 1;
/// The version of a record's link.
pub const RECORD: u8 = 24;

/// `contents` of `version` behind version, length and check: written here a second time,
/// from `crates/link/SPEC.md`, and held to the golden links.
#[must_use]
pub fn sealed(version: u8, contents: &[u8]) -> String {
    let mut symbols = vec![version, ((contents.len() + 8) % 32) as u8];
    symbols.extend_from_slice(contents);
    let generator = [0x3b6a_57b2_u32, 0x2650_8e6d, 0x1ea1_19fa, 0x3d42_33dd, 0x2a14_62b3];
    let mut register = 1_u32;
    for symbol in symbols.iter().copied().chain([0; 6]) {
        let top = register >> 25;
        register = (register & 0x1ff_ffff) << 5 ^ u32::from(symbol);
        for (bit, tap) in generator.into_iter().enumerate() {
            if top >> bit & 1 == 1 {
                register ^= tap;
            }
        }
    }
    register ^= 0x2bc8_30a3;
    symbols.extend((0..6).map(|at| (register >> (25 - 5 * at) & 31) as u8));
    alphabet::letters(&symbols)
}

/// A small generator of our own: fast, and the same on every machine.
#[derive(Clone, Copy, Debug)]
pub struct Random(pub u64);

impl Random {
    /// The next 31 bits.
    fn draw(&mut self) -> u32 {
        // Knuth, MMIX.
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as u32
    }

    /// A number below `most`.
    pub fn below(&mut self, most: u32) -> u32 {
        self.draw() % most
    }
}
