//! Importing hand-ins: an account of every file, nothing dropped in silence.
//!
//! The desk keeps every hand-in as opened and derives the reports of a seat
//! from those of its accepted devices. So an import can be stopped after any
//! file, repeated, made in any order, or undone, with the same end state.

use super::views::{FileAccount, ImportAccount, Verdict};
use super::{OpenClass, TeacherError, derive, open_class};
use crate::exchange::{
    Checked, ClassFacts as ClassToCheck, ClassId, Flag, HAND_IN_CAPS, HandIn, PublicKey, Refusal,
    SealingIdentity, SeatToken, open_hand_in,
};
use crate::store::DeskStore;
use crate::store::desk::{DeviceRow, DeviceState, HandInKept, ImportFileRow};
use chrono::NaiveDate;
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::io::Read;

/// An import under way.
pub struct Import<'a> {
    desk: &'a DeskStore,
    classes: Vec<(OpenClass, SealingIdentity)>,
    number: i64,
    today: NaiveDate,
}

fn faulty(error: impl std::fmt::Display) -> TeacherError {
    TeacherError::Faulty(error.to_string())
}

impl<'a> Import<'a> {
    /// Opens an import in the desk's journal.
    ///
    /// # Errors
    /// The store's.
    pub fn begin(desk: &'a DeskStore, today: NaiveDate) -> Result<Self, TeacherError> {
        let mut classes = Vec::new();
        for row in desk.classes()? {
            let class = open_class(desk, &row.id)?;
            let identity = SealingIdentity::from_identity_file(&class.row.sealing_identity)?;
            classes.push((class, identity));
        }
        Ok(Self {
            desk,
            classes,
            number: desk.begin_import(today)?,
            today,
        })
    }

    /// Takes one file in, and writes its line of the account. What it brings
    /// is on disk when this returns; a refused file changes nothing.
    ///
    /// # Errors
    /// The store's; never for what stands in the file.
    pub fn take(
        &self,
        file_name: &str,
        bytes: Result<impl Read, Refusal>,
    ) -> Result<FileAccount, TeacherError> {
        self.desk.together(|| {
            let account = self.judge(file_name, bytes)?;
            let class = account.1;
            let account = account.0;
            self.desk.add_import_file(
                self.number,
                &ImportFileRow {
                    file_name: account.file_name.clone(),
                    verdict: serde_json::to_string(&account.verdict).map_err(faulty)?,
                    class,
                    seat: account.seat,
                    new_entries: account.new_entries,
                    flags: serde_json::to_string(&account.flags).map_err(faulty)?,
                },
            )?;
            Ok(account)
        })
    }

    /// Closes the import and gives its whole account.
    ///
    /// # Errors
    /// The store's.
    pub fn end(self, cancelled: bool) -> Result<ImportAccount, TeacherError> {
        if cancelled {
            self.desk.mark_import(self.number, true, false)?;
        }
        imports(self.desk)?
            .into_iter()
            .find(|import| import.import == self.number)
            .ok_or(TeacherError::NotFound("import"))
    }

    fn judge(
        &self,
        file_name: &str,
        bytes: Result<impl Read, Refusal>,
    ) -> Result<(FileAccount, Option<String>), TeacherError> {
        let refused = |refusal: Refusal| FileAccount {
            file_name: file_name.to_owned(),
            verdict: Verdict::Refused { refusal },
            seat: None,
            name: None,
            class_title: None,
            new_entries: 0,
            flags: Vec::new(),
        };
        let identities = self.classes.iter().map(|(_, identity)| identity);
        let opened = match bytes.and_then(|bytes| open_hand_in(bytes, identities, &HAND_IN_CAPS)) {
            Ok(opened) => opened,
            Err(refusal) => return Ok((refused(refusal), None)),
        };
        let Some((class, _)) = self
            .classes
            .iter()
            .find(|(class, _)| class.row.id == opened.class_id().as_str())
        else {
            return Ok((refused(Refusal::WrongClass), None));
        };
        let checked = match self.check(class, opened)? {
            Ok(checked) => checked,
            Err(refusal) => {
                let mut account = refused(refusal);
                account.class_title = Some(class.row.title.clone());
                return Ok((account, Some(class.row.id.clone())));
            }
        };
        let (content, json, packed, flags, held) = match &checked {
            Checked::Taken(taken) => (
                taken.content(),
                taken.json(),
                taken.packed(),
                taken.flags(),
                false,
            ),
            Checked::Held(held) => (
                held.content(),
                held.json(),
                held.packed(),
                held.flags(),
                true,
            ),
        };
        let Some(seat) = class
            .seats
            .iter()
            .find(|s| s.token == content.seat.as_str())
        else {
            return Ok((refused(Refusal::SeatUnknown), Some(class.row.id.clone())));
        };
        let (verdict, new_entries) =
            self.keep(class, seat.number, content, [json, packed], held)?;
        let account = FileAccount {
            file_name: file_name.to_owned(),
            verdict,
            seat: Some(seat.number),
            name: seat.name.clone(),
            class_title: Some(class.row.title.clone()),
            new_entries,
            flags: flags.to_vec(),
        };
        Ok((account, Some(class.row.id.clone())))
    }

