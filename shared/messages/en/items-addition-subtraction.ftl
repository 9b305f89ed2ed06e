column-add-start = Start with the ones. Then go left, one column at a time.
column-subtract-start = Start with the ones. If the top digit is too small, trade one from the left.
column-line-up = Line up the places.
column-add = { $place }: { $work }. Write { $digit }.
column-add-carry = { $place }: { $work }. Write { $digit } and carry 1.
column-subtract = { $place }: { $work }.
column-subtract-trade = { $place }: the top digit is too small. Trade one from the left to get { $left }. { $work }.
column-subtract-lent = { $place }: you traded one, so { $left } is left. { $work }.
column-subtract-lent-trade = { $place }: you traded one, and the digit is too small. Trade one from the left to get { $left }. { $work }.

g3-add-within-1000-hint-part = The two parts make { $total } in all.
g3-add-within-1000-hint-take = Take away the part you know: { $part }.
g3-add-within-1000-check = Check: { $work }.
