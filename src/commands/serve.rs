//! `sowbell serve`: the running bot.

use std::io;
use std::path::PathBuf;

use anyhow::Context;
use chrono::{DateTime, Utc};
use clap::Args;
use tracing_subscriber::EnvFilter;

use super::CommandError;
use super::flags::BadInput;
use crate::app::{Clock, SendLimits};
use crate::config::Settings;
use crate::store::StoreError;
use crate::telegram::{ConnectError, ServeError, Serving, serve};

/// The arguments of `sowbell serve`.
#[derive(Debug, Args)]
pub struct ServeArgs {
    /// A TOML file with the settings, named as in the environment but in lower case.
    #[arg(long, value_name = "FILE")]
    settings: Option<PathBuf>,
    /// Begin at this instant instead of now, to rehearse another day: 2026-04-22T06:59:00Z.
    #[arg(long, value_name = "INSTANT")]
    clock_from: Option<String>,
    /// Send at most this many messages a second, all chats together; the platform's limit is 30.
    #[arg(long, value_name = "NUMBER")]
    send_rate: Option<u32>,
}

pub(super) fn run(args: &ServeArgs) -> Result<(), CommandError> {
    let settings = Settings::read(args.settings.as_deref(), |name| std::env::var(name).ok())
        .map_err(|error| BadInput(error.to_string()))?;
    let clock = clock(args.clock_from.as_deref())?;
    let limits = limits(args.send_rate)?;
    start_log(&settings.log)?;
    let serving = Serving {
        token: settings.token,
        api_url: settings.api_url,
        database_url: settings.database_url,
        clock,
        limits,
    };
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .enable_all()
        .build()
        .context("the runtime could not be started")?;
    let served = runtime.block_on(async {
        let shutdown = shutdown_signal().context("signals cannot be listened for")?;
        anyhow::Ok(serve(serving, shutdown).await)
    })?;
    // Whatever still runs has had its time.
    runtime.shutdown_background();
    served.map_err(|error| match &error {
        ServeError::Store(StoreError::Url(_))
        | ServeError::Connect(
            ConnectError::NotAToken | ConnectError::TokenRefused | ConnectError::Address(_),
        ) => BadInput(error.to_string()).into(),
        _ => CommandError::Broken(anyhow::Error::from(error)),
    })
}

fn clock(from: Option<&str>) -> Result<Clock, BadInput> {
    let Some(text) = from else { return Ok(Clock::system()) };
    let start = text.parse::<DateTime<Utc>>().map_err(|_| {
        BadInput(format!(
            "--clock-from {text}: that is not an instant; write it like 2026-04-22T06:59:00Z"
        ))
    })?;
    Ok(Clock::starting_at(start))
}

/// The platform's limits, or all of them in proportion to another rate.
fn limits(rate: Option<u32>) -> Result<SendLimits, BadInput> {
    let platform = SendLimits::platform();
    match rate {
        None => Ok(platform),
        Some(0) => Err(BadInput("--send-rate 0 would send nothing: give 1 or more".to_owned())),
        Some(rate) if rate <= platform.overall_per_second => {
            Ok(SendLimits { overall_per_second: rate, ..platform })
        }
        Some(rate) => {
            let times = rate.div_ceil(platform.overall_per_second);
            Ok(SendLimits {
                overall_per_second: rate,
                chat_per_second: platform.chat_per_second.saturating_mul(times),
                group_per_minute: platform.group_per_minute.saturating_mul(times),
            })
        }
    }
}

fn start_log(filter: &str) -> Result<(), BadInput> {
    let filter = EnvFilter::try_new(filter).map_err(|_| {
        BadInput(
            "SOWBELL_LOG is not a log filter: use info, debug, or one like sowbell=debug"
                .to_owned(),
        )
    })?;
    // The HTTP client's own traces could show an address with the token in it.
    let quiet = ["hyper=info", "hyper_util=info", "reqwest=info", "h2=info", "rustls=info"];
    let filter =
        quiet.iter().filter_map(|rule| rule.parse().ok()).fold(filter, EnvFilter::add_directive);
    tracing_subscriber::fmt().with_env_filter(filter).with_writer(io::stderr).init();
    Ok(())
}

/// Ends with the first SIGTERM or SIGINT. The handlers are set when this returns, so that no
/// signal falls between.
#[cfg(unix)]
fn shutdown_signal() -> io::Result<impl Future<Output = ()> + Send + 'static> {
    use tokio::signal::unix::{SignalKind, signal};
    let mut terminate = signal(SignalKind::terminate())?;
    let mut interrupt = signal(SignalKind::interrupt())?;
    Ok(async move {
        tokio::select! {
            _ = terminate.recv() => tracing::info!("told to stop"),
            _ = interrupt.recv() => tracing::info!("interrupted"),
        }
    })
}

/// Ends when interrupted.
#[cfg(not(unix))]
fn shutdown_signal() -> io::Result<impl Future<Output = ()> + Send + 'static> {
    Ok(async {
        let _ = tokio::signal::ctrl_c().await;
    })
}
