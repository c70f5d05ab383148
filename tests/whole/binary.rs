//! `sowbell serve` as a keeper runs it: its settings, its exit status, its signals, its log.

use std::fs::File;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output};
use std::time::{Duration, Instant};

use crate::platform::{FakePlatform, Fault, State, Which};

/// What a keeper, or the machine that runs the bot, may wait for it to stop.
const STOPPING: Duration = Duration::from_secs(10);

/// The program, with nothing but these variables set.
fn sowbell(folder: &Path, variables: &[(&str, &str)]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_sowbell"));
    command.arg("serve").current_dir(folder).env_clear().envs(variables.iter().copied());
    command
}

/// What came of a start that is expected to fail.
fn refused(variables: &[(&str, &str)]) -> (Option<i32>, String) {
    let folder = tempfile::tempdir().expect("a folder");
    let Output { status, stdout, stderr } =
        sowbell(folder.path(), variables).output().expect("the program starts");
    assert!(stdout.is_empty(), "nothing is promised on standard output");
    (status.code(), String::from_utf8(stderr).expect("text"))
}

/// Asserts that the complaint is a single line that names the variable, and says nothing secret.
#[track_caller]
fn assert_one_line_about(name: &str, (status, complaint): &(Option<i32>, String)) {
    let lines: Vec<&str> = complaint.lines().collect();
    assert_eq!(lines.len(), 1, "one line was expected: {complaint}");
    assert!(complaint.starts_with("sowbell: ") && complaint.contains(name), "{complaint}");
    assert!(!complaint.contains("sesame"), "{complaint}");
    assert_eq!(*status, Some(2), "{complaint}");
}

const TOKEN: (&str, &str) = ("SOWBELL_TOKEN", "12345:open-sesame");

#[test]
fn what_is_wrong_with_the_settings_is_said_in_a_line_that_names_the_variable() {
    let file = "SOWBELL_DATABASE_URL";
    assert_one_line_about("SOWBELL_TOKEN", &refused(&[]));
    assert_one_line_about("SOWBELL_TOKEN", &refused(&[("SOWBELL_TOKEN", "open-sesame")]));
    for url in ["here", "ftp://127.0.0.1", "http://"] {
        assert_one_line_about("SOWBELL_API_URL", &refused(&[TOKEN, ("SOWBELL_API_URL", url)]));
    }
    for url in ["mysql://u:sesame@h/db", "nothing", "sqlite", "postgres://sowbell:sesame@h/db"] {
        assert_one_line_about(file, &refused(&[TOKEN, (file, url)]));
    }
    assert_one_line_about("SOWBELL_LOG", &refused(&[TOKEN, ("SOWBELL_LOG", "sowbell=loud,,=")]));
}

