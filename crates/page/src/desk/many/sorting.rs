//! Rows brought into an order, a little at a time: a hundred thousand in one go would keep
//! the page from answering.

use super::found::{Filter, Found, Sort};
use core::cmp::Ordering;
use std::collections::VecDeque;

/// How many rows one step filters and sorts.
const ROWS: usize = 512;

/// A merge sort under way.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Sorting {
    /// The next row that has not been looked at.
    next: usize,
    /// Rows that are sorted among themselves.
    runs: VecDeque<Vec<usize>>,
}

impl Sorting {
    /// One step. At the end: the rows that pass, in their order.
    pub(super) fn step(
        &mut self,
        found: &[Found],
        filter: &Filter,
        sort: Sort,
    ) -> Option<Vec<usize>> {
        let compare = |a: &usize, b: &usize| match (found.get(*a), found.get(*b)) {
            (Some(a), Some(b)) => sort.compare(a, b),
            _ => Ordering::Equal,
        };
        if self.next < found.len() {
            let end = self.next.saturating_add(ROWS).min(found.len());
            let passes = |at: &usize| found.get(*at).is_some_and(|found| filter.passes(found));
            let mut run: Vec<usize> = (self.next..end).filter(passes).collect();
            run.sort_by(compare);
            self.runs.push_back(run);
            self.next = end;
            return None;
        }
        let first = self.runs.pop_front().unwrap_or_default();
        let Some(second) = self.runs.pop_front() else { return Some(first) };
        self.runs.push_back(merge(first, second, compare));
        None
    }
}

/// Both in one, where each is sorted.
fn merge(
    first: Vec<usize>,
    second: Vec<usize>,
    compare: impl Fn(&usize, &usize) -> Ordering,
) -> Vec<usize> {
    let mut whole = Vec::with_capacity(first.len().saturating_add(second.len()));
    let (mut first, mut second) = (first.into_iter().peekable(), second.into_iter().peekable());
    while let (Some(a), Some(b)) = (first.peek(), second.peek()) {
        let from = if compare(a, b).is_gt() { &mut second } else { &mut first };
        whole.extend(from.next());
    }
    whole.extend(first);
    whole.extend(second);
    whole
}
