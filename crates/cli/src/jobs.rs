//! Work on several processors, its results in the order of the work.

use std::num::NonZeroUsize;
use std::thread::available_parallelism;

use anyhow::Context as _;
use rayon::ThreadPool;
use rayon::prelude::*;

/// How many at once.
pub(crate) struct Jobs {
    pool: Option<ThreadPool>,
}

impl Jobs {
    /// `count` at once; as many as there are processors where nothing is said.
    pub(crate) fn new(count: Option<NonZeroUsize>) -> anyhow::Result<Self> {
        let count = count.or_else(|| available_parallelism().ok()).map_or(1, NonZeroUsize::get);
        if count == 1 {
            return Ok(Self { pool: None });
        }
        let pool = rayon::ThreadPoolBuilder::new().num_threads(count).build();
        Ok(Self { pool: Some(pool.with_context(|| format!("starting {count} jobs"))?) })
    }

    /// `each` of `items`, in their order.
    pub(crate) fn map<T: Sync, R: Send>(
        &self,
        items: &[T],
        each: impl Fn(&T) -> R + Sync + Send,
    ) -> Vec<R> {
        match &self.pool {
            None => items.iter().map(each).collect(),
            Some(pool) => pool.install(|| items.par_iter().with_max_len(1).map(each).collect()),
        }
    }
}
