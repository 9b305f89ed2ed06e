//! Imports hand-ins, and reports on every file.
//!
//! The desk keeps every hand-in as opened and derives the reports of a seat from those of its
//! accepted devices. So the same hand-ins give the same reports in any order, also if an import
//! is stopped, repeated or undone.

use super::derive;
use super::views::{
    FileReport, IMPORTS_A_PAGE, ImportReport, Journal, LINES_A_PAGE, Tally, Undoable, Verdict,
};
use crate::class::{OpenClass, open_class};
use crate::error::{DeskError, faulty};
use chrono::NaiveDate;
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::io::Read;
use surefoot_catalogue::ConceptId;
use surefoot_exchange::{
    Checked, CheckedHandIn, Flag, HAND_IN_CAPS, HandIn, HandInExpectations, OpenedHandIn,
    PublicKey, Refusal, SealingIdentity, open_hand_in,
};
use surefoot_record::{ClassId, SeatToken};
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceRow, DeviceState, HandInKept, ImportFileRow, ImportRow};

/// An import under way.
pub struct Import<'a> {
    desk: &'a DeskStore,
    classes: Vec<ImportClass>,
    number: i64,
    today: NaiveDate,
}

/// What the check of a file needs of a class.
struct ImportClass {
    id: ClassId,
    class: OpenClass,
    identity: SealingIdentity,
    concepts: BTreeSet<ConceptId>,
}

/// Opens hand-ins of the classes of a desk.
pub struct Opener {
    identities: Vec<SealingIdentity>,
}

impl Opener {
    /// Opens one file.
    pub fn open(&self, bytes: Result<impl Read, Refusal>) -> Result<OpenedHandIn, Refusal> {
        open_hand_in(bytes?, &self.identities, &HAND_IN_CAPS)
    }
}

impl<'a> Import<'a> {
    /// Opens an import in the desk's journal.
    pub fn begin(desk: &'a DeskStore, today: NaiveDate) -> Result<Self, DeskError> {
        let mut classes = Vec::new();
        for row in desk.classes()? {
            let class = open_class(desk, &row.id)?;
            classes.push(ImportClass {
                id: ClassId::new(row.id).map_err(faulty)?,
                identity: SealingIdentity::from_identity_file(&class.row.sealing_identity)?,
                concepts: (class.facts.concepts.values())
                    .map(|concept| concept.id.clone())
                    .collect(),
                class,
            });
        }
        Ok(Self {
            desk,
            classes,
            number: desk.begin_import(today)?,
            today,
        })
    }

    /// Returns what opens the files of this import. Opening is half of the work on a file and
    /// needs no desk, so another thread can do it.
    #[must_use]
    pub fn opener(&self) -> Opener {
        Opener {
            identities: (self.classes.iter())
                .map(|class| class.identity.clone())
                .collect(),
        }
    }

    /// Imports one opened file and stores its line of the import report. A refused file changes
    /// nothing else. Fails only if the store fails, never because of a file.
    pub fn take(
        &self,
        file_name: &str,
        opened: Result<OpenedHandIn, Refusal>,
    ) -> Result<FileReport, DeskError> {
        self.desk.transaction(|| {
            let (report, class) = self.judge(file_name, opened)?;
            self.desk.add_import_file(
                self.number,
                &ImportFileRow {
                    file_name: report.file_name.clone(),
                    verdict: serde_json::to_string(&report.verdict).map_err(faulty)?,
                    class,
                    seat: report.seat,
                    new_entries: report.new_entries,
                    flags: serde_json::to_string(&report.flags).map_err(faulty)?,
                },
            )?;
            Ok(report)
        })
    }

    /// Closes the import and returns its report.
    pub fn end(self, cancelled: bool) -> Result<ImportReport, DeskError> {
        if cancelled {
            self.desk.mark_import(self.number, true, false)?;
        }
        let row = self.desk.import(self.number)?;
        report(self.desk, row, &Names::read(self.desk)?)
    }

    fn judge(
        &self,
        file_name: &str,
        opened: Result<OpenedHandIn, Refusal>,
    ) -> Result<(FileReport, Option<String>), DeskError> {
        let refused = |refusal: Refusal| FileReport {
            file_name: file_name.to_owned(),
            verdict: Verdict::Refused { refusal },
            seat: None,
            name: None,
            class_title: None,
            new_entries: 0,
            flags: Vec::new(),
        };
        let opened = match opened {
            Ok(opened) => opened,
            Err(refusal) => return Ok((refused(refusal), None)),
        };
        let Some(class) = (self.classes.iter()).find(|class| class.id == *opened.class_id()) else {
            return Ok((refused(Refusal::WrongClass), None));
        };
        let id = Some(class.id.as_str().to_owned());
        let seat = (class.class.seats.iter()).find(|seat| seat.token == opened.seat().as_str());
        let known = match seat {
            Some(seat) => self.desk.devices_of(class.id.as_str(), seat.number)?,
            None => Vec::new(),
        };
        let (checked, seat) = match (self.check(class, opened, &known)?, seat) {
            (Ok(checked), Some(seat)) => (checked, seat),
            (checked, _) => {
                let mut report = refused(checked.err().unwrap_or(Refusal::SeatUnknown));
                report.class_title = Some(class.class.row.title.clone());
                return Ok((report, id));
            }
        };
        let (flags, verdict, new_entries) = match checked {
            Checked::Quarantined(hand_in) => {
                let contents = [hand_in.json(), hand_in.packed()];
                let first = DeviceState::Quarantined;
                let content = hand_in.content();
                self.keep(class, seat.number, content, contents, first, &known)?;
                (hand_in.flags().to_vec(), Verdict::Quarantined, 0)
            }
            Checked::Accepted(hand_in) => {
                let flags = hand_in.flags().to_vec();
                let (verdict, new_entries) = self.merge(class, seat.number, hand_in, &known)?;
                (flags, verdict, new_entries)
            }
        };
        let report = FileReport {
            file_name: file_name.to_owned(),
            verdict,
            seat: Some(seat.number),
            name: seat.name.clone(),
            class_title: Some(class.class.row.title.clone()),
            new_entries,
            flags,
        };
        Ok((report, id))
    }

