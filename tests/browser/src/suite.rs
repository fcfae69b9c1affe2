//! Runs scenarios: one trial for each engine, with a browser of its own.

use std::future::Future;
use std::panic::AssertUnwindSafe;
use std::pin::Pin;
use std::process::ExitCode;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;

use anyhow::{Result, anyhow};
use futures::FutureExt as _;
use libtest_mimic::{Arguments, Failed, Trial};

use crate::browser::Browser;
use crate::engine::Engine;

/// No scenario may hang: after this long it has failed.
const DEADLINE: Duration = Duration::from_secs(180);

/// Ctrl-C reaches this process but not the drivers, which are in groups of their own: the trial that
/// runs must end them, and no other may start.
static INTERRUPTED: AtomicBool = AtomicBool::new(false);

type Run = for<'a> fn(&'a mut Browser) -> Pin<Box<dyn Future<Output = Result<()>> + 'a>>;

/// A scenario and its name.
#[derive(Clone, Copy)]
pub struct Scenario {
    /// `file::function`.
    pub name: &'static str,
    /// The function.
    pub run: Run,
}

/// A [`Scenario`] from the path of its function.
#[macro_export]
macro_rules! scenario {
    ($($path:ident)::+) => {
        $crate::Scenario {
            name: concat!($("::", stringify!($path)),+),
            run: |browser| Box::pin($($path)::+(browser)),
        }
    };
}

/// Runs the scenarios that the command line asks for, in every engine there is.
pub fn run(scenarios: &[Scenario]) -> ExitCode {
    let arguments = Arguments::from_args();
    let mut trials = Vec::new();
    for engine in Engine::ALL {
        let lacks = engine.lacks();
        if let Some(reason) = &lacks {
            eprintln!("{}: its scenarios are ignored ({reason})", engine.name());
        }
        for &Scenario { name, run } in scenarios {
            let name = name.trim_start_matches(':').to_owned();
            let trial = Trial::test(name, move || trial(engine, run))
                .with_kind(engine.name())
                .with_ignored_flag(lacks.is_some());
            trials.push(trial);
        }
    }
    libtest_mimic::run(&arguments, trials).exit_code()
}

fn trial(engine: Engine, run: Run) -> Result<(), Failed> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    runtime.block_on(async {
        if INTERRUPTED.load(Ordering::SeqCst) {
            return Err(Failed::from("interrupted"));
        }
        let mut browser = Browser::start(engine).await.map_err(|error| format!("{error:#}"))?;
        // A failed assertion must still end the session.
        let ran = AssertUnwindSafe(tokio::time::timeout(DEADLINE, run(&mut browser)));
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
            Ok(Err(_)) => Err(anyhow!("not done after {DEADLINE:?}")),
            Err(panic) => {
                let text = panic.downcast_ref::<String>().cloned();
                let text = text.or_else(|| panic.downcast_ref::<&str>().map(|&text| text.into()));
                Err(anyhow!("{}", text.unwrap_or_else(|| "a panic without a text".to_owned())))
            }
        };
        browser.close().await;
        result.map_err(|error| Failed::from(format!("{error:#}")))
    })
}
