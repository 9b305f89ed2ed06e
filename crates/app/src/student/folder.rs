//! The class folders that students chose on this device: takes newer class packs from them, and
//! leaves the students' hand-ins in them.
//!
//! The screens call [`StudentDoor::visit_folders`] every few seconds. It waits for no folder: a
//! round through a folder runs in its own thread, and the next call takes up what came of it. It
//! also serves students whose screens are locked by a PIN: nothing of theirs is shown, and a hand-in
//! is sealed for the teacher.

use super::folder_round::{Errands, ToLeave, sender, version_of_day};
use super::folder_state::{FolderNote, Made, Note, Place, ShownFolders, Visitor, read_note};
use super::{StudentDoor, StudentId};
use crate::context::class_folder::{FolderTrouble, noon};
use crate::context::folder::write_private;
use crate::context::random;
use crate::context::settings::World;
use crate::error::{CallError, files};
use crate::lock::lock;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use std::sync::Arc;
use surefoot_store::StudentStore;
use surefoot_student::Joined;
use ts_rs::TS;

/// After so many school days in which a hand-in could not be left, the screen says so.
const LATE_SCHOOL_DAYS: usize = 3;

/// A student's class folder, as the screens show it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShownFolder {
    /// Whether the class has a class folder and this device can use one.
    pub offered: bool,
    /// Its path or name on this device; `None` until it is chosen.
    pub folder: Option<String>,
    /// The path or name of the one that this student stopped using.
    pub stopped: Option<String>,
    /// The date on which the device last reached it.
    pub reached_on: Option<NaiveDate>,
    /// The date of the hand-in that is in it.
    pub left_on: Option<NaiveDate>,
    /// Whether there is something new to leave.
    pub waiting: bool,
    /// Why the folder cannot be used now.
    pub trouble: Option<FolderTrouble>,
    /// Class packs in it that are of another class, have other keys, or cannot be read.
    pub other_packs: usize,
}

/// A visit to the class folders.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct VisitAsked {
    /// Whether the student is done for now. Otherwise a hand-in is left once nothing new came
    /// between two visits.
    pub done: bool,
}

/// What came of the visits.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Visited {
    /// The students with a newer class pack.
    pub took_pack: Vec<String>,
    /// The students whose hand-in has been waiting for several school days.
    pub late: Vec<String>,
    /// Whether something is under way or waiting.
    pub busy: bool,
}

impl StudentDoor {
    /// A student's class folder.
    pub fn shown_folder(&self, id: StudentId) -> Result<ShownFolder, CallError> {
        let student = id.student;
        let (class, offered, newest, sender) = self.as_student(&student, |store, joined| {
            Ok((
                joined.pack.class_id.clone(),
                joined.pack.class_folder,
                surefoot_student::newest_event(store)?,
                sender(joined),
            ))
        })?;
        let possible = self.context.dialogs.has_class_folders();
        let mut shown = lock(&self.folders);
        let own = self.context.world() == World::Own;
        if own {
            self.read_shown(&mut shown)?;
        }
        let note = shown.note.as_ref();
        let folder = note.and_then(|note| note.folder_of(&student, &class));
        let stopped = note.and_then(|note| note.stopped_of(&student, &class));
        let state = folder.and_then(|at| shown.states.get(&(class.clone(), at.folder.clone())));
        let left = note.and_then(|note| note.left.get(&student));
        let name = |folder: &FolderNote| self.context.dialogs.class_folder_name(&folder.folder);
        Ok(ShownFolder {
            offered: offered && possible && own,
            folder: folder.map(name),
            stopped: stopped.map(name),
            reached_on: folder.and_then(|folder| folder.reached_on),
            left_on: left.map(|left| left.made_on),
            waiting: newest > 0 && !left.is_some_and(|left| left.holds(newest, &sender)),
            trouble: state.and_then(|state| state.trouble),
            other_packs: state.map_or(0, |state| state.other_packs),
        })
    }

    /// Forgets the shown folders until their note is read again.
    pub(crate) fn forget_folders(&self) {
        *lock(&self.folders) = ShownFolders::default();
    }

    /// Visits the class folders.
    pub fn visit_folders(&self, asked: VisitAsked) -> Result<Visited, CallError> {
        let nothing = Visited {
            took_pack: Vec::new(),
            late: Vec::new(),
            busy: false,
        };
        if self.context.world() != World::Own || !self.context.dialogs.has_class_folders() {
            return Ok(nothing);
        }
        let mut shown = lock(&self.folders);
        self.read_shown(&mut shown)?;
        let is_used = |note: &Note| !note.folders.is_empty() || !note.own.is_empty();
        if !shown.note.as_ref().is_some_and(is_used) {
            return Ok(nothing);
        }
        let before = shown.note.clone();
        let visitors = self.visitors(&shown)?;
        let took_pack = self.take_up(&mut shown, &visitors);
        // What was taken up changes what is due.
        let visitors = self.visitors(&shown)?;
        let busy = self.set_out(&mut shown, &visitors, asked.done);
        if shown.note != before {
            self.save_shown(&shown)?;
        }
        Ok(Visited {
            took_pack,
            late: shown.late.clone(),
            busy,
        })
    }

