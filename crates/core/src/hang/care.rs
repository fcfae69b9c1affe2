//! Care: what is done how often, what was done when, what is due.

use crate::order::Date;

/// Work that a door needs again and again, or once something is worn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Work {
    /// Rollers, hinges, bearings, spring: a few drops of oil.
    Lubrication,
    /// Cables looked at along their whole length; replaced in pairs.
    CablesChecked,
    /// Both cables replaced.
    Cables,
    /// Rollers replaced.
    Rollers,
    /// A panel replaced.
    Panel,
    /// The spring replaced, or its turns changed.
    Spring,
    /// Tracks set again.
    Tracks,
    /// The whole door inspected.
    Inspected,
}

impl Work {
    /// All of it. Records keep work by its place here: new work goes to the end.
    pub const ALL: [Self; 8] = [
        Self::Lubrication,
        Self::CablesChecked,
        Self::Cables,
        Self::Rollers,
        Self::Panel,
        Self::Spring,
        Self::Tracks,
        Self::Inspected,
    ];

    /// Its place in [`Work::ALL`].
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Lubrication => "lubrication",
            Self::CablesChecked => "cables-checked",
            Self::Cables => "cables",
            Self::Rollers => "rollers",
            Self::Panel => "panel",
            Self::Spring => "spring",
            Self::Tracks => "tracks",
            Self::Inspected => "inspected",
        }
    }
    /// The work of a name in files.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|work| work.key() == key)
    }

    /// How often; none for what is done when it is worn. Common practice, no source: the
    /// maker's instructions come first.
    #[must_use]
    pub const fn interval(self) -> Option<Interval> {
        match self {
            Self::Lubrication => Some(Interval { months: 3, cycles: 1500 }),
            Self::CablesChecked => Some(Interval { months: 1, cycles: 500 }),
            Self::Inspected => Some(Interval { months: 12, cycles: 6000 }),
            Self::Spring => Some(Interval { months: 60, cycles: 10_000 }),
            Self::Cables | Self::Rollers | Self::Panel | Self::Tracks => None,
        }
    }
}

/// How often: by the calendar or by use, whichever comes first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Interval {
    /// Months.
    pub months: u16,
    /// Openings.
    pub cycles: u32,
}

/// How often, in a dealer's rules; the rest stays as [`Work::interval`] has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Set {
    /// What.
    pub work: Work,
    /// Months, where they are set.
    pub months: Option<u16>,
    /// Openings, where they are set.
    pub cycles: Option<u32>,
}

/// How often `work` is done by a dealer's rules.
#[must_use]
pub fn interval(work: Work, sets: &[Set]) -> Option<Interval> {
    let usual = work.interval()?;
    let set = sets.iter().find(|set| set.work == work);
    Some(Interval {
        months: set.and_then(|set| set.months).unwrap_or(usual.months),
        cycles: set.and_then(|set| set.cycles).unwrap_or(usual.cycles),
    })
}

/// Something that was done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Service {
    /// When.
    pub date: Date,
    /// What.
    pub work: Work,
    /// In the writer's words.
    pub note: String,
}

/// When a work is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Due {
    /// What.
    pub work: Work,
    /// The day it was last done, or the door was hung.
    pub since: Date,
    /// The day it is due.
    pub day: Date,
    /// Days from today; below nothing where it is late.
    pub left: i32,
}

/// What is due and when, the soonest first: by the calendar, or by use where the door is
/// opened `per_day` times a day. `sets` are the intervals of a dealer's rules.
#[must_use]
pub fn due(
    hung: Date,
    services: &[Service],
    sets: &[Set],
    per_day: Option<u32>,
    today: Date,
) -> Vec<Due> {
    let mut all = Vec::new();
    for work in Work::ALL {
        let Some(interval) = interval(work, sets) else { continue };
        // What is noted for a day to come was not done yet.
        let done = services.iter().filter(|done| resets(done.work, work) && done.date <= today);
        let last = done.map(|done| done.date);
        let since = last.fold(hung, |latest, date| if date > latest { date } else { latest });
        let by_month = days(add_months(since, interval.months));
        let by_use = per_day.filter(|times| *times > 0).and_then(|times| {
            let day = interval.cycles.div_ceil(times);
            i32::try_from(day).ok().map(|day| days(since).saturating_add(day))
        });
        let day = by_use.map_or(by_month, |by_use| by_use.min(by_month));
        let left = day.saturating_sub(days(today));
        all.push(Due { work, since, day: date(day), left });
    }
    crate::short::sort(&mut all, |a, b| a.left < b.left);
    all
}

