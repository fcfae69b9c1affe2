//! What the command says of itself: help, completion, manual pages.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod run;

use run::{golden, run};

const COMMANDS: [&str; 9] =
    ["read", "check", "link", "open", "code", "compare", "profile", "completion", "man"];

#[test]
fn help_names_every_command_and_every_exit_code() {
    let help = run(&["--help"]);
    assert_eq!(help.code, 0);
    golden("help.txt", &help.stdout);
    let mut all = String::new();
    for command in COMMANDS {
        let told = run(&[command, "--help"]);
        assert_eq!(told.code, 0, "{command}");
        assert!(help.stdout.contains(&format!("  {command} ")), "{command}");
        all += &format!("$ hangtrue {command} --help\n{}\n", told.stdout);
    }
    golden("help-commands.txt", &all);
}

#[test]
fn every_shell_has_its_completion() {
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let script = run(&["completion", shell]);
        assert_eq!(script.code, 0, "{shell}");
        for command in COMMANDS {
            assert!(script.stdout.contains(command), "{shell}: {command}");
        }
        assert!(script.stdout.contains("fail-on"), "{shell}");
    }
    let other = run(&["completion", "csh"]);
    assert_eq!(other.code, 2);
    assert!(other.stderr.contains("bash"), "{}", other.stderr);
}

#[test]
fn every_command_has_its_manual_page() {
    golden("man.1", &run(&["man"]).stdout);
    for command in COMMANDS {
        let page = run(&["man", command]);
        assert_eq!(page.code, 0, "{command}");
        assert!(page.stdout.contains(".SH SYNOPSIS"), "{command}");
        assert!(
            page.stdout.contains(&format!("hangtrue\\-{command}")),
            "{command}: {}",
            page.stdout
        );
    }
    let none = run(&["man", "chekc"]);
    assert_eq!(none.code, 2);
    assert!(
        none.stderr.contains("there is no command “chekc”; there are: read, check"),
        "{}",
        none.stderr
    );
}
