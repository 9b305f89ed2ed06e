//! Imports hand-ins, and reports on every file.
//!
//! The desk keeps every hand-in as opened and derives the reports of a seat from those of its
//! accepted devices. So the same hand-ins give the same reports in any order, also if an import
//! is stopped, repeated or undone.

use super::bounds::{
    MOST_ACCEPTED_BYTES, MOST_ACCEPTED_DEVICES, MOST_ENTRIES, MOST_QUARANTINED_BYTES,
    MOST_QUARANTINED_DEVICES, MOST_QUARANTINED_HAND_INS,
};
use super::derive;
use super::moves::moved_to;
use super::views::{
    FileReport, IMPORTS_A_PAGE, ImportReport, Journal, LINES_A_PAGE, Tally, Undoable, Verdict,
};
use crate::class::{OpenClass, open_class};
use crate::error::{DeskError, Field, Rule, Thing, faulty};
use chrono::NaiveDate;
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::ConceptId;
use surefoot_exchange::{
    Checked, CheckedHandIn, Flag, HandIn, HandInExpectations, OpenedHandIn, PublicKey,
    QuarantinedHandIn, Refusal, SealingIdentity,
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

    /// Returns the identities that open the files of this import. Opening is half of the work on
    /// a file and needs no desk, so another thread can do it.
    #[must_use]
    pub fn identities(&self) -> Vec<SealingIdentity> {
        (self.classes.iter())
            .map(|class| class.identity.clone())
            .collect()
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
        // A device that the teacher moved may still name the class and seat of its earlier slip.
        let moved = moved_to(self.desk, &opened)?;
        let class_id = match &moved {
            Some(moved) => moved.class.as_str(),
            None => opened.class_id().as_str(),
        };
        let Some(class) = (self.classes.iter()).find(|class| class.id.as_str() == class_id) else {
            return Ok((refused(Refusal::WrongClass), None));
        };
        let id = Some(class.id.as_str().to_owned());
        let seat = (class.class.seats.iter()).find(|seat| match &moved {
            Some(moved) => seat.number == moved.seat,
            None => seat.token == opened.seat().as_str(),
        });
        let known = match seat {
            Some(seat) => self.desk.devices_of(class.id.as_str(), seat.number)?,
            None => Vec::new(),
        };
        let standing = match seat {
            Some(seat) => self.standing(class, seat.number, &opened, &known)?,
            None => Standing::default(),
        };
        let title = Some(class.class.row.title.clone());
        let (checked, seat) = match (
            self.check(class, seat.is_some(), opened, standing.state),
            seat,
        ) {
            (Ok(checked), Some(seat)) => (checked, seat),
            (checked, _) => {
                let mut report = refused(checked.err().unwrap_or(Refusal::SeatUnknown));
                report.class_title = title;
                return Ok((report, id));
            }
        };
        let (flags, verdict, new_entries) = match checked {
            Checked::Quarantined(hand_in) => {
                let flags = hand_in.flags().to_vec();
                let verdict = self.quarantine(class, seat.number, &hand_in, &standing, &known)?;
                (flags, verdict, 0)
            }
            Checked::Accepted(hand_in) => {
                let flags = hand_in.flags().to_vec();
                let (verdict, new_entries) =
                    self.merge(class, seat.number, hand_in, &standing, &known)?;
                (flags, verdict, new_entries)
            }
        };
        let report = FileReport {
            file_name: file_name.to_owned(),
            verdict,
            seat: Some(seat.number),
            name: seat.name.clone(),
            class_title: title,
            new_entries,
            flags,
        };
        Ok((report, id))
    }

    /// Returns what is known of the device that made a hand-in, and whether the hand-in counts. A
    /// seat's first device counts unasked, and so does a further one with an accepted key.
    fn standing(
        &self,
        class: &ImportClass,
        seat: u32,
        opened: &OpenedHandIn,
        known: &[DeviceRow],
    ) -> Result<Standing, DeskError> {
        let (device, key) = (opened.device().as_str(), opened.device_key().as_str());
        if let Some(row) = (known.iter()).find(|r| r.device == device && r.signing_key == key) {
            return Ok(Standing {
                id: Some(row.id),
                state: row.state,
                first_of_seat: false,
            });
        }
        let accepted = || {
            known
                .iter()
                .filter(|row| row.state == DeviceState::Accepted)
        };
        let first_of_seat = !self.desk.had_device(class.id.as_str(), seat)?;
        let counts = first_of_seat
            || accepted().any(|row| row.signing_key == key)
                && accepted().count() < MOST_ACCEPTED_DEVICES;
        Ok(Standing {
            id: None,
            state: if counts {
                DeviceState::Accepted
            } else {
                DeviceState::Quarantined
            },
            first_of_seat,
        })
    }

    fn check(
        &self,
        class: &ImportClass,
        seated: bool,
        opened: OpenedHandIn,
        state: DeviceState,
    ) -> Result<Checked, Refusal> {
        let keys: BTreeSet<PublicKey> = (state == DeviceState::Accepted)
            .then(|| opened.device_key().clone())
            .into_iter()
            .collect();
        // The check looks up only the seat that the hand-in names.
        let mut seats: BTreeMap<SeatToken, BTreeSet<PublicKey>> = BTreeMap::new();
        if seated {
            seats.insert(opened.seat().clone(), keys);
        }
        let year = &class.class.facts.year;
        let class_id = opened.class_id().clone();
        opened.check(
            &HandInExpectations {
                class_id: &class_id,
                first_day: year.first_day,
                last_day: year.last_day,
                seats: &seats,
                concepts: &class.concepts,
            },
            self.today,
        )
    }

    /// Keeps a hand-in of an accepted device, and adds its record to the reports.
    fn merge(
        &self,
        class: &ImportClass,
        seat: u32,
        hand_in: CheckedHandIn,
        standing: &Standing,
        known: &[DeviceRow],
    ) -> Result<(Verdict, usize), DeskError> {
        let id = class.id.as_str();
        let hash = self.hash_of(class, hand_in.content(), hand_in.json());
        if self.keeps(standing, &hash)? {
            return Ok((Verdict::Known, 0));
        }
        let before = match standing.id {
            Some(device) => self.desk.newest_revision(device)?,
            None => None,
        };
        let bytes = self.bytes_of(id, seat, |device| counts(known, device))?;
        let first = derive::first_with_key(known, hand_in.content().device_key.as_str());
        let added = derive::additions(self.desk, id, seat, first, hand_in.record())?;
        let Some(added) = added.filter(|_| bytes + length(hand_in.packed()) <= MOST_ACCEPTED_BYTES)
        else {
            return Ok((SEAT_FULL, 0));
        };
        let content = hand_in.content();
        let device = self.keep(class, seat, content, hand_in.packed(), hash, standing)?;
        self.thin(device, content)?;
        if standing.first_of_seat {
            self.desk.note_first_device(id, seat, self.number)?;
        }
        let brought_by = first.unwrap_or(device);
        self.desk.report_writer(brought_by)?.write(&added)?;
        let verdict = match before {
            None if added.entries() > 0 || standing.id.is_none() => Verdict::New,
            Some(newest) if newest > content.revision => Verdict::Older,
            _ => Verdict::Updated,
        };
        Ok((verdict, added.entries()))
    }

    /// Of a device and date, keeps two hand-ins: with a class folder several come a day. The earlier
    /// of the two is there in case that the last import is undone. One that has something that this
    /// one lacks stays.
    fn thin(&self, device: i64, content: &HandIn) -> Result<(), DeskError> {
        let earlier = (self.desk).hand_in_two_before(device, content.made_on, content.revision)?;
        if let Some((id, packed)) = earlier {
            let earlier = derive::content_of(&packed)?.into_record();
            if content.record().merge(earlier).entries() == 0 {
                self.desk.drop_hand_in(id)?;
            }
        }
        Ok(())
    }

    /// Keeps a hand-in that does not count, within the bounds of its seat.
    fn quarantine(
        &self,
        class: &ImportClass,
        seat: u32,
        hand_in: &QuarantinedHandIn,
        standing: &Standing,
        known: &[DeviceRow],
    ) -> Result<Verdict, DeskError> {
        let hash = self.hash_of(class, hand_in.content(), hand_in.json());
        if self.keeps(standing, &hash)? {
            return Ok(Verdict::Quarantined);
        }
        let waiting = known
            .iter()
            .filter(|row| row.state == DeviceState::Quarantined);
        let no_place = standing.id.is_none() && waiting.count() >= MOST_QUARANTINED_DEVICES;
        let bytes = self.bytes_of(class.id.as_str(), seat, |device| {
            !counts(known, device) && Some(device) != standing.id
        })?;
        let own = self.newest_bytes(class.id.as_str(), seat, standing)?;
        if no_place || bytes + own + length(hand_in.packed()) > MOST_QUARANTINED_BYTES {
            return Ok(SEAT_FULL);
        }
        let content = hand_in.content();
        let device = self.keep(class, seat, content, hand_in.packed(), hash, standing)?;
        self.desk.keep_newest(device, MOST_QUARANTINED_HAND_INS)?;
        Ok(Verdict::Quarantined)
    }

    /// Whether exactly this hand-in is kept already.
    fn keeps(&self, standing: &Standing, hash: &str) -> Result<bool, DeskError> {
        Ok(match standing.id {
            Some(device) => self.desk.has_hand_in(device, hash)?,
            None => false,
        })
    }

    /// The bytes of the hand-ins that are kept of some devices of a seat.
    fn bytes_of(
        &self,
        class: &str,
        seat: u32,
        which: impl Fn(i64) -> bool,
    ) -> Result<u64, DeskError> {
        let sizes = self.desk.hand_in_sizes(class, seat)?;
        let of_these = sizes.into_iter().filter(|(device, _)| which(*device));
        Ok(of_these.map(|(_, bytes)| bytes).sum())
    }

    /// The bytes of the hand-ins of a device that stay beside a newer one.
    fn newest_bytes(&self, class: &str, seat: u32, standing: &Standing) -> Result<u64, DeskError> {
        let sizes = self.desk.hand_in_sizes(class, seat)?;
        let own = (sizes.into_iter()).filter(|(device, _)| Some(*device) == standing.id);
        let stay = own.take(MOST_QUARANTINED_HAND_INS - 1);
        Ok(stay.map(|(_, bytes)| bytes).sum())
    }

    /// Tells the content of a hand-in from others. Keyed by the class that it names, which for a
    /// device that was moved is not always the class that it counts in.
    fn hash_of(&self, class: &ImportClass, content: &HandIn, json: &[u8]) -> String {
        let named = (self.classes.iter()).find(|named| named.id == content.class_id);
        content_hash(&named.unwrap_or(class).class, json)
    }

    /// Keeps a hand-in as opened. Returns the number of its device.
    fn keep(
        &self,
        class: &ImportClass,
        seat: u32,
        content: &HandIn,
        packed: &[u8],
        content_hash: String,
        standing: &Standing,
    ) -> Result<i64, DeskError> {
        let id = class.id.as_str();
        let device = self.desk.put_device(
            id,
            &DeviceRow {
                id: 0,
                seat,
                device: content.device.as_str().to_owned(),
                signing_key: content.device_key.as_str().to_owned(),
                recipient: content.device_recipient.as_str().to_owned(),
                state: standing.state,
                first_seen_on: self.today,
            },
        )?;
        self.desk.keep_hand_in(
            id,
            &HandInKept {
                import: self.number,
                seat,
                device,
                revision: content.revision,
                made_on: content.made_on,
                entries: content.check_ins.len() + content.practice.len(),
                // A moved device may still have the pack of another class.
                pack_version: if content.class_id == class.id {
                    content.pack_version
                } else {
                    0
                },
                content_hash,
                content: packed.to_vec(),
            },
        )?;
        Ok(device)
    }
}

