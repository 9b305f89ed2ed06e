//! Reads aloud on a computer with a program of the system. The program starts when it is needed, so
//! that installing Surefoot does not require it.

use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::Duration;
use surefoot_app::{CallError, Language, Voice, VoiceMissing};

/// Time between two checks whether the reading is over.
const CHECK_AGAIN: Duration = Duration::from_millis(60);

#[cfg(any(target_os = "macos", windows))]
const MISSING: VoiceMissing = VoiceMissing::SystemVoice;
#[cfg(not(any(target_os = "macos", windows)))]
const MISSING: VoiceMissing = VoiceMissing::SpeechDispatcher;

/// The current reading. Its number tells a waiting call whether it is its own.
#[derive(Default)]
struct Reading {
    turn: u64,
    child: Option<Child>,
}

/// The program that reads.
#[cfg(target_os = "macos")]
const READER: &str = "say";
#[cfg(windows)]
const READER: &str = "powershell";
#[cfg(not(any(target_os = "macos", windows)))]
const READER: &str = "spd-say";

/// The speech program of the system.
pub struct SystemVoice {
    reader: PathBuf,
    reading: Mutex<Reading>,
}

impl Default for SystemVoice {
    fn default() -> Self {
        Self::by(READER)
    }
}

impl SystemVoice {
    fn by(reader: impl Into<PathBuf>) -> Self {
        Self {
            reader: reader.into(),
            reading: Mutex::default(),
        }
    }

    fn reading(&self) -> MutexGuard<'_, Reading> {
        self.reading.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Whether reading `mine` goes on. Checks whether its program has ended.
    fn goes_on(&self, mine: u64) -> Result<bool, CallError> {
        let mut reading = self.reading();
        if reading.turn != mine {
            return Ok(false);
        }
        let Some(child) = &mut reading.child else {
            return Ok(false);
        };
        match child.try_wait() {
            Ok(None) => Ok(true),
            Ok(Some(status)) if status.success() => {
                reading.child = None;
                Ok(false)
            }
            _ => {
                reading.child = None;
                Err(none())
            }
        }
    }
}

fn none() -> CallError {
    CallError::NoVoice { missing: MISSING }
}

impl Voice for SystemVoice {
    fn speak(&self, text: &str, language: Language) -> Result<(), CallError> {
        let mine = {
            let mut reading = self.reading();
            reading.turn += 1;
            reading.child = Some(begin(&self.reader, text, language).ok_or_else(none)?);
            reading.turn
        };
        while self.goes_on(mine)? {
            std::thread::sleep(CHECK_AGAIN);
        }
        Ok(())
    }

    fn stop(&self) {
        let Some(mut child) = self.reading().child.take() else {
            return;
        };
        // Fails if it has just ended.
        let _ = child.kill();
        let _ = child.wait();
        silence(&self.reader);
    }
}

/// Starts a program and gives it the text.
fn started(mut command: Command, text: Option<&str>) -> Option<Child> {
    command
        .stdin(if text.is_some() {
            Stdio::piped()
        } else {
            Stdio::null()
        })
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    let mut child = command.spawn().ok()?;
    if let (Some(text), Some(mut input)) = (text, child.stdin.take()) {
        // Fails if the program has ended already; the next check notices that.
        let _ = input.write_all(text.as_bytes());
    }
    Some(child)
}

/// Speech Dispatcher, the speech service of Linux desktops, which starts by itself. `-w` waits until
/// the reading is over. Only short options, because version 0.11 misreads `--stop`.
#[cfg(not(any(target_os = "macos", windows)))]
fn begin(reader: &Path, text: &str, language: Language) -> Option<Child> {
    let mut command = Command::new(reader);
    // The most general voice, because the dispatcher knows few regions.
    let voice = language.voices().last()?;
    command.args(["-w", "-N", "surefoot", "-l", voice, "--", text]);
    started(command, None)
}

/// The dispatcher goes on when its program ends, so a command stops it.
#[cfg(not(any(target_os = "macos", windows)))]
fn silence(reader: &Path) {
    let mut command = Command::new(reader);
    command.arg("-S");
    if let Some(mut child) = started(command, None) {
        let _ = child.wait();
    }
}

#[cfg(target_os = "macos")]
fn begin(reader: &Path, text: &str, language: Language) -> Option<Child> {
    let list = Command::new(reader).args(["-v", "?"]).output().ok()?;
    let list = String::from_utf8_lossy(&list.stdout).into_owned();
    let mut command = Command::new(reader);
    command.args(["-v", voice_of(&list, language)?, "-f", "-"]);
    started(command, Some(text))
}

/// The best voice of a language in the list of `say -v ?`. Each line has a name, a region, `#` and a
/// sentence.
#[cfg(any(target_os = "macos", test))]
fn voice_of(list: &str, language: Language) -> Option<&str> {
    let named = |begin: &str| {
        list.lines().find_map(|line| {
            let (head, _) = line.split_once('#')?;
            let (name, place) = head.trim_end().rsplit_once(char::is_whitespace)?;
            place.starts_with(begin).then(|| name.trim())
        })
    };
    let mut voices = language.voices().iter();
    voices.find_map(|tag| named(&tag.replace('-', "_")))
}