/// Whether `done` makes `work` new again.
fn resets(done: Work, work: Work) -> bool {
    done == work || (done == Work::Cables && work == Work::CablesChecked)
}

/// `months` later: the same day of the month, or its last.
#[must_use]
pub fn add_months(from: Date, months: u16) -> Date {
    let count = u32::from(from.year)
        .saturating_mul(12)
        .saturating_add(u32::from(from.month).saturating_sub(1))
        .saturating_add(u32::from(months));
    let year = u16::try_from(count.div_euclid(12)).unwrap_or(u16::MAX);
    let month = u8::try_from(count.rem_euclid(12)).unwrap_or(0).saturating_add(1);
    Date { year, month, day: from.day.min(days_of(year, month)) }
}

/// Days of a month.
#[must_use]
pub const fn days_of(year: u16, month: u8) -> u8 {
    match month {
        4 | 6 | 9 | 11 => 30,
        2 if is_leap(year) => 29,
        2 => 28,
        _ => 31,
    }
}

const fn is_leap(year: u16) -> bool {
    year.is_multiple_of(4) && !year.is_multiple_of(100) || year.is_multiple_of(400)
}

/// Whether there is such a day.
#[must_use]
pub const fn is_day(date: Date) -> bool {
    date.month >= 1
        && date.month <= 12
        && date.day >= 1
        && date.day <= days_of(date.year, date.month)
}

/// Days since 1 January of the year nought, Gregorian.
#[must_use]
pub fn days(date: Date) -> i32 {
    // Years that begin in March put the leap day at the end.
    let (year, month) = match date.month {
        1 | 2 => (i32::from(date.year).saturating_sub(1), date.month.wrapping_add(9)),
        _ => (i32::from(date.year), date.month.saturating_sub(3)),
    };
    let leaps = [year.div_euclid(4), year.div_euclid(100).wrapping_neg(), year.div_euclid(400)];
    let before = i32::from(month).wrapping_mul(153).wrapping_add(2).div_euclid(5);
    let whole = year.wrapping_mul(365).wrapping_add(before);
    leaps.into_iter().fold(whole, i32::wrapping_add).wrapping_add(i32::from(date.day))
}

