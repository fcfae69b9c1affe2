//! The words of the script for the telephone.

/// The script in one language.
pub(crate) struct Script {
    /// That this is an order, in inches.
    pub(crate) inches: &'static str,
    /// The same in millimetres.
    pub(crate) millimetres: &'static str,
    /// The numbers are those of the frame once it is built.
    pub(crate) build: &'static str,
    /// The four numbers.
    pub(crate) names: [&'static str; 4],
    /// What stands between a name and its number.
    pub(crate) colon: &'static str,
    /// The six characters.
    pub(crate) check: &'static str,
    /// Between the whole and the fraction.
    pub(crate) and: &'static str,
    /// Sixteenth, eighth, quarter, half: one and more.
    pub(crate) parts: [(&'static str, &'static str); 4],
    /// 0 to 15 before a fraction.
    pub(crate) counts: [&'static str; 16],
    /// 0 to 9, said one by one.
    pub(crate) figures: [&'static str; 10],
}