#[cfg(windows)]
fn begin(reader: &Path, text: &str, language: Language) -> Option<Child> {
    use std::os::windows::process::CommandExt as _;
    /// `CREATE_NO_WINDOW`.
    const NO_WINDOW: u32 = 0x0800_0000;
    let script = format!(
        "[Console]::InputEncoding = [Text.Encoding]::UTF8; \
         Add-Type -AssemblyName System.Speech; \
         $s = New-Object System.Speech.Synthesis.SpeechSynthesizer; \
         $all = $s.GetInstalledVoices() | Where-Object {{ $_.Enabled }}; \
         $v = $null; \
         foreach ($tag in '{}' -split ' ') {{ if (-not $v) {{ $v = $all | Where-Object {{ \
         $c = $_.VoiceInfo.Culture; $c.Name -eq $tag -or $c.TwoLetterISOLanguageName -eq $tag \
         }} | Select-Object -First 1 }} }}; \
         if (-not $v) {{ exit 3 }}; \
         $s.SelectVoice($v.VoiceInfo.Name); $s.Speak([Console]::In.ReadToEnd())",
        language.voices().join(" ")
    );
    let mut command = Command::new(reader);
    command
        .args(["-NoProfile", "-NonInteractive", "-Command", &script])
        .creation_flags(NO_WINDOW);
    started(command, Some(text))
}

/// The reading ends with its program.
#[cfg(any(target_os = "macos", windows))]
fn silence(_reader: &Path) {}

#[cfg(test)]
mod tests {
    use super::*;

    /// A reader for tests, which notes its arguments and then runs `does`.
    #[cfg(all(unix, not(target_os = "macos")))]
    fn reader(folder: &Path, does: &str) -> SystemVoice {
        use std::os::unix::fs::PermissionsExt as _;
        let path = folder.join("reader");
        let noted = folder.join("noted");
        let script = format!(
            "#!/bin/sh\nprintf '%s|' \"$@\" >> '{}'\n[ \"$1\" = -S ] && exit 0\n{does}\n",
            noted.display()
        );
        std::fs::write(&path, script).unwrap();
        std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o755)).unwrap();
        SystemVoice::by(path)
    }

    #[test]
    #[cfg(all(unix, not(target_os = "macos")))]
    fn a_text_is_read_to_its_end_or_until_it_is_stopped() {
        let folder = tempfile::tempdir().unwrap();
        let noted = || std::fs::read_to_string(folder.path().join("noted")).unwrap();
        let quick = reader(folder.path(), "exit 0");
        assert_eq!(
            quick.speak("-3 \"más\" 2", Language::tagged("es").unwrap()),
            Ok(())
        );
        assert_eq!(noted(), "-w|-N|surefoot|-l|es|--|-3 \"más\" 2|");

        let long = reader(folder.path(), "exec sleep 30");
        let begun = std::time::Instant::now();
        std::thread::scope(|scope| {
            let reading = scope.spawn(|| long.speak("one", Language::first()));
            while !noted().contains("one") {
                std::thread::sleep(CHECK_AGAIN);
            }
            long.stop();
            assert_eq!(reading.join().unwrap(), Ok(()));
        });
        assert!(begun.elapsed() < Duration::from_secs(20));
        assert!(noted().ends_with("-S|"));
        // Without a reading, the speech of other programs is not stopped.
        let before = noted();
        long.stop();
        assert_eq!(noted(), before);
    }

    #[test]
    #[cfg(all(unix, not(target_os = "macos")))]
    fn without_a_reader_or_with_one_that_fails_the_reason_is_named() {
        let folder = tempfile::tempdir().unwrap();
        let fails = reader(folder.path(), "exit 1");
        let missing = SystemVoice::by(folder.path().join("not there"));
        for voice in [fails, missing] {
            assert_eq!(voice.speak("one", Language::first()), Err(none()));
        }
    }

    #[test]
    fn a_voice_is_found_by_its_language() {
        let list = "Alex                en_US    # Most people recognize me by my voice.\n\
                    Bad News            en_US    # The light you see at the end of the tunnel.\n\
                    Daniel              en_GB    # Hello, my name is Daniel.\n\
                    Jorge               es_ES    # Hola, me llamo Jorge.\n\
                    Paulina             es_MX    # Hola, me llamo Paulina.\n";
        assert_eq!(voice_of(list, Language::first()), Some("Alex"));
        assert_eq!(
            voice_of(list, Language::tagged("es").unwrap()),
            Some("Paulina"),
            "the first tag of the table that has a voice"
        );
        assert_eq!(
            voice_of("Thomas  fr_FR  # Bonjour", Language::tagged("es").unwrap()),
            None
        );
    }
}