/// The day of a count of days, by search: it is asked a few times a screen.
fn date(count: i32) -> Date {
    let mut year = count.div_euclid(366).clamp(0, i32::from(u16::MAX)) as u16;
    while year < u16::MAX && days(Date { year: year.saturating_add(1), month: 1, day: 1 }) <= count
    {
        year = year.saturating_add(1);
    }
    let mut month = 1_u8;
    while month < 12 && days(Date { year, month: month.saturating_add(1), day: 1 }) <= count {
        month = month.saturating_add(1);
    }
    let first = days(Date { year, month, day: 1 });
    let day = u8::try_from(count.saturating_sub(first)).unwrap_or(0).saturating_add(1);
    Date { year, month, day }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_months_have_their_days() {
        let days =
            |year| (1..=12).map(|month| days_of(year, month).to_string()).collect::<Vec<_>>();
        assert_eq!(days(2026).join(" "), "31 28 31 30 31 30 31 31 30 31 30 31");
        assert_eq!([days_of(2028, 2), days_of(1900, 2), days_of(2000, 2)], [29, 28, 29]);
    }

    #[test]
    fn work_is_found_again_by_its_name() {
        assert!(Work::ALL.iter().enumerate().all(|(at, work)| work.index() == at));
        assert!(Work::ALL.into_iter().all(|work| Work::from_key(work.key()) == Some(work)));
        assert_eq!(Work::from_key("nothing"), None);
    }
    use proptest::prelude::*;

    const fn on(year: u16, month: u8, day: u8) -> Date {
        Date { year, month, day }
    }

    #[test]
    fn months_are_added_by_the_calendar() {
        assert_eq!(add_months(on(2025, 11, 30), 3), on(2026, 2, 28));
        assert_eq!(add_months(on(2023, 11, 30), 3), on(2024, 2, 29));
        assert_eq!(add_months(on(2025, 12, 31), 1), on(2026, 1, 31));
        assert_eq!(add_months(on(2025, 6, 15), 60), on(2030, 6, 15));
    }

    /// 1 January 2000 to 1 March 2000 is 60 days; 2000 is a leap year, 2100 is not.
    #[test]
    fn days_are_counted_through_leap_years() {
        assert_eq!(days(on(2000, 3, 1)) - days(on(2000, 1, 1)), 60);
        assert_eq!(days(on(2100, 3, 1)) - days(on(2100, 1, 1)), 59);
        assert_eq!(days(on(2001, 1, 1)) - days(on(2000, 1, 1)), 366);
        assert!(is_day(on(2024, 2, 29)) && !is_day(on(2025, 2, 29)) && !is_day(on(2025, 13, 1)));
    }

    #[test]
    fn what_was_done_last_counts_and_use_can_come_before_the_calendar() {
        let hung = on(2026, 1, 10);
        let done = |work, date| Service { date, work, note: String::new() };
        let services = [
            done(Work::Lubrication, on(2026, 4, 1)),
            done(Work::Lubrication, on(2026, 3, 1)),
            done(Work::Cables, on(2026, 4, 20)),
        ];
        let today = on(2026, 5, 1);
        let all = due(hung, &services, &[], None, today);
        let find = |all: &[Due], work| *all.iter().find(|due| due.work == work).unwrap();
        assert_eq!(find(&all, Work::Lubrication).day, on(2026, 7, 1));
        // A year mistyped puts nothing off.
        let ahead = [done(Work::Lubrication, on(2062, 4, 1))];
        assert_eq!(find(&due(hung, &ahead, &[], None, today), Work::Lubrication).left, -21);
        // New cables were looked at.
        assert_eq!(find(&all, Work::CablesChecked).day, on(2026, 5, 20));
        assert_eq!(find(&all, Work::CablesChecked).left, 19);
        assert_eq!(all.first().unwrap().work, Work::CablesChecked);
        // Fifty openings a day: 1500 are reached after thirty.
        let busy = due(hung, &services, &[], Some(50), today);
        assert_eq!(find(&busy, Work::Lubrication).day, on(2026, 5, 1));
        assert_eq!(find(&busy, Work::Lubrication).left, 0);
    }

    /// One end that is set leaves the other as it is, and other work too.
    #[test]
    fn a_dealer_sets_an_interval_by_either_end() {
        let (hung, today) = (on(2026, 1, 10), on(2026, 2, 1));
        let set = |months, cycles| [Set { work: Work::Lubrication, months, cycles }];
        let day = |sets: &[Set], work, per_day| {
            due(hung, &[], sets, per_day, today).iter().find(|due| due.work == work).unwrap().day
        };
        assert_eq!(day(&set(Some(6), None), Work::Lubrication, None), on(2026, 7, 10));
        assert_eq!(day(&set(None, Some(100)), Work::Lubrication, None), on(2026, 4, 10));
        assert_eq!(day(&set(None, Some(100)), Work::Lubrication, Some(10)), on(2026, 1, 20));
        assert_eq!(day(&set(Some(6), Some(100)), Work::CablesChecked, None), on(2026, 2, 10));
        // What is replaced once it is worn has no interval to set.
        assert_eq!(
            interval(Work::Rollers, &[Set { work: Work::Rollers, months: Some(1), cycles: None }]),
            None
        );
    }

    proptest! {
        #[test]
        fn a_day_is_found_again_by_its_count(year in 2000_u16..2256, month in 1_u8..=12, day in 1_u8..=28) {
            let day = on(year, month, day);
            prop_assert_eq!(date(days(day)), day);
        }
        #[test]
        fn each_count_is_a_day_and_the_next_is_the_next(count in 730_500_i32..820_000) {
            let (one, next) = (date(count), date(count + 1));
            prop_assert!(is_day(one) && next > one);
            prop_assert_eq!(days(next), days(one) + 1);
        }
    }
}
