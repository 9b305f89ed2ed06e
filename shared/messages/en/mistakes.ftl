## Misconceptions: what the student is told, and (.name) what the teacher reads.
mistake-carry-forgotten = Did you carry? When a column makes ten or more, one ten goes to the left.
    .name = Carry forgotten
mistake-carry-written-in-place = Write only one digit in each column. Carry the ten to the left.
    .name = Both digits written in one column
mistake-subtracted-instead = Look at the sign. You took away, but this asks you to add.
    .name = Subtracted instead of adding
mistake-added-instead = Look at the sign. You added, but this asks you to take away.
    .name = Added instead of subtracting
mistake-smaller-from-larger = In each column, take the bottom digit from the top digit. If it is too small, trade.
    .name = Smaller digit taken from the larger
mistake-trade-not-taken-away = When you trade, the digit on the left gets one less.
    .name = Traded, but the next column kept its one
mistake-added-all-numbers = The last number is the whole. You need the missing part.
    .name = Added all the numbers