    fn check(
        &self,
        class: &OpenClass,
        opened: crate::exchange::OpenedHandIn,
    ) -> Result<Result<Checked, Refusal>, TeacherError> {
        let mut seats: BTreeMap<SeatToken, BTreeSet<PublicKey>> = BTreeMap::new();
        let mut by_number: BTreeMap<u32, SeatToken> = BTreeMap::new();
        for seat in &class.seats {
            let token = SeatToken::new(seat.token.clone()).map_err(faulty)?;
            seats.insert(token.clone(), BTreeSet::new());
            by_number.insert(seat.number, token);
        }
        for device in self.desk.devices(&class.row.id)? {
            if device.state == DeviceState::Accepted
                && let Some(keys) = by_number
                    .get(&device.seat)
                    .and_then(|token| seats.get_mut(token))
            {
                keys.insert(PublicKey::new(device.signing_key).map_err(faulty)?);
            }
        }
        let concepts = class
            .facts
            .concepts
            .values()
            .map(|c| c.id.clone())
            .collect();
        let id = ClassId::new(class.row.id.clone()).map_err(faulty)?;
        Ok(opened.check(
            &ClassToCheck {
                class_id: &id,
                first_day: class.facts.year.first_day,
                last_day: class.facts.year.last_day,
                seats: &seats,
                concepts: &concepts,
            },
            self.today,
        ))
    }

    fn keep(
        &self,
        class: &OpenClass,
        seat: u32,
        content: &HandIn,
        [json, packed]: [&[u8]; 2],
        held: bool,
    ) -> Result<(Verdict, usize), TeacherError> {
        let id = class.row.id.as_str();
        let hash: String = Sha256::digest(json)
            .iter()
            .map(|byte| format!("{byte:02x}"))
            .collect();
        let (device, key) = (content.device.as_str(), content.device_key.as_str());
        let known_state = self
            .desk
            .devices(id)?
            .into_iter()
            .find(|d| d.seat == seat && d.device == device && d.signing_key == key)
            .map(|d| d.state);
        let newest = self.desk.newest_revision(id, seat, device, key)?;
        if self.desk.has_hand_in(id, seat, &hash)? {
            return Ok((if held { Verdict::Held } else { Verdict::Known }, 0));
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
                content_hash: hash,
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
                state: known_state.unwrap_or(if held {
                    DeviceState::Held
                } else {
                    DeviceState::Accepted
                }),
                first_seen_on: self.today,
            },
        )?;
        if held {
            return Ok((Verdict::Held, 0));
        }
        let new_entries = derive::add(self.desk, id, seat, content.record())?;
        let verdict = match newest {
            None if new_entries > 0 || known_state.is_none() => Verdict::New,
            Some(newest) if newest > content.revision => Verdict::Older,
            _ => Verdict::Updated,
        };
        Ok((verdict, new_entries))
    }
}

/// The journal of imports, newest first.
///
/// # Errors
/// The store's.
pub fn imports(desk: &DeskStore) -> Result<Vec<ImportAccount>, TeacherError> {
    let mut titles = BTreeMap::new();
    let mut names = BTreeMap::new();
    for class in desk.classes()? {
        for seat in desk.seats(&class.id)? {
            names.insert((class.id.clone(), seat.number), seat.name);
        }
        titles.insert(class.id.clone(), class.title);
    }
    desk.imports()?
        .into_iter()
        .map(|(import, made_on, cancelled, undone)| {
            let files = desk
                .import_files(import)?
                .into_iter()
                .map(|file| {
                    let flags: Vec<Flag> = serde_json::from_str(&file.flags).map_err(faulty)?;
                    Ok(FileAccount {
                        file_name: file.file_name,
                        verdict: serde_json::from_str(&file.verdict).map_err(faulty)?,
                        name: file
                            .class
                            .clone()
                            .zip(file.seat)
                            .and_then(|key| names.get(&key).cloned().flatten()),
                        class_title: file.class.and_then(|class| titles.get(&class).cloned()),
                        seat: file.seat,
                        new_entries: file.new_entries,
                        flags,
                    })
                })
                .collect::<Result<_, TeacherError>>()?;
            Ok(ImportAccount {
                import,
                made_on,
                files,
                cancelled,
                undone,
            })
        })
        .collect()
}

/// Undoes the last import that still stands: its hand-ins are let go and the
/// reports derived anew from those that stay. The files themselves are where
/// they were, and can be imported again.
///
/// # Errors
/// [`TeacherError::NotFound`] when there is none, or the store's.
pub fn undo_import(desk: &DeskStore) -> Result<(), TeacherError> {
    desk.together(|| {
        let (import, _, cancelled, _) = desk
            .imports()?
            .into_iter()
            .find(|(_, _, _, undone)| !undone)
            .ok_or(TeacherError::NotFound("import"))?;
        for (class, seat) in desk.drop_hand_ins(import)? {
            derive::derive(desk, &class, seat)?;
        }
        desk.mark_import(import, cancelled, true)?;
        Ok(())
    })
}

/// Decides about a device that claims a seat with a key of its own; without a
/// decision it is held again. Put aside, it can still be accepted later; nothing
/// of it is thrown away.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn decide_device(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    device: &str,
    accept: Option<bool>,
) -> Result<(), TeacherError> {
    desk.together(|| {
        let mut found = false;
        for mut row in desk.devices(&class.row.id)? {
            let decided = row.state == DeviceState::Accepted && accept.is_some();
            if row.seat == seat && row.device == device && !decided {
                row.state = match accept {
                    Some(true) => DeviceState::Accepted,
                    Some(false) => DeviceState::PutAside,
                    None => DeviceState::Held,
                };
                desk.put_device(&class.row.id, &row)?;
                found = true;
            }
        }
        if !found {
            return Err(TeacherError::NotFound("device"));
        }
        derive::derive(desk, &class.row.id, seat)?;
        Ok(())
    })
}