const SEAT_FULL: Verdict = Verdict::Refused {
    refusal: Refusal::SeatFull,
};

fn counts(known: &[DeviceRow], device: i64) -> bool {
    (known.iter()).any(|row| row.id == device && row.state == DeviceState::Accepted)
}

fn length(bytes: &[u8]) -> u64 {
    u64::try_from(bytes.len()).unwrap_or(u64::MAX)
}

/// Keyed by the class, because a token has so few signs that somebody who reads the other columns
/// could find it by a plain digest.
pub(super) fn content_hash(class: &OpenClass, json: &[u8]) -> String {
    Sha256::new()
        .chain_update(class.row.signing_seed)
        .chain_update(json)
        .finalize()
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// What the desk knows of the device that made a hand-in.
struct Standing {
    /// Its number; none if it is new.
    id: Option<i64>,
    /// Its state; of a new device, the state that it gets.
    state: DeviceState,
    /// Whether its seat never had a device.
    first_of_seat: bool,
}

impl Default for Standing {
    fn default() -> Self {
        Self {
            id: None,
            state: DeviceState::Quarantined,
            first_of_seat: false,
        }
    }
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

/// Lines of refused files that are joined into one import at most.
const MOST_JOINED: usize = 200;

/// If all files of the import `number` were refused, takes the lines of the import before it along,
/// if that is of the same date and has nothing else either: so junk that comes file by file into a
/// class folder fills no page of the journal.
pub fn join_refused(desk: &DeskStore, number: i64) -> Result<(), DeskError> {
    desk.transaction(|| {
        let rows = desk.imports(Some(number + 1), 2)?;
        let [last, before] = rows.as_slice() else {
            return Ok(());
        };
        let open = |row: &ImportRow| !row.cancelled && !row.undone && row.made_on == last.made_on;
        if last.number != number || !open(last) || !open(before) {
            return Ok(());
        }
        for row in [last, before] {
            let (tally, _) = tally(desk, row.number)?;
            let files = usize::try_from(tally.files()).unwrap_or(usize::MAX);
            if tally.files() > tally.refused || files > MOST_JOINED {
                return Ok(());
            }
        }
        for line in desk.import_files(before.number, 0, MOST_JOINED)? {
            desk.add_import_file(last.number, &line)?;
        }
        Ok(desk.drop_import(before.number)?)
    })
}

/// Undoes the last import that is not undone and brought something: removes its hand-ins and derives the reports from
/// the others. The files still exist and can be imported again. A transfer is left alone: removing
/// its seat undoes it.
///
/// # Errors
/// Returns [`DeskError::NotFound`] if no import is left.
pub fn undo_import(desk: &DeskStore) -> Result<(), DeskError> {
    desk.transaction(|| {
        let last = desk
            .last_import()?
            .ok_or(DeskError::NotFound(Thing::Import))?;
        for (class, seat) in desk.drop_hand_ins(last.number)? {
            derive::derive(desk, &class, seat)?;
        }
        desk.mark_import(last.number, last.cancelled, true)?;
        Ok(())
    })
}

/// Accepts or rejects a device at any time; `None` quarantines it. The reports of its seat are derived
/// anew, so what it brought comes and goes with it.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if the seat has as many accepted devices or entries as it may have.
pub fn decide_device(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    device: i64,
    accept: Option<bool>,
) -> Result<(), DeskError> {
    let id = class.row.id.as_str();
    desk.transaction(|| {
        let devices = desk.devices_of(id, seat)?;
        let others = (devices.iter())
            .filter(|row| row.id != device && row.state == DeviceState::Accepted)
            .count();
        let mut row = (devices.into_iter())
            .find(|row| row.id == device)
            .ok_or(DeskError::NotFound(Thing::Device))?;
        row.state = DeviceState::of_decision(accept);
        desk.put_device(id, &row)?;
        let entries = derive::derive(desk, id, seat)?;
        if accept == Some(true) && (others >= MOST_ACCEPTED_DEVICES || entries > MOST_ENTRIES) {
            return Err(DeskError::invalid(Field::Device, Rule::TooMany));
        }
        Ok(())
    })
}

/// Discards a device that does not count, with everything that it brought. If it hands in again, it is
/// quarantined again.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for an accepted device.
pub fn discard_device(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    device: i64,
) -> Result<(), DeskError> {
    let id = class.row.id.as_str();
    desk.transaction(|| {
        let row = (desk.devices_of(id, seat)?.into_iter())
            .find(|row| row.id == device)
            .ok_or(DeskError::NotFound(Thing::Device))?;
        if row.state == DeviceState::Accepted {
            return Err(DeskError::invalid(Field::Device, Rule::Taken));
        }
        desk.remove_device(device)?;
        derive::derive(desk, id, seat)?;
        Ok(())
    })
}
