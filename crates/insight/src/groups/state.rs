//! A plan under construction, with fast moves and their worth.

use super::model::{GroupProblem, PlannedGroup, Unit, Units};
use rand::Rng;

/// No group.
const NONE: usize = usize::MAX;

/// One running group.
#[derive(Clone, Default)]
struct Group {
    slot: usize,
    concept: usize,
    /// Students; 0 when the group is not running.
    size: usize,
    /// Unit numbers of the slot.
    units: Vec<usize>,
}

/// A plan under construction.
#[derive(Clone)]
pub(super) struct State<'a> {
    problem: &'a GroupProblem,
    units: &'a Units,
    /// `slots × groups_per_slot` places, those of slot s at s·G onwards.
    groups: Vec<Group>,
    /// Per slot and unit, its group or [`NONE`].
    seat: Vec<Vec<usize>>,
    /// Per student and concept, whether already taught.
    taught: Vec<bool>,
    /// Per student, number of groups.
    placed: Vec<usize>,
    /// Worth so far.
    pub value: i64,
}

impl<'a> State<'a> {
    /// Nobody placed.
    pub fn empty(problem: &'a GroupProblem, units: &'a Units) -> Self {
        // More groups than units can never run.
        let width = Self::width(problem);
        let groups = (0..problem.slots * width)
            .map(|place| Group {
                slot: place / width.max(1),
                ..Group::default()
            })
            .collect();
        Self {
            problem,
            units,
            groups,
            seat: units.slots.iter().map(|u| vec![NONE; u.len()]).collect(),
            taught: vec![false; problem.students() * problem.concepts],
            placed: vec![0; problem.students()],
            value: 0,
        }
    }

    fn width(problem: &GroupProblem) -> usize {
        problem
            .groups_per_slot
            .min(problem.students() / problem.size_min.max(1))
    }

    /// A state holding a valid plan.
    pub fn of_plan(problem: &'a GroupProblem, units: &'a Units, plan: &[PlannedGroup]) -> Self {
        let mut state = Self::empty(problem, units);
        for group in plan {
            let Some(place) = state.free_place(group.slot) else {
                continue;
            };
            state.groups[place].concept = group.concept;
            for (number, unit) in units.slots[group.slot].iter().enumerate() {
                if group.members.contains(&unit.members[0]) {
                    state.put_in(place, number);
                }
            }
        }
        state
    }

    /// The plan as it stands.
    pub fn plan(&self) -> Vec<PlannedGroup> {
        self.open_groups()
            .into_iter()
            .map(|place| {
                let group = &self.groups[place];
                let mut members: Vec<usize> = group
                    .units
                    .iter()
                    .flat_map(|u| self.unit(group.slot, *u).members.iter().copied())
                    .collect();
                members.sort_unstable();
                PlannedGroup {
                    slot: group.slot,
                    concept: group.concept,
                    members,
                }
            })
            .collect()
    }

    /// Places of running groups.
    pub fn open_groups(&self) -> Vec<usize> {
        (0..self.groups.len())
            .filter(|g| self.groups[*g].size > 0)
            .collect()
    }

    /// The slot of a group.
    pub fn slot_of(&self, group: usize) -> usize {
        self.groups[group].slot
    }

    /// Units in a group.
    pub fn size_in_units(&self, group: usize) -> usize {
        self.groups[group].units.len()
    }

    /// Sends everyone of a group back.
    pub fn close(&mut self, group: usize) {
        while !self.groups[group].units.is_empty() {
            self.take_out(group, self.groups[group].units.len() - 1);
        }
    }

    /// Closes groups with too few students.
    pub fn close_undersized(&mut self) {
        for group in 0..self.groups.len() {
            let size = self.groups[group].size;
            if size > 0 && size < self.problem.size_min {
                self.close(group);
            }
        }
    }

    /// Takes out the unit at `place` of a group; returns its number.
    pub fn take_out(&mut self, group: usize, place: usize) -> usize {
        let unit = self.groups[group].units.swap_remove(place);
        let (slot, concept) = (self.groups[group].slot, self.groups[group].concept);
        let units = self.units;
        let data = &units.slots[slot][unit];
        self.groups[group].size -= data.members.len();
        self.seat[slot][unit] = NONE;
        self.value -= data.weight[concept];
        for &student in &data.members {
            self.taught[student * self.problem.concepts + concept] = false;
            self.placed[student] -= 1;
            if self.placed[student] == 0 {
                self.value -= i64::from(self.problem.coverage);
            }
        }
        unit
    }

