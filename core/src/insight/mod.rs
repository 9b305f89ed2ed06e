//! What a class's reports say: weak spots, trend, calibration, groups, talk plan, disclosure control.
