//! A plan under construction, with fast moves and their worth.

use super::model::{GroupProblem, PlannedGroup, Unit, Units};
use crate::grid::Grid;
use rand::Rng;

/// No group.
const NONE: usize = usize::MAX;

/// One running group.
#[derive(Clone, Default)]
struct Group {
    slot: usize,
    concept: usize,
    /// Students; 0 if the group does not run.
    size: usize,
    /// Unit numbers of the slot.
    units: Vec<usize>,
}

/// A plan under construction.
#[derive(Clone)]
pub(super) struct State<'a> {
    problem: &'a GroupProblem,
    units: &'a Units,
    /// `slots × G` groups with G = `groups_per_slot`; those of slot s begin at s·G.
    groups: Vec<Group>,
    /// The group of each unit by slot, or [`NONE`].
    seat: Grid<usize>,
    /// Whether each student is taught each concept.
    taught: Grid<bool>,
    /// The number of groups of each student.
    placed: Grid<usize>,
    /// Worth so far.
    pub value: i64,
}

impl<'a> State<'a> {
    /// A plan without groups.
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
            seat: Grid::filled(
                problem.slots,
                units.slots().map(<[Unit]>::len).max().unwrap_or(0),
                NONE,
            ),
            taught: Grid::filled(problem.students(), problem.concepts, false),
            placed: Grid::filled(problem.students(), 1, 0),
            value: 0,
        }
    }

    fn width(problem: &GroupProblem) -> usize {
        problem
            .groups_per_slot
            .min(problem.students() / problem.size_min.max(1))
    }

    /// The state of a valid plan.
    pub fn of_plan(problem: &'a GroupProblem, units: &'a Units, plan: &[PlannedGroup]) -> Self {
        let mut state = Self::empty(problem, units);
        for group in plan {
            let Some(place) = state.free_place(group.slot) else {
                continue;
            };
            state.group_mut(place).concept = group.concept;
            for (number, unit) in units.in_slot(group.slot).iter().enumerate() {
                let first = unit.members.first();
                if first.is_some_and(|student| group.members.contains(student)) {
                    state.put_in(place, number);
                }
            }
        }
        state
    }

    /// The plan so far.
    pub fn plan(&self) -> Vec<PlannedGroup> {
        self.open_groups()
            .into_iter()
            .map(|place| {
                let group = self.group(place);
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
            .filter(|g| self.group(*g).size > 0)
            .collect()
    }

    /// The slot of a group.
    pub fn slot_of(&self, group: usize) -> usize {
        self.group(group).slot
    }

    /// Units in a group.
    pub fn size_in_units(&self, group: usize) -> usize {
        self.group(group).units.len()
    }

    /// Removes everyone from a group.
    pub fn close(&mut self, group: usize) {
        while !self.group(group).units.is_empty() {
            self.take_out(group, self.group(group).units.len() - 1);
        }
    }

    /// Closes groups with too few students.
    pub fn close_undersized(&mut self) {
        for group in 0..self.groups.len() {
            let size = self.group(group).size;
            if size > 0 && size < self.problem.size_min {
                self.close(group);
            }
        }
    }

    /// A group by its place.
    #[expect(
        clippy::indexing_slicing,
        reason = "places come from `places`, `open_groups` and `free_place`, which end with the groups"
    )]
    fn group(&self, place: usize) -> &Group {
        &self.groups[place]
    }

    #[expect(clippy::indexing_slicing, reason = "as in `group`")]
    fn group_mut(&mut self, place: usize) -> &mut Group {
        &mut self.groups[place]
    }

    /// Removes the unit at `place` of a group; returns its number.
    pub fn take_out(&mut self, group: usize, place: usize) -> usize {
        let from = self.group_mut(group);
        let (slot, concept) = (from.slot, from.concept);
        let unit = from.units.swap_remove(place);
        let data = self.unit(slot, unit);
        self.group_mut(group).size -= data.members.len();
        self.seat[(slot, unit)] = NONE;
        self.value -= data.worth(concept);
        for &student in &data.members {
            self.taught[(student, concept)] = false;
            let placed = &mut self.placed[(student, 0)];
            *placed -= 1;
            if *placed == 0 {
                self.value -= i64::from(self.problem.coverage);
            }
        }
        unit
    }

    fn put_in(&mut self, group: usize, unit: usize) {
        let to = self.group(group);
        let (slot, concept) = (to.slot, to.concept);
        let data = self.unit(slot, unit);
        let to = self.group_mut(group);
        to.units.push(unit);
        to.size += data.members.len();
        self.seat[(slot, unit)] = group;
        self.value += data.worth(concept);
        for &student in &data.members {
            self.taught[(student, concept)] = true;
            let placed = &mut self.placed[(student, 0)];
            if *placed == 0 {
                self.value += i64::from(self.problem.coverage);
            }
            *placed += 1;
        }
    }

    fn unit(&self, slot: usize, unit: usize) -> &'a Unit {
        self.units.unit(slot, unit)
    }

    fn is_free(&self, slot: usize, unit: usize) -> bool {
        self.seat[(slot, unit)] == NONE
    }

    /// Exchanges the unit added last with the one at `place`, so that a loop over the places continues
    /// with units that it has not seen.
    fn last_to(&mut self, group: usize, place: usize) {
        let units = &mut self.group_mut(group).units;
        if let Some(last) = units.len().checked_sub(1) {
            units.swap(place, last);
        }
    }

    /// Worth of placing a free unit on a concept; `None` if that is not allowed.
    fn gain(&self, slot: usize, unit: usize, concept: usize) -> Option<i64> {
        let data = self.unit(slot, unit);
        let mut gain = data.worth(concept);
        if gain == 0 {
            return None;
        }
        for &student in &data.members {
            if self.taught[(student, concept)] {
                return None;
            }
            if self.placed[(student, 0)] == 0 {
                gain += i64::from(self.problem.coverage);
            }
        }
        Some(gain)
    }

    /// Whether nobody in the group must be apart from the unit.
    fn agrees(&self, group: usize, unit: usize) -> bool {
        let slot = self.group(group).slot;
        self.unit(slot, unit)
            .apart
            .iter()
            .all(|other| self.seat[(slot, *other)] != group)
    }

    fn free_place(&self, slot: usize) -> Option<usize> {
        self.places(slot).find(|place| self.group(*place).size == 0)
    }

    fn copies(&self, slot: usize, concept: usize) -> usize {
        self.places(slot)
            .map(|place| self.group(place))
            .filter(|group| group.size > 0 && group.concept == concept)
            .count()
    }

    /// Fills running groups, then opens the most valuable group until none is left. Adds `noise` to
    /// worths.
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
                    for unit in 0..self.units.in_slot(slot).len() {
                        if !self.is_free(slot, unit) {
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
            self.group_mut(place).concept = concept;
            for unit in chosen {
                self.put_in(place, unit);
            }
        }
    }

    /// The units of `crew` that fit into one group, taken by their worth for each student.
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

    /// Exchanges and moves units until no change helps.
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

    /// Puts free units where they are worth most, as long as there is room.
    fn fill_all(&mut self) {
        for slot in 0..self.problem.slots {
            for unit in 0..self.units.in_slot(slot).len() {
                if !self.is_free(slot, unit) {
                    continue;
                }
                let members = self.unit(slot, unit).members.len();
                let mut best: Option<(i64, usize)> = None;
                for group in self.places(slot) {
                    if self.group(group).size == 0
                        || self.group(group).size + members > self.problem.size_max
                        || !self.agrees(group, unit)
                    {
                        continue;
                    }
                    if let Some(gain) = self.gain(slot, unit, self.group(group).concept)
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

    /// Replaces a placed unit by a free one of the slot if that is better.
    fn replace_all(&mut self) {
        for group in 0..self.groups.len() {
            let slot = self.group(group).slot;
            let concept = self.group(group).concept;
            let mut place = 0;
            while place < self.group(group).units.len() {
                let value = self.value;
                let unit = self.take_out(group, place);
                let room = self.problem.size_max - self.group(group).size;
                let short = self.problem.size_min.saturating_sub(self.group(group).size);
                let mut best = (value - self.value, unit);
                for other in 0..self.units.in_slot(slot).len() {
                    let members = self.unit(slot, other).members.len();
                    if self.is_free(slot, other)
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
                self.last_to(group, place);
                place += 1;
            }
        }
    }

    /// Exchanges units between two groups of a slot, or moves one.
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
        let slot = self.group(first).slot;
        let (lo, hi) = (self.problem.size_min, self.problem.size_max);
        let mut place = 0;
        'units: while place < self.group(first).units.len() {
            if self.group(second).size == 0 {
                return;
            }
            let value = self.value;
            let unit = self.take_out(first, place);
            let members = self.unit(slot, unit).members.len();
            // Moves one.
            if self.group(first).size >= lo
                && self.group(second).size + members <= hi
                && self.agrees(second, unit)
                && let Some(gain) = self.gain(slot, unit, self.group(second).concept)
                && self.value + gain > value
            {
                self.put_in(second, unit);
                continue 'units;
            }
            // Exchanges each pair once.
            if first < second {
                for partner_place in 0..self.group(second).units.len() {
                    let Some(&partner) = self.group(second).units.get(partner_place) else {
                        break;
                    };
                    let size = self.unit(slot, partner).members.len();
                    let first_size = self.group(first).size + size;
                    let second_size = self.group(second).size - size + members;
                    if first_size > hi
                        || first_size < lo
                        || second_size > hi
                        || second_size < lo
                        || self.unit(slot, partner).worth(self.group(first).concept) == 0
                        || self.unit(slot, unit).worth(self.group(second).concept) == 0
                    {
                        continue;
                    }
                    let partner = self.take_out(second, partner_place);
                    if self.agrees(second, unit)
                        && self.agrees(first, partner)
                        && let Some(there) = self.gain(slot, unit, self.group(second).concept)
                    {
                        let middle = self.value;
                        self.put_in(second, unit);
                        if let Some(here) = self.gain(slot, partner, self.group(first).concept)
                            && middle + there + here > value
                        {
                            self.put_in(first, partner);
                            continue 'units;
                        }
                        let last = self.group(second).units.len() - 1;
                        self.take_out(second, last);
                    }
                    self.put_in(second, partner);
                    self.last_to(second, partner_place);
                }
            }
            self.put_in(first, unit);
            self.last_to(first, place);
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
