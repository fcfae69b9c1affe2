//! Bits in five-bit symbols, the first bit the highest.

/// The data ended before the value did, or a value is beyond its type.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Short;

/// Bits going out.
#[derive(Clone, Debug, Default)]
pub(crate) struct Writer {
    symbols: Vec<u8>,
    /// Bits used of the last symbol, 0 to 4; 0 when there is room for none.
    used: u32,
}

impl Writer {
    /// The low `bits` bits of `value`; 32 at most.
    pub(crate) fn put(&mut self, value: u32, bits: u32) {
        for at in (0..bits.min(32)).rev() {
            self.flag(value >> at & 1 == 1);
        }
    }

    /// One bit.
    pub(crate) fn flag(&mut self, set: bool) {
        if self.used == 0 {
            self.symbols.push(0);
        }
        if let Some(last) = self.symbols.last_mut() {
            *last |= u8::from(set) << 4_u32.saturating_sub(self.used);
        }
        self.used = self.used.wrapping_add(1) % 5;
    }

    /// A whole number of any size: groups of four bits from the lowest, each behind
    /// a bit that says whether another one follows.
    pub(crate) fn number(&mut self, mut value: u32) {
        loop {
            let rest = value >> 4;
            self.flag(rest != 0);
            self.put(value & 15, 4);
            if rest == 0 {
                return;
            }
            value = rest;
        }
    }

    /// The symbols, the last one filled up with zero bits.
    pub(crate) fn finish(self) -> Vec<u8> {
        self.symbols
    }

    /// Bits so far.
    pub(crate) fn len(&self) -> usize {
        let spare = if self.used == 0 { 0 } else { 5_usize.saturating_sub(self.used as usize) };
        self.symbols.len().wrapping_mul(5).saturating_sub(spare)
    }

    /// Adds what another writer holds.
    pub(crate) fn append(&mut self, other: &Self) {
        let mut reader = Reader::new(&other.symbols);
        for _ in 0..other.len() {
            if let Ok(bit) = reader.flag() {
                self.flag(bit);
            }
        }
    }
}

/// Bits coming in.
#[derive(Clone, Debug)]
pub(crate) struct Reader<'a> {
    symbols: &'a [u8],
    at: usize,
}

impl<'a> Reader<'a> {
    pub(crate) const fn new(symbols: &'a [u8]) -> Self {
        Self { symbols, at: 0 }
    }

    /// One bit.
    pub(crate) fn flag(&mut self) -> Result<bool, Short> {
        let symbol = self.symbols.get(self.at / 5).ok_or(Short)?;
        let bit = symbol >> 4_usize.saturating_sub(self.at % 5) & 1;
        self.at = self.at.wrapping_add(1);
        Ok(bit == 1)
    }

    /// `bits` bits, 32 at most.
    pub(crate) fn take(&mut self, bits: u32) -> Result<u32, Short> {
        let mut value = 0;
        for _ in 0..bits.min(32) {
            value = value << 1 | u32::from(self.flag()?);
        }
        Ok(value)
    }

    /// The counterpart of [`Writer::number`].
    pub(crate) fn number(&mut self) -> Result<u32, Short> {
        let mut value = 0_u32;
        for low in (0..32).step_by(4) {
            let more = self.flag()?;
            value |= self.take(4)? << low;
            if !more {
                return Ok(value);
            }
        }
        Err(Short)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn what_goes_in_comes_out(values in prop::collection::vec((any::<u32>(), 0..=32_u32), 0..40)) {
            let mut writer = Writer::default();
            let mut other = Writer::default();
            other.put(5, 3);
            for &(value, bits) in &values {
                writer.put(value, bits);
                writer.number(value);
            }
            let mut joined = other.clone();
            joined.append(&writer);
            let (length, symbols) = (joined.len(), joined.finish());
            prop_assert!(symbols.len() * 5 - length < 5);
            let mut reader = Reader::new(&symbols);
            prop_assert_eq!(reader.take(3), Ok(5));
            for &(value, bits) in &values {
                let low = if bits == 32 { value } else { value & ((1 << bits) - 1) };
                prop_assert_eq!(reader.take(bits), Ok(low));
                prop_assert_eq!(reader.number(), Ok(value));
            }
            let left = symbols.len() * 5 - length;
            prop_assert_eq!(reader.take(u32::try_from(left).unwrap()), Ok(0));
            prop_assert_eq!(reader.flag(), Err(Short));
        }
    }

    #[test]
    fn a_number_that_never_ends_is_refused() {
        assert_eq!(Reader::new(&[31; 8]).number(), Err(Short));
        assert_eq!(Reader::new(&[31; 100]).number(), Err(Short));
    }
}