    /// The students of this device whose class has a folder, and was shown it.
    fn visitors(&self, shown: &ShownFolders) -> Result<Vec<Visitor>, CallError> {
        let Some(note) = &shown.note else {
            return Ok(Vec::new());
        };
        let mut visitors = Vec::new();
        for id in self.ids()? {
            let visitor = self.as_locked_student(&id, |store, joined| {
                let class = &joined.pack.class_id;
                let folder = note.folder_of(&id, class);
                let Some(folder) = folder.filter(|_| joined.pack.class_folder) else {
                    return Ok(None);
                };
                let newest = surefoot_student::newest_event(store)?;
                let sender = sender(joined);
                let left = (note.left.get(&id)).is_some_and(|left| left.holds(newest, &sender));
                Ok(Some(Visitor {
                    id: id.clone(),
                    class: class.clone(),
                    folder: folder.folder.clone(),
                    held: joined.pack.version,
                    sender,
                    newest: (newest > 0 && !left).then_some(newest),
                }))
            });
            // A damaged store does not matter to the others; the first screen reports it.
            visitors.extend(visitor.ok().flatten());
        }
        Ok(visitors)
    }

    /// Takes up what came of the rounds. Returns the students with a newer pack.
    fn take_up(&self, shown: &mut ShownFolders, visitors: &[Visitor]) -> Vec<String> {
        let today = self.context.today();
        let mut took_pack = Vec::new();
        let ShownFolders {
            note,
            states,
            made,
            repaired_on,
            ..
        } = shown;
        let Some(note) = note else {
            return took_pack;
        };
        for (place, state) in states {
            let round = match state.errand.take() {
                None => continue,
                Some(Err(trouble)) => {
                    state.trouble = Some(trouble);
                    continue;
                }
                Some(Ok(round)) => round,
            };
            state.trouble = round.trouble;
            state.packs = round.packs;
            state.other_packs = (state.packs.values())
                .filter(|p| p.version.is_none())
                .count();
            if round.trouble != Some(FolderTrouble::NoPack) {
                note.reach(place, today);
            }
            if let Some((version, bytes)) = round.newest {
                for visitor in visitors {
                    if visitor.is_at(place) && visitor.held < version {
                        let taken = self.as_locked_student(&visitor.id, |store, joined| {
                            let bytes = bytes.as_slice();
                            Ok(surefoot_student::take_class_pack(
                                store, joined, today, bytes,
                            )?)
                        });
                        // One that is refused changes nothing. The next visit tries again.
                        took_pack.extend(taken.ok().map(|_| visitor.id.clone()));
                    }
                }
            }
            for (left, sealed) in round.left {
                // The slip was changed meanwhile.
                let of = visitors.iter().find(|visitor| visitor.id == left.student);
                if of.is_none_or(|of| of.sender != left.sender || !of.is_at(place)) {
                    continue;
                }
                // If that fails, the folder has it all the same.
                let _ = self.as_locked_student(&left.student, |store, _| {
                    Ok(surefoot_student::note_hand_in(store, &sealed)?)
                });
                let newest = sealed.last_sequence();
                if (made.get(&left.student)).is_some_and(|m| m.sealed.last_sequence() == newest) {
                    made.remove(&left.student);
                }
                note.waiting_since.remove(&left.student);
                note.left.insert(left.student.clone(), left);
            }
            let here =
                |student: &String| (visitors.iter()).any(|of| of.id == *student && of.is_at(place));
            for (student, mark) in round.seen_again {
                if let Some(left) = note.left.get_mut(&student).filter(|_| here(&student)) {
                    left.mark = Some(mark);
                }
            }
            for student in round.changed.into_iter().filter(here) {
                // Once a day, so that two programs do not write against each other for ever.
                if repaired_on.insert(student.clone(), today) != Some(today) {
                    note.left.remove(&student);
                }
            }
        }
        took_pack
    }