#[test]
fn a_database_that_cannot_be_opened_is_named() {
    let log = ("SOWBELL_LOG", "off");
    let folder = ("SOWBELL_DATABASE_URL", "sqlite:///no/such/folder/sowbell.db");
    let (status, complaint) = refused(&[TOKEN, folder, log]);
    assert_eq!(complaint.lines().count(), 1, "{complaint}");
    assert!(complaint.contains("SOWBELL_DATABASE_URL"), "{complaint}");
    assert_ne!(status, Some(0), "{complaint}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_token_that_the_platform_refuses_is_named() {
    let platform = FakePlatform::start().await;
    let url = platform.url();
    let log = ("SOWBELL_LOG", "off");
    assert_one_line_about("SOWBELL_TOKEN", &refused(&[TOKEN, ("SOWBELL_API_URL", &url), log]));
}

/// A running program, which does not outlive its test.
struct Running {
    program: Child,
    /// A file, since a pipe that nobody reads would hold the program up.
    log: PathBuf,
}

impl Running {
    fn start(folder: &Path, command: &mut Command) -> Self {
        let log = folder.join("log");
        let file = File::create(&log).expect("a file for the log");
        let program = command.stderr(file).spawn().expect("the program starts");
        Self { program, log }
    }

    /// Sends a signal, and waits for the end within the time that is promised.
    fn stop(mut self, signal: &str) -> (Option<i32>, String) {
        let id = self.program.id().to_string();
        let told = Instant::now();
        let sent = Command::new("kill").args([&format!("-{signal}"), &id]).status();
        assert!(sent.expect("kill").success());
        let status = self.program.wait().expect("an end");
        let log = std::fs::read_to_string(&self.log).expect("the log");
        assert!(told.elapsed() < STOPPING, "it took {:?} to stop:\n{log}", told.elapsed());
        (status.code(), log)
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        // It may have ended by itself.
        let _ = self.program.kill();
        let _ = self.program.wait();
    }
}

async fn polled(platform: &FakePlatform) {
    let limit = Duration::from_secs(30);
    let polls = |state: &State| state.calls().iter().any(|call| call.method == "getUpdates");
    platform.wait_within(limit, "a poll", |state| polls(state).then_some(())).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn settings_come_from_a_file_and_the_environment_wins() {
    let folder = tempfile::tempdir().expect("a folder");
    let platform = FakePlatform::start().await;
    let settings = format!(
        "sowbell_token = \"{}\"\nsowbell_api_url = \"http://127.0.0.1:9/\"\n\
         sowbell_database_url = \"sqlite:garden.db\"\n",
        platform.token()
    );
    std::fs::write(folder.path().join("sowbell.toml"), settings).expect("written");
    let url = platform.url();
    let mut command = sowbell(folder.path(), &[("SOWBELL_API_URL", &url)]);
    let running = Running::start(folder.path(), command.args(["--settings", "sowbell.toml"]));
    polled(&platform).await;
    let (status, log) = running.stop("TERM");
    assert_eq!(status, Some(0), "{log}");
    assert!(folder.path().join("garden.db").exists());
    assert!(log.contains("stopped"), "{log}");
}

#[test]
fn a_settings_file_with_a_slip_is_told_by_its_line() {
    let folder = tempfile::tempdir().expect("a folder");
    let slips = "sowbell_token = \"12345:open-sesame\"\nsowbell_datbase_url = \"sqlite:x.db\"\n";
    std::fs::write(folder.path().join("sowbell.toml"), slips).expect("written");
    let mut command = sowbell(folder.path(), &[]);
    let Output { status, stderr, .. } =
        command.args(["--settings", "sowbell.toml"]).output().expect("the program starts");
    let complaint = String::from_utf8(stderr).expect("text");
    assert_one_line_about("sowbell_datbase_url", &(status.code(), complaint.clone()));
    assert!(complaint.contains("line 2"), "{complaint}");
}

#[tokio::test(flavor = "multi_thread")]
async fn either_signal_stops_it_in_time_while_a_poll_is_open_and_messages_wait() {
    let folder = tempfile::tempdir().expect("a folder");
    let platform = FakePlatform::start().await;
    let (url, token) = (platform.url(), platform.token());
    let variables = [("SOWBELL_API_URL", url.as_str()), ("SOWBELL_TOKEN", &token)];
    let fern = platform.add_user("Fern", Some("en"));
    for signal in ["TERM", "INT"] {
        // The answer is refused for as long as the program runs.
        platform.on_request(move |call| {
            let limit = Fault::TooManyRequests { retry_after: 2 };
            (call.chat() == Some(fern)).then_some(limit)
        });
        let running = Running::start(folder.path(), &mut sowbell(folder.path(), &variables));
        platform.user_says(fern, "/help");
        let polls = platform.requests_of("getUpdates");
        let tried = |state: &State| {
            let refused = state.calls().iter().any(|call| call.answer == Some(429));
            let done = refused && state.pending_updates() == 0;
            (done && state.requests()["getUpdates"] > polls).then_some(())
        };
        platform.wait_within(Duration::from_secs(30), "the answer to be tried", tried).await;
        let (status, log) = running.stop(signal);
        assert_eq!(status, Some(0), "{signal}: {log}");
    }
    // Nothing of it is lost.
    platform.behave();
    let running = Running::start(folder.path(), &mut sowbell(folder.path(), &variables));
    let limit = Duration::from_secs(30);
    let both = |state: &State| (state.sent_to(fern).len() == 2).then_some(());
    platform.wait_within(limit, "the answers that waited", both).await;
    assert_eq!(running.stop("TERM").0, Some(0));
    assert!(platform.violations().is_empty(), "{:?}", platform.violations());
}

#[tokio::test(flavor = "multi_thread")]
async fn the_token_is_in_no_log_however_much_is_logged_and_whatever_fails() {
    let folder = tempfile::tempdir().expect("a folder");
    let platform = FakePlatform::start().await;
    let (url, token) = (platform.url(), platform.token());
    let settings = [
        ("SOWBELL_API_URL", url.as_str()),
        ("SOWBELL_TOKEN", &token),
        ("SOWBELL_LOG", "trace"),
        ("RUST_BACKTRACE", "1"),
    ];
    let fern = platform.add_user("Fern", Some("en"));
    let cut = |method: &str, fault: Fault| platform.fail(Which::method(method), 1, fault);
    cut("getMe", Fault::CutBefore);
    cut("getUpdates", Fault::CutBefore);
    cut("sendMessage", Fault::CutBefore);
    cut("sendMessage", Fault::AcceptThenCut);
    cut("setMyCommands", Fault::CutBefore);
    let refusal = format!("Bad Request: no such method bot{token}/SendMessage");
    cut("sendMessage", Fault::Refuse { code: 400, description: refusal });
    let running = Running::start(folder.path(), &mut sowbell(folder.path(), &settings));
    platform.user_says(fern, "/help");
    platform.user_says(fern, "/settings");
    platform.user_says(fern, "/mycrops");
    let done = |state: &State| (state.faults_left() == 0).then_some(());
    platform.wait_within(Duration::from_secs(40), "every fault to strike", done).await;
    let (status, log) = running.stop("TERM");
    assert_eq!(status, Some(0));
    assert!(log.contains("DEBUG") && log.contains("will be tried again"), "{log}");
    let secret = token.split_once(':').expect("a token").1;
    for line in log.lines() {
        assert!(!line.contains(secret), "the token is in the log: {line}");
    }
    for file in std::fs::read_dir(folder.path()).expect("the folder") {
        let path = file.expect("a file").path();
        let bytes = std::fs::read(&path).expect("its bytes");
        let found = bytes.windows(secret.len()).any(|some| some == secret.as_bytes());
        assert!(!found, "the token is in {}", path.display());
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn it_stops_in_time_while_the_platform_cannot_be_reached() {
    let folder = tempfile::tempdir().expect("a folder");
    let url = {
        let gone = FakePlatform::start().await;
        gone.url()
    };
    let settings = [TOKEN, ("SOWBELL_API_URL", url.as_str())];
    let running = Running::start(folder.path(), &mut sowbell(folder.path(), &settings));
    // The database is there once the start is under way.
    let deadline = Instant::now() + Duration::from_secs(30);
    while !folder.path().join("sowbell.db").exists() {
        assert!(Instant::now() < deadline, "no database was made");
        tokio::time::sleep(Duration::from_millis(5)).await;
    }
    let (status, log) = running.stop("TERM");
    assert_eq!(status, Some(0), "{log}");
    assert!(!log.contains("sesame"), "{log}");
}