    fn put_in(&mut self, group: usize, unit: usize) {
        let (slot, concept) = (self.groups[group].slot, self.groups[group].concept);
        let units = self.units;
        let data = &units.slots[slot][unit];
        self.groups[group].units.push(unit);
        self.groups[group].size += data.members.len();
        self.seat[slot][unit] = group;
        self.value += data.weight[concept];
        for &student in &data.members {
            self.taught[student * self.problem.concepts + concept] = true;
            if self.placed[student] == 0 {
                self.value += i64::from(self.problem.coverage);
            }
            self.placed[student] += 1;
        }
    }

    fn unit(&self, slot: usize, unit: usize) -> &'a Unit {
        &self.units.slots[slot][unit]
    }

    /// Worth of placing a free unit on a concept; `None` when it may not.
    fn gain(&self, slot: usize, unit: usize, concept: usize) -> Option<i64> {
        let data = self.unit(slot, unit);
        let mut gain = data.weight[concept];
        if gain == 0 {
            return None;
        }
        for &student in &data.members {
            if self.taught[student * self.problem.concepts + concept] {
                return None;
            }
            if self.placed[student] == 0 {
                gain += i64::from(self.problem.coverage);
            }
        }
        Some(gain)
    }

    /// Whether nobody of the group has to stay apart from the unit.
    fn agrees(&self, group: usize, unit: usize) -> bool {
        let slot = self.groups[group].slot;
        self.unit(slot, unit)
            .apart
            .iter()
            .all(|other| self.seat[slot][*other] != group)
    }

    fn free_place(&self, slot: usize) -> Option<usize> {
        let width = Self::width(self.problem);
        (slot * width..(slot + 1) * width).find(|g| self.groups[*g].size == 0)
    }

    fn copies(&self, slot: usize, concept: usize) -> usize {
        let width = Self::width(self.problem);
        self.groups[slot * width..(slot + 1) * width]
            .iter()
            .filter(|g| g.size > 0 && g.concept == concept)
            .count()
    }

    /// Fills running groups, then opens the most valuable group again and
    /// again; worths are blurred by up to `noise`.
    pub fn rebuild(&mut self, noise: f64, rng: &mut impl Rng) {
        self.fill_all();
        let mut crew: Vec<(f64, usize)> = Vec::new();
        loop {
            let mut best: Option<(f64, usize, usize, Vec<usize>)> = None;
            for slot in 0..self.problem.slots {
                let Some(place) = self.free_place(slot) else {
                    continue;
                };
                for concept in 0..self.problem.concepts {
                    if self.copies(slot, concept) >= self.problem.copies {
                        continue;
                    }
                    crew.clear();
                    for unit in 0..self.units.slots[slot].len() {
                        if self.seat[slot][unit] != NONE {
                            continue;
                        }
                        if let Some(gain) = self.gain(slot, unit, concept) {
                            let size = self.unit(slot, unit).members.len();
                            let blur = 1.0 + noise * (rng.random::<f64>() - 0.5);
                            crew.push((real(gain) * blur / real_size(size), unit));
                        }
                    }
                    if let Some((worth, chosen)) = self.crew_for(slot, &mut crew) {
                        let worth = worth * (1.0 + noise * (rng.random::<f64>() - 0.5));
                        if best.as_ref().is_none_or(|b| worth > b.0) {
                            best = Some((worth, place, concept, chosen));
                        }
                    }
                }
            }
            let Some((_, place, concept, chosen)) = best else {
                break;
            };
            self.groups[place].concept = concept;
            for unit in chosen {
                self.put_in(place, unit);
            }
        }
    }

    /// The best units of `crew` that fit one group, best worth a student first.
    fn crew_for(&self, slot: usize, crew: &mut [(f64, usize)]) -> Option<(f64, Vec<usize>)> {
        crew.sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
        let mut chosen: Vec<usize> = Vec::new();
        let (mut size, mut worth) = (0, 0.0);
        for &(each, unit) in crew.iter() {
            let data = self.unit(slot, unit);
            let members = data.members.len();
            if size + members <= self.problem.size_max
                && data.apart.iter().all(|other| !chosen.contains(other))
            {
                size += members;
                worth += each * real_size(members);
                chosen.push(unit);
                if size == self.problem.size_max {
                    break;
                }
            }
        }
        (size >= self.problem.size_min).then_some((worth, chosen))
    }

    /// Exchanges and moves until none helps.
    pub fn polish(&mut self) {
        loop {
            let before = self.value;
            self.fill_all();
            self.replace_all();
            self.exchange_all();
            if self.value == before {
                break;
            }
        }
    }

    /// Puts free units where they are worth most, while there is room.
    fn fill_all(&mut self) {
        for slot in 0..self.problem.slots {
            for unit in 0..self.units.slots[slot].len() {
                if self.seat[slot][unit] != NONE {
                    continue;
                }
                let members = self.unit(slot, unit).members.len();
                let mut best: Option<(i64, usize)> = None;
                for group in self.places(slot) {
                    if self.groups[group].size == 0
                        || self.groups[group].size + members > self.problem.size_max
                        || !self.agrees(group, unit)
                    {
                        continue;
                    }
                    if let Some(gain) = self.gain(slot, unit, self.groups[group].concept)
                        && best.is_none_or(|b| gain > b.0)
                    {
                        best = Some((gain, group));
                    }
                }
                if let Some((_, group)) = best {
                    self.put_in(group, unit);
                }
            }
        }
    }

    fn places(&self, slot: usize) -> std::ops::Range<usize> {
        let width = Self::width(self.problem);
        slot * width..(slot + 1) * width
    }

    /// Replaces a seated unit by a free one of the slot where that is better.
    fn replace_all(&mut self) {
        for group in 0..self.groups.len() {
            let slot = self.groups[group].slot;
            let concept = self.groups[group].concept;
            let mut place = 0;
            while place < self.groups[group].units.len() {
                let value = self.value;
                let unit = self.take_out(group, place);
                let room = self.problem.size_max - self.groups[group].size;
                let short = self
                    .problem
                    .size_min
                    .saturating_sub(self.groups[group].size);
                let mut best = (value - self.value, unit);
                for other in 0..self.units.slots[slot].len() {
                    let members = self.unit(slot, other).members.len();
                    if self.seat[slot][other] == NONE
                        && members <= room
                        && members >= short
                        && let Some(gain) = self.gain(slot, other, concept)
                        && gain > best.0
                        && self.agrees(group, other)
                    {
                        best = (gain, other);
                    }
                }
                self.put_in(group, best.1);
                // The unit put in stands last; keep the walk moving on.
                let last = self.groups[group].units.len() - 1;
                self.groups[group].units.swap(place, last);
                place += 1;
            }
        }
    }

    /// Exchanges units between two groups of a slot, or moves one across.
    fn exchange_all(&mut self) {
        for slot in 0..self.problem.slots {
            for first in self.places(slot) {
                for second in self.places(slot) {
                    if first != second {
                        self.exchange(first, second);
                    }
                }
            }
        }
    }

    fn exchange(&mut self, first: usize, second: usize) {
        let slot = self.groups[first].slot;
        let (lo, hi) = (self.problem.size_min, self.problem.size_max);
        let mut place = 0;
        'units: while place < self.groups[first].units.len() {
            if self.groups[second].size == 0 {
                return;
            }
            let value = self.value;
            let unit = self.take_out(first, place);
            let members = self.unit(slot, unit).members.len();
            // Move across.
            if self.groups[first].size >= lo
                && self.groups[second].size + members <= hi
                && self.agrees(second, unit)
                && let Some(gain) = self.gain(slot, unit, self.groups[second].concept)
                && self.value + gain > value
            {
                self.put_in(second, unit);
                continue 'units;
            }
            // Exchange, ordered pairs once.
            if first < second {
                for partner_place in 0..self.groups[second].units.len() {
                    let partner = self.groups[second].units[partner_place];
                    let size = self.unit(slot, partner).members.len();
                    let first_size = self.groups[first].size + size;
                    let second_size = self.groups[second].size - size + members;
                    if first_size > hi
                        || first_size < lo
                        || second_size > hi
                        || second_size < lo
                        || self.unit(slot, partner).weight[self.groups[first].concept] == 0
                        || self.unit(slot, unit).weight[self.groups[second].concept] == 0
                    {
                        continue;
                    }
                    let partner = self.take_out(second, partner_place);
                    if self.agrees(second, unit)
                        && self.agrees(first, partner)
                        && let Some(there) = self.gain(slot, unit, self.groups[second].concept)
                    {
                        let middle = self.value;
                        self.put_in(second, unit);
                        if let Some(here) = self.gain(slot, partner, self.groups[first].concept)
                            && middle + there + here > value
                        {
                            self.put_in(first, partner);
                            continue 'units;
                        }
                        let last = self.groups[second].units.len() - 1;
                        self.take_out(second, last);
                    }
                    self.put_in(second, partner);
                    let last = self.groups[second].units.len() - 1;
                    self.groups[second].units.swap(partner_place, last);
                }
            }
            self.put_in(first, unit);
            let last = self.groups[first].units.len() - 1;
            self.groups[first].units.swap(place, last);
            place += 1;
        }
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "plan values stay far below 2^52"
)]
fn real(value: i64) -> f64 {
    value as f64
}

fn real_size(members: usize) -> f64 {
    crate::stats::count(members)
}
