//! A day: years since 2000 in eight bits, month in four, day in five.

use hangtrue_core::order::Date;

use crate::bits::{Reader, Short, Writer};
use crate::error::EncodeError;

const FIRST_YEAR: u16 = 2000;
/// How many bits that is.
pub(crate) const BITS: u32 = 8 + 4 + 5;

pub(crate) fn write(date: Date, out: &mut Writer) -> Result<(), EncodeError> {
    let year = date.year.checked_sub(FIRST_YEAR).filter(|&year| year < 256);
    let year = year.ok_or(EncodeError::Date)?;
    if !(1..=12).contains(&date.month) || !(1..=31).contains(&date.day) {
        return Err(EncodeError::Date);
    }
    out.put(u32::from(year), 8);
    out.put(u32::from(date.month), 4);
    out.put(u32::from(date.day), 5);
    Ok(())
}

pub(crate) fn read(from: &mut Reader<'_>) -> Result<Date, Short> {
    let year = u16::try_from(from.take(8)?).map_err(|_| Short)?;
    let month = u8::try_from(from.take(4)?).map_err(|_| Short)?;
    let day = u8::try_from(from.take(5)?).map_err(|_| Short)?;
    Ok(Date { year: FIRST_YEAR.saturating_add(year), month, day })
}
