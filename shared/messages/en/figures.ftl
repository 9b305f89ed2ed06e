## Text alternatives of figures.
figure-column-plus = { $top } and { $bottom } written one above the other, to add.
figure-column-minus = { $bottom } written under { $top }, to take away.
figure-column-times = { $bottom } written under { $top }, to multiply.
