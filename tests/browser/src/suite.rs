//! Runs scenarios: one trial for each engine, with a browser of its own.

use std::env;
use std::future::Future;
use std::panic::AssertUnwindSafe;
use std::pin::Pin;
use std::process::ExitCode;
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::time::{Duration, Instant};

use anyhow::{Result, anyhow};
use fantoccini::error::CmdError;
use futures::FutureExt as _;
use libtest_mimic::{Arguments, Failed, Trial};

use crate::browser::Browser;
use crate::engine::{self, Engine, Feature};

/// No scenario may hang: after this long it has failed.
const DEADLINE: Duration = Duration::from_mins(3);

/// The same where frames are few: every tap waits for some.
const DEADLINE_SLOW: Duration = Duration::from_mins(15);

/// Names the one engine to run, if it is not to be all.
const ONLY: &str = "HANGTRUE_ENGINE";

/// Ctrl-C reaches this process but not the drivers, which are in groups of their own: the trial that
/// runs must end them, and no other may start.
static INTERRUPTED: AtomicBool = AtomicBool::new(false);

/// Milliseconds that each engine's scenarios took, in the order of [`Engine::ALL`].
static TOOK: [AtomicU64; Engine::ALL.len()] = [const { AtomicU64::new(0) }; Engine::ALL.len()];

type Run = for<'a> fn(&'a mut Browser) -> Pin<Box<dyn Future<Output = Result<()>> + 'a>>;

/// A scenario and its name.
#[derive(Clone, Copy)]
pub struct Scenario {
    /// `file::function`.
    pub name: &'static str,
    /// What an engine must have.
    pub needs: &'static [Feature],
    /// The function.
    pub run: Run,
}

/// A [`Scenario`] from the path of its function, and the [`Feature`]s it needs:
/// `scenario!(paper::one_page; Print)`.
#[macro_export]
macro_rules! scenario {
    ($($path:ident)::+ $(; $($feature:ident),+)?) => {
        $crate::Scenario {
            name: concat!($("::", stringify!($path)),+),
            needs: &[$($($crate::Feature::$feature),+)?],
            run: |browser| Box::pin($($path)::+(browser)),
        }
    };
}

/// Runs the scenarios that the command line asks for, in every engine there is.
pub fn run(scenarios: &[Scenario]) -> ExitCode {
    let arguments = Arguments::from_args();
    let only = env::var(ONLY).ok();
    let mut trials = Vec::new();
    for (engine, took) in Engine::ALL.into_iter().zip(&TOOK) {
        if only.as_deref().is_some_and(|name| name != engine.name()) {
            continue;
        }
        let missing = engine.is_missing();
        if let Some(reason) = &missing {
            eprintln!("{}: its scenarios are ignored ({reason})", engine.name());
        }
        for &Scenario { name, needs, run } in scenarios {
            let name = name.trim_start_matches(':');
            let lacks = needs.iter().find_map(|&feature| engine.lacks(feature));
            if let Some(reason) = lacks {
                eprintln!("{}: {name} is ignored ({reason})", engine.name());
            }
            let trial = Trial::test(name, move || {
                let start = Instant::now();
                let result = trial(engine, needs, run);
                let millis = u64::try_from(start.elapsed().as_millis()).unwrap_or(u64::MAX);
                took.fetch_add(millis, Ordering::Relaxed);
                result
            });
            let is_ignored = missing.is_some() || lacks.is_some();
            trials.push(trial.with_kind(engine.name()).with_ignored_flag(is_ignored));
        }
    }
    if trials.is_empty() {
        let known = Engine::ALL.map(Engine::name).join(", ");
        eprintln!("{ONLY} is `{}`: it must be one of {known}", only.unwrap_or_default());
        return ExitCode::FAILURE;
    }
    let code = libtest_mimic::run(&arguments, trials).exit_code();
    for (engine, took) in Engine::ALL.into_iter().zip(&TOOK) {
        let seconds = took.load(Ordering::Relaxed) / 1000;
        if seconds > 0 {
            eprintln!("{}: {seconds} s, its scenarios added up", engine.name());
        }
    }
    code
}

fn trial(engine: Engine, needs: &[Feature], run: Run) -> Result<(), Failed> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    runtime.block_on(async {
        if INTERRUPTED.load(Ordering::SeqCst) {
            return Err(Failed::from("interrupted"));
        }
        let deadline = if engine::frames().is_some() { DEADLINE_SLOW } else { DEADLINE };
        let started = tokio::time::timeout(deadline, Browser::start(engine, needs)).await;
        let started = started.map_err(|_| format!("no session after {deadline:?}"))?;
        let mut browser = started.map_err(|error| told(&error))?;
        // A failed assertion must still end the session.
        let ran = AssertUnwindSafe(tokio::time::timeout(deadline, run(&mut browser)));
        let ran = tokio::select! {
            ran = ran.catch_unwind() => ran,
            _ = tokio::signal::ctrl_c() => {
                INTERRUPTED.store(true, Ordering::SeqCst);
                Ok(Ok(Err(anyhow!("interrupted"))))
            }
        };
        let result = match ran {
            Ok(Ok(Ok(()))) => browser.check().await,
            Ok(Ok(Err(error))) => Err(error),
            Ok(Err(_)) => Err(anyhow!("not done after {deadline:?}")),
            Err(panic) => {
                let text = panic.downcast_ref::<String>().cloned();
                let text = text.or_else(|| panic.downcast_ref::<&str>().map(|&text| text.into()));
                Err(anyhow!("{}", text.unwrap_or_else(|| "a panic without a text".to_owned())))
            }
        };
        let said = browser.drive.said();
        browser.close().await;
        result.map_err(|error| {
            let told = told(&error);
            // An engine that ends by itself says why there, and nothing to its driver.
            Failed::from(if said.is_empty() { told } else { format!("{told}\nit said:\n{said}") })
        })
    })
}

/// An error and its causes. Of what a driver answered, its kind too: the message may be empty.
fn told(error: &anyhow::Error) -> String {
    let kind = error.chain().find_map(|cause| match cause.downcast_ref() {
        Some(CmdError::Standard(answer)) => Some(&answer.error),
        _ => None,
    });
    kind.map_or_else(|| format!("{error:#}"), |kind| format!("{error:#} ({kind})"))
}