    /// Starts the next rounds. Returns whether something is under way or waiting.
    fn set_out(&self, shown: &mut ShownFolders, visitors: &[Visitor], done: bool) -> bool {
        let (today, now) = (self.context.today(), self.context.moment());
        let mut busy = false;
        shown.late.clear();
        let Some(note) = &mut shown.note else {
            return false;
        };
        let here: BTreeSet<&String> = visitors.iter().map(|visitor| &visitor.id).collect();
        note.left.retain(|student, _| here.contains(student));
        note.waiting_since
            .retain(|student, _| here.contains(student));
        let places: BTreeSet<Place> = (visitors.iter())
            .map(|visitor| (visitor.class.clone(), visitor.folder.clone()))
            .collect();
        shown.states.retain(|place, _| places.contains(place));
        for place in places {
            let mut to_leave = Vec::new();
            let mut left = Vec::new();
            let mut held = u32::MAX;
            for visitor in visitors.iter().filter(|visitor| visitor.is_at(&place)) {
                held = held.min(visitor.held);
                let Some(newest) = visitor.newest else {
                    left.extend(note.left.get(&visitor.id).cloned());
                    continue;
                };
                busy = true;
                let since = *(note.waiting_since.entry(visitor.id.clone())).or_insert(today);
                let (late, made) = self
                    .as_locked_student(&visitor.id, |store, joined| {
                        let late = is_late(store, joined, since, today)?;
                        let settled =
                            done || shown.seen.get(&visitor.id).is_some_and(|at| *at == newest);
                        let made = match shown.made.get(&visitor.id) {
                            Some(made) if made.fits(newest, &visitor.sender) => None,
                            _ if settled => Some(make(store, joined, today)?),
                            _ => None,
                        };
                        Ok((late, made))
                    })
                    .unwrap_or((false, None));
                if late {
                    shown.late.push(visitor.id.clone());
                }
                shown.seen.insert(visitor.id.clone(), newest);
                if let Some(made) = made {
                    shown.made.insert(visitor.id.clone(), made);
                }
                let ready =
                    (shown.made.get(&visitor.id)).filter(|made| made.fits(newest, &visitor.sender));
                to_leave.extend(ready.map(|made| ToLeave {
                    student: visitor.id.clone(),
                    sender: made.sender.clone(),
                    name: made.name.clone(),
                    sealed: Arc::clone(&made.sealed),
                    changed: noon(made.sealed.made_on(), made.version),
                }));
            }
            let (class, folder) = &place;
            let state = shown.states.entry(place.clone()).or_default();
            if state.errand.is_silent(now) {
                state.trouble = Some(FolderTrouble::Silent);
            }
            if state.errand.is_out() {
                busy = true;
                continue;
            }
            state.visits = state.visits.wrapping_add(1);
            let errands = Errands {
                folder: self.context.dialogs.class_folder(folder),
                class: class.clone(),
                held,
                packs: state.packs.clone(),
                visit: state.visits,
                to_leave,
                left,
            };
            state.errand.start(now, move || errands.go());
        }
        busy
    }

    pub(super) fn read_shown(&self, shown: &mut ShownFolders) -> Result<(), CallError> {
        if shown.note.is_none() {
            shown.note = Some(read_note(&self.context.paths.shown_folders())?);
        }
        Ok(())
    }

    pub(super) fn save_shown(&self, shown: &ShownFolders) -> Result<(), CallError> {
        if let Some(note) = &shown.note {
            let text = serde_json::to_vec(note).map_err(files)?;
            write_private(&self.context.paths.shown_folders(), &text)?;
        }
        Ok(())
    }
}

impl Visitor {
    /// Whether this is the place where the student's hand-ins go.
    fn is_at(&self, (class, folder): &Place) -> bool {
        self.class == *class && self.folder == *folder
    }
}

impl Made {
    /// Whether it is the sender's hand-in with the newest event.
    fn fits(&self, newest: u32, sender: &str) -> bool {
        self.sealed.last_sequence() == newest && self.sender == sender
    }
}

fn make(store: &StudentStore, joined: &Joined, today: NaiveDate) -> Result<Made, CallError> {
    let unused = random::bytes()?;
    let sealed = surefoot_student::make_hand_in(store, joined, today, &unused)?;
    let seed = &joined.student.signing_seed;
    Ok(Made {
        version: version_of_day(seed, sealed.made_on(), sealed.revision()),
        sealed: Arc::new(sealed),
        sender: sender(joined),
        name: surefoot_student::folder_name(joined),
    })
}

/// Whether something waits for several school days and was not handed in otherwise.
fn is_late(
    store: &StudentStore,
    joined: &Joined,
    since: NaiveDate,
    today: NaiveDate,
) -> Result<bool, CallError> {
    let year = &joined.facts.year;
    let waited = (year.school_days_before(today)).saturating_sub(year.school_days_before(since));
    Ok(waited >= LATE_SCHOOL_DAYS && !surefoot_student::is_handed_in(store)?)
}