    fn check(
        &self,
        class: &ImportClass,
        opened: OpenedHandIn,
        known: &[DeviceRow],
    ) -> Result<Result<Checked, Refusal>, DeskError> {
        let mut keys = BTreeSet::new();
        for device in known {
            if device.state == DeviceState::Accepted {
                keys.insert(PublicKey::new(device.signing_key.clone()).map_err(faulty)?);
            }
        }
        // The check looks up only the seat that the hand-in names.
        let mut seats: BTreeMap<SeatToken, BTreeSet<PublicKey>> = BTreeMap::new();
        if (class.class.seats.iter()).any(|seat| seat.token == opened.seat().as_str()) {
            seats.insert(opened.seat().clone(), keys);
        }
        let year = &class.class.facts.year;
        Ok(opened.check(
            &HandInExpectations {
                class_id: &class.id,
                first_day: year.first_day,
                last_day: year.last_day,
                seats: &seats,
                concepts: &class.concepts,
            },
            self.today,
        ))
    }

    /// Keeps a hand-in of an accepted device, and adds its record to the reports.
    fn merge(
        &self,
        class: &ImportClass,
        seat: u32,
        hand_in: CheckedHandIn,
        known: &[DeviceRow],
    ) -> Result<(Verdict, usize), DeskError> {
        let contents = [hand_in.json(), hand_in.packed()];
        let first = DeviceState::Accepted;
        let Some(before) = self.keep(class, seat, hand_in.content(), contents, first, known)?
        else {
            return Ok((Verdict::Known, 0));
        };
        let revision = hand_in.content().revision;
        let new_entries = derive::add(self.desk, class.id.as_str(), seat, hand_in.into_record())?;
        let verdict = match before.newest_revision {
            None if new_entries > 0 || !before.device_known => Verdict::New,
            Some(newest) if newest > revision => Verdict::Older,
            _ => Verdict::Updated,
        };
        Ok((verdict, new_entries))
    }

    /// Keeps a hand-in as opened. Returns `None` if exactly this one is kept already. A new
    /// device gets the state `first`.
    fn keep(
        &self,
        class: &ImportClass,
        seat: u32,
        content: &HandIn,
        [json, packed]: [&[u8]; 2],
        first: DeviceState,
        known: &[DeviceRow],
    ) -> Result<Option<Before>, DeskError> {
        let id = class.id.as_str();
        let content_hash: String = Sha256::digest(json)
            .iter()
            .map(|byte| format!("{byte:02x}"))
            .collect();
        let (device, key) = (content.device.as_str(), content.device_key.as_str());
        let known_state = known
            .iter()
            .find(|row| row.device == device && row.signing_key == key)
            .map(|row| row.state);
        let newest_revision = self.desk.newest_revision(id, seat, device, key)?;
        if self.desk.has_hand_in(id, seat, &content_hash)? {
            return Ok(None);
        }
        self.desk.keep_hand_in(
            id,
            &HandInKept {
                import: self.number,
                seat,
                device: device.to_owned(),
                signing_key: key.to_owned(),
                revision: content.revision,
                made_on: content.made_on,
                content_hash,
                content: packed.to_vec(),
            },
        )?;
        self.desk.put_device(
            id,
            &DeviceRow {
                seat,
                device: device.to_owned(),
                signing_key: key.to_owned(),
                recipient: content.device_recipient.as_str().to_owned(),
                state: known_state.unwrap_or(first),
                first_seen_on: self.today,
            },
        )?;
        Ok(Some(Before {
            newest_revision,
            device_known: known_state.is_some(),
        }))
    }
}

/// What the desk knew of a device before this hand-in.
struct Before {
    newest_revision: Option<u32>,
    device_known: bool,
}

/// Returns a page of the journal: the imports before the import `before`, or the newest.
pub fn imports(desk: &DeskStore, before: Option<i64>) -> Result<Journal, DeskError> {
    let mut rows = desk.imports(before, IMPORTS_A_PAGE + 1)?;
    let older = rows.len() > IMPORTS_A_PAGE;
    rows.truncate(IMPORTS_A_PAGE);
    let names = Names::read(desk)?;
    let undoable = match desk.last_import()? {
        Some(last) => Some(Undoable {
            made_on: last.made_on,
            files: tally(desk, last.number)?.0.files(),
        }),
        None => None,
    };
    Ok(Journal {
        imports: (rows.into_iter())
            .map(|row| report(desk, row, &names))
            .collect::<Result<_, _>>()?,
        older,
        undoable,
    })
}

/// Returns at most [`LINES_A_PAGE`] files of an import, from the file `from` on.
pub fn import_lines(
    desk: &DeskStore,
    import: i64,
    from: usize,
) -> Result<Vec<FileReport>, DeskError> {
    lines(desk, import, from, &Names::read(desk)?)
}

/// The titles of the classes and the names of the seats of a desk.
struct Names {
    titles: BTreeMap<String, String>,
    seats: BTreeMap<(String, u32), String>,
}

impl Names {
    fn read(desk: &DeskStore) -> Result<Self, DeskError> {
        let (mut titles, mut seats) = (BTreeMap::new(), BTreeMap::new());
        for class in desk.classes()? {
            for seat in desk.seats(&class.id)? {
                if let Some(name) = seat.name {
                    seats.insert((class.id.clone(), seat.number), name);
                }
            }
            titles.insert(class.id, class.title);
        }
        Ok(Self { titles, seats })
    }
}

fn report(desk: &DeskStore, row: ImportRow, names: &Names) -> Result<ImportReport, DeskError> {
    let (tally, to_check) = tally(desk, row.number)?;
    Ok(ImportReport {
        import: row.number,
        made_on: row.made_on,
        tally,
        to_check,
        files: lines(desk, row.number, 0, names)?,
        cancelled: row.cancelled,
        undone: row.undone,
    })
}

/// Counts the files of an import by verdict, and those that the teacher must look at.
fn tally(desk: &DeskStore, import: i64) -> Result<(Tally, u32), DeskError> {
    let (mut tally, mut to_check) = (Tally::default(), 0);
    for (kind, files, looks) in desk.import_counts(import)? {
        let count = match kind.as_str() {
            "new" => &mut tally.new,
            "updated" => &mut tally.updated,
            "known" => &mut tally.known,
            "older" => &mut tally.older,
            "quarantined" => &mut tally.quarantined,
            "refused" => &mut tally.refused,
            other => return Err(faulty(format!("verdict {other}"))),
        };
        *count = files;
        to_check += looks;
    }
    Ok((tally, to_check))
}

fn lines(
    desk: &DeskStore,
    import: i64,
    from: usize,
    names: &Names,
) -> Result<Vec<FileReport>, DeskError> {
    desk.import_files(import, from, LINES_A_PAGE)?
        .into_iter()
        .map(|file| {
            let flags: Vec<Flag> = serde_json::from_str(&file.flags).map_err(faulty)?;
            let seat = file.class.clone().zip(file.seat);
            Ok(FileReport {
                file_name: file.file_name,
                verdict: serde_json::from_str(&file.verdict).map_err(faulty)?,
                name: seat.and_then(|seat| names.seats.get(&seat).cloned()),
                class_title: (file.class).and_then(|class| names.titles.get(&class).cloned()),
                seat: file.seat,
                new_entries: file.new_entries,
                flags,
            })
        })
        .collect()
}

/// Undoes the last import that is not undone: removes its hand-ins and derives the reports from
/// the others. The files still exist and can be imported again.
///
/// # Errors
/// Returns [`DeskError::NotFound`] if no import is left.
pub fn undo_import(desk: &DeskStore) -> Result<(), DeskError> {
    desk.transaction(|| {
        let last = desk.last_import()?.ok_or(DeskError::NotFound("import"))?;
        for (class, seat) in desk.drop_hand_ins(last.number)? {
            derive::derive(desk, &class, seat)?;
        }
        desk.mark_import(last.number, last.cancelled, true)?;
        Ok(())
    })
}

/// Accepts or rejects a quarantined device; `None` quarantines it again. Its hand-ins stay in
/// the store, so a rejected device can still be accepted.
///
/// # Errors
/// Returns [`DeskError::NotFound`] for an unknown device, or for an accepted one with a decision.
pub fn decide_device(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    device: &str,
    accept: Option<bool>,
) -> Result<(), DeskError> {
    desk.transaction(|| {
        let mut found = false;
        for mut row in desk.devices(&class.row.id)? {
            let decided = row.state == DeviceState::Accepted && accept.is_some();
            if row.seat == seat && row.device == device && !decided {
                row.state = match accept {
                    Some(true) => DeviceState::Accepted,
                    Some(false) => DeviceState::Rejected,
                    None => DeviceState::Quarantined,
                };
                desk.put_device(&class.row.id, &row)?;
                found = true;
            }
        }
        if !found {
            return Err(DeskError::NotFound("device"));
        }
        derive::derive(desk, &class.row.id, seat)?;
        Ok(())
    })
}
